package underfoot.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underfoot.measure.Texts;
import underfoot.quantity.NotAQuantity;
import underfoot.quantity.Quantity;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Fault;
import underfoot.scenario.Kind;
import underfoot.scenario.ScenarioFaults;

/** What is said to an answer that is none: a file's complaint in the words of a talk. */
final class AnswerError {
  private static final Pattern BARE = Pattern.compile("-?[0-9]*[.,]?[0-9]+");

  /** How a complaint about a file says what may have been meant. */
  private static final Pattern WRITE = Pattern.compile("write: [^:\n]+: ([^\n]+)(\n.*)?");

  private AnswerError() {}

  /** Whether a text is a number and no more. */
  static boolean isBare(String text) {
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
  static String to(FactDefinition fact, String said, ScenarioFaults faults) {
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
}
