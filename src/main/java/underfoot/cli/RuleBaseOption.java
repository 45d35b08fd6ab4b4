package underfoot.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** The option that takes a person's own rules instead of the shipped ones. */
final class RuleBaseOption {
  @Option(
      names = "--rules",
      paramLabel = "DIR",
      description = "Use your own copy of the rules folder; it is compiled first.")
  private Path folder;

  Path folder() {
    return folder;
  }
}
