package underfoot.cli;

import picocli.CommandLine.Option;

/** A command that thinks floors through. */
abstract class FloorCommand extends RuleCommand {
  @Option(
      names = "--prices",
      paramLabel = "FILE",
      description = "Reckon by this price book, whichever the scenario names.")
  private String prices;

  FloorCommand(Environment around) {
    super(around);
  }

  @Override
  final String prices() {
    return prices;
  }
}
