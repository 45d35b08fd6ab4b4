package underfoot.scenario;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import underfoot.quantity.Dimension;
import underfoot.quantity.Unit;
import underfoot.quantity.Words;

/** Writes the JSON Schema (draft 2020-12) of a scenario file, for editors. */
public final class ScenarioSchema {
  private static final String NUMBER =
      "(?:[0-9]+[ -])?[0-9]+/[0-9]+|[0-9]*\\.?[0-9]+(?:[eE][-+]?[0-9]+)?";
  private static final List<String> NOT_KNOWN =
      List.of("unknown", "not known", "?", "don't know", "n/a", "not applicable");

  private static final Map<String, Object> UNKNOWN = Map.of("$ref", "#/$defs/not%20known");

  private ScenarioSchema() {}

  /**
   * The schema of the scenario files a rule base takes.
   *
   * @param book what may be said in a scenario
   * @return the schema as JSON text, ending in a line break
   */
  public static String of(FactBook book) {
    return of(book, "A floor to be tiled, as underfoot reads it");
  }

  /**
   * The schema of the proposal files a rule base takes.
   *
   * @param book what may be said in a proposal
   * @return the schema as JSON text, ending in a line break
   */
  public static String ofProposals(FactBook book) {
    return of(book, "A build-up somebody has in mind, as underfoot reads it");
  }

  private static String of(FactBook book, String title) {
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("title", title);
    schema.putAll(group(book.root()));
    Map<String, Object> shared = new LinkedHashMap<>();
    shared.put(
        "not known",
        object("description", "The fact is unknown, or does not apply", "enum", NOT_KNOWN));
    for (Dimension dimension : Dimension.values()) {
      if (dimension == Dimension.LENGTH
          || book.definitions().stream().anyMatch(fact -> fact.dimension() == dimension)) {
        boolean number = dimension == Dimension.NUMBER;
        shared.put(
            dimension.word(),
            object(
                "description",
                describe(dimension),
                "type",
                number ? List.of("number", "string") : "string",
                "pattern",
                pattern(dimension)));
      }
    }
    schema.put("$defs", shared);
    return JsonMapper.builder()
            .enable(SerializationFeature.INDENT_OUTPUT)
            .build()
            .writeValueAsString(schema)
        + "\n";
  }

  /** Keys and their values, in order. */
  private static Map<String, Object> object(Object... keysAndValues) {
    Map<String, Object> object = new LinkedHashMap<>();
    for (int i = 0; i < keysAndValues.length; i += 2) {
      object.put((String) keysAndValues[i], keysAndValues[i + 1]);
    }
    return object;
  }

  private static String describe(Dimension dimension) {
    List<String> symbols = new ArrayList<>();
    for (Unit unit : dimension.units()) {
      symbols.add(unit.symbol());
    }
    return symbols.isEmpty()
        ? "A number without a unit"
        : "A number and its unit: " + String.join(", ", symbols);
  }

  /** A group of keys. */
  private static Map<String, Object> group(KeyNode node) {
    Map<String, Object> group = object("type", "object", "additionalProperties", false);
    List<String> required = new ArrayList<>();
    Map<String, Object> properties = new LinkedHashMap<>();
    for (KeyNode child : node.children.values()) {
      boolean only = node.children.values().stream().noneMatch(child::isWrittenLike);
      boolean either = child.fact != null && !child.fact.insteadOfIt().isEmpty();
      if (only && !either && needed(child)) {
        required.add(child.name);
      }
      properties.put(child.name, child.fact == null ? any(child) : fact(child.fact, child));
    }
    if (!required.isEmpty()) {
      group.put("required", required);
    }
    for (KeyNode child : node.children.values()) {
      if (child.fact != null && child.fact.required() && !child.fact.insteadOfIt().isEmpty()) {
        String other = Words.last(child.fact.insteadOfIt());
        group.put(
            "anyOf",
            List.of(object("required", List.of(child.name)), object("required", List.of(other))));
      }
    }
    group.put("properties", properties);
    return group;
  }

  private static boolean needed(KeyNode node) {
    if (node.fact != null) {
      return node.fact.required();
    }
    return node.children.values().stream().anyMatch(ScenarioSchema::needed);
  }

  /** A group that may be written in short, or be unknown as a whole. */
  private static Map<String, Object> any(KeyNode node) {
    List<Object> ways = new ArrayList<>(List.of(group(node)));
    if (node.shorthand != null) {
      ways.add(fact(node.shorthand, node));
    } else if (!needed(node)) {
      ways.add(UNKNOWN);
    }
    return object("anyOf", ways);
  }

  private static Map<String, Object> fact(FactDefinition fact, KeyNode node) {
    Map<String, Object> property = object("description", fact.means());
    if (!fact.ask().isEmpty() || !fact.look().isEmpty()) {
      property.put("$comment", (fact.ask() + " " + fact.look()).trim());
    }
    Map<String, Object> value = value(fact, node);
    property.put("anyOf", fact.required() ? List.of(value) : List.of(value, UNKNOWN));
    return property;
  }

  private static Map<String, Object> value(FactDefinition fact, KeyNode node) {
    return switch (fact.kind()) {
      case TEXT -> object("type", List.of("string", "number"));
      case CHOICE -> choice(fact);
      case CHOICES -> object("type", "array", "uniqueItems", true, "items", choice(fact));
      case YES_NO -> object("enum", List.of(true, false, "yes", "no"));
      case QUANTITY -> object("$ref", "#/$defs/" + fact.dimension().word().replace(" ", "%20"));
      case COUNT, YEAR -> {
        Map<String, Object> whole = object("type", "integer");
        if (!Double.isNaN(fact.least())) {
          whole.put("minimum", Math.round(fact.least()));
        }
        if (!Double.isNaN(fact.most())) {
          whole.put("maximum", Math.round(fact.most()));
        }
        yield whole;
      }
      case DATE -> object("type", "string", "pattern", "^[0-9]{4}-[0-9]{2}-[0-9]{2}$");
      case POINTS -> tuples(2);
      case RECTANGLE -> {
        Map<String, Object> corners = tuples(2);
        corners.put("minItems", 2);
        corners.put("maxItems", 2);
        yield corners;
      }
      case READINGS -> tuples(3);
      case LIST -> {
        Map<String, Object> list = object("type", "array", "items", group(node));
        if (!Double.isNaN(fact.most())) {
          list.put("maxItems", Math.round(fact.most()));
        }
        yield list;
      }
    };
  }

  private static Map<String, Object> choice(FactDefinition fact) {
    Set<String> all = new LinkedHashSet<>(fact.of());
    all.addAll(fact.also().keySet());
    return object("enum", all);
  }

  private static Map<String, Object> tuples(int each) {
    Map<String, Object> length = object("$ref", "#/$defs/length");
    return object(
        "type",
        "array",
        "items",
        object("type", "array", "minItems", each, "maxItems", each, "items", length));
  }

  /** The pattern of a quantity: a number and a unit, or several of each. */
  private static String pattern(Dimension dimension) {
    if (dimension == Dimension.NUMBER) {
      return "^[-+]?(?:" + NUMBER + ")$";
    }
    Set<String> spellings =
        new TreeSet<>(
            Comparator.comparingInt(String::length).reversed().thenComparing(String::compareTo));
    dimension.spellings().forEach(spellings::add);
    StringBuilder units = new StringBuilder();
    for (String spelling : spellings) {
      units.append(units.length() == 0 ? "" : "|");
      for (char c : spelling.toCharArray()) {
        units.append("$^.()[]{}*+?|\\/".indexOf(c) >= 0 ? "\\" : "").append(c);
      }
    }
    String one = "(?:" + NUMBER + ") ?(?:" + units + ")";
    String first = dimension == Dimension.MONEY ? "(?:" + units + ") ?(?:" + NUMBER + ")|" : "";
    return "^[-+]?(?:" + first + one + "(?: ?" + one + ")*)$";
  }
}
