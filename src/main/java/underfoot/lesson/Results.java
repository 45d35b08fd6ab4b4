package underfoot.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a class knows.
 *
 * @param course the name of the course
 * @param pupils each pupil's result
 * @param together the result of all together
 */
public record Results(String course, List<Result> pupils, Result together) {
  private static final int NEXT = 3;

  /** Copies the list. */
  public Results {
    pupils = List.copyOf(pupils);
  }

  /**
   * Marks got and marks to be had. What is given back to be written again is not counted.
   *
   * @param got marks got
   * @param of marks to be had
   */
  public record Tally(double got, double of) {
    Tally plus(double more, double most) {
      return new Tally(got + more, of + most);
    }
  }

  /**
   * One result, over the sheets that were begun.
   *
   * @param name whose
   * @param total over everything
   * @param topics by topic, in the order of the course
   * @param sheets by sheet
   * @param again what is to be written again, and why
   * @param leftOut questions left out
   * @param misunderstood what was misunderstood, and how often, the most frequent first
   * @param next the aims to practise next, by what they cost most marks
   */
  public record Result(
      String name,
      Tally total,
      Map<String, Tally> topics,
      Map<Integer, Tally> sheets,
      List<Again> again,
      int leftOut,
      Map<String, Integer> misunderstood,
      List<Next> next) {
    /** Copies the lists. */
    public Result {
      again = List.copyOf(again);
      next = List.copyOf(next);
    }
  }

  /**
   * An answer that is given back.
   *
   * @param place the question
   * @param answer what was written
   * @param say the phrase that says why
   */
  public record Again(ClassBook.Place place, String answer, String say) {}

  /**
   * Something to practise.
   *
   * @param topic its topic
   * @param aim what is then learnt
   * @param lost how many marks it cost
   */
  public record Next(String topic, String aim, double lost) {}

  /**
   * Marks a class.
   *
   * @param book the class
   * @param topics the topics in their order
   */
  public static Results of(ClassBook book, List<String> topics) {
    List<Result> pupils = new ArrayList<>();
    Counting all = new Counting(book.course(), topics);
    for (String pupil : book.pupils()) {
      Counting one = new Counting(pupil, topics);
      for (ClassBook.Handed sheet : book.sheets()) {
        if (sheet.pupil().equals(pupil)) {
          one.count(book, sheet);
          all.count(book, sheet);
        }
      }
      pupils.add(one.result());
    }
    return new Results(book.course(), pupils, all.result());
  }

  private static final class Counting {
    private final String name;
    private Tally total = new Tally(0, 0);
    private final Map<String, Tally> topics = new LinkedHashMap<>();
    private final Map<Integer, Tally> sheets = new LinkedHashMap<>();
    private final List<Again> again = new ArrayList<>();
    private int leftOut;
    private final Map<String, Integer> misunderstood = new LinkedHashMap<>();
    private final Map<String, Next> lost = new LinkedHashMap<>();

    Counting(String name, List<String> known) {
      this.name = name;
      known.forEach(topic -> topics.put(topic, new Tally(0, 0)));
    }

    void count(ClassBook book, ClassBook.Handed sheet) {
      List<Question> questions = sheet.questions();
      boolean begun = false;
      for (int i = 1; i <= questions.size(); i++) {
        begun |= !book.reply(sheet.pupil(), sheet.sheet(), i).isBlank();
      }
      for (int i = 1; i <= questions.size() && begun; i++) {
        count(
            questions.get(i - 1),
            new ClassBook.Place(sheet.pupil(), sheet.sheet(), i),
            book.reply(sheet.pupil(), sheet.sheet(), i));
      }
    }

    private void count(Question question, ClassBook.Place place, String reply) {
      Marking.Marked marked = Marking.of(question, reply);
      if (marked.state() == Marking.State.AGAIN) {
        again.add(new Again(place, reply, marked.say()));
        return;
      }
      leftOut += marked.state() == Marking.State.NONE ? 1 : 0;
      double most = question.level();
      total = total.plus(marked.got(), most);
      topics.merge(question.topic(), new Tally(marked.got(), most), (a, b) -> a.plus(b.got, b.of));
      sheets.merge(place.sheet(), new Tally(marked.got(), most), (a, b) -> a.plus(b.got, b.of));
      marked.shows().forEach(one -> misunderstood.merge(one, 1, Integer::sum));
      if (marked.read() && marked.got() < most) {
        lost.merge(
            question.kind(),
            new Next(question.topic(), question.aim(), most - marked.got()),
            (a, b) -> new Next(a.topic(), a.aim(), a.lost() + b.lost()));
      }
    }

    Result result() {
      topics.values().removeIf(tally -> tally.of() == 0);
      Map<String, Integer> often = new LinkedHashMap<>();
      misunderstood.entrySet().stream()
          .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
          .forEach(one -> often.put(one.getKey(), one.getValue()));
      List<Next> next =
          lost.values().stream()
              .sorted(Comparator.comparingDouble(Next::lost).reversed())
              .limit(NEXT)
              .toList();
      return new Result(name, total, topics, sheets, again, leftOut, often, next);
    }
  }
}
