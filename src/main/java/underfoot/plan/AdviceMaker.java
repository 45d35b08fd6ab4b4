package underfoot.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import underfoot.buildup.ActRuling;
import underfoot.buildup.ActRuling.Sort;
import underfoot.buildup.Caution;
import underfoot.buildup.ClientLimit;
import underfoot.buildup.Criterion;
import underfoot.buildup.LayerThickness;
import underfoot.buildup.Remedy;
import underfoot.buildup.Severity;
import underfoot.buildup.StopFinding;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.Wording;
import underfoot.measure.Texts;
import underfoot.plan.Advice.Assumption;
import underfoot.plan.Advice.CautionNote;
import underfoot.plan.Advice.Door;
import underfoot.plan.Advice.HaltNote;
import underfoot.plan.Advice.Heights;
import underfoot.plan.Advice.Ranking;
import underfoot.plan.Advice.RemedyNote;
import underfoot.plan.Sayings.Same;
import underfoot.reasoning.ActsApplied;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.WhatIf;
import underfoot.reasoning.WhatIf.Otherwise;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Place;

/**
 * Makes the advice of what the rules concluded: the same thing said by several rules is said once
 * with all its reasons, the strictest demand holds, and texts are filled in.
 */
public final class AdviceMaker {
  private final Assessment assessment;
  private final Knowledge knowledge;
  private final Phrases phrases;
  private final Facts facts;
  private final Sayings sayings;

  private AdviceMaker(Assessment assessment, List<ActRuling> ofTheRoom) {
    this.assessment = assessment;
    this.knowledge = assessment.knowledge();
    this.sayings = Sayings.of(assessment).and(ofTheRoom);
    this.phrases = sayings.phrases();
    this.facts = sayings.facts();
  }

  /**
   * Makes the advice.
   *
   * @param assessment what the rules concluded
   * @param assumed what was assumed, and what hangs on it
   * @param consequences quantities, programme and cost
   */
  public static Advice make(
      Assessment assessment, List<WhatIf.Assumed> assumed, Consequences consequences) {
    return make(assessment, assumed, List.of(), consequences);
  }

  /**
   * Makes the advice.
   *
   * @param assessment what the rules concluded
   * @param assumed what was assumed, and what hangs on it
   * @param unsaid what is unknown, was not assumed, and something hangs on
   * @param consequences quantities, programme and cost
   */
  public static Advice make(
      Assessment assessment,
      List<WhatIf.Assumed> assumed,
      List<WhatIf.Unsaid> unsaid,
      Consequences consequences) {
    return new AdviceMaker(assessment, List.of()).advice(assumed, unsaid, consequences);
  }

  /**
   * Makes the advice on a part of a room. What has to be done first in the room comes first in its
   * parts as well: one sample, one tracing of services.
   *
   * @param part what the rules concluded of the part
   * @param room what they concluded of the room
   */
  static Advice ofPart(Assessment part, Assessment room) {
    return new AdviceMaker(part, ActsApplied.rulings(room.of(ActRuling.class), Sort.AFTER).all())
        .advice(WhatIf.assumed(part), List.of(), Consequences.none());
  }

  private Advice advice(
      List<WhatIf.Assumed> assumed, List<WhatIf.Unsaid> unsaid, Consequences consequences) {
    List<FindOut> findOutFirst = FindOutFirst.of(sayings, assumed, unsaid);
    Optional<BuildUp> chosen = assessment.chosen();
    String way = chosen.map(BuildUp::way).orElse("");
    List<RoomZone> zones = ZonesTold.of(assessment);
    List<HaltNote> stopFindings = ZonesTold.halts(stopFindings(), zones);
    List<RemedyNote> remedies = inOrder(ZonesTold.remedies(remedies(), zones));
    List<Assumption> assumptions = assumptions(assumed);
    Heights heights = heights(chosen);
    LayerMaker layers = new LayerMaker(assessment, sayings);
    Set<String> stops = stopFindings.stream().map(HaltNote::id).collect(Collectors.toSet());
    double mass = chosen.map(one -> one.stack().mass(knowledge.figures())).orElse(0.0);
    String base = facts.text("base").isEmpty() ? facts.text("deck") : facts.text("base");
    boolean baseTakenUp = chosen.map(BuildUp::takesUpTheBase).orElse(false);
    if (baseTakenUp) {
      String left = chosen.get().stack().replacesDeck() ? "" : chosen.get().beneath();
      base = left.isEmpty() ? phrases.say("joists-of", "base", base) : left;
    }
    return new Advice(
        assessment.scenario().name(),
        assessment.scenario().file(),
        assessment.scenario().practice(),
        assessment.verdict(),
        summary(way, base, stopFindings, remedies, assumptions, heights)
            + ChoiceSaid.of(assessment, consequences.ways(), phrases)
                .map(said -> ' ' + said)
                .orElse(""),
        base,
        way,
        way.isEmpty() ? "" : phrases.way(way),
        chosen.map(layers::layers).orElse(List.of()),
        stopFindings,
        remedies,
        ZonesTold.cautions(cautions(), zones),
        chosen.flatMap(one -> layers.coverage()),
        assumptions,
        new AlternativeMaker(assessment, sayings, stops).alternatives(consequences.ways()),
        heights,
        mass,
        ranking(),
        consequences,
        findOutFirst,
        new FirstThingsMaker(knowledge.headlines(), phrases, limits())
            .of(stopFindings, remedies, findOutFirst),
        LayerFound.of(facts, baseTakenUp, sayings.justifier()),
        zones,
        JoistCuts.of(facts, knowledge.figures(), remedies));
  }

  /** The wordings that tell of a limit the client set and that is not kept. */
  private Set<String> limits() {
    return assessment.of(ClientLimit.class).stream()
        .map(ClientLimit::wording)
        .collect(Collectors.toSet());
  }

  private int gravity(String id, String kind) {
    return knowledge.headlines().place(FirstThingsMaker.wording(id), kind);
  }

  private String summary(
      String way,
      String base,
      List<HaltNote> stopFindings,
      List<RemedyNote> remedies,
      List<Assumption> assumptions,
      Heights heights) {
    String id = "summary-" + assessment.verdict().word();
    if (way.isEmpty() && assessment.verdict() != Verdict.STOP) {
      id = "summary-nothing";
    }
    String said =
        phrases.say(
            id,
            "way",
            phrases.way(way),
            "base",
            base,
            "moves",
            moves(heights.aboveOldFloor()),
            "loads",
            loads(facts.number("mass added")),
            "first",
            Integer.toString(remedies.size()),
            "things",
            phrases.say(remedies.size() == 1 ? "one-thing" : "things"),
            "why",
            stopFindings.stream()
                .map(one -> Texts.lower(one.title()))
                .collect(Collectors.joining("; ")));
    int open = (int) assumptions.stream().filter(one -> !one.changes().isEmpty()).count();
    if (open > 0 && !way.isEmpty()) {
      said +=
          ' '
              + phrases.say(
                  open == 1 ? "summary-one-assumption" : "summary-assumptions",
                  "count",
                  Integer.toString(open));
    }
    return said;
  }

  /** Whether the floor comes heavier or lighter, and by how much. */
  private String loads(double kgPerM2) {
    String mass = Texts.of(Math.round(Math.abs(kgPerM2)), "kg/m2");
    return phrases.say(kgPerM2 < 0 ? "loads-less" : "loads-more", "mass", mass);
  }

  /** Whether the floor comes higher or lower, and by how much. */
  private String moves(LayerThickness above) {
    double low = Math.rint(above.min());
    double high = Math.rint(above.max());
    if (low < 0 && high > 0) {
      return phrases.say("moves-between", "low", Texts.whole(-low), "high", Texts.whole(high));
    }
    return low < 0
        ? phrases.say("moves-down", "rise", Texts.wholes(-high, -low) + " mm")
        : phrases.say("moves-up", "rise", Texts.wholes(low, high) + " mm");
  }

  private List<HaltNote> stopFindings() {
    List<HaltNote> notes = new ArrayList<>();
    Map<StopFinding, Facts> found = new LinkedHashMap<>();
    assessment.of(StopFinding.class).forEach(stopFinding -> found.put(stopFinding, facts));
    if (assessment.chosen().isEmpty()) {
      // Nothing may be built: what stops each way is what stops the work.
      for (BuildUp buildUp : assessment.buildUps()) {
        buildUp
            .of(StopFinding.class)
            .forEach(stopFinding -> found.putIfAbsent(stopFinding, buildUp.facts()));
      }
    }
    List<StopFinding> all = List.copyOf(found.keySet());
    for (Same<StopFinding> same : sayings.once(all, StopFinding::wording)) {
      Wording.Filled filled = sayings.with(found.get(same.all().get(0))).fill(same.wording(), "");
      notes.add(
          new HaltNote(
              same.id(),
              same.all().stream().anyMatch(StopFinding::isStop)
                  ? Verdict.STOP
                  : Verdict.OUTSIDE_GUIDANCE,
              filled.title(),
              filled.parts(),
              sayings.because(same, filled)));
    }
    notes.sort(
        Comparator.comparing(HaltNote::verdict)
            .reversed()
            .thenComparing(one -> gravity(one.id(), "stop")));
    return notes;
  }

  /** What is put right in the room and its parts, in the order in which it is done. */
  private List<RemedyNote> inOrder(List<RemedyNote> notes) {
    List<ActRuling> ofParts = new ArrayList<>();
    assessment.zones().forEach(part -> ofParts.addAll(part.assessment().of(ActRuling.class)));
    return new RemedyOrder(knowledge, sayings.and(ofParts).acts()).sorted(notes);
  }

  private List<RemedyNote> remedies() {
    List<RemedyNote> notes = new ArrayList<>();
    List<Remedy> all = new ArrayList<>(assessment.of(Remedy.class));
    for (ClientLimit limit : assessment.of(ClientLimit.class)) {
      all.add(new Remedy(limit.because(), limit.wording(), false, ""));
    }
    for (Same<Remedy> same : sayings.once(all, Remedy::wording, Remedy::about)) {
      Wording.Filled filled = sayings.fillRemedy(same.wording(), same.about());
      notes.add(
          new RemedyNote(
              same.id(),
              same.all().stream().anyMatch(Remedy::hold),
              RemedyOrder.undated(
                  knowledge, same.wording(), same.all().stream().anyMatch(Remedy::hold)),
              filled.title(same.about()),
              filled.parts(),
              same.about(),
              sayings.because(same, filled)));
    }
    return notes;
  }

  private List<CautionNote> cautions() {
    List<CautionNote> notes = new ArrayList<>();
    for (Same<Caution> same :
        sayings.once(assessment.of(Caution.class), Caution::wording, Caution::about)) {
      Severity worst = Severity.NOTE;
      for (Caution one : same.all()) {
        worst = one.severity().compareTo(worst) < 0 ? one.severity() : worst;
      }
      boolean general =
          worst != Severity.DANGER && knowledge.generalities().contains(same.wording());
      notes.add(DangersTold.note(sayings, same, worst, general));
    }
    if (assessment.verdict() == Verdict.STOP) {
      // Nothing is laid, so only what can hurt somebody is worth saying.
      notes.removeIf(note -> note.severity() != Severity.DANGER);
    }
    notes.sort(
        Comparator.comparing(CautionNote::severity)
            .thenComparing(CautionNote::general)
            .thenComparing(
                note -> note.severity() == Severity.DANGER ? gravity(note.id(), "danger") : 0));
    return notes;
  }

  // --- assumptions

  private List<Assumption> assumptions(List<WhatIf.Assumed> assumed) {
    List<Assumption> all = new ArrayList<>();
    for (WhatIf.Assumed one : assumed) {
      Fact fact = one.fact();
      String name = fact.about().isEmpty() ? fact.name() : fact.name() + " (" + fact.about() + ")";
      all.add(
          new Assumption(
              Place.named(one.key(), one.about()),
              name,
              fact.text(),
              one.definition().map(of -> look(of, one.about())).orElse(""),
              one.otherwise(),
              told(phrases, one.otherwise(), one.tried()),
              fact.because() == null
                  ? List.of()
                  : sayings.justifier().of(List.of(fact.because()))));
    }
    // What decisions hang on comes first: that is what to find out.
    all.sort(Comparator.comparing(Assumption::changes, Otherwise.MOST_FIRST));
    return all;
  }

  /** What becomes of other values, in words, or that none was tried. */
  static List<String> told(Phrases phrases, List<Otherwise> others, boolean tried) {
    return tried
        ? others.stream().map(other -> told(phrases, other)).toList()
        : List.of(phrases.say("not-tried"));
  }

  /** What becomes of another value, in words. */
  private static String told(Phrases phrases, Otherwise other) {
    return phrases.say("if-it-is", "value", other.value(), "changes", other.clause());
  }

  private String look(FactDefinition fact, String about) {
    ActsInWords acts = sayings.acts();
    return fact.look().isEmpty() || acts.forbids(fact.acts(), about)
        ? fact.ask()
        : acts.told(fact.acts(), about, fact.look());
  }

  private List<Ranking> ranking() {
    Map<String, List<Derivation>> byName = new LinkedHashMap<>();
    for (Criterion criterion : assessment.criteria()) {
      byName.computeIfAbsent(criterion.name(), n -> new ArrayList<>()).add(criterion.because());
    }
    List<Ranking> all = new ArrayList<>();
    byName.forEach(
        (name, because) ->
            all.add(new Ranking(all.size() + 1, name, sayings.justifier().of(because))));
    return all;
  }

  // --- heights

  private Heights heights(Optional<BuildUp> chosen) {
    if (chosen.isEmpty()) {
      return new Heights(LayerThickness.even(0), LayerThickness.even(0), List.of());
    }
    return heights(chosen.get(), facts);
  }

  /** What a build-up that was worked out does to levels and doors. */
  static Heights heights(BuildUp buildUp, Facts facts) {
    List<Door> doors = new ArrayList<>();
    for (String door : facts.abouts("door")) {
      double left = facts.number("gap left", door);
      double least = facts.number("least gap", door);
      boolean opens = left >= (Double.isNaN(least) ? 0 : least);
      boolean stopped = facts.find("pour", door) != null;
      doors.add(
          new Door(
              door,
              left,
              stopped ? facts.number("gap left beside the pour", door) : Double.NaN,
              facts.find("edge", door) != null,
              Double.isNaN(left) ? Optional.empty() : Optional.of(opens),
              opens && facts.number("trim needed", door) > 0,
              facts.number("step at the door", door),
              facts.number("height over the floor beyond", door)));
    }
    LayerThickness above =
        new LayerThickness(
            facts.number("rise least"), facts.number("rise"), facts.number("rise most"));
    return new Heights(buildUp.stack().rise(), above, doors);
  }
}
