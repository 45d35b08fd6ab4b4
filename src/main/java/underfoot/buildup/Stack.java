package underfoot.buildup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;

/**
 * The layers of one build-up from the stripped base to the tile.
 *
 * @param layers in the order they are laid
 */
public record Stack(List<StackLayer> layers) {
  /** Copies the list. */
  public Stack {
    layers = List.copyOf(layers);
  }

  @Override
  public int hashCode() {
    return layers.hashCode();
  }

  /**
   * Puts the layers that rules asked for in the order their kinds lie in. Where several rules ask
   * for the same layer it is laid once, as thick as the one that asks most.
   *
   * @param concluded what the rules concluded
   * @param figures where figures are looked up
   * @param facts where facts are looked up
   */
  public static Stack of(List<?> concluded, Figures figures, Facts facts) {
    Map<String, List<Laid>> byKind = new LinkedHashMap<>();
    for (Object one : concluded) {
      if (one instanceof Laid laid) {
        byKind.computeIfAbsent(laid.kind().id(), id -> new ArrayList<>()).add(laid);
      }
    }
    List<StackLayer> layers = new ArrayList<>();
    for (List<Laid> laid : byKind.values()) {
      // The reason told first is that of the rule that made the layer as thick as it is.
      laid.sort(Comparator.comparingDouble(one -> -LayerThickness.of(one, figures, facts).max()));
      LayerThickness thickness = LayerThickness.even(0);
      LayerThickness more = thickness;
      for (Laid one : laid) {
        LayerThickness asked = LayerThickness.of(one, figures, facts);
        boolean onTop = LayerThickness.onTop(one);
        thickness = onTop ? thickness : thickness.or(asked);
        more = onTop ? more.or(asked) : more;
      }
      thickness = thickness.and(more);
      layers.add(new StackLayer(laid.get(0).kind(), thickness, laid));
    }
    layers.sort(Comparator.comparingInt(layer -> layer.kind().rank()));
    return new Stack(layers);
  }

  /** What the layers add to the height of the floor, mm. */
  public LayerThickness rise() {
    double min = 0;
    double mean = 0;
    double max = 0;
    for (StackLayer layer : layers) {
      min += layer.thickness().min();
      mean += layer.thickness().mean();
      max += layer.thickness().max();
    }
    return new LayerThickness(min, mean, max);
  }

  /** What the layers weigh, kg/m2, at their mean thickness. */
  public double mass(Figures figures) {
    double mass = 0;
    for (StackLayer layer : layers) {
      if (!layer.kind().mass().isEmpty()) {
        mass += figures.get(layer.kind().mass()).value() * layer.thickness().mean();
      }
    }
    return mass;
  }

  /** Whether a levelling compound is poured. */
  public boolean poured() {
    return layers.stream().anyMatch(StackLayer::poured);
  }

  /** Whether a new deck is packed up to a line. */
  public boolean packed() {
    return layers.stream().anyMatch(StackLayer::packed);
  }

  /** The layer that forms the falls to a drain; empty where there is none. */
  public Optional<StackLayer> falls() {
    return layers.stream().filter(StackLayer::fallsToDrain).findFirst();
  }

  /** Whether the old deck is taken up and a new one laid in its place. */
  public boolean replacesDeck() {
    return layers.stream().anyMatch(StackLayer::replacesDeck);
  }

  /** Whether it has a layer of that kind. */
  public boolean has(String kind) {
    return layers.stream().anyMatch(layer -> layer.kind().id().equals(kind));
  }
}
