package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.dataformat.yaml.YAMLMapper;
import underfoot.buildup.Caution;
import underfoot.buildup.Conclusion;
import underfoot.buildup.Laid;
import underfoot.buildup.LayerNote;
import underfoot.buildup.Remedy;
import underfoot.buildup.StepTime;
import underfoot.buildup.StopFinding;
import underfoot.language.Effect;
import underfoot.language.Effect.Place;
import underfoot.language.Rule;
import underfoot.scenario.Scenario;

/** What a rule forbids is asked for as soon as the rule is gone, and is not while it is there. */
class ProhibitionsTest {
  private static final Path FILE = Path.of("src/test/resources/prohibitions.yaml");

  /** A rule, the act it forbids, and a floor on which something asks for it but for the rule. */
  record Prohibition(
      String rule,
      String act,
      String floor,
      Map<String, String> change,
      Map<String, String> otherwise) {}

  private static List<Prohibition> all() throws Exception {
    YAMLMapper mapper = new YAMLMapper();
    return mapper.readValue(
        FILE.toFile(),
        mapper.getTypeFactory().constructCollectionType(List.class, Prohibition.class));
  }

  @TestFactory
  Stream<DynamicTest> what_is_forbidden_would_be_asked_for_without_the_rule() throws Exception {
    return all().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.rule() + " " + one.act(),
                    () -> {
                      Advisor advisor = Floors.advisor();
                      Scenario floor = Floors.change(Floors.read(one.floor()), one.change());
                      assertThat(asked(advisor, floor)).doesNotContain(one.act());
                      assertThat(
                              one.otherwise() == null
                                  ? asked(without(one.rule()), floor)
                                  : asked(advisor, Floors.change(floor, one.otherwise())))
                          .contains(one.act());
                    }));
  }

  /** What nothing asks for anywhere is forbidden all the same, lest a text come to ask for it. */
  @Test
  void every_prohibition_of_what_something_asks_for_has_a_floor() throws Exception {
    Set<String> askedFor = ActLint.askedFor(Floors.advisor().knowledge());
    Set<String> forbidden = new TreeSet<>();
    for (Rule rule : Floors.advisor().rules().set().rules()) {
      for (Effect effect : rule.effects()) {
        boolean canBeAsked =
            effect.verb() == Effect.Verb.FORBID && askedFor.contains(effect.word(Place.ACT));
        if (canBeAsked) {
          forbidden.add(rule.id() + " " + effect.word(Place.ACT));
        }
      }
    }
    Set<String> floors = new TreeSet<>();
    all().forEach(one -> floors.add(one.rule() + " " + one.act()));
    assertThat(floors).isEqualTo(forbidden);
  }

  private static Advisor without(String rule) {
    Mutants mutants = new Mutants();
    return mutants.advisor(
        mutants.all().stream()
            .filter(one -> one.wrong() == null && one.rule().key().equals(rule))
            .findFirst()
            .orElseThrow());
  }

  private static Set<String> asked(Advisor advisor, Scenario floor) {
    Assessment assessment = advisor.advise(floor);
    List<Conclusion> told = new ArrayList<>();
    for (Class<? extends Conclusion> sort :
        List.of(
            Remedy.class,
            StopFinding.class,
            Caution.class,
            LayerNote.class,
            StepTime.class,
            Laid.class)) {
      told.addAll(assessment.of(sort));
    }
    Set<String> asked = new TreeSet<>();
    told.forEach(conclusion -> asked.addAll(ActsApplied.asked(advisor.knowledge(), conclusion)));
    assessment.chosen().ifPresent(way -> asked.addAll(advisor.knowledge().acts().ofWay(way.way())));
    return asked;
  }
}
