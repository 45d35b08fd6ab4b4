package underfoot.knowledge;

import java.util.ArrayList;
import java.util.List;
import underfoot.scenario.RuleFiles;

/**
 * One entry of a file of the rule base, and where it stands.
 *
 * @param name its key
 * @param file where it stands
 * @param line where it stands
 * @param list what it lists, if it is a list of names
 */
public record Listed(String name, String file, int line, List<String> list) {
  /** Copies the list. */
  public Listed {
    list = List.copyOf(list);
  }

  /**
   * The entries of every file of a folder, or of one file.
   *
   * @throws KnowledgeFault if a file cannot be read as a list of entries
   */
  public static List<Listed> in(RuleFiles files, String folderOrFile) throws KnowledgeFault {
    List<Listed> listed = new ArrayList<>();
    List<Entries.Entry> entries =
        folderOrFile.endsWith(".yaml")
            ? Entries.readFile(files, folderOrFile)
            : Entries.readFolder(files, folderOrFile);
    for (Entries.Entry entry : entries) {
      listed.add(
          new Listed(
              entry.name(),
              entry.file(),
              entry.line(),
              entry.lists().getOrDefault("list", List.of())));
    }
    return listed;
  }
}
