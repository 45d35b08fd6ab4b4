package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import underfoot.scenario.Scenario;

/** The same floor told in other units gets the same advice. */
class ToldOtherwiseTest {
  @TestFactory
  Stream<DynamicTest> inches_and_millimetres_get_the_same_advice() throws Exception {
    return Floors.examples().stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getFileName().toString(),
                    () -> {
                      String metric = Files.readString(file);
                      String imperial = inInches(metric);
                      assertThat(imperial).isNotEqualTo(metric);
                      Assessment one = advise(metric);
                      Assessment other = advise(imperial);
                      assertThat(other.verdict()).isEqualTo(one.verdict());
                      assertThat(other.chosen().map(BuildUp::way))
                          .isEqualTo(one.chosen().map(BuildUp::way));
                      assertThat(Floors.rulesOf(other)).isEqualTo(Floors.rulesOf(one));
                    }));
  }

  /** Every length in millimetres, to nine decimals of an inch, keys left alone. */
  private static String inInches(String yaml) {
    return Pattern.compile("(?<=[:\\[ ])(-?\\d+(?:\\.\\d+)?) mm(?=[,}\\]\\n])")
        .matcher(yaml)
        .replaceAll(
            length ->
                String.format(Locale.ROOT, "%.9f in", Double.parseDouble(length.group(1)) / 25.4));
  }

  private static Assessment advise(String yaml) throws Exception {
    Scenario scenario = Floors.reader().read("told.yaml", yaml.getBytes(StandardCharsets.UTF_8));
    return Floors.advisor().advise(scenario);
  }
}
