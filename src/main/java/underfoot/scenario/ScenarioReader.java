package underfoot.scenario;

import java.util.List;

/** Reads scenario files. One reader may be used for many files and by several threads. */
public final class ScenarioReader {
  private final FactBook book;

  /**
   * A reader for what a rule base lets a scenario say.
   *
   * @param book the facts that may be said
   */
  public ScenarioReader(FactBook book) {
    this.book = book;
  }

  /**
   * Reads a scenario.
   *
   * @param fileName the file's name as the user gave it, for messages
   * @param content the file's bytes: YAML in UTF-8, at most a megabyte
   * @return the scenario
   * @throws ScenarioFaults if anything is wrong with it; all faults at once, each with its place
   *     and how to put it right
   */
  public Scenario read(String fileName, byte[] content) throws ScenarioFaults {
    return gathered(fileName, content, false);
  }

  /**
   * Reads a scenario that is still being written: required facts may be missing from it. No advice
   * can be given on it before they are there.
   *
   * @param fileName the file's name, for messages
   * @param content the file's bytes
   * @return what it says so far
   * @throws ScenarioFaults if anything else is wrong with it
   */
  public Scenario readUnfinished(String fileName, byte[] content) throws ScenarioFaults {
    return gathered(fileName, content, true);
  }

  private Scenario gathered(String fileName, byte[] content, boolean unfinished)
      throws ScenarioFaults {
    Node root = YamlTree.read(fileName, content, (int) book.limit("largest-file"));
    if (root instanceof Node.Keys keys) {
      Gatherer gatherer = new Gatherer(book, fileName);
      Scenario room = unfinished ? gatherer.unfinished(keys) : gatherer.scenario(keys);
      return new ZoneReader(book, fileName, keys, room, unfinished).read();
    }
    throw new ScenarioFaults(
        List.of(
            Fault.at(
                fileName,
                root,
                book.subject()
                    + (root instanceof Node.Items
                        ? " begins with a list, but keys are needed"
                        : " is one text, but keys are needed"),
                Values.example(book.definitions().iterator().next()))));
  }
}
