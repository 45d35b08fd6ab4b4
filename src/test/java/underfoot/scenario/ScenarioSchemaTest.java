package underfoot.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

@DisplayName("The JSON Schema")
class ScenarioSchemaTest {
  private static final JsonNode SCHEMA =
      JsonMapper.shared().readTree(ScenarioSchema.of(Book.SHIPPED));

  @Test
  @DisplayName("is of draft 2020-12 and closed to unknown keys")
  void draft() {
    assertThat(SCHEMA.get("$schema").asString())
        .isEqualTo("https://json-schema.org/draft/2020-12/schema");
    assertThat(SCHEMA.get("additionalProperties").asBoolean()).isFalse();
    List<String> required = new ArrayList<>();
    SCHEMA.get("required").forEach(name -> required.add(name.asString()));
    assertThat(required).containsExactly("scenario", "practice", "room", "subfloor", "tile");
  }

  @Test
  @DisplayName("takes the good scenarios")
  void good() throws Exception {
    assertThat(faults(Book.GOOD)).isEmpty();
    assertThat(faults(Book.LEAST)).isEmpty();
    assertThat(faults(Book.LEAST + "heating: unknown\n")).isEmpty();
    assertThat(faults(Book.LEAST + "heating: {kind: electric mat, output: 100 W/m2}\n")).isEmpty();
    assertThat(faults(Book.LEAST.replace("600 mm", "1 ft 11 1/2 in"))).isEmpty();
    assertThat(faults(Book.LEAST + "budget: {limit: £700}\n")).isEmpty();
  }

  @Test
  @DisplayName("refuses wrong units, bare numbers, unknown keys and choices, and missing facts")
  void bad() throws Exception {
    assertThat(faults(Book.LEAST.replace("600 mm", "600 kg"))).isNotEmpty();
    assertThat(faults(Book.LEAST.replace("600 mm", "600"))).isNotEmpty();
    assertThat(faults(Book.LEAST.replace("porcelain", "jelly"))).isNotEmpty();
    assertThat(faults(Book.LEAST.replace("porcelain", "unknown"))).isNotEmpty();
    assertThat(faults(Book.LEAST.replace("use:", "uses:"))).isNotEmpty();
    assertThat(faults(Book.LEAST.replace("practice: uk\n", ""))).isNotEmpty();
    assertThat(faults(Book.LEAST + "levels: {readings: [[1 m, 1 m]]}\n")).isNotEmpty();
    assertThat(faults(Book.LEAST + "site: {start: tomorrow}\n")).isNotEmpty();
  }

  @Test
  @DisplayName("takes every example the facts files give")
  void examples() throws Exception {
    for (FactDefinition fact : Book.SHIPPED.definitions()) {
      JsonNode at = SCHEMA;
      for (String name : fact.key().split("\\.")) {
        JsonNode properties = at.has("properties") ? at : at.get("anyOf").get(0);
        at = properties.get("properties").get(name.replace("[]", ""));
        if (name.endsWith("[]")) {
          at = at.get("anyOf").get(0).get("items");
        }
      }
      Node example = YamlTree.read("x", fact.example().getBytes(StandardCharsets.UTF_8), 10_000);
      assertThat(faults(at, example, fact.key())).as(fact.key()).isEmpty();
    }
  }

  @Test
  @DisplayName("takes the scenarios that are shipped")
  void shipped_scenarios() throws Exception {
    Path folder = Path.of("scenarios");
    if (!Files.isDirectory(folder)) {
      return;
    }
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).toList()) {
        assertThat(faults(Files.readString(file))).as(file.toString()).isEmpty();
      }
    }
  }

  private static List<String> faults(String yaml) throws ScenarioFaults {
    return faults(SCHEMA, YamlTree.read("x", yaml.getBytes(StandardCharsets.UTF_8), 1_000_000), "");
  }

  /** The keywords this schema uses, and no others: a keyword unknown here fails the test. */
  private static List<String> faults(JsonNode schema, Node node, String at) {
    List<String> faults = new ArrayList<>();
    String text = node instanceof Node.Scalar scalar ? scalar.text() : null;
    for (String keyword : schema.propertyNames()) {
      JsonNode value = schema.get(keyword);
      switch (keyword) {
        case "$schema", "title", "description", "$comment", "$defs", "uniqueItems" -> {
          // Says nothing of the value, or is not needed here.
        }
        case "$ref" -> {
          String name = value.asString().substring("#/$defs/".length()).replace("%20", " ");
          faults.addAll(faults(SCHEMA.get("$defs").get(name), node, at));
        }
        case "type" -> {
          List<String> types = new ArrayList<>();
          if (value.isArray()) {
            value.forEach(type -> types.add(type.asString()));
          } else {
            types.add(value.asString());
          }
          if (types.stream().noneMatch(type -> isOf(type, node))) {
            faults.add(at + " is not " + value);
          }
        }
        case "enum" -> {
          boolean found = false;
          for (JsonNode choice : value) {
            found |= choice.asString().equals(text);
          }
          if (!found) {
            faults.add(at + ": " + text + " is not one of " + value);
          }
        }
        case "pattern" -> {
          if (text != null && !Pattern.compile(value.asString()).matcher(text).find()) {
            faults.add(at + ": " + text + " does not match");
          }
        }
        case "minimum", "maximum" -> {
          boolean least = keyword.equals("minimum");
          if (text != null
              && isOf("integer", node)
              && (least
                  ? Integer.parseInt(text) < value.asInt()
                  : Integer.parseInt(text) > value.asInt())) {
            faults.add(at + ": " + text + " is out of range");
          }
        }
        case "anyOf" -> {
          List<String> all = new ArrayList<>();
          boolean fits = false;
          for (JsonNode option : value) {
            List<String> its = faults(option, node, at);
            fits |= its.isEmpty();
            all.addAll(its);
          }
          if (!fits) {
            faults.addAll(all);
          }
        }
        case "required" -> {
          for (JsonNode name : value) {
            if (node instanceof Node.Keys keys && keys.get(name.asString()) == null) {
              faults.add(at + " lacks " + name);
            }
          }
        }
        case "properties" -> {
          if (node instanceof Node.Keys keys) {
            for (Node.Entry entry : keys.entries()) {
              JsonNode property = value.get(entry.key());
              if (property == null) {
                faults.add(at + "." + entry.key() + " is not known");
              } else {
                faults.addAll(faults(property, entry.value(), at + "." + entry.key()));
              }
            }
          }
        }
        case "additionalProperties" -> assertThat(value.asBoolean()).isFalse();
        case "items" -> {
          if (node instanceof Node.Items items) {
            for (Node item : items.items()) {
              faults.addAll(faults(value, item, at + "[]"));
            }
          }
        }
        case "minItems", "maxItems" -> {
          if (node instanceof Node.Items items
              && (keyword.equals("minItems")
                  ? items.items().size() < value.asInt()
                  : items.items().size() > value.asInt())) {
            faults.add(at + " has a wrong number of entries");
          }
        }
        default -> throw new AssertionError("keyword " + keyword + " is not checked here");
      }
    }
    return faults;
  }

  private static boolean isOf(String type, Node node) {
    return switch (type) {
      case "object" -> node instanceof Node.Keys;
      case "array" -> node instanceof Node.Items;
      case "string" -> node instanceof Node.Scalar scalar && !isNumber(scalar.text());
      case "number" -> node instanceof Node.Scalar scalar && isNumber(scalar.text());
      case "integer" -> node instanceof Node.Scalar scalar && scalar.text().matches("-?[0-9]+");
      default -> throw new AssertionError("type " + type);
    };
  }

  private static boolean isNumber(String text) {
    return text.matches("-?[0-9]+(\\.[0-9]+)?");
  }
}
