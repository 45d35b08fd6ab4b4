package underfoot.lesson;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import underfoot.knowledge.LessonBook;
import underfoot.knowledge.LessonBook.Item;
import underfoot.measure.Texts;
import underfoot.plan.BaseBelow;
import underfoot.plan.DangersTold;
import underfoot.plan.Planner;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.WhatIf;
import underfoot.scenario.Kind;
import underfoot.scenario.Reading;
import underfoot.scenario.Scenario;
import underfoot.scenario.StatedFact;

/** Makes lessons: questions of the bank, asked of a floor. */
public final class LessonMaker {
  private static final double MM_PER_M = 1000;

  /** Facts that are no part of the floor, and readings, which are told apart. */
  private static final Set<String> UNTOLD =
      Set.of("scenario", "practice", "budget.prices", "levels.readings");

  private final Workshop shop;

  /**
   * @param shop what questions are made with
   */
  public LessonMaker(Workshop shop) {
    this.shop = shop;
  }

  /** The bank of questions. */
  public LessonBook book() {
    return shop.book();
  }

  /**
   * Makes a lesson. The same floor, seed and kinds always give the same lesson.
   *
   * @param scenario the floor
   * @param seed which variant; empty for the floor with its own numbers
   * @param kinds the kinds of question that are tried; those the floor does not bear are left out
   */
  public Lesson make(Scenario scenario, OptionalLong seed, Collection<Item> kinds) {
    return make(scenario, seed, kinds, Integer.MAX_VALUE);
  }

  /**
   * Makes a lesson of at most so many questions, each topic and each level having its share.
   *
   * @param scenario the floor
   * @param seed which variant; empty for the floor with its own numbers
   * @param kinds the kinds of question that are tried
   * @param most how many questions at the most
   */
  public Lesson make(Scenario scenario, OptionalLong seed, Collection<Item> kinds, int most) {
    Assessment assessment = shop.advisor().advise(scenario);
    Workshop here = shop.remembering(assessment);
    List<String> changes = List.of();
    if (seed.isPresent()) {
      Variant.Drawn drawn = Variant.of(here, assessment, seed.getAsLong());
      assessment = drawn.assessment();
      changes = drawn.changes();
    }
    List<Question> questions = new ArrayList<>();
    for (Item kind : kinds) {
      // Each kind draws for itself, so that what else is asked changes nothing.
      long draw = scattered(seed.orElse(0) + 1) ^ kind.id().hashCode();
      Floor floor = new Floor(assessment, new Random(draw));
      ask(here, floor, kind).ifPresent(questions::add);
    }
    questions = new ArrayList<>(new Selection(shop.book()).of(questions, most));
    questions.sort(Comparator.comparingInt(Question::level));
    Floor floor = new Floor(assessment, new Random(0));
    List<String> assumed =
        WhatIf.assumed(assessment).stream()
            .map(one -> one.fact().name() + " " + one.fact().text())
            .toList();
    return new Lesson(
        assessment.scenario(),
        seed,
        changes,
        told(assessment.scenario(), floor),
        assumed,
        Planner.room(assessment.scenario(), floor.facts()),
        below(floor),
        know(questions, floor),
        questions,
        DangersTold.of(assessment));
  }

  private static Optional<Question> ask(Workshop shop, Floor floor, Item kind) {
    if (!floor.holds(kind.list("needs")) || !floor.allows(kind.list("acts"))) {
      return Optional.empty();
    }
    boolean answered = kind.field("try").isEmpty();
    boolean told = List.of("choice", "sum", "order").contains(kind.field("sort"));
    if (!(told && answered) && !shop.tries().enough()) {
      return Optional.empty();
    }
    return Values.of(kind, floor, shop.prices())
        .flatMap(
            values ->
                switch (kind.field("sort")) {
                  case "choice" -> Choices.of(shop, floor, kind, values);
                  case "sum" -> Sums.of(floor, kind, values);
                  case "what-if" -> WhatIfs.of(shop, floor, kind, values);
                  case "order" -> Orders.of(floor, kind, values);
                  default -> Faults.of(shop, floor, kind, values);
                });
  }

  private static BaseBelow below(Floor floor) {
    return BaseBelow.of(floor.facts(), "", false);
  }

  /** What the topics asked of teach, with the figures that they name. */
  private List<Lesson.Know> know(List<Question> questions, Floor floor) {
    Set<String> asked = new LinkedHashSet<>();
    questions.forEach(one -> asked.add(one.topic()));
    List<Lesson.Know> know = new ArrayList<>();
    for (Item topic : shop.book().topics()) {
      if (asked.contains(topic.id()) && !topic.list("know").isEmpty()) {
        List<String> lines = new ArrayList<>();
        for (String line : topic.list("know")) {
          lines.add(floor.knowledge().figures().filled(line));
        }
        know.add(new Lesson.Know(topic.id(), topic.field("title"), lines));
      }
    }
    return know;
  }

  /** Neighbouring seeds are scattered, or their first draws would be alike. */
  static long scattered(long seed) {
    return seed * 0x9E3779B97F4A7C15L ^ (seed >>> 32);
  }

  /** What the scenario states, a line for each part of it and for each door and the like. */
  private static List<String> told(Scenario scenario, Floor floor) {
    Map<String, List<String>> parts = new LinkedHashMap<>();
    for (StatedFact given : scenario.givens()) {
      String key = given.key();
      boolean told =
          given.known() && !UNTOLD.contains(key) && given.definition().kind() != Kind.LIST;
      if (!told || key.endsWith("[].name")) {
        continue;
      }
      String part = given.about().isEmpty() ? key.split("\\.")[0] : given.about();
      String says = key.equals("room.outline") ? outline(scenario) : given.text();
      if (!given.called().isEmpty()) {
        parts.computeIfAbsent(part, p -> new ArrayList<>()).add(given.called() + " " + says);
      }
    }
    List<String> lines = new ArrayList<>();
    parts.forEach((part, said) -> lines.add(Texts.capital(part) + ": " + String.join("; ", said)));
    if (!scenario.readings().isEmpty()) {
      List<String> readings = new ArrayList<>();
      for (Reading one : scenario.readings()) {
        readings.add(
            Texts.of(one.x() / MM_PER_M, "")
                + " / "
                + Texts.of(one.y() / MM_PER_M, "")
                + " / "
                + Texts.of(one.z(), ""));
      }
      lines.add(floor.say("lesson-readings", "readings", String.join("; ", readings)));
    }
    return lines;
  }

  private static String outline(Scenario scenario) {
    List<String> corners = new ArrayList<>();
    scenario
        .outline()
        .forEach(
            point ->
                corners.add(Texts.of(point.x() / MM_PER_M, "") + " / " + Texts.metres(point.y())));
    return String.join(", ", corners);
  }
}
