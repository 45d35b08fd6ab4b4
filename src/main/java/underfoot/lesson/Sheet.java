package underfoot.lesson;

import java.util.List;

/**
 * What one pupil gets: questions on one floor or several.
 *
 * @param title what it is called
 * @param pupil whose it is; empty if nobody's
 * @param lessons the floors and what is asked of them
 */
public record Sheet(String title, String pupil, List<Lesson> lessons) {
  /** Copies the list. */
  public Sheet {
    lessons = List.copyOf(lessons);
  }

  /** All questions in their order. */
  public List<Question> questions() {
    return lessons.stream().flatMap(one -> one.questions().stream()).toList();
  }

  /** The marks of all questions together. */
  public int marks() {
    return lessons.stream().mapToInt(Lesson::marks).sum();
  }

  /** The marks that guessing brings on the average. */
  public double byGuessing() {
    return questions().stream()
        .filter(one -> one.reply() != Question.Reply.ORDER && !one.options().isEmpty())
        .mapToDouble(one -> one.level() * one.right().size() / (double) one.options().size())
        .sum();
  }
}
