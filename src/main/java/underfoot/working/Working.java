package underfoot.working;

import java.util.List;
import java.util.Map;

/** A formula that can be described and run by name. */
public interface Working {
  /** Its name, as typed. */
  String name();

  /** What it is for, in one line. */
  String purpose();

  /** Its keys, in the order they are explained. */
  List<Key> keys();

  /** Ways to give the keys of which exactly one is taken; empty where there is only one way. */
  default List<Alternative> alternatives() {
    return List.of();
  }

  /** Keys and values that make a run, as typed. */
  List<String> example();

  /** Where the formula and its constants come from, with edition and how well it is known. */
  String source();

  /**
   * Works it out from keys already read and checked.
   *
   * @param in the keys
   * @return what it came to
   * @throws Refused where the keys do not fit together
   */
  Result work(Inputs in);

  /**
   * Works it out from typed text or from numbers.
   *
   * @param given key to text with its unit, or to a {@link Measure}
   * @return what it came to
   * @throws Refused with one line that names the key, its unit and its range
   */
  default Result run(Map<String, ?> given) {
    Inputs in = Inputs.read(this, given);
    try {
      return work(in);
    } catch (IllegalArgumentException beyond) {
      throw new Refused(name() + ": these values do not go together: " + beyond.getMessage());
    }
  }
}
