package underfoot.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import underfoot.quantity.Words;

/**
 * Reads the parts of a room where the floor is otherwise. Each is read as a floor of its own: it
 * shares use, tile and site with the room, has the readings and doors that lie on it, and says of
 * its own floor what {@code subfloor} says of the room's. The money is the whole room's.
 */
final class ZoneReader {
  static final String ZONES = "zones";
  static final String LIST = ZONES + "[]";
  private static final String OUTLINE = "outline";
  private static final String ROOM = "room";
  static final String SUBFLOOR = "subfloor";
  private static final String LEVELS = "levels";
  private static final String READINGS = "readings";
  private static final String DOORS = "doors";
  private static final String ITEMS = "items";
  private static final String BUDGET = "budget";

  /** What is told of a zone itself; all else is told of the floor there. */
  private static final Set<String> OWN = Set.of("name", "surface");

  /** What carries a floor; a part with a carrier of its own shares nothing of what lies there. */
  private static final Set<String> CARRIERS = Set.of("carried by", "deck");

  /** What stands in the room is weighed once, on the room's own floor. */
  private static final Set<String> ROOM_ONLY = Set.of("heavy items", "area", OUTLINE, DOORS);

  /** Where a door stands is told by the walls of the room. */
  private static final Set<String> PLACE_OF_DOOR = Set.of("wall", "from");

  private final FactBook book;
  private final String file;
  private final Node.Keys root;
  private final Scenario room;
  private final Set<Fault> faults = new LinkedHashSet<>();
  private final double slack;

  /** Whether what is missing may still be said: a part without corners is none yet. */
  private final boolean unfinished;

  ZoneReader(FactBook book, String file, Node.Keys root, Scenario room, boolean unfinished) {
    this.unfinished = unfinished;
    this.book = book;
    this.file = file;
    this.root = root;
    this.room = room;
    this.slack = book.limit("reading-outside-outline");
  }

  /** What an entry says of the zone itself. */
  static Node.Keys ofZoneItself(Node.Keys zone) {
    return new Node.Keys(
        zone.entries().stream().filter(entry -> OWN.contains(Words.alike(entry.key()))).toList(),
        zone.line(),
        zone.column());
  }

  /**
   * The room with its zones.
   *
   * @throws ScenarioFaults if a zone is at fault, lies outside the room, or two lie on each other
   */
  Scenario read() throws ScenarioFaults {
    if (!(root.get(ZONES) instanceof Node.Items items) || items.items().isEmpty()) {
      return room;
    }
    if (unfinished && room.outline().isEmpty()) {
      return room;
    }
    if (room.outline().isEmpty()) {
      fault(items, "zones need the outline of the room", "write room: {outline: [[0 m, 0 m], …]}");
      throw new ScenarioFaults(List.copyOf(faults));
    }
    List<Zone> zones = new ArrayList<>();
    List<Node> told = new ArrayList<>();
    List<String> names = room.entries(LIST);
    for (int i = 0; i < names.size(); i++) {
      boolean placed = !unfinished || hasCorners(items.items().get(i));
      if (placed && items.items().get(i) instanceof Node.Keys keys) {
        Scenario floor = floor(keys, names.get(i));
        if (floor != null) {
          zones.add(new Zone(names.get(i), floor));
          told.add(keys);
        }
      }
    }
    if (faults.isEmpty()) {
      places(items, told, zones);
    }
    if (!faults.isEmpty()) {
      throw new ScenarioFaults(List.copyOf(faults));
    }
    List<Reading> outside = outsideOf(zones);
    return room.with(zones, outside, measured(outside));
  }

  private static boolean hasCorners(Node zone) {
    return zone instanceof Node.Keys keys && keys.get(OUTLINE) instanceof Node.Items;
  }

  /** Whether a part of the room says of a door what the room says of it: it stands on the part. */
  static boolean shares(Scenario floor, FactDefinition fact, String entry) {
    return fact.list().equals(ROOM + '.' + DOORS + "[]")
        && !PLACE_OF_DOOR.contains(fact.word())
        && floor.entries(fact.list()).contains(entry);
  }

  private Scenario floor(Node.Keys zone, String name) {
    Node outline = zone.get(OUTLINE);
    if (!(outline instanceof Node.Items corners)) {
      fault(
          outline == null ? zone : outline,
          "the outline of " + Words.quote(name) + " is missing",
          Values.example(book.find(LIST + "." + OUTLINE).orElseThrow()));
      return null;
    }
    List<Node.Entry> whole = new ArrayList<>();
    List<Node.Entry> carriers = new ArrayList<>();
    for (Node.Entry entry : root.entries()) {
      switch (Words.alike(entry.key())) {
        case ZONES, ITEMS, BUDGET -> {
          // the parts have no parts, what stands in the room is weighed once, its money counted
          // once
        }
        case ROOM -> whole.add(with(entry, room(entry.value(), corners, outline, zone)));
        case LEVELS -> whole.add(with(entry, without(entry.value(), Set.of(READINGS))));
        case SUBFLOOR -> carriers.addAll(carriers(entry.value()));
        default -> whole.add(entry);
      }
    }
    whole.add(new Node.Entry(SUBFLOOR, zone.line(), zone.column(), subfloor(zone, carriers)));
    try {
      Gatherer gatherer = new Gatherer(book, file);
      Node.Keys all = new Node.Keys(whole, root.line(), root.column());
      Scenario read = unfinished ? gatherer.unfinished(all) : gatherer.scenario(all);
      List<Reading> here = readingsOn(read.outline());
      return read.standingOn(doorsOf(read.outline()), here, measured(here));
    } catch (ScenarioFaults e) {
      faults.addAll(e.faults());
      return null;
    }
  }

  private static Node.Entry with(Node.Entry entry, Node value) {
    return new Node.Entry(entry.key(), entry.line(), entry.column(), value);
  }

  private static Node without(Node node, Set<String> keys) {
    return node instanceof Node.Keys all
        ? new Node.Keys(
            all.entries().stream()
                .filter(entry -> !keys.contains(Words.alike(entry.key())))
                .toList(),
            all.line(),
            all.column())
        : node;
  }

  /** The room of a zone: the corners are its own, and doors are kept where they stand on it. */
  private Node room(Node node, Node.Items corners, Node at, Node.Keys zone) {
    if (!(without(node, ROOM_ONLY) instanceof Node.Keys rest)) {
      return node;
    }
    List<Node.Entry> entries = new ArrayList<>(rest.entries());
    entries.add(new Node.Entry(OUTLINE, at.line(), at.column(), corners));
    if (node instanceof Node.Keys all && all.get(DOORS) instanceof Node.Items doors) {
      List<Node> kept = new ArrayList<>();
      for (Node door : doors.items()) {
        kept.add(without(door, PLACE_OF_DOOR));
      }
      entries.add(
          new Node.Entry(
              DOORS,
              doors.line(),
              doors.column(),
              new Node.Items(kept, doors.line(), doors.column())));
    }
    return new Node.Keys(entries, zone.line(), zone.column());
  }

  private static List<Node.Entry> carriers(Node subfloor) {
    return subfloor instanceof Node.Keys keys
        ? keys.entries().stream()
            .filter(entry -> Words.alike(entry.key()).equals("carried by"))
            .toList()
        : List.of();
  }

  private static Node.Keys subfloor(Node.Keys zone, List<Node.Entry> carriers) {
    List<Node.Entry> own = new ArrayList<>();
    boolean carried = false;
    for (Node.Entry entry : zone.entries()) {
      String key = Words.alike(entry.key());
      if (!OWN.contains(key) && !key.equals(OUTLINE)) {
        own.add(entry);
        carried |= CARRIERS.contains(key);
      }
    }
    if (!carried) {
      own.addAll(carriers);
    }
    return new Node.Keys(own, zone.line(), zone.column());
  }

  // --- where they lie

  private void places(Node.Items items, List<Node> told, List<Zone> zones) {
    Polygon whole = Outline.polygon(room.outline());
    Geometry room = whole.buffer(slack);
    double covered = 0;
    for (int i = 0; i < zones.size(); i++) {
      Polygon zone = Outline.polygon(zones.get(i).floor().outline());
      Node at = told.get(i);
      String name = Words.quote(zones.get(i).name());
      if (!room.covers(zone)) {
        fault(
            at,
            name + " reaches outside the room",
            "check its corners: they are measured from the same corner as those of the room");
      }
      for (int j = 0; j < i; j++) {
        Polygon other = Outline.polygon(zones.get(j).floor().outline());
        if (zone.intersection(other).getArea() > slack * slack) {
          fault(
              at,
              name + " and " + Words.quote(zones.get(j).name()) + " lie on each other",
              "check the corners of both");
        }
      }
      covered += zone.getArea();
    }
    if (faults.isEmpty() && whole.getArea() - covered < slack * slack) {
      fault(
          items,
          "the zones cover the whole room",
          "write the largest of them under subfloor, and only the others as zones");
    }
  }

  /** Names of the doors that stand on a zone: the middle of the opening lies at its edge. */
  private Set<String> doorsOf(List<Point> zone) {
    Set<String> names = new HashSet<>();
    List<Point> corners = room.outline();
    Geometry part = Outline.polygon(zone);
    for (String door : room.entries("room.doors[]")) {
      double wall = number("room.doors[].wall", door);
      double from = number("room.doors[].from", door);
      double width = number("room.doors[].width", door);
      if (Double.isNaN(wall) || Double.isNaN(from) || Double.isNaN(width)) {
        continue;
      }
      Point a = corners.get((int) wall);
      Point b = corners.get(((int) wall + 1) % corners.size());
      double along = (from + width / 2) / Outline.distance(a, b);
      Coordinate middle =
          new Coordinate(a.x() + along * (b.x() - a.x()), a.y() + along * (b.y() - a.y()));
      if (part.distance(part.getFactory().createPoint(middle)) <= slack) {
        names.add(door);
      }
    }
    return names;
  }

  private double number(String key, String about) {
    return room.find(key, about).map(StatedFact::number).orElse(Double.NaN);
  }

  /** What is said of the readings of a part: how many there are, if there are any. */
  private StatedFact measured(List<Reading> here) {
    StatedFact all = room.find(LEVELS + "." + READINGS).orElseThrow();
    if (!all.known() || here.size() == room.readings().size()) {
      return all;
    }
    return here.isEmpty()
        ? new StatedFact(all.definition(), "", State.UNKNOWN, false, null, 0, 0)
        : new StatedFact(
            all.definition(),
            "",
            State.KNOWN,
            true,
            Tuples.many(here.size()),
            all.line(),
            all.column());
  }

  private List<Reading> readingsOn(List<Point> zone) {
    Predicate<Reading> on = Outline.holding(zone);
    return room.readings().stream().filter(on).toList();
  }

  private List<Reading> outsideOf(List<Zone> zones) {
    Predicate<Reading> onOne =
        zones.stream()
            .map(zone -> Outline.holding(zone.floor().outline()))
            .reduce(one -> false, Predicate::or);
    return room.readings().stream().filter(onOne.negate()).toList();
  }

  private void fault(Spot at, String what, String how) {
    faults.add(Fault.at(file, at, what, how));
  }
}
