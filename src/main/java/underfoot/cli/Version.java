package underfoot.cli;

import picocli.CommandLine.IVersionProvider;
import underfoot.scenario.RuleFiles;

/** The version of the program. */
final class Version implements IVersionProvider {
  /** The version the jar was built as; {@code development} if it runs from classes. */
  static String of() {
    String built = Version.class.getPackage().getImplementationVersion();
    return built == null ? "development" : built;
  }

  private static String ruleBase() {
    return CommandContext.idOf(RuleFiles.shipped());
  }

  @Override
  public String[] getVersion() {
    return new String[] {"underfoot " + of() + ", rule base " + ruleBase()};
  }
}
