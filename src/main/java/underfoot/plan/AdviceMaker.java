package underfoot.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underfoot.buildup.Caution;
import underfoot.buildup.ClientLimit;
import underfoot.buildup.Conclusion;
import underfoot.buildup.CoverageTarget;
import underfoot.buildup.Criterion;
import underfoot.buildup.LayerClass;
import underfoot.buildup.LayerCover;
import underfoot.buildup.LayerNote;
import underfoot.buildup.LayerThickness;
import underfoot.buildup.OfferedWay;
import underfoot.buildup.Remedy;
import underfoot.buildup.RuledOut;
import underfoot.buildup.Severity;
import underfoot.buildup.StackLayer;
import underfoot.buildup.StopFinding;
import underfoot.buildup.Suggestion;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.Wording;
import underfoot.measure.Texts;
import underfoot.plan.Advice.Alternative;
import underfoot.plan.Advice.Assumption;
import underfoot.plan.Advice.CautionNote;
import underfoot.plan.Advice.Coverage;
import underfoot.plan.Advice.Door;
import underfoot.plan.Advice.HaltNote;
import underfoot.plan.Advice.Heights;
import underfoot.plan.Advice.Layer;
import underfoot.plan.Advice.Ranking;
import underfoot.plan.Advice.RemedyNote;
import underfoot.plan.Advice.Say;
import underfoot.plan.Advice.Standing;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.MaterialClasses;
import underfoot.reasoning.WhatIf;
import underfoot.scenario.FactDefinition;

/**
 * Makes the advice of what the rules concluded: the same thing said by several rules is said once
 * with all its reasons, the strictest demand holds, and texts are filled in.
 */
public final class AdviceMaker {
  /** Texts whose ids begin so say how full contact is got and checked on site. */
  private static final String CHECK = "contact-";

  /** The families of layers that such texts are said of. */
  private static final Set<String> CHECKED = Set.of("tile-bed", "tile");

  private static final String TILE_BED = "tile-bed";

  private final Assessment assessment;
  private final Knowledge knowledge;
  private final Phrases phrases;
  private final Facts facts;
  private final Justifier justifier;
  private final Set<String> haltsTold = new LinkedHashSet<>();

  private AdviceMaker(Assessment assessment) {
    this.assessment = assessment;
    this.knowledge = assessment.knowledge();
    this.phrases = new Phrases(knowledge.wording());
    this.facts = assessment.factsOfChosen();
    this.justifier = new Justifier(assessment.scenario(), knowledge);
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
    return new AdviceMaker(assessment)
        .advice(assumed, FindOutFirst.of(assessment.knowledge(), assumed, unsaid), consequences);
  }

  private Advice advice(
      List<WhatIf.Assumed> assumed, List<FindOut> findOutFirst, Consequences consequences) {
    Optional<BuildUp> chosen = assessment.chosen();
    String way = chosen.map(BuildUp::way).orElse("");
    List<HaltNote> stopFindings = stopFindings();
    List<RemedyNote> remedies = remedies();
    List<Assumption> assumptions = assumptions(assumed);
    Heights heights = heights(chosen);
    double mass = chosen.map(one -> one.stack().mass(knowledge.figures())).orElse(0.0);
    String base = facts.text("base").isEmpty() ? facts.text("deck") : facts.text("base");
    boolean deckTakenUp = assessment.chosen().map(one -> one.stack().replacesDeck()).orElse(false);
    if (deckTakenUp) {
      base = phrases.say("joists-of", "base", base);
    }
    return new Advice(
        assessment.scenario().name(),
        assessment.scenario().file(),
        assessment.scenario().practice(),
        assessment.verdict(),
        summary(way, base, stopFindings, remedies, assumptions, heights, mass),
        base,
        way,
        way.isEmpty() ? "" : phrases.way(way),
        chosen.map(this::layers).orElse(List.of()),
        stopFindings,
        remedies,
        cautions(),
        chosen.isPresent() ? coverage() : Optional.empty(),
        assumptions,
        alternatives(consequences.ways()),
        heights,
        mass,
        ranking(),
        consequences,
        findOutFirst);
  }

  private String summary(
      String way,
      String base,
      List<HaltNote> stopFindings,
      List<RemedyNote> remedies,
      List<Assumption> assumptions,
      Heights heights,
      double mass) {
    StringBuilder titles = new StringBuilder();
    for (HaltNote stopFinding : stopFindings) {
      titles.append(titles.isEmpty() ? "" : "; ").append(Texts.lower(stopFinding.title()));
    }
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
            "rise",
            Texts.of(tenth(heights.aboveOldFloor().mean()), "mm"),
            "mass",
            Texts.of(Math.round(mass), "kg/m2"),
            "first",
            Integer.toString(remedies.size()),
            "things",
            phrases.say(remedies.size() == 1 ? "one-thing" : "things"),
            "why",
            titles.toString());
    int open = (int) assumptions.stream().filter(one -> !one.wouldChange().isEmpty()).count();
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

  // --- what is said of several things

  /** Conclusions that say the same of the same thing, in the order of the wording files. */
  private static final class Same<T extends Conclusion> {
    private final String wording;
    private final String about;
    private final List<T> all = new ArrayList<>();

    Same(String wording, String about) {
      this.wording = wording;
      this.about = about;
    }

    String id() {
      return about.isEmpty() ? wording : wording + " @" + about;
    }

    List<Derivation> because() {
      return all.stream().map(Conclusion::because).toList();
    }
  }

  /** How to read the wording and the thing of a conclusion. */
  private interface Reader<T> {
    String read(T one);
  }

  private <T extends Conclusion> List<Same<T>> group(
      List<T> all, Reader<T> wording, Reader<T> about) {
    Map<String, Same<T>> groups = new LinkedHashMap<>();
    for (T one : all) {
      groups
          .computeIfAbsent(
              wording.read(one) + '\n' + about.read(one),
              key -> new Same<>(wording.read(one), about.read(one)))
          .all
          .add(one);
    }
    List<Same<T>> sorted = new ArrayList<>(groups.values());
    sorted.sort(
        Comparator.comparingInt((Same<T> same) -> knowledge.wording().place(same.wording))
            .thenComparing(same -> same.about));
    for (Same<T> same : sorted) {
      same.all.sort(Comparator.comparing(one -> one.because().rule().id()));
    }
    return sorted;
  }

  private Wording.Filled fill(String wording, String about) {
    return fill(wording, about, facts);
  }

  private Wording.Filled fill(String wording, String about, Facts from) {
    return knowledge.wording().fill(wording, knowledge.figures(), from, about);
  }

  private static String title(Wording.Filled filled, String about) {
    String title = filled.title().isEmpty() ? cut(filled.text()) : filled.title();
    return about.isEmpty() || title.contains(about) ? title : title + " (" + about + ")";
  }

  /** The first clause of a text that has no title of its own. */
  private static String cut(String text) {
    for (int i = 0; i < text.length(); i++) {
      boolean stop = ".;:".indexOf(text.charAt(i)) >= 0;
      if (stop && (i + 1 == text.length() || text.charAt(i + 1) == ' ')) {
        return text.substring(0, i);
      }
    }
    return text;
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
    for (Same<StopFinding> same : group(all, StopFinding::wording, stopFinding -> "")) {
      Wording.Filled filled = fill(same.wording, "", found.get(same.all.get(0)));
      haltsTold.add(same.wording);
      notes.add(
          new HaltNote(
              same.id(),
              same.all.stream().anyMatch(StopFinding::isStop)
                  ? Verdict.STOP
                  : Verdict.OUTSIDE_GUIDANCE,
              title(filled, ""),
              filled.text(),
              justifier.of(same.because(), filled.used())));
    }
    notes.sort(Comparator.comparing(HaltNote::verdict).reversed());
    return notes;
  }

  private List<RemedyNote> remedies() {
    List<RemedyNote> notes = new ArrayList<>();
    List<Remedy> all = new ArrayList<>(assessment.of(Remedy.class));
    for (ClientLimit limit : assessment.of(ClientLimit.class)) {
      all.add(new Remedy(limit.because(), limit.wording(), false, ""));
    }
    for (Same<Remedy> same : group(all, Remedy::wording, Remedy::about)) {
      Wording.Filled filled = fill(same.wording, same.about);
      notes.add(
          new RemedyNote(
              same.id(),
              same.all.stream().anyMatch(Remedy::hold),
              title(filled, same.about),
              filled.text(),
              same.about,
              justifier.of(same.because(), filled.used())));
    }
    notes.sort(Comparator.comparing(note -> !note.hold()));
    return notes;
  }

  private List<CautionNote> cautions() {
    List<CautionNote> notes = new ArrayList<>();
    for (Same<Caution> same :
        group(assessment.of(Caution.class), Caution::wording, Caution::about)) {
      Wording.Filled filled = fill(same.wording, same.about);
      Severity worst = Severity.NOTE;
      for (Caution one : same.all) {
        worst = one.severity().compareTo(worst) < 0 ? one.severity() : worst;
      }
      notes.add(
          new CautionNote(
              same.id(),
              worst,
              title(filled, same.about),
              filled.text(),
              filled.parts(),
              same.about,
              justifier.of(same.because(), filled.used())));
    }
    if (assessment.verdict() == Verdict.STOP) {
      // Nothing is laid, so only what can hurt somebody is worth saying.
      notes.removeIf(note -> note.severity() != Severity.DANGER);
    }
    notes.sort(Comparator.comparing(CautionNote::severity));
    return notes;
  }

  // --- layers

  private List<Layer> layers(BuildUp buildUp) {
    List<Layer> layers = new ArrayList<>();
    double level = 0;
    for (StackLayer layer : buildUp.stack().layers()) {
      level += layer.thickness().mean();
      layers.add(layer(layer, layers.size() + 1, level));
    }
    return layers;
  }

  private Layer layer(StackLayer layer, int order, double level) {
    String id = layer.kind().id();
    List<Justification> reasons = justifier.of(layer.because());
    List<Say> spec = new ArrayList<>(classes(id));
    List<Say> fixing = new ArrayList<>();
    List<LayerNote> notes = new ArrayList<>(assessment.of(LayerNote.class));
    notes.removeIf(note -> !note.layer().equals(id));
    for (Same<LayerNote> same : group(notes, LayerNote::wording, note -> "")) {
      if (isCheck(same.all.get(0)) && !assessment.of(CoverageTarget.class).isEmpty()) {
        continue; // told with the coverage target
      }
      Wording.Filled filled = fill(same.wording, "");
      Say say = new Say(filled.text(), justifier.of(same.because(), filled.used()));
      (same.all.stream().anyMatch(LayerNote::fixing) ? fixing : spec).add(say);
    }
    List<LayerCover> covers = new ArrayList<>(assessment.of(LayerCover.class));
    covers.removeIf(cover -> !cover.layer().equals(id));
    covers.sort(
        Comparator.comparingDouble((LayerCover cover) -> -cover.figure().number())
            .thenComparing(cover -> cover.because().rule().id()));
    Optional<Double> coverage = covers.stream().map(cover -> cover.figure().number()).findFirst();
    Optional<Double> contactAimedFor =
        id.equals(TILE_BED)
            ? assessment.of(CoverageTarget.class).stream()
                .map(target -> target.figure().number())
                .max(Comparator.naturalOrder())
            : coverage;
    List<Justification> contact = justifier.of(covers.stream().map(LayerCover::because).toList());
    if (coverage.isPresent()) {
      spec.add(
          new Say(phrases.say("layer-contact", "percent", Texts.of(coverage.get(), "%")), contact));
    }
    Set<Justification> because = new LinkedHashSet<>(reasons);
    spec.forEach(say -> because.addAll(say.because()));
    fixing.forEach(say -> because.addAll(say.because()));
    return new Layer(
        id,
        order,
        layer.kind().name(),
        layer.kind().material(),
        layer.kind().family(),
        layer.thickness(),
        level,
        reasons,
        spec,
        fixing,
        contactAimedFor,
        List.copyOf(because));
  }

  private static boolean isCheck(LayerNote note) {
    return note.wording().startsWith(CHECK) && CHECKED.contains(note.layer());
  }

  /** The strictest class on each scale, with the reasons of all that ask for it or for less. */
  private List<Say> classes(String layer) {
    Map<String, List<LayerClass>> byScale = new LinkedHashMap<>();
    for (LayerClass asked : assessment.of(LayerClass.class)) {
      if (asked.layer().equals(layer)) {
        byScale
            .computeIfAbsent(
                MaterialClasses.scaleOf(knowledge, asked.grade()), scale -> new ArrayList<>())
            .add(asked);
      }
    }
    List<Say> said = new ArrayList<>();
    byScale.forEach(
        (scale, asked) -> {
          String grade =
              MaterialClasses.strictest(knowledge, asked.stream().map(LayerClass::grade).toList())
                  .get(0);
          // The rules that ask for the strictest come first; the others are met by it.
          asked.sort(
              Comparator.comparing((LayerClass one) -> !one.grade().equals(grade))
                  .thenComparing(one -> one.because().rule().id()));
          said.add(
              new Say(
                  phrases.say("at-least-class", "scale", Texts.capital(scale), "class", grade),
                  justifier.of(asked.stream().map(LayerClass::because).toList())));
        });
    return said;
  }

  private Optional<Coverage> coverage() {
    List<CoverageTarget> targets = new ArrayList<>(assessment.of(CoverageTarget.class));
    if (targets.isEmpty()) {
      return Optional.empty();
    }
    targets.sort(
        Comparator.comparingDouble((CoverageTarget one) -> -one.figure().number())
            .thenComparing(one -> one.because().rule().id()));
    double percent = targets.get(0).figure().number();
    List<Justification> because =
        justifier.of(targets.stream().map(CoverageTarget::because).toList());
    List<Say> check = new ArrayList<>();
    List<LayerNote> notes = new ArrayList<>(assessment.of(LayerNote.class));
    notes.removeIf(note -> !isCheck(note));
    for (Same<LayerNote> same : group(notes, LayerNote::wording, note -> "")) {
      Wording.Filled filled = fill(same.wording, "");
      check.add(new Say(filled.text(), justifier.of(same.because(), filled.used())));
    }
    if (check.isEmpty()) {
      check.add(
          new Say(
              phrases.say("check-contact", "target", Texts.of(percent, "%")),
              List.of(because.get(0))));
    }
    Set<Justification> all = new LinkedHashSet<>(because);
    check.forEach(say -> all.addAll(say.because()));
    return Optional.of(new Coverage(percent, check, List.copyOf(all)));
  }

  // --- assumptions and alternatives

  private List<Assumption> assumptions(List<WhatIf.Assumed> assumed) {
    List<Assumption> all = new ArrayList<>();
    for (WhatIf.Assumed one : assumed) {
      Fact fact = one.fact();
      List<String> changes = new ArrayList<>();
      for (WhatIf.Otherwise otherwise : one.otherwise()) {
        changes.add(
            phrases.say(
                "if-it-is",
                "value",
                otherwise.value(),
                "changes",
                String.join("; ", otherwise.differences())));
      }
      String name = fact.about().isEmpty() ? fact.name() : fact.name() + " (" + fact.about() + ")";
      all.add(
          new Assumption(
              Justifier.name(one.key(), one.about()),
              name,
              fact.text(),
              one.definition().map(this::look).orElse(""),
              changes,
              fact.because() == null ? List.of() : justifier.of(List.of(fact.because()))));
    }
    // What decisions hang on comes first: that is what to find out.
    all.sort(
        Comparator.comparingInt(one -> -one.wouldChange().stream().mapToInt(String::length).sum()));
    return all;
  }

  private String look(FactDefinition definition) {
    return definition.look().isEmpty() ? definition.ask() : definition.look();
  }

  private List<Alternative> alternatives(List<ComparedBuildUp> ways) {
    List<Alternative> all = new ArrayList<>();
    Optional<BuildUp> chosen = assessment.chosen();
    for (BuildUp buildUp : assessment.buildUps()) {
      boolean isChosen = chosen.isPresent() && buildUp == chosen.get();
      if (!buildUp.stands()) {
        all.add(ruledOut(buildUp));
      } else if (!isChosen && chosen.isPresent()) {
        all.add(secondChoice(buildUp, chosen.get(), ways));
      }
    }
    for (Same<Suggestion> same :
        group(assessment.of(Suggestion.class), Suggestion::wording, one -> "")) {
      Wording.Filled filled = fill(same.wording, "");
      all.add(
          new Alternative(
              same.id(),
              Standing.SUGGESTION,
              title(filled, ""),
              filled.text(),
              justifier.of(same.because(), filled.used())));
    }
    return all;
  }

  private Alternative ruledOut(BuildUp buildUp) {
    List<Derivation> because = new ArrayList<>();
    Set<Object> used = new LinkedHashSet<>();
    Set<String> texts = new LinkedHashSet<>();
    for (Same<RuledOut> same : group(buildUp.of(RuledOut.class), RuledOut::wording, one -> "")) {
      say(same.wording, buildUp, texts, used);
      because.addAll(same.because());
    }
    List<StopFinding> stops =
        buildUp.of(StopFinding.class).stream().filter(StopFinding::isStop).toList();
    for (Same<StopFinding> same : group(stops, StopFinding::wording, one -> "")) {
      if (haltsTold.contains(same.wording)) {
        texts.add(
            phrases.say("stopped-as-above", "why", Texts.lower(title(fill(same.wording, ""), ""))));
      } else {
        say(same.wording, buildUp, texts, used);
      }
      because.addAll(same.because());
    }
    return new Alternative(
        buildUp.way(),
        Standing.RULED_OUT,
        phrases.way(buildUp.way()),
        String.join(" ", texts),
        justifier.of(because, List.copyOf(used)));
  }

  private void say(String wording, BuildUp buildUp, Set<String> texts, Set<Object> used) {
    Wording.Filled filled = fill(wording, "", buildUp.facts());
    texts.add(filled.text());
    used.addAll(filled.used());
  }

  private Alternative secondChoice(BuildUp buildUp, BuildUp chosen, List<ComparedBuildUp> ways) {
    List<Derivation> because = new ArrayList<>();
    buildUp.offers().stream().map(OfferedWay::because).forEach(because::add);
    String text = phrases.say("second-choice");
    List<Object> used = new ArrayList<>();
    for (Criterion criterion : assessment.criteria()) {
      Fact here = buildUp.facts().find(criterion.name());
      Fact there = chosen.facts().find(criterion.name());
      if (here != null && there != null && here.number() != there.number()) {
        String id = "behind-by-" + criterion.name().replace(' ', '-');
        text =
            phrases.say(
                phrases.has(id) ? id : "behind-by",
                "criterion",
                criterion.name(),
                "here",
                here.text(),
                "there",
                there.text(),
                "standing",
                standing(buildUp));
        used.add(here);
        used.add(there);
        because.add(criterion.because());
        break;
      }
    }
    for (ComparedBuildUp way : ways) {
      if (way.id().equals(buildUp.way())) {
        text += gainsAndLosses(way);
      }
    }
    return new Alternative(
        buildUp.way(),
        Standing.SECOND_CHOICE,
        phrases.way(buildUp.way()),
        text,
        justifier.of(because, used));
  }

  private String gainsAndLosses(ComparedBuildUp way) {
    if (way.gains().isEmpty() && way.givesUp().isEmpty()) {
      return "";
    }
    String id =
        way.givesUp().isEmpty()
            ? "only-gains"
            : way.gains().isEmpty() ? "only-losses" : "gains-and-losses";
    return ' '
        + phrases.say(
            id,
            "gains",
            String.join(", ", way.gains()),
            "losses",
            String.join(", ", way.givesUp()));
  }

  private static String standing(BuildUp buildUp) {
    return buildUp.offers().stream().map(OfferedWay::standing).distinct().reduce("", (a, b) -> b);
  }

  private List<Ranking> ranking() {
    Map<String, List<Derivation>> byName = new LinkedHashMap<>();
    for (Criterion criterion : assessment.criteria()) {
      byName.computeIfAbsent(criterion.name(), n -> new ArrayList<>()).add(criterion.because());
    }
    List<Ranking> all = new ArrayList<>();
    byName.forEach(
        (name, because) -> all.add(new Ranking(all.size() + 1, name, justifier.of(because))));
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
      double trim = facts.number("trim needed", door);
      Optional<Boolean> fits =
          Double.isNaN(left)
              ? Optional.empty()
              : Optional.of(Double.isNaN(trim) ? left >= 0 : trim <= 0);
      doors.add(new Door(door, left, fits, facts.number("step at the door", door)));
    }
    LayerThickness above =
        new LayerThickness(
            facts.number("rise least"), facts.number("rise"), facts.number("rise most"));
    return new Heights(buildUp.stack().rise(), above, doors);
  }

  private static double tenth(double number) {
    return Math.round(number * 10) / 10.0;
  }
}
