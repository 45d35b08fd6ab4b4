package underfoot.report.html;

import java.util.Map;

/**
 * How materials are drawn: a colour each, and a hatch each that tells them apart in grey print. The
 * colours here are those of light paper; the style sheet has the same by class for dark screens.
 */
enum MaterialStyle {
  TILE("tile", "#e9e4d8"),
  BED("bed", "#cfcabd"),
  BOARD("board", "#b9c6cc"),
  LEVELLER("leveller", "#c9d3b4"),
  MEMBRANE("membrane", "#e4b878"),
  SEALING("sealing", "#8fb3c9"),
  HEATING("heating", "#e3a08c"),
  PRIMER("primer", "#9a9184"),
  TIMBER("deck", "#dcb98a"),
  SOLID("solid", "#c2c0bb");

  /** The colour of lines and writing on paper. */
  static final String INK = "#1f2421";

  /** The colour of lesser lines. */
  static final String FAINT = "#5f665f";

  /** Paper. */
  static final String PAPER = "#ffffff";

  /** What is to be noticed: start lines, high points. */
  static final String MARK = "#a3260f";

  /** Water, levels, the pour. */
  static final String POUR = "#1d5f7a";

  private static final Map<String, MaterialStyle> BY_FAMILY =
      Map.of(
          "tile", TILE,
          "bed", BED,
          "board", BOARD,
          "deck", TIMBER,
          "leveller", LEVELLER,
          "membrane", MEMBRANE,
          "sealing", SEALING,
          "heating", HEATING,
          "primer", PRIMER);

  private final String id;
  private final String colour;

  MaterialStyle(String id, String colour) {
    this.id = id;
    this.colour = colour;
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

  /** The hatch: what repeats, and how far it goes before it does. */
  void defineHatch(Svg svg, String drawing) {
    switch (this) {
      case TILE -> svg.hatch(hatch(drawing), 9, 9, "M-1 1L1 -1M0 9L9 0M8 10L10 8", "");
      case BED -> svg.hatch(hatch(drawing), 7, 7, "", "1.5,1.5 5,4.5");
      case BOARD ->
          svg.hatch(
              hatch(drawing),
              10,
              10,
              "M0 10L10 0M0 0L10 10M-1 1L1 -1M9 11L11 9M-1 9L1 11M9 -1L11 1",
              "");
      case LEVELLER -> svg.hatch(hatch(drawing), 12, 6, "M1 1.5H6M7 4.5H12", "");
      case MEMBRANE -> svg.hatch(hatch(drawing), 8, 6, "M0 5L4 1L8 5", "");
      case SEALING -> svg.hatch(hatch(drawing), 6, 4, "M0 2H6", "");
      case HEATING -> svg.hatch(hatch(drawing), 14, 8, "M4 4a2 2 0 1 0 4 0a2 2 0 1 0 -4 0", "");
      case PRIMER -> svg.hatch(hatch(drawing), 6, 6, "M0 3H6", "");
      case TIMBER -> svg.hatch(hatch(drawing), 40, 9, "M0 2C10 0 20 5 40 2M0 7C14 9 26 5 40 7", "");
      case SOLID ->
          svg.hatch(
              hatch(drawing), 22, 18, "M3 4l4 -2l1 4zM14 12l4 -1l-1 4z", "11,4 5,13 19,5 12,16");
    }
  }
}
