package underfoot.cli;

import static java.util.Comparator.comparingInt;

import java.util.ArrayList;
import java.util.List;
import underfoot.lesson.ClassBook;
import underfoot.lesson.Sheet;
import underfoot.quantity.Nearest;

/**
 * Answers as a table of comma-separated values: pupil, sheet, question, answer. Semicolons and tabs
 * do too, and quotation marks round what holds one.
 */
final class AnswerTable {
  private static final String HEAD = "pupil,sheet,question,answer";

  private AnswerTable() {}

  /** A table to fill in. */
  static String empty(List<String> pupils, List<List<Sheet>> sheets) {
    StringBuilder out = new StringBuilder(HEAD + "\n");
    for (int p = 0; p < pupils.size(); p++) {
      for (int s = 0; s < sheets.size(); s++) {
        int many = sheets.get(s).get(p).questions().size();
        for (int q = 1; q <= many; q++) {
          out.append(quoted(pupils.get(p))).append(',').append(s + 1).append(',').append(q);
          out.append(",\n");
        }
      }
    }
    return out.toString();
  }

  private static String quoted(String text) {
    boolean reckoned = !text.isEmpty() && "=+@-".indexOf(text.charAt(0)) >= 0;
    String safe = reckoned ? "'" + text : text; // no spreadsheet reckons with it
    return safe.matches("[^,;\"\t]*") ? safe : '"' + safe.replace("\"", "\"\"") + '"';
  }

  /**
   * Reads a table.
   *
   * @param name its name, for messages
   * @param text its content
   * @param book the class
   * @return the answers that are not blank
   * @throws UserError with every row that names no question of the class; then nothing is taken in
   */
  static List<ClassBook.Reply> read(String name, String text, ClassBook book) throws UserError {
    List<String> faults = new ArrayList<>();
    List<ClassBook.Reply> replies = new ArrayList<>();
    String[] rows = text.replace("\uFEFF", "").split("\r\n|\r|\n");
    char between =
        ",;\t"
            .chars()
            .mapToObj(one -> (char) one)
            .max(comparingInt(one -> cells(rows[0], one).size()))
            .orElse(',');
    List<String> head = cells(rows[0], between).stream().map(String::toLowerCase).toList();
    List<Integer> at = new ArrayList<>();
    for (String column : HEAD.split(",")) {
      at.add(head.indexOf(column));
      if (!head.contains(column)) {
        faults.add(name + ":1: there is no column '" + column + "'; write: " + HEAD);
      }
    }
    boolean headed = faults.isEmpty();
    for (int i = 1; i < rows.length && headed; i++) {
      if (!rows[i].isBlank()) {
        row(name + ":" + (i + 1) + ": ", cells(rows[i], between), at, book, replies, faults);
      }
    }
    if (!faults.isEmpty()) {
      throw new UserError(
          Exit.SCENARIO_INVALID, String.join("\n", faults) + "\nNothing was taken in.");
    }
    return replies;
  }

  private static void row(
      String place,
      List<String> cells,
      List<Integer> at,
      ClassBook book,
      List<ClassBook.Reply> replies,
      List<String> faults) {
    if (cells.size() <= at.stream().mapToInt(Integer::intValue).max().orElse(0)) {
      faults.add(place + "the row has too few cells; write: " + HEAD);
      return;
    }
    String pupil = cells.get(at.get(0));
    String known = book.pupils().stream().filter(pupil::equalsIgnoreCase).findFirst().orElse("");
    if (known.isEmpty()) {
      String near = Nearest.to(pupil, book.pupils());
      faults.add(
          place
              + "there is no pupil '"
              + Main.cut(pupil)
              + "'"
              + (near.isEmpty() ? "" : "; write: " + near));
      return;
    }
    String sheet = cells.get(at.get(1));
    String question = cells.get(at.get(2));
    int sheetNumber = sheet.matches("[0-9]{1,3}") ? Integer.parseInt(sheet) : 0;
    int number = question.matches("[0-9]{1,3}") ? Integer.parseInt(question) : 0;
    int many = book.sheet(known, sheetNumber).map(one -> one.questions().size()).orElse(0);
    if (many == 0) {
      faults.add(place + known + " has no sheet '" + Main.cut(sheet) + "'");
    } else if (number < 1 || number > many) {
      faults.add(
          place
              + "sheet "
              + sheet
              + " has no question '"
              + Main.cut(question)
              + "'; it has 1 to "
              + many);
    } else if (!cells.get(at.get(3)).isBlank()) {
      replies.add(new ClassBook.Reply(known, sheetNumber, number, cells.get(at.get(3)).strip()));
    }
  }

  private static List<String> cells(String row, char between) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < row.length(); i++) {
      char c = row.charAt(i);
      if (c == '"' && quoted && i + 1 < row.length() && row.charAt(i + 1) == '"') {
        cell.append('"');
        i++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (c == between && !quoted) {
        cells.add(cell.toString().strip());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    cells.add(cell.toString().strip());
    return cells;
  }
}
