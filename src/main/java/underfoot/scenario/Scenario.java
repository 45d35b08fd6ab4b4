package underfoot.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underfoot.quantity.Nearest;
import underfoot.quantity.Words;

/**
 * A floor as its scenario states it, checked and free of contradictions.
 *
 * @param file the name of the file it was read from
 * @param name the scenario's own name
 * @param practice whose guidance applies, such as {@code uk}
 * @param givens what is said of every defined fact, in the order of the facts files: known, unknown
 *     or not applicable. A fact of a list's entries stands once for each entry; an outline,
 *     readings and lists stand as how many there are
 * @param outline the room's corners in millimetres, in the order given, the first not repeated;
 *     empty if unknown
 * @param readings the spot heights in millimetres; empty if unknown
 * @param zones parts of the room where the floor is otherwise; mostly empty
 * @param book what may be said in a scenario
 */
public record Scenario(
    String file,
    String name,
    String practice,
    List<StatedFact> givens,
    List<Point> outline,
    List<Reading> readings,
    List<Zone> zones,
    FactBook book) {

  /** Takes copies of the lists. */
  public Scenario {
    givens = Givens.of(givens);
    outline = List.copyOf(outline);
    readings = List.copyOf(readings);
    zones = List.copyOf(zones);
  }

  /** This room with its zones, and the readings that lie on none of them. */
  Scenario with(List<Zone> parts, List<Reading> outside, StatedFact measured) {
    return new Scenario(
        file, name, practice, measured(givens, measured), outline, outside, parts, book);
  }

  /** This part of a room with those of its doors and readings that stand on it. */
  Scenario standingOn(Set<String> doors, List<Reading> here, StatedFact measured) {
    List<StatedFact> kept =
        givens.stream()
            .filter(
                given ->
                    !given.definition().list().equals("room.doors[]")
                        || doors.contains(given.about()))
            .toList();
    return new Scenario(
        file, name, practice, measured(kept, measured), outline, here, List.of(), book);
  }

  /** What is said, with what is said of the readings in place of what was said of them. */
  private static List<StatedFact> measured(List<StatedFact> givens, StatedFact measured) {
    return givens.stream()
        .map(given -> given.key().equals(measured.key()) ? measured : given)
        .toList();
  }

  /**
   * What is said of a fact of the floor as a whole.
   *
   * @param key the fact's key, or the end of it if only one fact ends so
   * @return what is said; empty if there is no such fact, or it belongs to the entries of a list
   */
  public Optional<StatedFact> find(String key) {
    return find(key, "");
  }

  /**
   * What is said of a fact of one entry of a list.
   *
   * @param key the fact's key, such as {@code room.doors[].gap under leaf}, or the end of it
   * @param about the entry, such as {@code kitchen door}; empty for a fact of the floor as a whole
   * @return what is said; empty if there is no such fact or entry
   */
  public Optional<StatedFact> find(String key, String about) {
    StatedFact given = Givens.of(givens).find(key, about);
    if (given != null) {
      return Optional.of(given);
    }
    Optional<FactDefinition> fact = book.find(key);
    if (fact.isEmpty() || fact.get().key().equals(key)) {
      return Optional.empty();
    }
    return find(fact.get().key(), about);
  }

  /**
   * The entries of a list.
   *
   * @param list the list, such as {@code room.doors[]}
   * @return their names in the order of the file; {@code door 1} and so on for those without
   */
  public List<String> entries(String list) {
    Set<String> names = new LinkedHashSet<>();
    for (StatedFact given : givens) {
      if (given.definition().list().equals(list)) {
        names.add(given.about());
      }
    }
    return List.copyOf(names);
  }

  /**
   * This scenario with one fact changed, checked as a file would be. Other facts stay as they are.
   *
   * @param key the fact's key, or the end of it if only one fact ends so
   * @param about the entry of a list it belongs to; may be empty if the list has one entry, and for
   *     a fact of the floor as a whole
   * @param valueText the new value as a scenario would write it, such as {@code 3.4 m} or {@code
   *     unknown}
   * @return the changed scenario
   * @throws ScenarioFaults if there is no such fact or entry, the value is none of it, or it
   *     contradicts another
   */
  public Scenario with(String key, String about, String valueText) throws ScenarioFaults {
    FactDefinition fact = book.find(key).orElse(null);
    if (fact == null) {
      String near = nearest(key);
      throw fault(
          Words.quote(key) + " is not one fact of a scenario",
          near.isEmpty() ? "write the whole key" : "write: " + near);
    }
    String entry = entry(fact, about);
    Scenario changed = new Gatherer(book, file).change(this, fact, entry, valueText);
    return changed.withZones(
        zone ->
            fact.holdsInEachZone() || ZoneReader.shares(zone.floor(), fact, entry)
                ? zone.floor().with(fact.key(), entry, valueText)
                : zone.floor());
  }

  /**
   * The same with a fact of a place changed, which may be one of a part of the room.
   *
   * @param place the place
   * @param valueText the new value as a scenario would write it
   * @return the changed scenario
   * @throws ScenarioFaults if there is no such entry, the value is none of it, or it contradicts
   *     another
   */
  public Scenario with(Place place, String valueText) throws ScenarioFaults {
    String key = place.fact().key();
    return place.zone().isEmpty()
        ? with(key, place.about(), valueText)
        : withZones(
            zone ->
                zone.name().equals(place.zone())
                    ? zone.floor().with(key, place.about(), valueText)
                    : zone.floor());
  }

  /** A change of the floor of a part that may be refused. */
  private interface Change {
    Scenario of(Zone zone) throws ScenarioFaults;
  }

  /** This room with its zones changed. */
  private Scenario withZones(Change change) throws ScenarioFaults {
    if (zones.isEmpty()) {
      return this;
    }
    List<Zone> all = new ArrayList<>();
    for (Zone zone : zones) {
      all.add(new Zone(zone.name(), change.of(zone)));
    }
    return new Scenario(file, name, practice, givens, outline, readings, all, book);
  }

  /**
   * This scenario with what another says of one fact, checked as a file would be. For a list all
   * its entries are taken over.
   *
   * @param other the scenario it is taken from
   * @param fact the fact
   * @param about the entry it belongs to; empty for a fact of the floor as a whole, and for a list
   * @return the changed scenario
   * @throws ScenarioFaults if it contradicts what this scenario says
   */
  public Scenario taking(Scenario other, FactDefinition fact, String about) throws ScenarioFaults {
    return new Gatherer(book, file).graft(this, other, fact, about);
  }

  /** The whole key whose end, of as many parts, is most like a key that is none; may be empty. */
  private String nearest(String key) {
    int parts = key.split("\\.").length;
    Map<String, String> byEnd = new LinkedHashMap<>();
    for (FactDefinition fact : book.definitions()) {
      String[] all = fact.key().split("\\.");
      List<String> end = List.of(all).subList(Math.max(0, all.length - parts), all.length);
      byEnd.putIfAbsent(String.join(".", end), fact.key());
    }
    return byEnd.getOrDefault(Nearest.to(key, List.copyOf(byEnd.keySet())), "");
  }

  private String entry(FactDefinition fact, String about) throws ScenarioFaults {
    if (!fact.ofEntries()) {
      if (about.isEmpty()) {
        return "";
      }
      throw fault(fact.key() + " is a fact of the whole floor, not of " + Words.quote(about), "");
    }
    List<String> entries = entries(fact.list());
    if (about.isEmpty() && entries.size() == 1) {
      return entries.get(0);
    }
    List<String> alike = new ArrayList<>(entries);
    alike.removeIf(name -> !Words.alike(name).equals(Words.alike(about)));
    if (alike.size() == 1) {
      return alike.get(0);
    }
    throw fault(
        "the scenario has no " + fact.list().replace("[]", "") + " called " + Words.quote(about),
        entries.isEmpty() ? "" : "write one of: " + String.join(", ", entries));
  }

  private ScenarioFaults fault(String what, String how) {
    return new ScenarioFaults(List.of(new Fault(file, 0, 0, what, how)));
  }

  @Override
  public String toString() {
    return "scenario " + name;
  }
}
