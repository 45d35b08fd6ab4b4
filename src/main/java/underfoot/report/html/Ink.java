package underfoot.report.html;

/**
 * The colours of lines and writing: on light paper, and by class where a style sheet has others.
 */
enum Ink {
  /** Lines and writing. */
  INK("#1f2421", ""),
  /** Lesser lines. */
  FAINT("#5f665f", "-faint"),
  /** Paper. */
  PAPER("#ffffff", "-paper"),
  /** What is to be noticed: start lines, high points. */
  MARK("#a3260f", "-mark"),
  /** Water, levels, the pour. */
  POUR("#1d5f7a", "-pour"),
  /** Lines of a scale. */
  GRID("#c9c6bd", "-grid"),
  /** Joints of the deck beneath. */
  DECK("#8a5a1c", "-deck");

  private final String colour;
  private final String style;

  Ink(String colour, String style) {
    this.colour = colour;
    this.style = style;
  }

  /** The colour on paper. */
  String colour() {
    return colour;
  }

  /** The class of what is drawn in it: {@code s} for strokes, {@code f} fills, {@code t} texts. */
  String styled(String kind) {
    return kind + style;
  }
}
