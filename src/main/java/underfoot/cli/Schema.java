package underfoot.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import underfoot.scenario.ScenarioSchema;

/** {@code schema}: the JSON Schema of scenario files, for editors. */
@Command(
    name = "schema",
    mixinStandardHelpOptions = true,
    description = "The JSON Schema of scenario files, for editors.")
final class Schema implements Callable<Integer> {
  private final Environment around;

  @Spec private CommandSpec spec;
  @Mixin private RuleBaseOption rules;

  Schema(Environment around) {
    this.around = around;
  }

  @Option(names = "--proposal", description = "Of proposal files, as check reads them.")
  private boolean proposal;

  @Override
  public Integer call() throws UserError {
    CommandContext bench = new CommandContext(rules.folder(), around, spec.commandLine().getErr());
    spec.commandLine()
        .getOut()
        .print(
            proposal
                ? ScenarioSchema.ofProposals(bench.proposalBook())
                : ScenarioSchema.of(bench.facts()));
    return Exit.FINE;
  }
}
