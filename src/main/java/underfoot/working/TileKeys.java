package underfoot.working;

/** The keys of a tile and its joint. */
final class TileKeys {
  private TileKeys() {}

  static Key length() {
    return Key.of("length", Dimension.LENGTH, "mm", 1, 5000, "length of a tile");
  }

  static Key width() {
    return Key.of("width", Dimension.LENGTH, "mm", 1, 5000, "width of a tile");
  }

  static Key joint() {
    return Key.of("joint", Dimension.LENGTH, "mm", 0, 100, "width of a joint");
  }
}
