package underfoot.measure;

import java.util.ArrayList;
import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Figures;

/**
 * What one measured fact rests on. It reads facts and figures and keeps what it read, so that the
 * chain from the result back to the scenario can be shown.
 */
public final class TracedFacts {
  private final Figures figures;
  private final Facts facts;
  private final List<Object> uses = new ArrayList<>();
  private boolean complete = true;

  /**
   * Begins with nothing read.
   *
   * @param figures where figures are looked up
   * @param facts where facts are looked up
   */
  public TracedFacts(Figures figures, Facts facts) {
    this.figures = figures;
    this.facts = facts;
  }

  /** The number of a fact about the room; NaN, and no longer complete, if it is not held. */
  public double fact(String name) {
    return fact(name, "");
  }

  /** The number of a fact about one thing; NaN, and no longer complete, if it is not held. */
  public double fact(String name, String about) {
    Fact fact = facts.find(name, about);
    if (fact == null || !fact.hasNumber()) {
      complete = false;
      return Double.NaN;
    }
    use(fact);
    return fact.number();
  }

  /** The number of a fact that may be missing; NaN if it is. */
  public double factIfHeld(String name, String about) {
    Fact fact = facts.find(name, about);
    if (fact == null || !fact.hasNumber()) {
      return Double.NaN;
    }
    use(fact);
    return fact.number();
  }

  /** The words of a fact about the room; empty, and no longer complete, if it is not held. */
  public String word(String name) {
    Fact fact = facts.find(name);
    if (fact == null) {
      complete = false;
      return "";
    }
    use(fact);
    return fact.text();
  }

  /** The words of a fact that may be missing; empty if it is. */
  public String wordIfHeld(String name) {
    Fact fact = facts.find(name);
    if (fact == null) {
      return "";
    }
    use(fact);
    return fact.text();
  }

  /** A figure's number in the base unit of its dimension. */
  public double figure(String name) {
    Figure figure = figures.get(name);
    use(figure);
    return figure.number();
  }

  /**
   * The figure for a particular case, or failing that the general one: {@code
   * imposed-load-light-commercial}, or else {@code imposed-load}.
   */
  public double figureFor(String general, String which) {
    String particular = general + "-" + inFigureName(which);
    return figure(!which.isEmpty() && figures.has(particular) ? particular : general);
  }

  /** Whether there is a figure of that name. */
  public boolean hasFigure(String name) {
    return figures.has(name);
  }

  /** The words of a fact as they stand within the names of figures. */
  public static String inFigureName(String words) {
    return words.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
  }

  /** Adds something that was read elsewhere. */
  public TracedFacts use(Object read) {
    if (uses.stream().noneMatch(held -> held == read)) {
      uses.add(read);
    }
    return this;
  }

  /** Whether all facts asked for were held. */
  public boolean complete() {
    return complete;
  }

  /** All that was read, in order. */
  public List<Object> uses() {
    return uses;
  }
}
