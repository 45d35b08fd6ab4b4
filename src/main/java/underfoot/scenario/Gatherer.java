package underfoot.scenario;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.quantity.Words;

/** Gathers what one scenario says of every fact, and every fault on the way. */
final class Gatherer {
  private static final Node NOWHERE = new Node.Scalar("", 0, 0);

  private final FactBook book;
  private final String file;
  private final int longest;
  private final List<Fault> faults = new ArrayList<>();

  /** Keys that were written, well or badly, by key and entry: these are not missing. */
  private final Set<String> written = new HashSet<>();

  private final UnknownKeys unknownKeys;

  /** Where each entry stands, by list and entry. */
  private final Map<String, Node> entryPlaces = new HashMap<>();

  /** Where the keys of a group stand, by the group's path. */
  private final Map<String, Node> groupPlaces = new HashMap<>();

  private final Gathered gathered;

  Gatherer(FactBook book, String file) {
    this.book = book;
    this.file = file;
    this.longest = (int) book.limit("longest-text");
    this.gathered = new Gathered(book, file);
    this.unknownKeys = new UnknownKeys(book);
  }

  /** The scenario of a whole file. */
  Scenario scenario(Node.Keys root) throws ScenarioFaults {
    keys(root, book.root(), "");
    saidTwice();
    new MissingFacts(this, book).tell(root);
    return gathered.scenario(faults);
  }

  /** Of two facts that say the same in two ways, both were written. */
  private void saidTwice() {
    for (FactDefinition fact : book.definitions()) {
      String other = fact.insteadOfIt();
      if (!other.isEmpty() && gathered.says(fact.key(), "") && gathered.says(other, "")) {
        StatedFact said = gathered.of(fact.key());
        fault(
            new Node.Scalar("", said.line(), said.column()),
            fact.word() + " and " + Words.last(other) + " say the same in two ways",
            "keep " + Words.last(other) + ", which says more, and leave out " + fact.word());
      }
    }
  }

  /** The scenario of a file that is not finished: required facts may be missing. */
  Scenario unfinished(Node.Keys root) throws ScenarioFaults {
    keys(root, book.root(), "");
    saidTwice();
    return gathered.scenario(faults);
  }

  /** A scenario with one fact changed. */
  Scenario change(Scenario from, FactDefinition fact, String about, String text)
      throws ScenarioFaults {
    gathered.begin(from);
    KeyNode node = node(fact.key());
    boolean name = fact.ofEntries() && fact.word().equals("name");
    if (name) {
      fault(NOWHERE, "the name of an entry is what it is known by, so it is not changed", "");
    } else {
      gathered.forget(fact, about);
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
    written.add(Gathered.id(fact.key(), about));
    new MissingFacts(this, book).tell(NOWHERE);
    return gathered.scenario(faults);
  }

  /** A scenario with what another says of one fact, of one entry, or of a whole list. */
  Scenario graft(Scenario from, Scenario donor, FactDefinition fact, String about)
      throws ScenarioFaults {
    gathered.begin(from);
    gathered.graft(donor, fact, about);
    return gathered.scenario(faults);
  }

  private static boolean isScalar(FactDefinition fact) {
    return switch (fact.kind()) {
      case POINTS, RECTANGLE, READINGS, LIST, CHOICES -> false;
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
          fault(entry, unknownKeys.what(entry, node), unknownKeys.how(entry, node, faults.size()));
        }
        continue;
      }
      Node.Entry twin = seen.putIfAbsent(child, entry);
      if (twin != null) {
        fault(
            entry,
            child.name + " is written twice, first on line " + twin.line(),
            "keep one of the two");
        continue;
      }
      if (next != null && splitByComma(entry, next)) {
        String whole = ((Node.Scalar) entry.value()).text();
        String rest = Words.cut(next.key());
        String number =
            (Words.mayBeThousands(rest) ? whole + rest + ", or " : "") + whole + "." + rest;
        written.add(Gathered.id(child.path, about));
        fault(
            next,
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
    if (!written.add(Gathered.id(node.path, about)) && node.fact != null) {
      fault(entry, node.inWords() + " stands twice", "keep one of the two");
      return;
    }
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
      written.add(Gathered.id(node.shorthand.key(), about));
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
      fault(entry, node.name + " has nothing under it; its keys may stand too far left", example);
    } else if (value instanceof Node.Scalar scalar) {
      fault(
          value,
          node.name + ": " + Words.quote(scalar.text()) + " is one value, but keys are needed",
          example);
    } else {
      fault(value, node.name + " is a list, but keys are needed", example);
    }
  }

  /** Sets every fact under a group of keys to unknown or not applicable. */
  private void all(KeyNode node, Node.Scalar scalar, State state, String about) {
    for (KeyNode child : node.children.values()) {
      written.add(Gathered.id(child.path, about));
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
            entry,
            word + " has nothing after it",
            "write: " + word + ": " + (fact.required() ? fact.example() : "unknown"));
      } else if (state == State.KNOWN) {
        value(fact, scalar, about);
      } else if (fact.required()) {
        fault(
            value,
            word + " must be known: the advice hangs on it",
            Values.example(fact) + (fact.look().isEmpty() ? "" : "\n" + fact.look()));
      } else {
        gathered.say(new StatedFact(fact, about, state, true, null, value.line(), value.column()));
      }
    } else if (value instanceof Node.Items items) {
      switch (fact.kind()) {
        case POINTS -> new Tuples(book, file, faults, fact).outline(items, gathered);
        case RECTANGLE -> new Tuples(book, file, faults, fact).rectangle(items, about, gathered);
        case READINGS -> new Tuples(book, file, faults, fact).readings(items, gathered);
        case CHOICES -> choices(fact, items, about);
        default ->
            fault(value, word + " is a list here, but one value is needed", Values.example(fact));
      }
    } else {
      fault(value, word + " has keys under it here, but one value is needed", Values.example(fact));
    }
  }

  private void value(FactDefinition fact, Node.Scalar scalar, String about) {
    try {
      Value value = Values.read(fact, scalar.text(), longest);
      gathered.say(
          new StatedFact(fact, about, State.KNOWN, true, value, scalar.line(), scalar.column()));
    } catch (BadValue e) {
      fault(scalar, e.getMessage(), e.how());
    }
  }

  private void choices(FactDefinition fact, Node.Items items, String about) {
    List<String> texts = new ArrayList<>();
    for (Node item : items.items()) {
      if (!(item instanceof Node.Scalar scalar)) {
        fault(item, fact.word() + " holds texts only", Values.example(fact));
        return;
      }
      texts.add(scalar.text());
    }
    try {
      Value value = Values.choices(fact, texts);
      gathered.say(
          new StatedFact(fact, about, State.KNOWN, true, value, items.line(), items.column()));
    } catch (BadValue e) {
      fault(items, e.getMessage(), e.how());
    }
  }

  private void list(KeyNode node, Node.Entry entry) {
    FactDefinition fact = node.fact;
    Node value = entry.value();
    if (value instanceof Node.Scalar scalar) {
      State state = Values.state(scalar.text());
      if (state != State.KNOWN) {
        gathered.say(new StatedFact(fact, "", state, true, null, value.line(), value.column()));
      } else if (Words.alike(scalar.text()).equals("none")) {
        gathered.say(many(fact, 0, value));
      } else {
        fault(
            value,
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
          value,
          node.name + " has keys straight under it, but a list is needed: each entry begins with -",
          Values.example(fact));
      return;
    }
    List<Node> items = ((Node.Items) value).items();
    boolean own = !Double.isNaN(fact.most());
    if (items.size() > (own ? fact.most() : book.limit("most-entries"))) {
      fault(
          value,
          node.name
              + " has "
              + items.size()
              + " entries, but at most "
              + (own ? fact.mostText() : book.limitAsWritten("most-entries").text())
              + " are read",
          "leave out those that do not matter to the floor");
      return;
    }
    String list = node.fact.key() + "[]";
    List<String> names = gathered.named(list);
    Set<String> taken = new HashSet<>(names);
    Map<String, Integer> ofAKind = new HashMap<>();
    Map<String, Integer> lines = new LinkedHashMap<>();
    for (Node item : items) {
      if (!(item instanceof Node.Keys keys)) {
        fault(item, node.name + ": each entry has keys of its own", Values.example(fact));
        continue;
      }
      String name = nameOf(keys, node, taken, ofAKind);
      Integer twin = lines.putIfAbsent(Words.alike(name), item.line());
      if (twin != null) {
        fault(
            item,
            node.name
                + ": two entries are called "
                + Words.quote(name)
                + ", so they cannot be told apart",
            "give each a name of its own");
        continue;
      }
      names.add(name);
      taken.add(name);
      entryPlaces.put(Gathered.id(list, name), item);
      keys(ZoneReader.ZONES.equals(node.path) ? ZoneReader.ofZoneItself(keys) : keys, node, name);
    }
    gathered.say(many(fact, names.size(), value));
  }

  private StatedFact many(FactDefinition fact, int count, Node at) {
    String text = count == 0 ? "none" : count + (count == 1 ? " entry" : " entries");
    return new StatedFact(
        fact, "", State.KNOWN, true, new Value.Many(count, text), at.line(), at.column());
  }

  /** The name of an entry, or its place in words if it has none. */
  private String nameOf(
      Node.Keys keys, KeyNode node, Set<String> taken, Map<String, Integer> ofAKind) {
    String said = said(keys, node, "name");
    if (!said.isEmpty()) {
      return said;
    }
    String by = node.fact.knownBy();
    KeyNode kind = by.isEmpty() ? null : node.child(by);
    String sort = kind == null ? "" : said(keys, node, by);
    if (kind != null && kind.fact != null && !sort.isEmpty()) { // it is known by what it is
      String plain = Values.choiceOr(kind.fact, sort);
      String name = plain;
      while (taken.contains(name)) {
        name = plain + " " + ofAKind.merge(plain, 2, (made, two) -> made + 1);
      }
      return name;
    }
    KeyNode name = node.child("name");
    return (name == null || name.fact == null ? "entry" : name.fact.called())
        + " "
        + (taken.size() + 1);
  }

  /** What an entry says under a key, whatever word the key is written with; empty if nothing. */
  private String said(Node.Keys keys, KeyNode node, String word) {
    for (Node.Entry entry : keys.entries()) {
      KeyNode key = node.child(entry.key());
      if (key != null
          && key.fact != null
          && key.fact.word().equals(word)
          && entry.value() instanceof Node.Scalar scalar
          && !Values.isEmpty(scalar.text())
          && Values.state(scalar.text()) == State.KNOWN
          && scalar.text().length() <= longest) {
        return Words.squeeze(scalar.text());
      }
    }
    return "";
  }

  /** Whether a fact was written, well or badly. */
  boolean isWritten(String key, String about) {
    return gathered.says(key, about) || written.contains(Gathered.id(key, about));
  }

  /** The names of a list's entries. */
  List<String> entries(String list) {
    return gathered.entries(list);
  }

  /** Where an entry of a list stands; null if that is not known. */
  Node placeOfEntry(String list, String name) {
    return entryPlaces.get(Gathered.id(list, name));
  }

  /** Where the keys of a group stand; null if it was not written. */
  Node placeOfGroup(String group) {
    return groupPlaces.get(Gathered.id(group, ""));
  }

  void fault(Spot at, String what, String how) {
    faults.add(Fault.at(file, at, what, how));
  }
}
