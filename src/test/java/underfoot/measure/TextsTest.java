package underfoot.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;

/** How numbers are told, and how what was read is kept. */
class TextsTest {
  private static final Figures FIGURES = Measured.knowledge().figures();

  @ParameterizedTest(name = "{0} as {1}")
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "12.345, 12.35",
    "12.344, 12.34",
    "1, 1",
    "-1, -1",
    "1.005, 1",
    "-1.2345, -1.23",
    "0.99951, 1",
    "0.12345, 0.123",
    "-0.0012345, -0.00123",
    "1e9, 1000000000",
    "NaN, unknown",
    "Infinity, without end",
  })
  void numbers_are_told_to_two_decimals_or_three_figures(double number, String text) {
    assertThat(Texts.of(number, "")).isEqualTo(text);
  }

  @Test
  void numbers_are_told_with_their_unit() {
    assertThat(Texts.of(2.5, "mm")).isEqualTo("2.5 mm");
    assertThat(Texts.metres(1234)).isEqualTo("1.23 m");
    assertThat(Texts.mm(12.36)).isEqualTo("12.4 mm");
    assertThat(Texts.mm(12.34)).isEqualTo("12.3 mm");
  }

  @Test
  void words_begin_large_or_small_as_they_stand_unless_they_begin_a_name() {
    assertThat(Texts.capital("a floor")).isEqualTo("A floor");
    assertThat(Texts.capital("")).isEmpty();
    assertThat(Texts.lower("The floor")).isEqualTo("the floor");
    assertThat(Texts.lower("EN 13813")).isEqualTo("EN 13813");
    assertThat(Texts.lower("C")).isEqualTo("C");
    assertThat(Texts.lower("An")).isEqualTo("an");
  }

  private static Fact number(String name, String about, double number) {
    return Fact.stated(name, name, about, number + " mm", number);
  }

  @Test
  void a_basis_keeps_what_it_read_once_and_knows_what_it_did_not_find() {
    Fact span = number("span", "", 4000);
    Fact notch = number("depth", "notch", 25);
    Fact use = Fact.stated("use", "use", "", "hall", Double.NaN);
    Facts facts = new Facts();
    List.of(span, notch, use).forEach(facts::add);
    TracedFacts basis = new TracedFacts(FIGURES, facts);
    assertThat(basis.fact("span")).isEqualTo(4000);
    assertThat(basis.fact("span")).isEqualTo(4000);
    assertThat(basis.fact("depth", "notch")).isEqualTo(25);
    assertThat(basis.factIfHeld("depth", "notch")).isEqualTo(25);
    assertThat(basis.word("use")).isEqualTo("hall");
    assertThat(basis.wordIfHeld("use")).isEqualTo("hall");
    assertThat(basis.factIfHeld("depth", "hole")).isNaN();
    assertThat(basis.factIfHeld("use", "")).isNaN();
    assertThat(basis.wordIfHeld("deck")).isEmpty();
    double gravity = basis.figure("standard-gravity");
    assertThat(gravity).isEqualTo(9.80665);
    assertThat(basis.complete()).isTrue();
    assertThat(basis.uses()).containsExactly(span, notch, use, FIGURES.get("standard-gravity"));
    assertThat(new TracedFacts(FIGURES, facts).use(span).uses()).containsExactly(span);
  }

  @Test
  void a_basis_that_lacks_a_fact_is_not_complete_and_nothing_is_found_on_it() {
    Facts facts = new Facts();
    facts.add(Fact.stated("use", "use", "", "hall", Double.NaN));
    for (String missing : new String[] {"fact", "word", "no number"}) {
      TracedFacts basis = new TracedFacts(FIGURES, facts);
      if (missing.equals("word")) {
        assertThat(basis.word("deck")).isEmpty();
      } else {
        assertThat(basis.fact(missing.equals("fact") ? "span" : "use")).isNaN();
      }
      assertThat(basis.complete()).isFalse();
      MeasuredFacts found = new MeasuredFacts();
      assertThat(found.add("x", 1, "mm", "how", basis)).isNull();
      assertThat(found.list()).isEmpty();
    }
    MeasuredFacts found = new MeasuredFacts();
    assertThat(found.add("x", Double.NaN, "mm", "how", new TracedFacts(FIGURES, facts))).isNull();
    Fact one = found.add("x", 1.5, "mm", "how", new TracedFacts(FIGURES, facts));
    assertThat(one.text()).isEqualTo("1.5 mm");
    assertThat(found.list()).containsExactly(one);
  }

  @Test
  void the_figure_for_a_particular_case_comes_before_the_general_one() {
    TracedFacts basis = new TracedFacts(FIGURES, new Facts());
    assertThat(basis.hasFigure("imposed-load")).isTrue();
    assertThat(basis.hasFigure("imposed-load-on-the-moon")).isFalse();
    String particular = "imposed-load-light-commercial";
    assertThat(basis.figureFor("imposed-load", "light commercial"))
        .isEqualTo(FIGURES.get(particular).number())
        .isNotEqualTo(FIGURES.get("imposed-load").number());
    assertThat(basis.figureFor("imposed-load", "hall"))
        .isEqualTo(FIGURES.get("imposed-load").number());
    assertThat(basis.figureFor("imposed-load", "")).isEqualTo(FIGURES.get("imposed-load").number());
    assertThat(TracedFacts.inFigureName("Cement:sand screed")).isEqualTo("cement-sand-screed");
  }

  @Test
  void a_working_is_run_with_numbers_in_their_units_and_not_with_what_is_unknown() {
    assertThat(
            Worked.with()
                .key("temperature", 20)
                .key("humidity", Double.NaN)
                .run(new underfoot.working.DewPoint()))
        .isEmpty();
    assertThat(
            Worked.with()
                .key("temperature", 200)
                .key("humidity", 50)
                .run(new underfoot.working.DewPoint()))
        .isEmpty();
    underfoot.working.Result bed =
        Worked.with()
            .key("notch", 10)
            .key("angle", 90)
            .key("powder", 1.2)
            .run(new underfoot.working.Adhesive())
            .orElseThrow();
    assertThat(bed.value("bed")).isEqualTo(5);
    assertThat(Worked.how(bed))
        .isEqualTo(
            "bed = notch/2*sin(angle): 10/2*sin(90), so bed = 5 mm; mass = bed*powder: 5*1.2, so"
                + " mass = 6 kg/m2");
    assertThat(
            Worked.with()
                .key("positions", new double[] {0, 1000, 2000})
                .key("heights", new double[] {0, -2, 0})
                .key("edge", 2000)
                .run(new underfoot.working.StraightedgeGap(2000))
                .orElseThrow()
                .value("gap"))
        .isEqualTo(2);
  }
}
