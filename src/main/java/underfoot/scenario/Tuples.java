package underfoot.scenario;

import java.util.ArrayList;
import java.util.List;
import underfoot.quantity.Dimension;
import underfoot.quantity.NotAQuantity;
import underfoot.quantity.Quantity;
import underfoot.quantity.Words;

/** Reads lists of lengths: the corners of an outline, and readings of the floor. */
final class Tuples {
  private static final String TORN = ",";

  private final FactBook book;
  private final String file;
  private final List<Fault> faults;
  private final FactDefinition fact;

  Tuples(FactBook book, String file, List<Fault> faults, FactDefinition fact) {
    this.book = book;
    this.file = file;
    this.faults = faults;
    this.fact = fact;
  }

  /** The corners of the room. */
  void outline(Node.Items items, Gathered gathered) {
    List<double[]> numbers = read(items, 2, "most-corners");
    if (numbers == null) {
      return;
    }
    List<Point> points = new ArrayList<>();
    for (double[] xy : numbers) {
      points.add(new Point(xy[0], xy[1]));
    }
    List<Node> places = items.items();
    int last = points.size() - 1;
    if (last > 0 && Outline.distance(points.get(last), points.get(0)) == 0) {
      points.remove(last);
      places = places.subList(0, last);
    }
    Fault fault = Outline.fault(file, fact, points, places, items);
    if (fault != null) {
      faults.add(fault);
      return;
    }
    gathered.outline(points, places);
    Value many = new Value.Many(points.size(), points.size() + " corners");
    gathered.say(new StatedFact(fact, "", State.KNOWN, true, many, items.line(), items.column()));
  }

  /** A rectangle that something takes up. */
  void rectangle(Node.Items items, String about, Gathered gathered) {
    List<double[]> corners = read(items, 2, "most-corners");
    if (corners == null) {
      return;
    }
    boolean two = corners.size() == 2;
    if (!two || corners.get(0)[0] == corners.get(1)[0] || corners.get(0)[1] == corners.get(1)[1]) {
      faults.add(
          Fault.at(
              file,
              items,
              fact.word()
                  + (two
                      ? " is as narrow as a line: its corners must lie apart both ways"
                      : " needs two opposite corners, but has " + values(corners.size())),
              Values.example(fact)));
      return;
    }
    Value.Box box =
        Value.Box.of(
            new Point(corners.get(0)[0], corners.get(0)[1]),
            new Point(corners.get(1)[0], corners.get(1)[1]));
    gathered.say(new StatedFact(fact, about, State.KNOWN, true, box, items.line(), items.column()));
  }

  /** The readings of the floor. */
  void readings(Node.Items items, Gathered gathered) {
    List<double[]> numbers = read(items, 3, "most-readings");
    if (numbers == null) {
      return;
    }
    if (numbers.isEmpty()) {
      faults.add(
          Fault.at(
              file, items, fact.word() + " has no entries", "write: " + fact.word() + ": unknown"));
      return;
    }
    List<Reading> list = new ArrayList<>(numbers.size());
    for (double[] xyz : numbers) {
      list.add(new Reading(xyz[0], xyz[1], xyz[2]));
    }
    gathered.readings(list, items.items());
    gathered.say(
        new StatedFact(
            fact, "", State.KNOWN, true, many(list.size()), items.line(), items.column()));
  }

  /** So many readings. */
  static Value many(int readings) {
    return new Value.Many(readings, readings == 1 ? "1 reading" : readings + " readings");
  }

  /** Lists of so many lengths each, in millimetres; null if there is a fault among them. */
  private List<double[]> read(Node.Items items, int each, String most) {
    if (items.items().size() > book.limit(most)) {
      faults.add(
          Fault.at(
              file,
              items,
              fact.word()
                  + " has "
                  + items.items().size()
                  + " entries, but at most "
                  + book.limitAsWritten(most).text()
                  + " are read",
              "leave some out"));
      return null;
    }
    CappedFaults found = new CappedFaults(file, faults, fact.word());
    List<double[]> all = new ArrayList<>(items.items().size());
    for (Node item : items.items()) {
      if (item instanceof Node.Items tuple && tuple.items().size() == each) {
        double[] numbers = new double[each];
        for (int i = 0; i < each; i++) {
          numbers[i] = length(tuple.items().get(i), i, found);
        }
        all.add(numbers);
      } else {
        String form = each == 2 ? "[x, y]" : "[x, y, height]";
        int size = item instanceof Node.Items tuple ? tuple.items().size() : 1;
        found.add(
            item,
            fact.word() + ": each entry is " + form + ", but this has " + values(size),
            size > each ? joined((Node.Items) item) : Values.example(fact));
      }
    }
    return found.end() ? all : null;
  }

  /** How a tuple may be meant that a comma in a number has torn apart. */
  private static String joined(Node.Items tuple) {
    String point = joined(tuple, ".");
    String none = joined(tuple, "");
    return "write: "
        + (none.equals(point) ? "" : none + ", or ")
        + point
        + "; a comma ends a value, decimals are written with a point";
  }

  /** With another sign for the comma; a point wherever three digits do not follow. */
  private static String joined(Node.Items tuple, String sign) {
    StringBuilder out = new StringBuilder("[");
    String comma = "";
    for (Node item : tuple.items()) {
      String text = item instanceof Node.Scalar scalar ? scalar.text() : "";
      boolean torn = comma.equals(TORN);
      boolean pointed = text.matches("[0-9]+[.].*"); // it has its point already
      String between = pointed ? "" : Words.mayBeThousands(text) ? sign : ".";
      out.append(torn ? between : comma).append(Words.cut(text));
      boolean whole =
          !text.isEmpty() && text.chars().allMatch(c -> Character.isDigit(c) || c == '-');
      comma = whole ? TORN : ", ";
    }
    return out.substring(0, Math.min(80, out.length())) + "]";
  }

  private static String values(int size) {
    return size == 1 ? "one value" : size + " values";
  }

  private double length(Node node, int place, CappedFaults found) {
    if (!(node instanceof Node.Scalar scalar)) {
      found.add(node, fact.word() + ": a length is needed here, not a list", Values.example(fact));
      return 0;
    }
    String limit = place == 2 ? "highest-reading" : "farthest-point";
    try {
      Quantity quantity = Quantity.parse(scalar.text(), Dimension.LENGTH);
      if (Math.abs(quantity.value()) > book.limit(limit)) {
        found.add(
            node,
            fact.word() + ": " + quantity.text() + " is farther off than a floor can be",
            "the most is " + book.limitAsWritten(limit).text() + "; check the number and its unit");
      }
      return quantity.value();
    } catch (NotAQuantity e) {
      String unit = place == 2 ? "1 mm" : "1 m";
      String suggestion =
          e.suggestion().isEmpty()
              ? Values.withUnitOf(unit, scalar.text(), Dimension.LENGTH)
              : e.suggestion();
      found.add(
          node,
          fact.word() + ": " + e.getMessage(),
          suggestion.isEmpty() ? Values.example(fact) : "write: " + suggestion);
      return 0;
    }
  }
}
