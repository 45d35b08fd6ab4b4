package underfoot.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.dataformat.yaml.YAMLMapper;
import underfoot.reasoning.Floors;
import underfoot.scenario.Scenario;

/** Layers that must not lie beside each other are named, and the right order is given and holds. */
class WrongNeighboursTest {
  private static final File CASES = new File("src/test/resources/wrong-neighbours.yaml");

  @SuppressWarnings("unchecked")
  private static Map<String, Map<String, String>> cases() {
    return new YAMLMapper().readValue(CASES, Map.class);
  }

  private static Opinion judge(Map<String, String> one, String layers, String grout)
      throws Exception {
    Path floor = Path.of(one.get("floor"));
    Scenario room = Floors.reader().read(floor.toString(), Files.readAllBytes(floor));
    String joints = grout == null ? "" : "grout: " + grout + "\n";
    String yaml = "proposal: mine\nlayers: " + layers + "\nperimeter gap: 8 mm\n" + joints;
    return Proposals.judge(room, Proposals.read("proposal", yaml));
  }

  private static Stream<Opinion.Item> items(Opinion opinion) {
    return Stream.concat(
            opinion.whole().stream(),
            opinion.layers().stream().flatMap(layer -> layer.items().stream()))
        .filter(item -> item.judgement().isFault());
  }

  private static Set<String> rules(Opinion opinion) {
    Set<String> rules = new TreeSet<>();
    items(opinion).forEach(item -> item.because().forEach(why -> rules.add(why.rule().key())));
    return rules;
  }

  @TestFactory
  Stream<DynamicTest> each_wrong_neighbour_is_named_with_what_goes_wrong_and_what_to_do() {
    return cases().entrySet().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.getKey(),
                    () -> {
                      Map<String, String> body = one.getValue();
                      Opinion opinion = judge(body, body.get("wrong"), body.get("grout"));
                      assertThat(rules(opinion)).contains(body.get("rule"));
                      items(opinion)
                          .forEach(
                              item -> {
                                assertThat(item.text()).isNotBlank();
                                assertThat(item.consequence()).isNotBlank();
                                assertThat(item.remedy()).isNotBlank();
                                assertThat(item.text() + item.consequence() + item.remedy())
                                    .doesNotContain("[", "{");
                              });
                    }));
  }

  @TestFactory
  Stream<DynamicTest> in_the_right_order_the_same_rule_is_silent() {
    return cases().entrySet().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.getKey() + ", put right",
                    () -> {
                      Map<String, String> body = one.getValue();
                      Opinion opinion = judge(body, body.get("right"), body.get("grout right"));
                      assertThat(rules(opinion))
                          .as(body.get("right"))
                          .doesNotContain(body.get("rule"))
                          .noneMatch(rule -> rule.startsWith("NEXT-"));
                    }));
  }
}
