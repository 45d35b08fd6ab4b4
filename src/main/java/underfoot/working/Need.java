package underfoot.working;

/** Checks of the numbers given to the typed methods. */
final class Need {
  private Need() {}

  /** Refuses anything but a finite number above nought. */
  static double positive(String name, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be more than 0, not " + value);
    }
    return value;
  }

  /** Refuses anything but a finite number of nought or more. */
  static double notNegative(String name, double value) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be 0 or more, not " + value);
    }
    return value;
  }

  /** Refuses anything but a finite number. */
  static double finite(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be a number, not " + value);
    }
    return value;
  }
}
