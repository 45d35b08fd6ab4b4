package underfoot.plan.setout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Lengths divided by hand: pieces of at most 1000 mm with 6 mm between, from 103 mm on. */
class DivisionTest {
  private static final double FROM = 103;

  private static Optional<List<Double>> divide(
      double to, double least, List<Double> places, DoubleUnaryOperator cost) {
    return Division.of(FROM, to, 1000, least, 6, places, cost);
  }

  /** Joints may begin here and nowhere else. */
  private static DoubleUnaryOperator only(double... allowed) {
    return place ->
        Arrays.stream(allowed).anyMatch(one -> Math.abs(one - place) < 1e-9)
            ? 0
            : Double.POSITIVE_INFINITY;
  }

  @Test
  void whole_boards_may_be_laid_from_either_end() {
    // Pieces of 1000, 1000 and 499 with two gaps of 6 take 2511 mm.
    double to = FROM + 2511;
    assertThat(divide(to, 100, List.of(), only(1103, 2109))).hasValue(List.of(1103.0, 2109.0));
    assertThat(divide(to, 100, List.of(), only(602, 1608))).hasValue(List.of(602.0, 1608.0));
  }

  @Test
  void joints_may_begin_on_whole_centimetres_of_the_room() {
    assertThat(divide(1112, 5, List.of(), only(110))).hasValue(List.of(110.0));
    assertThat(divide(1112, 5, List.of(), only(1100))).hasValue(List.of(1100.0));
    assertThat(divide(1112, 5, List.of(), only(110.5))).isEmpty();
  }

  @Test
  void joints_may_begin_at_places_that_are_named_and_a_whole_board_before_and_after_them() {
    List<Double> named = List.of(1234.5);
    assertThat(divide(2150, 100, named, only(1234.5))).isEmpty();
    assertThat(divide(3100, 100, named, only(1234.5, 2240.5, 602)))
        .as("the first piece would be 1131.5 long")
        .isEmpty();
    assertThat(divide(2900, 100, named, only(1234.5, 2240.5, 500)))
        .hasValue(List.of(500.0, 1234.5, 2240.5));
    assertThat(divide(2150, 100, named, only(228.5, 1234.5))).hasValue(List.of(228.5, 1234.5));
  }

  @Test
  void a_piece_may_be_as_short_as_the_least_and_no_shorter() {
    // 300 from the beginning, 906 left to the end; and the other way round.
    assertThat(divide(1309, 300, List.of(403.0), only(403))).hasValue(List.of(403.0));
    assertThat(divide(1309, 300, List.of(402.9), only(402.9))).isEmpty();
    assertThat(divide(1309, 300, List.of(1003.0), only(1003))).hasValue(List.of(1003.0));
    assertThat(divide(1309, 300, List.of(1003.1), only(1003.1))).isEmpty();
  }

  @Test
  void what_is_short_enough_for_one_piece_has_no_joint_however_short_it_is() {
    assertThat(Division.of(1000, 1050, 1000, 100, 6, List.of(), place -> 0)).hasValue(List.of());
  }

  @Test
  void no_piece_is_nothing_even_where_there_is_no_least() {
    // A joint at the very wall, with a whole board beside it.
    assertThat(divide(FROM + 1006, 0, List.of(FROM), only(FROM))).isEmpty();
    assertThat(divide(FROM + 1006, 0, List.of(), only(FROM + 1000))).isEmpty();
    assertThat(divide(FROM + 1007, 0, List.of(), only(FROM + 1000))).hasValue(List.of(1103.0));
  }

  @Test
  void a_division_with_a_whole_board_comes_before_one_of_two_cut_ones() {
    // 800 and 700, or a whole one and 500.
    assertThat(divide(FROM + 1506, 100, List.of(903.0), only(903, 1103))).hasValue(List.of(1103.0));
    // 700 and 800, or 500 and a whole one.
    assertThat(divide(FROM + 1506, 100, List.of(803.0), only(603, 803))).hasValue(List.of(603.0));
    // A joint that costs more than a cut is avoided though a whole board is lost by it.
    assertThat(
            divide(
                FROM + 1506,
                100,
                List.of(903.0),
                place -> place == 903 ? 0 : place == 1103 ? 0.2 : Double.POSITIVE_INFINITY))
        .hasValue(List.of(903.0));
  }
}
