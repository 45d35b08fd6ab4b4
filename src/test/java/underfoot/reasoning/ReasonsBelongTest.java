package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The reason told first for a layer is that of the decision that made it what it is. */
class ReasonsBelongTest {
  @Test
  void a_bed_that_grew_because_stone_is_ungauged_says_so() throws Exception {
    assertThat(bed("material: slate", "gauged: no")).isEqualTo("BED-07");
  }

  @Test
  void a_bed_as_thick_as_its_notch_leaves_it_says_so() throws Exception {
    assertThat(bed("material: porcelain", "edges: pressed")).isEqualTo("BED-04");
  }

  private static String bed(String material, String more) throws Exception {
    String floor =
        Files.readString(Path.of("src/test/resources/floors/slab.yaml"))
            .replace("material: porcelain", material)
            .replace("edges: pressed", more);
    Assessment assessment =
        Floors.advisor()
            .advise(Floors.reader().read("slab.yaml", floor.getBytes(StandardCharsets.UTF_8)));
    return assessment.chosen().orElseThrow().stack().layers().stream()
        .filter(layer -> layer.kind().id().equals("tile-bed"))
        .findFirst()
        .orElseThrow()
        .because()
        .get(0)
        .rule()
        .id();
  }
}
