package underfoot.scenario;

import java.util.List;

/** Faults of a long list: the first few are told, the rest counted, so that others are seen too. */
final class CappedFaults {
  private static final int TOLD = 3;

  private final String file;
  private final List<Fault> faults;
  private final String word;
  private int count;
  private Node last;

  CappedFaults(String file, List<Fault> faults, String word) {
    this.file = file;
    this.faults = faults;
    this.word = word;
  }

  void add(Node at, String what, String how) {
    count++;
    if (count <= TOLD) {
      faults.add(Fault.at(file, at, what, how));
    } else if (count == TOLD + 1) {
      last = at;
    }
  }

  /** Tells how many more there were, and returns whether there was no fault. */
  boolean end() {
    if (count > TOLD) {
      int more = count - TOLD;
      faults.add(
          Fault.at(
              file,
              last,
              word + " has " + more + (more == 1 ? " more fault" : " more faults") + " like these",
              ""));
    }
    return count == 0;
  }
}
