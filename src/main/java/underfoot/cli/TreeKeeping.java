package underfoot.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import underfoot.scenario.KeptTrees;
import underfoot.scenario.RuleFiles;
import underfoot.scenario.ScenarioFaults;

/** Run when the program is built: keeps the trees of the rules' YAML files beside them. */
final class TreeKeeping {
  private TreeKeeping() {}

  /**
   * Writes the trees.
   *
   * @param arguments the folder of the rules as they will be shipped
   */
  public static void main(String[] arguments) throws IOException, ScenarioFaults {
    Path folder = Path.of(arguments[0]);
    Files.write(folder.resolve(KeptTrees.FILE), KeptTrees.written(RuleFiles.of(folder)));
  }
}
