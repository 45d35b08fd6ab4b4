package underfoot.working;

import static underfoot.quantity.Dimension.LENGTH;
import static underfoot.working.Key.Trait.BARE;

import java.util.List;
import java.util.stream.Stream;

/** Keys that several workings share. */
final class CommonKeys {
  static final Key TILE_LENGTH = Key.of("length", LENGTH, "mm", 1, 5000, "length of a tile");
  static final Key TILE_WIDTH = Key.of("width", LENGTH, "mm", 1, 5000, "width of a tile");
  static final Key JOINT = Key.of("joint", LENGTH, "mm", 0, 100, "width of a joint");
  static final Key SCREED =
      Key.choice("screed", "kind of screed", List.of("cement", "calcium sulfate"));

  private CommonKeys() {}

  /** A grid of heights and the spacing of its columns and rows. */
  static Key[] grid(Key.Trait... traits) {
    Key.Trait[] bare = Stream.concat(Stream.of(BARE), Stream.of(traits)).toArray(Key.Trait[]::new);
    return new Key[] {
      Key.of("grid", LENGTH, "mm", -1e5, 1e5, "rows of heights, row 0 at y = 0", bare)
          .as(Key.Shape.GRID),
      Key.of("dx", LENGTH, "m", 0.001, 100, "spacing of the heights along a row", traits),
      Key.of("dy", LENGTH, "m", 0.001, 100, "spacing of the rows", traits)
    };
  }

  /** Keys before, between or after others. */
  static Key[] joined(Key[] first, Key... then) {
    return Stream.concat(Stream.of(first), Stream.of(then)).toArray(Key[]::new);
  }
}
