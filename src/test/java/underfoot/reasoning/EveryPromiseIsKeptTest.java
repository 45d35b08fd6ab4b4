package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import underfoot.plan.Advice;
import underfoot.plan.AdviceMaker;
import underfoot.plan.ChangeNotes;
import underfoot.plan.Consequences;
import underfoot.plan.Justifier;
import underfoot.plan.LastReading;
import underfoot.plan.Planner;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;

/** Whatever floor is described, the finished advice keeps every promise. */
class EveryPromiseIsKeptTest {
  private static final int FLOORS = Integer.getInteger("floors", 400);

  /** Of so many floors one is searched for its least change too, which takes many times as long. */
  private static final int CHANGED = Integer.getInteger("changed", 40);

  private final Planner planner = new Planner(Floors.advisor().knowledge().prices());
  private final Map<String, List<String>> broken = new TreeMap<>();
  private int answered;

  @Test
  void no_made_up_floor_breaks_a_promise() {
    long seed = Long.getLong("seed", 20261130L);
    RandomFloors floors = new RandomFloors(Floors.advisor().knowledge().facts(), seed);
    for (int i = 0; i < FLOORS; i++) {
      read(floors.next(Map.of()));
    }
    assertKept();
  }

  @Test
  void no_made_up_floor_with_layers_cuts_items_and_parts_breaks_a_promise() {
    long seed = Long.getLong("seed", 20261201L);
    RandomFloors floors = new RandomFloors(Floors.advisor().knowledge().facts(), seed);
    for (int i = 0; i < FLOORS; i++) {
      read(floors.nextUnusual());
    }
    assertKept();
  }

  private void assertKept() {
    List<String> first = new ArrayList<>();
    broken.forEach((what, all) -> first.add(all.size() + " floors: " + what + "\n" + all.get(0)));
    assertThat(first).as("promises broken on %s floors", answered).isEmpty();
    assertThat(answered).as("floors that are no contradiction").isGreaterThan(FLOORS / 20);
  }

  @Test
  void no_example_floor_breaks_a_promise() throws Exception {
    for (java.nio.file.Path file : Floors.examples()) {
      read(java.nio.file.Files.readString(file));
    }
    assertThat(broken).isEmpty();
  }

  private void read(String yaml) {
    Scenario scenario;
    try {
      scenario = Floors.reader().read("made-up.yaml", yaml.getBytes(StandardCharsets.UTF_8));
    } catch (ScenarioFaults contradiction) {
      return;
    }
    answered++;
    Assessment assessment = Floors.advisor().advise(scenario);
    Consequences consequences =
        planner.of(assessment, new Justifier(scenario, assessment.knowledge()));
    if (answered % CHANGED == 0) {
      consequences =
          ChangeNotes.add(
              consequences,
              assessment.knowledge(),
              LeastChange.of(Floors.advisor(), assessment),
              planner);
    }
    Advice advice = AdviceMaker.make(assessment, WhatIf.assumed(assessment), consequences);
    for (LastReading.Broken one : LastReading.read(advice, assessment)) {
      String what =
          assessment.chosen().map(BuildUp::way).orElse("")
              + ", "
              + one.promise().id()
              + ": "
              + one.one().replaceAll("[0-9.]+", "…")
              + ", but "
              + one.other().replaceAll("[0-9.]+", "…");
      broken
          .computeIfAbsent(what, any -> new ArrayList<>())
          .add(one.one() + ", " + one.other() + "\n" + yaml);
    }
  }
}
