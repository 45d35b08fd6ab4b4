package underfoot.language;

import java.util.List;
import java.util.stream.Collectors;

/** Rules that cannot be used as they stand. */
public final class RuleFaults extends Exception {
  private final transient List<Fault> faults;

  /** Carries all that is wrong. */
  public RuleFaults(List<Fault> faults) {
    super(faults.stream().map(Fault::toString).collect(Collectors.joining("\n")));
    this.faults = List.copyOf(faults);
  }

  /** All that is wrong. */
  public List<Fault> faults() {
    return faults;
  }

  /**
   * One thing wrong.
   *
   * @param file the rule file
   * @param line the line, 0 if not known
   * @param what what is wrong and how to mend it
   */
  public record Fault(String file, int line, String what) {
    @Override
    public String toString() {
      return file + ":" + line + ": " + what;
    }
  }
}
