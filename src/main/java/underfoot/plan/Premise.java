package underfoot.plan;

import java.util.List;
import underfoot.knowledge.Figure;
import underfoot.knowledge.From;

/** A fact that a decision rests on, or that a measured fact was worked out from. */
public final class Premise {
  /** The value of what the scenario does not say. */
  static final String UNKNOWN = "unknown";

  private final String fact;
  private final String value;
  private final From from;
  private final int line;
  private final String how;
  private final List<Premise> uses;
  private final List<Figure> figures;
  private final Justification because;

  Premise(
      String fact,
      String value,
      From from,
      int line,
      String how,
      List<Premise> uses,
      List<Figure> figures,
      Justification because) {
    this.fact = fact;
    this.value = value;
    this.from = from;
    this.line = line;
    this.how = how;
    this.uses = List.copyOf(uses);
    this.figures = List.copyOf(figures);
    this.because = because;
  }

  /** Its scenario key, {@code room.doors[kitchen door].width} for one of several; else its name. */
  public String fact() {
    return fact;
  }

  /** The value in words; {@code unknown} if the scenario does not say. */
  public String value() {
    return value;
  }

  /** Whether it is that the scenario does not say, and nobody took anything for it. */
  public boolean isUnknown() {
    return value.equals(UNKNOWN) && because == null;
  }

  /** Where it comes from. */
  public From from() {
    return from;
  }

  /** The line of the scenario file; 0 if the file does not state it. */
  public int line() {
    return line;
  }

  /** For a measured fact the formula with its numbers, otherwise empty. */
  public String how() {
    return how;
  }

  /** What a measured fact was worked out from. */
  public List<Premise> uses() {
    return uses;
  }

  /** The figures a measured fact was worked out with. */
  public List<Figure> figures() {
    return figures;
  }

  /** The decision that assumed or concluded it; null for stated and measured facts. */
  public Justification because() {
    return because;
  }

  @Override
  public String toString() {
    return fact + ": " + value;
  }
}
