package underfoot.measure;

import java.util.ArrayList;
import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.scenario.Scenario;

/** A timber floor as it is: its joists, its deck, and notches and holes in the joists. */
final class StructureMeasure implements Measure {
  private static final String TIMBER = "timber";

  @Override
  public List<Fact> of(Scenario scenario, Figures figures, Facts facts) {
    MeasuredFacts found = new MeasuredFacts();
    cuts(figures, facts, found);
    found.list().addAll(CutsApart.of(figures, facts));
    together(figures, facts, found);
    Facts known = Facts.over(facts);
    if (known.text("base family").equals(TIMBER)) {
      found.list().addAll(DeadLoads.of(figures, known));
      known.addAll(found.list());
      found.list().addAll(ItemLoads.of(figures, known));
      known.addAll(found.list());
      JoistCheck check = new JoistCheck(figures, known, "before");
      found.list().addAll(check.joists());
      found.list().addAll(check.deck(true, List.of(), 0));
    }
    return found.list();
  }

  /** What several heavy items weigh together. */
  private static void together(Figures figures, Facts facts, MeasuredFacts found) {
    List<String> items = facts.abouts("heavy item");
    boolean counted = facts.find("base family") != null; // what is not listed is counted by then
    if (counted) {
      heaviest(items, figures, facts, found);
    }
    if (counted && items.size() > 1) {
      TracedFacts basis = new TracedFacts(figures, facts);
      double sum = 0;
      List<String> parts = new ArrayList<>();
      for (String item : items) {
        double mass = basis.fact("heavy item mass", item);
        sum += mass;
        parts.add(Texts.of(mass, "kg"));
      }
      found.add("heavy items together", sum, "kg", String.join(" + ", parts), basis);
    }
  }

  /** The heaviest of them: so that what asks for a heavy thing need not ask each one. */
  private static void heaviest(
      List<String> items, Figures figures, Facts facts, MeasuredFacts found) {
    String heaviest = "";
    double most = 0;
    for (String item : items) {
      double mass = facts.number("heavy item mass", item);
      if (mass > most) {
        heaviest = item;
        most = mass;
      }
    }
    if (most > 0) {
      TracedFacts basis = new TracedFacts(figures, facts);
      basis.fact("heavy item mass", heaviest);
      found.add("heaviest item", most, "kg", "the heaviest of what is listed", basis);
    }
  }

  private static void cuts(Figures figures, Facts facts, MeasuredFacts found) {
    for (String notch : facts.abouts("notch depth")) {
      share("notch depth share", "notch depth", "joist depth", notch, figures, facts, found);
    }
    for (String notch : facts.abouts("notch from support")) {
      share("notch place", "notch from support", "joist span", notch, figures, facts, found);
    }
    for (String hole : facts.abouts("hole diameter")) {
      share("hole size share", "hole diameter", "joist depth", hole, figures, facts, found);
    }
    for (String hole : facts.abouts("hole from support")) {
      share("hole place", "hole from support", "joist span", hole, figures, facts, found);
    }
  }

  private static void share(
      String name,
      String part,
      String whole,
      String about,
      Figures figures,
      Facts facts,
      MeasuredFacts found) {
    TracedFacts basis = new TracedFacts(figures, facts);
    double size = basis.fact(part, about);
    double of = basis.fact(whole);
    found.add(
        name,
        about,
        size / of * 100,
        "%",
        part + " / " + whole + ": " + Texts.of(size, "mm") + " / " + Texts.of(of, "mm"),
        basis);
  }
}
