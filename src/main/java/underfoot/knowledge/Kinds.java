package underfoot.knowledge;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import underfoot.scenario.Node;
import underfoot.scenario.RuleFiles;
import underfoot.scenario.ScenarioFaults;

/**
 * What there is to say of each kind of a thing: a table a file in {@code rules/kinds}, a row a
 * kind, a column an attribute. Rules take from a row what they ask for, so a new kind is a new row.
 */
public final class Kinds {
  /** Largest file that is read; it cannot be a limit of the rules, of which it is a file. */
  private static final int MOST_BYTES = 1 << 20;

  private static final String NONE = "none";
  private static final String ITSELF = "itself";
  private static final String IS = "is";
  private static final String VALUES = "values";

  private final List<Table> tables;
  private final Map<String, Map<String, List<Said>>> byFact = new LinkedHashMap<>();
  private final Set<String> called = new HashSet<>();

  private Kinds(List<Table> tables) {
    this.tables = List.copyOf(tables);
    for (Table table : tables) {
      table.facts().forEach((fact, names) -> said(table, fact, names));
    }
  }

  private void said(Table table, String fact, Map<String, String> names) {
    called.addAll(names.values());
    Map<String, List<Said>> ofFact = byFact.computeIfAbsent(fact, any -> new LinkedHashMap<>());
    for (Row row : table.rows()) {
      List<Said> all = new ArrayList<>();
      names.forEach(
          (attribute, name) -> {
            Cell cell = row.cells().get(attribute);
            if (cell != null) {
              Sort sort = table.attributes().get(attribute).sort();
              all.add(new Said(name, sort, cell.value(), cell.reason(), cell.source()));
            }
          });
      ofFact.put(row.kind(), List.copyOf(all));
    }
  }

  /** What the values of an attribute are. */
  public enum Sort {
    /** Words that rules compare with. */
    WORDS,
    /** The name of a figure. */
    FIGURE,
    /** The id of a wording. */
    WORDING,
    /** The id of a kind of layer. */
    LAYER,
    /** A class of material. */
    CLASS
  }

  /**
   * What a row says of a fact that has its kind as value.
   *
   * @param called what the fact that follows is called
   * @param sort what the value is
   * @param value the value, or the name of what has it
   * @param reason why, in one plain sentence
   * @param source the id of an entry of the bibliography
   */
  public record Said(String called, Sort sort, String value, String reason, String source) {}

  /**
   * A table of kinds.
   *
   * @param file where it stands
   * @param facts the facts whose values the kinds are; for each what its attributes are called
   * @param attributes the columns, by name
   * @param rows the kinds in the order of the file
   */
  public record Table(
      String file,
      Map<String, Map<String, String>> facts,
      Map<String, Attribute> attributes,
      List<Row> rows) {}

  /**
   * A column.
   *
   * @param sort what its values are
   * @param values those that may stand there; empty if any may
   * @param line where it stands
   */
  public record Attribute(Sort sort, Set<String> values, int line) {}

  /**
   * A kind.
   *
   * @param kind its name, a value of the facts of its table
   * @param cells what it has, by attribute; it has none of the others
   * @param line where it stands
   */
  public record Row(String kind, Map<String, Cell> cells, int line) {}

  /**
   * What a kind has.
   *
   * @param value the value, or the name of what has it
   * @param reason why
   * @param source the id of an entry of the bibliography
   */
  public record Cell(String value, String reason, String source) {}

  /** What all cells cite, one for each cell. */
  public List<String> citations() {
    return tables.stream()
        .flatMap(table -> table.rows().stream())
        .flatMap(row -> row.cells().values().stream())
        .map(Cell::source)
        .toList();
  }

  static Kinds load(
      RuleFiles files,
      Figures figures,
      Wording wording,
      Layers layers,
      Map<String, List<String>> scales,
      Set<String> sources)
      throws KnowledgeFault {
    Map<Sort, Predicate<String>> named =
        Map.of(
            Sort.WORDS, any -> true,
            Sort.FIGURE, figures::has,
            Sort.WORDING, wording.ids()::contains,
            Sort.LAYER, layers::has,
            Sort.CLASS, one -> scales.values().stream().anyMatch(scale -> scale.contains(one)));
    List<Table> tables = new ArrayList<>();
    for (String path : files.list("kinds", ".yaml")) {
      try {
        Node tree = files.tree(path, MOST_BYTES);
        tables.add(new Reader(path, named, sources).table(tree));
      } catch (ScenarioFaults e) {
        throw new KnowledgeFault(path, e.faults().get(0).line(), e.faults().get(0).what());
      }
    }
    return new Kinds(tables);
  }

  /** Every table, in the order of the files. */
  public List<Table> tables() {
    return tables;
  }

  /**
   * The kinds, by the fact they are values of, of which something of one of these values is said.
   */
  public Map<String, Set<String>> having(String name, Set<String> values) {
    Map<String, Set<String>> having = new LinkedHashMap<>();
    byFact.forEach(
        (fact, kinds) ->
            kinds.forEach(
                (kind, said) -> {
                  if (said.stream()
                      .anyMatch(one -> one.called().equals(name) && values.contains(one.value()))) {
                    having.computeIfAbsent(fact, any -> new HashSet<>()).add(kind);
                  }
                }));
    return having;
  }

  /** All values that rows say facts of that name have. */
  public Set<String> values(String name) {
    return byFact.values().stream()
        .flatMap(kinds -> kinds.values().stream())
        .flatMap(List::stream)
        .filter(one -> one.called().equals(name))
        .map(Said::value)
        .collect(Collectors.toSet());
  }

  /** Whether facts of that name are what rows say. */
  public boolean says(String name) {
    return called.contains(name);
  }

  /** The kinds that are values of a fact, in the order of the files. */
  public List<String> kinds(String fact) {
    return List.copyOf(byFact.getOrDefault(fact, Map.of()).keySet());
  }

  /** What is said of a fact of that value; nothing if there is no row for it. */
  public List<Said> of(String fact, String value) {
    return byFact.getOrDefault(fact, Map.of()).getOrDefault(value, List.of());
  }

  /** Reads one file. */
  private record Reader(String path, Map<Sort, Predicate<String>> named, Set<String> sources) {

    Table table(Node tree) throws KnowledgeFault {
      Map<String, Node> parts = keys(tree, Set.of("facts", "attributes", "kinds"));
      Map<String, Node> columns = keys(part(parts, "attributes", tree), null);
      Map<String, Attribute> attributes = new LinkedHashMap<>();
      for (Map.Entry<String, Node> column : columns.entrySet()) {
        attributes.put(column.getKey(), attribute(column.getValue()));
      }
      Map<String, Map<String, String>> facts = new LinkedHashMap<>();
      for (Map.Entry<String, Node> fact : keys(part(parts, "facts", tree), null).entrySet()) {
        Map<String, String> called = new LinkedHashMap<>();
        for (Map.Entry<String, Node> one : keys(fact.getValue(), attributes.keySet()).entrySet()) {
          called.put(one.getKey(), text(one.getValue()));
        }
        facts.put(fact.getKey(), called);
      }
      List<Row> rows = new ArrayList<>();
      for (Map.Entry<String, Node> row : keys(part(parts, "kinds", tree), null).entrySet()) {
        rows.add(row(row.getKey(), row.getValue(), attributes, columns));
      }
      return new Table(path, facts, attributes, List.copyOf(rows));
    }

    private Attribute attribute(Node node) throws KnowledgeFault {
      Map<String, Node> parts = keys(node, Set.of(IS, VALUES, "reason", "source"));
      String is = text(part(parts, IS, node));
      Sort sort = null;
      for (Sort one : Sort.values()) {
        sort = one.name().equalsIgnoreCase(is) ? one : sort;
      }
      if (sort == null) {
        throw fault(node, "'" + is + "' is no sort; write words, figure, wording, layer or class");
      }
      Set<String> values =
          parts.containsKey(VALUES) ? keys(parts.get(VALUES), null).keySet() : Set.of();
      boolean open = sort == Sort.FIGURE && values.size() < 2;
      return new Attribute(sort, open ? Set.of() : values, node.line());
    }

    private Row row(
        String kind, Node node, Map<String, Attribute> attributes, Map<String, Node> columns)
        throws KnowledgeFault {
      Map<String, Node> parts = keys(node, null);
      List<String> none = new ArrayList<>();
      if (parts.remove(NONE) instanceof Node.Items items) {
        for (Node item : items.items()) {
          none.add(text(item));
        }
      }
      Map<String, Cell> cells = new LinkedHashMap<>();
      for (Map.Entry<String, Node> part : parts.entrySet()) {
        Attribute attribute = attributes.get(part.getKey());
        if (attribute == null) {
          throw fault(
              part.getValue(),
              "'" + kind + "' has '" + part.getKey() + "', which is no attribute of this table");
        }
        cells.put(
            part.getKey(), cell(kind, part.getValue(), attribute, columns.get(part.getKey())));
      }
      for (String attribute : attributes.keySet()) {
        if (cells.containsKey(attribute) == none.contains(attribute)) {
          throw fault(
              node,
              "'" + kind + "' must have '" + attribute + "', or name it once under none: […]");
        }
      }
      for (String one : none) {
        if (!attributes.containsKey(one)) {
          throw fault(node, "'" + one + "' is no attribute of this table");
        }
      }
      return new Row(kind, cells, node.line());
    }

    private Cell cell(String kind, Node node, Attribute attribute, Node column)
        throws KnowledgeFault {
      boolean own = node instanceof Node.Keys;
      Map<String, Node> said = own ? keys(node, Set.of(IS, "reason", "source")) : Map.of(IS, node);
      String written = text(part(said, IS, node));
      String value = written.equals(ITSELF) ? kind : written;
      if (!attribute.values().isEmpty() && !attribute.values().contains(value)) {
        throw fault(
            node,
            "'" + value + "' is not among the values " + String.join(", ", attribute.values()));
      }
      if (!named.get(attribute.sort()).test(value)) {
        throw fault(
            node,
            "there is no " + attribute.sort().name().toLowerCase(Locale.ROOT) + " '" + value + "'");
      }
      String source = note("source", value, said, column, node);
      if (!sources.contains(Source.key(source))) {
        throw fault(node, "'" + source + "' is no source; see sources.yaml");
      }
      return new Cell(value, note("reason", value, said, column, node), source);
    }

    /** What the cell says of itself, or failing that its value, or its attribute. */
    private String note(String what, String value, Map<String, Node> said, Node column, Node at)
        throws KnowledgeFault {
      Map<String, Node> whole = keys(column, null);
      Map<String, Node> values =
          whole.containsKey(VALUES) ? keys(whole.get(VALUES), null) : Map.of();
      Map<String, Node> ofValue =
          values.containsKey(value)
              ? keys(values.get(value), Set.of("reason", "source"))
              : Map.of();
      for (Map<String, Node> one : List.of(said, ofValue, whole)) {
        if (one.containsKey(what)) {
          return text(one.get(what));
        }
      }
      throw fault(at, "'" + value + "' has no " + what + "; give it one there or in attributes");
    }

    private Node part(Map<String, Node> parts, String key, Node node) throws KnowledgeFault {
      if (!parts.containsKey(key)) {
        throw fault(node, "there is no '" + key + "' here; write " + key + ": …");
      }
      return parts.get(key);
    }

    /** The keys of a table, each once and none but those allowed; null allows any. */
    private Map<String, Node> keys(Node node, Set<String> allowed) throws KnowledgeFault {
      if (!(node instanceof Node.Keys keys)) {
        throw fault(node, "names and what is said of them belong here, each as name: …");
      }
      Map<String, Node> read = new LinkedHashMap<>();
      for (Node.Entry entry : keys.entries()) {
        if (allowed != null && !allowed.contains(entry.key())) {
          throw new KnowledgeFault(
              path,
              entry.line(),
              "'" + entry.key() + "' does not belong here; write " + String.join(", ", allowed));
        }
        if (read.put(entry.key(), entry.value()) != null) {
          throw new KnowledgeFault(path, entry.line(), "'" + entry.key() + "' stands twice");
        }
      }
      return read;
    }

    private String text(Node node) throws KnowledgeFault {
      if (node instanceof Node.Scalar scalar && !scalar.text().isBlank()) {
        return scalar.text();
      }
      throw fault(node, "a text belongs here");
    }

    private KnowledgeFault fault(Node node, String what) {
      return new KnowledgeFault(path, node.line(), what);
    }
  }
}
