package underfoot.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import underfoot.scenario.ScenarioSchema;

/** {@code schema}: the JSON Schema of scenario files, for editors. */
@Command(
    name = "schema",
    mixinStandardHelpOptions = true,
    description = "The JSON Schema of scenario files, for editors.")
final class Schema extends RuleCommand {
  Schema(Environment around) {
    super(around);
  }

  @Option(names = "--proposal", description = "Of proposal files, as check reads them.")
  private boolean proposal;

  @Override
  public Integer call() throws UserError {
    out()
        .print(
            proposal
                ? ScenarioSchema.ofProposals(context().proposalFacts())
                : ScenarioSchema.of(context().facts()));
    return Exit.FINE;
  }
}
