package underfoot.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import underfoot.language.RuleFaults;
import underfoot.language.RuleSet;
import underfoot.reasoning.Overlay;

/**
 * Files from strangers, made by a fuzzer that watches which code they reach: whatever stands in
 * one, the answer is ours, it steers no terminal and runs no code. {@code -Dfuzzed} says which sort
 * of file: {@code scenario}, {@code prices}, {@code proposal}, {@code rules} or {@code vocabulary}.
 */
public final class FuzzedFiles {
  private static final String FLOOR = "scenarios/utility-room-over-a-cellar-on-old-boards.yaml";
  private static final String SORT = System.getProperty("fuzzed", "scenario");
  private static final Pattern STEERS =
      Pattern.compile("[\\p{Cntrl}\\x80-\\x9f\u202a-\u202e\u2066-\u2069&&[^\\n\\t]]");
  private static final Path FOLDER = folder();

  private FuzzedFiles() {}

  private static Path folder() {
    try {
      Path folder = Files.createTempDirectory("fuzzed");
      Files.writeString(
          folder.resolve("floor.yaml"),
          Files.readString(Path.of(FLOOR)) + "\nbudget: {limit: 700 GBP, prices: prices.yaml}\n");
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
      case "scenario" -> ours(Console.run(file, Map.of(), false, "advise", "-"));
      case "proposal" -> ours(Console.run(file, Map.of(), false, "check", FLOOR, "-"));
      case "prices" -> {
        Files.write(FOLDER.resolve("prices.yaml"), file);
        ours(Console.run("advise", FOLDER.resolve("floor.yaml").toString()));
      }
      case "rules" -> read("understand/01-what-the-floor-is.dslr", file);
      case "vocabulary" -> read("vocabulary/90-general.dsl", file);
      default -> throw new IllegalArgumentException("no sort of file: " + SORT);
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
