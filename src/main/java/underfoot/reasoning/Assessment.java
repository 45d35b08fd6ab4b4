package underfoot.reasoning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underfoot.buildup.ActRuling;
import underfoot.buildup.ByAct;
import underfoot.buildup.Conclusion;
import underfoot.buildup.Criterion;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Knowledge;
import underfoot.scenario.Scenario;

/**
 * What the rules made of a floor.
 *
 * @param scenario the floor
 * @param knowledge the knowledge base it was judged by
 * @param verdict the answer in one word
 * @param facts all facts held of the floor
 * @param general what was concluded whatever is built
 * @param buildUps the build-ups worked out, the recommended one first, those that do not stand last
 * @param criteria what they were ranked by
 * @param zones the parts of the room where the floor is otherwise; mostly none
 * @param others the same floor with the work begun from other layers that may stay; mostly none
 */
public record Assessment(
    Scenario scenario,
    Knowledge knowledge,
    Verdict verdict,
    Facts facts,
    List<Conclusion> general,
    List<BuildUp> buildUps,
    List<Criterion> criteria,
    List<ZonePart> zones,
    List<Assessment> others) {
  /** Copies the lists. */
  public Assessment {
    general = List.copyOf(general);
    buildUps = List.copyOf(buildUps);
    criteria = List.copyOf(criteria);
    zones = List.copyOf(zones);
    others = List.copyOf(others);
  }

  /** What the rules made of a floor that is the same all over. */
  public Assessment(
      Scenario scenario,
      Knowledge knowledge,
      Verdict verdict,
      Facts facts,
      List<Conclusion> general,
      List<BuildUp> buildUps,
      List<Criterion> criteria) {
    this(scenario, knowledge, verdict, facts, general, buildUps, criteria, List.of(), List.of());
  }

  /**
   * The same floor with its zones; the verdict is the gravest of all, and what must wait in the
   * room waits in its parts.
   */
  Assessment with(List<ZonePart> parts) {
    Assessment all = this;
    for (ZonePart part : parts) {
      all = all.with(part.assessment());
    }
    List<Assessment> from = others.stream().map(one -> one.with(parts)).toList();
    return new Assessment(
        scenario, knowledge, all.verdict, facts, all.general, buildUps, criteria, parts, from);
  }

  /** The same floor with what it is where the work begins from other layers. */
  Assessment besides(List<Assessment> from) {
    return from.isEmpty()
        ? this
        : new Assessment(
            scenario, knowledge, verdict, facts, general, buildUps, criteria, zones, from);
  }

  private Assessment with(Assessment part) {
    List<Conclusion> more = new ArrayList<>(general);
    more.addAll(ActsApplied.gates(this, part));
    Verdict worst = part.verdict.compareTo(verdict) > 0 ? part.verdict : verdict;
    return new Assessment(
        scenario, knowledge, worst, facts, more, buildUps, criteria, zones, others);
  }

  /**
   * The build-ups worked out and, behind them, those where the work begins from other layers: what
   * stands there, or what is ruled out where nothing does. A way that takes out what it begins from
   * is the same from each of them.
   */
  public List<BuildUp> everyBuildUp() {
    List<BuildUp> every = new ArrayList<>(buildUps);
    for (Assessment other : others) {
      boolean nothing = other.buildUps.stream().noneMatch(BuildUp::stands);
      for (BuildUp from : other.buildUps) {
        boolean told =
            NearWays.tearsOut(from) && every.stream().anyMatch(one -> one.way().equals(from.way()));
        if ((nothing || from.stands()) && !told) {
          every.add(from);
        }
      }
    }
    return every;
  }

  /** The recommended build-up; empty if none stands or the work must stop. */
  public Optional<BuildUp> chosen() {
    if (verdict == Verdict.STOP || buildUps.isEmpty() || !buildUps.get(0).stands()) {
      return Optional.empty();
    }
    return Optional.of(buildUps.get(0));
  }

  /**
   * Conclusions of one sort that hold for the recommended build-up, general ones first, but for
   * those that ask for what is forbidden here.
   */
  public <T extends Conclusion> List<T> of(Class<T> sort) {
    List<T> found = all(sort);
    if (sort != ActRuling.class) {
      ByAct<ActRuling> never = ActsApplied.rulings(all(ActRuling.class), ActRuling.Sort.NEVER);
      found.removeIf(one -> ActsApplied.falls(knowledge, one, never));
    }
    return found;
  }

  private <T extends Conclusion> List<T> all(Class<T> sort) {
    List<T> found = new ArrayList<>();
    for (Conclusion one : general) {
      if (sort.isInstance(one)) {
        found.add(sort.cast(one));
      }
    }
    chosen().ifPresent(buildUp -> found.addAll(buildUp.of(sort)));
    return found;
  }

  /** What was made of a part of the room; of the room itself where there is no such part. */
  public Assessment at(String zone) {
    return zones.stream()
        .filter(part -> part.name().equals(zone))
        .map(ZonePart::assessment)
        .findFirst()
        .orElse(this);
  }

  /** What the client asked for decides by these criteria, and what each was asked as. */
  public Map<String, String> wishes() {
    Map<String, String> wishes = new LinkedHashMap<>();
    for (Criterion criterion : criteria) {
      String asked = facts.text("client's wish for " + criterion.name());
      if (!asked.isEmpty()) {
        wishes.putIfAbsent(criterion.name(), asked);
      }
    }
    return wishes;
  }

  /** What would be recommended if the client had asked for nothing; empty if nothing stands. */
  public Optional<BuildUp> withoutWishes() {
    Set<String> wished = wishes().keySet();
    List<Criterion> rest = criteria.stream().filter(one -> !wished.contains(one.name())).toList();
    return everyBuildUp().stream().filter(BuildUp::stands).min(Ranks.by(rest));
  }

  /** The facts that hold for the recommended build-up, or for the floor if there is none. */
  public Facts factsOfChosen() {
    return chosen().map(BuildUp::facts).orElse(facts);
  }
}
