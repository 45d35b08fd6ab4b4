package underfoot.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.LessonBook;
import underfoot.knowledge.RuleNote;
import underfoot.reasoning.Floors;
import underfoot.report.LessonReport;
import underfoot.report.TextPage;
import underfoot.scenario.RuleFiles;
import underfoot.scenario.Scenario;

/** A trainer can hand out two variants of a lesson on any example without editing. */
class LessonTest {
  private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(?:\\.[0-9]+)?");

  private static LessonMaker maker;
  private static final Map<Path, Scenario> SCENARIOS = new java.util.LinkedHashMap<>();

  @BeforeAll
  static void read() throws Exception {
    Knowledge knowledge = Floors.advisor().knowledge();
    maker =
        new LessonMaker(Floors.advisor(), LessonBook.load(RuleFiles.shipped()), knowledge.prices());
    for (Path file : Floors.examples()) {
      SCENARIOS.put(file, Floors.reader().read(file.toString(), Files.readAllBytes(file)));
    }
  }

  private static Lesson lesson(Scenario scenario, long seed) {
    return maker.make(scenario, OptionalLong.of(seed));
  }

  private static Lesson utility() {
    return SCENARIOS.entrySet().stream()
        .filter(one -> one.getKey().toString().contains("utility-room-over-a-cellar"))
        .map(one -> maker.make(one.getValue(), OptionalLong.empty()))
        .findFirst()
        .orElseThrow();
  }

  @TestFactory
  Stream<DynamicTest> two_variants_of_every_scenario_differ_in_numbers_and_every_answer_is_right() {
    return SCENARIOS.entrySet().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.getKey().getFileName().toString(), () -> check(one.getValue())));
  }

  private static void check(Scenario scenario) {
    Lesson one = lesson(scenario, 1);
    Lesson two = lesson(scenario, 2);
    assertThat(one.changes()).as("changes").isNotEmpty().isNotEqualTo(two.changes());
    assertThat(asks(one)).isNotEqualTo(asks(two));
    assertThat(numbers(one)).as("answers").isNotEmpty().isNotEqualTo(numbers(two));
    for (Lesson lesson : List.of(one, two)) {
      assertThat(lesson.questions().size()).isGreaterThan(5);
      int level = 0;
      for (Question question : lesson.questions()) {
        assertThat(question.level()).as("easy first").isBetween(level, 3);
        level = question.level();
        whole(question);
        if (question.reply() == Question.Reply.NUMBER) {
          recompute(question);
        }
        answeredRightGetsFullMarks(question);
      }
    }
  }

  private static List<String> asks(Lesson lesson) {
    return lesson.questions().stream().map(Question::ask).toList();
  }

  private static List<Double> numbers(Lesson lesson) {
    return lesson.questions().stream()
        .filter(one -> one.reply() == Question.Reply.NUMBER)
        .map(Question::number)
        .toList();
  }

  private static void whole(Question question) {
    Set<String> rules =
        Floors.advisor().rules().notes().stream().map(RuleNote::id).collect(Collectors.toSet());
    assertThat(question.ask()).isNotBlank().doesNotContain("<", ">", "{", "}");
    assertThat(question.answer()).isNotBlank().doesNotContain("<", "{", "}");
    assertThat(question.cites()).allMatch(cite -> rules.contains(cite.rule()));
    Set<String> labels = new HashSet<>();
    question.options().forEach(option -> assertThat(labels.add(option.label())).isTrue());
    question.options().forEach(option -> assertThat(option.text()).isNotBlank());
    switch (question.reply()) {
      case ONE -> assertThat(question.right()).as(question.ask()).hasSize(1);
      case SOME -> assertThat(question.right()).as(question.ask()).isNotEmpty();
      case ORDER -> assertThat(question.right()).hasSameSizeAs(question.options());
      case LINES -> assertThat(question.right()).as(question.ask()).hasSizeBetween(2, 3);
      case NUMBER -> assertThat(question.number()).isFinite();
    }
    question.right().forEach(group -> assertThat(labels).containsAll(group));
    if (question.reply() != Question.Reply.NUMBER && !question.kind().equals("survey")) {
      assertThat(question.cites()).as(question.ask()).isNotEmpty();
    }
    if (question.reply() == Question.Reply.NUMBER) {
      assertThat(question.worked()).as(question.ask()).isNotEmpty();
    }
  }

  private static void answeredRightGetsFullMarks(Question question) {
    String reply =
        question.reply() == Question.Reply.NUMBER
            ? question.number() + " " + question.unit()
            : question.right().stream()
                .map(group -> group.stream().sorted().toList().get(0))
                .collect(Collectors.joining(" "));
    Marking.Marked marked = Marking.of(question, reply);
    assertThat(marked.read()).as(question.ask() + " " + reply).isTrue();
    assertThat(marked.got()).as(question.ask() + " " + reply).isEqualTo(question.level());
  }

  /** The numbers of a question as they stand in it. */
  private static double[] in(String text) {
    List<Double> found = new ArrayList<>();
    Matcher numbers = NUMBER.matcher(text.replaceAll("m2h?\\b", " "));
    while (numbers.find()) {
      found.add(Double.parseDouble(numbers.group()));
    }
    return found.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Works the answer out from what stands in the question alone, by plain arithmetic. */
  private static void recompute(Question question) {
    String ask = question.ask();
    double answer = question.number();
    double[] n = in(ask);
    double expected =
        switch (question.kind()) {
          case "tiles-per-area" -> 1e6 / ((n[0] + n[2]) * (n[1] + n[2]));
          case "screw-length" -> screw(n[0] + n[1] - n[2]);
          case "drying-cement" -> n[0] <= 50 ? n[0] : 50 + 2 * (n[0] - 50);
          case "drying-sulfate" -> n[0] <= 40 ? n[0] : 40 + 2 * (n[0] - 40);
          case "bays-unheated" -> Math.ceil(n[0] / 10 - 1e-9) * Math.ceil(n[1] / 10 - 1e-9);
          case "bays-heated" -> heatedBays(n[0], n[1]);
          case "dew-point" -> dewPoint(n[0], n[1]);
          case "wood-moisture" -> woodMoisture(n[0], n[1]);
          case "grout" -> joint(n[0], n[1], n[3]) * n[2] * n[4];
          case "cure-time" -> n[0] / rate(n[2], n[1]);
          case "joist-deflection" -> sag(n, ask);
          case "fall" -> Double.NaN; // depends on where the drain is: FallMeasureTest
          case "evaporation" ->
              Math.max(
                  0,
                  5e-6
                      * (Math.pow(n[0] + 18, 2.5) - n[2] / 100 * Math.pow(n[1] + 18, 2.5))
                      * (n[3] + 4));
          case "volume-of-compound", "weight-of-build-up" -> n[0] * n[1];
          case "packs-by-depth" -> Math.ceil(n[1] * n[2] * n[3] * (1 + n[4] / 100) / n[0] - 1e-9);
          case "packs-by-area" -> packsByArea(n);
          case "packs-of-pieces" -> Math.ceil(n[1] * (1 + n[2] / 100) / n[0] - 1e-9);
          default -> throw new AssertionError("no independent sum for " + question.kind());
        };
    if (Double.isNaN(expected)) {
      return;
    }
    // Other constants for the pressure of water vapour are a little off, on purpose.
    double off =
        switch (question.kind()) {
          case "dew-point" -> 0.3;
          default -> 1e-4 * Math.abs(expected);
        };
    assertThat(answer).as(ask).isCloseTo(expected, within(off));
  }

  private static double screw(double longest) {
    double best = Double.NaN;
    for (double stock : new double[] {16, 20, 25, 30, 35, 40, 45, 50, 60}) {
      best = stock <= longest ? stock : best;
    }
    return best;
  }

  /**
   * Litres of joint in a square metre for each mm of depth: two sides and a corner to each tile.
   */
  private static double joint(double length, double width, double joint) {
    double one = length * joint + width * joint + joint * joint;
    return one / ((length + joint) * (width + joint));
  }

  private static double heatedBays(double length, double width) {
    double fewest = Double.MAX_VALUE;
    for (int along = 1; along < 60; along++) {
      for (int across = 1; across < 60; across++) {
        double a = length / along;
        double b = width / across;
        if (a <= 8 + 1e-9 && b <= 8 + 1e-9 && a * b <= 40 + 1e-9) {
          fewest = Math.min(fewest, along * across);
        }
      }
    }
    return fewest;
  }

  /** By Tetens's constants, which are not those of the working. */
  private static double dewPoint(double air, double humidity) {
    double g = Math.log(humidity / 100) + 17.27 * air / (237.3 + air);
    return 237.3 * g / (17.27 - g);
  }

  /** The Wood Handbook's equation, written out anew. */
  private static double woodMoisture(double t, double humidity) {
    double h = humidity / 100;
    double w = 349 + 1.29 * t + 0.0135 * t * t;
    double k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
    double k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
    double k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
    double kh = k * h;
    return 1800
        / w
        * (kh / (1 - kh) + (k1 * kh + 2 * k1 * k2 * kh * kh) / (1 + k1 * kh + k1 * k2 * kh * kh));
  }

  private static double rate(double t, double reference) {
    double energy = 33500 + (t < 20 ? 1470 * (20 - t) : 0);
    return Math.exp(-energy / 8.314 * (1 / (t + 273.15) - 1 / (reference + 273.15)));
  }

  /** Bending of a simple beam; stiffness after EN 338, N/mm2. */
  private static double sag(double[] n, String ask) {
    Map<String, Double> stiff =
        Map.of(
            "C14", 7000.0, "C16", 8000.0, "C18", 9000.0, "C24", 11000.0, "C27", 11500.0, "C30",
            12000.0);
    Matcher grade = Pattern.compile("grade ([CD][0-9]+)").matcher(ask);
    assertThat(grade.find()).isTrue();
    double e = stiff.get(grade.group(1));
    // breadth, depth, (grade), centres, span, load
    double second = n[0] * Math.pow(n[1], 3) / 12;
    double line = n[5] * n[3] / 1000;
    return 5 * line * Math.pow(n[4], 4) / (384 * e * second);
  }

  private static double packsByArea(double[] n) {
    return Math.ceil(n[1] * n[2] * (1 + n[3] / 100) / n[0] - 1e-9);
  }

  @Test
  void the_same_seed_gives_the_same_sheet() {
    Scenario scenario = SCENARIOS.values().iterator().next();
    Lesson one = lesson(scenario, 1);
    Lesson again = lesson(scenario, 1);
    assertThat(again.floor()).isEqualTo(one.floor());
    assertThat(again.questions().toString()).isEqualTo(one.questions().toString());
  }

  @Test
  void a_wrong_answer_gets_no_marks_and_part_of_an_answer_gets_some() {
    for (Question question : utility().questions()) {
      if (question.reply() == Question.Reply.NUMBER) {
        String wrong = String.valueOf(question.number() * 1.5 + 1);
        assertThat(Marking.of(question, wrong).got()).isZero();
      }
      if (question.reply() == Question.Reply.LINES) {
        String part = question.right().get(0).iterator().next();
        assertThat(Marking.of(question, part).got()).isGreaterThan(0).isLessThan(question.level());
        String all =
            String.join(" ", question.options().stream().map(Question.Option::label).toList());
        assertThat(Marking.of(question, all).got()).isZero();
      }
      assertThat(Marking.of(question, "?!").read()).isFalse();
    }
  }

  @Test
  void a_number_may_be_given_bare_or_in_another_unit_of_its_kind() {
    assertThat(Marking.read("30", "mm")).hasValue(30);
    assertThat(Marking.read("3 cm", "mm").orElseThrow()).isCloseTo(30, within(1e-9));
    assertThat(Marking.read("4,83", "tiles for each m2")).hasValue(4.83);
    assertThat(Marking.read("1 bag", "bags")).hasValue(1);
    assertThat(Marking.read("30 kg", "mm")).isEmpty();
    assertThat(Marking.read("thirty", "mm")).isEmpty();
  }

  @Test
  void questions_are_of_several_kinds_and_ask_what_an_apprentice_must_know() {
    assertThat(utility().questions())
        .extracting(Question::kind)
        .contains(
            "verdict",
            "danger",
            "class",
            "figure",
            "layer",
            "way",
            "steps",
            "what-if",
            "faults",
            "screw-length",
            "packs-by-depth",
            "joist-deflection",
            "grout",
            "volume-of-compound");
  }

  @Test
  void the_page_to_print_escapes_what_the_scenario_says_and_fetches_nothing() throws Exception {
    String floor =
        Files.readString(Path.of("src/test/resources/floors/boards.yaml"))
            .replaceFirst("(?m)^scenario: .*$", "scenario: \"<script>alert('x')</script> & co\"");
    Scenario scenario = Floors.reader().read("evil.yaml", floor.getBytes("UTF-8"));
    Lesson lesson = maker.make(scenario, OptionalLong.of(3));
    String html = new LessonReport(lesson, Floors.advisor().knowledge()).html(true);
    assertThat(html)
        .contains("&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt; &amp; co")
        .doesNotContain("<script", "http:", "https:", "src=", "@import", "url(");
    assertThat(html.split("class=\"answer\"", -1)).hasSize(lesson.questions().size() + 1);
    String worksheet = new LessonReport(lesson, Floors.advisor().knowledge()).html(false);
    assertThat(worksheet).doesNotContain("class=\"answer\"");
  }

  @Test
  void the_worksheet_keeps_its_answers_to_itself_unless_they_are_asked_for() {
    LessonReport report = new LessonReport(utility(), Floors.advisor().knowledge());
    TextPage without = new TextPage(80, false);
    report.text(false, without);
    assertThat(without.text()).doesNotContain("Answer:").doesNotContain("‹");
    TextPage with = new TextPage(80, false);
    report.text(true, with);
    assertThat(with.text()).contains("Answer:").contains("‹");
    assertThat(with.text().lines()).allMatch(line -> line.length() <= 80);
  }
}
