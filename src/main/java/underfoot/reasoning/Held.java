package underfoot.reasoning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import underfoot.buildup.OfferedWay;
import underfoot.buildup.StopFinding;
import underfoot.knowledge.Facts;
import underfoot.language.Pass;

/** What is held so far, in the order it came, and the facts among it. */
final class Held {
  private final List<Object> all = new ArrayList<>();
  private final Facts facts;
  private final Held floor;
  private final List<Assessment> parts;
  private final Map<Pass, PassInput> shown = new ConcurrentHashMap<>();

  /** Begins with nothing, for a floor built together with other parts of its room. */
  Held(List<Assessment> parts) {
    facts = new Facts();
    floor = null;
    this.parts = parts;
  }

  /** Begins with what is held of the floor, which stays as it is. */
  Held(Held floor) {
    all.addAll(floor.all);
    facts = Facts.over(floor.facts);
    this.floor = floor;
    parts = floor.parts;
  }

  /** All of it, in the order it came. */
  List<Object> all() {
    return all;
  }

  /** The facts among it. */
  Facts facts() {
    return facts;
  }

  /** The other parts of the room, built together with this floor. */
  List<Assessment> parts() {
    return parts;
  }

  /** Whether it is held of the floor, whatever is built. */
  boolean isOfFloor() {
    return floor == null;
  }

  /** What is held besides what is held of the floor. */
  List<Object> own() {
    return all.subList(floor.all.size(), all.size());
  }

  /** What a pass is shown of it; what is held of the floor is looked through once for all. */
  PassInput shown(RuleBase rules, Pass pass) {
    PassInput ofFloor = floor.shown.computeIfAbsent(pass, any -> rules.shown(pass, floor.all));
    return rules.shown(pass, ofFloor, own());
  }

  void add(List<?> more) {
    all.addAll(more);
    facts.addAll(more);
  }

  Map<String, List<OfferedWay>> offers() {
    Map<String, List<OfferedWay>> byRoute = new LinkedHashMap<>();
    for (Object one : all) {
      if (one instanceof OfferedWay offer) {
        byRoute.computeIfAbsent(offer.way(), way -> new ArrayList<>()).add(offer);
      }
    }
    return byRoute;
  }

  boolean stopped() {
    return all.stream()
        .anyMatch(one -> one instanceof StopFinding stopFinding && stopFinding.isStop());
  }
}
