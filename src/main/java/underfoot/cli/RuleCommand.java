package underfoot.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import underfoot.report.TextPage;

/** A command that uses the rules. */
abstract class RuleCommand implements Callable<Integer> {
  private final Environment around;
  @Spec private CommandSpec spec;

  @Option(
      names = "--rules",
      paramLabel = "DIR",
      description = "Use your own copy of the rules folder; it is compiled first.")
  private Path rules;

  @Option(names = "--width", paramLabel = "N", description = "Columns of the text.")
  private Integer width;

  RuleCommand(Environment around) {
    this.around = around;
  }

  final Environment around() {
    return around;
  }

  final SafeOutput out() {
    return (SafeOutput) spec.commandLine().getOut();
  }

  final SafeOutput err() {
    return (SafeOutput) spec.commandLine().getErr();
  }

  /** The rules, and what is read. */
  final CommandContext context() throws UserError {
    return new CommandContext(rules, prices(), around);
  }

  /** The price book the command line names; null if none. */
  String prices() {
    return null;
  }

  /** An empty page to fill. */
  final TextPage page() throws UserError {
    return around.page(width);
  }

  final boolean widthIsSaid() {
    return width != null;
  }
}
