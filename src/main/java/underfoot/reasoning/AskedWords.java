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
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.ProposedKinds;
import underfoot.scenario.FactBook;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Kind;

/**
 * Understands words that name no layer but what it is to be like: a class of a material ({@code C2
 * adhesive}, {@code RG}), or another value of something that is chosen like a material ({@code R11
 * tile}, {@code marble}).
 */
final class AskedWords {
  private static final String CHOSEN = "chosen like a material";
  private static final String CLASS = "layers[].class";

  /** What a layer is called in a proposal. */
  static final String KIND = "layers[].kind";

  private static final String OF_CLASS = "passport of class";

  private final Knowledge knowledge;
  private final ProposedKinds kinds;
  private final FactDefinition kind;
  private final FactDefinition grade;

  /**
   * @param knowledge the scales of classes and what a scenario may say
   * @param kinds what people call layers, and the classes these have
   * @param proposals what a proposal may say
   */
  AskedWords(Knowledge knowledge, ProposedKinds kinds, FactBook proposals) {
    this.knowledge = knowledge;
    this.kinds = kinds;
    this.kind = proposals.find(KIND).orElseThrow();
    this.grade = proposals.find(CLASS).orElseThrow();
  }

  /** The class meant by some words; empty if they name none, or one that such a thing has not. */
  Optional<MaterialLookup.OfClass> ofClass(String words) {
    List<String> asked = tokens(words);
    List<Map.Entry<String, String>> classes = new ArrayList<>(valued(grade).entrySet());
    classes.sort(Comparator.comparingInt(one -> -one.getKey().length()));
    for (Map.Entry<String, String> one : classes) {
      Optional<List<String>> rest = without(asked, tokens(one.getKey()));
      if (rest.isPresent()) {
        List<String> noun = new ArrayList<>(rest.get());
        noun.removeAll(tokens(grade.word()));
        Optional<MaterialLookup.OfClass> found = material(one.getValue(), String.join(" ", noun));
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  /** The one class that a material has whatever its maker; empty if it has several or none. */
  Optional<MaterialLookup.OfClass> onlyClass(String called) {
    List<String> own = classes(called);
    return own.size() == 1 && !kinds.get(called).scales().isEmpty()
        ? Optional.of(new MaterialLookup.OfClass(called, own.get(0)))
        : Optional.empty();
  }

  /** The first material that has the class and goes by the noun, or is of its family. */
  private Optional<MaterialLookup.OfClass> material(String named, String noun) {
    Set<String> families = new LinkedHashSet<>();
    for (Map.Entry<String, String> one : valued(kind).entrySet()) {
      if (plain(one.getKey()).equals(noun)) {
        families.add(family(one.getValue()));
        if (has(one.getValue(), named)) {
          return Optional.of(new MaterialLookup.OfClass(one.getValue(), named));
        }
      }
    }
    return kinds.names().stream()
        .filter(one -> has(one, named))
        .filter(one -> noun.isEmpty() || families.contains(family(one)))
        .findFirst()
        .map(one -> new MaterialLookup.OfClass(one, named));
  }

  private boolean has(String called, String named) {
    List<String> own = classes(called);
    return kinds.get(called).scales().contains(MaterialClasses.scaleOf(knowledge, named))
        && (own.isEmpty() || own.contains(named));
  }

  /** The classes that its passport names; empty if it names none. */
  private List<String> classes(String called) {
    return knowledge.kinds().of(LayersBeside.MATERIAL, kinds.get(called).is().get(0)).stream()
        .filter(one -> one.called().equals(OF_CLASS))
        .flatMap(one -> Arrays.stream(one.value().split(", ")))
        .toList();
  }

  private String family(String called) {
    return knowledge.layers().get(kinds.get(called).is().get(0)).family();
  }

  /**
   * The value of a fact meant by some words: the words of the value and, before or after them, what
   * it is the value of.
   *
   * @param words the words
   * @param alone whether the value may stand alone
   */
  Optional<MaterialLookup.OfFact> ofFact(String words, boolean alone) {
    List<String> asked = tokens(words);
    for (FactDefinition fact : knowledge.facts().definitions()) {
      Optional<String> part =
          knowledge.scales().get(CHOSEN).stream()
              .filter(one -> fact.key().startsWith(one + '.'))
              .findFirst();
      if (fact.kind() != Kind.CHOICE || part.isEmpty()) {
        continue;
      }
      List<String> noun = tokens(part.get());
      for (Map.Entry<String, String> one : valued(fact).entrySet()) {
        List<String> value = tokens(one.getKey());
        boolean told = asked.containsAll(noun) && !asked.equals(noun);
        boolean bare = alone && asked.equals(value);
        boolean whole = told && (asked.equals(value) || asked.equals(join(value, noun)));
        boolean called = told && asked.equals(join(join(tokens(fact.word()), value), noun));
        if (bare || whole || called) {
          return Optional.of(new MaterialLookup.OfFact(fact, one.getValue()));
        }
      }
    }
    return Optional.empty();
  }

  private static List<String> join(List<String> some, List<String> others) {
    List<String> all = new ArrayList<>(some);
    all.addAll(others);
    return all;
  }

  /** All words for the values of a choice, each with its value. */
  private static Map<String, String> valued(FactDefinition fact) {
    Map<String, String> values = new LinkedHashMap<>();
    fact.of().forEach(one -> values.put(one, one));
    values.putAll(fact.also());
    return values;
  }

  /** What is left of words without others that stand together in them; empty if they do not. */
  private static Optional<List<String>> without(List<String> words, List<String> others) {
    for (int from = 0; from + others.size() <= words.size(); from++) {
      if (words.subList(from, from + others.size()).equals(others)) {
        return Optional.of(
            join(words.subList(0, from), words.subList(from + others.size(), words.size())));
      }
    }
    return Optional.empty();
  }

  private static List<String> tokens(String words) {
    return Arrays.asList(plain(words).split(" "));
  }

  /** Words as they are compared: small, without marks, and in the singular. */
  static String plain(String words) {
    String plain =
        words.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", " ").strip().replaceAll(" +", " ");
    return plain.endsWith("s") && !plain.endsWith("ss")
        ? plain.substring(0, plain.length() - 1)
        : plain;
  }
}
