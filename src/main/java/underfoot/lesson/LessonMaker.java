package underfoot.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import underfoot.knowledge.LessonBook;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.PriceBook;
import underfoot.measure.Texts;
import underfoot.plan.Advice;
import underfoot.plan.AdviceMaker;
import underfoot.plan.Justifier;
import underfoot.plan.Planner;
import underfoot.reasoning.Advisor;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.WhatIf;
import underfoot.scenario.Kind;
import underfoot.scenario.Reading;
import underfoot.scenario.Scenario;
import underfoot.scenario.StatedFact;

/** Makes a lesson from the trace of the advice on a floor. */
public final class LessonMaker {
  private static final double MM_PER_M = 1000;

  /** Facts that are no part of the floor, and readings, which are told apart. */
  private static final Set<String> UNTOLD =
      Set.of("scenario", "practice", "budget.prices", "levels.readings");

  private final Advisor advisor;
  private final LessonBook book;
  private final PriceBook prices;
  private final Planner planner;

  /**
   * @param advisor who thinks the floor through
   * @param book what lessons are made of
   * @param prices in what packs things are sold
   */
  public LessonMaker(Advisor advisor, LessonBook book, PriceBook prices) {
    this.advisor = advisor;
    this.book = book;
    this.prices = prices;
    this.planner = new Planner(prices);
  }

  /**
   * Makes a lesson. The same floor and seed always give the same lesson.
   *
   * @param scenario the floor
   * @param seed which variant; empty for the floor with its own numbers
   */
  public Lesson make(Scenario scenario, OptionalLong seed) {
    Assessment assessment = advisor.advise(scenario);
    List<String> changes = List.of();
    if (seed.isPresent()) {
      Variant.Drawn drawn = Variant.of(advisor, book, assessment, seed.getAsLong());
      assessment = drawn.assessment();
      changes = drawn.changes();
    }
    Advisor quick = advisor.remembering();
    quick.advise(assessment.scenario());
    WhatIf whatIf = new WhatIf(quick);
    Advice advice =
        AdviceMaker.make(
            assessment,
            whatIf.of(assessment),
            whatIf.unsaid(assessment),
            planner.of(assessment, new Justifier(assessment.scenario(), assessment.knowledge())));
    LessonSheet sheet =
        new LessonSheet(assessment, advice, book, new Random(scattered(seed.orElse(0) + 1)));
    List<Question> questions = new ArrayList<>(TraceQuestions.of(sheet, advisor));
    questions.addAll(WorkedQuestions.of(sheet, prices));
    FaultyProposal.of(sheet).ifPresent(questions::add);
    questions.sort(Comparator.comparingInt(Question::level));
    List<String> assumed =
        advice.assumptions().stream().map(one -> one.called() + " " + one.assumed()).toList();
    return new Lesson(
        assessment.scenario(),
        seed,
        changes,
        floor(assessment.scenario(), new Phrases(assessment.knowledge().wording())),
        assumed,
        questions);
  }

  /** Neighbouring seeds are scattered, or their first draws would be alike. */
  static long scattered(long seed) {
    return seed * 0x9E3779B97F4A7C15L ^ (seed >>> 32);
  }

  /** What the scenario states, a line for each part of it and for each door and the like. */
  private static List<String> floor(Scenario scenario, Phrases phrases) {
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
      lines.add(phrases.say("lesson-readings", "readings", String.join("; ", readings)));
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
