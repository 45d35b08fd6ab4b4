package underfoot.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import underfoot.knowledge.Knowledge;
import underfoot.reasoning.Advisor;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.Floors;
import underfoot.reasoning.LeastChange;
import underfoot.reasoning.WhatIf;
import underfoot.report.GoldenJson;
import underfoot.report.JsonReport;
import underfoot.report.MadeBy;
import underfoot.scenario.Scenario;

/**
 * What is made of conclusions, against the advice that was reviewed. Most floors are thought
 * through once and their advice made from that every time, so that this test is quick enough to be
 * asked about every formula with one thing wrong.
 */
class ReviewedAdviceTest {
  private static final Map<String, Reasoned> REASONED = new ConcurrentHashMap<>();

  private record Reasoned(
      Assessment assessment,
      List<WhatIf.Assumed> assumed,
      List<WhatIf.Unsaid> unsaid,
      LeastChange.Found changes) {}

  private static Reasoned reason(String name) {
    try {
      Path file = Path.of("scenarios", name + ".yaml");
      Scenario scenario =
          Floors.reader().read(file.toString().replace('\\', '/'), Files.readAllBytes(file));
      Knowledge knowledge = Floors.advisor().knowledge();
      Advisor advisor =
          new Advisor(Floors.advisor().rules(), knowledge, new Planner(knowledge.prices()))
              .remembering();
      Assessment assessment = advisor.advise(scenario);
      WhatIf whatIf = new WhatIf(advisor);
      return new Reasoned(
          assessment,
          whatIf.of(assessment),
          whatIf.unsaid(assessment),
          LeastChange.of(advisor, assessment));
    } catch (Exception e) {
      throw new IllegalStateException(name, e);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "cafe-where-the-opening-day-decides",
        "l-shaped-kitchen-with-a-chimney-breast-and-two-doors",
        "landing-where-a-fire-door-decides-the-height",
        "limestone-on-joists-that-bend-too-far",
        "shower-room-with-an-electric-mat-on-plywood",
        GoldenJson.WHOLE,
        "wet-room-on-an-upper-timber-floor",
      })
  void conclusions_become_the_advice_that_was_reviewed(String name) throws Exception {
    Reasoned known = REASONED.get(name);
    Reasoned reasoned = known == null ? reason(name) : known;
    assertThat(advice(name, reasoned)).isEqualTo(golden(name));
    // Kept only once it was seen to be right.
    REASONED.put(name, reasoned);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "cafe-where-the-opening-day-decides",
        "hall-where-the-budget-decides",
        "landing-where-a-fire-door-decides-the-height",
        "study-where-the-weight-decides",
      })
  void floors_thought_through_afresh_get_the_advice_that_was_reviewed(String name)
      throws Exception {
    assertThat(advice(name, reason(name))).isEqualTo(golden(name));
  }

  private static String advice(String name, Reasoned reasoned) {
    Assessment assessment = reasoned.assessment();
    Planner planner = new Planner(assessment.knowledge().prices());
    Consequences consequences =
        ChangeNotes.add(
            planner.of(assessment, new Justifier(assessment.scenario(), assessment.knowledge())),
            assessment.knowledge(),
            reasoned.changes(),
            planner);
    StringWriter json = new StringWriter();
    JsonReport.write(
        AdviceMaker.make(assessment, reasoned.assumed(), reasoned.unsaid(), consequences),
        new MadeBy("a version", "a digest", ""),
        json);
    return withoutTool(GoldenJson.of(name, json.toString()));
  }

  private static String golden(String name) throws Exception {
    return withoutTool(Files.readString(Path.of("src/test/resources/golden", name + ".json")));
  }

  private static String withoutTool(String json) {
    return json.replaceAll("\"tool\": \\{[^}]*}", "");
  }
}
