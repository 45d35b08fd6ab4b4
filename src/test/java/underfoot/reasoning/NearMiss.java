package underfoot.reasoning;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import tools.jackson.dataformat.yaml.YAMLMapper;
import underfoot.reasoning.RuleCasesTest.RuleCase;

/**
 * A floor on which all conditions of a rule hold but one, so that the rule must say nothing there.
 *
 * @param rule the rule that must keep quiet
 * @param without the condition that does not hold
 * @param floor the floor it starts from: that of a case, such as {@code TMB-10}, or of its near
 *     miss, {@code TMB-10 missed}
 * @param change what is changed on that floor besides
 * @param way the way of building the rule must say nothing of; empty for all of them
 * @param about the door or the layer it must say nothing of; empty for all of them
 */
record NearMiss(
    String rule,
    String without,
    String floor,
    Map<String, String> change,
    String way,
    String about) {
  static final Path FILE = Path.of("src/test/resources/rule-stays-quiet.yaml");

  private static final String HEAD =
      """
      # Floors on which a rule keeps quiet though all its conditions hold but one (without). The floor is named by the
      # case in rule-cases whose floor it is; "missed" is the floor of its near miss; change is changed there besides.
      # If there is a way or an about, the rule keeps quiet of that way of building, or of that door or layer, and may
      # well speak of another. Found and written by NearMissSearch.
      """;

  /** What tells the floor from others. */
  String place() {
    return floor + " " + change;
  }

  /** Whether the rule is among those that speak where it must not. */
  boolean broken(Set<Voice> heard) {
    return heard.stream()
        .anyMatch(
            one ->
                one.rule().equals(rule)
                    && (way.isEmpty() || way.equals(one.way()))
                    && (about.isEmpty() || about.equals(one.about())));
  }

  /** Who speaks on the floor. */
  Set<Voice> heard(Advisor advisor, Map<String, RuleCase> byName) throws Exception {
    String[] named = floor.split(" ");
    RuleCase one = byName.get(named[0]);
    if (one == null) {
      throw new IllegalStateException(FILE + " names " + named[0] + ", which has no case");
    }
    Map<String, String> changes = RuleCasesTest.changes(one, named.length > 1);
    changes.putAll(change);
    return RuleCasesTest.heard(advisor, one, changes);
  }

  /** The cases by the names of their rules, the first of each. */
  static Map<String, RuleCase> byName() throws IOException {
    Map<String, RuleCase> byName = new LinkedHashMap<>();
    for (RuleCase one : RuleCasesTest.cases()) {
      byName.putIfAbsent(one.rule(), one);
    }
    return byName;
  }

  /** Every one there is, by the rule that must keep quiet. */
  @SuppressWarnings("unchecked")
  static Map<String, List<NearMiss>> all() {
    Map<String, List<NearMiss>> all = new LinkedHashMap<>();
    Map<String, List<Map<String, Object>>> read =
        new YAMLMapper().readValue(FILE.toFile(), Map.class);
    read.forEach(
        (rule, misses) ->
            all.put(rule, new ArrayList<>(misses.stream().map(body -> read(rule, body)).toList())));
    return all;
  }

  private static NearMiss read(String rule, Map<String, Object> body) {
    Map<String, String> change = new LinkedHashMap<>();
    if (body.get("change") instanceof Map<?, ?> map) {
      map.forEach((key, value) -> change.put(String.valueOf(key), String.valueOf(value)));
    }
    return new NearMiss(
        rule,
        String.valueOf(body.get("without")),
        String.valueOf(body.get("floor")),
        change,
        String.valueOf(body.getOrDefault("way", "")),
        String.valueOf(body.getOrDefault("about", "")));
  }

  /** Writes them down. */
  static void write(Iterable<NearMiss> all) throws IOException {
    Map<String, List<String>> lines = new TreeMap<>();
    for (NearMiss one : all) {
      lines.computeIfAbsent(one.rule, rule -> new ArrayList<>()).add(one.line());
    }
    StringBuilder yaml = new StringBuilder(HEAD);
    lines.forEach(
        (rule, each) -> {
          yaml.append(rule).append(":\n");
          each.stream().sorted().forEach(yaml::append);
        });
    Files.writeString(FILE, yaml);
  }

  private String line() {
    StringBuilder line = new StringBuilder("  - {without: ").append(quoted(without));
    line.append(", floor: ").append(floor);
    if (!change.isEmpty()) {
      List<String> changes = new ArrayList<>();
      change.forEach((key, value) -> changes.add(quoted(key) + ": " + quoted(value)));
      line.append(", change: {").append(String.join(", ", changes)).append('}');
    }
    if (!way.isEmpty()) {
      line.append(", way: ").append(quoted(way));
    }
    if (!about.isEmpty()) {
      line.append(", about: ").append(quoted(about));
    }
    return line.append("}\n").toString();
  }

  private static String quoted(String text) {
    return text.matches("[A-Za-z][A-Za-z0-9 .%/-]*") && !text.matches("yes|no|true|false|null")
        ? text
        : '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
