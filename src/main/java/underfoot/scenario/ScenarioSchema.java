package underfoot.scenario;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import underfoot.quantity.Dimension;
import underfoot.quantity.Unit;

/** Writes the JSON Schema (draft 2020-12) of a scenario file, for editors. */
public final class ScenarioSchema {
  private static final String NUMBER =
      "(?:[0-9]+[ -])?[0-9]+/[0-9]+|[0-9]*\\.?[0-9]+(?:[eE][-+]?[0-9]+)?";
  private static final List<String> NOT_KNOWN =
      List.of("unknown", "not known", "?", "don't know", "n/a", "not applicable");

  private final StringBuilder out = new StringBuilder(64_000);
  private int depth;

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
    ScenarioSchema schema = new ScenarioSchema();
    schema.document(book, title);
    return schema.out.append('\n').toString();
  }

  private void document(FactBook book, String title) {
    open('{');
    text("$schema", "https://json-schema.org/draft/2020-12/schema");
    text("title", title);
    group(book.root());
    key("$defs");
    open('{');
    key("not known");
    open('{');
    text("description", "The fact is unknown, or does not apply");
    strings("enum", NOT_KNOWN);
    close('}');
    for (Dimension dimension : Dimension.values()) {
      if (book.definitions().stream().anyMatch(fact -> fact.dimension() == dimension)
          || dimension == Dimension.LENGTH) {
        key(dimension.word());
        open('{');
        text("description", describe(dimension));
        if (dimension == Dimension.NUMBER) {
          strings("type", List.of("number", "string"));
        } else {
          text("type", "string");
        }
        text("pattern", pattern(dimension));
        close('}');
      }
    }
    close('}');
    close('}');
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

  /** The properties of a group of keys, without the braces around them. */
  private void group(KeyNode node) {
    text("type", "object");
    bool("additionalProperties", false);
    List<String> required = new ArrayList<>();
    for (KeyNode child : node.children.values()) {
      if (needed(child)) {
        required.add(child.name);
      }
    }
    if (!required.isEmpty()) {
      strings("required", required);
    }
    key("properties");
    open('{');
    for (KeyNode child : node.children.values()) {
      key(child.name);
      open('{');
      property(child);
      close('}');
    }
    close('}');
  }

  private static boolean needed(KeyNode node) {
    if (node.fact != null) {
      return node.fact.required();
    }
    return node.children.values().stream().anyMatch(ScenarioSchema::needed);
  }

  private void property(KeyNode node) {
    if (node.fact == null) {
      key("anyOf");
      open('[');
      item();
      open('{');
      group(node);
      close('}');
      if (node.shorthand != null) {
        item();
        open('{');
        fact(node.shorthand, node);
        close('}');
      } else if (!needed(node)) {
        notKnown();
      }
      close(']');
    } else {
      fact(node.fact, node);
    }
  }

  private void fact(FactDefinition fact, KeyNode node) {
    text("description", fact.means());
    if (!fact.ask().isEmpty() || !fact.look().isEmpty()) {
      text("$comment", (fact.ask() + " " + fact.look()).trim());
    }
    key("anyOf");
    open('[');
    item();
    open('{');
    value(fact, node);
    close('}');
    if (!fact.required()) {
      notKnown();
    }
    close(']');
  }

  private void value(FactDefinition fact, KeyNode node) {
    switch (fact.kind()) {
      case TEXT -> strings("type", List.of("string", "number"));
      case CHOICE -> choice(fact);
      case CHOICES -> {
        text("type", "array");
        bool("uniqueItems", true);
        key("items");
        open('{');
        choice(fact);
        close('}');
      }
      case YES_NO -> {
        key("enum");
        out.append("[true, false, \"yes\", \"no\"]");
      }
      case QUANTITY -> text("$ref", "#/$defs/" + fact.dimension().word().replace(" ", "%20"));
      case COUNT, YEAR -> {
        text("type", "integer");
        number("minimum", fact.least());
        number("maximum", fact.most());
      }
      case DATE -> {
        text("type", "string");
        text("pattern", "^[0-9]{4}-[0-9]{2}-[0-9]{2}$");
      }
      case POINTS -> tuples(2);
      case READINGS -> tuples(3);
      case LIST -> {
        text("type", "array");
        key("items");
        open('{');
        group(node);
        close('}');
      }
    }
  }

  private void choice(FactDefinition fact) {
    Set<String> all = new LinkedHashSet<>(fact.of());
    all.addAll(fact.also().keySet());
    strings("enum", new ArrayList<>(all));
  }

  private void tuples(int each) {
    text("type", "array");
    key("items");
    open('{');
    text("type", "array");
    key("minItems");
    out.append(each);
    key("maxItems");
    out.append(each);
    key("items");
    open('{');
    text("$ref", "#/$defs/length");
    close('}');
    close('}');
  }

  private void notKnown() {
    item();
    open('{');
    text("$ref", "#/$defs/not%20known");
    close('}');
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

  private void key(String key) {
    item();
    string(key);
    out.append(": ");
  }

  private void text(String key, String value) {
    key(key);
    string(value);
  }

  private void bool(String key, boolean value) {
    key(key);
    out.append(value);
  }

  private void number(String key, double value) {
    if (!Double.isNaN(value)) {
      key(key);
      out.append(Math.round(value));
    }
  }

  private void strings(String key, List<String> values) {
    key(key);
    out.append('[');
    for (int i = 0; i < values.size(); i++) {
      out.append(i == 0 ? "" : ", ");
      string(values.get(i));
    }
    out.append(']');
  }

  /** Begins the next key or entry: a comma after the one before, and a new line. */
  private void item() {
    char before = out.charAt(out.length() - 1);
    if (before != '{' && before != '[') {
      out.append(',');
    }
    line();
  }

  private void open(char brace) {
    out.append(brace);
    depth++;
  }

  private void close(char brace) {
    depth--;
    line();
    out.append(brace);
  }

  private void line() {
    out.append('\n').append("  ".repeat(depth));
  }

  private void string(String value) {
    out.append('"');
    for (int i = 0; i < value.length(); i++) {
      char c = value.charAt(i);
      if (c == '"' || c == '\\') {
        out.append('\\').append(c);
      } else if (c < ' ') {
        out.append(String.format("\\u%04x", (int) c));
      } else {
        out.append(c);
      }
    }
    out.append('"');
  }
}
