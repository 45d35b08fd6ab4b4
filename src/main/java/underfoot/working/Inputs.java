package underfoot.working;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import underfoot.quantity.Dimension;
import underfoot.quantity.Nearest;
import underfoot.quantity.Words;

/**
 * What one run of a working is given, checked: numbers in the base units of their dimensions, words
 * for choices, arrays for lists and rows.
 */
public final class Inputs {
  private static final String DAYS = "days";

  private final Map<String, Key> keys;
  private final Map<String, Object> values;

  /**
   * Checks what is given.
   *
   * @throws Refused on the first fault: unknown key, out of range, missing key
   */
  Inputs(Working working, Map<String, ?> given) {
    keys = byName(working);
    values = new LinkedHashMap<>();
    known(working, keys, given);
    for (Key key : keys.values()) {
      Object value = given.get(key.name());
      if (value != null) {
        check(key, value);
        values.put(key.name(), value);
      }
    }
    settleAlternatives(working);
    for (Key key : keys.values()) {
      if (key.needed() && !has(key.name())) {
        throw key.refuse("is missing");
      }
    }
  }

  /** What was typed for each key, read. */
  static Map<String, Object> read(Working working, Map<String, String> typed) {
    Map<String, Key> keys = byName(working);
    known(working, keys, typed);
    Map<String, Object> read = new LinkedHashMap<>();
    for (Key key : keys.values()) {
      String text = typed.get(key.name());
      if (text != null && text.isBlank()) {
        throw key.refuse("has no value");
      } else if (text != null) {
        read.put(key.name(), Typed.read(key, text));
      }
    }
    return read;
  }

  private static Map<String, Key> byName(Working working) {
    Map<String, Key> keys = new LinkedHashMap<>();
    working.keys().forEach(key -> keys.put(key.name(), key));
    return keys;
  }

  private static void known(Working working, Map<String, Key> keys, Map<String, ?> given) {
    for (String name : given.keySet()) {
      if (!keys.containsKey(name)) {
        Key near = keys.get(Nearest.to(name, keys.keySet()));
        throw new Refused(
            Words.quote(name)
                + " is not a key of "
                + working.name()
                + (near == null
                    ? "; its keys are "
                        + keys.values().stream()
                            .map(k -> k.name() + (k.unit().isEmpty() ? "" : " (" + k.unit() + ")"))
                            .collect(Collectors.joining(", "))
                    : "; did you mean " + near.name() + ", " + near.range() + "?"));
      }
    }
  }

  private void settleAlternatives(Working working) {
    List<Alternative> ways = working.alternatives();
    if (ways.isEmpty()) {
      return;
    }
    Alternative way =
        ways.stream()
            .filter(each -> has(each.mark()))
            .findFirst()
            .orElseThrow(
                () ->
                    refuse(
                        ways.get(0).mark(),
                        ways.stream()
                            .skip(1)
                            .map(Alternative::words)
                            .collect(Collectors.joining(", or ", "is missing (or give ", ")"))));
    for (Alternative other : ways) {
      for (String name : other.needed()) {
        if (has(name) && !way.takes(name)) {
          throw refuse(name, "is not taken together with " + way.mark());
        }
      }
    }
    for (String name : way.needed()) {
      if (!has(name)) {
        throw refuse(name, "is missing");
      }
    }
  }

  private static void check(Key key, Object value) {
    if (value instanceof Double number) {
      check(key, number.doubleValue());
    } else if (value instanceof double[] list) {
      Arrays.stream(list).forEach(number -> check(key, number));
    } else if (value instanceof double[][] rows) {
      for (double[] row : rows) {
        // Of a point or a spell of time, the last number is the key's own.
        int own = key.shape() == Key.Shape.GRID ? 0 : row.length - 1;
        Arrays.stream(row).skip(own).forEach(number -> check(key, number));
      }
    }
  }

  private static void check(Key key, double number) {
    if (!key.takes(number)) {
      throw key.refuse(key.measure(number) + " is out of range");
    }
    double days = number / key.factor();
    if (key.dimension() == Dimension.TIME && key.unit().equals(DAYS) && days != Math.rint(days)) {
      throw key.refuse(key.measure(number) + " is not a whole number of days");
    }
  }

  /** Whether a key was given. */
  public boolean has(String name) {
    return values.containsKey(name);
  }

  /** A value in the base unit of its dimension (mm for lengths). */
  double number(String name) {
    return (Double) values.get(name);
  }

  /** A value in the base unit, or another if the key was left out. */
  double number(String name, double otherwise) {
    return has(name) ? number(name) : otherwise;
  }

  /** A length in m. */
  double metres(String name) {
    return number(name) / 1000;
  }

  /** The word chosen. */
  String word(String name) {
    return (String) values.get(name);
  }

  /** The values of a list. */
  double[] list(String name) {
    return (double[]) values.get(name);
  }

  /** The rows of a grid, points (x m, y m, z mm) or history (h, C). */
  double[][] rows(String name) {
    return (double[][]) values.get(name);
  }

  /** The single numbers given, by key. */
  Map<String, Double> numbers() {
    Map<String, Double> numbers = new LinkedHashMap<>();
    values.forEach(
        (name, value) -> {
          if (value instanceof Double number) {
            numbers.put(name, number);
          }
        });
    return numbers;
  }

  /** A refusal of one key for a reason that only shows beside the others. */
  Refused refuse(String name, String reason) {
    return keys.get(name).refuse(reason);
  }

  /** Works something out, and lays it to one key if the numbers do not go together. */
  <T> T blaming(String name, Supplier<T> formula) {
    try {
      return formula.get();
    } catch (IllegalArgumentException beyond) {
      throw refuse(name, beyond.getMessage());
    }
  }

  /** What was given, for the record: a measure, a word, or lists of numbers. */
  Map<String, Object> shown() {
    Map<String, Object> shown = new LinkedHashMap<>();
    values.forEach((name, value) -> shown.put(name, shown(keys.get(name), value)));
    return shown;
  }

  private static Object shown(Key key, Object value) {
    if (value instanceof Double number) {
      return key.measure(number);
    }
    if (value instanceof double[] list) {
      return Arrays.stream(list).mapToObj(key::measure).toList();
    }
    if (value instanceof double[][] rows) {
      List<List<Double>> table = new ArrayList<>();
      for (double[] row : rows) {
        table.add(Arrays.stream(row).boxed().toList());
      }
      return List.copyOf(table);
    }
    return value;
  }
}
