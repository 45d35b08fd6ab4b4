package underfoot.scenario;

/**
 * One fault of a file, in words its writer can act on.
 *
 * @param file the file's name as the user gave it
 * @param line the line, from 1; 0 if the fault has no place in the file
 * @param column the column in characters, from 1; 0 if the fault has no place in the file
 * @param what what is wrong, naming what was written
 * @param how how to put it right, such as {@code write: thickness: 21 mm}; may be empty
 */
public record Fault(String file, int line, int column, String what, String how) {

  static Fault at(String file, Spot at, String what, String how) {
    return new Fault(file, at.line(), at.column(), what, how);
  }

  /** The fault as it is printed: place and what is wrong, then how to write it, indented. */
  public String text() {
    StringBuilder out = new StringBuilder(file);
    if (line > 0) {
      out.append(':').append(line).append(':').append(column);
    }
    out.append(": ").append(what);
    if (!how.isEmpty()) {
      out.append("\n  ").append(how.replace("\n", "\n  "));
    }
    return out.toString();
  }
}
