package underfoot.scenario;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
  private final Map<String, FactDefinition> definitions = new LinkedHashMap<>();
  private final Map<String, Quantity> limits = new LinkedHashMap<>();
  private final List<Contradiction> contradictions = new ArrayList<>();
  private final KeyNode root;

  private final SharedKeys shared;

  private FactBook(String subject) {
    root = new KeyNode(subject, "");
    shared = new SharedKeys(root);
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
        trees.put(path, files.tree(path, LARGEST_FILE));
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

  /** The fact that names the entries of a list where they have no name; empty if none does. */
  public Optional<FactDefinition> knownBy(FactDefinition list) {
    return list.knownBy().isEmpty() ? Optional.empty() : find(list.key() + "[]." + list.knownBy());
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
        if (found != null && found.ofEntries() == definition.ofEntries()) {
          return Optional.empty();
        }
        found = found == null || found.ofEntries() ? definition : found; // the room's own first
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
   * A limit on what comes from outside: what a scenario may hold, how large a file may be.
   *
   * @param name its name in {@code rules/facts/limits.yaml}
   * @return its value in the base unit
   * @throws IllegalStateException if the rule base holds no such limit
   */
  public double limit(String name) {
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
              Fault.at(
                  file,
                  entry,
                  "the fact " + fact.key() + " is defined twice",
                  "keep one of the two"));
        }
        place(fact, entry, faults);
        shared.of(fact, properties);
      } else {
        faults.add(
            Fault.at(
                file,
                entry,
                "the fact " + entry.key() + " has nothing under it",
                "write at least: called, kind, means and example"));
      }
    }
    shared.share(file, faults);
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
      KeyNode group = root.beneath(fact.shorthandFor());
      if (group == null) {
        faults.add(
            Fault.at(
                fact.file(),
                entry,
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
          faults.add(Fault.at(LIMITS, value, e.getMessage(), ""));
        }
      } else {
        faults.add(
            Fault.at(
                LIMITS,
                entry,
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
            Fault.at(
                CONTRADICTIONS,
                item,
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
          Fault.at(
              CONTRADICTIONS,
              at,
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
              Fault.at(
                  CONTRADICTIONS,
                  item,
                  Words.quote(text) + " is not a choice of " + fact.key(),
                  ""));
        }
      }
    }
    return values;
  }
}
