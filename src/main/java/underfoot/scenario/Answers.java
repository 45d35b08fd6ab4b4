package underfoot.scenario;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underfoot.quantity.NotAQuantity;
import underfoot.quantity.Quantity;
import underfoot.quantity.Words;

/**
 * What a person has said of a floor so far, fact by fact, as a scenario would write it. It is never
 * changed: saying more makes new answers. Every one of them was checked by the reader of scenario
 * files, alone and together with the others.
 */
public final class Answers {
  /** What is written for a fact that is not known. */
  public static final String UNKNOWN = "unknown";

  static final String NONE = "none";

  /** Entries of a list are kept by their names, one a line. */
  static final String BETWEEN_NAMES = "\n";

  private static final Pattern RECTANGLE =
      Pattern.compile("(.+?)\\s*(?:\\bx\\b|×|\\bby\\b|\\*)\\s*(.+)", Pattern.CASE_INSENSITIVE);
  private static final Pattern BARE = Pattern.compile("-?[0-9]*\\.?[0-9]+");

  private final FactBook book;
  private final Map<String, String> said;
  private final Scenario scenario;

  private Answers(FactBook book, Map<String, String> said, Scenario scenario) {
    this.book = book;
    this.said = said;
    this.scenario = scenario;
  }

  /** Nothing said yet. */
  public static Answers none(FactBook book) {
    try {
      return new Answers(book, Map.of(), read(book, Map.of()));
    } catch (ScenarioFaults e) {
      throw new IllegalStateException("nothing at all contradicts itself", e);
    }
  }

  /**
   * What a scenario file says, which may be unfinished.
   *
   * @param book what may be said
   * @param name the file's name, for messages
   * @param content its bytes
   * @throws ScenarioFaults if anything is wrong with what it does say
   */
  public static Answers of(FactBook book, String name, byte[] content) throws ScenarioFaults {
    Scenario scenario = new ScenarioReader(book).readUnfinished(name, content);
    Map<String, String> said = new LinkedHashMap<>();
    for (StatedFact given : scenario.givens()) {
      FactDefinition fact = given.definition();
      boolean isName = fact.ofEntries() && fact.word().equals("name");
      if (!given.said() || isName) {
        continue;
      }
      String id = new Place(fact, given.about()).id();
      said.put(id, given.known() ? written(scenario, given) : given.text());
    }
    said.putAll(ofZones(scenario, YamlTree.read(name, content, (int) book.limit("largest-file"))));
    return new Answers(book, said, read(book, said));
  }

  /**
   * What a file says of its zones and nobody is asked: each is a floor of its own, and keeps its
   * corners and what it says under the keys of a floor.
   */
  private static Map<String, String> ofZones(Scenario scenario, Node root) {
    Map<String, String> kept = new LinkedHashMap<>();
    if (root instanceof Node.Keys keys && keys.get(ZoneReader.ZONES) instanceof Node.Items items) {
      List<String> names = scenario.entries(ZoneReader.LIST);
      for (int i = 0; i < names.size(); i++) {
        if (items.items().get(i) instanceof Node.Keys zone) {
          ofZone(scenario.book(), names.get(i), zone, kept);
        }
      }
    }
    return kept;
  }

  private static void ofZone(FactBook book, String name, Node.Keys zone, Map<String, String> kept) {
    List<String> more = new ArrayList<>();
    for (Node.Entry entry : zone.entries()) {
      Optional<FactDefinition> asked =
          book.definitions().stream()
              .filter(fact -> fact.list().equals(ZoneReader.LIST))
              .filter(fact -> Words.alike(fact.word()).equals(Words.alike(entry.key())))
              .findFirst();
      String text = FlowText.of(entry.value());
      if (asked.isEmpty()) {
        more.add(AnswersYaml.quoted(entry.key()) + ": " + text);
      } else if (asked.get().kind() == Kind.POINTS) {
        kept.put(new Place(asked.get(), name).id(), text);
      }
    }
    if (!more.isEmpty()) {
      kept.put(besides(ZoneReader.LIST, name), String.join(BETWEEN_NAMES, more));
    }
  }

  /** Under what is kept, line by line, what an entry of a list says and nobody is asked. */
  static String besides(String list, String name) {
    return list + '@' + name;
  }

  private static String written(Scenario scenario, StatedFact given) {
    return switch (given.definition().kind()) {
      case LIST -> {
        List<String> names = scenario.entries(given.key() + "[]");
        yield names.isEmpty() ? NONE : String.join(BETWEEN_NAMES, names);
      }
      case POINTS -> {
        List<String> corners = new ArrayList<>();
        scenario.outline().forEach(p -> corners.add("[" + mm(p.x()) + ", " + mm(p.y()) + "]"));
        yield "[" + String.join(", ", corners) + "]";
      }
      case READINGS -> {
        List<String> spots = new ArrayList<>();
        scenario
            .readings()
            .forEach(r -> spots.add("[" + mm(r.x()) + ", " + mm(r.y()) + ", " + mm(r.z()) + "]"));
        yield "[" + String.join(", ", spots) + "]";
      }
      default -> given.text();
    };
  }

  private static String mm(double length) {
    return length == Math.rint(length)
        ? String.format(Locale.ROOT, "%.0f mm", length)
        : String.format(Locale.ROOT, "%s mm", Math.round(length * 1000) / 1000.0);
  }

  /** What may be said. */
  public FactBook book() {
    return book;
  }

  /** The floor as said so far; required facts may be missing. */
  public Scenario scenario() {
    return scenario;
  }

  /** What was said of each place, by {@link Place#id()}. */
  public Map<String, String> said() {
    return Collections.unmodifiableMap(said);
  }

  /** Whether the place was answered, be it with "unknown". */
  public boolean has(Place place) {
    return said.containsKey(place.id());
  }

  /** Whether every required fact is there, so that the floor can be thought through. */
  public boolean complete() {
    return missing().isEmpty();
  }

  /** The required facts that are not known yet, in the order of the facts files. */
  public List<Place> missing() {
    List<Place> missing = new ArrayList<>();
    for (FactDefinition fact : book.definitions()) {
      if (fact.required() && !fact.ofEntries() && !known(fact.key()) && !isSaidOtherwise(fact)) {
        missing.add(new Place(fact, ""));
      }
    }
    return missing;
  }

  /**
   * Whether the same was said in another way, as a deck is by the layers of the floor: then it is
   * neither missing nor asked for.
   */
  public boolean isSaidOtherwise(FactDefinition fact) {
    return known(fact.insteadOfIt())
        || book.definitions().stream()
            .anyMatch(other -> other.insteadOfIt().equals(fact.key()) && known(other.key()));
  }

  private boolean known(String key) {
    return scenario.find(key).map(StatedFact::known).orElse(false);
  }

  /** Every place there is to ask about: for each entry of a list its facts follow the list. */
  public List<Place> places() {
    List<Place> places = new ArrayList<>();
    for (FactDefinition fact : book.definitions()) {
      if (!fact.ofEntries()) {
        places.add(new Place(fact, ""));
      } else if (!fact.word().equals("name")) {
        for (String entry : scenario.entries(fact.list())) {
          places.add(new Place(fact, entry));
        }
      }
    }
    return places;
  }

  /**
   * These answers and one more, or one in another's place.
   *
   * @param place what is answered
   * @param text what was said, in a person's words: a value as a scenario writes it, {@code 3.6 m x
   *     2.4 m} for a rectangular room, names with commas between for a list
   * @return the new answers
   * @throws ScenarioFaults if it is no answer, or contradicts another
   */
  public Answers with(Place place, String text) throws ScenarioFaults {
    Map<String, String> more = new LinkedHashMap<>(said);
    more.put(place.id(), meant(place.fact(), text));
    return of(more);
  }

  /**
   * These answers and, as a saved file has it, what an entry of a list says that nobody is asked.
   *
   * @param id the name it is kept under in {@link #said()}
   * @param text what is kept
   * @return the new answers; these, if nothing is kept under such a name
   * @throws ScenarioFaults if it is nothing a floor can say
   */
  public Answers keeping(String id, String text) throws ScenarioFaults {
    boolean isKept =
        scenario.entries(ZoneReader.LIST).stream()
            .anyMatch(name -> id.equals(besides(ZoneReader.LIST, name)));
    if (!isKept) {
      return this;
    }
    Map<String, String> more = new LinkedHashMap<>(said);
    more.put(id, text);
    return of(more);
  }

  /** These answers without one; the facts of a list's entries go with the list. */
  public Answers without(Place place) {
    Map<String, String> fewer = new LinkedHashMap<>(said);
    fewer.remove(place.id());
    if (place.fact().kind() == Kind.LIST) {
      fewer.keySet().removeIf(id -> id.startsWith(place.fact().key() + "[]"));
    }
    try {
      return of(fewer);
    } catch (ScenarioFaults e) {
      throw new IllegalStateException("fewer facts cannot contradict each other more", e);
    }
  }

  private Answers of(Map<String, String> all) throws ScenarioFaults {
    return new Answers(book, all, read(book, all));
  }

  /** A person's words as a scenario writes them. */
  private String meant(FactDefinition fact, String words) {
    String text = Words.squeeze(words);
    if (Values.state(text) != State.KNOWN) {
      return Values.state(text) == State.UNKNOWN ? UNKNOWN : "not applicable";
    }
    return switch (fact.kind()) {
      case LIST -> names(words, book.knownBy(fact));
      case POINTS -> corners(text);
      case READINGS -> spots(text);
      case QUANTITY -> exact(text);
      case CHOICES -> text.replaceAll("^\\[|]$", "");
      default -> text;
    };
  }

  /** What a list names; where its entries are known by what they are, each as the book calls it. */
  private static String names(String words, Optional<FactDefinition> kind) {
    Set<String> names = new LinkedHashSet<>();
    for (String name : words.split("[,;\n]")) {
      if (!name.isBlank()) {
        String squeezed = Words.squeeze(name);
        names.add(kind.map(fact -> Values.choiceOr(fact, squeezed)).orElse(squeezed));
      }
    }
    boolean none = names.size() == 1 && Set.of(NONE, "no", "0").contains(Words.alike(first(names)));
    return names.isEmpty() || none ? NONE : String.join(BETWEEN_NAMES, names);
  }

  private static String first(Set<String> names) {
    return names.iterator().next();
  }

  private static String exact(String text) {
    return text.replaceFirst("^(?i:about|roughly|around|approximately|approx\\.?|some|~)\\s*", "");
  }

  /**
   * The two sides of a thing said at once, as in {@code 600 x 300 mm}.
   *
   * @param fact what one side is
   * @param text what was said
   * @return the longer and the shorter as they were said, each with its unit; empty if the text is
   *     not of that form
   */
  public static List<String> sides(FactDefinition fact, String text) {
    List<String> sides = sides(text);
    if (sides.isEmpty()) {
      return sides;
    }
    try {
      double x = Quantity.parse(sides.get(0), fact.dimension()).value();
      double y = Quantity.parse(sides.get(1), fact.dimension()).value();
      return x >= y ? sides : List.of(sides.get(1), sides.get(0));
    } catch (NotAQuantity e) {
      return List.of();
    }
  }

  private static List<String> sides(String words) {
    String text = Words.squeeze(words);
    Matcher sides = RECTANGLE.matcher(text);
    if (text.startsWith("[") || !sides.matches()) {
      return List.of();
    }
    String y = sides.group(2).strip();
    String x = sides.group(1).strip();
    if (BARE.matcher(x).matches()) {
      // "3.6 x 2.4 m": one unit said for both.
      x = (x + ' ' + y.replaceFirst("^[-0-9./ ]+", "")).strip();
    }
    return List.of(x, y);
  }

  private static String corners(String text) {
    List<String> sides = sides(text);
    if (sides.isEmpty()) {
      return text;
    }
    String x = sides.get(0);
    String y = sides.get(1);
    return "[[0 m, 0 m], [" + x + ", 0 m], [" + x + ", " + y + "], [0 m, " + y + "]]";
  }

  private static String spots(String text) {
    if (text.startsWith("[")) {
      return text;
    }
    List<String> spots = new ArrayList<>();
    for (String spot : text.split(";")) {
      if (!spot.isBlank()) {
        spots.add("[" + spot.strip() + "]");
      }
    }
    return "[" + String.join(", ", spots) + "]";
  }

  private static Scenario read(FactBook book, Map<String, String> said) throws ScenarioFaults {
    String yaml = new AnswersYaml(book, said, place -> "").text();
    byte[] bytes = (yaml.isEmpty() ? "{}" : yaml).getBytes(StandardCharsets.UTF_8);
    return new ScenarioReader(book).readUnfinished("your answers", bytes);
  }

  /**
   * The scenario file that says all this, with comments.
   *
   * @param head what stands above it, a line each
   * @param comment what is written above a fact, such as how to find out what is not known; empty
   *     for nothing
   * @return YAML that reads back to the same facts
   */
  public String file(List<String> head, Function<Place, String> comment) {
    AnswersYaml yaml = new AnswersYaml(book, said, comment);
    head.forEach(line -> yaml.comment("", line));
    return yaml.text();
  }

  /** What was said of a place; empty if nothing was. */
  public Optional<String> said(Place place) {
    return Optional.ofNullable(said.get(place.id()));
  }
}
