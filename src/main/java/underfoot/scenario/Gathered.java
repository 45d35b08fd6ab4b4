package underfoot.scenario;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What was gathered of one floor so far. */
final class Gathered {
  private final FactBook book;
  private final String file;

  /** What is said, by key and entry. */
  private final Map<String, StatedFact> said = new HashMap<>();

  /** The entries of each list, by the list's path, such as {@code room.doors[]}. */
  private final Map<String, List<String>> entries = new HashMap<>();

  private List<Point> outline = List.of();
  private List<Reading> readings = List.of();
  private List<Zone> zones = List.of();
  private List<Node> outlinePlaces = List.of();
  private List<Node> readingPlaces = List.of();

  /** Whether outline and readings are those of a scenario that has been looked through already. */
  private boolean asBefore;

  Gathered(FactBook book, String file) {
    this.book = book;
    this.file = file;
  }

  /** Begins with all that a scenario says. */
  void begin(Scenario from) {
    Map<String, Set<String>> names = new HashMap<>();
    for (StatedFact given : from.givens()) {
      said.put(id(given.key(), given.about()), given);
      if (given.definition().ofEntries()) {
        names
            .computeIfAbsent(given.definition().list(), list -> new LinkedHashSet<>())
            .add(given.about());
      }
    }
    names.forEach((list, all) -> entries.put(list, new ArrayList<>(all)));
    outline = from.outline();
    readings = from.readings();
    zones = from.zones();
    asBefore = true;
  }

  /** Takes over what another scenario says of one fact, of one entry, or of a whole list. */
  void graft(Scenario donor, FactDefinition fact, String about) {
    forget(fact, about);
    donor.find(fact.key(), about).ifPresent(given -> said.put(id(given.key(), about), given));
    switch (fact.kind()) {
      case POINTS -> outline(donor.outline(), List.of());
      case READINGS -> readings(donor.readings(), List.of());
      case LIST -> {
        String list = fact.key() + "[]";
        entries.put(list, new ArrayList<>(donor.entries(list)));
        for (StatedFact given : donor.givens()) {
          if (given.definition().list().equals(list)) {
            say(given);
          }
        }
      }
      default -> {
        // The fact itself is all there is.
      }
    }
  }

  /** Takes back what is said of a fact, of a list with all its entries. */
  void forget(FactDefinition fact, String about) {
    said.remove(id(fact.key(), about));
    if (fact.kind() == Kind.POINTS) {
      outline(List.of(), List.of());
    } else if (fact.kind() == Kind.READINGS) {
      readings(List.of(), List.of());
    } else if (fact.kind() == Kind.LIST) {
      String list = fact.key() + "[]";
      entries.remove(list);
      zones = fact.key().equals(ZoneReader.ZONES) ? List.of() : zones;
      said.values().removeIf(given -> given.definition().list().equals(list));
    }
  }

  void say(StatedFact given) {
    said.put(id(given.key(), given.about()), given);
  }

  /** What is said of a fact of the floor as a whole; null if nothing is. */
  StatedFact of(String key) {
    return said.get(id(key, ""));
  }

  boolean says(String key, String about) {
    return said.containsKey(id(key, about));
  }

  /** The names of a list's entries. */
  List<String> entries(String list) {
    return entries.getOrDefault(list, List.of());
  }

  /** The names of a list's entries, to be added to. */
  List<String> named(String list) {
    return entries.computeIfAbsent(list, key -> new ArrayList<>());
  }

  void outline(List<Point> corners, List<Node> places) {
    outline = corners;
    outlinePlaces = places;
    asBefore = false;
  }

  void readings(List<Reading> spots, List<Node> places) {
    readings = spots;
    readingPlaces = places;
    asBefore = false;
  }

  /** The scenario, if all that is said of it goes together. */
  Scenario scenario(List<Fault> faults) throws ScenarioFaults {
    List<StatedFact> all = new ArrayList<>();
    for (FactDefinition fact : book.definitions()) {
      if (!fact.ofEntries()) {
        all.add(given(fact, ""));
      }
    }
    for (FactDefinition fact : book.definitions()) {
      if (fact.ofEntries()) {
        for (String name : entries(fact.list())) {
          all.add(given(fact, name));
        }
      }
    }
    Givens givens = Givens.of(all);
    Consistency consistency = new Consistency(book, file, givens, faults);
    consistency.check(outline, outlinePlaces);
    if (!asBefore) {
      consistency.levels(outline, readings, readingPlaces);
    }
    if (!faults.isEmpty()) {
      throw new ScenarioFaults(faults);
    }
    return new Scenario(
        file, textOf("scenario"), textOf("practice"), givens, outline, readings, zones, book);
  }

  private StatedFact given(FactDefinition fact, String about) {
    StatedFact given = said.get(id(fact.key(), about));
    return given != null ? given : new StatedFact(fact, about, State.UNKNOWN, false, null, 0, 0);
  }

  private String textOf(String key) {
    StatedFact given = said.get(id(key, ""));
    return given == null ? "" : given.text();
  }

  static String id(String key, String about) {
    return key + '\n' + about;
  }
}
