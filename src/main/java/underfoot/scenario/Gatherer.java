package underfoot.scenario;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.quantity.Dimension;
import underfoot.quantity.Nearest;
import underfoot.quantity.NotAQuantity;
import underfoot.quantity.Quantity;
import underfoot.quantity.Words;

/** Gathers what one scenario says of every fact, and every fault on the way. */
final class Gatherer {
  /** Beyond this many faults no more suggestions are looked for: they are not printed. */
  private static final int WORTH_A_SUGGESTION = 60;

  private final FactBook book;
  private final String file;
  private final int longest;
  private final List<Fault> faults = new ArrayList<>();

  /** What is said, by key and entry. */
  private final Map<String, StatedFact> said = new HashMap<>();

  /** Keys that were written, well or badly, by key and entry: these are not missing. */
  private final Set<String> written = new HashSet<>();

  /** Groups whose keys have been listed once already. */
  private final Set<String> listed = new HashSet<>();

  /** The entries of each list, by the list's path, such as {@code room.doors[]}. */
  private final Map<String, List<String>> entries = new HashMap<>();

  /** Where each entry stands, by list and entry. */
  private final Map<String, Node> entryPlaces = new HashMap<>();

  /** Where the keys of a group stand, by the group's path. */
  private final Map<String, Node> groupPlaces = new HashMap<>();

  private List<Point> outline = List.of();
  private List<Reading> readings = List.of();
  private List<Node> outlinePlaces = List.of();
  private List<Node> readingPlaces = List.of();

  Gatherer(FactBook book, String file) {
    this.book = book;
    this.file = file;
    this.longest = (int) book.limit("longest-text");
  }

  /** The scenario of a whole file. */
  Scenario scenario(Node.Keys root) throws ScenarioFaults {
    keys(root, book.root(), "");
    missing(root);
    return finish();
  }

  /** The scenario of a file that is not finished: required facts may be missing. */
  Scenario unfinished(Node.Keys root) throws ScenarioFaults {
    keys(root, book.root(), "");
    return finish();
  }

  /** A scenario with one fact changed. */
  Scenario change(Scenario from, FactDefinition fact, String about, String text)
      throws ScenarioFaults {
    begin(from);
    KeyNode node = node(fact.key());
    boolean name = fact.ofEntries() && fact.word().equals("name");
    if (name) {
      fault(0, 0, "the name of an entry is what it is known by, so it is not changed", "");
    } else {
      forget(fact, about);
      Node value = new Node.Scalar(text, 0, 0);
      if (!isScalar(fact) && text.stripLeading().startsWith("[")) {
        byte[] yaml = text.getBytes(StandardCharsets.UTF_8);
        value = YamlTree.read(file, yaml, (int) book.limit("largest-file"));
      }
      Node.Entry entry = new Node.Entry(fact.word(), 0, 0, value);
      if (node.isList()) {
        list(node, entry);
      } else {
        leaf(fact, entry, about);
      }
    }
    written.add(id(fact.key(), about));
    missing(new Node.Keys(List.of(), 0, 0));
    return finish();
  }

  /** A scenario with what another says of one fact, of one entry, or of a whole list. */
  Scenario graft(Scenario from, Scenario donor, FactDefinition fact, String about)
      throws ScenarioFaults {
    begin(from);
    forget(fact, about);
    donor.find(fact.key(), about).ifPresent(given -> said.put(id(given.key(), about), given));
    switch (fact.kind()) {
      case POINTS -> outline = donor.outline();
      case READINGS -> readings = donor.readings();
      case LIST -> {
        String list = fact.key() + "[]";
        entries.put(list, new ArrayList<>(donor.entries(list)));
        for (StatedFact given : donor.givens()) {
          if (given.definition().list().equals(list)) {
            said.put(id(given.key(), given.about()), given);
          }
        }
      }
      default -> {
        // The fact itself is all there is.
      }
    }
    return finish();
  }

  private void begin(Scenario from) {
    for (StatedFact given : from.givens()) {
      said.put(id(given.key(), given.about()), given);
      if (given.definition().ofEntries()) {
        List<String> names =
            entries.computeIfAbsent(given.definition().list(), list -> new ArrayList<>());
        if (names.isEmpty() || !names.contains(given.about())) {
          names.add(given.about());
        }
      }
    }
    outline = from.outline();
    readings = from.readings();
  }

  private static boolean isScalar(FactDefinition fact) {
    return switch (fact.kind()) {
      case POINTS, READINGS, LIST, CHOICES -> false;
      default -> true;
    };
  }

  private KeyNode node(String key) {
    KeyNode node = book.root();
    for (String name : key.replace("[]", "").split("\\.")) {
      node = node.child(name);
    }
    return node;
  }

  private void forget(FactDefinition fact, String about) {
    said.remove(id(fact.key(), about));
    if (fact.kind() == Kind.POINTS) {
      outline = List.of();
    } else if (fact.kind() == Kind.READINGS) {
      readings = List.of();
    } else if (fact.kind() == Kind.LIST) {
      String list = fact.key() + "[]";
      entries.remove(list);
      said.values().removeIf(given -> given.definition().list().equals(list));
    }
  }

  private Scenario finish() throws ScenarioFaults {
    List<StatedFact> givens = new ArrayList<>();
    for (FactDefinition fact : book.definitions()) {
      if (!fact.ofEntries()) {
        givens.add(given(fact, ""));
      }
    }
    for (FactDefinition fact : book.definitions()) {
      if (fact.ofEntries()) {
        for (String name : entries.getOrDefault(fact.list(), List.of())) {
          givens.add(given(fact, name));
        }
      }
    }
    new Consistency(book, file, givens, faults)
        .check(outline, outlinePlaces, readings, readingPlaces);
    if (!faults.isEmpty()) {
      throw new ScenarioFaults(faults);
    }
    return new Scenario(
        file, textOf("scenario"), textOf("practice"), givens, outline, readings, book);
  }

  private StatedFact given(FactDefinition fact, String about) {
    StatedFact given = said.get(id(fact.key(), about));
    return given != null ? given : new StatedFact(fact, about, State.UNKNOWN, false, null, 0, 0);
  }

  private String textOf(String key) {
    StatedFact given = said.get(id(key, ""));
    return given == null ? "" : given.text();
  }

  private static String id(String key, String about) {
    return key + '\n' + about;
  }

  private void keys(Node.Keys keys, KeyNode node, String about) {
    groupPlaces.putIfAbsent(node.path + '\n' + about, keys);
    Map<KeyNode, Node.Entry> seen = new HashMap<>();
    Map<String, Node.Entry> unknown = new HashMap<>();
    List<Node.Entry> all = keys.entries();
    for (int i = 0; i < all.size(); i++) {
      Node.Entry entry = all.get(i);
      Node.Entry next = i + 1 < all.size() ? all.get(i + 1) : null;
      KeyNode child = node.child(entry.key());
      if (child == null) {
        Node.Entry twin = unknown.putIfAbsent(Words.alike(entry.key()), entry);
        if (twin == null) {
          unknownKey(entry, node);
        }
        continue;
      }
      Node.Entry twin = seen.putIfAbsent(child, entry);
      if (twin != null) {
        fault(
            entry.line(),
            entry.column(),
            child.name + " is written twice, first on line " + twin.line(),
            "keep one of the two");
        continue;
      }
      if (next != null && splitByComma(entry, next)) {
        String number = ((Node.Scalar) entry.value()).text() + "." + Words.cut(next.key());
        written.add(id(child.path, about));
        fault(
            next.line(),
            next.column(),
            child.name + ": a comma splits the number here; decimals are written with a point",
            "write: " + child.name + ": " + number);
        i++;
        continue;
      }
      entry(child, entry, about);
    }
  }

  /** Whether "{gap: 1,5 mm}" was written: YAML takes the comma for the end of a value. */
  private static boolean splitByComma(Node.Entry entry, Node.Entry next) {
    return entry.value() instanceof Node.Scalar left
        && next.value() instanceof Node.Scalar right
        && right.text().isEmpty()
        && !next.key().isEmpty()
        && Character.isDigit(next.key().charAt(0))
        && !left.text().isEmpty()
        && left.text().length() < 10
        && left.text().chars().allMatch(c -> Character.isDigit(c) || c == '-');
  }

  private void entry(KeyNode node, Node.Entry entry, String about) {
    written.add(id(node.path, about));
    if (node.isList()) {
      list(node, entry);
      return;
    }
    if (node.fact != null) {
      leaf(node.fact, entry, about);
      return;
    }
    Node value = entry.value();
    if (value instanceof Node.Keys keys) {
      keys(keys, node, about);
      return;
    }
    if (node.shorthand != null) {
      written.add(id(node.shorthand.key(), about));
      Node.Entry meant = new Node.Entry(node.name, entry.line(), entry.column(), value);
      leaf(node.shorthand, meant, about);
      return;
    }
    if (value instanceof Node.Scalar scalar && Values.state(scalar.text()) != State.KNOWN) {
      all(node, scalar, Values.state(scalar.text()), about);
      return;
    }
    String example = exampleUnder(node);
    if (value instanceof Node.Scalar scalar && Values.isEmpty(scalar.text())) {
      fault(
          entry.line(),
          entry.column(),
          node.name + " has nothing under it; its keys may stand too far left",
          example);
    } else if (value instanceof Node.Scalar scalar) {
      fault(
          value.line(),
          value.column(),
          node.name + ": " + Words.quote(scalar.text()) + " is one value, but keys are needed",
          example);
    } else {
      fault(value.line(), value.column(), node.name + " is a list, but keys are needed", example);
    }
  }

  /** Sets every fact under a group of keys to unknown or not applicable. */
  private void all(KeyNode node, Node.Scalar scalar, State state, String about) {
    for (KeyNode child : node.children.values()) {
      written.add(id(child.path, about));
      if (child.fact == null) {
        all(child, scalar, state, about);
      } else {
        leaf(child.fact, new Node.Entry(child.name, scalar.line(), scalar.column(), scalar), about);
      }
    }
  }

  private static String exampleUnder(KeyNode node) {
    for (KeyNode child : node.children.values()) {
      if (child.fact != null) {
        return "for example: " + node.name + ": {" + child.name + ": " + child.fact.example() + "}";
      }
    }
    return "";
  }

  private void leaf(FactDefinition fact, Node.Entry entry, String about) {
    Node value = entry.value();
    String word = fact.word();
    if (value instanceof Node.Scalar scalar) {
      State state = Values.state(scalar.text());
      if (Values.isEmpty(scalar.text())) {
        fault(
            entry.line(),
            entry.column(),
            word + " has nothing after it",
            "write: " + word + ": " + (fact.required() ? fact.example() : "unknown"));
      } else if (state == State.KNOWN) {
        value(fact, scalar, about);
      } else if (fact.required()) {
        fault(
            value.line(),
            value.column(),
            word + " must be known: the advice hangs on it",
            Values.example(fact) + (fact.look().isEmpty() ? "" : "\n" + fact.look()));
      } else {
        say(new StatedFact(fact, about, state, true, null, value.line(), value.column()));
      }
    } else if (value instanceof Node.Items items) {
      switch (fact.kind()) {
        case POINTS -> outline(fact, items);
        case READINGS -> readings(fact, items);
        case CHOICES -> choices(fact, items, about);
        default ->
            fault(
                value.line(),
                value.column(),
                word + " is a list here, but one value is needed",
                Values.example(fact));
      }
    } else {
      fault(
          value.line(),
          value.column(),
          word + " has keys under it here, but one value is needed",
          Values.example(fact));
    }
  }

  private void value(FactDefinition fact, Node.Scalar scalar, String about) {
    try {
      Value value = Values.read(fact, scalar.text(), longest);
      say(new StatedFact(fact, about, State.KNOWN, true, value, scalar.line(), scalar.column()));
    } catch (BadValue e) {
      fault(scalar.line(), scalar.column(), e.getMessage(), e.how());
    }
  }

  private void choices(FactDefinition fact, Node.Items items, String about) {
    List<String> texts = new ArrayList<>();
    for (Node item : items.items()) {
      if (!(item instanceof Node.Scalar scalar)) {
        fault(item.line(), item.column(), fact.word() + " holds texts only", Values.example(fact));
        return;
      }
      texts.add(scalar.text());
    }
    try {
      Value value = Values.choices(fact, texts);
      say(new StatedFact(fact, about, State.KNOWN, true, value, items.line(), items.column()));
    } catch (BadValue e) {
      fault(items.line(), items.column(), e.getMessage(), e.how());
    }
  }

  private void say(StatedFact given) {
    said.put(id(given.key(), given.about()), given);
  }

  private void list(KeyNode node, Node.Entry entry) {
    FactDefinition fact = node.fact;
    Node value = entry.value();
    if (value instanceof Node.Scalar scalar) {
      State state = Values.state(scalar.text());
      if (state != State.KNOWN) {
        say(new StatedFact(fact, "", state, true, null, value.line(), value.column()));
      } else if (Words.alike(scalar.text()).equals("none")) {
        say(many(fact, 0, value));
      } else {
        fault(
            value.line(),
            value.column(),
            node.name
                + (Values.isEmpty(scalar.text())
                    ? " has nothing under it, but a list is needed"
                    : ": " + Words.quote(scalar.text()) + " is one value, but a list is needed"),
            Values.example(fact));
      }
      return;
    }
    if (value instanceof Node.Keys) {
      fault(
          value.line(),
          value.column(),
          node.name + " has keys straight under it, but a list is needed: each entry begins with -",
          Values.example(fact));
      return;
    }
    List<Node> items = ((Node.Items) value).items();
    if (items.size() > book.limit("most-entries")) {
      fault(
          value.line(),
          value.column(),
          node.name
              + " has "
              + items.size()
              + " entries, but at most "
              + book.limitAsWritten("most-entries").text()
              + " are read",
          "leave out those that do not matter to the floor");
      return;
    }
    String list = node.fact.key() + "[]";
    List<String> names = entries.computeIfAbsent(list, key -> new ArrayList<>());
    Map<String, Integer> lines = new LinkedHashMap<>();
    for (Node item : items) {
      if (!(item instanceof Node.Keys keys)) {
        fault(
            item.line(),
            item.column(),
            node.name + ": each entry has keys of its own",
            Values.example(fact));
        continue;
      }
      String name = nameOf(keys, node, names.size() + 1);
      Integer twin = lines.putIfAbsent(Words.alike(name), item.line());
      if (twin != null) {
        fault(
            item.line(),
            item.column(),
            node.name
                + ": two entries are called "
                + Words.quote(name)
                + ", so they cannot be told apart",
            "give each a name of its own");
        continue;
      }
      names.add(name);
      entryPlaces.put(id(list, name), item);
      keys(keys, node, name);
    }
    say(many(fact, names.size(), value));
  }

  private StatedFact many(FactDefinition fact, int count, Node at) {
    String text = count == 0 ? "none" : count + (count == 1 ? " entry" : " entries");
    return new StatedFact(
        fact, "", State.KNOWN, true, new Value.Many(count, text), at.line(), at.column());
  }

  /** The name of an entry, or its place in words if it has none. */
  private String nameOf(Node.Keys keys, KeyNode node, int place) {
    if (keys.get("name") instanceof Node.Scalar scalar
        && !Values.isEmpty(scalar.text())
        && Values.state(scalar.text()) == State.KNOWN
        && scalar.text().length() <= longest) {
      return Words.squeeze(scalar.text());
    }
    KeyNode name = node.child("name");
    return (name == null || name.fact == null ? "entry" : name.fact.called()) + " " + place;
  }

  private void outline(FactDefinition fact, Node.Items items) {
    List<double[]> numbers = numbers(fact, items, 2, "most-corners");
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
    outline = points;
    outlinePlaces = places;
    Value many = new Value.Many(points.size(), points.size() + " corners");
    say(new StatedFact(fact, "", State.KNOWN, true, many, items.line(), items.column()));
  }

  private void readings(FactDefinition fact, Node.Items items) {
    List<double[]> numbers = numbers(fact, items, 3, "most-readings");
    if (numbers == null) {
      return;
    }
    if (numbers.isEmpty()) {
      fault(
          items.line(),
          items.column(),
          fact.word() + " has no entries",
          "write: " + fact.word() + ": unknown");
      return;
    }
    List<Reading> list = new ArrayList<>(numbers.size());
    for (double[] xyz : numbers) {
      list.add(new Reading(xyz[0], xyz[1], xyz[2]));
    }
    readings = list;
    readingPlaces = items.items();
    Value many =
        new Value.Many(list.size(), list.size() == 1 ? "1 reading" : list.size() + " readings");
    say(new StatedFact(fact, "", State.KNOWN, true, many, items.line(), items.column()));
  }

  /** Lists of so many lengths each, in millimetres; null if there is a fault among them. */
  private List<double[]> numbers(FactDefinition fact, Node.Items items, int each, String most) {
    if (items.items().size() > book.limit(most)) {
      fault(
          items.line(),
          items.column(),
          fact.word()
              + " has "
              + items.items().size()
              + " entries, but at most "
              + book.limitAsWritten(most).text()
              + " are read",
          "leave some out");
      return null;
    }
    CappedFaults found = new CappedFaults(file, faults, fact.word());
    List<double[]> all = new ArrayList<>(items.items().size());
    for (Node item : items.items()) {
      if (item instanceof Node.Items tuple && tuple.items().size() == each) {
        double[] numbers = new double[each];
        for (int i = 0; i < each; i++) {
          numbers[i] = length(fact, tuple.items().get(i), i, found);
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

  /** How a tuple may be meant that a decimal comma has torn apart. */
  private static String joined(Node.Items tuple) {
    StringBuilder out = new StringBuilder("write: [");
    for (int i = 0; i < tuple.items().size(); i++) {
      String text = tuple.items().get(i) instanceof Node.Scalar scalar ? scalar.text() : "";
      boolean whole =
          !text.isEmpty() && text.chars().allMatch(c -> Character.isDigit(c) || c == '-');
      out.append(Words.cut(text)).append(whole ? "." : ", ");
    }
    String meant = out.substring(0, Math.min(80, out.length() - 1));
    return (meant.endsWith(",") ? meant.substring(0, meant.length() - 1) : meant)
        + "]; a comma ends a value, decimals are written with a point";
  }

  private static String values(int size) {
    return size == 1 ? "one value" : size + " values";
  }

  private double length(FactDefinition fact, Node node, int place, CappedFaults found) {
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

  private void unknownKey(Node.Entry entry, KeyNode node) {
    String what = Words.quote(entry.key()) + " is not a key of " + node.inWords();
    if (faults.size() > WORTH_A_SUGGESTION) {
      fault(entry.line(), entry.column(), what, "");
      return;
    }
    String near = Nearest.to(entry.key(), node.childNames());
    String how;
    List<String> homes = new ArrayList<>();
    homes(book.root(), node, Words.alike(entry.key()), homes);
    if (!homes.isEmpty()) {
      how = "it belongs under " + String.join(" or ", homes);
    } else if (!near.isEmpty()) {
      how = "write: " + near;
    } else {
      boolean first = listed.add(node.path);
      how = first ? "keys here: " + String.join(", ", node.childNames()) : "";
    }
    fault(entry.line(), entry.column(), what, how);
  }

  /** The groups other than this one that hold a key of this spelling. */
  private static void homes(KeyNode at, KeyNode except, String alike, List<String> homes) {
    if (at != except && at.children.containsKey(alike)) {
      homes.add(at.path.isEmpty() ? "no other key: move it to the left edge" : at.inWords());
    }
    for (KeyNode child : at.children.values()) {
      homes(child, except, alike, homes);
    }
  }

  /** Faults for each required fact that was not written. */
  private void missing(Node.Keys root) {
    Set<String> told = new HashSet<>();
    for (FactDefinition fact : book.definitions()) {
      if (!fact.required()) {
        continue;
      }
      if (!fact.ofEntries()) {
        missing(fact, "", root, told);
      } else {
        for (String name : entries.getOrDefault(fact.list(), List.of())) {
          missing(fact, name, entryPlaces.getOrDefault(id(fact.list(), name), root), told);
        }
      }
    }
  }

  private void missing(FactDefinition fact, String about, Node parent, Set<String> told) {
    String key = fact.key();
    if (said.containsKey(id(key, about)) || written.contains(id(key, about))) {
      return;
    }
    if (!about.isEmpty()) {
      isMissing(fact.word(), parent, Words.quote(about), Values.example(fact));
      return;
    }
    String group = above(key);
    Node place = groupPlaces.get(id(group, ""));
    if (place != null) {
      isMissing(fact.word(), place, group.isEmpty() ? book.subject() : group, Values.example(fact));
      return;
    }
    for (String up = group; !up.isEmpty(); up = above(up)) {
      if (written.contains(id(up, ""))) {
        // The group is there, but at fault itself, and that has been told.
        return;
      }
    }
    if (told.add(group)) {
      String example = group + ": {" + requiredUnder(group) + "}";
      isMissing(group, parent, book.subject(), "for example: " + example);
    }
  }

  private void isMissing(String word, Node place, String where, String how) {
    fault(place.line(), place.column(), word + " is missing from " + where, how);
  }

  /** The key of the group a key stands in; empty at the left edge. */
  private static String above(String key) {
    return key.substring(0, Math.max(0, key.lastIndexOf('.')));
  }

  private String requiredUnder(String group) {
    List<String> parts = new ArrayList<>();
    for (FactDefinition fact : book.definitions()) {
      if (fact.required() && above(fact.key()).equals(group)) {
        parts.add(Words.last(fact.key()) + ": " + fact.example());
      }
    }
    return String.join(", ", parts);
  }

  private void fault(int line, int column, String what, String how) {
    faults.add(new Fault(file, line, column, what, how));
  }
}
