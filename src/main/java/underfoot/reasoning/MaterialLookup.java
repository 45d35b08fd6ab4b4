package underfoot.reasoning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.LayerKind;
import underfoot.knowledge.MaterialItem;
import underfoot.knowledge.ProposedKinds;
import underfoot.language.Rule;
import underfoot.quantity.Nearest;
import underfoot.scenario.FactDefinition;

/** Finds out which layers, or which way of building, a person means by a few words. */
public final class MaterialLookup {
  private static final int NEAREST = 3;

  private final Knowledge knowledge;
  private final List<Rule> rules;
  private final ProposedKinds kinds;
  private final FactDefinition kind;
  private final Set<String> allWays = new LinkedHashSet<>();

  /**
   * @param knowledge the layers and what there is to buy
   * @param rules the rules, which name the ways of building
   * @param kinds what people call layers
   * @param kind what may be written as a kind of layer, other words for it included
   */
  public MaterialLookup(
      Knowledge knowledge, List<Rule> rules, ProposedKinds kinds, FactDefinition kind) {
    this.kinds = kinds;
    this.kind = kind;
    this.knowledge = knowledge;
    this.rules = rules;
    for (Rule rule : rules) {
      for (String line : rule.then()) {
        if (line.startsWith("Offer ")) {
          allWays.add(line.substring("Offer ".length(), line.lastIndexOf(" as ")));
        }
      }
    }
  }

  /**
   * What is meant.
   *
   * @param layers kinds of layer; any of them will do
   * @param ways ways of building; any of them will do
   * @param askedFor the ids of the rules that lay or offer one of them
   * @param mayBe where the words may mean things of several sorts: what these are called
   */
  public record Meant(
      Set<String> layers, Set<String> ways, List<String> askedFor, List<String> mayBe) {
    /** Whether nothing is meant. */
    public boolean isNothing() {
      return layers.isEmpty() && ways.isEmpty();
    }
  }

  /** Whether a build-up is one with what is meant, be it a layer or what its classes make of it. */
  public Predicate<BuildUp> in(Meant meant) {
    StackKinds stacks = new StackKinds(knowledge);
    return buildUp ->
        meant.ways().contains(buildUp.way())
            || buildUp.stack().layers().stream()
                .anyMatch(layer -> meant.layers().contains(layer.kind().id()))
            || stacks.of(buildUp).stream().anyMatch(meant.layers()::contains);
  }

  /** What is meant by a few words; nothing if they are none of the trade that is known here. */
  public Meant find(String words) {
    String asked = plain(words);
    Set<String> layers = new LinkedHashSet<>();
    Set<String> ways = new LinkedHashSet<>();
    Map<String, Set<String>> names = names();
    for (String way : allWays) {
      if (plain(way).equals(asked)) {
        ways.add(way);
      }
    }
    if (ways.isEmpty()) {
      layers.addAll(names.getOrDefault(asked, Set.of()));
    }
    List<String> mayBe = new ArrayList<>();
    if (ways.isEmpty() && layers.isEmpty()) {
      // What a thing is stands at the end of its name: a membrane bed is no membrane.
      partly(names, name -> name.endsWith(" " + asked), layers, mayBe);
    }
    if (ways.isEmpty() && layers.isEmpty()) {
      List<String> wanted = Arrays.asList(asked.split(" "));
      partly(names, name -> Arrays.asList(name.split(" ")).containsAll(wanted), layers, mayBe);
    }
    return new Meant(layers, ways, askedFor(layers, ways), mayBe);
  }

  /** Takes the layers whose names are like what is asked; tells them where they differ in sort. */
  private void partly(
      Map<String, Set<String>> names,
      Predicate<String> alike,
      Set<String> layers,
      List<String> mayBe) {
    names.forEach(
        (name, ids) -> {
          if (alike.test(name)) {
            layers.addAll(ids);
          }
        });
    long sorts = layers.stream().map(id -> knowledge.layers().get(id).family()).distinct().count();
    if (sorts > 1) {
      kinds.names().stream()
          .filter(name -> kinds.get(name).is().stream().anyMatch(layers::contains))
          .forEach(mayBe::add);
    }
  }

  /** The names most like words that mean nothing, the nearest first. */
  public List<String> nearest(String words) {
    List<String> names = new ArrayList<>(names().keySet());
    names.addAll(allWays);
    String asked = plain(words);
    String cut = asked.length() > 80 ? asked.substring(0, 80) : asked;
    names.sort(Comparator.comparingInt(name -> Nearest.distance(name, cut)));
    return names.stream().distinct().limit(NEAREST).toList();
  }

  private Map<String, Set<String>> names() {
    Map<String, Set<String>> names = new LinkedHashMap<>();
    for (LayerKind kind : knowledge.layers().all()) {
      for (String name : List.of(kind.id(), kind.name(), kind.material(), kind.family())) {
        name(names, name, kind.id());
      }
    }
    for (MaterialItem item : knowledge.materials().all()) {
      for (String layer : item.forLayers()) {
        name(names, item.item(), layer);
      }
    }
    for (String called : kinds.names()) {
      kinds.get(called).is().forEach(layer -> name(names, called, layer));
    }
    kind.also()
        .forEach(
            (word, called) -> kinds.get(called).is().forEach(layer -> name(names, word, layer)));
    return names;
  }

  /** What people call the layers meant, in a proposal; empty if they have no word for them. */
  public Optional<String> called(Meant meant) {
    return kinds.names().stream()
        .filter(called -> meant.layers().containsAll(kinds.get(called).is()))
        .findFirst();
  }

  private static void name(Map<String, Set<String>> names, String name, String layer) {
    if (!name.isBlank()) {
      names.computeIfAbsent(plain(name), one -> new LinkedHashSet<>()).add(layer);
    }
  }

  private List<String> askedFor(Set<String> layers, Set<String> ways) {
    List<String> ids = new ArrayList<>();
    for (Rule rule : rules) {
      for (String line : rule.then()) {
        boolean lays =
            line.startsWith("Lay ") && layers.contains(line.substring(4).split(" of ")[0].strip());
        boolean offers = ways.stream().anyMatch(way -> line.startsWith("Offer " + way + " as "));
        if (lays || offers) {
          ids.add(rule.note().id());
        }
      }
    }
    return ids;
  }

  private static String plain(String words) {
    String plain =
        words.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", " ").strip().replaceAll(" +", " ");
    return plain.endsWith("s") && !plain.endsWith("ss")
        ? plain.substring(0, plain.length() - 1)
        : plain;
  }
}
