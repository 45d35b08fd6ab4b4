package underfoot.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.From;
import underfoot.knowledge.Kinds;
import underfoot.knowledge.Knowledge;
import underfoot.measure.Texts;
import underfoot.scenario.Scenario;
import underfoot.scenario.StatedFact;

/**
 * The floor as it is today, layer by layer from what carries it. Rules judge each layer; this tells
 * how the layers lie on each other, from which of them the work may start, and what the floor then
 * is in the words of a floor that has only a deck.
 */
final class FoundFloor {
  /** The fact that tells from which layer the work starts. */
  static final String START = "layer the work starts from";

  /** The fact that tells how many layers come up though they may stay. */
  static final String SOUND_UP = "sound layers taken up";

  private static final String LIST = "subfloor.as found[]";
  private static final String BASE = "base it makes";
  private static final String PART = "found part";
  private static final String SOFT = "found softness";
  private static final String SEAL = "found seal";
  private static final String LEAVES = "residue it leaves";
  private static final String MASS = "found mass rate";
  private static final String CARRIER_BASE = "base it is itself";
  private static final String TILES = "tiles";

  private final Scenario scenario;
  private final Knowledge knowledge;
  private final List<Layer> layers = new ArrayList<>();
  private final String carrierBase;

  /** One layer: its name, and what its row says of its kind. */
  private record Layer(String name, String kind, Map<String, String> row) {
    String says(String attribute) {
      return row.getOrDefault(attribute, "");
    }

    boolean isBase() {
      return row.containsKey(BASE);
    }

    boolean isTiles() {
      return says(PART).equals(TILES);
    }

    boolean isSoft() {
      return row.containsKey(SOFT);
    }

    /** Whether it is a board or sheet that may be a deck or lie on one. */
    boolean isDeck() {
      return isBase() && row.containsKey(PART) && !isTiles();
    }
  }

  /**
   * The layers that a scenario tells.
   *
   * @param scenario the floor
   * @param knowledge where the rows of the kinds stand
   */
  FoundFloor(Scenario scenario, Knowledge knowledge) {
    this.scenario = scenario;
    this.knowledge = knowledge;
    for (String name : scenario.entries(LIST)) {
      String kind = text(LIST + ".kind", name);
      layers.add(new Layer(name, kind, row("found layer", kind)));
    }
    carrierBase =
        row("carrier", text("subfloor.carried by.kind", "")).getOrDefault(CARRIER_BASE, "");
  }

  private Map<String, String> row(String fact, String kind) {
    return knowledge.kinds().of(fact, kind).stream()
        .collect(Collectors.toMap(Kinds.Said::called, Kinds.Said::value, (a, b) -> a));
  }

  private String text(String key, String about) {
    return scenario.find(key, about).filter(StatedFact::known).map(StatedFact::text).orElse("");
  }

  private double mm(String key, Layer layer) {
    return scenario.find(LIST + "." + key, layer.name()).map(StatedFact::number).orElse(Double.NaN);
  }

  /** Whether the layers are told; a floor told in short has none. */
  boolean isTold() {
    return !layers.isEmpty();
  }

  /** What each layer lies on, for the rules that judge it. */
  List<Fact> places() {
    List<Fact> places = new ArrayList<>();
    for (int i = 0; i < layers.size(); i++) {
      places.add(
          Fact.measured(
              "found place",
              layers.get(i).name(),
              place(i),
              Double.NaN,
              "the layers of the floor, from what carries it up",
              List.of()));
    }
    return places;
  }

  private String place(int layer) {
    boolean onDeck = !carrierBase.isEmpty();
    for (int i = layer - 1; i >= 0; i--) {
      Layer below = layers.get(i);
      if (below.isSoft()) {
        return "on a soft layer";
      }
      onDeck |= below.isBase();
    }
    return layer > 0 && onDeck ? "on a deck" : layer > 0 ? "on another layer" : "on the carrier";
  }

  /**
   * The layers from which the work may start, the uppermost first: those that make a base, with
   * nothing in or under them that must come up. From each of them a way is worked out, down to the
   * uppermost that carries the floor: only a sheet or old tiles on another base are taken up where
   * they may stay, never what carries, nor a slab that is the carrier and named once more.
   *
   * @param judged what the rules said of the layers
   * @return places in the stack; -1 is what carries the floor
   */
  List<Integer> startsBesideEachOther(Facts judged) {
    List<Integer> starts = starts(judged);
    int carries = 0;
    while (carries < starts.size() - 1 && liesOnAnother(starts.get(carries))) {
      carries++;
    }
    return starts.subList(0, carries + 1);
  }

  /** The layers from which the work starts only if nothing stands on those above. */
  List<Integer> startsWhereNothingStands(Facts judged) {
    List<Integer> starts = starts(judged);
    return starts.subList(startsBesideEachOther(judged).size(), starts.size());
  }

  /** Whether a sheet or tiles lie on another base, with nothing soft between. */
  private boolean liesOnAnother(int layer) {
    if (layer < 0 || !layers.get(layer).row().containsKey(PART)) {
      return false;
    }
    for (int i = layer - 1; i >= 0; i--) {
      if (layers.get(i).isBase() || layers.get(i).isSoft()) {
        return !layers.get(i).isSoft();
      }
    }
    return !carrierBase.isEmpty();
  }

  /** All of them; the deck on the carrier always, since rules for a bare deck say what is done. */
  private List<Integer> starts(Facts judged) {
    List<Integer> starts = new ArrayList<>();
    int lowest = carrierBase.isEmpty() || namesTheCarrier() ? lowestBase() : -1;
    for (int i = 0; i < layers.size(); i++) {
      Fact verdict = judged.find(FoundLayers.VERDICT, layers.get(i).name());
      if (i != lowest && verdict != null && verdict.text().equals(FoundLayers.COMES_UP)) {
        break;
      }
      if (layers.get(i).isBase()) {
        starts.add(0, i);
      }
    }
    if (!starts.contains(lowest)) {
      starts.add(lowest);
    }
    return starts;
  }

  /** Whether the lowest layer is what carries the floor, named once more; it is never taken up. */
  private boolean namesTheCarrier() {
    return !layers.isEmpty() && layers.get(0).says(BASE).equals(carrierBase);
  }

  private int lowestBase() {
    for (int i = 0; i < layers.size(); i++) {
      if (layers.get(i).isBase()) {
        return i;
      }
    }
    return -1;
  }

  /**
   * What the floor is if the work starts from one of its layers, as a floor told in short has it.
   */
  List<Fact> from(int start, List<Fact> judged) {
    return new Start(start, judged).facts();
  }

  /** The floor, stripped to one of its layers. */
  private final class Start {
    private final int at;
    private final List<Fact> told = new ArrayList<>();
    private final Facts judged;
    private final List<Object> uses = new ArrayList<>();

    Start(int at, List<Fact> judged) {
      this.at = at;
      this.judged = new Facts().addAll(judged);
      for (Fact one : judged) {
        if (one.name().equals(FoundLayers.VERDICT)) {
          uses.add(one);
        }
      }
    }

    List<Fact> facts() {
      tell(START, "", Integer.toString(at), at);
      for (int i = layers.size() - 1; i >= 0; i--) { // the uppermost comes up first
        tell(
            FoundLayers.FATE,
            layers.get(i).name(),
            i > at ? FoundLayers.COMES_UP : "stays",
            Double.NaN);
      }
      String base = baseOf(at);
      if (!base.isEmpty()) {
        tell("deck", "", base, Double.NaN);
      }
      boolean tiled = at >= 0 && layers.get(at).isTiles();
      int deck = tiled ? below(at) : at;
      if (tiled || at >= 0 && !layers.get(at).isDeck()) {
        String beneath = baseOf(below(at));
        if (!beneath.isEmpty()) {
          tell("base beneath", "", beneath, Double.NaN);
        }
      }
      ofTheDeck(deck);
      if (tiled) {
        tiles(layers.get(at));
      }
      left(deck);
      takenUp();
      return told;
    }

    /** The base that a layer makes; a deck on something soft floats. */
    private String baseOf(int layer) {
      if (layer < 0) {
        return carrierBase;
      }
      boolean floats = place(layer).equals("on a soft layer") && layers.get(layer).isDeck();
      return floats ? "floating board floor" : layers.get(layer).says(BASE);
    }

    /** The next base beneath a layer; -1 for what carries the floor. */
    private int below(int layer) {
      for (int i = layer - 1; i >= 0; i--) {
        if (layers.get(i).isBase() && !layers.get(i).isTiles()) {
          return i;
        }
      }
      return -1;
    }

    /** What is told of the deck that carries: sheets and boards that lie on each other are one. */
    private void ofTheDeck(int deck) {
      if (deck < 0) {
        return;
      }
      Layer upper = layers.get(deck);
      double thickness = 0;
      boolean loose = false;
      boolean tight = true;
      boolean soft = false;
      for (int i = deck; i >= 0; i--) {
        Layer layer = layers.get(i);
        soft |= layer.isSoft();
        boolean ofIt = i == deck || layer.isDeck() && upper.isDeck() && !soft;
        if (ofIt) {
          thickness += mm("thickness", layer);
          loose |= text(LIST + ".loose", layer.name()).equals("yes");
          tight &= text(LIST + ".loose", layer.name()).equals("no");
          double width = mm("board width", layer);
          if (!Double.isNaN(width)) {
            length("board width", width);
          }
        }
        if (layer.row().containsKey(SEAL)) {
          tell("damp-proof membrane", "", "present", Double.NaN);
        }
      }
      if (!Double.isNaN(thickness)) {
        length("deck thickness", thickness);
      }
      if (upper.isDeck() && (loose || tight)) {
        tell("loose boards", "", loose ? "yes" : "no", Double.NaN);
      }
      if (!upper.isDeck() && soft) {
        tell("screed bond", "", "floating", Double.NaN);
        tell("insulation beneath", "", "yes", Double.NaN);
      } else if (!upper.isDeck() && deck > 0 && layers.get(deck - 1).row().containsKey(SEAL)) {
        tell("screed bond", "", "unbonded", Double.NaN);
      }
      Optional<StatedFact> age = scenario.find(LIST + ".age", upper.name());
      age.filter(StatedFact::known).ifPresent(a -> tell("base age", "", a.text(), a.number()));
    }

    private void tiles(Layer tiles) {
      String hollow = text(LIST + ".hollow", tiles.name());
      if (!hollow.isEmpty()) {
        tell("hollow-sounding", "", hollow.equals("none") ? "no" : "yes", Double.NaN);
      }
      double height = height(tiles);
      if (height > 0) {
        length("old tile height", height);
      }
    }

    /** A layer with its bed, mm; 0 where its thickness is not known, which never makes room. */
    private double height(Layer layer) {
      double thickness = mm("thickness", layer);
      double bed = mm("bed", layer);
      return (Double.isNaN(thickness) ? 0 : thickness) + (Double.isNaN(bed) ? 0 : bed);
    }

    /** What a layer weighs, kg/m2; 0 where its kind has no weight or its thickness is not known. */
    private double mass(Layer layer) {
      return layer.row().containsKey(MASS)
          ? knowledge.figures().get(layer.says(MASS)).value() * height(layer)
          : 0;
    }

    /** What stays on the deck, up to the layer the work starts from, weighs on what carries it. */
    private void left(int deck) {
      double mass = 0;
      List<String> terms = new ArrayList<>();
      for (int i = deck + 1; i <= at; i++) {
        Layer layer = layers.get(i);
        double one = layer.isTiles() ? 0 : mass(layer);
        if (one > 0) {
          mass += one;
          terms.add(layer.name() + " " + Texts.of(one, "kg/m2"));
        }
      }
      if (mass > 0) {
        how("mass left on the deck", mass, "kg/m2", String.join(" + ", terms));
      }
    }

    private void takenUp() {
      double up = 0;
      double mass = 0;
      List<String> terms = new ArrayList<>();
      List<String> weights = new ArrayList<>();
      List<String> sound = new ArrayList<>();
      for (int i = at + 1; i < layers.size(); i++) {
        String name = layers.get(i).name();
        Fact verdict = judged.find(FoundLayers.VERDICT, name);
        if (verdict != null && !verdict.text().equals(FoundLayers.COMES_UP)) {
          sound.add(name);
        }
        double height = height(layers.get(i));
        if (height > 0) {
          up += height;
          terms.add(name + " " + Texts.of(height, "mm"));
        }
        double weight = mass(layers.get(i));
        if (weight > 0) {
          mass += weight;
          weights.add(name + " " + Texts.of(weight, "kg/m2"));
        }
      }
      if (up > 0) {
        how("old layers taken up", up, "mm", String.join(" + ", terms));
      }
      if (mass > 0) {
        how("mass taken up", mass, "kg/m2", String.join(" + ", weights));
      }
      if (!sound.isEmpty()) {
        how(SOUND_UP, sound.size(), "", String.join(" + ", sound));
      }
      if (at + 1 < layers.size()) {
        String residue = layers.get(at + 1).says(LEAVES);
        if (!residue.isEmpty() && text("subfloor.condition.residue", "").isEmpty()) {
          tell("residue", "", residue, Double.NaN);
        }
      }
    }

    private void length(String name, double mm) {
      tell(name, "", Texts.of(mm, "mm"), mm);
    }

    private void how(String name, double number, String unit, String how) {
      told.add(
          new Fact(
              knowledge.keyOf(name),
              name,
              "",
              Texts.of(number, unit),
              number,
              From.MEASURED,
              how,
              uses,
              null));
    }

    private void tell(String name, String about, String text, double number) {
      told.add(
          new Fact(
              knowledge.keyOf(name),
              name,
              about,
              text,
              number,
              From.MEASURED,
              "the layers of the floor as it is: " + names(),
              uses,
              null));
    }

    private String names() {
      return layers.stream().map(Layer::name).collect(Collectors.joining(", "));
    }
  }

  /** The names of facts that are not to be asked of a floor whose layers are told. */
  static Set<String> names(List<Object> told) {
    return told.stream()
        .filter(Fact.class::isInstance)
        .map(Fact.class::cast)
        .filter(one -> one.about().isEmpty())
        .map(Fact::name)
        .collect(Collectors.toSet());
  }
}
