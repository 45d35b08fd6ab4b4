package underfoot.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import underfoot.scenario.RuleFiles;
import underfoot.working.Fall;
import underfoot.working.Result;

@DisplayName("The catalogue of workings")
class WorkingsTest {
  private static final Path FILE = Path.of("rules/figures/workings-defaults.yaml");

  @TempDir Path rules;

  /** The catalogue of the shipped figures with one text in the place of another. */
  private Workings with(String text, String other) throws IOException, KnowledgeFault {
    Path folder = Files.createDirectories(rules.resolve("figures"));
    String shipped = Files.readString(FILE);
    assertThat(shipped).contains(text);
    Files.writeString(folder.resolve("figures.yaml"), shipped.replace(text, other));
    return new Workings(Figures.load(RuleFiles.of(rules), "uk"));
  }

  private static String steps(Workings workings, String name, Map<String, String> keys) {
    Result result = workings.named(name).read(keys);
    return String.join("\n", result.steps()) + "\n" + String.join("\n", result.notes());
  }

  @Test
  @DisplayName(
      "takes its limits and material values from the figures, in the units of the formulas")
  void figures() throws Exception {
    Workings shipped = Workings.standard();
    assertThat(steps(shipped, "straightedge-gap", Map.of("positions", "0,1", "heights", "0,1")))
        .contains("one of 2 m is taken");
    Map<String, String> heating =
        Map.of(
            "screed",
            "cement",
            "start-day",
            "20",
            "from",
            "20 C",
            "to",
            "45 C",
            "step",
            "5 K",
            "hold",
            "3");
    assertThat(steps(shipped, "heating-programme", heating)).contains("first warmed on day 21");
    assertThat(
            steps(
                shipped, "movement-bays", Map.of("length", "9 m", "width", "6 m", "heated", "yes")))
        .contains("no side over 8 m, no bay over 40 m2");
    assertThat(steps(shipped, "drying-time", Map.of("screed", "cement", "thickness", "65 mm")))
        .contains("1 a mm for the first 50 mm, then 2 a mm");
    // EN 338: C24 has E0,mean 11 kN/mm2.
    Map<String, String> joist =
        Map.of(
            "breadth",
            "47 mm",
            "depth",
            "195 mm",
            "grade",
            "C24",
            "centres",
            "400 mm",
            "load",
            "1.5 kN/m2",
            "span",
            "4 m");
    assertThat(steps(shipped, "joist-deflection", joist)).contains("E = 11000 N/mm2");
    assertThat(steps(shipped, "screw-length", Map.of("overlay", "12 mm", "deck", "18 mm")))
        .contains("of 16, 20, 25, 30, 35, 40, 45, 50, 60 mm");
  }

  @Test
  @DisplayName("takes a figure in any unit of its kind")
  void otherUnits() throws Exception {
    assertThat(
            steps(
                with("value: \"2 m\"\n", "value: 6 ft 6 in\n"),
                "straightedge-gap",
                Map.of("positions", "0,1", "heights", "0,1")))
        .contains("one of 1.9812 m is taken");
  }

  @Test
  @DisplayName("names the figure that is missing")
  void missing() {
    assertThatThrownBy(() -> with("fall-gentlest:", "fall-gentle:"))
        .isInstanceOf(MissingKnowledge.class)
        .hasMessageContaining("fall-gentlest");
  }

  @Test
  @DisplayName("leaves no working out, and each is found by its own name")
  void everyWorking() {
    Workings workings = Workings.standard();
    assertThat(workings.all()).hasSize(22);
    workings.all().forEach(one -> assertThat(workings.named(one.name())).isSameAs(one));
    for (Fall.Drain drain : Fall.Drain.values()) {
      assertThat(Fall.Drain.named(drain.words())).isEqualTo(drain);
    }
    assertThatIllegalArgumentException().isThrownBy(() -> Fall.Drain.named("ceiling"));
  }
}
