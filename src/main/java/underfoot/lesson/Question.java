package underfoot.lesson;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import underfoot.knowledge.Figure;
import underfoot.knowledge.LessonBook;
import underfoot.measure.Texts;
import underfoot.plan.Justification;

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

  /** A question in the making. What is not said of it is empty. */
  static final class Draft {
    private final LessonSheet sheet;
    private final LessonBook.Item kind;
    private String ask;
    private List<Option> options = List.of();
    private Reply reply = Reply.LINES;
    private List<Set<String>> right = List.of();
    private double number = Double.NaN;
    private double within;
    private String answer = "";
    private List<String> worked = List.of();
    private List<Cite> cites = List.of();
    private List<Figure> figures = List.of();
    private String source = "";

    Draft(LessonSheet sheet, LessonBook.Item kind) {
      this.sheet = sheet;
      this.kind = kind;
      this.ask = kind.field("ask");
    }

    Draft ask(String words) {
      ask = words;
      return this;
    }

    /** One of some texts, or several; what is right is the answer. */
    Draft choice(List<String> texts, Set<String> rightOnes, boolean several) {
      options = sheet.lettered(texts);
      reply = several ? Reply.SOME : Reply.ONE;
      right =
          options.stream()
              .filter(option -> rightOnes.contains(option.text()))
              .map(option -> Set.of(option.label()))
              .toList();
      return answer(String.join("; ", rightOnes));
    }

    /** Texts to put in order. */
    Draft order(List<String> texts) {
      options = sheet.lettered(texts);
      reply = Reply.ORDER;
      right =
          texts.stream()
              .flatMap(text -> options.stream().filter(o -> o.text().equals(text)).limit(1))
              .map(option -> Set.of(option.label()))
              .toList();
      return answer(String.join("; then ", texts.stream().map(Texts::lower).toList()));
    }

    /** Numbered lines, of each group of which one is to be found. */
    Draft lines(List<Option> numbered, List<Set<String>> groups) {
      options = numbered;
      right = groups;
      return this;
    }

    /** A number in the unit of the kind of question, and how it comes about. */
    Draft number(double value, double share, List<String> steps) {
      reply = Reply.NUMBER;
      number = value;
      within = share;
      worked = steps;
      return this;
    }

    Draft answer(String words) {
      answer = words;
      return this;
    }

    Draft worked(List<String> steps) {
      worked = steps;
      return this;
    }

    Draft because(List<Justification> because) {
      return cites(LessonSheet.cites(because));
    }

    Draft cites(List<Cite> rules) {
      cites = rules;
      return this;
    }

    Draft figures(List<Figure> named) {
      figures = named;
      return this;
    }

    Draft source(String words) {
      source = words;
      return this;
    }

    Question made() {
      boolean sum = reply == Reply.NUMBER;
      return new Question(
          kind.id(),
          kind.whole("level", sum ? 2 : 1),
          ask,
          options,
          reply,
          right,
          number,
          within,
          sum ? kind.field("unit") : "",
          answer,
          worked,
          cites,
          figures,
          source);
    }
  }
}
