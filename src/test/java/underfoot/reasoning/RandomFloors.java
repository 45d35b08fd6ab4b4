package underfoot.reasoning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import underfoot.scenario.FactBook;
import underfoot.scenario.FactDefinition;

/**
 * Makes up floors from the facts that scenarios may state. The same seed gives the same floors. A
 * fact is stated about two times in three, and left out or said to be unknown otherwise.
 */
final class RandomFloors {
  private static final List<String> JOISTED =
      List.of("square-edged boards", "tongue-and-groove boards", "chipboard", "OSB", "plywood");

  private final FactBook book;
  private final Random random;

  RandomFloors(FactBook book, long seed) {
    this.book = book;
    this.random = new Random(seed);
  }

  /** One floor as a scenario file; {@code fixed} facts have the values given. */
  String next(Map<String, String> fixed) {
    Map<String, Object> tree = new LinkedHashMap<>();
    put(tree, "scenario", "Made up");
    String deck = fixed.getOrDefault("subfloor.deck", pick(choices("subfloor.deck")));
    String heating = fixed.getOrDefault("heating.kind", pick(choices("heating.kind")));
    put(tree, "subfloor.deck", deck);
    boolean joists = JOISTED.contains(deck);
    for (FactDefinition definition : book.definitions()) {
      String key = definition.key();
      boolean ofTimber = key.startsWith("subfloor.joists") || key.equals("subfloor.board width");
      if (key.contains("[]") || isGeometry(key) || (ofTimber && !joists)) {
        continue;
      }
      if (key.equals("heating.output") && heating.equals("none")) {
        continue;
      }
      String value = key.equals("heating.kind") ? heating : fixed.get(key);
      if (value == null && (definition.required() || random.nextInt(3) > 0)) {
        value = value(definition);
      }
      if (value != null && !value.isEmpty()) {
        put(tree, key, value);
      }
    }
    if (random.nextBoolean()) {
      put(tree, "room.outline", outline());
    }
    if (random.nextInt(3) > 0) {
      put(tree, "room.doors", doors());
    }
    StringBuilder yaml = new StringBuilder();
    write(yaml, tree, "");
    return yaml.toString();
  }

  private List<String> choices(String key) {
    return book.find(key).orElseThrow().of();
  }

  private static boolean isGeometry(String key) {
    return key.equals("room.outline")
        || key.equals("subfloor.deck")
        || key.equals("levels.readings")
        || key.equals("scenario");
  }

  private String outline() {
    double x = 1 + random.nextInt(90) / 10.0;
    double y = 1 + random.nextInt(60) / 10.0;
    return "[[0 m, 0 m], [" + x + " m, 0 m], [" + x + " m, " + y + " m], [0 m, " + y + " m]]";
  }

  private String doors() {
    List<String> doors = new ArrayList<>();
    int count = 1 + random.nextInt(2);
    for (int i = 0; i < count; i++) {
      StringBuilder door = new StringBuilder("{name: door " + (char) ('A' + i));
      for (FactDefinition definition : book.definitions()) {
        boolean placed = definition.key().endsWith("].wall") || definition.key().endsWith("].from");
        if (definition.key().startsWith("room.doors[].")
            && !definition.key().endsWith("].name")
            && !placed
            && random.nextInt(3) > 0) {
          door.append(", ")
              .append(definition.key().substring("room.doors[].".length()))
              .append(": ")
              .append(value(definition));
        }
      }
      doors.add(door + "}");
    }
    return "[" + String.join(", ", doors) + "]";
  }

  private String value(FactDefinition definition) {
    if (!definition.required() && random.nextInt(10) == 0) {
      return "unknown";
    }
    return switch (definition.kind()) {
      case CHOICE -> pick(definition.of());
      case YES_NO -> random.nextBoolean() ? "yes" : "no";
      case CHOICES -> "[" + pick(definition.of()) + "]";
      case YEAR -> Integer.toString(1880 + random.nextInt(145));
      case DATE -> "2026-03-0" + (1 + random.nextInt(9));
      case TEXT -> definition.example();
      case QUANTITY, COUNT -> quantity(definition);
      default -> "";
    };
  }

  private String quantity(FactDefinition definition) {
    List<String> likely = new ArrayList<>(definition.otherwise());
    likely.add(definition.example());
    return pick(likely);
  }

  private String pick(List<String> of) {
    return of.get(random.nextInt(of.size()));
  }

  @SuppressWarnings("unchecked")
  private static void put(Map<String, Object> tree, String key, String value) {
    String[] path = key.split("\\.");
    Map<String, Object> at = tree;
    for (int i = 0; i < path.length - 1; i++) {
      at = (Map<String, Object>) at.computeIfAbsent(path[i], k -> new LinkedHashMap<>());
    }
    at.put(path[path.length - 1], value);
  }

  @SuppressWarnings("unchecked")
  private static void write(StringBuilder yaml, Map<String, Object> tree, String indent) {
    tree.forEach(
        (key, value) -> {
          if (value instanceof Map<?, ?> map) {
            yaml.append(indent).append(key).append(":\n");
            write(yaml, (Map<String, Object>) map, indent + "  ");
          } else {
            yaml.append(indent).append(key).append(": ").append(value).append('\n');
          }
        });
  }
}
