package underfoot.knowledge;

import java.util.List;
import java.util.stream.Collectors;

/** A file of the knowledge base that cannot be used as it stands. */
public final class KnowledgeFault extends Exception {
  private final String file;
  private final int line;
  private final String what;

  /**
   * @param file the file
   * @param line the line, 0 if not known
   * @param what what is wrong and how to mend it
   */
  public KnowledgeFault(String file, int line, String what) {
    super((line > 0 ? file + ":" + line : file) + ": " + what);
    this.file = file;
    this.line = line;
    this.what = what;
  }

  private KnowledgeFault(KnowledgeFault first, String all) {
    super(all);
    this.file = first.file;
    this.line = first.line;
    this.what = first.what;
  }

  /** Several at once, each on a line of its own; where it stands is where the first does. */
  static KnowledgeFault all(List<KnowledgeFault> faults) {
    return new KnowledgeFault(
        faults.get(0),
        faults.stream().map(Throwable::getMessage).collect(Collectors.joining("\n")));
  }

  /** The file. */
  public String file() {
    return file;
  }

  /** The line, 0 if not known. */
  public int line() {
    return line;
  }

  /** What is wrong and how to mend it. */
  public String what() {
    return what;
  }
}
