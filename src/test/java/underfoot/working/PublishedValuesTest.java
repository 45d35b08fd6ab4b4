package underfoot.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import underfoot.knowledge.Workings;

@DisplayName("Published and derived values")
class PublishedValuesTest {
  private static final Workings WORKINGS = Workings.standard();

  @TestFactory
  @DisplayName("come out of the workings within the tolerance of their row")
  Stream<DynamicTest> everyRow() {
    return PublishedRow.all().stream()
        .map(row -> dynamicTest(row.file() + ": " + row.id(), () -> check(row)));
  }

  private static void check(PublishedRow row) {
    Measure measure = WORKINGS.named(row.working()).read(row.keys()).results().get(row.result());
    assertThat(measure).as("result %s", row.result()).isNotNull();
    double expected = PublishedRow.in(measure.unit(), row.value());
    double tolerance = PublishedRow.in(measure.unit(), row.tolerance());
    assertThat(measure.value())
        .as("%s (%s)", row.source(), row.status())
        .isCloseTo(expected, within(Math.max(tolerance, 1e-9 * Math.abs(expected))));
  }

  @TestFactory
  @DisplayName("of the IRC that deflection governs come out to the printed inch")
  Stream<DynamicTest> printedInches() {
    return PublishedRow.of("joist-spans-irc.txt").stream()
        .map(
            row ->
                dynamicTest(
                    row.id(),
                    () -> {
                      double span =
                          WORKINGS.named("joist-span").read(row.keys()).value("span") / 0.0254;
                      double printed = PublishedRow.in("m", row.value()) / 0.0254;
                      assertThat(Math.round(span)).isEqualTo(Math.round(printed));
                    }));
  }

  @Test
  @DisplayName("number at least 150 that were read or derived, each named once")
  void thereAreEnough() {
    List<PublishedRow> rows = PublishedRow.all();
    assertThat(rows.stream().filter(row -> !row.fromMemory())).hasSizeGreaterThanOrEqualTo(150);
    assertThat(rows).extracting(PublishedRow::id).doesNotHaveDuplicates();
  }

  @Test
  @DisplayName("say their status, and say so where they are from memory")
  void statusIsTold() {
    for (PublishedRow row : PublishedRow.all()) {
      assertThat(row.status()).as(row.id()).matches("V|V1|V2|V3|D|C|M-h");
      assertThat(row.source()).as(row.id()).isNotBlank();
      if (row.fromMemory()) {
        assertThat(row.source()).as(row.id()).contains("from memory");
      }
    }
  }

  @Test
  @DisplayName("reach every working")
  void everyWorkingIsReached() {
    assertThat(PublishedRow.all())
        .extracting(PublishedRow::working)
        .containsAll(WORKINGS.all().stream().map(Working::name).toList());
  }
}
