package underfoot.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import underfoot.reasoning.Floors;

/** The figures that rules judge by are the ones their sources print. */
class FiguresAgainstSourcesTest {
  private static final Path ROWS = Path.of("src/test/resources/published/rule-figures.txt");

  @TestFactory
  Stream<DynamicTest> each_figure_has_the_published_value() throws IOException {
    return Files.readAllLines(ROWS).stream()
        .filter(line -> !line.isBlank() && !line.startsWith("#"))
        .map(line -> line.split(" \\| "))
        .map(
            row ->
                DynamicTest.dynamicTest(
                    row[0] + " after " + row[2] + " (" + row[3] + ", " + row[4] + ")",
                    () -> {
                      Figure figure = Floors.advisor().knowledge().figures().get(row[0]);
                      assertThat(figure.number())
                          .isCloseTo(Double.parseDouble(row[1]), within(1e-9));
                    }));
  }

  @Test
  void every_figure_says_how_well_it_is_known() {
    for (Figure figure : Floors.advisor().knowledge().figures().all()) {
      assertThat(figure.status())
          .as(figure.name())
          .isIn(Floors.advisor().knowledge().statuses().keySet());
    }
  }
}
