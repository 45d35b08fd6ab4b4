package underfoot.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.Step;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.Floors;
import underfoot.scenario.Scenario;

/** What must hold of a programme, a price and the ways side by side. */
class ProgrammeTest {
  private static Consequences of(Scenario scenario) {
    Assessment assessment = Floors.advisor().advise(scenario);
    Planner planner = new Planner(Floors.advisor().knowledge().prices());
    return planner.of(assessment, new Justifier(scenario, Floors.advisor().knowledge()));
  }

  private static Scenario read(Path file) throws Exception {
    return Floors.reader().read(file.toString(), Files.readAllBytes(file));
  }

  @Test
  void the_chain_that_decides_has_no_gap_but_nights_and_days_off() throws Exception {
    for (Path file : Floors.examples()) {
      Consequences found = of(read(file));
      List<ProgrammeStep> chain =
          found.programme().stream().filter(ProgrammeStep::critical).toList();
      if (found.programme().isEmpty()) {
        continue;
      }
      assertThat(chain.get(chain.size() - 1).endHour())
          .as(file.toString())
          .isEqualTo(found.schedule().inUseAfterHours());
      for (int i = 1; i < chain.size(); i++) {
        ProgrammeStep before = chain.get(i - 1);
        ProgrammeStep step = chain.get(i);
        assertThat(step.startHour())
            .as("%s: %s", file, step.id())
            .isGreaterThanOrEqualTo(before.endHour() - 1e-6);
        if (step.kind() == Step.Kind.WAIT) {
          assertThat(step.startHour())
              .as("%s: %s", file, step.id())
              .isCloseTo(before.endHour(), within(1e-6));
        }
      }
    }
  }

  @Test
  void waits_run_by_day_and_night_and_work_never_takes_less_than_its_hours() throws Exception {
    for (Path file : Floors.examples()) {
      for (ProgrammeStep step : of(read(file)).programme()) {
        double span = step.endHour() - step.startHour();
        if (step.kind() == Step.Kind.WAIT) {
          assertThat(span).as(step.id()).isCloseTo(step.hours(), within(1e-6));
        } else {
          assertThat(span).as(step.id()).isGreaterThanOrEqualTo(step.hours() - 1e-6);
        }
      }
    }
  }

  @Test
  void longer_days_are_never_later_and_work_grows_with_the_room() throws Exception {
    Scenario slab = Floors.read("slab");
    double last = Double.MAX_VALUE;
    for (String hours : List.of("3 h", "5 h", "8 h", "12 h", "24 h")) {
      double now = of(slab.with("site.hours a day", "", hours)).schedule().inUseAfterHours();
      assertThat(now).as(hours).isLessThanOrEqualTo(last);
      last = now;
    }
    double small = of(slab).schedule().workHours();
    Scenario larger =
        slab.with("room.outline", "", "[[0 m, 0 m], [8 m, 0 m], [8 m, 3 m], [0 m, 3 m]]");
    assertThat(of(larger).schedule().workHours()).isGreaterThan(small);
  }

  @Test
  void a_young_screed_holds_the_work_up_by_what_its_age_lacks() throws Exception {
    // NHBC Standards 9.3: 21 days for cement:sand; common practice would ask the same.
    Scenario old = Floors.read("cement-screed");
    Scenario young = old.with("subfloor.age", "", "14 days");
    ProgrammeStep wait =
        of(young).programme().stream()
            .filter(step -> step.id().equals("wait-base-dries"))
            .findFirst()
            .orElseThrow();
    assertThat(wait.hours()).isEqualTo(7 * 24);
    assertThat(of(old).programme()).extracting(ProgrammeStep::id).doesNotContain("wait-base-dries");
  }

  @Test
  void the_first_heating_of_a_screed_takes_the_days_of_its_programme() throws Exception {
    // BS 5385-3 as quoted: from 17 C by 5 K a day to 45 C is 6 days, 3 held, 6 down: 15 days.
    Scenario never = Floors.read("heated-screed").with("heating.commissioned", "", "no");
    ProgrammeStep heating =
        of(never).programme().stream()
            .filter(step -> step.id().equals("wait-first-heating"))
            .findFirst()
            .orElseThrow();
    assertThat(heating.hours()).isEqualTo(15 * 24);
  }

  @Test
  void a_screed_dries_on_while_it_is_heated_up_and_what_follows_waits_for_both() throws Exception {
    // Common practice, no source: drying goes on through the first heating and is not added to it.
    Scenario never =
        Floors.read("sulfate-screed")
            .with("heating.kind", "", "water pipes in screed")
            .with("heating.commissioned", "", "no")
            .with("subfloor.age", "", "30 days")
            .with("subfloor.floor humidity", "", "85 %");
    List<ProgrammeStep> programme = of(never).programme();
    ProgrammeStep heating = step(programme, "wait-first-heating");
    ProgrammeStep drying = step(programme, "wait-base-dries");
    assertThat(drying.startHour()).isZero();
    assertThat(heating.startHour()).isLessThan(drying.endHour());
    double both = Math.max(heating.endHour(), drying.endHour());
    assertThat(programme)
        .filteredOn(one -> one != heating && one != drying)
        .filteredOn(one -> !one.id().equals("wait-before-first-heating"))
        .allMatch(one -> one.startHour() >= both);
  }

  private static ProgrammeStep step(List<ProgrammeStep> programme, String id) {
    return programme.stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void the_lines_of_a_cost_add_up_and_labour_is_counted_where_a_price_book_has_it()
      throws Exception {
    Scenario slab = Floors.read("slab");
    Assessment assessment = Floors.advisor().advise(slab);
    String book =
        "currency: GBP\n"
            + "tiles: {pack: 1 m2, price: 30.00 GBP}\n"
            + "labour: {pack: 1 h, price: 25.00 GBP}\n";
    Planner planner =
        new Planner(
            underfoot.knowledge.PriceBook.own(
                "own.yaml", book.getBytes(), Floors.advisor().knowledge().materials()));
    Consequences found = planner.of(assessment, new Justifier(slab, assessment.knowledge()));
    Cost cost = found.cost().orElseThrow();
    double labour = Math.ceil(found.schedule().workHours()) * 25;
    assertThat(cost.lines()).extracting(Cost.Line::item).contains("labour");
    assertThat(cost.lines())
        .filteredOn(line -> line.item().equals("labour"))
        .first()
        .extracting(Cost.Line::cost)
        .isEqualTo(labour);
    assertThat(cost.lines().stream().mapToDouble(Cost.Line::cost).sum())
        .isCloseTo(cost.atLeast(), within(1e-6));
    assertThat(cost.whole()).isFalse();
    assertThat(cost.total()).isNaN();
    Cost whole =
        new Planner(assessment.knowledge().prices())
            .of(assessment, new Justifier(slab, assessment.knowledge()))
            .cost()
            .orElseThrow();
    assertThat(whole.lines().stream().mapToDouble(Cost.Line::cost).sum())
        .isCloseTo(whole.total(), within(1e-6));
    assertThat(whole.contingency()).isCloseTo(whole.atLeast() * 0.1, within(1e-6));
  }

  @Test
  void every_way_is_worked_out_in_full_and_the_first_is_the_one_recommended() throws Exception {
    for (Path file : Floors.examples()) {
      Scenario scenario = read(file);
      Assessment assessment = Floors.advisor().advise(scenario);
      List<ComparedBuildUp> ways = of(scenario).ways();
      assertThat(ways).hasSameSizeAs(assessment.buildUps());
      for (ComparedBuildUp way : ways) {
        assertThat(way.layers()).as(way.id()).isNotEmpty();
        assertThat(way.massKgPerM2()).as(way.id()).isPositive();
        assertThat(way.workHours()).as(way.id()).isPositive();
        assertThat(way.disturbance()).as(way.id()).isNotEmpty();
        assertThat(way.because()).as(way.id()).isNotEmpty();
        boolean out = way.standing() == Advice.Standing.RULED_OUT;
        assertThat(way.against().isEmpty()).as(way.id()).isEqualTo(!out);
      }
      Optional<String> first =
          ways.stream()
              .filter(way -> way.standing() == Advice.Standing.RECOMMENDED)
              .map(ComparedBuildUp::id)
              .findFirst();
      assertThat(first).isEqualTo(assessment.chosen().map(one -> one.way()));
    }
  }
}
