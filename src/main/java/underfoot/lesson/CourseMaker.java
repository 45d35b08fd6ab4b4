package underfoot.lesson;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import underfoot.knowledge.LessonBook.Item;
import underfoot.scenario.Scenario;

/**
 * Makes the sheets of a course. All pupils are asked the same kinds of question on the same floors,
 * each with numbers and options of their own; so level, marks, number of options and what guessing
 * brings are equal between them. A variant on which one of the kinds cannot be asked is drawn anew.
 */
public final class CourseMaker {
  private static final long[] TRIED = {1, 2, 3};
  private static final int DRAWS = 24;
  private static final long APART = 1000;

  private final LessonMaker maker;

  /**
   * @param maker makes the lesson on each floor
   */
  public CourseMaker(LessonMaker maker) {
    this.maker = maker;
  }

  /**
   * What is asked on a sheet: for each floor the kinds of question, and how many options each has.
   *
   * @param floors the floors
   * @param asked for each floor the kinds and their options, in the order of the questions
   */
  public record Plan(List<Scenario> floors, List<Map<String, Integer>> asked) {
    /** Copies the lists. */
    public Plan {
      floors = List.copyOf(floors);
      asked = List.copyOf(asked);
    }

    private Plan without(Set<String> kinds) {
      List<Map<String, Integer>> left = new ArrayList<>();
      for (Map<String, Integer> one : asked) {
        Map<String, Integer> kept = new LinkedHashMap<>(one);
        kept.keySet().removeAll(kinds);
        left.add(kept);
      }
      return new Plan(floors, left);
    }
  }

  /**
   * A sheet as the class gets it.
   *
   * @param plan what is asked
   * @param lessons for each seed the lessons on each floor
   */
  public record Made(Plan plan, List<List<Lesson>> lessons) {
    /** Copies the lists. */
    public Made {
      lessons = List.copyOf(lessons);
    }
  }

  /**
   * Makes a sheet for several pupils.
   *
   * @param sheet what the course says of it
   * @param floors its floors, read
   * @param seeds a seed for each pupil
   */
  public Made make(Course.Sheet sheet, List<Scenario> floors, List<Long> seeds) {
    Plan plan = plan(sheet, floors);
    while (true) {
      List<List<Lesson>> all = new ArrayList<>();
      Set<String> missed = new LinkedHashSet<>();
      for (long seed : seeds) {
        all.add(lessons(plan, seed, missed));
      }
      if (missed.isEmpty()) {
        return new Made(plan, all);
      }
      plan = plan.without(missed); // no pupil is asked what another cannot be
    }
  }

  /** The lessons of one pupil; what cannot be asked, however often it is drawn, is noted. */
  private List<Lesson> lessons(Plan plan, long seed, Set<String> missed) {
    List<Lesson> lessons = new ArrayList<>();
    for (int i = 0; i < plan.floors().size(); i++) {
      Map<String, Integer> wanted = plan.asked().get(i);
      List<Item> kinds = wanted.keySet().stream().map(maker.book()::kind).toList();
      Map<String, Integer> lacking = new HashMap<>();
      Optional<Lesson> fit = Optional.empty();
      for (int draw = 0; draw < DRAWS && fit.isEmpty(); draw++) {
        Lesson lesson =
            maker.make(plan.floors().get(i), OptionalLong.of(seed * APART + draw), kinds);
        Set<String> lacks = new LinkedHashSet<>(wanted.keySet());
        lesson.questions().stream()
            .filter(one -> wanted.get(one.kind()) == one.options().size())
            .forEach(one -> lacks.remove(one.kind()));
        lacks.forEach(kind -> lacking.merge(kind, 1, Integer::sum));
        fit = lacks.isEmpty() ? Optional.of(lesson) : Optional.empty();
      }
      if (fit.isPresent()) {
        lessons.add(fit.get());
      } else {
        lacking.entrySet().stream()
            .max(Map.Entry.comparingByValue())
            .ifPresent(worst -> missed.add(worst.getKey()));
      }
    }
    return lessons;
  }

  /** Chooses kinds of question: each topic and level has its share, and no kind comes twice. */
  private Plan plan(Course.Sheet sheet, List<Scenario> floors) {
    List<Map<String, Integer>> possible = new ArrayList<>();
    for (Scenario floor : floors) {
      possible.add(possible(sheet, floor));
    }
    List<Map<String, Integer>> asked = new ArrayList<>();
    Selection selection = new Selection(maker.book());
    int many = 0;
    for (Map<String, Integer> one : possible) {
      Map<String, Integer> here = new LinkedHashMap<>();
      for (String kind : one.keySet()) {
        if (Selection.everywhere(maker.book().kind(kind))) {
          here.put(kind, one.get(kind));
          many++;
        }
      }
      asked.add(here);
    }
    boolean more = true;
    while (more && many < sheet.questions()) {
      more = false;
      for (int i = 0; i < floors.size() && many < sheet.questions(); i++) {
        Optional<String> next = selection.next(possible.get(i).keySet());
        if (next.isPresent()) {
          asked.get(i).put(next.get(), possible.get(i).get(next.get()));
          many++;
          more = true;
        }
      }
    }
    return new Plan(floors, asked);
  }

  /** The kinds that a floor bears, as it is stated and varied, and how many options each has. */
  private Map<String, Integer> possible(Course.Sheet sheet, Scenario floor) {
    List<Item> kinds =
        maker.book().kinds().stream()
            .filter(one -> sheet.topics().contains(one.field("topic")))
            .toList();
    Map<String, Integer> possible = options(maker.make(floor, OptionalLong.empty(), kinds));
    for (long seed : TRIED) {
      Map<String, Integer> varied = options(maker.make(floor, OptionalLong.of(seed), kinds));
      possible.keySet().removeIf(kind -> !varied.containsKey(kind));
    }
    Map<String, Integer> inOrder = new LinkedHashMap<>();
    kinds.forEach(one -> inOrder.put(one.id(), possible.get(one.id())));
    inOrder.values().removeIf(java.util.Objects::isNull);
    return inOrder;
  }

  private static Map<String, Integer> options(Lesson lesson) {
    return lesson.questions().stream()
        .collect(Collectors.toMap(Question::kind, one -> one.options().size()));
  }
}
