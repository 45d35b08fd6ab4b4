package underfoot.report.html;

import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * How materials are drawn: a colour each, and a hatch each that tells them apart in grey print. The
 * colours here are those of light paper; the style sheet has the same by class for dark screens.
 */
enum MaterialStyle {
  TILE("tile", "#e9e4d8", 9, 9, "M-1 1L1 -1M0 9L9 0M8 10L10 8", ""),
  BED("bed", "#cfcabd", 7, 7, "", "1.5,1.5 5,4.5"),
  BOARD(
      "board",
      "#b9c6cc",
      10,
      10,
      "M0 10L10 0M0 0L10 10M-1 1L1 -1M9 11L11 9M-1 9L1 11M9 -1L11 1",
      ""),
  LEVELLER("leveller", "#c9d3b4", 12, 6, "M1 1.5H6M7 4.5H12", ""),
  MEMBRANE("membrane", "#e4b878", 8, 6, "M0 5L4 1L8 5", ""),
  SEALING("sealing", "#8fb3c9", 6, 4, "M0 2H6", ""),
  HEATING("heating", "#e3a08c", 14, 8, "M4 4a2 2 0 1 0 4 0a2 2 0 1 0 -4 0", ""),
  PRIMER("primer", "#9a9184", 6, 6, "M0 3H6", ""),
  TIMBER("deck", "#dcb98a", 40, 9, "M0 2C10 0 20 5 40 2M0 7C14 9 26 5 40 7", ""),
  SOLID("solid", "#c2c0bb", 22, 18, "M3 4l4 -2l1 4zM14 12l4 -1l-1 4z", "11,4 5,13 19,5 12,16");

  private static final Map<String, MaterialStyle> BY_FAMILY =
      Arrays.stream(values())
          .filter(one -> one != SOLID)
          .collect(Collectors.toMap(one -> one.id, Function.identity()));

  private final String id;
  private final String colour;
  private final double width;
  private final double height;
  private final String lines;
  private final String dots;

  MaterialStyle(String id, String colour, double width, double height, String lines, String dots) {
    this.id = id;
    this.colour = colour;
    this.width = width;
    this.height = height;
    this.lines = lines;
    this.dots = dots;
  }

  static MaterialStyle of(String family) {
    return BY_FAMILY.getOrDefault(family, SOLID);
  }

  /** The colour on paper. */
  String colour() {
    return colour;
  }

  /** The class of the style sheet. */
  String styled() {
    return "m-" + id;
  }

  /** The id of its hatch in a drawing. */
  String hatch(String drawing) {
    return drawing + "-h-" + id;
  }

  /** Defines its hatch in a drawing. */
  void defineHatch(Svg svg) {
    svg.hatch(hatch(svg.id()), width, height, lines, dots);
  }
}
