package underfoot.measure;

import java.util.ArrayList;
import java.util.List;
import underfoot.knowledge.Fact;

/** Collects measured facts. */
public final class MeasuredFacts {
  private final List<Fact> found = new ArrayList<>();

  /**
   * Adds a fact about the room, unless its number could not be worked out.
   *
   * @param name what rules call it
   * @param number its value in the base unit
   * @param unit the unit it is shown in; the number is shown in it as it stands
   * @param how the formula with its numbers
   * @param basis what it rests on
   * @return the fact; null if there is none
   */
  public Fact add(String name, double number, String unit, String how, TracedFacts basis) {
    return add(name, "", number, unit, how, basis);
  }

  /** Adds a fact about one thing, unless its number could not be worked out. */
  public Fact add(
      String name, String about, double number, String unit, String how, TracedFacts basis) {
    return addAs(name, about, Texts.of(number, unit), number, how, basis);
  }

  /** Adds a fact whose text is not simply its number, unless that could not be worked out. */
  public Fact addAs(
      String name, String about, String text, double number, String how, TracedFacts basis) {
    if (!basis.complete() || !Double.isFinite(number)) {
      return null;
    }
    Fact fact = Fact.measured(name, about, text, number, how, basis.uses());
    found.add(fact);
    return fact;
  }

  /** All facts found, in order. */
  public List<Fact> list() {
    return found;
  }
}
