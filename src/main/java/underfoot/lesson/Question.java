package underfoot.lesson;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import underfoot.knowledge.Figure;

/**
 * One question of a lesson with its answer.
 *
 * @param kind the kind of question, such as {@code layer}
 * @param level 1 easy, 2 middling, 3 hard; it brings as many marks
 * @param ask what is asked
 * @param options what may be chosen, put in order, or looked through for faults; empty for a number
 * @param reply how it is answered
 * @param right the answer: letters or line numbers, one group for each thing to find, of which any
 *     member will do; empty for a number
 * @param number the number asked for; NaN if none is
 * @param within how far an answer may be off, as a share of the number
 * @param unit the unit of the number; empty if none is asked for
 * @param answer the answer in words
 * @param worked the working, one line a step; may be empty
 * @param cites the rules behind the answer
 * @param figures the figures behind the answer
 * @param source where a working comes from; may be empty
 */
public record Question(
    String kind,
    int level,
    String ask,
    List<Option> options,
    Reply reply,
    List<Set<String>> right,
    double number,
    double within,
    String unit,
    String answer,
    List<String> worked,
    List<Cite> cites,
    List<Figure> figures,
    String source) {

  /** Copies the lists. */
  public Question {
    options = List.copyOf(options);
    right = List.copyOf(right);
    worked = List.copyOf(worked);
    cites = List.copyOf(cites);
    figures = List.copyOf(figures);
  }

  /** The number asked for; empty if none is. */
  public Optional<Amount> amount() {
    return reply == Reply.NUMBER ? Optional.of(new Amount(number, unit, within)) : Optional.empty();
  }

  /** A number, its unit, and how far off an answer may be. */
  public record Amount(double number, String unit, double within) {}

  /** How a question is answered. */
  public enum Reply {
    /** One of the options. */
    ONE,
    /** Some of the options. */
    SOME,
    /** All options, in order. */
    ORDER,
    /** Some of the numbered lines. */
    LINES,
    /** A number with its unit. */
    NUMBER
  }

  /**
   * Something to choose.
   *
   * @param label the letter or number it is named by
   * @param text what it says
   */
  public record Option(String label, String text) {}

  /**
   * A rule behind an answer.
   *
   * @param rule its id
   * @param reason its reason
   * @param source the title of its source
   * @param status how well the source is known
   */
  public record Cite(String rule, String reason, String source, String status) {}

  static Question choice(
      LessonSheet sheet,
      String kind,
      int level,
      String ask,
      List<String> texts,
      Set<String> right,
      boolean several,
      String answer,
      List<Cite> cites,
      List<Figure> figures) {
    List<Option> options = sheet.lettered(texts);
    List<Set<String>> labels =
        options.stream()
            .filter(option -> right.contains(option.text()))
            .map(option -> Set.of(option.label()))
            .toList();
    return new Question(
        kind,
        level,
        ask,
        options,
        several ? Reply.SOME : Reply.ONE,
        labels,
        Double.NaN,
        0,
        "",
        answer,
        List.of(),
        cites,
        figures,
        "");
  }

  static Question number(
      String kind,
      int level,
      String ask,
      double number,
      double within,
      String unit,
      String answer,
      List<String> worked,
      List<Cite> cites,
      List<Figure> figures,
      String source) {
    return new Question(
        kind,
        level,
        ask,
        List.of(),
        Reply.NUMBER,
        List.of(),
        number,
        within,
        unit,
        answer,
        worked,
        cites,
        figures,
        source);
  }
}
