package underfoot.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import underfoot.buildup.LayerNote;
import underfoot.buildup.Stack;
import underfoot.buildup.StackLayer;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Figures;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.MaterialItem;
import underfoot.plan.setout.BoardPlan;
import underfoot.plan.setout.TileSetOut;
import underfoot.reasoning.BuildUp;
import underfoot.working.Adhesive;
import underfoot.working.Grout;

/** Works out how much of everything a build-up takes. */
final class Amounts {
  private static final double MM_PER_M = 1000;
  private static final double MM2_PER_M2 = MM_PER_M * MM_PER_M;
  private static final double PER_CENT = 100;
  private static final String ROUND_THE_ROOM = "round-the-room";
  private static final String OF_FACT = "the ";

  private final Figures figures;
  private final Facts facts;
  private final SetOuts.Laid laid;
  private final Set<String> said;
  private final List<Amount> amounts = new ArrayList<>();

  private Amounts(Figures figures, Facts facts, SetOuts.Laid laid, Set<String> said) {
    this.figures = figures;
    this.facts = facts;
    this.laid = laid;
    this.said = said;
  }

  /** The amounts of a build-up, with what its rules say of how its layers are laid. */
  static List<Amount> of(Knowledge knowledge, BuildUp buildUp, SetOuts.Laid laid) {
    Set<String> said =
        buildUp.of(LayerNote.class).stream().map(LayerNote::wording).collect(Collectors.toSet());
    return of(knowledge, buildUp.stack(), buildUp.facts(), laid, said);
  }

  static List<Amount> of(Knowledge knowledge, Stack stack, Facts facts, SetOuts.Laid laid) {
    return of(knowledge, stack, facts, laid, Set.of());
  }

  private static List<Amount> of(
      Knowledge knowledge, Stack stack, Facts facts, SetOuts.Laid laid, Set<String> said) {
    Amounts work = new Amounts(knowledge.figures(), facts, laid, said);
    for (MaterialItem item : knowledge.materials().all()) {
      for (StackLayer layer : stack.layers()) {
        if (item.forLayers().contains(layer.kind().id()) && work.bought(item)) {
          work.add(item, layer);
        }
      }
    }
    return work.amounts;
  }

  /** What a part of a room takes besides what is counted and bought for the room as a whole. */
  static List<Amount> ofPart(Knowledge knowledge, BuildUp part) {
    return of(knowledge, part, SetOuts.Laid.notLaidOut(part.facts())).stream()
        .filter(one -> !one.item().counted().equals("tiles"))
        .filter(one -> one.item().by() != MaterialItem.By.PERIMETER)
        .toList();
  }

  /** What several parts of a room take, each thing once. */
  static List<Amount> together(List<Amount> room, List<Amount> more) {
    List<Amount> all = new ArrayList<>(room);
    for (Amount one : more) {
      int place = -1;
      for (int i = 0; i < all.size() && place < 0; i++) {
        place = all.get(i).item().equals(one.item()) ? i : -1;
      }
      if (place < 0) {
        all.add(one);
        continue;
      }
      Amount first = all.get(place);
      List<Object> used = new ArrayList<>(first.used());
      used.addAll(one.used());
      all.set(
          place,
          new Amount(
              first.item(),
              first.layer(),
              first.amount() + one.amount(),
              first.whole() && one.whole(),
              first.piece(),
              used));
    }
    return all;
  }

  /** Whether what must be held for it is held, and what must not be is not. */
  private boolean bought(MaterialItem item) {
    return (item.onlyIf().isEmpty() || held(item.onlyIf()))
        && (item.notIf().isEmpty() || !held(item.notIf()));
  }

  private boolean held(String says) {
    int space = says.indexOf(' ', says.indexOf(':'));
    return facts.text(says.substring(0, space - 1)).equals(says.substring(space + 1));
  }

  /** What the set-out counts of a thing; NaN where it does not count it. */
  private double counted(MaterialItem item, StackLayer layer, List<Object> used) {
    BoardPlan plan = laid.boards().get(layer.kind().id());
    return switch (item.counted()) {
      case "tiles" -> laid.tiles().map(out -> tiles(out, used)).orElse(Double.NaN);
      case "boards" ->
          plan == null
              ? Double.NaN
              : plan.boards() * plan.length() * plan.width() / (MM_PER_M * MM_PER_M);
      case "screws" -> plan == null ? Double.NaN : plan.screws().size();
      default -> Double.NaN;
    };
  }

  /** The area of one tile or board that is counted, m2; 0 for what has none. */
  private double piece(MaterialItem item, StackLayer layer) {
    BoardPlan plan = laid.boards().get(layer.kind().id());
    return switch (item.counted()) {
      case "tiles" -> laid.tiles().map(one -> one.length() * one.width() / MM2_PER_M2).orElse(0.0);
      case "boards" -> plan == null ? 0 : plan.length() * plan.width() / MM2_PER_M2;
      default -> 0;
    };
  }

  private double tiles(TileSetOut out, List<Object> used) {
    Fact breakage = facts.find("tile breakage");
    if (breakage != null) {
      used.add(breakage);
    }
    long tiles = SetOuts.toOrder(out, breakage == null ? 0 : breakage.number());
    return tiles * out.length() * out.width() / (MM_PER_M * MM_PER_M);
  }

  private void add(MaterialItem item, StackLayer layer) {
    List<Object> used = new ArrayList<>();
    double counted = counted(item, layer, used);
    if (!Double.isNaN(counted)) {
      if (item.counted().equals("screws")) {
        counted *= 1 + waste(item.waste(), used) / PER_CENT;
      }
      amounts.add(new Amount(item, layer, counted, true, piece(item, layer), used));
      return;
    }
    Fact told = item.floor().isEmpty() ? null : facts.find(item.floor());
    Fact area = told == null ? facts.find("area") : told;
    boolean whole = area != null || item.by() == MaterialItem.By.FLOOR;
    double squareMetres =
        area != null ? Math.max(0, area.number() - less(facts, item.less(), used)) : 1;
    double amount;
    switch (item.by()) {
      case AREA -> amount = squareMetres;
      case DEPTH -> amount = squareMetres * layer.thickness().mean();
      case BED -> {
        Figure powder = figures.get(item.rate());
        used.add(powder);
        double bed = layer.thickness().mean() + besides(item, used);
        amount = squareMetres * Adhesive.massKgPerM2(bed, powder.value());
      }
      case PERIMETER -> {
        Fact perimeter = facts.find("perimeter");
        whole |= perimeter != null;
        if (perimeter != null) {
          used.add(perimeter);
          amount = perimeter.number() / MM_PER_M;
        } else if (area != null) {
          Figure round = figures.get(ROUND_THE_ROOM);
          used.addAll(List.of(area, round));
          amount = round.value() * Math.sqrt(squareMetres);
        } else {
          amount = Double.NaN;
        }
      }
      case FLOOR -> amount = 1;
      case JOINTS -> amount = squareMetres * litresOfJoint(used);
      default -> throw new IllegalStateException("no such measure: " + item.by());
    }
    if (area != null
        && item.by() != MaterialItem.By.PERIMETER
        && item.by() != MaterialItem.By.FLOOR) {
      used.add(area);
    }
    amount *= item.by() == MaterialItem.By.BED ? 1 : rate(item.rate(), used);
    amount *= 1 + waste(item.waste(), used) / PER_CENT;
    if (!(amount <= 0)) { // also what cannot be worked out is to be bought
      amounts.add(new Amount(item, layer, amount, whole && !Double.isNaN(amount), 0, used));
    }
  }

  /** How much floor several facts tell of, each of whatever it is about, m2. */
  static double less(Facts facts, List<String> names, List<Object> used) {
    double less = 0;
    for (String name : names) {
      for (String about : facts.abouts(name)) {
        Fact fact = facts.find(name, about);
        if (!used.contains(fact)) {
          used.add(fact);
        }
        less += fact.number();
      }
    }
    return less;
  }

  /** What the bed takes besides its own thickness, mm: on the backs of tiles, in hollows. */
  private double besides(MaterialItem item, List<Object> used) {
    double more = 0;
    for (Map.Entry<String, String> one : item.besides().entrySet()) {
      if (said.contains(one.getKey())) {
        Figure figure = figures.get(one.getValue());
        used.add(figure);
        more += figure.value();
      }
    }
    return more;
  }

  private double waste(String name, List<Object> used) {
    if (name.isEmpty()) {
      return 0;
    }
    if (name.startsWith(OF_FACT)) {
      Fact fact = facts.find(name.substring(OF_FACT.length()));
      if (fact == null || !fact.hasNumber()) {
        return 0;
      }
      used.add(fact);
      return fact.number();
    }
    Figure figure = figures.get(name);
    used.add(figure);
    return figure.value();
  }

  private double rate(String name, List<Object> used) {
    if (name.isEmpty()) {
      return 1;
    }
    Figure rate = figures.get(name);
    used.add(rate);
    return rate.value();
  }

  /** Litres of joint in a square metre of tiling; the exact formula with a density of one. */
  private double litresOfJoint(List<Object> used) {
    List<Fact> needed = new ArrayList<>();
    for (String name : List.of("longest edge", "shortest edge", "tile thickness", "tile joint")) {
      Fact fact = facts.find(name);
      if (fact == null || !fact.hasNumber()) {
        return Double.NaN;
      }
      needed.add(fact);
    }
    used.addAll(needed);
    return Grout.of(
            needed.get(0).number(),
            needed.get(1).number(),
            needed.get(2).number(),
            needed.get(3).number(),
            1)
        .exactKgPerM2();
  }
}
