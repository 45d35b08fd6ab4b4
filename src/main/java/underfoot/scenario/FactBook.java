package underfoot.scenario;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underfoot.quantity.Dimension;
import underfoot.quantity.Nearest;
import underfoot.quantity.NotAQuantity;
import underfoot.quantity.Quantity;
import underfoot.quantity.Words;

/**
 * Everything that may be said in a scenario: the facts, the statements that contradict each other
 * and the limits, as {@code rules/facts/*.yaml} define them.
 */
public final class FactBook {
  private static final String FOLDER = "facts";
  private static final String PROPOSALS = "proposal";
  private static final String CONTRADICTIONS = FOLDER + "/contradictions.yaml";
  private static final String LIMITS = FOLDER + "/limits.yaml";
  private static final int LARGEST_FILE = 4_000_000;
  private static final Set<String> PROPERTIES =
      Set.of(
          "called",
          "kind",
          "of",
          "also",
          "refused",
          "dimension",
          "least",
          "most",
          "required",
          "shorthand for",
          "means",
          "ask",
          "look",
          "otherwise",
          "example");

  private final Map<String, FactDefinition> definitions = new LinkedHashMap<>();
  private final Map<String, Quantity> limits = new LinkedHashMap<>();
  private final List<Contradiction> contradictions = new ArrayList<>();
  private final KeyNode root;

  private FactBook(String subject) {
    root = new KeyNode(subject, "");
  }

  /**
   * Reads the facts files of a rule base.
   *
   * @param files the rule base
   * @return the facts
   * @throws ScenarioFaults if the facts files themselves are at fault; all faults at once
   */
  public static FactBook load(RuleFiles files) throws ScenarioFaults {
    return load(files, FOLDER, "the scenario");
  }

  /**
   * Reads what may be said in a proposal, {@code rules/proposal/*.yaml}. The limits are those of
   * scenarios.
   *
   * @param files the rule base
   * @return what may be said
   * @throws ScenarioFaults if the files themselves are at fault; all faults at once
   */
  public static FactBook ofProposals(RuleFiles files) throws ScenarioFaults {
    return load(files, PROPOSALS, "the proposal");
  }

  private static FactBook load(RuleFiles files, String folder, String subject)
      throws ScenarioFaults {
    FactBook book = new FactBook(subject);
    List<Fault> faults = new ArrayList<>();
    List<String> shared = files.list(FOLDER, ".yaml");
    List<String> paths = new ArrayList<>(files.list(folder, ".yaml"));
    if (!paths.contains(LIMITS)) {
      paths.add(LIMITS);
    }
    for (String needed : List.of(CONTRADICTIONS, LIMITS)) {
      if (!shared.contains(needed)) {
        paths.remove(needed);
        faults.add(new Fault(needed, 0, 0, "this file of the rule base is missing", "restore it"));
      }
    }
    Map<String, Node> trees = new LinkedHashMap<>();
    for (String path : paths) {
      try {
        trees.put(path, YamlTree.read(path, files.read(path), LARGEST_FILE));
      } catch (ScenarioFaults e) {
        faults.addAll(e.faults());
      }
    }
    trees.forEach(
        (path, tree) -> {
          if (!path.equals(CONTRADICTIONS) && !path.equals(LIMITS)) {
            book.facts(path, tree, faults);
          }
        });
    if (trees.get(LIMITS) instanceof Node.Keys keys) {
      book.limits(keys, faults);
    }
    if (faults.isEmpty() && trees.get(CONTRADICTIONS) instanceof Node.Items items) {
      book.contradictions(items, faults);
    }
    if (!faults.isEmpty()) {
      throw new ScenarioFaults(faults);
    }
    return book;
  }

  /** Every fact, in the order of the facts files. */
  public Collection<FactDefinition> definitions() {
    return Collections.unmodifiableCollection(definitions.values());
  }

  /**
   * The fact of a key.
   *
   * @param key the whole key ({@code subfloor.joists.clear span}) or the end of it ({@code
   *     joists.clear span}, {@code clear_span}) where only one fact ends so; letter case, hyphens,
   *     underscores and {@code []} are not minded
   * @return the fact, or empty if there is none or more than one
   */
  public Optional<FactDefinition> find(String key) {
    FactDefinition exact = definitions.get(key);
    if (exact != null) {
      return Optional.of(exact);
    }
    String wanted = plain(key);
    FactDefinition found = null;
    for (FactDefinition definition : definitions.values()) {
      String known = plain(definition.key());
      if (known.equals(wanted) || known.equals(wanted + ".kind") && isShorthand(definition)) {
        return Optional.of(definition);
      }
      if (known.endsWith("." + wanted)) {
        if (found != null) {
          return Optional.empty();
        }
        found = definition;
      }
    }
    return Optional.ofNullable(found);
  }

  private static boolean isShorthand(FactDefinition definition) {
    return !definition.shorthandFor().isEmpty();
  }

  private static String plain(String key) {
    return Words.alike(key.replace("[]", ""));
  }

  /**
   * A limit on what a scenario may hold.
   *
   * @param name its name in {@code rules/facts/limits.yaml}
   * @return its value in the base unit
   * @throws IllegalStateException if the rule base holds no such limit
   */
  double limit(String name) {
    return limitAsWritten(name).value();
  }

  /** A limit as the file writes it. */
  Quantity limitAsWritten(String name) {
    Quantity limit = limits.get(name);
    if (limit == null) {
      throw new IllegalStateException(LIMITS + " holds no " + name);
    }
    return limit;
  }

  KeyNode root() {
    return root;
  }

  /** What files by this book are called in messages, such as {@code the scenario}. */
  String subject() {
    return root.inWords();
  }

  List<Contradiction> contradictions() {
    return contradictions;
  }

  private void facts(String file, Node tree, List<Fault> faults) {
    if (!(tree instanceof Node.Keys keys)) {
      faults.add(new Fault(file, 1, 1, "a facts file holds one key for each fact", ""));
      return;
    }
    for (Node.Entry entry : keys.entries()) {
      if (entry.value() instanceof Node.Keys properties) {
        FactDefinition fact = new FactReader(file, entry, properties, faults).read();
        if (fact == null) {
          continue;
        }
        if (definitions.put(fact.key(), fact) != null) {
          faults.add(
              new Fault(
                  file,
                  entry.line(),
                  entry.column(),
                  "the fact " + fact.key() + " is defined twice",
                  "keep one of the two"));
        }
        place(fact, entry, faults);
      } else {
        faults.add(
            new Fault(
                file,
                entry.line(),
                entry.column(),
                "the fact " + entry.key() + " has nothing under it",
                "write at least: called, kind, means and example"));
      }
    }
  }

  /** Puts a fact into the tree of keys. */
  private void place(FactDefinition fact, Node.Entry entry, List<Fault> faults) {
    KeyNode node = root;
    int start = 0;
    String key = fact.key();
    while (start < key.length()) {
      int dot = key.indexOf('.', start);
      int end = dot < 0 ? key.length() : dot;
      String name = key.substring(start, end);
      String path = key.substring(0, end);
      String plainName = name.endsWith("[]") ? name.substring(0, name.length() - 2) : name;
      node =
          node.children.computeIfAbsent(
              Words.alike(plainName), alike -> new KeyNode(plainName, path));
      start = end + 1;
    }
    node.fact = fact;
    if (!fact.shorthandFor().isEmpty()) {
      KeyNode group = root;
      for (String name : fact.shorthandFor().split("\\.")) {
        group = group == null ? null : group.child(name);
      }
      if (group == null) {
        faults.add(
            new Fault(
                fact.file(),
                entry.line(),
                entry.column(),
                Words.quote(fact.shorthandFor()) + " is no key that groups this fact",
                ""));
      } else {
        group.shorthand = fact;
      }
    }
  }

  private void limits(Node.Keys keys, List<Fault> faults) {
    for (Node.Entry entry : keys.entries()) {
      if (entry.value() instanceof Node.Keys properties
          && properties.get("value") instanceof Node.Scalar value
          && properties.get("dimension") instanceof Node.Scalar dimension
          && Dimension.named(dimension.text()).isPresent()) {
        try {
          limits.put(
              entry.key(),
              Quantity.parse(value.text(), Dimension.named(dimension.text()).orElseThrow()));
        } catch (NotAQuantity e) {
          faults.add(new Fault(LIMITS, value.line(), value.column(), e.getMessage(), ""));
        }
      } else {
        faults.add(
            new Fault(
                LIMITS,
                entry.line(),
                entry.column(),
                "the limit " + entry.key() + " needs description, dimension and value",
                ""));
      }
    }
  }

  private void contradictions(Node.Items items, List<Fault> faults) {
    for (Node item : items.items()) {
      int before = faults.size();
      Contradiction read = item instanceof Node.Keys keys ? contradiction(keys, faults) : null;
      if (read != null) {
        contradictions.add(read);
      } else if (faults.size() == before) {
        faults.add(
            new Fault(
                CONTRADICTIONS,
                item.line(),
                item.column(),
                "a contradiction has one of three forms",
                "write: {greater: fact, than: fact, says: …},\n"
                    + "{one of: {fact: [values]}, given: fact, says: …} or\n"
                    + "{one of: {fact: [values]}, and: {fact: [values]}, says: …}"));
      }
    }
  }

  private Contradiction contradiction(Node.Keys keys, List<Fault> faults) {
    if (!(keys.get("says") instanceof Node.Scalar says)) {
      return null;
    }
    if (keys.get("greater") instanceof Node.Scalar first
        && keys.get("than") instanceof Node.Scalar second) {
      check(first.text(), first, faults);
      check(second.text(), second, faults);
      return new Contradiction(
          Contradiction.Form.GREATER,
          first.text(),
          List.of(),
          second.text(),
          List.of(),
          says.text());
    }
    Node.Entry first = only(keys.get("one of"));
    if (first == null) {
      return null;
    }
    List<String> firstValues = values(first, faults);
    if (keys.get("given") instanceof Node.Scalar second) {
      check(second.text(), second, faults);
      return new Contradiction(
          Contradiction.Form.GIVEN,
          first.key(),
          firstValues,
          second.text(),
          List.of(),
          says.text());
    }
    Node.Entry second = only(keys.get("and"));
    if (second == null) {
      return null;
    }
    return new Contradiction(
        Contradiction.Form.AND,
        first.key(),
        firstValues,
        second.key(),
        values(second, faults),
        says.text());
  }

  private static Node.Entry only(Node node) {
    return node instanceof Node.Keys keys && keys.entries().size() == 1
        ? keys.entries().get(0)
        : null;
  }

  private void check(String key, Node at, List<Fault> faults) {
    if (!definitions.containsKey(key)) {
      String near = Nearest.to(key, definitions.keySet());
      faults.add(
          new Fault(
              CONTRADICTIONS,
              at.line(),
              at.column(),
              Words.quote(key) + " is not a fact",
              near.isEmpty() ? "" : "write: " + near));
    }
  }

  private List<String> values(Node.Entry entry, List<Fault> faults) {
    check(entry.key(), entry.value(), faults);
    FactDefinition fact = definitions.get(entry.key());
    List<String> values = new ArrayList<>();
    if (entry.value() instanceof Node.Items items) {
      for (Node item : items.items()) {
        String text = item instanceof Node.Scalar scalar ? scalar.text() : "";
        values.add(text);
        if (fact != null && fact.kind() == Kind.CHOICE && !fact.of().contains(text)) {
          faults.add(
              new Fault(
                  CONTRADICTIONS,
                  item.line(),
                  item.column(),
                  Words.quote(text) + " is not a choice of " + fact.key(),
                  ""));
        }
      }
    }
    return values;
  }

  /** Reads one fact's definition. */
  private static final class FactReader {
    private final String file;
    private final Node.Entry entry;
    private final Map<String, Node> properties = new LinkedHashMap<>();
    private final List<Fault> faults;

    FactReader(String file, Node.Entry entry, Node.Keys keys, List<Fault> faults) {
      this.file = file;
      this.entry = entry;
      this.faults = faults;
      for (Node.Entry property : keys.entries()) {
        if (!PROPERTIES.contains(property.key())) {
          String near = Nearest.to(property.key(), PROPERTIES);
          fault(
              property.line(),
              property.column(),
              Words.quote(property.key()) + " is not a property of a fact",
              near.isEmpty() ? "" : "write: " + near);
        } else if (properties.put(property.key(), property.value()) != null) {
          fault(
              property.line(),
              property.column(),
              property.key() + " is written twice for " + entry.key(),
              "keep one of the two");
        }
      }
    }

    FactDefinition read() {
      Optional<Kind> kind = Kind.named(text("kind"));
      if (kind.isEmpty()) {
        fault(
            entry.line(),
            entry.column(),
            entry.key() + " needs a kind, but has " + Words.quote(text("kind")),
            "write one of: text, choice, choices, yes-no, quantity, count, year, date, points,"
                + " readings, list");
        return null;
      }
      Dimension dimension = Dimension.named(text("dimension")).orElse(null);
      if (kind.get() == Kind.QUANTITY && dimension == null) {
        fault(
            entry.line(),
            entry.column(),
            entry.key() + " is a quantity, so it needs a dimension",
            "for example: dimension: length");
        return null;
      }
      List<String> of = texts("of");
      if ((kind.get() == Kind.CHOICE || kind.get() == Kind.CHOICES) && of.isEmpty()) {
        fault(entry.line(), entry.column(), entry.key() + " needs its choices", "write: of: […]");
      }
      String called = text("called");
      Dimension measure = kind.get() == Kind.QUANTITY ? dimension : Dimension.NUMBER;
      return new FactDefinition(
          entry.key(),
          called.isEmpty() ? Words.last(entry.key()) : called,
          kind.get(),
          of,
          map("also"),
          map("refused"),
          kind.get() == Kind.QUANTITY ? dimension : null,
          bound("least", measure),
          bound("most", measure),
          text("least"),
          text("most"),
          text("required").equals("true"),
          text("shorthand for"),
          text("means"),
          text("ask"),
          text("look"),
          texts("otherwise"),
          text("example"),
          file,
          entry.line());
    }

    private double bound(String property, Dimension dimension) {
      if (!(properties.get(property) instanceof Node.Scalar scalar)) {
        return Double.NaN;
      }
      try {
        return Quantity.parse(scalar.text(), dimension).value();
      } catch (NotAQuantity e) {
        fault(scalar.line(), scalar.column(), property + ": " + e.getMessage(), e.suggestion());
        return Double.NaN;
      }
    }

    private String text(String property) {
      Node node = properties.get(property);
      if (node == null) {
        return "";
      }
      if (node instanceof Node.Scalar scalar) {
        return scalar.text();
      }
      fault(node.line(), node.column(), property + " must be one text", "");
      return "";
    }

    private List<String> texts(String property) {
      Node node = properties.get(property);
      if (node == null) {
        return List.of();
      }
      List<String> texts = new ArrayList<>();
      if (node instanceof Node.Items items) {
        for (Node item : items.items()) {
          if (item instanceof Node.Scalar scalar) {
            texts.add(scalar.text());
          } else {
            fault(item.line(), item.column(), property + " holds texts only", "");
          }
        }
      } else {
        fault(node.line(), node.column(), property + " must be a list", "");
      }
      return Collections.unmodifiableList(texts);
    }

    private Map<String, String> map(String property) {
      Node node = properties.get(property);
      if (node == null) {
        return Map.of();
      }
      Map<String, String> map = new LinkedHashMap<>();
      if (node instanceof Node.Keys keys) {
        for (Node.Entry each : keys.entries()) {
          if (each.value() instanceof Node.Scalar scalar) {
            map.put(each.key(), scalar.text());
          } else {
            fault(each.line(), each.column(), property + " holds texts only", "");
          }
        }
      } else {
        fault(node.line(), node.column(), property + " must hold keys", "");
      }
      return Collections.unmodifiableMap(map);
    }

    private void fault(int line, int column, String what, String how) {
      faults.add(new Fault(file, line, column, what, how));
    }
  }
}
