package underfoot.language;

import java.nio.charset.StandardCharsets;
import java.util.List;
import underfoot.scenario.RuleFiles;

/** The lines of a file of rules or sentences, free of characters that hide what is written. */
final class RuleLines {
  private RuleLines() {}

  /** A file's lines; a line with a character that may not stand there is told and left empty. */
  static List<String> of(RuleFiles files, String path, List<RuleFaults.Fault> faults) {
    String[] lines =
        new String(files.read(path), StandardCharsets.UTF_8).replace("\r\n", "\n").split("\n", -1);
    for (int i = 0; i < lines.length; i++) {
      int place = hidden(lines[i]);
      if (place >= 0) {
        faults.add(
            new RuleFaults.Fault(
                path,
                i + 1,
                String.format(
                    "column %d holds the character U+%04X, which may not stand in a rule file;"
                        + " take it out",
                    place + 1, (int) lines[i].charAt(place))));
        lines[i] = "";
      }
    }
    return List.of(lines);
  }

  /** Where the first character stands that is no letter, digit, sign or space; -1 if none does. */
  private static int hidden(String line) {
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c >= ' ' && c < 0x7f) {
        continue;
      }
      switch (Character.getType(c)) {
        case Character.CONTROL,
            Character.FORMAT,
            Character.LINE_SEPARATOR,
            Character.PARAGRAPH_SEPARATOR,
            Character.SPACE_SEPARATOR,
            Character.SURROGATE,
            Character.PRIVATE_USE,
            Character.UNASSIGNED -> {
          return i;
        }
        default -> {
          // a letter or a sign
        }
      }
    }
    return -1;
  }
}
