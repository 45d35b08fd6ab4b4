package underfoot.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.lang.System.Logger.Level;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;
import underfoot.reasoning.Floors;
import underfoot.scenario.FactDefinition;

/**
 * Whatever is put in, what comes out is an answer or one of our own complaints, after seconds of
 * work. {@code -Dinputs=N} puts in more of each sort, {@code -Dseed=N} others. An input that was
 * answered badly goes into {@code src/test/resources/once-answered-badly}, and is tried ever after.
 */
class OnlyOurOwnErrorsTest {
  private static final int INPUTS = Integer.getInteger("inputs", 150);
  private static final long SEED = Long.getLong("seed", 20261125L);

  /**
   * Of the thread that asks, so that it hangs on the input and not on what else the machine does.
   */
  private static final long MOST_MILLIS_OF_WORK = 20_000;

  private static final String FLOOR = "scenarios/utility-room-over-a-cellar-on-old-boards.yaml";

  /** What could steer a terminal; tests ask for no colours. */
  private static final Pattern STEERS =
      Pattern.compile("[\\p{Cntrl}\\x80-\\x9f\u202a-\u202e\u2066-\u2069&&[^\\n\\t]]");

  @TempDir private Path folder;

  @Test
  void of_names_of_files_to_write_that_mean_ill() throws Exception {
    Path floor = folder.resolve("floor.yaml");
    Files.copy(Path.of(FLOOR), floor);
    byte[] before = Files.readAllBytes(floor);
    Path link = Files.createSymbolicLink(folder.resolve("link.html"), floor);
    Path lost = Files.createSymbolicLink(folder.resolve("lost.html"), folder.resolve("no/where"));
    Files.createDirectory(folder.resolve("a-folder"));
    String[] names = {
      floor.toString(),
      link.toString(),
      lost.toString(),
      folder.resolve("a-folder").toString(),
      folder.resolve("a-folder/../floor.yaml").toString(),
      folder.resolve("no/such/folder.html").toString(),
      folder.resolve("x".repeat(300)).toString(),
      "/dev/null",
      "/dev/full",
      "/proc/self/environ",
      "",
      " ",
      "\u0000",
      folder.resolve("\u001b[2J").toString()
    };
    for (String name : names) {
      for (String option : List.of("--html", "--pdf", "--sheet")) {
        ours(
            "written to " + name,
            before,
            () -> Console.run("advise", floor.toString(), option, name, "--replace"));
        assertThat(Files.readAllBytes(floor)).as(option + " " + name).isEqualTo(before);
      }
      ours(
          "a batch to " + name,
          before,
          () -> Console.run("batch", floor.toString(), "--out", name));
      assertThat(Files.readAllBytes(floor)).as("--out " + name).isEqualTo(before);
    }
    try (Stream<Path> there = Files.walk(folder)) {
      assertThat(there.map(file -> file.getFileName().toString()).toList())
          .contains("floor.yaml", "link.html", "lost.html", "a-folder")
          .noneMatch(name -> name.endsWith(".part"));
    }
  }

  @Test
  void of_a_damaged_scenario() throws Exception {
    List<byte[]> corpus =
        corpus("scenarios", "src/test/resources/bad-input", "src/test/resources/floors");
    damaged("scenarios", corpus, text -> Console.run(text, Map.of(), false, "advise", "-"));
  }

  @Test
  void of_a_damaged_proposal() throws Exception {
    List<byte[]> corpus = corpus("scenarios/proposals", "src/test/resources/proposals");
    damaged("proposals", corpus, text -> Console.run(text, Map.of(), false, "check", FLOOR, "-"));
  }

  @Test
  void of_a_damaged_price_book() throws Exception {
    Path scenario = folder.resolve("floor.yaml");
    Path book = folder.resolve("prices.yaml");
    Files.writeString(
        scenario,
        "scenario: A floor\npractice: uk\nroom: {use: hall, outline: [[0 m, 0 m], [2 m, 0 m], [2 m, 2 m]"
            + ", [0 m, 2 m]]}\nsubfloor: {deck: concrete slab}\ntile: {material: ceramic, length: 300 mm,"
            + " width: 300 mm}\nheating: none\nbudget: {limit: 700 GBP, prices: prices.yaml}\n");
    List<byte[]> corpus = List.of(Files.readAllBytes(Path.of("rules/figures/price-book.yaml")));
    damaged(
        "price books",
        corpus,
        text -> {
          Files.write(book, text);
          return Console.run("advise", scenario.toString());
        });
  }

  @Test
  void of_damaged_rules() throws Exception {
    Path rules = folder.resolve("rules");
    List<Path> files = copy(Path.of("rules"), rules);
    List<byte[]> corpus = new ArrayList<>();
    for (Path file : files) {
      corpus.add(Files.readAllBytes(file));
    }
    Random random = new Random(SEED);
    for (int i = 0; i < Math.max(10, INPUTS / 8); i++) {
      int at = random.nextInt(files.size());
      byte[] text = Mutilated.of(corpus.get(at), corpus, random);
      Files.write(files.get(at), text);
      String named = files.get(at).getFileName() + ", seed " + SEED + ", number " + i;
      // The page of a rule reads every file of a rule base, but compiles nothing.
      ours(named, text, () -> Console.run("rules", "TMB-10", "--rules", rules.toString()));
      Files.write(files.get(at), corpus.get(at));
    }
    told("rule files", Math.max(10, INPUTS / 8));
  }

  @Test
  void of_a_damaged_scenario_whose_page_is_written_or_the_old_one_left() throws Exception {
    List<byte[]> corpus = corpus("scenarios", "src/test/resources/floors");
    Path page = folder.resolve("page.html");
    damaged(
        "scenarios for a page",
        Math.max(10, INPUTS / 8),
        corpus,
        text -> {
          Files.writeString(page, "the old page");
          Console.Ran ran =
              Console.run(
                  text, Map.of(), false, "advise", "-", "--html", page.toString(), "--replace");
          boolean answered = ran.exit() == Exit.FINE || ran.exit() == Exit.NOT_TO_BE_BUILT;
          String left = Files.readString(page).strip();
          assertThat(answered ? left.endsWith("</html>") : left.equals("the old page"))
              .as("a whole page or the old one; exit %s: %s", ran.exit(), shown(text))
              .isTrue();
          onlyThere("page.html");
          return ran;
        });
  }

  @Test
  void of_many_damaged_scenarios_at_once_each_of_which_has_its_line() throws Exception {
    List<byte[]> corpus = corpus("scenarios", "src/test/resources/bad-input");
    Random random = new Random(SEED);
    Path many = Files.createDirectory(folder.resolve("many"));
    int count = Math.max(12, INPUTS / 8);
    for (int i = 0; i < count; i++) {
      byte[] text = Mutilated.of(corpus.get(random.nextInt(corpus.size())), corpus, random);
      Files.write(many.resolve("s" + (1000 + i) + ".yaml"), text);
    }
    Console.Ran ran = Console.run("batch", "--without-trials", many.toString());
    assertThat(ran.err()).doesNotContain("Exception", "\tat ");
    assertThat(ran.out().lines()).hasSize(count);
    for (String line : ran.out().lines().toList()) {
      assertThat(JsonMapper.shared().readTree(line).isObject()).as(line).isTrue();
    }
    // The same down a pipe, where each is a line of JSON or, damaged, is not.
    StringBuilder lines = new StringBuilder();
    for (int i = 0; i < count; i++) {
      byte[] text = Mutilated.of(corpus.get(random.nextInt(corpus.size())), corpus, random);
      String one = new String(text, StandardCharsets.UTF_8);
      lines.append(i % 3 == 0 ? one.lines().findFirst().orElse("x") : inJson(one)).append('\n');
    }
    byte[] piped = lines.toString().getBytes(StandardCharsets.UTF_8);
    ours("lines", piped, () -> Console.run(piped, Map.of(), false, "batch", "-"));
    told("scenarios of a batch", 2 * count);
  }

  @Test
  void of_answers_at_random_in_the_interview() throws Exception {
    Random random = new Random(SEED);
    List<String> words = answers();
    int talks = Math.max(5, INPUTS / 25);
    Path to = folder.resolve("floor.yaml");
    for (int i = 0; i < talks; i++) {
      StringBuilder lines = new StringBuilder();
      for (int j = 0; j < 5 + random.nextInt(15); j++) {
        lines.append(anyOf(words, random)).append('\n');
      }
      byte[] text = lines.toString().getBytes(StandardCharsets.UTF_8);
      ours(
          "answers, seed " + SEED + ", number " + i,
          text,
          () -> Console.run(text, Map.of(), false, "ask", "--to", to.toString(), "--replace"));
      onlyThere("floor.yaml");
    }
    told("interviews", talks);
  }

  @Test
  void of_answers_at_random_to_a_lesson() throws Exception {
    Random random = new Random(SEED);
    List<String> words = answers();
    List<Path> floors;
    try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
      floors = files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    }
    int lessons = Math.max(6, INPUTS / 15);
    for (int i = 0; i < lessons; i++) {
      StringBuilder lines = new StringBuilder();
      for (int j = 0; j < 25; j++) {
        lines.append(anyOf(words, random)).append('\n');
      }
      byte[] text = lines.toString().getBytes(StandardCharsets.UTF_8);
      String floor = floors.get(random.nextInt(floors.size())).toString();
      String seed = String.valueOf(random.nextLong());
      ours(
          "answers to " + floor + ", seed " + SEED + ", number " + i,
          text,
          () -> Console.run(text, Map.of(), false, "lesson", floor, "--mark", "--seed", seed));
    }
    told("lessons", lessons);
  }

  @Test
  void of_a_command_line_of_any_words() throws Exception {
    String[] words = {
      "advise",
      "why",
      "why-not",
      "check",
      "compare",
      "rules",
      "work-out",
      "schema",
      "batch",
      "ask",
      "lesson",
      "--json",
      "--html",
      "--rules",
      "--with",
      "--width",
      "--help",
      "--version",
      "--lint",
      "-",
      "",
      " ",
      FLOOR,
      "scenarios",
      "no-such-file.yaml",
      "TMB-10",
      "joists.clear span=3.4 m",
      "=",
      "x=",
      "-1",
      "999999999999",
      "1e9",
      "\u0000",
      "\ud83d\ude00",
      "--",
      "---",
      "@file",
      "@",
      "%s",
      "..",
      "/",
      "*",
      "foam-core board",
      "area=-1",
      "--proposal",
      "-h",
      "span=NaN",
      "x".repeat(5000)
    };
    Random random = new Random(SEED);
    int lines = INPUTS;
    for (int i = 0; i < lines; i++) {
      String[] line = new String[random.nextInt(5)];
      for (int j = 0; j < line.length; j++) {
        line[j] = words[random.nextInt(words.length)];
        boolean writes = line[j].equals("--html") || line[j].equals("ask");
        if (writes || (line[j].equals("--lint"))) {
          line[j] = "--json"; // what writes files, or takes long, is tried elsewhere
        }
      }
      ours(String.join(" ", line), new byte[0], () -> Console.run(line));
    }
    told("command lines", lines);
  }

  @Test
  void of_what_is_very_large() throws Exception {
    String head = "scenario: Large\npractice: uk\nsubfloor: {deck: concrete slab}\nheating: none\n";
    String tile = "tile: {material: ceramic, length: 300 mm, width: 300 mm}\n";
    String room = "room: {use: hall, outline: [[0 m, 0 m], [9 m, 0 m], [9 m, 9 m], [0 m, 9 m]]}\n";
    large("a scenario of 3 MB", head + room + tile + "# x\n".repeat(800_000));
    large("a text of 3 MB", head + room + tile + "notes: " + "x".repeat(3_000_000) + "\n");
    StringBuilder readings = new StringBuilder(head + room + tile + "levels:\n  readings:\n");
    for (int i = 0; i < 10_000; i++) {
      readings
          .append("    - [")
          .append(i % 100 * 0.09)
          .append(" m, ")
          .append(i / 100 * 0.09)
          .append(" m, ")
          .append(i * 31 % 7)
          .append(" mm]\n");
    }
    large("10 000 readings", readings.toString());
    StringBuilder corners = new StringBuilder();
    for (int i = 0; i < 500; i++) {
      double angle = 2 * Math.PI * i / 500;
      double radius = i % 2 == 0 ? 5 : 4.9;
      corners
          .append(i == 0 ? "" : ", ")
          .append(
              String.format(
                  java.util.Locale.ROOT,
                  "[%.3f m, %.3f m]",
                  6 + radius * Math.cos(angle),
                  6 + radius * Math.sin(angle)));
    }
    large("500 corners", head + tile + "room: {use: hall, outline: [" + corners + "]}\n");
    large(
        "tiles of 1 mm in a hall of 100 m",
        head
            + "room: {use: hall, outline: [[0 m, 0 m], [100 m, 0 m], [100 m, 100 m], [0 m, 100 m]]}\n"
            + "tile: {material: ceramic, length: 1 mm, width: 1 mm, thickness: 4 mm}\n");
    large("deep nesting", head + room + "tile: " + "[".repeat(50_000) + "\n");
    large("deep nesting in braces", head + room + "tile: " + "{a: ".repeat(50_000) + "\n");
    large("a very long key", head + room + tile + "k".repeat(500_000) + ": 1\n");
    large("many keys", head + room + tile + keys(60_000));
    large(
        "question marks on one line",
        head + room + tile + "n: {" + "a: ?, ".repeat(160_000) + "}\n");
    large("all sorts of things, a hundred of each", things(100));
    large("parts", head + room + tile + parts(200));
    large(
        "texts that stand for texts",
        "a: &a [x, x, x, x, x, x, x, x]\nb: &b [*a, *a, *a, *a, *a, *a, *a, *a]\n"
            + "c: &c [*b, *b, *b, *b, *b, *b, *b, *b]\nd: [*c, *c, *c, *c, *c, *c, *c, *c]\n");
  }

  /** A hall of boards with so many heavy things, so many cuts in its joists, and doors. */
  private static String things(int count) {
    StringBuilder doors = new StringBuilder();
    StringBuilder items = new StringBuilder();
    StringBuilder notches = new StringBuilder();
    StringBuilder holes = new StringBuilder();
    for (int i = 0; i < count; i++) {
      doors.append("{name: d%d, wall: %d, from: %d m, width: 762 mm}, ".formatted(i, i % 4, i / 4));
      items.append("{name: t%d, kind: bath, mass: %d kg}, ".formatted(i, 250 + i));
      notches.append("{name: n%d, depth: 20 mm, from support: %d mm}, ".formatted(i, 50 + 9 * i));
      holes.append("{name: h%d, diameter: 22 mm, from support: %d mm}, ".formatted(i, 55 + 9 * i));
    }
    return """
        scenario: Things
        practice: uk
        subfloor:
          deck: tongue-and-groove boards
          joists: {breadth: 50 mm, depth: 150 mm, centres: 400 mm, clear span: 2.9 m, notches: [%s], holes: [%s]}
        tile: {material: ceramic, length: 300 mm, width: 300 mm}
        room:
          use: hall
          outline: [[0 m, 0 m], [60 m, 0 m], [60 m, 60 m], [0 m, 60 m]]
          doors: [%s]
          heavy items: [%s]
        """
        .formatted(notches, holes, doors, items);
  }

  private static String parts(int count) {
    return "zones:\n"
        + IntStream.range(0, count)
            .mapToObj(i -> "  - {name: part %d, deck: concrete slab}%n".formatted(i))
            .collect(Collectors.joining());
  }

  @Test
  void of_an_argument_that_begins_like_a_list_of_arguments() throws Exception {
    Path options = folder.resolve("@floor.yaml");
    Path target = folder.resolve("taken.jsonl");
    Files.writeString(options, "--out " + target + " --replace");
    Files.writeString(folder.resolve("floor.yaml"), "--out " + target + " --replace");
    ours("@", new byte[0], () -> Console.run("batch", "@" + folder.resolve("floor.yaml")));
    ours("@", new byte[0], () -> Console.run("batch", options.toString()));
    assertThat(target).doesNotExist();
  }

  @Test
  void of_what_was_once_answered_badly() throws Exception {
    for (byte[] text : corpus("src/test/resources/once-answered-badly")) {
      ours("kept", text, () -> Console.run(text, Map.of(), false, "advise", "-"));
      ours("kept", text, () -> Console.run(text, Map.of(), false, "check", FLOOR, "-"));
    }
  }

  /** Answers that people may give, and others. */
  private static List<String> answers() {
    List<String> words =
        new ArrayList<>(
            List.of(
                "",
                "don't know",
                "unknown",
                "why",
                "help",
                "back",
                "enough",
                "save",
                "yes",
                "no",
                "1",
                "2",
                "a",
                "b",
                "c, d",
                "1 3 2",
                "-1",
                "9 mm",
                "1e999 m",
                "12 ft 6 in",
                "NaN",
                "600",
                "600 x 600",
                "big",
                "old wooden floor",
                "\u0000",
                "\u202e",
                "°",
                "½ in",
                "[[0 m, 0 m], [3 m, 0 m], [3 m, 2 m]]",
                "{a: b}",
                "*a",
                "!!java.net.URL x",
                "---",
                "quit",
                "x".repeat(200_000),
                "\ud83d",
                "3 x 4 m",
                "4,5 m",
                "99999999999999999999"));
    for (FactDefinition fact : Floors.advisor().knowledge().facts().definitions()) {
      words.addAll(fact.of());
      if (!fact.example().isEmpty()) {
        words.add(fact.example());
      }
    }
    return words;
  }

  private static String anyOf(List<String> words, Random random) {
    String one = words.get(random.nextInt(words.size()));
    return random.nextInt(8) > 0 || one.equals("save")
        ? one
        : one + " " + words.get(random.nextInt(words.size()));
  }

  private static String inJson(String yaml) {
    return JsonMapper.shared().writeValueAsString(Map.of("scenario", yaml, "practice", "uk"));
  }

  /** Nothing is in the folder but, perhaps, what was to be written. */
  private void onlyThere(String named) throws IOException {
    try (Stream<Path> there = Files.list(folder)) {
      assertThat(there.map(file -> file.getFileName().toString()).toList())
          .isSubsetOf(List.of(named));
    }
  }

  private static String keys(int count) {
    StringBuilder keys = new StringBuilder();
    for (int i = 0; i < count; i++) {
      keys.append('k').append(i).append(": 1\n");
    }
    return keys.toString();
  }

  private static void large(String what, String yaml) throws Exception {
    byte[] text = yaml.getBytes(StandardCharsets.UTF_8);
    ours(what, text, () -> Console.run(text, Map.of(), false, "advise", "-"));
  }

  private interface Run {
    Console.Ran run() throws Exception;
  }

  private interface Take {
    Console.Ran run(byte[] text) throws Exception;
  }

  private static void damaged(String sort, List<byte[]> corpus, Take take) throws Exception {
    damaged(sort, INPUTS, corpus, take);
  }

  private static void damaged(String sort, int count, List<byte[]> corpus, Take take)
      throws Exception {
    Random random = new Random(SEED);
    for (int i = 0; i < count; i++) {
      byte[] text = Mutilated.of(corpus.get(random.nextInt(corpus.size())), corpus, random);
      ours(sort + ", seed " + SEED + ", number " + i, text, () -> take.run(text));
    }
    told(sort, count);
  }

  private static void told(String sort, int count) {
    System.getLogger("underfoot.inputs").log(Level.INFO, "{0} damaged {1} put in", count, sort);
  }

  private static void ours(String named, byte[] text, Run run) throws Exception {
    long start = worked();
    Console.Ran ran;
    try {
      ran = run.run();
    } catch (RuntimeException | StackOverflowError e) {
      fail(named + " ends in " + e + "\n" + shown(text), e);
      return;
    }
    long millis = worked() - start;
    assertThat(ran.exit())
        .as("%s: %s%n%s", named, ran.err(), shown(text))
        .isIn(
            Exit.FINE,
            Exit.WRONG_USAGE,
            Exit.SCENARIO_INVALID,
            Exit.NOT_TO_BE_BUILT,
            Exit.FAULTS_FOUND);
    assertThat(ran.err()).as(named).doesNotContain("Exception", "\tat ", "snakeyaml", "jackson");
    assertThat(STEERS.matcher(ran.out() + ran.err()).find())
        .as("steers a terminal: " + named)
        .isFalse();
    assertThat(millis).as("milliseconds of work for " + named).isLessThan(MOST_MILLIS_OF_WORK);
  }

  private static long worked() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1_000_000;
  }

  private static String shown(byte[] text) {
    String shown = new String(text, StandardCharsets.UTF_8);
    return shown.length() > 3000 ? shown.substring(0, 3000) + "…" : shown;
  }

  private static List<byte[]> corpus(String... folders) throws IOException {
    List<byte[]> corpus = new ArrayList<>();
    for (String folder : folders) {
      if (!Files.isDirectory(Path.of(folder))) {
        continue;
      }
      try (Stream<Path> files = Files.list(Path.of(folder))) {
        for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
          corpus.add(Files.readAllBytes(file));
        }
      }
    }
    return corpus;
  }

  private static List<Path> copy(Path from, Path to) throws IOException {
    List<Path> copies = new ArrayList<>();
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.sorted().toList()) {
        Path copy = to.resolve(from.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(copy);
        } else {
          Files.copy(file, copy);
          copies.add(copy);
        }
      }
    }
    return copies;
  }
}
