package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.dataformat.yaml.YAMLMapper;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figure;
import underfoot.language.RuleFaults;
import underfoot.scenario.Scenario;

/**
 * The advice changes when the numbers do: for every number that a rule compares with there are two
 * floors, a small step apart, of which one lies below it and the other above, and on one of which a
 * rule fires that does not on the other. The pairs are data: {@code limits/pairs.yaml}.
 */
class LimitsTest {
  private static final Path PAIRS = Path.of("src/test/resources/limits/pairs.yaml");

  /** What cannot be written down as a pair, and where it is tried instead. */
  private static final Map<String, String> TRIED_ELSEWHERE =
      Map.ofEntries(
          Map.entry(
              "over budget / no-money",
              "what a floor costs changes with every price, so that the limit is set to its cost below"),
          Map.entry("over budget before contingency / no-money", "likewise"),
          Map.entry(
              "gap left + most trim / glass-leaf-gap-least",
              "a glass leaf is never cut, so that no floor has both"),
          Map.entry(
              "least over budget / no-money",
              "likewise, with a price that is missing; that pair is the cases of COST-04 and COST-05"),
          Map.entry(
              "edge gap / movement-joint-width",
              "the gap is one of two figures, and the span of the room tells which: that pair is there"),
          Map.entry(
              "late by / no-time",
              "how long the work takes changes with every step of it, so that the limit is set to that"),
          Map.entry(
              "covering resistance / covering-resistance-most",
              "sheets and boards come in set thicknesses, so that no small step of a floor moves it over the limit; the ways of one floor lie on either side"),
          Map.entry(
              "level to make up / fibre-leveller-most",
              "it lies in a part of a room: FoundFloorTest tries a small step on either side"),
          Map.entry(
              "level to make up / plain-leveller-most",
              "it lies in a part of a room: FoundFloorTest tries a small step on either side"),
          Map.entry(
              "level to make up / zone-bed-takes",
              "it lies in a part of a room: FoundFloorTest tries a small step on either side"),
          Map.entry(
              "step left at the line / zone-bed-takes",
              "it lies in a part of a room: FoundFloorTest tries a small step on either side"),
          Map.entry(
              "step left at the line / zone-step-down",
              "it lies in a part of a room: FoundFloorTest tries a small step on either side"));

  /** The largest step between the two floors of a pair, as a share of the figure. */
  private static final double SMALL = 0.03;

  /** Two floors either side of a limit. */
  private record Pair(
      String from,
      Map<String, String> with,
      Map<String, String> one,
      Map<String, String> other,
      String because) {}

  private static Map<String, Limit> limits() throws RuleFaults {
    return Limit.all(Floors.advisor().rules().set(), Floors.advisor().knowledge().kinds());
  }

  @Test
  void every_number_that_a_rule_compares_with_has_a_pair_of_floors() throws Exception {
    Set<String> without = new TreeSet<>(limits().keySet());
    assertThat(without).hasSizeGreaterThan(100);
    without.removeAll(pairs().keySet());
    without.removeAll(TRIED_ELSEWHERE.keySet());
    assertThat(without).as("limits without a pair in " + PAIRS).isEmpty();
  }

  @Test
  void no_pair_is_of_a_limit_that_is_not_there() throws Exception {
    Set<String> left = new TreeSet<>(pairs().keySet());
    left.addAll(TRIED_ELSEWHERE.keySet());
    left.removeAll(limits().keySet());
    assertThat(left).as("pairs without a limit").isEmpty();
  }

  @TestFactory
  Stream<DynamicTest> a_small_step_over_the_limit_changes_what_is_decided() throws Exception {
    Map<String, Limit> limits = limits();
    return pairs().entrySet().stream()
        .filter(entry -> limits.containsKey(entry.getKey()))
        .map(
            entry ->
                DynamicTest.dynamicTest(
                    entry.getKey(), () -> check(limits.get(entry.getKey()), entry.getValue())));
  }

  private static void check(Limit limit, Pair pair) throws Exception {
    assertThat(pair.one().keySet()).as("one thing moves").isEqualTo(pair.other().keySet());
    if (pair.one().size() > 1) {
      assertThat(pair.one().keySet())
          .as("or a square tile")
          .containsExactly("tile.length", "tile.width");
    }
    Figure figure = Floors.advisor().knowledge().figures().get(limit.figure());
    Assessment one = advise(pair, pair.one());
    Assessment other = advise(pair, pair.other());
    Map<String, Double> here = limit.numbers(one);
    Map<String, Double> there = limit.numbers(other);
    StringBuilder seen = new StringBuilder();
    for (Map.Entry<String, Double> entry : here.entrySet()) {
      Double number = there.get(entry.getKey());
      if (number == null) {
        continue;
      }
      String holder = entry.getKey().substring(0, entry.getKey().indexOf('|'));
      double low = Math.min(entry.getValue(), number);
      double high = Math.max(entry.getValue(), number);
      boolean brackets = low <= figure.number() && high >= figure.number() && low < high;
      boolean small = !pair.because().isEmpty() || high - low <= step(figure) * 1.000001;
      Set<String> changed = fired(one, holder);
      Set<String> stays = new TreeSet<>(changed);
      stays.retainAll(fired(other, holder));
      changed.addAll(fired(other, holder));
      changed.removeAll(stays);
      changed.retainAll(limit.rules());
      if (brackets && small && !changed.isEmpty()) {
        return;
      }
      seen.append("\n  ")
          .append(entry.getKey())
          .append(": ")
          .append(entry.getValue())
          .append(" and ")
          .append(number)
          .append(brackets ? ", either side of it" : ", on one side of it")
          .append(small ? "" : ", too far apart")
          .append(", other rules: ")
          .append(changed);
    }
    throw new AssertionError(
        limit.name() + " = " + figure.number() + " by " + limit.rules() + ", seen:" + seen);
  }

  /** A small share of the figure, or one of its unit: a day, a year, a millimetre. */
  private static double step(Figure figure) {
    double unit = figure.value() == 0 ? 1 : Math.abs(figure.number() / figure.value());
    return Math.max(SMALL * Math.abs(figure.number()), unit);
  }

  private static Assessment advise(Pair pair, Map<String, String> last) throws Exception {
    Scenario scenario = Floors.read(pair.from());
    for (Map<String, String> changes : List.of(pair.with(), last)) {
      scenario = Floors.change(scenario, changes);
    }
    return Floors.advisor().advise(scenario);
  }

  /** The rules that concluded anything of the floor, or of one build-up on it. */
  private static Set<String> fired(Assessment assessment, String way) {
    if (way.isEmpty()) {
      return Floors.rulesOf(assessment);
    }
    List<BuildUp> only =
        assessment.buildUps().stream().filter(one -> one.way().equals(way)).toList();
    return Floors.rulesOf(
        new Assessment(
            assessment.scenario(),
            assessment.knowledge(),
            assessment.verdict(),
            new Facts(),
            List.of(),
            only,
            List.of()));
  }

  @Test
  void a_pound_less_than_the_cost_and_the_budget_is_overdrawn() throws Exception {
    Scenario slab = Floors.read("slab");
    Assessment poor = Floors.advisor().advise(Floors.change(slab, "budget.limit", "20 GBP"));
    BuildUp chosen = poor.chosen().orElseThrow();
    long cost = (long) Math.ceil(20 + chosen.facts().number("over budget"));
    assertThat(cost).isGreaterThan(21);
    Assessment met = Floors.advisor().advise(Floors.change(slab, "budget.limit", cost + " GBP"));
    Assessment missed =
        Floors.advisor().advise(Floors.change(slab, "budget.limit", (cost - 1) + " GBP"));
    assertThat(fired(met, chosen.way())).contains("COST-02").doesNotContain("COST-01");
    assertThat(fired(missed, chosen.way())).contains("COST-01").doesNotContain("COST-02");
  }

  @Test
  void a_pound_less_than_the_cost_before_contingency_and_the_money_is_settled_first()
      throws Exception {
    Scenario slab = Floors.read("slab");
    Assessment poor = Floors.advisor().advise(Floors.change(slab, "budget.limit", "20 GBP"));
    BuildUp chosen = poor.chosen().orElseThrow();
    double over = chosen.facts().number("over budget before contingency");
    long cost = (long) Math.ceil(20 + over);
    Assessment met = Floors.advisor().advise(Floors.change(slab, "budget.limit", cost + " GBP"));
    Assessment missed =
        Floors.advisor().advise(Floors.change(slab, "budget.limit", (cost - 1) + " GBP"));
    assertThat(fired(met, chosen.way())).contains("COST-01").doesNotContain("COST-03");
    assertThat(fired(missed, chosen.way())).contains("COST-03").doesNotContain("COST-01");
  }

  @Test
  void an_hour_less_than_the_work_takes_and_the_day_is_settled_first() throws Exception {
    Scenario slab = Floors.read("slab");
    BuildUp chosen = Floors.advisor().advise(slab).chosen().orElseThrow();
    long hours = (long) Math.ceil(chosen.facts().number("hours until use"));
    Assessment met =
        Floors.advisor().advise(Floors.change(slab, "site.ready within", hours + " h"));
    Assessment missed =
        Floors.advisor().advise(Floors.change(slab, "site.ready within", (hours - 1) + " h"));
    assertThat(fired(met, chosen.way())).doesNotContain("TIME-90");
    assertThat(fired(missed, chosen.way())).contains("TIME-90");
  }

  @Test
  void of_the_ways_over_one_heated_floor_those_that_hold_back_too_much_heat_are_told_apart()
      throws Exception {
    double most = Floors.advisor().knowledge().figures().get("covering-resistance-most").number();
    Assessment assessment =
        Floors.advisor()
            .advise(
                Floors.change(
                    Floors.read("boards"), "heating.kind", "water pipes in spreader plates"));
    Set<Boolean> seen = new TreeSet<>();
    for (BuildUp way : assessment.buildUps()) {
      boolean above = way.facts().number("covering resistance") > most;
      seen.add(above);
      assertThat(fired(assessment, way.way()).contains("HEAT-41")).as(way.way()).isEqualTo(above);
    }
    assertThat(seen).containsExactly(false, true);
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Pair> pairs() throws IOException {
    Map<String, Map<String, Object>> all = new YAMLMapper().readValue(PAIRS.toFile(), Map.class);
    Map<String, Pair> pairs = new TreeMap<>();
    all.forEach(
        (name, body) ->
            pairs.put(
                name,
                new Pair(
                    String.valueOf(body.get("from")),
                    changes(body.get("with")),
                    changes(body.get("one")),
                    changes(body.get("other")),
                    body.containsKey("because") ? String.valueOf(body.get("because")) : "")));
    return pairs;
  }

  private static Map<String, String> changes(Object body) {
    Map<String, String> changes = new LinkedHashMap<>();
    if (body instanceof Map<?, ?> map) {
      map.forEach((key, value) -> changes.put(String.valueOf(key), String.valueOf(value)));
    }
    return changes;
  }
}
