package underfoot.scenario;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
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

  /** Parts of a room have their places in its outline. */
  private static final String ROOM_OUTLINE = "room.outline";

  /** Entries of a list are kept by their names, one a line. */
  static final String BETWEEN_NAMES = "\n";

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
      say(scenario, given, "", said);
    }
    for (Zone zone : scenario.zones()) {
      said.put(
          new Place(book.find(ZoneReader.LIST + ".outline").orElseThrow(), zone.name()).id(),
          Corners.of(zone.floor().outline()));
      for (StatedFact given : ownOf(zone, scenario)) {
        say(zone.floor(), given, zone.name(), said);
      }
    }
    return new Answers(book, said, read(book, said));
  }

  /** What a part of a room says of its own floor; a carrier told for the whole room is not its. */
  public static List<StatedFact> ownOf(Zone zone, Scenario room) {
    List<StatedFact> own = new ArrayList<>();
    for (StatedFact given : zone.floor().givens()) {
      boolean shared =
          room.find(given.key(), given.about())
              .filter(one -> one.line() == given.line() && one.column() == given.column())
              .isPresent();
      if (given.definition().isSaidByZones() && !shared) {
        own.add(given);
      }
    }
    return own;
  }

  private static void say(Scenario floor, StatedFact given, String zone, Map<String, String> said) {
    FactDefinition fact = given.definition();
    boolean isName = fact.ofEntries() && fact.word().equals("name");
    if (given.said() && !isName) {
      String id = new Place(fact, given.about(), zone).id();
      said.put(id, given.known() ? written(floor, given) : given.text());
    }
  }

  private static String written(Scenario scenario, StatedFact given) {
    return switch (given.definition().kind()) {
      case LIST -> {
        List<String> names = scenario.entries(given.key() + "[]");
        yield names.isEmpty() ? NONE : String.join(BETWEEN_NAMES, names);
      }
      case POINTS -> Corners.of(scenario.outline());
      case READINGS -> {
        List<String> spots = new ArrayList<>();
        scenario
            .readings()
            .forEach(
                r ->
                    spots.add(
                        "["
                            + Corners.mm(r.x())
                            + ", "
                            + Corners.mm(r.y())
                            + ", "
                            + Corners.mm(r.z())
                            + "]"));
        yield "[" + String.join(", ", spots) + "]";
      }
      default -> given.text();
    };
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

  /**
   * The required facts that are not known yet, in the order of the facts files; of parts of the
   * room where they lie, and then what they are.
   */
  public List<Place> missing() {
    List<Place> missing = new ArrayList<>();
    List<String> zones = scenario.entries(ZoneReader.LIST);
    for (FactDefinition fact : book.definitions()) {
      boolean placesZones = fact.key().equals(ROOM_OUTLINE) && !zones.isEmpty();
      if ((fact.required() || placesZones) && !fact.ofEntries()) {
        add(new Place(fact, ""), missing);
      }
    }
    FactDefinition corners = book.find(ZoneReader.LIST + ".outline").orElseThrow();
    for (String zone : zones) {
      if (floor(zone).isEmpty()) {
        missing.add(new Place(corners, zone));
        continue;
      }
      for (FactDefinition fact : book.definitions()) {
        if (fact.required() && fact.isSaidByZones() && !fact.ofEntries()) {
          add(new Place(fact, "", zone), missing);
        }
      }
    }
    return missing;
  }

  private void add(Place place, List<Place> missing) {
    if (!known(place, place.fact().key()) && !isSaidOtherwise(place)) {
      missing.add(place);
    }
  }

  /**
   * Whether the same was said in another way, as a deck is by the layers of the floor: then it is
   * neither missing nor asked for.
   */
  public boolean isSaidOtherwise(Place place) {
    FactDefinition fact = place.fact();
    return known(place, fact.insteadOfIt())
        || book.definitions().stream()
            .anyMatch(other -> other.insteadOfIt().equals(fact.key()) && known(place, other.key()));
  }

  /** Whether another fact of the same floor is known. */
  private boolean known(Place place, String key) {
    return floor(place.zone())
        .flatMap(floor -> floor.find(key))
        .map(StatedFact::known)
        .orElse(false);
  }

  /**
   * The floor of a part of the room, the room's own without a name; empty while it has no place.
   */
  private Optional<Scenario> floor(String zone) {
    return zone.isEmpty()
        ? Optional.of(scenario)
        : scenario.zones().stream()
            .filter(one -> one.name().equals(zone))
            .map(Zone::floor)
            .findFirst();
  }

  /**
   * Every place there is to ask about: for each entry of a list its facts follow the list, and for
   * each part of the room that has its corners what is said of its own floor follows the room.
   */
  public List<Place> places() {
    List<Place> places = new ArrayList<>();
    places(scenario, "", places);
    for (Zone zone : scenario.zones()) {
      places(zone.floor(), zone.name(), places);
    }
    return places;
  }

  private void places(Scenario floor, String zone, List<Place> places) {
    for (FactDefinition fact : book.definitions()) {
      if (!zone.isEmpty() && !fact.isSaidByZones()) {
        continue;
      }
      if (!fact.ofEntries()) {
        places.add(new Place(fact, "", zone));
      } else if (!fact.word().equals("name")) {
        for (String entry : floor.entries(fact.list())) {
          places.add(new Place(fact, entry, zone));
        }
      }
    }
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

  /** These answers without one; the facts of a list's entries go with the list. */
  public Answers without(Place place) {
    Map<String, String> fewer = new LinkedHashMap<>(said);
    fewer.remove(place.id());
    if (place.fact().kind() == Kind.LIST) {
      String entries = place.id() + "[]"; // of the same floor
      fewer.keySet().removeIf(id -> id.startsWith(entries));
    }
    if (place.fact().key().equals(ZoneReader.ZONES)) {
      fewer.keySet().removeIf(id -> id.startsWith(ZoneReader.ZONES + '['));
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
      case POINTS, RECTANGLE -> corners(fact.kind(), text);
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
    List<String> sides = Corners.sides(text);
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

  private static String corners(Kind kind, String text) {
    return Corners.placed(kind, text)
        .orElseGet(() -> kind == Kind.POINTS ? Corners.ofRoom(text) : text);
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
