package underfoot.working;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The keys given to one run of a working, read and checked. */
public final class Inputs {
  private final Map<String, Key> keys;
  private final Map<String, Object> values;

  private Inputs(Map<String, Key> keys, Map<String, Object> values) {
    this.keys = keys;
    this.values = values;
  }

  /**
   * Reads and checks what was given.
   *
   * @param working the working asked for
   * @param given key to text, as typed, or to a {@link Measure}
   * @throws Refused on the first fault: unknown key, missing key, wrong unit, out of range
   */
  static Inputs read(Working working, Map<String, ?> given) {
    Map<String, Key> keys = new LinkedHashMap<>();
    working.keys().forEach(key -> keys.put(key.name(), key));
    for (String name : given.keySet()) {
      if (!keys.containsKey(name)) {
        throw unknown(working, keys, name);
      }
    }
    Map<String, Object> values = new LinkedHashMap<>();
    for (Key key : keys.values()) {
      Object value = given.get(key.name());
      if (value instanceof Measure measure) {
        values.put(key.name(), measured(key, measure));
      } else if (value != null) {
        values.put(key.name(), value(key, value.toString()));
      }
    }
    settleAlternatives(working, keys, given);
    for (Key key : keys.values()) {
      if (key.needed() && !given.containsKey(key.name())) {
        throw key.refuse("is missing");
      }
    }
    return new Inputs(keys, values);
  }

  private static Refused unknown(Working working, Map<String, Key> keys, String name) {
    String shown = Show.quote(name);
    Optional<String> nearest = Nearest.to(name, keys.keySet());
    if (nearest.isPresent()) {
      Key key = keys.get(nearest.get());
      return new Refused(
          shown
              + " is not a key of "
              + working.name()
              + "; did you mean "
              + key.name()
              + ", "
              + key.range()
              + "?");
    }
    return new Refused(
        shown
            + " is not a key of "
            + working.name()
            + "; its keys are "
            + keys.values().stream()
                .map(key -> key.name() + (key.unit().isEmpty() ? "" : " (" + key.unit() + ")"))
                .collect(Collectors.joining(", ")));
  }

  private static void settleAlternatives(
      Working working, Map<String, Key> keys, Map<String, ?> given) {
    List<Alternative> ways = working.alternatives();
    if (ways.isEmpty()) {
      return;
    }
    List<Alternative> begun = ways.stream().filter(way -> given.containsKey(way.mark())).toList();
    if (begun.isEmpty()) {
      Key first = keys.get(ways.get(0).mark());
      String others =
          ways.stream().skip(1).map(Alternative::words).collect(Collectors.joining(", or "));
      throw first.refuse("is missing (or give " + others + ")");
    }
    Alternative way = begun.get(0);
    for (Alternative other : ways) {
      for (String name : other.needed()) {
        if (given.containsKey(name) && !way.takes(name)) {
          throw keys.get(name).refuse("is not taken together with " + way.mark());
        }
      }
    }
    for (String name : way.needed()) {
      if (!given.containsKey(name)) {
        throw keys.get(name).refuse("is missing");
      }
    }
  }

  private static Object value(Key key, String text) {
    return switch (key.shape()) {
      case CHOICE -> word(key, text);
      case ONE -> one(key, text);
      case LIST -> {
        String[] cells = cells(key, text, ",");
        double[] list = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
          list[i] = one(key, cells[i]);
        }
        yield list;
      }
      case GRID -> grid(key, text);
      case POINTS -> points(key, text);
      case HISTORY -> history(key, text);
    };
  }

  private static String word(Key key, String text) {
    String typed = text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
    return key.choices().stream()
        .filter(choice -> choice.toLowerCase(Locale.ROOT).equals(typed))
        .findFirst()
        .orElseThrow(() -> key.refuse(Show.quote(text) + " is not one of its words"));
  }

  /** A number that was not typed, and need not be read. */
  private static double measured(Key key, Measure measure) {
    Dimension dimension = key.dimension().orElseThrow(() -> key.refuse("is not a number"));
    String unit = measure.unit().isEmpty() && key.bare() ? key.unit() : measure.unit();
    if (key.shape() != Key.Shape.ONE || !dimension.takes(unit)) {
      throw key.refuse(Show.quote(measure.toString()) + " is not in a unit known here");
    }
    double value = measure.value() * dimension.factor(unit);
    return within(
        key, measure, value, dimension, key.least(), key.most(), key.unit(), key.aboveLeast());
  }

  private static double one(Key key, String text) {
    return quantity(
        key,
        text,
        key.dimension().orElseThrow(),
        key.bare() ? Optional.of(key.unit()) : Optional.empty(),
        key.least(),
        key.most(),
        key.unit(),
        key.aboveLeast());
  }

  private static double quantity(
      Key key,
      String text,
      Dimension dimension,
      Optional<String> bareUnit,
      double least,
      double most,
      String unit,
      boolean open) {
    double value;
    try {
      value = dimension.read(text, bareUnit);
    } catch (Refused refused) {
      throw key.refuse(refused.getMessage());
    }
    return within(key, text, value, dimension, least, most, unit, open);
  }

  private static double within(
      Key key,
      Object given,
      double value,
      Dimension dimension,
      double least,
      double most,
      String unit,
      boolean open) {
    double factor = dimension.factor(unit);
    boolean low = open ? value <= least * factor : value < least * factor;
    if (low || value > most * factor) {
      throw key.refuse(Show.quote(given.toString()) + " is out of range");
    }
    if (dimension == Dimension.DAYS && value != Math.rint(value)) {
      throw key.refuse(Show.quote(given.toString()) + " is not a whole number of days");
    }
    return value;
  }

  private static String[] cells(Key key, String text, String separator) {
    if (text.isBlank()) {
      throw key.refuse("has no value");
    }
    String[] cells = text.split(separator, Key.MOST_CELLS + 2);
    if (cells.length > Key.MOST_CELLS) {
      throw key.refuse("has more than " + Key.MOST_CELLS + " values");
    }
    for (int i = 0; i < cells.length; i++) {
      if (cells[i].isBlank()) {
        throw key.refuse("value " + (i + 1) + " of " + cells.length + " is empty");
      }
    }
    return cells;
  }

  private static double[][] grid(Key key, String text) {
    String[] rows = cells(key, text, ";");
    double[][] grid = new double[rows.length][];
    int count = 0;
    for (int i = 0; i < rows.length; i++) {
      String[] row = cells(key, rows[i], ",");
      count += row.length;
      if (count > Key.MOST_CELLS) {
        throw key.refuse("has more than " + Key.MOST_CELLS + " values");
      }
      if (i > 0 && row.length != grid[0].length) {
        throw key.refuse(
            "row " + (i + 1) + " has " + row.length + " heights, row 1 has " + grid[0].length);
      }
      grid[i] = new double[row.length];
      for (int j = 0; j < row.length; j++) {
        grid[i][j] = one(key, row[j]);
      }
    }
    return grid;
  }

  private static double[][] points(Key key, String text) {
    String[] rows = cells(key, text, ";");
    double[][] points = new double[rows.length][];
    for (int i = 0; i < rows.length; i++) {
      String[] parts = cells(key, rows[i], ",");
      if (parts.length != 3) {
        throw key.refuse("point " + (i + 1) + " has " + parts.length + " numbers, not 3");
      }
      points[i] =
          new double[] {
            place(key, parts[0]), place(key, parts[1]), one(key, parts[2]),
          };
    }
    return points;
  }

  private static double place(Key key, String text) {
    return quantity(key, text, Dimension.LENGTH, Optional.of("m"), -10_000, 10_000, "m", false)
        / 1000;
  }

  private static double[][] history(Key key, String text) {
    String[] spells = cells(key, text, ",");
    double[][] history = new double[spells.length][];
    for (int i = 0; i < spells.length; i++) {
      String[] parts = spells[i].split("@", -1);
      if (parts.length != 2) {
        throw key.refuse(Show.quote(spells[i]) + " is not hours@temperature");
      }
      history[i] =
          new double[] {
            quantity(key, parts[0], Dimension.TIME, Optional.of("h"), 0, 100_000, "h", true),
            one(key, parts[1])
          };
    }
    return history;
  }

  /** Whether a key was given. */
  public boolean has(String name) {
    return values.containsKey(name);
  }

  /** A value in the unit its dimension is held in (mm for lengths). */
  double number(String name) {
    return (Double) values.get(name);
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
    return ((double[]) values.get(name)).clone();
  }

  /** The rows of a grid, points (x m, y m, z mm) or history (h, C). */
  double[][] rows(String name) {
    double[][] rows = (double[][]) values.get(name);
    double[][] copy = new double[rows.length][];
    for (int i = 0; i < rows.length; i++) {
      copy[i] = rows[i].clone();
    }
    return copy;
  }

  /** A refusal of one key for a reason that only shows beside the others. */
  Refused refuse(String name, String reason) {
    return keys.get(name).refuse(reason);
  }

  /** What was given, for the record: a measure, a word, or lists of numbers. */
  Map<String, Object> shown() {
    Map<String, Object> shown = new LinkedHashMap<>();
    values.forEach(
        (name, value) -> {
          Key key = keys.get(name);
          if (value instanceof Double number) {
            double factor = key.dimension().orElseThrow().factor(key.unit());
            shown.put(name, new Measure(number / factor, key.unit()));
          } else if (value instanceof double[] list) {
            double factor = key.dimension().orElseThrow().factor(key.unit());
            List<Measure> measures = new ArrayList<>();
            for (double number : list) {
              measures.add(new Measure(number / factor, key.unit()));
            }
            shown.put(name, List.copyOf(measures));
          } else if (value instanceof double[][] rows) {
            List<List<Double>> table = new ArrayList<>();
            for (double[] row : rows) {
              List<Double> cells = new ArrayList<>();
              for (double cell : row) {
                cells.add(cell);
              }
              table.add(List.copyOf(cells));
            }
            shown.put(name, List.copyOf(table));
          } else {
            shown.put(name, value);
          }
        });
    return shown;
  }
}
