package underfoot.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;
import underfoot.language.RuleFaults;
import underfoot.language.RuleSet;
import underfoot.reasoning.Overlay;

/**
 * Files from strangers, made by a fuzzer that watches which code they reach: whatever stands in
 * one, the answer is ours, it steers no terminal, runs no code and loses nothing. {@code -Dfuzzed}
 * says which sort of file: {@code scenario}, {@code prices}, {@code proposal}, {@code rules} or
 * {@code vocabulary}; {@code batch}, lines of scenarios down a pipe; {@code journal}, the file that
 * a batch goes on with; {@code output}, the name of a file to write; {@code answers} to the
 * interview; {@code course}; {@code class}, its file; {@code marks}, a table of answers.
 */
public final class FuzzedFiles {
  private static final String FLOOR = "scenarios/utility-room-over-a-cellar-on-old-boards.yaml";
  private static final String HALL = "hall-on-a-slab.yaml";

  /**
   * Of so many scenarios one has every assumption tried otherwise, which takes ten times longer.
   */
  private static final int ONE_WHOLE_OF = 16;

  private static final String SORT = System.getProperty("fuzzed", "scenario");
  private static final Pattern STEERS =
      Pattern.compile("[\\p{Cntrl}\\x80-\\x9f\u202a-\u202e\u2066-\u2069&&[^\\n\\t]]");
  private static final Path FOLDER = folder();

  private static final Path TERM = SORT.equals("marks") ? term() : null;

  private FuzzedFiles() {}

  private static Path folder() {
    try {
      Path folder = Files.createTempDirectory("fuzzed");
      Files.writeString(
          folder.resolve("floor.yaml"),
          Files.readString(Path.of(FLOOR)) + "\nbudget: {limit: 700 GBP, prices: prices.yaml}\n");
      Files.copy(Path.of("rules/lessons/floors", HALL), folder.resolve(HALL));
      return folder;
    } catch (IOException e) {
      throw new IllegalStateException("nothing can be written", e);
    }
  }

  /**
   * What the fuzzer calls.
   *
   * @param file a file it made
   * @throws Exception whatever is no error of ours, which is what it looks for
   */
  public static void fuzzerTestOneInput(byte[] file) throws Exception {
    switch (SORT) {
      case "scenario" -> {
        if (Arrays.hashCode(file) % ONE_WHOLE_OF == 0) {
          ours(Console.run(file, Map.of(), false, "advise", "-"));
        } else {
          quick(Files.write(FOLDER.resolve("any.yaml"), file));
        }
      }
      case "proposal" -> ours(Console.run(file, Map.of(), false, "check", FLOOR, "-"));
      case "prices" -> {
        Files.write(FOLDER.resolve("prices.yaml"), file);
        quick(FOLDER.resolve("floor.yaml"));
      }
      case "batch" -> batch(file);
      case "journal" -> journal(file);
      case "output" -> output(new String(file, StandardCharsets.UTF_8));
      case "answers" -> {
        String to = FOLDER.resolve("answered.yaml").toString();
        ours(Console.run(file, Map.of(), false, "ask", "--to", to, "--replace"));
      }
      case "course" -> course(file);
      case "class" -> {
        Path book = Files.write(FOLDER.resolve("class.jsonl"), file);
        ours(Console.run("mark", book.toString()));
        ours(Console.run("mark", book.toString(), "--html", "-"));
      }
      case "marks" -> {
        Path book = FOLDER.resolve("class.jsonl");
        Files.copy(TERM.resolve("class.jsonl"), book, StandardCopyOption.REPLACE_EXISTING);
        ours(Console.run(file, Map.of(), false, "mark", book.toString(), "--answers", "-"));
      }
      case "rules" -> read("understand/01-what-the-floor-is.dslr", file);
      case "vocabulary" -> read("vocabulary/90-general.dsl", file);
      default -> throw new IllegalArgumentException("no sort of file: " + SORT);
    }
  }

  /** The whole advice, but nothing tried otherwise, so that many more files are put in. */
  private static void quick(Path floor) {
    Console.Ran ran = Console.run("batch", floor.toString(), "--without-trials");
    ours(ran);
    if (ran.out().lines().count() != 1 || ran.out().contains("\"Internal error")) {
      throw new IllegalStateException("no line of its own: " + ran.out());
    }
  }

  /** Every line that is not blank gets its own, whole, whatever stands in the others. */
  private static void batch(byte[] file) throws IOException {
    Console.Ran ran = Console.run(file, Map.of(), false, "batch", "-", "--without-trials");
    ours(ran);
    long asked = new String(file, StandardCharsets.UTF_8).split("\n", -1).length;
    List<String> told = ran.out().lines().toList();
    if (told.size() > asked
        || told.stream().anyMatch(line -> !isObject(line) || line.contains("\"Internal error"))) {
      throw new IllegalStateException("no line of JSON each: " + ran.out());
    }
  }

  /** A file that is gone on with keeps every whole line it has, or is not touched. */
  private static void journal(byte[] file) throws IOException {
    Path out = Files.write(FOLDER.resolve("lines.jsonl"), file);
    String floor = FOLDER.resolve("floor.yaml").toString();
    Console.Ran ran =
        Console.run("batch", floor, "--out", out.toString(), "--resume", "--without-trials");
    ours(ran);
    byte[] after = Files.readAllBytes(out);
    int whole = file.length;
    while (ran.exit() != Exit.WRONG_USAGE && whole > 0 && file[whole - 1] != '\n') {
      whole--;
    }
    if (after.length < whole || Arrays.mismatch(file, 0, whole, after, 0, whole) >= 0) {
      throw new IllegalStateException("lost: exit " + ran.exit() + ": " + ran.err());
    }
  }

  /** Whatever a file is to be called, what is read stays as it was, and nothing half stays. */
  private static void output(String name) throws IOException {
    if (name.contains("..") || name.startsWith("~")) {
      return; // so that the fuzzer writes within its folder
    }
    Path floor = FOLDER.resolve("floor.yaml");
    byte[] before = Files.readAllBytes(floor);
    String to = FOLDER + "/" + name;
    ours(Console.run("why", floor.toString(), "--html", to, "--replace"));
    ours(Console.run("batch", floor.toString(), "--out", to, "--without-trials"));
    if (!Arrays.equals(before, Files.readAllBytes(floor))) {
      throw new IllegalStateException("what was read was written over");
    }
    try (Stream<Path> there = Files.list(FOLDER)) {
      for (Path one : there.toList()) {
        if (one.toString().endsWith(".part")) {
          throw new IllegalStateException("left: " + one);
        }
        if (!one.equals(floor) && Files.isRegularFile(one)) {
          Files.delete(one);
        }
      }
    }
  }

  private static void course(byte[] file) throws IOException {
    Path made = Files.createTempDirectory(FOLDER, "term");
    Path said = Files.write(FOLDER.resolve("course.yaml"), file);
    ours(
        Console.run(
            "lesson", "--course=" + said, "--pupils", "Ann, Ben", "--out", made.toString()));
    try (Stream<Path> there = Files.walk(made)) {
      there.sorted(Comparator.reverseOrder()).forEach(one -> one.toFile().delete());
    }
  }

  /** A class to whose sheets answers are given. */
  private static Path term() {
    try {
      Path term = Files.createTempDirectory("term");
      Path said = term.resolve("course.yaml");
      Files.writeString(
          said,
          "course: A short one\nsheets:\n"
              + "  - {sheet: The bed, topics: [bed, joints], floors: [hall-on-a-slab.yaml],"
              + " questions: 8}\n");
      Files.copy(Path.of("rules/lessons/floors", HALL), term.resolve(HALL));
      ours(
          Console.run(
              "lesson", "--course=" + said, "--pupils", "Ann, Ben", "--out", term.toString()));
      return term;
    } catch (IOException e) {
      throw new IllegalStateException("nothing can be written", e);
    }
  }

  private static boolean isObject(String line) {
    try {
      return JsonMapper.shared().readTree(line).isObject();
    } catch (JacksonException e) {
      return false;
    }
  }

  /** Reads a rule base in which one file is a stranger's. */
  private static void read(String name, byte[] file) {
    List<RuleFaults.Fault> faults = new ArrayList<>();
    RuleSet.read(new Overlay().with(name, file), faults);
    for (RuleFaults.Fault fault : faults) {
      steersNothing(fault.toString());
    }
  }

  private static void ours(Console.Ran ran) {
    if (ran.exit() == Exit.INTERNAL || ran.exit() < 0 || ran.exit() > Exit.FAULTS_FOUND) {
      throw new IllegalStateException("exit " + ran.exit());
    }
    if (ran.err().contains("Internal error") || ran.err().contains("\tat ")) {
      throw new IllegalStateException(ran.err());
    }
    steersNothing(ran.out());
    steersNothing(ran.err());
  }

  private static void steersNothing(String text) {
    if (STEERS.matcher(text).find()) {
      throw new IllegalStateException("steers a terminal: " + text.replaceAll("[^ -~\\n]", "?"));
    }
  }
}
