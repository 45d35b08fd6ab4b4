package underfoot.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import underfoot.language.RuleFaults;
import underfoot.report.RecordWriter;

/** What {@code rules --lint} prints. */
final class Linting {
  private Linting() {}

  private record Found(String format, int rules, List<RuleFaults.Fault> faults) {}

  /** Prints what is wrong with a rule base; the exit code tells whether anything is. */
  static int run(CommandContext context, boolean json, PrintWriter out) throws UserError {
    int rules = context.ruleTexts().size();
    List<RuleFaults.Fault> faults = context.lint();
    if (json) {
      Found found = new Found("underfoot.lint/1", rules, faults);
      RecordWriter.write(found, false, Map.of(), out);
      out.println();
    } else if (faults.isEmpty()) {
      out.println(rules + " rules, nothing to mend.");
    } else {
      faults.forEach(out::println);
      out.println();
      out.println(rules + " rules, to mend: " + faults.size());
    }
    return faults.isEmpty() ? Exit.FINE : Exit.FAULTS_FOUND;
  }
}
