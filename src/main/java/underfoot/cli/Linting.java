package underfoot.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.json.JsonMapper;
import underfoot.language.RuleFaults;

/** What {@code rules --lint} prints. */
final class Linting {
  private Linting() {}

  /** Prints what is wrong with a rule base; the exit code tells whether anything is. */
  static int run(CommandContext context, boolean json, PrintWriter out) throws UserError {
    int rules = context.ruleTexts().size();
    List<RuleFaults.Fault> faults = context.lint();
    if (json) {
      List<Map<String, Object>> told = new ArrayList<>();
      for (RuleFaults.Fault fault : faults) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("file", fault.file());
        one.put("line", fault.line());
        one.put("what", fault.what());
        told.add(one);
      }
      Map<String, Object> all = new LinkedHashMap<>();
      all.put("format", "underfoot.lint/1");
      all.put("rules", rules);
      all.put("faults", told);
      out.println(JsonMapper.shared().writeValueAsString(all));
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
