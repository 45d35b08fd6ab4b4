package underfoot.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.buildup.Laid;
import underfoot.buildup.StepTime;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Step;

/**
 * When each step of the work begins and ends: hands work in working hours, waits run by day and
 * night, and each step follows the one before it or the one it runs from.
 */
final class Timetable {
  private static final String AREA_TAKEN = "area-taken-for-times";

  /**
   * One step with its time.
   *
   * @param step the step
   * @param hours the work or the wait itself, h
   * @param span from when to when, nights and days off included
   * @param critical whether a delay of it delays the day the room is in use
   * @param because the rules that ask for it
   * @param used the facts and figures its time was worked out from
   */
  record Timed(
      Step step,
      double hours,
      WorkingHours.Span span,
      boolean critical,
      List<Derivation> because,
      List<Object> used) {
    /** The same, over no sooner than what it must not end before. */
    Timed until(double end) {
      double all = step.waits() ? end - span.start() : hours;
      return new Timed(
          step, all, new WorkingHours.Span(span.start(), end), critical, because, used);
    }
  }

  private final WorkingHours working;
  private final List<Timed> steps;

  private Timetable(WorkingHours working, List<Timed> steps) {
    this.working = working;
    this.steps = steps;
  }

  /** The steps in the order in which they begin. */
  List<Timed> steps() {
    return steps;
  }

  /** The working hours it goes by. */
  WorkingHours working() {
    return working;
  }

  /** The hours hands work. */
  double workHours() {
    return steps.stream().filter(one -> !one.step().waits()).mapToDouble(Timed::hours).sum();
  }

  /** When the room is in use, hours from the start of the work; 0 if there is nothing to do. */
  double inUseAfter() {
    return inUse(steps);
  }

  private static double inUse(List<Timed> steps) {
    double last = 0;
    double used = -1;
    for (Timed one : steps) {
      last = Math.max(last, one.span().end());
      if (one.step().inUse()) {
        used = Math.max(used, one.span().end());
      }
    }
    return used < 0 ? last : used;
  }

  /**
   * What rules ask time for in one part of a room.
   *
   * @param facts what is held of that part
   * @param waits the times asked for
   */
  record Part(Facts facts, List<StepTime> waits) {}

  /** Puts the steps that rules ask for in order and in time. */
  static Timetable of(Knowledge knowledge, Facts facts, List<StepTime> waits) {
    return of(knowledge, List.of(new Part(facts, waits)));
  }

  /**
   * Puts the steps that rules ask for in all parts of a room in order and in time. The parts are
   * worked on together: work adds up, and of waits the longest holds.
   */
  static Timetable of(Knowledge knowledge, List<Part> parts) {
    Facts facts = parts.get(0).facts();
    Map<String, List<Part>> byStep = new LinkedHashMap<>();
    for (Part part : parts) {
      Map<String, List<StepTime>> here = new LinkedHashMap<>();
      for (StepTime wait : part.waits()) {
        here.computeIfAbsent(wait.step(), id -> new ArrayList<>()).add(wait);
      }
      here.forEach(
          (id, waits) ->
              byStep
                  .computeIfAbsent(id, any -> new ArrayList<>())
                  .add(new Part(part.facts(), waits)));
    }
    List<Step> steps = new ArrayList<>();
    byStep.keySet().forEach(id -> steps.add(knowledge.steps().get(id)));
    steps.sort(Comparator.comparingInt(Step::place));

    WorkingHours working = WorkingHours.of(facts, knowledge.figures());
    List<Timed> timed = new ArrayList<>();
    Map<String, Timed> byId = new HashMap<>();
    Map<String, String> after = new HashMap<>();
    Timed before = null;
    for (Step step : steps) {
      Timed from = step.meanwhile() ? null : byId.getOrDefault(step.from(), before);
      boolean aside = byId.containsKey(step.from());
      double start = from == null ? 0 : from.span().end();
      Timed one = time(knowledge, facts, working, step, byStep.get(step.id()), start);
      Timed last = aside ? last(timed, step.inUse()) : null;
      if (last != null && last.span().end() > one.span().end()) {
        one = one.until(last.span().end());
        from = last;
      }
      timed.add(one);
      byId.put(step.id(), one);
      if (from != null) {
        after.put(step.id(), from.step().id());
      }
      boolean over = step.meanwhile() && before != null && before.span().end() > one.span().end();
      before = aside || over ? before : one;
    }
    Set<String> chain = chain(timed, after);
    timed.replaceAll(
        one ->
            new Timed(
                one.step(),
                one.hours(),
                one.span(),
                chain.contains(one.step().id()),
                one.because(),
                one.used()));
    timed.sort(Comparator.comparingDouble(one -> one.span().start()));
    return new Timetable(working, List.copyOf(timed));
  }

  /** What ends last of the work so far, or of all so far; null if nothing was done. */
  private static Timed last(List<Timed> timed, boolean ofAll) {
    return timed.stream()
        .filter(one -> ofAll || !one.step().waits())
        .max(Comparator.comparingDouble(one -> one.span().end()))
        .orElse(null);
  }

  /** The steps each of which follows the one before it, up to the day the room is in use. */
  private static Set<String> chain(List<Timed> timed, Map<String, String> after) {
    double end = inUse(timed);
    Set<String> chain = new HashSet<>();
    for (Timed one : timed) {
      if (one.span().end() == end) {
        for (String id = one.step().id(); id != null && chain.add(id); id = after.get(id)) {
          continue;
        }
        break;
      }
    }
    return chain;
  }

  private static Timed time(
      Knowledge knowledge,
      Facts facts,
      WorkingHours working,
      Step step,
      List<Part> parts,
      double start) {
    double longest = 0;
    double byArea = 0;
    List<Derivation> because = new ArrayList<>();
    List<Object> used = new ArrayList<>();
    for (Part part : parts) {
      Facts here = part.facts();
      Fact area = here.find("area");
      Set<String> counted = new HashSet<>();
      for (StepTime wait : part.waits()) {
        because.add(wait.because());
        switch (wait.pace()) {
          case FIXED -> longest = Math.max(longest, wait.hours());
          case CURES -> {
            longest = Math.max(longest, wait.hours(here));
            use(wait.isScaled(here) ? here.find(StepTime.SPEED) : null, used);
          }
          case BY_AREA -> {
            Figure usual = knowledge.figures().get(AREA_TAKEN);
            Object taken = area == null ? usual : area;
            double floor = area == null ? usual.number() : area.number();
            byArea +=
                (counted.add(work(wait.because())) ? wait.hours() : 0)
                    * Math.max(0, floor - Amounts.less(here, step.less(), used));
            use(taken, used);
          }
          default -> throw new IllegalStateException("no such pace: " + wait.pace());
        }
      }
    }
    double hours = longest + byArea;
    boolean waitsOnly = step.waits();
    for (String name : waitsOnly ? List.<String>of() : List.of("hours a day", "working days")) {
      use(facts.find(name), used);
    }
    WorkingHours.Span span =
        waitsOnly
            ? new WorkingHours.Span(start, start + hours)
            : working.work(start, hours, step.kind() == Step.Kind.ONE_GO);
    return new Timed(step, hours, span, false, because, used);
  }

  /** What work a rule allows for: laying a layer takes no longer for being asked twice. */
  private static String work(Derivation because) {
    StringBuilder work = new StringBuilder(because.rule().key());
    for (Object premise : because.premises()) {
      if (premise instanceof Laid laid) {
        work.append(' ').append(laid.getLayer());
      }
    }
    return work.toString();
  }

  private static void use(Object one, List<Object> used) {
    if (one != null && !used.contains(one)) {
      used.add(one);
    }
  }
}
