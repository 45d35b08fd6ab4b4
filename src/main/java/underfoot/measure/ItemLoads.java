package underfoot.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.working.PatchLoad;
import underfoot.working.PatchLoad.Patch;

/**
 * What the heavy things bring on the joist that they load the most, besides the even load of the
 * floor. Nobody stands where a thing stands, so the even load of people beneath it is taken off.
 */
final class ItemLoads {
  private static final String MASS = "heavy item mass";

  private final Figures figures;
  private final Facts facts;
  private final double centres;
  private final double span;
  private final List<Item> items = new ArrayList<>();
  private final List<String> terms = new ArrayList<>();
  private final TracedFacts basis;

  /**
   * A thing as the joists feel it.
   *
   * @param loadN what it brings beyond the even load it displaces, N
   * @param along how far it reaches along the joists, mm
   * @param across how far it reaches across them, mm
   * @param feet on how many feet it stands; 0 where it stands on a spread base
   * @param from where it begins across the joists; NaN where that is not known
   * @param support where it begins along the span; NaN where that is not known
   */
  private record Item(
      double loadN, double along, double across, double feet, double from, double support) {

    /** The share that a joist at a place across the floor takes. */
    double shareOf(double joist, double centres) {
      return share(from - joist, centres);
    }

    /** The share of a joist in the worst place beneath it. */
    double worst(double centres) {
      return feet > 0 ? share(0, centres) : share(-across / 2, centres);
    }

    private double share(double begin, double centres) {
      double end = begin + across;
      if (feet <= 0) {
        return PatchLoad.share(begin, end, centres);
      }
      double line = Math.ceil(feet / 2) / feet; // of three feet two may stand on one joist
      double one = PatchLoad.share(begin, begin, centres);
      double other = PatchLoad.share(end, end, centres);
      return line * Math.max(one, other) + (1 - line) * Math.min(one, other);
    }
  }

  private ItemLoads(Figures figures, Facts facts) {
    this.figures = figures;
    this.facts = facts;
    basis = new TracedFacts(figures, facts);
    centres = basis.fact("joist centres");
    span = basis.fact("effective span");
  }

  /** On how many feet a thing stands; 0 where its base is spread. */
  static double feet(TracedFacts basis, Fact feet) {
    basis.use(feet);
    return feet.text().equals("spread") ? 0 : basis.figureFor("item-feet", feet.text());
  }

  /** Works it out; nothing where no heavy thing is known of, or nothing of the joists. */
  static List<Fact> of(Figures figures, Facts facts) {
    ItemLoads loads = new ItemLoads(figures, facts);
    for (String about : facts.abouts(MASS)) {
      loads.take(about);
    }
    MeasuredFacts found = new MeasuredFacts();
    if (!loads.items.isEmpty() && loads.basis.complete() && loads.span > 0) {
      loads.workOut(found);
    }
    return found.list();
  }

  private void take(String about) {
    double mass = basis.fact(MASS, about);
    double imposed = basis.fact("imposed load");
    double x = size(about, "item along x", "assumed item length");
    double y = size(about, "item along y", "assumed item width");
    Fact feet = facts.find("heavy item feet", about);
    double number = feet == null ? figureOf("item-feet") : feet(basis, feet);
    String way = basis.wordIfHeld("joist direction");
    double force = mass * basis.figure("standard-gravity");
    double net = Math.max(0, force - imposed * x * y / 1000);
    double from = basis.factIfHeld("item across from", about);
    double support = basis.factIfHeld("item from the support", about);
    terms.add(
        about
            + " "
            + Texts.of(force / 1000, "kN")
            + " − "
            + Texts.of((force - net) / 1000, "kN")
            + " of people it leaves no room for");
    boolean placed = Double.isFinite(from);
    boolean xAlong = placed ? way.equals("along x") : moment(x, y, number) >= moment(y, x, number);
    items.add(new Item(net, xAlong ? x : y, xAlong ? y : x, number, from, support));
  }

  private double moment(double along, double across, double feet) {
    Item one = new Item(1, along, across, feet, Double.NaN, Double.NaN);
    return one.worst(centres) * (span / 4 - Math.min(along, span) / 8);
  }

  private double size(String about, String stated, String assumed) {
    double size = basis.factIfHeld(stated, about);
    if (Double.isNaN(size)) {
      size = basis.factIfHeld(assumed, about);
    }
    return Double.isNaN(size) ? figureOf("compact-item-side") : size;
  }

  private double figureOf(String name) {
    return basis.figure(name);
  }

  private void workOut(MeasuredFacts found) {
    double moment = 0;
    double reaction = 0;
    double sag = 0;
    String grade = DeadLoads.gradeStem(basis);
    double breadth = basis.fact("joist breadth");
    double depth = basis.fact("joist depth");
    if (!basis.complete()) {
      return;
    }
    double modulus = basis.figure(grade + "modulus");
    double shear = basis.figure(grade + "shear-modulus");
    for (double joist : candidates()) {
      List<Patch> middle = patches(joist, false);
      moment = Math.max(moment, PatchLoad.moment(middle, span));
      reaction = Math.max(reaction, PatchLoad.reaction(patches(joist, true), span));
      sag = Math.max(sag, PatchLoad.deflection(middle, span, breadth, depth, modulus, shear));
    }
    String how =
        String.join(", ", terms)
            + "; on the joist loaded most, the deck spanning simply from joist to joist "
            + Texts.of(centres, "mm")
            + " apart, over "
            + Texts.of(span, "mm")
            + "; what is not told where it stands is put where it is worst";
    found.add("item moment", moment / 1e6, "kN.m", how, basis);
    found.add("item reaction", reaction / 1000, "kN", how, basis);
    found.add("joist deflection of the items", sag, "mm", how, basis);
  }

  /** Places across the floor where the joist that is loaded most may lie. */
  private TreeSet<Double> candidates() {
    TreeSet<Double> all = new TreeSet<>();
    for (Item item : items) {
      if (Double.isFinite(item.from())) {
        all.add(item.from());
        all.add(item.from() + item.across() / 2);
        all.add(item.from() + item.across());
      }
    }
    if (all.isEmpty()) {
      all.add(0.0);
    }
    return all;
  }

  /**
   * What lies on a joist; what may lie anywhere along it end to end, in the middle or at an end.
   */
  private List<Patch> patches(double joist, boolean atTheEnd) {
    List<Patch> all = new ArrayList<>();
    double length = 0;
    double load = 0;
    for (Item item : items) {
      boolean known = Double.isFinite(item.from());
      double share = known ? item.shareOf(joist, centres) : item.worst(centres);
      double part = item.loadN() * share;
      if (Double.isFinite(item.support())) {
        double from = Math.max(0, Math.min(span, item.support()));
        double to = Math.max(from, Math.min(span, item.support() + item.along()));
        all.add(new Patch(from, to, part));
      } else if (part > 0) {
        length += item.along();
        load += part;
      }
    }
    if (load > 0) {
      double fits = Math.min(length, span);
      double from = atTheEnd ? 0 : (span - fits) / 2;
      all.add(new Patch(from, from + fits, load * fits / length));
    }
    return all;
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%d things on joists", items.size());
  }
}
