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

  private static final String AS_FOUND = "subfloor.as found";
  private static final String ITEMS = "room.heavy items";

  private final FactBook book;
  private final Random random;

  RandomFloors(FactBook book, long seed) {
    this.book = book;
    this.random = new Random(seed);
  }

  /** One floor as a scenario file; {@code fixed} facts have the values given. */
  String next(Map<String, String> fixed) {
    return written(tree(fixed));
  }

  /**
   * One floor with what an unusual floor has besides: layers as found, cuts in its joists, items
   * that stand on it, parts where it is otherwise, each as often as not.
   */
  String nextUnusual() {
    Map<String, Object> tree = tree(Map.of());
    of(tree, "room").remove("area");
    of(tree, "room").remove("longest side");
    if (random.nextBoolean()) {
      of(tree, "subfloor").remove("deck");
      for (FactDefinition definition : book.definitions()) {
        if (AS_FOUND.equals(definition.insteadOfIt())) {
          of(tree, "subfloor").remove(definition.word());
        }
      }
      put(tree, AS_FOUND, entries(AS_FOUND, 1 + random.nextInt(4)));
    }
    for (String cuts : List.of("notches", "holes")) {
      if (random.nextBoolean() && of(tree, "subfloor").containsKey("joists")) {
        put(tree, "subfloor.joists." + cuts, entries("subfloor.joists." + cuts, 1));
      }
    }
    if (random.nextBoolean()) {
      put(tree, ITEMS, entries(ITEMS, 1 + random.nextInt(3)));
    }
    if (of(tree, "room").containsKey("outline") && random.nextBoolean()) {
      put(tree, "zones", zone());
    }
    return written(tree);
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> of(Map<String, Object> tree, String key) {
    return (Map<String, Object>) tree.getOrDefault(key, Map.of());
  }

  private Map<String, Object> tree(Map<String, String> fixed) {
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
    return tree;
  }

  private static String written(Map<String, Object> tree) {
    StringBuilder yaml = new StringBuilder();
    write(yaml, tree, "");
    return yaml.toString();
  }

  private String zone() {
    double width = (4 + random.nextInt(7)) / 10.0;
    String floor =
        random.nextBoolean()
            ? "deck: " + pick(choices("subfloor.deck"))
            : "as found: " + entries(AS_FOUND, 1 + random.nextInt(3));
    String surface = random.nextInt(3) > 0 ? ", surface: " + (random.nextInt(90) - 45) + " mm" : "";
    return "[{name: part, outline: [[0 m, 0 m], [%s m, 0 m], [%s m, 0.6 m], [0 m, 0.6 m]], %s%s}]"
        .formatted(width, width, floor, surface);
  }

  /** Entries of a list; each fact of them is stated about two times in three. */
  private String entries(String list, int count) {
    List<String> entries = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      List<String> said = new ArrayList<>();
      for (FactDefinition definition : book.definitions()) {
        String key = definition.key();
        if (!key.startsWith(list + "[].")) {
          continue;
        }
        if (key.endsWith("].name")) {
          said.add("name: " + "abcd".charAt(i));
        } else if (definition.required() || random.nextInt(3) > 0) {
          String value = value(definition);
          if (!value.isEmpty()) {
            said.add(key.substring(list.length() + 3) + ": \"" + value.replace("\"", "") + "\"");
          }
        }
      }
      entries.add("{" + String.join(", ", said) + "}");
    }
    return "[" + String.join(", ", entries) + "]";
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
