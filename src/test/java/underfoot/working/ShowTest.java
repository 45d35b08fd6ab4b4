package underfoot.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underfoot.quantity.Dimension;

@DisplayName("A person is shown")
class ShowTest {
  @ParameterizedTest(name = "{0} as {1}")
  @DisplayName("numbers to six figures, and very small and great ones by powers of ten")
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "2.5, 2.5",
    "1200, 1200",
    "41178531.2, 41178500",
    "0.1234564, 0.123456",
    "-0.1234566, -0.123457",
    "0.00001, 0.00001",
    "0.00000999, 9.99000e-06",
    "999999999999, 1000000000000",
    "1000000000000, 1.00000e+12",
  })
  void numbers(double number, String shown) {
    assertThat(Show.number(number)).isEqualTo(shown);
  }

  @Test
  @DisplayName("negative numbers within a sum in brackets, and nought without")
  void terms() {
    assertThat(List.of(Show.term(-2), Show.term(0), Show.term(2)))
        .containsExactly("(-2)", "0", "2");
  }

  @Test
  @DisplayName("twelve numbers of a row, and how many there are where there are more")
  void rows() {
    assertThat(Show.numbers(new double[] {1, 2.5})).isEqualTo("1, 2.5");
    double[] twelve = DoubleStream.iterate(1, n -> n + 1).limit(12).toArray();
    assertThat(Show.numbers(twelve)).isEqualTo("1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12");
    double[] thirteen = DoubleStream.iterate(1, n -> n + 1).limit(13).toArray();
    assertThat(Show.numbers(thirteen)).endsWith(", 12, ... (13 in all)").doesNotContain("13, ");
  }

  @Test
  @DisplayName("one word alone, two with or, three with a comma")
  void words() {
    assertThat(Show.either(List.of())).isEmpty();
    assertThat(Show.either(List.of("mm"))).isEqualTo("mm");
    assertThat(Show.either(List.of("mm", "m"))).isEqualTo("mm or m");
    assertThat(Show.either(List.of("mm", "cm", "m"))).isEqualTo("mm, cm or m");
  }

  @Test
  @DisplayName("what kind of value a key takes, with its units and range")
  void ranges() {
    assertThat(Key.of("a", Dimension.LENGTH, "mm", 1, 9, "x").range())
        .isEqualTo("a length in mm, um, cm, m, in, ft or yd, 1 mm to 9 mm");
    assertThat(Key.of("a", Dimension.LENGTH, "mm", 0, 9, "x", Key.Trait.ABOVE).range())
        .endsWith(", more than 0 mm, at most 9 mm");
    assertThat(Key.of("a", Dimension.ANGLE, "deg", 0, 90, "x", Key.Trait.BARE).range())
        .isEqualTo("an angle, a bare number or in degrees, 0 deg to 90 deg");
    assertThat(Key.of("a", Dimension.LENGTH, "mm", 1, 9, "x").as(Key.Shape.LIST).range())
        .isEqualTo(
            "a list with commas, each a length in mm, um, cm, m, in, ft or yd, 1 mm to 9 mm");
    assertThat(
            Key.of("a", Dimension.LENGTH, "mm", 1, 9, "x", Key.Trait.BARE)
                .as(Key.Shape.LIST)
                .range())
        .contains("ft or yd or a bare number of mm, 1 mm");
    assertThat(Key.of("a", Dimension.SPAN_SHARE, "", 100, 1000, "x").range())
        .isEqualTo(Dimension.SPAN_SHARE.phrase() + ", 100 to 1000");
  }

  @Test
  @DisplayName("another way of giving keys by the key that marks it and those it needs")
  void ways() {
    assertThat(Alternative.of("run").words()).isEqualTo("run");
    assertThat(Alternative.of("grid", "dx", "dy").words()).isEqualTo("grid with dx and dy");
  }

  @Test
  @DisplayName("a measure with its unit, and never minus nought")
  void measures() {
    assertThat(new Measure(2.5, "mm")).hasToString("2.5 mm");
    assertThat(new Measure(3, "")).hasToString("3");
    assertThat(1 / new Measure(-0.0, "mm").value()).isPositive();
  }
}
