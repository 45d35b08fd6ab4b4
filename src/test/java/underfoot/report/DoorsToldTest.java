package underfoot.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import underfoot.buildup.Remedy;
import underfoot.knowledge.Phrases;
import underfoot.plan.Advice;
import underfoot.plan.AdviceMaker;
import underfoot.plan.Justifier;
import underfoot.plan.Planner;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.Floors;
import underfoot.reasoning.WhatIf;
import underfoot.scenario.Scenario;

/** What is said of a door agrees with what is put right for it. */
class DoorsToldTest {
  private Assessment assessment;

  private String told(String gap, String flatness) throws Exception {
    Scenario floor =
        Floors.read("slab-with-door")
            .with("room.doors[].gap under leaf", "hall door", gap)
            .with("room.doors[].can be trimmed", "hall door", "no")
            .with("levels.gap under 2 m straightedge", "", flatness);
    assessment = Floors.advisor().advise(floor);
    Planner planner = new Planner(assessment.knowledge().prices());
    Advice advice =
        AdviceMaker.make(
            assessment,
            WhatIf.assumed(assessment),
            planner.of(assessment, new Justifier(floor, assessment.knowledge())));
    return Sentences.door(
        advice.heights().doors().get(0), new Phrases(assessment.knowledge().wording()));
  }

  private boolean putRight(String wording) {
    return assessment.of(Remedy.class).stream().anyMatch(one -> one.wording().equals(wording));
  }

  @Test
  void a_leaf_that_opens_with_little_to_spare_is_called_tight_and_settled_first() throws Exception {
    assertThat(told("16 mm", "2 mm")).contains("3 mm left").contains("tight");
    assertThat(putRight("tight-under-the-leaf")).isTrue();
    assertThat(told("40 mm", "2 mm")).contains("it fits");
    assertThat(putRight("tight-under-the-leaf")).isFalse();
  }

  @Test
  void where_the_pour_stops_short_of_the_leaf_the_gap_told_is_the_one_beside_it() throws Exception {
    assertThat(told("19 mm", "6 mm")).contains("6 mm left").contains("stops short");
    assertThat(putRight("pour-stops-at-a-line")).isTrue();
    assertThat(putRight("leaf-looked-at")).isFalse();
    assertThat(told("40 mm", "6 mm")).contains("it fits");
    assertThat(putRight("pour-stops-at-a-line")).isFalse();
  }
}
