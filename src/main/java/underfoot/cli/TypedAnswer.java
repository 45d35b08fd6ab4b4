package underfoot.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underfoot.measure.Texts;
import underfoot.quantity.NotAQuantity;
import underfoot.quantity.Quantity;
import underfoot.scenario.Answers;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Fault;
import underfoot.scenario.Kind;
import underfoot.scenario.ScenarioFaults;

/** What a person types in an interview: what it means, and what is said if it is no answer. */
final class TypedAnswer {
  private static final Pattern BARE = Pattern.compile("-?[0-9]*[.,]?[0-9]+");

  /** How a complaint about a file says what may have been meant. */
  private static final Pattern WRITE = Pattern.compile("write: [^:\n]+: ([^\n]+)(\n.*)?");

  private TypedAnswer() {}

  private static boolean isBare(String text) {
    return BARE.matcher(text).matches();
  }

  /** Whether a text is a unit of what a fact is measured in, and no more. */
  static boolean isUnit(FactDefinition fact, String text) {
    try {
      Quantity.parse("1 " + text, fact.dimension());
      return !text.isBlank() && !Character.isDigit(text.charAt(0));
    } catch (NotAQuantity e) {
      return false;
    }
  }

  /** The objection to an answer, with how to say it. */
  static String objection(FactDefinition fact, String said, ScenarioFaults faults) {
    Fault fault = faults.faults().get(0);
    if (fact.kind() == Kind.QUANTITY && isBare(said)) {
      return said + " what? Say the unit, too: " + said + " " + unit(fact) + ".";
    }
    String what = fault.what().replaceFirst("^" + Pattern.quote(fact.word()) + ": ", "");
    String how = fault.how().strip();
    Matcher write = WRITE.matcher(how);
    if (fact.kind() == Kind.YES_NO) {
      how = "Say yes or no, or press Enter if you do not know";
    } else if (write.matches()) {
      how = "Did you mean " + write.group(1) + "?";
    } else if (how.startsWith("choices: ")) {
      how = "Say one of those above, by its name or number";
    } else if (how.startsWith("for example: ")) {
      how = "For example: " + fact.example();
    }
    String both = (what + (how.isEmpty() ? "" : ". " + Texts.capital(how))).replace('\n', ' ');
    return both.matches(".*[.?!]") ? both : both + ".";
  }

  private static String unit(FactDefinition fact) {
    return fact.example().replaceFirst("^[-0-9./ ]+", "");
  }

  /** What may be chosen by number. */
  static List<String> choices(FactDefinition fact) {
    return fact.kind() == Kind.CHOICE || fact.kind() == Kind.CHOICES ? fact.of() : List.of();
  }

  /** What was said, as a word to be told from others. */
  static String word(String said) {
    return said.strip().toLowerCase(Locale.ROOT).replaceAll("[?!.]+$", "").strip();
  }

  static boolean isEnough(String word) {
    return word.equals("enough") || word.equals("done");
  }

  static boolean isQuit(String word) {
    return word.equals("quit") || word.equals("exit");
  }

  private static boolean isUnknown(String text) {
    String plain =
        text.toLowerCase(Locale.ROOT)
            .replace('’', '\'')
            .replaceAll("[.!]+$", "")
            .replaceFirst("^i( am|'m)? ", "")
            .strip();
    return List.of(
            "",
            "unknown",
            "don't know",
            "dont know",
            "do not know",
            "not known",
            "not sure",
            "unsure",
            "no idea",
            "dunno",
            "have no idea",
            "skip",
            "?")
        .contains(plain);
  }

  /** An answer as the fact's file writes it: choices by their numbers, "unknown" by any name. */
  static String chosen(FactDefinition fact, String said) {
    boolean shape = fact.kind() == Kind.READINGS || fact.kind() == Kind.POINTS;
    if (isUnknown(said) || shape && List.of("no", "none", "not yet").contains(word(said))) {
      return Answers.UNKNOWN;
    }
    List<String> choices = choices(fact);
    if (choices.isEmpty() || !said.matches("[0-9]{1,2}([ ,;]+[0-9]{1,2})*")) {
      return said;
    }
    List<String> named = new ArrayList<>();
    for (String number : said.split("[ ,;]+")) {
      int n = Integer.parseInt(number);
      named.add(n >= 1 && n <= choices.size() ? choices.get(n - 1) : number);
    }
    return String.join(", ", named);
  }

  /** Whether an answer lacks its unit. */
  static boolean lacksUnit(FactDefinition fact, String value) {
    return fact.kind() == Kind.QUANTITY && isBare(value);
  }
}
