package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import underfoot.buildup.Conclusion;
import underfoot.buildup.Halt;
import underfoot.buildup.LayerThickness;
import underfoot.buildup.Remedy;
import underfoot.buildup.StackLayer;
import underfoot.buildup.Target;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Because;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.RuleNote;
import underfoot.knowledge.Unknown;
import underfoot.scenario.Given;
import underfoot.scenario.State;

/** What holds of every answer. */
final class Invariants {
  private static final Set<RuleNote> NOTES =
      Floors.advisor().rules().notes().stream().collect(Collectors.toUnmodifiableSet());

  /** What can hurt somebody if it is assumed away, and is looked into before anybody builds. */
  private static final Set<String> CAN_KILL =
      Set.of("asbestos survey", "rot", "insect attack", "joist ends damp", "services below");

  private Invariants() {}

  /** Fails, with what was expected, if an answer breaks a rule of the trade. */
  static void check(Counsel counsel) {
    boolean stops = counsel.verdict() == Verdict.STOP;
    assertThat(counsel.chosen().isPresent())
        .as("a build-up unless the work stops")
        .isNotEqualTo(stops);
    everyConclusionIsJustified(counsel);
    whatCanKillIsHeldUp(counsel);
    if (stops) {
      assertThat(
              counsel.general().stream().anyMatch(one -> one instanceof Halt)
                  || counsel.candidates().stream().anyMatch(c -> !c.of(Halt.class).isEmpty()))
          .as("a stop is explained")
          .isTrue();
    } else {
      theBuildUpIsWhole(counsel, counsel.chosen().orElseThrow());
    }
    for (Candidate candidate : counsel.candidates()) {
      everyBuildUpKeepsTheTradesRules(candidate);
    }
  }

  private static void everyConclusionIsJustified(Counsel counsel) {
    Knowledge knowledge = counsel.knowledge();
    counsel.general().forEach(one -> justified(one.because(), knowledge));
    for (Candidate candidate : counsel.candidates()) {
      candidate.concluded().forEach(one -> justified(one.because(), knowledge));
      for (StackLayer layer : candidate.stack().layers()) {
        assertThat(layer.because()).as("why %s is laid", layer.kind().id()).isNotEmpty();
        layer.because().forEach(because -> justified(because, knowledge));
      }
    }
  }

  private static void justified(Because because, Knowledge knowledge) {
    assertThat(NOTES).as("the rules of the rule base").contains(because.rule());
    assertThat(knowledge.sources()).containsKey(because.rule().source());
    assertThat(because.premises()).as("what %s rests on", because.rule().id()).isNotEmpty();
  }

  private static void whatCanKillIsHeldUp(Counsel counsel) {
    List<Conclusion> all = new java.util.ArrayList<>(counsel.general());
    counsel.candidates().forEach(candidate -> all.addAll(candidate.concluded()));
    for (Conclusion one : all) {
      if (one instanceof Halt halt && halt.isStop()) {
        assertThat(one.because().premises())
            .as("a bare stop because of what is not known: %s", halt.wording())
            .noneMatch(
                premise -> premise instanceof Unknown unknown && CAN_KILL.contains(unknown.name()));
      }
    }
    boolean timber = counsel.facts().text("base family").equals("timber");
    boolean held = counsel.general().stream().anyMatch(Invariants::isHold);
    if (timber && !(all.stream().anyMatch(o -> o instanceof Halt halt && halt.isStop()))) {
      for (String name : List.of("rot", "services below")) {
        if (unknown(counsel, name)) {
          assertThat(held).as("the work is held up until %s is known", name).isTrue();
          assertThat(counsel.verdict()).isNotEqualTo(Verdict.SOUND);
        }
      }
    }
    if (counsel.facts().text("asbestos suspicion").equals("yes")
        && unknown(counsel, "asbestos survey")) {
      assertThat(counsel.verdict()).as("suspected asbestos").isNotEqualTo(Verdict.SOUND);
      assertThat(held).as("suspected asbestos is sampled first").isTrue();
    }
  }

  private static boolean isHold(Conclusion one) {
    return one instanceof Remedy remedy && remedy.hold();
  }

  private static boolean unknown(Counsel counsel, String name) {
    return counsel.scenario().givens().stream()
        .filter(given -> given.called().equals(name))
        .map(Given::state)
        .anyMatch(state -> state == State.UNKNOWN);
  }

  private static void theBuildUpIsWhole(Counsel counsel, Candidate chosen) {
    List<StackLayer> layers = chosen.stack().layers();
    assertThat(layers.get(layers.size() - 1).kind().id()).as("the top layer").isEqualTo("tile");
    assertThat(chosen.stack().has("tile-bed")).as("a tile bed").isTrue();
    assertThat(counsel.of(Target.class)).as("a coverage target").isNotEmpty();
    if (counsel.verdict() == Verdict.SOUND) {
      assertThat(counsel.of(Remedy.class)).as("remedies under sound").isEmpty();
    }
  }

  private static void everyBuildUpKeepsTheTradesRules(Candidate candidate) {
    List<StackLayer> layers = candidate.stack().layers();
    Facts facts = candidate.facts();
    assertThat(layers)
        .extracting(layer -> layer.kind().place())
        .as("the layers of %s from the base up", candidate.route())
        .isSorted();
    LayerThickness rise = candidate.stack().rise();
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
    for (Target target : candidate.of(Target.class)) {
      assertThat(target.figure().number()).as("contact aimed for").isGreaterThanOrEqualTo(least);
    }
    if (facts.text("base family").equals("timber")) {
      assertThat(candidate.stack().has("plain-leveller"))
          .as("a leveller without fibres on timber")
          .isFalse();
    }
    if (facts.text("base").equals("calcium sulfate screed")
        && candidate.stands()
        && !candidate.stack().has("new-screed")) {
      assertThat(layers.get(0).kind().id())
          .as("what lies on the calcium sulfate")
          .isIn("sulfate-sealer", "surface-dpm");
      assertThat(candidate.stack().has("sulfate-sealer")).as("calcium sulfate sealed").isTrue();
    }
    if (facts.text("wetness").equals("soaked") && candidate.stands()) {
      assertThat(candidate.stack().has("tanking") || candidate.stack().has("membrane-sealing"))
          .as("a soaked floor is sealed")
          .isTrue();
    }
    theScrewEndsInTheDeck(candidate, facts);
  }

  /** Held against the deck and the boards alone, by another road than the program's own. */
  private static void theScrewEndsInTheDeck(Candidate candidate, Facts facts) {
    double screw = facts.number("board screw");
    if (Double.isNaN(screw)) {
      return;
    }
    double above = facts.number("overlay thickness");
    double deck =
        candidate.stack().layers().stream()
            .filter(StackLayer::replacesDeck)
            .mapToDouble(layer -> layer.thickness().min())
            .findFirst()
            .orElse(facts.number("deck thickness"));
    assertThat(screw)
        .as("a screw of %s mm through %s mm into a deck of %s mm", screw, above, deck)
        .isLessThan(above + deck);
  }
}
