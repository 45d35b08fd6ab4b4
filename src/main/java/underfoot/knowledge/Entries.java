package underfoot.knowledge;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.scenario.Node;
import underfoot.scenario.RuleFiles;
import underfoot.scenario.ScenarioFaults;

/**
 * Reads a file of the knowledge base: named entries, each a text or a small table of texts, lists
 * and rows of their own.
 */
final class Entries {
  /** Largest file that is read; it cannot be a limit of the rules, of which it is a file. */
  private static final int MOST_BYTES = 1 << 20;

  private Entries() {}

  /**
   * One entry.
   *
   * @param name its key
   * @param file where it stands
   * @param line where it stands
   * @param fields its texts by name; a bare text has the name {@code text}
   * @param lists its lists by name; a bare list has the name {@code list}
   * @param rows its tables, one or a list of them, by name; each bears the name of the entry itself
   */
  record Entry(
      String name,
      String file,
      int line,
      Map<String, String> fields,
      Map<String, List<String>> lists,
      Map<String, List<Entry>> rows) {
    String field(String field) {
      return fields.getOrDefault(field, "");
    }

    /** The names of a field: a list, or one name alone; none where it is not there. */
    List<String> named(String field) {
      List<String> list = lists.get(field);
      String one = field(field);
      return list != null ? list : one.isEmpty() ? List.of() : List.of(one);
    }

    String required(String field) throws KnowledgeFault {
      String value = fields.get(field);
      if (value == null || value.isBlank()) {
        throw new KnowledgeFault(
            file, line, "'" + name + "' has no " + field + "; write " + field + ": …");
      }
      return value;
    }
  }

  /** Reads every file of a folder, in the order of their names. */
  static List<Entry> readFolder(RuleFiles files, String folder) throws KnowledgeFault {
    List<Entry> all = new ArrayList<>();
    for (String path : files.list(folder, ".yaml")) {
      all.addAll(readFile(files, path));
    }
    return all;
  }

  /** Reads one file. */
  static List<Entry> readFile(RuleFiles files, String path) throws KnowledgeFault {
    Node tree;
    try {
      tree = files.tree(path, MOST_BYTES);
    } catch (ScenarioFaults e) {
      throw new KnowledgeFault(path, e.faults().get(0).line(), e.faults().get(0).what());
    }
    if (!(tree instanceof Node.Keys keys)) {
      throw new KnowledgeFault(
          path,
          tree.line(),
          "the file must be a list of entries, each written as name: and what is said of it");
    }
    List<Entry> entries = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (Node.Entry entry : keys.entries()) {
      if (!names.add(entry.key())) {
        throw new KnowledgeFault(path, entry.line(), "'" + entry.key() + "' stands twice");
      }
      entries.add(read(path, entry));
    }
    return entries;
  }

  private static Entry read(String path, Node.Entry entry) throws KnowledgeFault {
    return read(path, entry.key(), entry.line(), entry.value());
  }

  private static Entry read(String path, String name, int line, Node value) throws KnowledgeFault {
    Map<String, String> fields = new LinkedHashMap<>();
    Map<String, List<String>> lists = new LinkedHashMap<>();
    Map<String, List<Entry>> rows = new LinkedHashMap<>();
    if (value instanceof Node.Keys keys) {
      for (Node.Entry field : keys.entries()) {
        List<Node> tables = tables(field.value());
        if (!tables.isEmpty()) {
          List<Entry> each = new ArrayList<>();
          for (Node table : tables) {
            each.add(read(path, name, table.line(), table));
          }
          rows.put(field.key(), List.copyOf(each));
        } else if (field.value() instanceof Node.Items items) {
          lists.put(field.key(), list(path, items));
        } else if (fields.put(field.key(), scalar(path, field.value())) != null) {
          throw new KnowledgeFault(path, field.line(), "'" + field.key() + "' stands twice");
        }
      }
    } else if (value instanceof Node.Items items) {
      lists.put("list", list(path, items));
    } else {
      fields.put("text", scalar(path, value));
    }
    return new Entry(name, path, line, fields, lists, rows);
  }

  private static List<Node> tables(Node value) {
    return value instanceof Node.Keys
        ? List.of(value)
        : value instanceof Node.Items items
                && !items.items().isEmpty()
                && items.items().get(0) instanceof Node.Keys
            ? items.items()
            : List.of();
  }

  private static List<String> list(String path, Node.Items items) throws KnowledgeFault {
    List<String> list = new ArrayList<>();
    for (Node item : items.items()) {
      list.add(scalar(path, item));
    }
    return list;
  }

  private static String scalar(String path, Node node) throws KnowledgeFault {
    if (node instanceof Node.Scalar scalar) {
      return scalar.text();
    }
    throw new KnowledgeFault(path, node.line(), "a text or a number belongs here");
  }
}
