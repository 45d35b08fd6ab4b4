package underfoot.reasoning;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.buildup.ActRuling;
import underfoot.buildup.ByAct;
import underfoot.buildup.Caution;
import underfoot.buildup.ClientLimit;
import underfoot.buildup.Conclusion;
import underfoot.buildup.Laid;
import underfoot.buildup.LayerNote;
import underfoot.buildup.Remedy;
import underfoot.buildup.RuledOut;
import underfoot.buildup.Severity;
import underfoot.buildup.StepTime;
import underfoot.buildup.StopFinding;
import underfoot.buildup.Suggestion;
import underfoot.knowledge.ActsNamed;
import underfoot.knowledge.Changes.Change;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Knowledge;

/**
 * What rules say of acts, applied to all that asks for them: what asks for a forbidden act falls
 * away, and takes its way with it; what waits for something has it among what is put right first.
 */
public final class ActsApplied {
  /** The fact by which rules know what is asked for. */
  static final String ASKED = "asked";

  private static final String FORBIDDEN = "forbidden act";
  private static final String ASKS_FOR_IT = "asks-for-what-is-forbidden";

  /** So many of those that ask for an act are named where it is told why it counts as asked. */
  private static final int NAMED = 3;

  private ActsApplied() {}

  /** What an act is asked by, as a person reads it, and for which thing; empty for the whole. */
  private record Ask(String act, String about, String by) {}

  /** The acts that a conclusion asks for. */
  public static List<String> asked(Knowledge knowledge, Conclusion one) {
    if (one instanceof Laid laid) {
      return laid.kind().acts();
    }
    if (one instanceof StepTime time) {
      return knowledge.acts().of(knowledge.steps().get(time.step()), "");
    }
    return words(knowledge, one).asked();
  }

  private static ActsNamed words(Knowledge knowledge, Conclusion one) {
    String wording = wording(one);
    return wording.isEmpty() ? ActsNamed.NONE : knowledge.wording().work(wording);
  }

  private static String wording(Conclusion one) {
    return one instanceof Remedy remedy
        ? remedy.wording()
        : one instanceof Caution caution
            ? caution.wording()
            : one instanceof LayerNote note
                ? note.wording()
                : one instanceof StopFinding stop
                    ? stop.wording()
                    : one instanceof ClientLimit limit ? limit.wording() : suggested(one);
  }

  private static String suggested(Conclusion one) {
    return one instanceof Suggestion suggestion ? suggestion.wording() : "";
  }

  /** What it is about; empty for the whole floor. */
  private static String about(Conclusion one) {
    return one instanceof Remedy remedy
        ? remedy.about()
        : one instanceof Caution caution ? caution.about() : "";
  }

  /**
   * Whether it asks nobody for anything: it only names another way to think of, or is not told,
   * since of a floor on which nothing is built only what can hurt somebody is.
   */
  private static boolean asksNobody(String way, Conclusion one) {
    return one instanceof Suggestion
        || (way.isEmpty()
            && one instanceof Caution caution
            && caution.severity() != Severity.DANGER);
  }

  private static List<Ask> asks(Knowledge knowledge, String way, Collection<?> held) {
    List<Ask> asks = new ArrayList<>();
    knowledge.acts().ofWay(way).forEach(act -> asks.add(new Ask(act, "", way)));
    for (Object one : held) {
      if (one instanceof Conclusion conclusion && !asksNobody(way, conclusion)) {
        for (String act : asked(knowledge, conclusion)) {
          asks.add(new Ask(act, about(conclusion), named(knowledge, conclusion)));
        }
      }
    }
    return asks;
  }

  private static String named(Knowledge knowledge, Conclusion one) {
    if (one instanceof Laid laid) {
      return laid.kind().name();
    }
    if (one instanceof StepTime time) {
      return knowledge.steps().get(time.step()).title();
    }
    String title = knowledge.wording().get(wording(one)).title();
    String told = title.isEmpty() && one instanceof LayerNote note ? note.layer() : title;
    return told.replace("[it]", about(one));
  }

  /**
   * A fact for each act that is asked for, so that rules can tell what follows from it.
   *
   * @param way the way of building; empty where none is worked out
   * @param held all that was concluded
   */
  static List<Fact> asked(Knowledge knowledge, String way, Collection<?> held) {
    Map<String, Set<String>> by = new LinkedHashMap<>();
    for (Ask ask : asks(knowledge, way, held)) {
      by.computeIfAbsent(ask.act(), act -> new LinkedHashSet<>()).add(ask.by());
    }
    List<Fact> facts = new ArrayList<>();
    by.forEach(
        (act, names) -> {
          String how = "asked for by: " + String.join("; ", names.stream().limit(NAMED).toList());
          facts.add(Fact.measured(ASKED, "", act, Double.NaN, how, List.of()));
        });
    return facts;
  }

  /** The rulings of one sort among what was concluded. */
  public static ByAct<ActRuling> rulings(Iterable<?> held, ActRuling.Sort sort) {
    List<ActRuling> found = new ArrayList<>();
    for (Object one : held) {
      if (one instanceof ActRuling ruling && ruling.sort() == sort) {
        found.add(ruling);
      }
    }
    return ByAct.of(found);
  }

  /**
   * What follows from the rulings for one way of building, or for a floor where none is worked out:
   * what has to be done first and was not yet said, and that the way is ruled out if what it must
   * ask for is forbidden.
   *
   * @param way the way of building; empty where none is worked out
   * @param held all that was concluded
   */
  static List<Object> follows(Knowledge knowledge, String way, Collection<?> held) {
    List<Object> follows = new ArrayList<>();
    follows.addAll(gates(knowledge, way, held, rulings(held, ActRuling.Sort.AFTER)));
    ByAct<ActRuling> never = rulings(held, ActRuling.Sort.NEVER);
    if (way.isEmpty() || never.isEmpty()) {
      return follows;
    }
    List<Ask> must = asks(knowledge, way, held.stream().filter(ActsApplied::isNeeded).toList());
    List<ActRuling> broken = asked(never, must);
    if (!broken.isEmpty()) { // one is enough, and the text names one
      ActRuling ruling = broken.get(0);
      String what = ruling.act() + (ruling.about().isEmpty() ? "" : ": " + ruling.about());
      follows.add(Fact.measured(FORBIDDEN, "", what, Double.NaN, "", List.of()));
      follows.add(new RuledOut(ruling.because(), ASKS_FOR_IT));
    }
    return follows;
  }

  /** What has to be done first and was not yet said, as some rulings have it. */
  private static List<Remedy> gates(
      Knowledge knowledge, String way, Collection<?> held, ByAct<ActRuling> rulings) {
    List<Ask> asks = asks(knowledge, way, held);
    Set<String> told = new HashSet<>();
    held.forEach(one -> told.add(one instanceof Remedy remedy ? remedy.wording() : ""));
    List<Remedy> gates = new ArrayList<>();
    for (ActRuling gate : asked(rulings, asks)) {
      if (told.add(gate.wording())) {
        gates.add(new Remedy(gate.because(), gate.wording(), true, ""));
      }
    }
    return gates;
  }

  /**
   * What has to be done first in a room because one of its parts asks for it, and was not yet said
   * of either: what must wait in the room waits in its parts as well.
   */
  static List<Remedy> gates(Assessment room, Assessment part) {
    List<Conclusion> held = new ArrayList<>(part.of(Conclusion.class));
    held.addAll(room.of(Remedy.class));
    return gates(
        room.knowledge(),
        part.chosen().map(BuildUp::way).orElse(""),
        held,
        rulings(room.of(ActRuling.class), ActRuling.Sort.AFTER));
  }

  /** The rulings that hold for something that is asked, in the order they were concluded. */
  private static List<ActRuling> asked(ByAct<ActRuling> rulings, List<Ask> asks) {
    Set<ActRuling> asked = new HashSet<>();
    asks.forEach(ask -> asked.addAll(rulings.holdingFor(List.of(ask.act()), ask.about())));
    return rulings.all().stream().filter(asked::contains).toList();
  }

  /** Whether a way cannot be built without it. */
  private static boolean isNeeded(Object one) {
    return one instanceof Laid
        || one instanceof StepTime
        || one instanceof LayerNote
        || one instanceof Remedy
        || one instanceof ClientLimit;
  }

  /**
   * The ways in which a change may be made of a thing that ask for nothing forbidden, by their
   * texts; the text of the change itself where it names none.
   */
  public static List<String> ways(Assessment assessment, Change change, String about) {
    ByAct<ActRuling> never = rulings(assessment.of(ActRuling.class), ActRuling.Sort.NEVER);
    List<String> ways = new ArrayList<>();
    for (String way : change.ways().isEmpty() ? List.of(change.wording()) : change.ways()) {
      List<String> acts = assessment.knowledge().wording().work(way).asked();
      if (never.holdingFor(acts, about).isEmpty()) {
        ways.add(way);
      }
    }
    return ways;
  }

  /** What has to be put right of what carries the floor. */
  public static List<Remedy> structural(Assessment assessment) {
    List<Remedy> structural = new ArrayList<>(assessment.of(Remedy.class));
    structural.removeIf(
        remedy -> {
          List<String> acts = asked(assessment.knowledge(), remedy);
          return acts.isEmpty() || !assessment.knowledge().acts().get(acts.get(0)).structural();
        });
    return structural;
  }

  /** Whether a change of a thing can be made without what is forbidden. */
  static boolean allows(Assessment assessment, Change change, String about) {
    return !ways(assessment, change, about).isEmpty();
  }

  /** Whether it falls away because it asks for what is forbidden. */
  static boolean falls(Knowledge knowledge, Conclusion one, ByAct<ActRuling> never) {
    return !never.isEmpty() && !never.holdingFor(asked(knowledge, one), about(one)).isEmpty();
  }
}
