package underfoot.measure;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underfoot.working.Refused;
import underfoot.working.Result;
import underfoot.working.Working;

/** Runs workings with numbers rather than typed text, and tells their steps in one line. */
public final class Worked {
  private final Map<String, Object> keys = new LinkedHashMap<>();
  private boolean unknown;

  private Worked() {}

  /** Begins with no keys. */
  public static Worked with() {
    return new Worked();
  }

  /**
   * Gives one key, in the base unit of what it measures (mm, C, h, N/mm2, kN/m2 and so on). A
   * number that is not finite stands for one that is not known.
   */
  public Worked key(String name, double value) {
    unknown |= !Double.isFinite(value);
    keys.put(name, value);
    return this;
  }

  /** Gives one key in words. */
  public Worked key(String name, String word) {
    keys.put(name, word);
    return this;
  }

  /** Gives one key as a list, in the base unit. */
  public Worked key(String name, double[] values) {
    unknown |= !Arrays.stream(values).allMatch(Double::isFinite);
    keys.put(name, values);
    return this;
  }

  /** Runs a working; empty where a number is unknown or beyond the range of its formula. */
  public Optional<Result> run(Working working) {
    if (unknown) {
      return Optional.empty();
    }
    try {
      return Optional.of(working.run(keys));
    } catch (Refused beyond) {
      return Optional.empty();
    }
  }

  /** The steps of a result in one line: each formula, its numbers, and what they came to. */
  public static String how(Result result) {
    List<String> steps = result.steps();
    StringBuilder how = new StringBuilder();
    for (int i = 0; i + 2 < steps.size(); i += 3) {
      how.append(how.isEmpty() ? "" : "; ")
          .append(steps.get(i))
          .append(": ")
          .append(steps.get(i + 1))
          .append(", so ")
          .append(steps.get(i + 2));
    }
    return how.toString();
  }
}
