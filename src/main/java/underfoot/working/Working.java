package underfoot.working;

import java.util.List;
import java.util.Map;

/** A formula that can be described and run by name. */
public abstract class Working {
  private final Sheet sheet;
  private final List<Key> keys;

  /**
   * What is told of a working.
   *
   * @param name its name, as typed
   * @param purpose what it is for, in one line
   * @param source where the formula and its constants come from, with edition and how well it is
   *     known
   * @param alternatives ways to give the keys of which exactly one is taken; empty where there is
   *     only one way
   * @param example keys and values that make a run, as typed
   */
  record Sheet(
      String name,
      String purpose,
      String source,
      List<Alternative> alternatives,
      List<String> example) {
    Sheet(String name, String purpose, String source, String... example) {
      this(name, purpose, source, List.of(), List.of(example));
    }

    Sheet ways(Alternative... ways) {
      return new Sheet(name, purpose, source, List.of(ways), example);
    }
  }

  Working(Sheet sheet, Key... keys) {
    this.sheet = sheet;
    this.keys = List.of(keys);
  }

  /** Its name, as typed. */
  public final String name() {
    return sheet.name();
  }

  /** What it is for, in one line. */
  public final String purpose() {
    return sheet.purpose();
  }

  /** Its keys, in the order they are explained. */
  public final List<Key> keys() {
    return keys;
  }

  /** Ways to give the keys of which exactly one is taken; empty where there is only one way. */
  public final List<Alternative> alternatives() {
    return sheet.alternatives();
  }

  /** Keys and values that make a run, as typed. */
  public final List<String> example() {
    return sheet.example();
  }

  /** Where the formula and its constants come from, with edition and how well it is known. */
  public final String source() {
    return sheet.source();
  }

  /**
   * Works it out from keys already checked.
   *
   * @throws Refused where the keys do not fit together
   */
  abstract Result work(Inputs in);

  /**
   * Works it out from typed text.
   *
   * @param typed key to text, with its unit
   * @return what it came to
   * @throws Refused with one line that names the key, its unit and its range
   */
  public final Result read(Map<String, String> typed) {
    return run(Inputs.read(this, typed));
  }

  /**
   * Works it out from numbers.
   *
   * @param given key to a Double or double[] in the base unit of its dimension (mm, C, h, N/mm2,
   *     kN/m2 and so on), or to a word
   * @return what it came to
   * @throws Refused with one line that names the key, its unit and its range
   */
  public final Result run(Map<String, ?> given) {
    Inputs in = new Inputs(this, given);
    try {
      return work(in);
    } catch (IllegalArgumentException beyond) {
      throw new Refused(name() + ": these values do not go together: " + beyond.getMessage());
    }
  }
}
