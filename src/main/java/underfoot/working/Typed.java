package underfoot.working;

import underfoot.quantity.Dimension;
import underfoot.quantity.NotAQuantity;
import underfoot.quantity.Quantity;
import underfoot.quantity.Words;

/** Reads what was typed for a key: a word, a number in the base unit, or rows of them. */
final class Typed {
  private static final double FARTHEST_MM = 1e7;
  private static final double LONGEST_H = 1e5;

  private final Key key;

  private Typed(Key key) {
    this.key = key;
  }

  /**
   * What a text says.
   *
   * @return a String for a choice, a Double, a double[] for a list, a double[][] for rows: heights
   *     in mm, points x and y in m and z in mm, or hours and C
   * @throws Refused where it is none of the key's shape
   */
  static Object read(Key key, String text) {
    Typed typed = new Typed(key);
    return switch (key.shape()) {
      case CHOICE -> typed.word(text);
      case ONE -> typed.one(text);
      case LIST -> typed.row(text, ",");
      case GRID -> typed.grid(text);
      case POINTS -> typed.points(text);
      case HISTORY -> typed.history(text);
    };
  }

  private String word(String text) {
    return key.choices().stream()
        .filter(choice -> Words.alike(choice).equals(Words.alike(text)))
        .findFirst()
        .orElseThrow(() -> key.refuse(Words.quote(text) + " is not one of its words"));
  }

  private double one(String text) {
    return quantity(text, key.dimension(), key.bare() ? key.unit() : null);
  }

  private double quantity(String text, Dimension dimension, String bareUnit) {
    try {
      return (bareUnit == null
              ? Quantity.parse(text, dimension)
              : Quantity.parse(text, dimension, bareUnit))
          .value();
    } catch (NotAQuantity e) {
      String meant = e.suggestion().isEmpty() ? "" : "; write " + e.suggestion();
      throw key.refuse(e.getMessage() + meant);
    }
  }

  private String[] cells(String text, String separator) {
    String[] cells = text.split(separator, Key.MOST_CELLS + 2);
    most(cells.length);
    for (int i = 0; i < cells.length; i++) {
      if (cells[i].isBlank()) {
        throw key.refuse("value " + (i + 1) + " of " + cells.length + " is empty");
      }
    }
    return cells;
  }

  private void most(int count) {
    if (count > Key.MOST_CELLS) {
      throw key.refuse("has more than " + Key.MOST_CELLS + " values");
    }
  }

  private double[] row(String text, String separator) {
    String[] cells = cells(text, separator);
    double[] row = new double[cells.length];
    for (int i = 0; i < cells.length; i++) {
      row[i] = one(cells[i]);
    }
    return row;
  }

  private double[][] grid(String text) {
    String[] rows = cells(text, ";");
    double[][] grid = new double[rows.length][];
    int count = 0;
    for (int i = 0; i < rows.length; i++) {
      grid[i] = row(rows[i], ",");
      count += grid[i].length;
      most(count);
      if (grid[i].length != grid[0].length) {
        throw key.refuse(
            "row " + (i + 1) + " has " + grid[i].length + " heights, row 1 has " + grid[0].length);
      }
    }
    return grid;
  }

  private double[][] points(String text) {
    String[] rows = cells(text, ";");
    double[][] points = new double[rows.length][];
    for (int i = 0; i < rows.length; i++) {
      String[] parts = cells(rows[i], ",");
      if (parts.length != 3) {
        throw key.refuse("point " + (i + 1) + " has " + parts.length + " numbers, not 3");
      }
      points[i] = new double[] {place(parts[0]), place(parts[1]), one(parts[2])};
    }
    return points;
  }

  private double place(String text) {
    double place = quantity(text, Dimension.LENGTH, "m");
    if (Math.abs(place) > FARTHEST_MM) {
      throw key.refuse(Words.quote(text) + " is out of range");
    }
    return place / 1000;
  }

  private double[][] history(String text) {
    String[] spells = cells(text, ",");
    double[][] history = new double[spells.length][];
    for (int i = 0; i < spells.length; i++) {
      String[] parts = spells[i].split("@", -1);
      if (parts.length != 2) {
        throw key.refuse(Words.quote(spells[i]) + " is not hours@temperature");
      }
      double hours = quantity(parts[0], Dimension.TIME, "h");
      if (!(hours > 0 && hours <= LONGEST_H)) {
        throw key.refuse(Words.quote(parts[0]) + " is out of range");
      }
      history[i] = new double[] {hours, one(parts[1])};
    }
    return history;
  }
}
