package underfoot.talk;

import java.util.List;
import underfoot.knowledge.InterviewBook;
import underfoot.knowledge.InterviewBook.Taken;
import underfoot.measure.Texts;
import underfoot.quantity.Dimension;
import underfoot.quantity.NotAQuantity;
import underfoot.quantity.Quantity;
import underfoot.scenario.Answers;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Kind;
import underfoot.scenario.Place;

/**
 * A question as it is put, in the same words whoever puts it.
 *
 * @param place what is asked
 * @param part the title of the part it belongs to
 * @param ask the question
 * @param how how it may be answered, in a sentence; empty if its choices say it
 * @param means what the fact is
 * @param look how to find out; empty if there is no advice
 * @param picture a picture in text; empty if there is none
 * @param drawing the name of a drawing; empty if there is none
 * @param choices what may be chosen, in order; empty if it is not one of a few
 * @param mayBeUnknown whether the advice can go on without it
 * @param said what was said before; empty if nothing was
 * @param guess why that was only taken; empty if it was not
 */
public record Asked(
    Place place,
    String part,
    String ask,
    String how,
    String means,
    String look,
    String picture,
    String drawing,
    List<Choice> choices,
    boolean mayBeUnknown,
    String said,
    String guess) {
  private static final double FOOT = 304.8;
  private static final double EIGHTH = 25.4 / 8;
  private static final int EIGHTHS = 8;

  /** Copies the list. */
  public Asked {
    choices = List.copyOf(choices);
  }

  /**
   * One of a few answers.
   *
   * @param value the answer
   * @param looks what it looks like, in a few words; may be empty
   * @param drawing the name of its drawing; may be empty
   */
  public record Choice(String value, String looks, String drawing) {}

  static Asked of(InterviewBook book, Known known, Place place) {
    FactDefinition fact = place.fact();
    InterviewBook.Help help = book.help(fact);
    List<String> values = fact.kind() == Kind.YES_NO ? List.of("yes", "no") : fact.of();
    boolean imperial = known.isImperial();
    Taken guess = known.taken().get(place.id());
    return new Asked(
        place,
        book.part(fact),
        question(place),
        how(fact, help.text("hint"), imperial),
        fact.means(),
        fact.look(),
        help.text("picture"),
        help.text("drawing"),
        values.stream()
            .map(value -> new Choice(value, help.looks(value), help.drawing(value)))
            .toList(),
        !fact.required() || book.guess(fact).isPresent(),
        known.answers().said(place).orElse(""),
        guess == null ? "" : guess.since());
  }

  /** The question, with the name of the entry it is about. */
  public static String question(Place place) {
    FactDefinition fact = place.fact();
    String ask = fact.ask().isEmpty() ? fact.means() + ": what do you know of it?" : fact.ask();
    return place.whose().isEmpty() ? ask : place.whose() + ": " + ask;
  }

  private static String how(FactDefinition fact, String hint, boolean imperial) {
    if (!hint.isEmpty()) {
      return Texts.sentence(hint);
    }
    return switch (fact.kind()) {
      case YES_NO, CHOICE -> "";
      case CHOICES -> "One or several, with commas between.";
      case LIST -> "Names with commas between, or none.";
      case POINTS -> "3.6 m x 2.4 m; for other shapes the corners, " + fact.example() + '.';
      default -> "For example: " + example(fact, imperial) + '.';
    };
  }

  /** An example, in feet and inches for who speaks of these. */
  private static String example(FactDefinition fact, boolean imperial) {
    if (!imperial || fact.dimension() != Dimension.LENGTH) {
      return fact.example();
    }
    try {
      double mm = Quantity.parse(fact.example(), Dimension.LENGTH).value();
      if (mm > 2 * FOOT) {
        long inches = Math.round(mm / EIGHTH / EIGHTHS);
        return inches / 12 + " ft" + (inches % 12 == 0 ? "" : " " + inches % 12 + " in");
      }
      long eighths = Math.max(1, Math.round(mm / EIGHTH));
      long whole = eighths / EIGHTHS;
      long over = eighths % EIGHTHS;
      long by = over % 4 == 0 ? 4 : over % 2 == 0 ? 2 : 1;
      String part = over == 0 ? "" : over / by + "/" + EIGHTHS / by;
      return ((whole == 0 && !part.isEmpty() ? "" : whole + " ") + part).strip() + " in";
    } catch (NotAQuantity e) {
      return fact.example();
    }
  }

  /** Whether it was asked before, and nobody knew. */
  public boolean isUnknown() {
    return said.equals(Answers.UNKNOWN);
  }
}
