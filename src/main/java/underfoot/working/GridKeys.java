package underfoot.working;

/** The keys of a grid of heights. */
final class GridKeys {
  private GridKeys() {}

  static Key grid() {
    return Key.of("grid", Dimension.LENGTH, "mm", -1e5, 1e5, "rows of heights, row 0 at y = 0")
        .as(Key.Shape.GRID)
        .takesBare();
  }

  static Key dx() {
    return Key.of("dx", Dimension.LENGTH, "m", 0.001, 100, "spacing of the heights along a row");
  }

  static Key dy() {
    return Key.of("dy", Dimension.LENGTH, "m", 0.001, 100, "spacing of the rows");
  }
}
