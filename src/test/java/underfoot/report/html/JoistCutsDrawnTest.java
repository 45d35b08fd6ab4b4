package underfoot.report.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.Phrases;
import underfoot.plan.Advice;
import underfoot.plan.AdviceMaker;
import underfoot.plan.Consequences;
import underfoot.plan.JoistCuts;
import underfoot.plan.JoistCuts.Cut;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.Floors;
import underfoot.reasoning.WhatIf;

/** Notches and holes are drawn where they are, against the zones in which they may lie. */
class JoistCutsDrawnTest {
  private static final Path KITCHEN = Path.of("scenarios/kitchen-with-an-island.yaml");
  private static final String NOTCHES =
      "notches: [{name: heating pipe, depth: 20 mm, from support: 500 mm}]";

  private static Advice advice(String cuts) throws Exception {
    String yaml = Files.readString(KITCHEN);
    assertThat(yaml).contains(NOTCHES);
    byte[] changed = yaml.replace(NOTCHES, cuts).getBytes(StandardCharsets.UTF_8);
    Assessment assessment =
        Floors.advisor().advise(Floors.reader().read(KITCHEN.toString(), changed));
    return AdviceMaker.make(assessment, WhatIf.assumed(assessment), Consequences.none());
  }

  private static String drawn(Advice advice) {
    Phrases phrases = new Phrases(Floors.advisor().knowledge().wording());
    StringBuilder all = new StringBuilder();
    CutDrawing.all(advice.joistCuts(), phrases).forEach(all::append);
    return all.toString();
  }

  @Test
  void a_cut_outside_its_zone_is_crossed_and_one_within_is_not() throws Exception {
    Advice advice =
        advice(
            "notches: [{name: near pipe, depth: 20 mm, from support: 500 mm, joist: \"3\"},"
                + " {name: far pipe, depth: 20 mm, from support: 1500 mm, joist: \"3\"}]");
    JoistCuts joist = advice.joistCuts().get(0);
    assertThat(joist.joist()).isEqualTo("3");
    assertThat(joist.cuts()).extracting(Cut::name).containsExactly("near pipe", "far pipe");
    assertThat(joist.cuts()).extracting(Cut::gated).containsExactly(false, true);
    assertThat(drawn(advice))
        .contains("near pipe: notch 20 mm deep at 500 mm; within its frame.")
        .contains("far pipe: notch 20 mm deep at 1500 mm; clear first.");
  }

  @Test
  void the_zones_are_the_shares_of_span_and_depth_that_the_figures_give() throws Exception {
    JoistCuts joist = advice(NOTCHES).joistCuts().get(0);
    JoistCuts.Zone notches = joist.zones().get(0);
    JoistCuts.Zone holes = joist.zones().get(1);
    assertThat(notches.fromMm()).isCloseTo(340, within(0.01));
    assertThat(notches.toMm()).isCloseTo(680, within(0.01));
    assertThat(notches.mostMm()).isCloseTo(30, within(0.01));
    assertThat(holes.fromMm()).isCloseTo(850, within(0.01));
    assertThat(holes.toMm()).isCloseTo(1360, within(0.01));
    assertThat(holes.mostMm()).isCloseTo(50, within(0.01));
  }

  @Test
  void each_joist_has_a_drawing_and_the_zones_are_told_once() throws Exception {
    Advice advice =
        advice(
            "notches: [{name: pipe, depth: 20 mm, from support: 500 mm, joist: \"3\"}],"
                + " holes: [{name: cable, diameter: 22 mm, from support: 900 mm, joist: \"5\"}]");
    assertThat(advice.joistCuts()).extracting(JoistCuts::joist).containsExactly("3", "5");
    String drawn = drawn(advice);
    assertThat(drawn.split("<svg", -1)).hasSize(3);
    assertThat(drawn.split("<text[^>]*>Broken frame on top", -1)).hasSize(2);
  }

  @Test
  void nothing_is_written_outside_the_drawing_or_over_another_number() throws Exception {
    Advice advice =
        advice(
            "notches: [{name: one, depth: 20 mm, from support: 500 mm},"
                + " {name: two, depth: 20 mm, from support: 510 mm},"
                + " {name: three, depth: 25 mm, from support: 1690 mm}]");
    String drawn = drawn(advice);
    Matcher box = Pattern.compile("viewBox=\"0 0 ([\\d.]+) ([\\d.]+)\"").matcher(drawn);
    assertThat(box.find()).isTrue();
    double wide = Double.parseDouble(box.group(1));
    Matcher number =
        Pattern.compile("<text x=\"([\\d.]+)\" y=\"([\\d.]+)\"[^>]*>([123])</text>").matcher(drawn);
    double last = 0;
    int found = 0;
    while (number.find()) {
      double x = Double.parseDouble(number.group(1));
      assertThat(x).isBetween(last + 8, wide);
      last = x;
      found++;
    }
    assertThat(found).isEqualTo(3);
  }

  @Test
  void a_floor_without_cuts_or_without_a_span_has_no_such_drawing() throws Exception {
    assertThat(advice("partition on joists: no").joistCuts()).isEqualTo(List.of());
    Path bare = Path.of("scenarios/old-wooden-floor-of-which-little-is-known.yaml");
    Assessment assessment =
        Floors.advisor().advise(Floors.reader().read(bare.toString(), Files.readAllBytes(bare)));
    Advice unknown = AdviceMaker.make(assessment, WhatIf.assumed(assessment), Consequences.none());
    assertThat(unknown.joistCuts()).isEmpty();
  }
}
