package underfoot.measure;

import java.util.ArrayList;
import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;

/** What the joist that bears the heavy things comes to, with the even load of the floor besides. */
final class ItemsOnJoists {
  private ItemsOnJoists() {}

  /**
   * How far it sags.
   *
   * @param total the deflection under the even load; null if it is not known
   */
  static List<Fact> deflection(Figures figures, Facts facts, String when, Fact total) {
    MeasuredFacts found = new MeasuredFacts();
    if (total == null || facts.find("joist deflection of the items") == null) {
      return found.list();
    }
    TracedFacts basis = new TracedFacts(figures, facts).use(total);
    double items = basis.fact("joist deflection of the items");
    double span = basis.fact("effective span");
    double all = total.number() + items;
    String how =
        "even load + heavy things: " + Texts.of(total.number(), "") + " + " + Texts.of(items, "mm");
    Fact sag = found.add("joist deflection with items " + when, all, "mm", how, basis);
    found.addAs(
        "joist ratio with items " + when,
        "",
        Long.toString((long) Math.floor(span / all)),
        span / all,
        how,
        basis);
    List<Fact> list = new ArrayList<>(found.list());
    if (sag != null) {
      list.addAll(
          BuildingLimit.share(figures, facts, when, sag, "joist deflection share with items"));
    }
    return list;
  }
}
