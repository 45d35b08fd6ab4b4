package underfoot.lesson;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import underfoot.knowledge.Figure;

/**
 * One question of a lesson with its answer.
 *
 * @param kind the kind of question, such as {@code screw-in-a-board}
 * @param topic the topic it belongs to
 * @param level 1 easy, 2 middling, 3 hard; it brings as many marks
 * @param aim what whoever answers it has learnt
 * @param given formulas, tables and limits that stand with it
 * @param ask what is asked
 * @param options what may be chosen, put in order, or looked through for faults; empty for a number
 * @param reply how it is answered
 * @param right the answer: letters or line numbers, one group for each thing to find, of which any
 *     member will do; empty for a number
 * @param number the number asked for; NaN if none is
 * @param within how far an answer may be off, as a share of the number
 * @param unit the unit of the number; empty if none is asked for
 * @param slips other numbers that people come to, and what each shows
 * @param answer the answer in words
 * @param worked the working, one line a step; may be empty
 * @param cites the rules behind the answer
 * @param figures the figures behind the answer
 */
public record Question(
    String kind,
    String topic,
    int level,
    String aim,
    List<String> given,
    String ask,
    List<Option> options,
    Reply reply,
    List<Set<String>> right,
    double number,
    double within,
    String unit,
    List<Slip> slips,
    String answer,
    List<String> worked,
    List<Cite> cites,
    List<Figure> figures) {

  /** Copies the lists. */
  public Question {
    given = List.copyOf(given);
    options = List.copyOf(options);
    right = List.copyOf(right);
    slips = List.copyOf(slips);
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
   * @param shows what whoever chooses it wrongly has misunderstood; empty where it is right
   */
  public record Option(String label, String text, String shows) {}

  /**
   * A wrong number.
   *
   * @param number the number
   * @param shows what whoever comes to it has misunderstood
   */
  public record Slip(double number, String shows) {}

  /**
   * A rule behind an answer.
   *
   * @param rule its id
   * @param reason its reason
   * @param source the title of its source
   * @param status how well the source is known
   */
  public record Cite(String rule, String reason, String source, String status) {}
}
