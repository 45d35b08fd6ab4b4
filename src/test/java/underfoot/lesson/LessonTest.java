package underfoot.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import underfoot.buildup.CoverageTarget;
import underfoot.buildup.Finding;
import underfoot.buildup.LayerClass;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.LessonBook;
import underfoot.language.Pass;
import underfoot.plan.Proposals;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.DecisionDifferences;
import underfoot.reasoning.Difference;
import underfoot.reasoning.FiredRules;
import underfoot.reasoning.Floors;
import underfoot.reasoning.MaterialClasses;
import underfoot.report.LessonReport;
import underfoot.report.TextPage;
import underfoot.scenario.RuleFiles;
import underfoot.scenario.Scenario;

/**
 * Every kind of question, on variants of the course's floors, is right, can be answered from the
 * sheet, and has exactly the right options marked. {@code -Dvariants=30} looks at more than a
 * thousand variants of the course's floors and of every example.
 */
class LessonTest {
  private static final int VARIANTS = Integer.getInteger("variants", 1);
  private static final Pattern NUMBER = Pattern.compile("(?<![A-Za-z0-9.^])-?[0-9]+(?:\\.[0-9]+)?");
  private static final Pattern RULE = Pattern.compile("‹([A-Z]+-[0-9]+)›");

  /** Rules that judge what is proposed, and so speak on no floor by themselves. */
  private static final Set<String> OF_PROPOSALS =
      Floors.advisor().rules().set().of(Pass.CHECK).stream()
          .map(rule -> rule.note().id())
          .collect(Collectors.toSet());

  private static LessonMaker maker;
  private static LessonBook book;
  private static final Map<Path, Scenario> FLOORS = new LinkedHashMap<>();
  private static final Map<String, Integer> ASKED = new TreeMap<>();

  @BeforeAll
  static void read() throws Exception {
    book = LessonBook.load(RuleFiles.shipped());
    Knowledge knowledge = Floors.advisor().knowledge();
    maker =
        new LessonMaker(
            new Workshop(
                Floors.advisor(), book, knowledge.prices(), Proposals.kinds(), Proposals.book()));
    List<Path> files = new ArrayList<>(VARIANTS > 1 ? Floors.examples() : List.of());
    try (Stream<Path> own = Files.list(Path.of("rules/lessons/floors"))) {
      own.sorted().forEach(files::add);
    }
    for (Path file : files) {
      FLOORS.put(file, Floors.reader().read(file.toString(), Files.readAllBytes(file)));
    }
  }

  /** On one variant each, a kind is looked at where it was not looked at twice before. */
  private static List<LessonBook.Item> kinds() {
    return book.kinds().stream()
        .filter(kind -> VARIANTS > 1 || ASKED.getOrDefault(kind.id(), 0) < 2)
        .toList();
  }

  private static Lesson lesson(Scenario scenario, long seed) {
    return maker.make(scenario, OptionalLong.of(seed), book.kinds());
  }

  private static Lesson kitchen() {
    return FLOORS.entrySet().stream()
        .filter(one -> one.getKey().endsWith("kitchen-on-boards.yaml"))
        .map(one -> maker.make(one.getValue(), OptionalLong.empty(), book.kinds()))
        .findFirst()
        .orElseThrow();
  }

  @TestFactory
  Stream<DynamicTest> every_question_on_variants_of_every_floor_is_right() {
    return FLOORS.entrySet().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.getKey().getFileName().toString(),
                    () -> {
                      for (int seed = 1; seed <= VARIANTS; seed++) {
                        check(maker.make(one.getValue(), OptionalLong.of(seed), kinds()));
                      }
                    }));
  }

  @AfterAll
  static void every_kind_was_asked() {
    Set<String> never = new TreeSet<>();
    book.kinds().forEach(kind -> never.add(kind.id()));
    never.removeAll(ASKED.keySet());
    assertThat(never).as("kinds that no floor bears").isEmpty();
  }

  private static void check(Lesson lesson) throws Exception {
    Assessment floor = Floors.advisor().advise(lesson.scenario());
    assertThat(lesson.changes()).as("changes").isNotEmpty();
    int level = 0;
    for (Question question : lesson.questions()) {
      String as = lesson.scenario().name() + lesson.seed() + ": " + question.ask();
      ASKED.merge(question.kind(), 1, Integer::sum);
      assertThat(question.level()).as("easy first").isBetween(level, 3);
      level = question.level();
      whole(question, as);
      cited(question, floor, as);
      answeredRightGetsFullMarks(question, as);
      switch (book.kind(question.kind()).field("sort")) {
        case "sum" -> recompute(question, as);
        case "what-if" -> otherwise(question, lesson.scenario(), floor, as);
        case "faults" -> faults(question, lesson.scenario(), as);
        default -> choice(question, lesson.scenario(), floor, as);
      }
    }
  }

  private static void whole(Question question, String as) {
    assertThat(as + question.given() + question.options()).doesNotContain("<", ">", "{", "}");
    assertThat(question.answer()).isNotBlank();
    assertThat(question.aim()).isNotBlank();
    Set<String> labels = new HashSet<>();
    Set<String> texts = new HashSet<>();
    question.options().forEach(option -> assertThat(labels.add(option.label())).isTrue());
    question.options().forEach(option -> texts.add(option.text()));
    if (question.reply() != Question.Reply.LINES) {
      assertThat(texts).as(as).hasSameSizeAs(labels);
    }
    question.right().forEach(group -> assertThat(labels).containsAll(group));
    Set<String> right = question.right().stream().flatMap(Set::stream).collect(Collectors.toSet());
    boolean choice =
        question.reply() == Question.Reply.ONE || question.reply() == Question.Reply.SOME;
    if (choice) {
      assertThat(right.size()).as(as).isLessThan(labels.size());
      for (Question.Option option : question.options()) {
        assertThat(option.shows().isEmpty())
            .as(as + " " + option)
            .isEqualTo(right.contains(option.label()));
      }
    }
    if (question.reply() == Question.Reply.NUMBER) {
      assertThat(question.worked()).as(as).isNotEmpty();
      question.slips().forEach(slip -> assertThat(slip.shows()).isNotBlank());
    }
  }

  /** No rule speaks for an answer that is not in the trace of this floor. */
  private static void cited(Question question, Assessment floor, String as) {
    Set<String> fired = FiredRules.of(floor);
    for (Question.Cite cite : question.cites()) {
      assertThat(fired.contains(cite.rule()) || OF_PROPOSALS.contains(cite.rule()))
          .as(as + " cites " + cite.rule())
          .isTrue();
    }
  }

  private static void answeredRightGetsFullMarks(Question question, String as) {
    String reply =
        question.reply() == Question.Reply.NUMBER
            ? question.number() + " " + question.unit()
            : question.right().stream()
                .map(group -> group.iterator().next())
                .collect(Collectors.joining(" "));
    Marking.Marked marked = Marking.of(question, reply);
    assertThat(marked.state()).as(as + " " + reply).isEqualTo(Marking.State.RIGHT);
    assertThat(marked.got()).isEqualTo(question.level());
  }

  // --- options, by thinking the floor through

  private static String rightText(Question question) {
    return question.options().stream()
        .filter(option -> question.right().get(0).contains(option.label()))
        .findFirst()
        .map(Question.Option::text)
        .orElseThrow();
  }

  /** What the trace itself says, where an option names a class, a width or a share. */
  private static void choice(Question question, Scenario scenario, Assessment floor, String as)
      throws Exception {
    String right = question.reply() == Question.Reply.ONE ? rightText(question) : "";
    switch (question.kind()) {
      case "verdict" ->
          assertThat(right.split(":")[0].toLowerCase().replace(' ', '-'))
              .as(as)
              .isEqualTo(floor.verdict().word());
      case "least-adhesive-class" ->
          assertThat(strictest(floor, "tile-bed")).as(as).contains(right);
      case "least-grout-class" -> assertThat(strictest(floor, "tile")).as(as).contains(right);
      case "least-contact" ->
          assertThat(numbers(right)[0])
              .as(as)
              .isEqualTo(
                  floor.of(CoverageTarget.class).stream()
                      .mapToDouble(one -> one.figure().number())
                      .max()
                      .orElseThrow());
      case "least-joint" ->
          assertThat(numbers(right)[0])
              .as(as)
              .isGreaterThanOrEqualTo(floor.factsOfChosen().number("least joint"))
              .isLessThan(floor.factsOfChosen().number("least joint") + 2.5);
      case "which-screw" -> {
        double over = floor.factsOfChosen().number("overlay thickness");
        double most = floor.factsOfChosen().number("screw longest");
        for (Question.Option option : question.options()) {
          double length = numbers(option.text())[0];
          assertThat(length <= most && length - over >= 12)
              .as(as + " " + length)
              .isEqualTo(option.text().equals(right));
        }
      }
      case "is-the-base-dry" ->
          assertThat(right.startsWith("Dry enough"))
              .as(as)
              .isEqualTo(floor.factsOfChosen().number("floor humidity") <= 75);
      case "is-the-timber-dry" ->
          assertThat(right.startsWith("Dry enough"))
              .as(as)
              .isEqualTo(floor.factsOfChosen().number("timber moisture") <= 14);
      case "make-it-stiff-enough", "make-it-stiff-enough-for-stone" -> {
        for (Question.Option option : question.options()) {
          assertThat(stiffWith(option.text(), scenario))
              .as(as + " " + option.text())
              .isEqualTo(option.text().equals(right));
        }
      }
      case "order-of-the-work" -> {
        double last = 0;
        for (Set<String> one : question.right()) {
          String title = text(question, one.iterator().next());
          double place =
              Floors.advisor().knowledge().steps().ids().stream()
                  .map(id -> Floors.advisor().knowledge().steps().get(id))
                  .filter(step -> step.title().equals(title))
                  .findFirst()
                  .orElseThrow()
                  .place();
          assertThat(place).as(as).isGreaterThan(last);
          last = place;
        }
      }
      default -> assertThat(question.right()).as(as).isNotEmpty();
    }
  }

  private static String text(Question question, String label) {
    return question.options().stream()
        .filter(option -> option.label().equals(label))
        .findFirst()
        .orElseThrow()
        .text();
  }

  private static List<String> strictest(Assessment floor, String layer) {
    List<String> grades =
        floor.of(LayerClass.class).stream()
            .filter(one -> one.layer().equals(layer))
            .map(LayerClass::grade)
            .toList();
    return MaterialClasses.strictest(Floors.advisor().knowledge(), grades);
  }

  /**
   * Whether joists are stiff enough with what an option proposes, by the sag of the floor itself.
   */
  private static boolean stiffWith(String option, Scenario scenario) throws Exception {
    Scenario changed = scenario;
    double span = scenario.find("subfloor.joists.clear span").orElseThrow().number();
    double breadth = scenario.find("subfloor.joists.breadth").orElseThrow().number();
    double tile = scenario.find("tile.thickness").orElseThrow().number();
    if (option.startsWith("A wall or beam")) {
      changed = Floors.change(scenario, "subfloor.joists.clear span", span / 2 + " mm");
    } else if (option.startsWith("A second joist")) {
      changed = Floors.change(scenario, "subfloor.joists.breadth", 2 * breadth + " mm");
    } else if (option.contains("one millimetre thinner")) {
      changed = Floors.change(scenario, "tile.thickness", tile - 1 + " mm");
    }
    Assessment then = Floors.advisor().advise(changed);
    double limit = then.facts().text("tile sort").equals("stone") ? 720 : 360;
    return then.factsOfChosen().number("joist ratio after") >= limit;
  }

  private static void otherwise(Question question, Scenario scenario, Assessment now, String as)
      throws Exception {
    Matcher asked =
        Pattern.compile("Suppose the (.+) is (.+), not (.+), and all else").matcher(question.ask());
    assertThat(asked.find()).as(as).isTrue();
    String called = asked.group(1);
    String about = called.contains(" of ") ? called.substring(called.indexOf(" of ") + 4) : "";
    String name = about.isEmpty() ? called : called.substring(0, called.indexOf(" of "));
    String key = Floors.advisor().knowledge().keyOf(name);
    Assessment then = Floors.advisor().advise(scenario.with(key, about, asked.group(2)));
    List<String> differences =
        Difference.texts(new DecisionDifferences(now.knowledge()).of(now, then)).stream()
            .map(underfoot.measure.Texts::capital)
            .toList();
    for (Question.Option option : question.options()) {
      assertThat(differences.contains(option.text()))
          .as(as + " " + option.text())
          .isEqualTo(question.right().get(0).contains(option.label()));
    }
    Set<String> before = FiredRules.of(now);
    Set<String> after = FiredRules.of(then);
    for (String line : question.worked()) {
      Matcher rule = RULE.matcher(line);
      while (rule.find()) {
        boolean newly = line.startsWith("newly holds");
        assertThat((newly ? after : before).contains(rule.group(1))).as(as + line).isTrue();
      }
    }
  }

  /** A proposal read from the lines of the sheet is judged: the faults lie in the lines marked. */
  private static void faults(Question question, Scenario scenario, String as) throws Exception {
    StringBuilder yaml = new StringBuilder("proposal: read from a sheet\nlayers:\n");
    StringBuilder whole = new StringBuilder();
    List<String> lines = new ArrayList<>();
    for (Question.Option option : question.options()) {
      String text = option.text();
      if (text.startsWith("gap of")) {
        whole.append("perimeter gap: ").append(text.split(" ")[2]).append(" mm\n");
        lines.add("no-room-at-the-walls");
      } else if (text.startsWith("joints of")) {
        whole.append("tile joint: ").append(text.split(" ")[2]).append(" mm\n");
        lines.add("joints-too-narrow");
      } else if (text.startsWith("grout")) {
        whole.append("grout: ").append(text.substring("grout, class ".length())).append('\n');
        lines.add("grout-class-short");
      } else {
        lines.add("layer " + option.label());
        yaml.append("  - {kind: ").append(text.split(",")[0]);
        part(text, ", ([0-9.]+ mm)", "thickness", yaml);
        part(text, "class ((?:[A-Z0-9-]+(?: S[12])?(?:, )?)+)", "class", yaml);
        part(text, "screws of ([0-9.]+ mm)", "screw length", yaml);
        part(text, "contact over ([0-9.]+ %)", "coverage", yaml);
        part(text, "(bonded and screwed|screwed only)", "fixing", yaml);
        yaml.append("}\n");
      }
    }
    Set<String> found = new HashSet<>();
    for (Finding fault :
        Proposals.examine(scenario, Proposals.read("sheet", yaml + whole.toString())).findings()) {
      if (fault.judgement().isFault()) {
        String line =
            fault.about().isEmpty() ? fault.wording() : fault.about().replace("layers ", "layer ");
        int at = lines.indexOf(line);
        found.add(Integer.toString(at + 1));
      }
    }
    assertThat(found)
        .as(as + "\n" + yaml + whole)
        .isEqualTo(question.right().stream().flatMap(Set::stream).collect(Collectors.toSet()));
  }

  private static void part(String text, String pattern, String key, StringBuilder yaml) {
    Matcher found = Pattern.compile(pattern).matcher(text);
    if (found.find()) {
      String value = found.group(1).replaceAll(", $", "");
      yaml.append(", ")
          .append(key)
          .append(": ")
          .append(key.equals("class") ? "[" + value + "]" : value);
    }
  }

  // --- numbers, by plain arithmetic from what is printed

  private static double[] numbers(String text) {
    List<Double> found = new ArrayList<>();
    Matcher numbers = NUMBER.matcher(text.replaceAll("\\b(?:mm4|m2/m2|m2h?|mm2)\\b", " "));
    while (numbers.find()) {
      found.add(Double.parseDouble(numbers.group()));
    }
    return found.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static void recompute(Question question, String as) {
    double[] n = numbers(question.ask().replace("1:", "1 ").replace("C16", "").replace("C24", ""));
    double[] g = numbers(String.join(" ", question.given()));
    double expected =
        switch (question.kind()) {
          case "how-far-may-it-bend" -> n[0] / 360;
          case "how-far-may-it-bend-under-stone" -> n[0] / 720;
          case "second-moment" -> n[0] * n[1] * n[1] * n[1] / 12;
          case "how-far-does-it-bend" -> sag(n, question.given());
          case "drying-of-a-cement-screed" -> n[0] <= 50 ? n[0] : 50 + 2 * (n[0] - 50);
          case "drying-of-a-calcium-sulfate-screed" -> n[0] <= 40 ? n[0] : 40 + 2 * (n[0] - 40);
          case "how-long-still" -> (n[0] <= 50 ? n[0] : 50 + 2 * (n[0] - 50)) - n[1];
          case "dew-point" -> dewPoint(n[0], n[1]);
          case "how-deep-at-the-deepest" -> n[0] + 3;
          case "litres-of-compound" -> n[0] * n[1];
          case "bags-of-fibre-compound", "bags-of-plain-compound" ->
              Math.ceil(n[0] * n[1] * 1.7 * 1.05 / n[2] - 1e-9);
          case "depth-of-the-bed" -> n[0] / 2;
          case "bags-of-adhesive" -> Math.ceil(n[0] * n[1] * 1.21 * 1.05 / n[2] - 1e-9);
          case "bays-of-a-floor" -> Math.ceil(n[0] / 10 - 1e-9) * Math.ceil(n[1] / 10 - 1e-9);
          case "tiles-for-a-square-metre" -> 1e6 / ((n[0] + n[2]) * (n[1] + n[2]));
          case "grout-for-a-square-metre" -> (1 / n[0] + 1 / n[1]) * n[3] * n[2] * 1.6;
          case "fall-to-the-drain" -> Math.hypot(n[0], n[1]) / n[3];
          case "seal-for-the-floor" -> (n[0] + n[1] * n[2]) * 3.5;
          case "how-large-a-mat" -> n[0] * n[1] * n[n.length - 1];
          case "current-of-a-mat" -> n[0] * n[1] / n[2];
          case "bays-of-a-heated-floor" -> heatedBays(n[0], n[1]);
          case "left-under-the-leaf" -> n[1] - n[0];
          case "how-much-is-cut" -> n[0] + n[2] - n[1];
          case "step-at-the-threshold" -> Math.abs(n[0] - n[1]);
          case "time-in-the-cold" -> n[0] / n[2];
          case "speed-in-the-cold" -> rate(n[0], n[1]);
          case "longest-screw" -> n[0] + n[1] - n[2];
          default -> throw new AssertionError("no independent sum for " + question.kind());
        };
    double off = question.within() == 0 ? 1e-9 : Math.abs(expected) * question.within() / 2;
    assertThat(question.number())
        .as(as + question.given() + g.length)
        .isCloseTo(expected, within(off + 1e-9));
  }

  private static double sag(double[] n, List<String> given) {
    Matcher stiff = Pattern.compile("E = ([0-9]+) N/mm2").matcher(given.get(2));
    assertThat(stiff.find()).isTrue();
    double second = n[0] * Math.pow(n[1], 3) / 12;
    double line = n[4] * n[2] / 1000;
    return 5 * line * Math.pow(n[3], 4) / (384 * Double.parseDouble(stiff.group(1)) * second);
  }

  /** By Tetens's constants, which are not those of the sheet. */
  private static double dewPoint(double air, double humidity) {
    double g = Math.log(humidity / 100) + 17.27 * air / (237.3 + air);
    return 237.3 * g / (17.27 - g);
  }

  private static double rate(double t, double reference) {
    double energy = 33500 + (t < 20 ? 1470 * (20 - t) : 0);
    return Math.exp(-energy / 8.314 * (1 / (t + 273.15) - 1 / (reference + 273.15)));
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

  // --- marking

  private static Question number(double number, double within, String unit) {
    return new Question(
        "k",
        "bed",
        2,
        "aim",
        List.of(),
        "ask",
        List.of(),
        Question.Reply.NUMBER,
        List.of(),
        number,
        within,
        unit,
        List.of(new Question.Slip(80, "took the double")),
        "a",
        List.of("w"),
        List.of(),
        List.of());
  }

  private static Question choice(Question.Reply reply, String... right) {
    List<Question.Option> options = new ArrayList<>();
    for (String label : List.of("a", "b", "c", "d")) {
      boolean wrong = !List.of(right).contains(label);
      options.add(new Question.Option(label, "text " + label, wrong ? "thinks " + label : ""));
    }
    return new Question(
        "k",
        "bed",
        2,
        "aim",
        List.of(),
        "ask",
        options,
        reply,
        Stream.of(right).map(Set::of).toList(),
        Double.NaN,
        0,
        "",
        List.of(),
        "a",
        List.of(),
        List.of(),
        List.of());
  }

  private static Marking.State state(Question question, String reply) {
    return Marking.of(question, reply).state();
  }

  @Test
  void a_slip_of_the_pen_is_given_back_and_costs_no_mark() {
    Question one = choice(Question.Reply.ONE, "b");
    for (String slip : List.of("e", "b c", "?!", "bb", "7", "bx")) {
      assertThat(state(one, slip)).as(slip).isEqualTo(Marking.State.AGAIN);
    }
    assertThat(state(one, " ")).isEqualTo(Marking.State.NONE);
    assertThat(state(choice(Question.Reply.ORDER, "a", "b", "c", "d"), "a b c"))
        .isEqualTo(Marking.State.AGAIN);
    Question length = number(40, 0.02, "mm");
    for (String slip : List.of("4O", "forty", "40 kg", "400", "0.04", "4,0", "4.0")) {
      assertThat(state(length, slip)).as(slip).isEqualTo(Marking.State.AGAIN);
    }
  }

  @Test
  void an_answer_may_be_written_as_people_write_it() {
    Question one = choice(Question.Reply.ONE, "b");
    for (String well : List.of("b", "B", "b)", "(b)", "b.", "answer b", "TEXT B")) {
      assertThat(state(one, well)).as(well).isEqualTo(Marking.State.RIGHT);
    }
    Question some = choice(Question.Reply.SOME, "a", "c");
    for (String well : List.of("ac", "c, a", "a and c", "A+C")) {
      assertThat(state(some, well)).as(well).isEqualTo(Marking.State.RIGHT);
    }
    for (String well : List.of("40", "40mm", "4 cm", "0.04 m", "40,0", "39.5", "+40 mm")) {
      assertThat(state(number(40, 0.02, "mm"), well)).as(well).isEqualTo(Marking.State.RIGHT);
    }
    for (String well : List.of("24800", "24,800", "24 800", "24800.0")) {
      assertThat(state(number(24800, 0.01, "mm4"), well)).as(well).isEqualTo(Marking.State.RIGHT);
    }
    assertThat(state(number(1, 0, "bags"), "1 bag")).isEqualTo(Marking.State.RIGHT);
  }

  @Test
  void a_wrong_answer_tells_what_was_misunderstood_and_guessing_everything_brings_nothing() {
    Marking.Marked wrong = Marking.of(choice(Question.Reply.ONE, "b"), "c");
    assertThat(wrong.got()).isZero();
    assertThat(wrong.shows()).containsExactly("thinks c");
    Marking.Marked half = Marking.of(choice(Question.Reply.SOME, "a", "c"), "a d");
    assertThat(half.got()).isEqualTo(1);
    assertThat(half.shows()).containsExactly("thinks d");
    assertThat(Marking.of(number(40, 0.02, "mm"), "80").shows()).containsExactly("took the double");
    assertThat(state(choice(Question.Reply.SOME, "a", "c"), "abcd")).isEqualTo(Marking.State.AGAIN);
  }

  // --- sheets

  @Test
  void the_same_seed_gives_the_same_sheet_and_another_gives_other_numbers() {
    Scenario scenario = FLOORS.values().iterator().next(); // the first course floor
    assertThat(lesson(scenario, 1).questions()).isEqualTo(lesson(scenario, 1).questions());
    assertThat(lesson(scenario, 1).changes()).isNotEqualTo(lesson(scenario, 2).changes());
    assertThat(lesson(scenario, 1).questions()).isNotEqualTo(lesson(scenario, 2).questions());
  }

  @Test
  void the_page_escapes_what_the_scenario_says_and_fetches_nothing() throws Exception {
    String floor =
        Files.readString(Path.of("src/test/resources/floors/boards.yaml"))
            .replaceFirst("(?m)^scenario: .*$", "scenario: \"<script>alert('x')</script> & co\"");
    Scenario scenario = Floors.reader().read("evil.yaml", floor.getBytes("UTF-8"));
    Lesson lesson = lesson(scenario, 3);
    LessonReport report = new LessonReport(Floors.advisor().knowledge());
    Sheet sheet = new Sheet("A sheet", "<b>Ann</b>", List.of(lesson));
    String html = report.html("A sheet", List.of(sheet), LessonReport.Pages.BOTH);
    assertThat(html)
        .contains("&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt; &amp; co")
        .doesNotContain("<script", "<b>Ann", "src=", "@import");
    assertThat(html.split("class=\"answer\"", -1)).hasSize(lesson.questions().size() + 1);
  }

  @Test
  void no_answer_is_in_a_sheet_or_its_source_unless_it_is_asked_for() {
    Lesson lesson = kitchen();
    LessonReport report = new LessonReport(Floors.advisor().knowledge());
    Sheet sheet = new Sheet("A sheet", "Ann", List.of(lesson));
    String html = report.html("A sheet", List.of(sheet), LessonReport.Pages.SHEETS);
    TextPage text = new TextPage(80, false);
    report.text(sheet, false, text);
    for (String shown : List.of(html, text.text())) {
      assertThat(shown).doesNotContain("Answer:", "‹", "Aim:");
      for (Question question : lesson.questions()) {
        question.options().stream()
            .filter(option -> !option.shows().isEmpty())
            .forEach(option -> assertThat(shown).doesNotContain(option.shows()));
        question.worked().forEach(line -> assertThat(shown).doesNotContain(line));
      }
    }
    assertThat(html).contains("<svg").contains("class=\"write\"");
    TextPage with = new TextPage(80, false);
    report.text(sheet, true, with);
    assertThat(with.text()).contains("Answer:").contains("‹").contains("Aim:");
    assertThat(with.text().lines()).allMatch(line -> line.length() <= 80);
  }
}
