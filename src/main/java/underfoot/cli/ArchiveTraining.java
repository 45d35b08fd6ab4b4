package underfoot.cli;

import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import underfoot.reasoning.RuleBase;

/**
 * Runs the commands people run most, once each, when the program is built: the classes they load
 * are archived then, so that each of them starts quickly. What they say goes nowhere.
 */
final class ArchiveTraining {
  private ArchiveTraining() {}

  /**
   * Runs them.
   *
   * @param arguments a scenario, a proposal for it, and a folder to write to
   */
  public static void main(String[] arguments) {
    String scenario = arguments[0];
    String proposal = arguments[1];
    String page = Path.of(arguments[2], "rehearsal.html").toString();
    List<List<String>> commands =
        List.of(
            List.of("advise", scenario),
            List.of("advise", scenario, "--json"),
            List.of("advise", scenario, "--html", page, "--replace"),
            List.of("why", scenario),
            List.of("why-not", scenario, "plywood"),
            List.of("compare", scenario),
            List.of("check", scenario, proposal),
            List.of("lesson", scenario));
    RuleBase rules = RuleBase.shipped();
    Environment around =
        new Environment(InputStream.nullInputStream(), Map.of(), false, () -> rules);
    for (List<String> command : commands) {
      int exit =
          Main.run(
              command.toArray(String[]::new),
              around,
              OutputStream.nullOutputStream(),
              OutputStream.nullOutputStream());
      if (exit == Exit.INTERNAL || exit == Exit.WRONG_USAGE || exit == Exit.SCENARIO_INVALID) {
        throw new IllegalStateException(command + " ended with " + exit);
      }
    }
  }
}
