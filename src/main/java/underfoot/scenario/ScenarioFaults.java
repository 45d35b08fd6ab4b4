package underfoot.scenario;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Everything that is wrong with a file, found in one go. */
public final class ScenarioFaults extends Exception {
  /** At most this many faults are printed; the rest are counted. */
  private static final int SHOWN = 20;

  private final transient List<Fault> faults;

  /**
   * Gathers faults, in the order of their places.
   *
   * @param faults at least one fault
   */
  public ScenarioFaults(List<Fault> faults) {
    super("faults in a file", null, false, false);
    List<Fault> sorted = new ArrayList<>(faults);
    sorted.sort(Comparator.comparingInt(Fault::line).thenComparingInt(Fault::column));
    this.faults = List.copyOf(sorted);
  }

  /** The faults in the order of their places in the file. */
  public List<Fault> faults() {
    return faults;
  }

  /** The faults as they are printed, one after the other: 20 at most, then how many more. */
  public String text() {
    StringBuilder out = new StringBuilder();
    for (Fault fault : faults.subList(0, Math.min(SHOWN, faults.size()))) {
      out.append(fault.text()).append('\n');
    }
    if (faults.size() > SHOWN) {
      out.append("and ").append(faults.size() - SHOWN).append(" more\n");
    }
    return out.toString();
  }

  @Override
  public String getMessage() {
    return text();
  }
}
