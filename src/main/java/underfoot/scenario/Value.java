package underfoot.scenario;

import java.time.LocalDate;
import java.util.List;
import underfoot.quantity.Quantity;

/** The value of a known fact. */
public sealed interface Value {
  /** The value as it is printed and compared: the choice, yes or no, the quantity as written. */
  String text();

  /** The value as a number, quantities in their base unit; NaN if it is no number. */
  default double number() {
    return Double.NaN;
  }

  /**
   * A name or other free text.
   *
   * @param text the text
   */
  record Free(String text) implements Value {}

  /**
   * One of a fact's choices.
   *
   * @param text the choice as the facts file writes it
   */
  record Choice(String text) implements Value {}

  /**
   * Several of a fact's choices, in the order given.
   *
   * @param chosen the choices as the facts file writes them
   */
  record Choices(List<String> chosen) implements Value {
    @Override
    public String text() {
      return String.join(", ", chosen);
    }
  }

  /**
   * Yes or no.
   *
   * @param yes true for yes
   */
  record YesNo(boolean yes) implements Value {
    @Override
    public String text() {
      return yes ? "yes" : "no";
    }
  }

  /**
   * A quantity.
   *
   * @param quantity the quantity, its value in the base unit
   */
  record Amount(Quantity quantity) implements Value {
    @Override
    public String text() {
      return quantity.text();
    }

    @Override
    public double number() {
      return quantity.value();
    }
  }

  /**
   * A whole number: a count, an index or a year.
   *
   * @param whole the number
   */
  record Whole(int whole) implements Value {
    @Override
    public String text() {
      return Integer.toString(whole);
    }

    @Override
    public double number() {
      return whole;
    }
  }

  /**
   * A day of the calendar.
   *
   * @param date the day
   */
  record Day(LocalDate date) implements Value {
    @Override
    public String text() {
      return date.toString();
    }
  }

  /**
   * A rectangle along the room's own directions.
   *
   * @param from the corner nearest the origin, mm
   * @param to the corner opposite, mm
   */
  record Box(Point from, Point to) implements Value {
    /** Two corners as they were given, in whichever order. */
    public static Box of(Point one, Point other) {
      return new Box(
          new Point(Math.min(one.x(), other.x()), Math.min(one.y(), other.y())),
          new Point(Math.max(one.x(), other.x()), Math.max(one.y(), other.y())));
    }

    @Override
    public String text() {
      return Corners.of(corners());
    }

    /** Both corners. */
    public List<Point> corners() {
      return List.of(from, to);
    }
  }

  /**
   * That a list, an outline or a set of readings is given, and how many entries it has.
   *
   * @param count how many
   * @param text how many, in words, such as {@code 4 corners}
   */
  record Many(int count, String text) implements Value {
    @Override
    public double number() {
      return count;
    }
  }
}
