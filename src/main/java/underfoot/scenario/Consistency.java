package underfoot.scenario;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import underfoot.quantity.Words;

/** Finds statements of one scenario that cannot all be true. */
final class Consistency {
  private static final String WALL = "room.doors[].wall";
  private static final String FROM = "room.doors[].from";
  private static final String WIDTH = "room.doors[].width";
  private static final String AREA = "room.area";
  private static final Node NOWHERE = new Node.Scalar("", 0, 0);

  private final FactBook book;
  private final String file;
  private final Givens givens;
  private final Map<String, List<StatedFact>> byKey = new HashMap<>();
  private final List<Fault> faults;

  Consistency(FactBook book, String file, Givens givens, List<Fault> faults) {
    this.book = book;
    this.file = file;
    this.faults = faults;
    this.givens = givens;
    for (StatedFact given : givens) {
      byKey.computeIfAbsent(given.key(), key -> new ArrayList<>()).add(given);
    }
  }

  /** Looks at what was stated, and at the outline. */
  void check(List<Point> outline, List<Node> outlinePlaces) {
    for (Contradiction contradiction : book.contradictions()) {
      contradiction(contradiction);
    }
    if (!outline.isEmpty()) {
      size(outline, outlinePlaces);
      area(outline);
      doors(outline);
    }
  }

  /** Looks at readings, which hang on nothing but the outline. */
  void levels(List<Point> outline, List<Reading> readings, List<Node> readingPlaces) {
    readings(outline, readings, readingPlaces);
    slope(readings, readingPlaces);
  }

  private List<StatedFact> all(String key) {
    return byKey.getOrDefault(key, List.of());
  }

  private void contradiction(Contradiction contradiction) {
    for (StatedFact first : all(contradiction.first())) {
      for (StatedFact second : beside(first, contradiction.second())) {
        if (contradiction.holds(first, second)) {
          boolean inOrder =
              first.line() < second.line()
                  || (first.line() == second.line() && first.column() <= second.column());
          StatedFact earlier = inOrder ? first : second;
          StatedFact later = inOrder ? second : first;
          fault(
              later,
              name(later)
                  + ": "
                  + later.text()
                  + " does not go with "
                  + name(earlier)
                  + ": "
                  + earlier.text()
                  + (earlier.line() > 0 ? " (line " + earlier.line() + ")" : ""),
              contradiction.says());
        }
      }
    }
  }

  /** What is said under a key of the same entry, or of all where it is another list's. */
  private List<StatedFact> beside(StatedFact first, String key) {
    List<StatedFact> all = all(key);
    if (all.isEmpty() || !all.get(0).definition().list().equals(first.definition().list())) {
      return all;
    }
    StatedFact same = givens.find(key, first.about());
    return same == null ? List.of() : List.of(same);
  }

  private static String name(StatedFact given) {
    return given.called() + (given.about().isEmpty() ? "" : " of " + Words.quote(given.about()));
  }

  private static double extent(DoubleStream along) {
    DoubleSummaryStatistics all = along.summaryStatistics();
    return all.getMax() - all.getMin();
  }

  private void size(List<Point> outline, List<Node> places) {
    double enclosed = Math.abs(Outline.area(outline)) / 1e6;
    double narrow =
        Math.min(
            extent(outline.stream().mapToDouble(Point::x)),
            extent(outline.stream().mapToDouble(Point::y)));
    if (enclosed < book.limit("smallest-room")) {
      tooSmall("outline encloses %.0f mm2, which is smaller than any room", enclosed * 1e6, places);
    } else if (narrow < book.limit("narrowest-room")) {
      tooSmall("outline is only %.0f mm wide, which is narrower than any room", narrow, places);
    }
  }

  private void tooSmall(String what, double number, List<Node> places) {
    Node at = places.isEmpty() ? NOWHERE : places.get(0);
    faults.add(
        new Fault(
            file,
            at.line(),
            at.column(),
            String.format(Locale.ROOT, what, number),
            "check the units of its corners: 4 m is not 4 mm"));
  }

  /** Whether the floor is so steep that it is a ramp, or a slip of the pen. */
  private void slope(List<Reading> readings, List<Node> places) {
    if (readings.size() < 2) {
      return;
    }
    int high = 0;
    int low = 0;
    double left = Double.MAX_VALUE;
    double right = -Double.MAX_VALUE;
    double near = Double.MAX_VALUE;
    double far = -Double.MAX_VALUE;
    for (int i = 0; i < readings.size(); i++) {
      Reading one = readings.get(i);
      high = one.z() > readings.get(high).z() ? i : high;
      low = one.z() < readings.get(low).z() ? i : low;
      left = Math.min(left, one.x());
      right = Math.max(right, one.x());
      near = Math.min(near, one.y());
      far = Math.max(far, one.y());
    }
    double rise = readings.get(high).z() - readings.get(low).z();
    double reach = Math.hypot(right - left, far - near);
    if (rise > book.limit("hollow-or-step") && rise > reach * book.limit("steepest-floor") / 100) {
      Node at = Math.max(high, low) < places.size() ? places.get(Math.max(high, low)) : NOWHERE;
      faults.add(
          new Fault(
              file,
              at.line(),
              at.column(),
              String.format(
                  Locale.ROOT,
                  "readings: %s mm and %s mm differ by %s mm in a room whose readings reach %.1f m",
                  plain(readings.get(high).z()),
                  plain(readings.get(low).z()),
                  plain(rise),
                  reach / 1000),
              "check their units; a floor so steep is a ramp, and a step is read as two rooms"));
    }
  }

  private void area(List<Point> outline) {
    double enclosed = Math.abs(Outline.area(outline)) / 1e6;
    for (StatedFact area : all(AREA)) {
      double off = Math.abs(area.number() - enclosed) / enclosed * 100;
      if (off > book.limit("area-off-outline")) {
        fault(
            area,
            String.format(
                Locale.ROOT, "area: %s, but the outline encloses %.2f m2", area.text(), enclosed),
            "leave the area out, or check the corners of the outline");
      }
    }
  }

  private void doors(List<Point> outline) {
    List<StatedFact> walls = all(WALL);
    List<Placed> placed = new ArrayList<>();
    for (int i = 0; i < walls.size(); i++) {
      StatedFact wall = walls.get(i);
      if (!wall.known()) {
        continue;
      }
      if (wall.number() >= outline.size()) {
        fault(
            wall,
            "wall: "
                + wall.text()
                + " is not a wall of the outline, which has "
                + outline.size()
                + ", from 0 to "
                + (outline.size() - 1),
            "wall 0 runs from the first corner to the second");
        continue;
      }
      StatedFact from = all(FROM).get(i);
      StatedFact width = all(WIDTH).get(i);
      double length = Outline.wallLength(outline, (int) wall.number());
      double end = from.number() + (width.known() ? width.number() : 0);
      if (from.known() && end > length + book.limit("door-past-wall")) {
        fault(
            width.known() ? width : from,
            String.format(
                Locale.ROOT,
                "%s ends %.0f mm along its wall, which is %.0f mm long",
                Words.quote(wall.about()),
                end,
                length),
            "check wall, from and width: from is measured from the wall's first corner");
      }
      if (from.known() && width.known()) {
        placed.add(new Placed(i, wall.number(), from.number(), from.number() + width.number()));
      }
    }
    overlaps(placed);
  }

  /** A door on its wall: its place in the file, the wall, where it begins and where it ends. */
  private record Placed(int place, double wall, double from, double to) {}

  /** Goes along each wall and holds each door against the one before it that reaches farthest. */
  private void overlaps(List<Placed> placed) {
    placed.sort(Comparator.comparingDouble(Placed::wall).thenComparingDouble(Placed::from));
    double slack = book.limit("door-past-wall");
    Placed far = null;
    for (Placed one : placed) {
      boolean beside = far != null && far.wall() == one.wall();
      if (beside && one.from() + slack < far.to() && far.from() + slack < one.to()) {
        StatedFact later = all(FROM).get(Math.max(one.place(), far.place()));
        StatedFact earlier = all(FROM).get(Math.min(one.place(), far.place()));
        fault(
            later,
            Words.quote(later.about())
                + " stands in the same place as "
                + Words.quote(earlier.about()),
            "check wall, from and width of both");
      }
      far = beside && far.to() > one.to() ? far : one;
    }
  }

  private void readings(List<Point> outline, List<Reading> readings, List<Node> places) {
    CappedFaults found = new CappedFaults(file, faults, "readings");
    double slack = book.limit("reading-outside-outline");
    double place = book.limit("same-place");
    double height = book.limit("same-height");
    Predicate<Reading> held = outline.isEmpty() ? one -> true : Outline.within(outline, slack);
    Map<Long, Integer> seen = new HashMap<>();
    for (int i = 0; i < readings.size(); i++) {
      Reading reading = readings.get(i);
      Node at = i < places.size() ? places.get(i) : NOWHERE;
      if (!held.test(reading)) {
        found.add(
            at,
            String.format(
                Locale.ROOT,
                "readings: the reading at %.0f mm, %.0f mm lies outside the room",
                reading.x(),
                reading.y()),
            "check it against the outline; each reading is [x, y, height]");
      }
      long cell = Math.round(reading.x() / place) * 1_000_003L + Math.round(reading.y() / place);
      Integer twin = seen.putIfAbsent(cell, i);
      if (twin != null && Math.abs(readings.get(twin).z() - reading.z()) > height) {
        found.add(
            at,
            String.format(
                Locale.ROOT,
                "readings: the place %.0f mm, %.0f mm is read twice, as %s mm and as %s mm",
                reading.x(),
                reading.y(),
                plain(readings.get(twin).z()),
                plain(reading.z())),
            "keep the reading that is right");
      }
    }
    found.end();
  }

  private static String plain(double mm) {
    return mm == Math.rint(mm)
        ? String.format(Locale.ROOT, "%.0f", mm)
        : String.format(Locale.ROOT, "%.1f", mm);
  }

  private void fault(StatedFact at, String what, String how) {
    faults.add(Fault.at(file, at, what, how));
  }
}
