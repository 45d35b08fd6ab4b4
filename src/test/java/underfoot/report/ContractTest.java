package underfoot.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underfoot.knowledge.RuleNote;
import underfoot.plan.Advice;
import underfoot.plan.Advice.Decision;
import underfoot.plan.AdviceMaker;
import underfoot.plan.Consequences;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.Floors;
import underfoot.reasoning.WhatIf;
import underfoot.scenario.Scenario;

/** What the format {@code underfoot.advice/1} promises holds for every scenario. */
class ContractTest {
  private static final int LARGEST = 1_000_000;
  private static final Set<String> STATUSES =
      Set.of(
          "published",
          "quoted",
          "named-from-memory",
          "common-practice",
          "house-judgement",
          "planning-allowance",
          "assumption",
          "contract");
  private static final Set<String> FROM = Set.of("scenario", "measured", "assumed", "concluded");

  private static final Set<String> RULES = new HashSet<>();

  static {
    Floors.advisor().rules().notes().stream().map(RuleNote::id).forEach(RULES::add);
  }

  @TestFactory
  Stream<DynamicTest> the_json_of_every_scenario_keeps_the_contract() throws Exception {
    return scenarios().map(file -> DynamicTest.dynamicTest(file.toString(), () -> check(file)));
  }

  @TestFactory
  Stream<DynamicTest> why_explains_every_id_of_every_scenario() throws Exception {
    return scenarios().map(file -> DynamicTest.dynamicTest(file.toString(), () -> explain(file)));
  }

  private static Stream<Path> scenarios() throws Exception {
    List<Path> all;
    try (Stream<Path> own = Files.list(Path.of("scenarios"));
        Stream<Path> floors = Files.list(Path.of("src/test/resources/floors"))) {
      all =
          Stream.concat(own, floors)
              .filter(file -> file.toString().endsWith(".yaml"))
              .sorted()
              .toList();
    }
    return all.stream();
  }

  private static Advice advice(Path file) throws Exception {
    Scenario scenario = Floors.reader().read(file.toString(), Files.readAllBytes(file));
    Assessment assessment = Floors.advisor().advise(scenario);
    return AdviceMaker.make(
        assessment, new WhatIf(Floors.advisor()).of(assessment), Consequences.none());
  }

  private static JsonNode json(Advice advice) {
    StringWriter out = new StringWriter();
    JsonReport.write(advice, new MadeBy("trial", "trial", ""), out);
    assertThat(out.toString().length()).isLessThan(LARGEST);
    return JsonMapper.shared().readTree(out.toString());
  }

  private static void check(Path file) throws Exception {
    JsonNode json = json(advice(file));
    assertThat(json.get("format").asString()).isEqualTo("underfoot.advice/1");
    assertThat(json.get("scenario").asString()).isNotBlank();
    assertThat(json.get("summary").asString()).isNotBlank().doesNotContain("<", ">", "{", "[");
    String verdict = json.get("verdict").asString();
    assertThat(verdict).isIn("sound", "sound-once-put-right", "outside-guidance", "stop");
    if (verdict.equals("stop")) {
      assertThat(json.get("layers").isEmpty()).isTrue();
      assertThat(json.get("halts").isEmpty()).isFalse();
    } else {
      assertThat(json.get("layers").isEmpty()).isFalse();
    }
    if (verdict.equals("sound")) {
      assertThat(json.get("remedies").isEmpty()).isTrue();
    }
    JsonNode rise = json.get("heights").get("riseMm");
    for (String part : List.of("min", "mean", "max")) {
      double sum = 0;
      for (JsonNode layer : json.get("layers")) {
        sum += layer.get("thicknessMm").get(part).asDouble();
      }
      assertThat(sum).as("sum of " + part).isCloseTo(rise.get(part).asDouble(), within(1e-4));
    }
    int order = 0;
    for (JsonNode layer : json.get("layers")) {
      assertThat(layer.get("order").asInt()).isEqualTo(++order);
      assertThat(layer.get("spec").isArray()).isTrue();
      assertThat(layer.get("fixing").isString()).isTrue();
    }
    for (String list :
        List.of("halts", "layers", "remedies", "cautions", "assumptions", "alternatives")) {
      for (JsonNode one : json.get(list)) {
        because(list, one);
        if (!list.equals("assumptions")) {
          assertThat(one.get("id").asString()).isNotBlank();
        }
      }
    }
    for (JsonNode one : json.get("cautions")) {
      assertThat(one.get("severity").asString()).isIn("danger", "care", "note");
    }
    for (JsonNode one : json.get("alternatives")) {
      assertThat(one.get("standing").asString()).isIn("second choice", "ruled out");
    }
    if (json.get("coverage").isObject()) {
      because("coverage", json.get("coverage"));
      assertThat(json.get("coverage").get("targetPercent").asDouble()).isBetween(50.0, 100.0);
    }
    for (String name : List.of("massKgPerM2", "quantities", "programme")) {
      assertThat(json.has(name)).as(name).isTrue();
    }
  }

  private static void because(String where, JsonNode one) {
    assertThat(one.get("because").size()).as(where + " " + one.get("id")).isPositive();
    one.get("because").forEach(ContractTest::justification);
  }

  private static void justification(JsonNode one) {
    assertThat(one.get("rule").asString()).isIn(RULES);
    assertThat(one.get("reason").asString()).isNotBlank();
    assertThat(one.get("source").asString()).isNotBlank();
    assertThat(one.get("sourceStatus").asString()).isIn(STATUSES);
    for (JsonNode fact : one.get("facts")) {
      assertThat(fact.get("fact").asString()).isNotBlank();
      assertThat(fact.get("value").isString()).isTrue();
      assertThat(fact.get("from").asString()).isIn(FROM);
    }
    for (JsonNode figure : one.get("figures")) {
      assertThat(figure.get("figure").asString()).isNotBlank();
      assertThat(figure.get("value").isNumber()).isTrue();
      assertThat(figure.get("unit").isString()).isTrue();
    }
    one.get("rests-on").forEach(ContractTest::justification);
  }

  private static void explain(Path file) throws Exception {
    Advice advice = advice(file);
    assertThat(advice.decisions()).isNotEmpty();
    for (Decision decision : advice.decisions()) {
      List<Decision> found = WhyReport.find(advice, decision.id());
      assertThat(found).as(decision.id()).contains(decision);
      TextPage page = new TextPage(80, false);
      WhyReport.write(found, Floors.advisor().knowledge(), page);
      assertThat(page.text())
          .as(decision.id())
          .contains("‹" + decision.because().get(0).rule().id() + "›");
      assertThat(page.text().lines()).allMatch(line -> TextPage.length(line) <= 80);
    }
  }
}
