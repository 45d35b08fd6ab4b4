package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import tools.jackson.dataformat.yaml.YAMLMapper;
import underfoot.buildup.Conclusion;
import underfoot.buildup.CoverageTarget;
import underfoot.buildup.LayerThickness;
import underfoot.buildup.Remedy;
import underfoot.buildup.RuledOut;
import underfoot.buildup.Stack;
import underfoot.buildup.StackLayer;
import underfoot.buildup.StopFinding;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.From;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.RuleNote;
import underfoot.knowledge.Source;
import underfoot.knowledge.Unknown;
import underfoot.scenario.State;
import underfoot.scenario.StatedFact;

/** What holds of every answer. */
final class Invariants {
  /** A rule that takes a value from a row of kinds has the reason and source of that row. */
  private static final Set<String> RULES =
      Floors.advisor().rules().notes().stream()
          .map(RuleNote::key)
          .collect(Collectors.toUnmodifiableSet());

  /** What can hurt somebody if it is assumed away, and is looked into before anybody builds. */
  private static final Set<String> CAN_KILL =
      Set.of("asbestos survey", "rot", "insect attack", "joist ends damp", "services below");

  /** What each layer may lie on directly. */
  private static final Map<String, Set<String>> TOUCH = touch();

  private Invariants() {}

  @SuppressWarnings("unchecked")
  private static Map<String, Set<String>> touch() {
    Map<String, Map<String, Object>> rows =
        new YAMLMapper()
            .readValue(Path.of("src/test/resources/layers-that-touch.yaml").toFile(), Map.class);
    Map<String, Set<String>> touch = new HashMap<>();
    rows.forEach((upper, row) -> touch.put(upper, Set.copyOf((List<String>) row.get("on"))));
    return touch;
  }

  /** Fails, with what was expected, if an answer breaks a rule of the trade. */
  static void check(Assessment assessment) {
    boolean stops = assessment.verdict() == Verdict.STOP;
    assertThat(assessment.chosen().isPresent())
        .as("a build-up unless the work stops")
        .isNotEqualTo(stops);
    everyConclusionIsJustified(assessment);
    nothingBorrowedRefusesOnAGuess(assessment);
    whatCanKillIsHeldUp(assessment);
    if (stops) {
      assertThat(
              assessment.general().stream().anyMatch(one -> one instanceof StopFinding)
                  || assessment.buildUps().stream()
                      .anyMatch(c -> !c.of(StopFinding.class).isEmpty()))
          .as("a stop is explained")
          .isTrue();
    } else {
      theBuildUpIsWhole(assessment, assessment.chosen().orElseThrow());
    }
    for (BuildUp buildUp : assessment.buildUps()) {
      everyBuildUpKeepsTheTradesRules(buildUp);
    }
  }

  /** A limit that holds elsewhere refuses nothing on a value that is only assumed. */
  private static void nothingBorrowedRefusesOnAGuess(Assessment assessment) {
    List<Conclusion> all = new java.util.ArrayList<>(assessment.general());
    assessment.buildUps().forEach(buildUp -> all.addAll(buildUp.concluded()));
    for (Conclusion one : all) {
      boolean refuses = one instanceof StopFinding || one instanceof RuledOut;
      String source = one.because().rule().source();
      if (refuses && !assessment.knowledge().source(source).holds().isEmpty()) {
        assertThat(one.because().premises())
            .as("%s refuses by a borrowed limit", one.because().rule().id())
            .noneMatch(premise -> premise instanceof Fact fact && fact.from() == From.ASSUMED);
      }
    }
  }

  private static void everyConclusionIsJustified(Assessment assessment) {
    Knowledge knowledge = assessment.knowledge();
    assessment.general().forEach(one -> justified(one.because(), knowledge));
    for (BuildUp buildUp : assessment.buildUps()) {
      buildUp.concluded().forEach(one -> justified(one.because(), knowledge));
      for (StackLayer layer : buildUp.stack().layers()) {
        assertThat(layer.because()).as("why %s is laid", layer.kind().id()).isNotEmpty();
        layer.because().forEach(because -> justified(because, knowledge));
      }
    }
  }

  private static void justified(Derivation because, Knowledge knowledge) {
    assertThat(RULES).as("the rules of the rule base").contains(because.rule().key());
    Source source = knowledge.source(because.rule().source());
    assertThat(knowledge.statuses()).containsKey(source.status());
    assertThat(because.premises()).as("what %s rests on", because.rule().id()).isNotEmpty();
  }

  private static void whatCanKillIsHeldUp(Assessment assessment) {
    List<Conclusion> all = new java.util.ArrayList<>(assessment.general());
    assessment.buildUps().forEach(buildUp -> all.addAll(buildUp.concluded()));
    for (Conclusion one : all) {
      if (one instanceof StopFinding stopFinding && stopFinding.isStop()) {
        assertThat(one.because().premises())
            .as("a bare stop because of what is not known: %s", stopFinding.wording())
            .noneMatch(
                premise -> premise instanceof Unknown unknown && CAN_KILL.contains(unknown.name()));
      }
    }
    boolean timber = assessment.facts().text("base family").equals("timber");
    boolean held = assessment.general().stream().anyMatch(Invariants::isHold);
    if (timber
        && !(all.stream()
            .anyMatch(o -> o instanceof StopFinding stopFinding && stopFinding.isStop()))) {
      for (String name : List.of("rot", "services below")) {
        if (unknown(assessment, name)) {
          assertThat(held).as("the work is held up until %s is known", name).isTrue();
          assertThat(assessment.verdict()).isNotEqualTo(Verdict.SOUND);
        }
      }
    }
    if (assessment.facts().text("asbestos suspicion").equals("yes")
        && unknown(assessment, "asbestos survey")) {
      assertThat(assessment.verdict()).as("suspected asbestos").isNotEqualTo(Verdict.SOUND);
      assertThat(held).as("suspected asbestos is sampled first").isTrue();
    }
  }

  private static boolean isHold(Conclusion one) {
    return one instanceof Remedy remedy && remedy.hold();
  }

  private static boolean unknown(Assessment assessment, String name) {
    return assessment.scenario().givens().stream()
        .filter(given -> given.called().equals(name))
        .map(StatedFact::state)
        .anyMatch(state -> state == State.UNKNOWN);
  }

  private static void theBuildUpIsWhole(Assessment assessment, BuildUp chosen) {
    List<StackLayer> layers = chosen.stack().layers();
    assertThat(layers.get(layers.size() - 1).kind().id()).as("the top layer").isEqualTo("tile");
    assertThat(layers.get(layers.size() - 2).kind().acts())
        .as("what the layer beneath the tile is for")
        .contains("bed the tiles");
    assertThat(assessment.of(CoverageTarget.class)).as("a coverage target").isNotEmpty();
    if (assessment.verdict() == Verdict.SOUND) {
      assertThat(assessment.of(Remedy.class)).as("remedies under sound").isEmpty();
    }
  }

  private static void everyBuildUpKeepsTheTradesRules(BuildUp buildUp) {
    List<StackLayer> layers = buildUp.stack().layers();
    Facts facts = buildUp.facts();
    for (int i = 0; i < layers.size(); i++) {
      String upper = layers.get(i).kind().id();
      assertThat(TOUCH).as("what may lie under a layer").containsKey(upper);
      if (i > 0) {
        assertThat(TOUCH.get(upper))
            .as("what %s lies on directly, in the build-up %s", upper, buildUp.way())
            .contains(layers.get(i - 1).kind().id());
      }
    }
    LayerThickness rise = buildUp.stack().rise();
    double sum = layers.stream().mapToDouble(layer -> layer.thickness().mean()).sum();
    assertThat(rise.mean()).as("the heights add up").isCloseTo(sum, within(1e-9));
    assertThat(rise.min()).isLessThanOrEqualTo(rise.mean());
    assertThat(rise.mean()).isLessThanOrEqualTo(rise.max());
    double least =
        Floors.advisor().knowledge().figures().all().stream()
            .filter(figure -> figure.name().startsWith("contact-american-dry"))
            .mapToDouble(figure -> figure.number())
            .findFirst()
            .orElseThrow();
    for (CoverageTarget target : buildUp.of(CoverageTarget.class)) {
      assertThat(target.figure().number()).as("contact aimed for").isGreaterThanOrEqualTo(least);
    }
    if (facts.text("base family").equals("timber")) {
      assertThat(buildUp.stack().has("plain-leveller"))
          .as("a leveller without fibres on timber")
          .isFalse();
    }
    if (facts.text("base").equals("calcium sulfate screed")
        && buildUp.stands()
        && !buildUp.stack().has("new-screed")) {
      assertThat(layers.get(0).kind().id())
          .as("what lies on the calcium sulfate")
          .isIn("sulfate-sealer", "surface-dpm");
      assertThat(buildUp.stack().has("sulfate-sealer")).as("calcium sulfate sealed").isTrue();
    }
    if (facts.text("wetness").equals("soaked") && buildUp.stands()) {
      assertThat(sealed(buildUp.stack())).as("a soaked floor is sealed").isTrue();
    }
    theScrewEndsInTheDeck(buildUp, facts);
  }

  /** Whether something in it seals the floor. */
  static boolean sealed(Stack stack) {
    return stack.layers().stream().anyMatch(layer -> layer.kind().family().equals("sealing"));
  }

  /** Held against the deck and the boards alone, by another road than the program's own. */
  private static void theScrewEndsInTheDeck(BuildUp buildUp, Facts facts) {
    double screw = facts.number("board screw");
    if (Double.isNaN(screw)) {
      return;
    }
    double above = facts.number("overlay thickness");
    double deck =
        buildUp.stack().layers().stream()
            .filter(StackLayer::replacesDeck)
            .mapToDouble(layer -> layer.thickness().min())
            .findFirst()
            .orElse(facts.number("deck thickness"));
    assertThat(screw)
        .as("a screw of %s mm through %s mm into a deck of %s mm", screw, above, deck)
        .isLessThan(above + deck);
  }
}
