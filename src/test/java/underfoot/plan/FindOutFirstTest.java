package underfoot.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.Survey;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.Difference;
import underfoot.reasoning.Difference.Kind;
import underfoot.reasoning.Floors;
import underfoot.reasoning.WhatIf;
import underfoot.reasoning.WhatIf.Otherwise;
import underfoot.reasoning.WhatIf.Reach;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Scenario;

class FindOutFirstTest {
  private static List<FindOut> of(Scenario scenario) {
    Assessment assessment = Floors.advisor().advise(scenario);
    WhatIf whatIf = new WhatIf(Floors.advisor());
    return AdviceMaker.make(
            assessment, whatIf.of(assessment), whatIf.unsaid(assessment), Consequences.none())
        .findOutFirst();
  }

  private static Scenario example(String name) throws Exception {
    Path file = Path.of("scenarios", name + ".yaml");
    return Floors.reader().read(file.toString(), Files.readAllBytes(file));
  }

  @Test
  void the_date_of_the_house_and_the_sampling_come_before_anything_is_lifted() throws Exception {
    Scenario floor =
        Floors.change(
            example("hall-with-old-thermoplastic-tiles-on-a-slab"), "building.built", "unknown");
    List<String> facts = of(floor).stream().map(FindOut::fact).toList();
    assertThat(facts.get(0)).isEqualTo("building.built");
    assertThat(facts.get(1)).isEqualTo("building.asbestos survey");
    List<String> passes =
        Floors.advisor().knowledge().survey().stages().stream().map(Survey.Stage::id).toList();
    assertThat(passes)
        .containsSubsequence(
            "papers", "sample", "trace", "lift", "tap", "straightedge", "tape", "meters");
  }

  @Tag("slow")
  @Test
  void what_is_found_out_stands_in_the_order_of_the_survey_and_is_ranked_by_what_would_change()
      throws Exception {
    Survey survey = Floors.advisor().knowledge().survey();
    for (Path file : Floors.examples()) {
      List<FindOut> all = of(Floors.reader().read(file.toString(), Files.readAllBytes(file)));
      assertThat(all).extracting(FindOut::rank).doesNotHaveDuplicates();
      assertThat(all.stream().map(FindOut::rank).sorted().toList())
          .isEqualTo(IntStream.rangeClosed(1, all.size()).boxed().toList());
      int last = -1;
      for (FindOut one : all) {
        int place = survey.placeOf(one.fact().replaceAll("\\[[^]]*]", "[]"));
        assertThat(place).as(one.fact()).isGreaterThanOrEqualTo(last);
        last = place;
        assertThat(one.decisions()).as(one.fact()).isNotEmpty();
        assertThat(one.look()).as(one.fact()).isNotBlank();
      }
    }
  }

  @Tag("slow")
  @Test
  void a_fact_that_may_stop_the_work_ranks_before_one_that_changes_a_thickness() throws Exception {
    List<FindOut> all = of(example("old-wooden-floor-of-which-little-is-known"));
    FindOut rot = find(all, "subfloor.condition.rot");
    FindOut tile = find(all, "tile.thickness");
    assertThat(rot.decisions().get(0)).contains("the work stops");
    assertThat(rot.rank()).isLessThan(tile.rank());
  }

  private static FindOut find(List<FindOut> all, String fact) {
    return all.stream().filter(one -> one.fact().equals(fact)).findFirst().orElseThrow();
  }

  @Tag("slow")
  @Test
  void a_fact_that_is_known_is_not_asked_for() throws Exception {
    Scenario floor = example("old-wooden-floor-of-which-little-is-known");
    Scenario told = Floors.change(floor, "subfloor.condition.rot", "no");
    assertThat(of(told)).noneMatch(one -> one.fact().equals("subfloor.condition.rot"));
  }

  @Tag("slow")
  @Test
  void what_makes_no_sense_on_a_floor_is_not_asked_for() throws Exception {
    assertThat(of(example("old-wooden-floor-of-which-little-is-known")))
        .extracting(FindOut::fact)
        .doesNotContain("tile.gauged", "subfloor.swollen", "subfloor.CM reading");
  }

  @Test
  void every_fact_with_other_values_to_try_has_a_place_in_the_survey_and_a_way_to_look() {
    Survey survey = Floors.advisor().knowledge().survey();
    int after = survey.placeOf("no such fact");
    for (FactDefinition fact : Floors.advisor().knowledge().facts().definitions()) {
      if (!fact.otherwise().isEmpty()) {
        assertThat(survey.placeOf(fact.key())).as(fact.key()).isLessThan(after);
        assertThat(fact.look()).as(fact.key()).isNotBlank();
      }
    }
  }

  private static FactDefinition defined(String key) {
    return Floors.advisor().knowledge().facts().find(key).orElseThrow();
  }

  private static WhatIf.Unsaid unsaid(String key, String about, Otherwise... otherwise) {
    return new WhatIf.Unsaid(defined(key), about, List.of(otherwise), true);
  }

  private static Otherwise otherwise(String value, Reach reach, String... texts) {
    return new Otherwise(
        "a fact",
        value,
        reach,
        Stream.of(texts)
            .map(text -> new Difference(Kind.LAYERS_ADDED, List.of(text), "", text, text))
            .toList());
  }

  @Test
  void a_verdict_counts_before_a_way_and_a_way_before_the_number_of_parts() throws Exception {
    Otherwise part = otherwise("10 mm", Reach.PART, "a primer", "a bed", "a primer");
    Otherwise more = otherwise("12 mm", Reach.PART, "a primer", "a bed", "a seal", "a strip");
    Otherwise way = otherwise("yes", Reach.WAY, "another way");
    Otherwise verdict = otherwise("often", Reach.VERDICT, "the work stops");
    List<FindOut> all =
        FindOutFirst.of(
            Sayings.of(Floors.advisor().advise(Floors.read("slab"))),
            List.of(
                new WhatIf.Assumed(
                    null, "", "", Optional.of(defined("room.shower")), List.of(way), true),
                // Nobody can say it, or nothing hangs on it: it is not asked for.
                new WhatIf.Assumed(null, "", "", Optional.empty(), List.of(verdict), true),
                new WhatIf.Assumed(
                    null, "", "", Optional.of(defined("room.bath")), List.of(), true)),
            List.of(
                unsaid("tile.thickness", "", part),
                unsaid("room.doors[].external", "front door", part, verdict, way, more),
                unsaid("subfloor.thickness", "", more)));
    // In the order of the survey: what is asked, then what is lifted, then what is measured.
    assertThat(all)
        .extracting(FindOut::fact)
        .containsExactly(
            "room.shower",
            "room.doors[front door].external",
            "subfloor.thickness",
            "tile.thickness");
    assertThat(all).extracting(FindOut::rank).containsExactly(2, 1, 3, 4);
    FindOut door = all.get(1);
    assertThat(door.called())
        .isEqualTo(defined("room.doors[].external").called() + " (front door)");
    // What reaches farthest first, then what changes more.
    assertThat(door.decisions().stream().map(one -> one.replaceAll(":.*", "")).toList())
        .containsExactly("if it is often", "if it is yes", "if it is 12 mm", "if it is 10 mm");
    FindOut shower = all.get(0);
    assertThat(shower.called()).isEqualTo(defined("room.shower").called());
    assertThat(shower.pass()).isEqualTo("Ask");
    assertThat(shower.ask()).isEqualTo(defined("room.shower").ask());
    assertThat(shower.look()).isNotBlank();
    assertThat(shower.decisions()).containsExactly("if it is yes: another way");
    assertThat(all.get(2).decisions())
        .containsExactly("if it is 12 mm: a primer; a bed; a seal; a strip");
  }
}
