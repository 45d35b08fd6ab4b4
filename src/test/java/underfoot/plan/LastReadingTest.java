package underfoot.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import underfoot.buildup.Severity;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Promise;
import underfoot.knowledge.TextParts;
import underfoot.plan.Advice.CautionNote;
import underfoot.plan.Advice.RemedyNote;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.Floors;
import underfoot.reasoning.LeastChange;
import underfoot.reasoning.WhatIf;
import underfoot.scenario.Scenario;

/** Each promise, broken on purpose, is found broken, and the error names both places. */
class LastReadingTest {
  private final Planner planner = new Planner(Floors.advisor().knowledge().prices());
  private Assessment assessment;

  private Advice advice(String floor, String... changes) throws Exception {
    Scenario scenario = Floors.read(floor);
    for (int i = 0; i < changes.length; i += 2) {
      scenario = Floors.change(scenario, changes[i], changes[i + 1]);
    }
    assessment = Floors.advisor().advise(scenario);
    Consequences consequences =
        ChangeNotes.add(
            planner.of(assessment, new Justifier(scenario, assessment.knowledge())),
            assessment.knowledge(),
            LeastChange.of(Floors.advisor(), assessment),
            planner);
    Advice advice = AdviceMaker.make(assessment, WhatIf.assumed(assessment), consequences);
    assertThat(LastReading.read(advice, assessment)).as("the advice as it is").isEmpty();
    return advice;
  }

  /** A record with one of its components changed. */
  @SuppressWarnings("unchecked")
  private static <R extends Record, C> R with(R of, String component, UnaryOperator<C> changed) {
    try {
      RecordComponent[] parts = of.getClass().getRecordComponents();
      Object[] values = new Object[parts.length];
      Class<?>[] types = new Class<?>[parts.length];
      for (int i = 0; i < parts.length; i++) {
        types[i] = parts[i].getType();
        values[i] = parts[i].getAccessor().invoke(of);
        if (parts[i].getName().equals(component)) {
          values[i] = changed.apply((C) values[i]);
        }
      }
      Constructor<?> made = of.getClass().getDeclaredConstructor(types);
      made.setAccessible(true);
      return (R) made.newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static <T> UnaryOperator<List<T>> without(java.util.function.Predicate<T> what) {
    return list -> list.stream().filter(one -> !what.test(one)).toList();
  }

  private static <T> UnaryOperator<List<T>> each(UnaryOperator<T> changed) {
    return list -> list.stream().map(changed).toList();
  }

  private void breaks(String promise, Advice advice) {
    List<String> broken =
        LastReading.read(advice, assessment).stream().map(one -> one.promise().id()).toList();
    assertThat(broken).as("promises broken").contains(promise);
    assertThatThrownBy(() -> LastReading.kept(advice, assessment))
        .isInstanceOf(BrokenPromise.class)
        .hasMessageContaining("breaks its promise")
        .hasMessageContaining(", but ");
  }

  private static Advice of(Advice advice, UnaryOperator<Consequences> changed) {
    return with(advice, "consequences", changed);
  }

  @Test
  void every_promise_that_is_written_down_is_read_for_and_no_other() {
    Set<String> written = new HashSet<>();
    Floors.advisor().knowledge().promises().stream().map(Promise::id).forEach(written::add);
    assertThat(written).isEqualTo(LastReading.known());
  }

  @Test
  void a_layer_nobody_buys_breaks_a_promise() throws Exception {
    Advice advice = advice("boards");
    breaks(
        "layers-have-materials",
        of(
            advice,
            all ->
                with(
                    all,
                    "quantities",
                    LastReadingTest.<QuantityLine>without(
                        one -> one.item().equals("tiles") || one.item().equals("tile adhesive")))));
  }

  @Test
  void a_layer_nobody_lays_breaks_a_promise() throws Exception {
    Advice advice = advice("boards");
    breaks(
        "layers-have-steps",
        of(
            advice,
            all ->
                with(
                    all,
                    "programme",
                    LastReadingTest.<ProgrammeStep>without(
                        one -> one.id().equals("step-lay-tiles")))));
  }

  @Test
  void a_room_in_use_before_the_sealant_is_in_breaks_a_promise() throws Exception {
    Advice advice = advice("boards");
    breaks(
        "use-waits-for-work",
        of(
            advice,
            all ->
                with(
                    all,
                    "programme",
                    LastReadingTest.<ProgrammeStep>each(
                        one ->
                            one.id().equals("wait-full-use")
                                ? with(one, "endHour", (Double end) -> one.startHour())
                                : one))));
  }

  @Test
  void an_act_that_another_line_forbids_breaks_a_promise() throws Exception {
    Advice advice = advice("boards", "room.doors[landing door].fire door", "yes");
    RemedyNote cut =
        new RemedyNote(
            "cut-the-leaf @landing door",
            false,
            false,
            "Cut the leaf",
            TextParts.of("Cut it."),
            "landing door",
            List.of());
    breaks("nothing-forbidden-is-asked", with(advice, "remedies", plus(cut)));
  }

  private static <T> UnaryOperator<List<T>> plus(T more) {
    return list -> {
      List<T> all = new ArrayList<>(list);
      all.add(more);
      return all;
    };
  }

  @Test
  void work_before_what_it_waits_for_breaks_a_promise() throws Exception {
    Advice advice = advice("carpet", "building.built", "1980");
    breaks(
        "gates-come-first",
        with(
            advice,
            "remedies",
            LastReadingTest.<RemedyNote>without(one -> one.id().equals("asbestos-sampled"))));
    breaks(
        "gates-come-first",
        with(
            advice,
            "remedies",
            LastReadingTest.<RemedyNote>each(
                one -> with(one, "title", (String title) -> "Take it up"))));
    breaks(
        "gates-come-first",
        of(
            advice,
            all ->
                with(
                    all,
                    "programme",
                    LastReadingTest.<ProgrammeStep>each(
                        one -> with(one, "after", (List<String> after) -> List.of())))));
  }

  @Test
  void a_danger_left_out_breaks_a_promise() throws Exception {
    Advice advice = advice("boards");
    breaks(
        "dangers-follow-acts",
        with(
            advice,
            "cautions",
            LastReadingTest.<CautionNote>without(
                one -> one.severity() == Severity.DANGER && one.id().equals("silica-dust"))));
  }

  @Test
  void a_gap_below_nought_told_in_words_breaks_a_promise() throws Exception {
    Advice advice = advice("boards");
    for (String text :
        List.of("with this floor -15 mm would be left under it", "It dries in -2 days.")) {
      RemedyNote told = advice.remedies().get(0);
      breaks(
          "no-absurd-number",
          with(
              advice,
              "remedies",
              plus(with(told, "parts", (TextParts parts) -> TextParts.of(text)))));
    }
  }

  @Test
  void a_stop_with_layers_breaks_a_promise() throws Exception {
    Advice advice = advice("boards");
    breaks("answer-and-picture-agree", with(advice, "verdict", (Verdict verdict) -> Verdict.STOP));
  }

  @Test
  void a_negative_figure_breaks_a_promise() throws Exception {
    Advice advice = advice("boards");
    breaks("no-absurd-number", with(advice, "massKgPerM2", (Double mass) -> -1.0));
    breaks("no-absurd-number", with(advice, "massKgPerM2", (Double mass) -> Double.NaN));
  }

  @Test
  void figures_that_differ_break_a_promise() throws Exception {
    Advice advice = advice("boards");
    breaks("sums-agree", with(advice, "massKgPerM2", (Double mass) -> mass + 1));
    breaks(
        "sums-agree",
        of(
            advice,
            all ->
                with(
                    all,
                    "schedule",
                    (Schedule one) -> with(one, "workHours", (Double h) -> h + 1))));
  }

  @Test
  void a_wish_that_nobody_answers_breaks_a_promise() throws Exception {
    Advice advice = advice("boards", "site.ready within", "1 days");
    breaks(
        "wishes-are-answered",
        with(
            advice,
            "remedies",
            LastReadingTest.<RemedyNote>without(one -> one.id().equals("later-than-wanted"))));
  }

  @Test
  void a_question_about_what_is_known_breaks_a_promise() throws Exception {
    Advice advice = advice("slab", "heating.kind", "none");
    RemedyNote asked =
        new RemedyNote(
            "pipes-in-the-floor-ruled-out",
            true,
            false,
            "Look",
            TextParts.of("Look."),
            "",
            List.of());
    breaks("known-conditions-are-acted-on", with(advice, "remedies", plus(asked)));
  }

  @Test
  void a_remedy_that_its_own_air_never_reaches_breaks_a_promise() throws Exception {
    Advice advice =
        advice("boards", "subfloor.timber moisture", "16 %", "site.relative humidity", "90 %");
    breaks(
        "remedies-can-be-met",
        with(
            advice,
            "remedies",
            LastReadingTest.<RemedyNote>without(one -> one.id().equals("dry-the-air-first"))));
  }

  @Test
  void a_change_that_hides_what_it_leaves_breaks_a_promise() throws Exception {
    Advice advice = advice("boards");
    ComparedBuildUp way = advice.consequences().ways().get(0);
    ChangeNote change =
        new ChangeNote(
            "Choose a thinner tile",
            List.of(),
            way.title(),
            Verdict.SOUND_ONCE_PUT_RIGHT,
            List.of(),
            with(way, "first", (List<String> first) -> List.of("Stiffen the joists for stone")));
    breaks("changes-tell-what-they-leave", of(advice, all -> with(all, "changes", plus(change))));
  }
}
