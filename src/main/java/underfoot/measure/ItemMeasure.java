package underfoot.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.quantity.Words;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Point;
import underfoot.scenario.Scenario;
import underfoot.scenario.StatedFact;
import underfoot.scenario.Value;

/** What stands on the floor: which kind of thing each is, what its feet press, where it stands. */
final class ItemMeasure implements Measure {
  private static final String ITEM = "heavy item";
  private static final String KIND = "heavy item kind";
  private static final String MASS = "heavy item mass";
  private static final String FEET = "heavy item feet";

  @Override
  public List<Fact> of(Scenario scenario, Figures figures, Facts facts) {
    MeasuredFacts found = new MeasuredFacts();
    for (String item : facts.abouts(ITEM)) {
      kind(scenario, item, figures, facts, found);
      foot(item, figures, facts, found);
      place(scenario, item, figures, facts, found);
    }
    return found.list();
  }

  /** The kind that is stated, or else the one that the name tells. */
  private static void kind(
      Scenario scenario, String item, Figures figures, Facts facts, MeasuredFacts found) {
    TracedFacts basis = new TracedFacts(figures, facts);
    Fact name = facts.find(ITEM, item);
    Fact stated = facts.find(KIND, item);
    String kind = stated == null ? named(scenario, item) : stated.text();
    if (kind.isEmpty()) {
      return;
    }
    basis.use(stated == null ? name : stated);
    if (stated == null) {
      found.list().add(words(KIND, item, kind, "as it is called", basis));
    }
    found.list().add(words("kind of a listed item", item, kind, "as it is listed", basis));
  }

  private static Fact words(String name, String about, String text, String how, TracedFacts basis) {
    return Fact.measured(name, about, text, Double.NaN, how, basis.uses());
  }

  /** The kind whose longest name the item's own name holds; empty if it holds none. */
  private static String named(Scenario scenario, String item) {
    FactDefinition fact = scenario.book().find("room.heavy items[].kind").orElse(null);
    if (fact == null) {
      return "";
    }
    Map<String, String> names = new LinkedHashMap<>();
    fact.of().forEach(kind -> names.put(kind, kind));
    names.putAll(fact.also());
    String padded = ' ' + Words.alike(item) + ' ';
    String longest = "";
    for (String name : names.keySet()) {
      if (padded.contains(' ' + Words.alike(name) + ' ') && name.length() > longest.length()) {
        longest = name;
      }
    }
    return names.getOrDefault(longest, "");
  }

  /** What one of its feet presses with. */
  private static void foot(String item, Figures figures, Facts facts, MeasuredFacts found) {
    TracedFacts basis = new TracedFacts(figures, facts);
    Fact feet = facts.find(FEET, item);
    double mass = basis.fact(MASS, item);
    double number = feet == null ? 0 : ItemLoads.feet(basis, feet);
    if (number > 0) {
      double gravity = basis.figure("standard-gravity");
      found.add(
          "foot load",
          item,
          mass * gravity / 1000 / number,
          "kN",
          "mass × g / feet: "
              + Texts.of(mass, "kg")
              + " × "
              + Texts.of(gravity, "")
              + " / 1000 / "
              + Texts.of(number, ""),
          basis);
    }
  }

  /** How far it reaches along and across the joists, and where; as far as that is told. */
  private static void place(
      Scenario scenario, String item, Figures figures, Facts facts, MeasuredFacts found) {
    StatedFact at = scenario.find("room.heavy items[].at", item).orElse(null);
    if (at == null || !at.known() || !(at.value() instanceof Value.Box box)) {
      return;
    }
    TracedFacts basis = new TracedFacts(figures, facts);
    Fact stated = facts.find("heavy item place", item);
    if (stated != null) {
      basis.use(stated);
    }
    Point from = box.from();
    Point to = box.to();
    String how = "by its corners";
    found.add("item along x", item, to.x() - from.x(), "mm", how, basis);
    found.add("item along y", item, to.y() - from.y(), "mm", how, basis);
    boolean alongX = basis.wordIfHeld("joist direction").equals("along x");
    if (!alongX && !basis.wordIfHeld("joist direction").equals("along y")) {
      return;
    }
    double across = alongX ? from.y() : from.x();
    found.addAs("item across from", item, Texts.mm(across), across, how, basis);
    double start = alongX ? least(scenario, true) : least(scenario, false);
    double run = (alongX ? most(scenario, true) : most(scenario, false)) - start;
    double clear = basis.fact("joist span");
    double span = clear + basis.fact("joist bearing");
    if (basis.complete() && run > 0 && run <= span && run >= 2 * clear - span) {
      double middle = (alongX ? from.x() : from.y()) - start + (span - run) / 2;
      found.addAs(
          "item from the support",
          item,
          Texts.mm(middle),
          middle,
          "the joists span the room from wall to wall",
          basis);
    }
  }

  private static double least(Scenario scenario, boolean x) {
    return along(scenario, x).stream().mapToDouble(Double::doubleValue).min().orElse(Double.NaN);
  }

  private static double most(Scenario scenario, boolean x) {
    return along(scenario, x).stream().mapToDouble(Double::doubleValue).max().orElse(Double.NaN);
  }

  private static List<Double> along(Scenario scenario, boolean x) {
    List<Double> all = new ArrayList<>();
    scenario.outline().forEach(corner -> all.add(x ? corner.x() : corner.y()));
    return all;
  }
}
