package underfoot.scenario;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.quantity.Dimension;
import underfoot.quantity.Nearest;
import underfoot.quantity.NotAQuantity;
import underfoot.quantity.Quantity;
import underfoot.quantity.Words;

/** Turns what was written for a fact into its value, or says what is wrong with it. */
final class Values {
  private static final Set<String> UNKNOWN =
      Set.of("unknown", "not known", "?", "don't know", "dont know", "do not know", "not sure");
  private static final Set<String> NOT_APPLICABLE = Set.of("n/a", "not applicable");

  private Values() {}

  /** The state a text says in so many words; KNOWN if it is to be read as a value. */
  static State state(String text) {
    if (text.length() > 20) {
      return State.KNOWN;
    }
    String alike = Words.alike(text);
    if (UNKNOWN.contains(alike) || text.equals(String.valueOf(Words.LONE_QUESTION_MARK))) {
      return State.UNKNOWN;
    }
    return NOT_APPLICABLE.contains(alike) ? State.NOT_APPLICABLE : State.KNOWN;
  }

  /** Whether a scalar says nothing at all. */
  static boolean isEmpty(String text) {
    return text.isBlank() || text.equals("~") || text.equals("null");
  }

  /**
   * Reads the value of a fact that is one text.
   *
   * @param fact the fact
   * @param written what was written
   * @param longest how many characters a text may have
   * @return the value
   * @throws BadValue if it is no value of this fact
   */
  static Value read(FactDefinition fact, String written, int longest) throws BadValue {
    if (written.length() > longest) {
      throw new BadValue(
          fact.word()
              + ": "
              + Words.quote(written)
              + " goes on for "
              + written.length()
              + " characters, but at most "
              + longest
              + " are read",
          "write it shorter");
    }
    String text = Words.squeeze(written);
    return switch (fact.kind()) {
      case TEXT -> free(fact, text);
      case CHOICE -> new Value.Choice(choice(fact, text));
      case CHOICES -> choices(fact, List.of(text.split(",")));
      case YES_NO -> yesNo(fact, text);
      case QUANTITY -> quantity(fact, text);
      case COUNT, YEAR -> whole(fact, text);
      case DATE -> date(fact, text);
      case POINTS, RECTANGLE, READINGS, LIST ->
          throw new BadValue(
              fact.word() + ": " + Words.quote(text) + " is one value, but a list is needed",
              example(fact));
    };
  }

  /** How a fact may be written, as its own example shows. */
  static String example(FactDefinition fact) {
    return "for example: " + fact.word() + ": " + fact.example();
  }

  private static Value free(FactDefinition fact, String text) throws BadValue {
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      if (Words.isHidden(text.codePointAt(i))) {
        throw new BadValue(
            fact.word() + ": " + Words.quote(text) + " holds a character that cannot be seen",
            "delete it");
      }
    }
    return new Value.Free(text);
  }

  static Value choices(FactDefinition fact, List<String> texts) throws BadValue {
    Set<String> chosen = new LinkedHashSet<>();
    for (String text : texts) {
      String choice = choice(fact, Words.squeeze(text));
      if (!chosen.add(choice)) {
        throw new BadValue(
            fact.word() + ": " + Words.quote(choice) + " is named twice", "name each once");
      }
    }
    return new Value.Choices(List.copyOf(chosen));
  }

  /** The choice that a text stands for, or the text itself where it is none of them. */
  static String choiceOr(FactDefinition fact, String text) {
    try {
      return choice(fact, text);
    } catch (BadValue none) {
      return text;
    }
  }

  private static String choice(FactDefinition fact, String text) throws BadValue {
    String alike = Words.alike(text);
    for (String choice : fact.of()) {
      if (Words.alike(choice).equals(alike)) {
        return choice;
      }
    }
    for (Map.Entry<String, String> also : fact.also().entrySet()) {
      if (Words.alike(also.getKey()).equals(alike)) {
        return also.getValue();
      }
    }
    for (Map.Entry<String, String> refused : fact.refused().entrySet()) {
      if (Words.alike(refused.getKey()).equals(alike)) {
        throw new BadValue(
            fact.word() + ": " + Words.quote(text) + " is not advised on", refused.getValue());
      }
    }
    List<String> known = new ArrayList<>(fact.of());
    known.addAll(fact.also().keySet());
    String near = Nearest.to(alike, known);
    String meant = fact.also().getOrDefault(near, near);
    String choices = "choices: " + String.join(", ", fact.of());
    throw new BadValue(
        fact.word() + ": " + Words.quote(text) + " is not one of its choices",
        (meant.isEmpty() ? "" : "write: " + fact.word() + ": " + meant + "\n") + choices);
  }

  private static Value yesNo(FactDefinition fact, String text) throws BadValue {
    return switch (Words.alike(text)) {
      case "yes", "true", "y", "on" -> new Value.YesNo(true);
      case "no", "false", "n", "off" -> new Value.YesNo(false);
      default ->
          throw new BadValue(
              fact.word() + ": " + Words.quote(text) + " is neither yes nor no",
              "write: " + fact.word() + ": yes, or no, or unknown");
    };
  }

  private static Value quantity(FactDefinition fact, String text) throws BadValue {
    Quantity quantity;
    try {
      quantity = Quantity.parse(text, fact.dimension());
    } catch (NotAQuantity e) {
      String suggestion =
          e.suggestion().isEmpty()
              ? withUnitOf(fact.example(), text, fact.dimension())
              : e.suggestion();
      throw new BadValue(
          fact.word() + ": " + e.getMessage(),
          suggestion.isEmpty() ? example(fact) : "write: " + fact.word() + ": " + suggestion);
    }
    range(fact, quantity.value(), quantity.text());
    return new Value.Amount(quantity);
  }

  /** A bare number with the unit of an example; empty if the text is not a bare number. */
  static String withUnitOf(String example, String text, Dimension dimension) {
    try {
      return Quantity.parse(text + " " + Quantity.parse(example, dimension).unit(), dimension)
          .text();
    } catch (NotAQuantity e) {
      return "";
    }
  }

  private static void range(FactDefinition fact, double value, String text) throws BadValue {
    if (value < fact.least()) {
      throw new BadValue(
          fact.word() + ": " + text + " is less than it can be",
          "the least is " + fact.leastText() + "; check the number and its unit");
    }
    if (value > fact.most()) {
      throw new BadValue(
          fact.word() + ": " + text + " is more than it can be",
          "the most is " + fact.mostText() + "; check the number and its unit");
    }
  }

  private static Value whole(FactDefinition fact, String text) throws BadValue {
    int whole;
    try {
      whole = Integer.parseInt(text);
    } catch (NumberFormatException e) {
      throw new BadValue(
          fact.word()
              + ": "
              + Words.quote(text)
              + (fact.kind() == Kind.YEAR ? " is not a year" : " is not a whole number"),
          example(fact));
    }
    range(fact, whole, text);
    return new Value.Whole(whole);
  }

  private static Value date(FactDefinition fact, String text) throws BadValue {
    if (text.length() == 10 && text.charAt(4) == '-' && text.charAt(7) == '-') {
      try {
        return new Value.Day(
            LocalDate.of(
                Integer.parseInt(text.substring(0, 4)),
                Integer.parseInt(text.substring(5, 7)),
                Integer.parseInt(text.substring(8))));
      } catch (NumberFormatException e) {
        // Not digits: told below how a date is written.
      } catch (DateTimeException e) {
        throw new BadValue(
            fact.word() + ": " + Words.quote(text) + " is not a day of the calendar",
            example(fact));
      }
    }
    throw new BadValue(
        fact.word() + ": " + Words.quote(text) + " is not a date written as year-month-day",
        example(fact));
  }
}
