package underfoot.reasoning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import underfoot.buildup.LayerClass;
import underfoot.buildup.StackLayer;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.LayerKind;
import underfoot.knowledge.MaterialItem;
import underfoot.knowledge.ProposedKinds;
import underfoot.language.Rule;
import underfoot.quantity.Nearest;
import underfoot.scenario.FactBook;
import underfoot.scenario.FactDefinition;

/** Finds out which layers, or which way of building, a person means by a few words. */
public final class MaterialLookup {
  private static final int NEAREST = 3;

  private final Knowledge knowledge;
  private final List<Rule> rules;
  private final ProposedKinds kinds;
  private final FactDefinition kind;
  private final AskedWords asked;
  private final Set<String> allWays = new LinkedHashSet<>();

  /**
   * @param knowledge the layers and what there is to buy
   * @param rules the rules, which name the ways of building
   * @param kinds what people call layers
   * @param proposals what a proposal may say, with other words for kinds and classes
   */
  public MaterialLookup(
      Knowledge knowledge, List<Rule> rules, ProposedKinds kinds, FactBook proposals) {
    this.kinds = kinds;
    this.kind = proposals.find(AskedWords.KIND).orElseThrow();
    this.asked = new AskedWords(knowledge, kinds, proposals);
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
   * A class of a material.
   *
   * @param kind what people call the material
   * @param grade the class
   */
  public record OfClass(String kind, String grade) {}

  /**
   * Another value of a fact of the floor.
   *
   * @param fact the fact
   * @param value the value
   */
  public record OfFact(FactDefinition fact, String value) {}

  /**
   * What is meant.
   *
   * @param layers kinds of layer; any of them will do
   * @param ways ways of building; any of them will do
   * @param askedFor the ids of the rules that lay or offer one of them
   * @param mayBe where the words may mean things of several sorts: what these are called
   * @param grade the class that the material must be of; empty if none is named
   * @param fact the fact of the floor of which another value is meant; empty if it is none
   */
  public record Meant(
      Set<String> layers,
      Set<String> ways,
      List<String> askedFor,
      List<String> mayBe,
      Optional<OfClass> grade,
      Optional<OfFact> fact) {
    /** Whether nothing is meant. */
    public boolean isNothing() {
      return layers.isEmpty() && ways.isEmpty() && fact.isEmpty();
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

  /** Why what is meant is in a build-up: what laid it, or the class that makes a layer of it. */
  public List<Derivation> because(BuildUp buildUp, Meant meant) {
    StackKinds stacks = new StackKinds(knowledge);
    List<Derivation> because = new ArrayList<>();
    for (StackLayer layer : buildUp.stack().layers()) {
      if (meant.layers().contains(layer.kind().id())) {
        because.addAll(layer.because());
      } else if (stacks.of(buildUp, layer).stream().anyMatch(meant.layers()::contains)) {
        buildUp.of(LayerClass.class).stream()
            .filter(one -> one.layer().equals(layer.kind().id()))
            .filter(
                one ->
                    stacks.of(one.layer(), List.of(one.grade())).stream()
                        .anyMatch(meant.layers()::contains))
            .forEach(one -> because.add(one.because()));
      }
    }
    return because;
  }

  /** What is meant by a few words; nothing if they are none of the trade that is known here. */
  public Meant find(String words) {
    String plain = AskedWords.plain(words);
    Set<String> layers = new LinkedHashSet<>();
    Set<String> ways = new LinkedHashSet<>();
    Map<String, Set<String>> names = names();
    names.putAll(kindNames()); // what people call a layer is that layer and no other
    for (String way : allWays) {
      if (AskedWords.plain(way).equals(plain)) {
        ways.add(way);
      }
    }
    if (!ways.isEmpty()) {
      return new Meant(
          layers, ways, askedFor(layers, ways), List.of(), Optional.empty(), Optional.empty());
    }
    Optional<OfFact> fact = asked.ofFact(words, !names.containsKey(plain));
    if (fact.isPresent()) {
      return new Meant(layers, ways, List.of(), List.of(), Optional.empty(), fact);
    }
    layers.addAll(names.getOrDefault(plain, Set.of()));
    Optional<OfClass> grade =
        layers.isEmpty() ? asked.ofClass(words) : proposed(layers).flatMap(asked::onlyClass);
    grade.ifPresent(one -> layers.addAll(kinds.get(one.kind()).is()));
    List<String> mayBe = new ArrayList<>();
    if (layers.isEmpty()) {
      // What a thing is stands at the end of its name: a membrane bed is no membrane.
      partly(names, name -> name.endsWith(" " + plain), layers, mayBe);
    }
    if (layers.isEmpty()) {
      List<String> wanted = Arrays.asList(plain.split(" "));
      partly(names, name -> Arrays.asList(name.split(" ")).containsAll(wanted), layers, mayBe);
    }
    return new Meant(layers, ways, askedFor(layers, ways), mayBe, grade, Optional.empty());
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
    String asked = AskedWords.plain(words);
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
    kindNames().forEach((name, layers) -> layers.forEach(layer -> name(names, name, layer)));
    return names;
  }

  private Map<String, Set<String>> kindNames() {
    Map<String, Set<String>> names = new LinkedHashMap<>();
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
    return meant.grade().map(OfClass::kind).or(() -> proposed(meant.layers()));
  }

  private Optional<String> proposed(Set<String> layers) {
    return kinds.names().stream()
        .filter(called -> layers.containsAll(kinds.get(called).is()))
        .findFirst();
  }

  private static void name(Map<String, Set<String>> names, String name, String layer) {
    if (!name.isBlank()) {
      names.computeIfAbsent(AskedWords.plain(name), one -> new LinkedHashSet<>()).add(layer);
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
}
