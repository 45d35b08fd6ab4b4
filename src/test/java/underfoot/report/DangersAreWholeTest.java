package underfoot.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import underfoot.buildup.Severity;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.TextParts;
import underfoot.plan.Advice;
import underfoot.plan.Advice.CautionNote;
import underfoot.plan.AdviceMaker;
import underfoot.plan.Consequences;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.Floors;
import underfoot.reasoning.WhatIf;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;

/** No form of the advice loses a word of what can hurt somebody, or of what to do instead. */
class DangersAreWholeTest {
  private static final int MADE_UP = 200;

  private static String text(Advice advice, Detail detail) {
    TextPage page = new TextPage(80, false);
    TextReport.write(advice, new Phrases(Floors.advisor().knowledge().wording()), detail, page);
    return page.text().replaceAll("\\s+", " ");
  }

  private static Advice advice(Scenario scenario) throws ScenarioFaults {
    Assessment assessment = Floors.advisor().advise(scenario);
    return AdviceMaker.make(assessment, WhatIf.assumed(assessment), Consequences.none());
  }

  /** How many dangers the advice has; each is whole in every form. */
  private static int whole(Advice advice) {
    int dangers = 0;
    for (CautionNote caution : advice.cautions()) {
      if (caution.severity() != Severity.DANGER) {
        continue;
      }
      dangers++;
      for (Detail detail : Detail.values()) {
        assertThat(text(advice, detail))
            .as(detail + ": " + caution.id())
            .contains(caution.parts().part(TextParts.DANGER))
            .contains(caution.parts().part(TextParts.INSTEAD));
      }
    }
    return dangers;
  }

  @Test
  void every_form_of_every_scenario_has_its_dangers_whole() throws Exception {
    int dangers = 0;
    for (Path file : Floors.examples()) {
      dangers += whole(advice(Floors.reader().read(file.toString(), Files.readAllBytes(file))));
    }
    assertThat(dangers).isGreaterThan(50);
  }

  @Test
  void every_form_of_two_hundred_made_up_floors_has_its_dangers_whole() throws Exception {
    int dangers = 0;
    int floors = 0;
    for (long seed = 1; floors < MADE_UP; seed++) {
      Scenario scenario;
      try {
        scenario =
            Floors.reader()
                .read("made-up.yaml", Floors.madeUp(seed).getBytes(StandardCharsets.UTF_8));
      } catch (ScenarioFaults contradiction) {
        continue;
      }
      dangers += whole(advice(scenario));
      floors++;
    }
    assertThat(dangers).isGreaterThan(MADE_UP);
  }

  @Test
  void the_kitchen_on_boards_says_in_every_form_what_keeps_people_alive() throws Exception {
    Path file = Path.of("scenarios/kitchen-on-tongue-and-groove-boards.yaml");
    Advice advice = advice(Floors.reader().read(file.toString(), Files.readAllBytes(file)));
    for (Detail detail : Detail.values()) {
      assertThat(text(advice, detail))
          .as(detail.toString())
          .contains("FFP3", "Never screw", "gas engineer", "see a doctor");
    }
  }
}
