package underfoot.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Where a person's lines come from. */
interface Prompt extends AutoCloseable {
  /**
   * Asks for one line.
   *
   * @param question what stands before the place to type
   * @param likely words that may be completed, where that is possible
   * @return the line; null if there are no more
   */
  String line(String question, List<String> likely);

  /** How many columns there are to write in; 0 if that cannot be told. */
  default int columns() {
    return 0;
  }

  @Override
  void close();

  /** Lines from a pipe or file: each is written out again, so that the talk can be read. */
  static Prompt piped(InputStream in, PrintWriter out) {
    BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    return new Prompt() {
      private static final int LONGEST = 100_000;

      @Override
      public String line(String question, List<String> likely) {
        out.print(question);
        out.flush();
        try {
          StringBuilder line = new StringBuilder();
          int c = lines.read();
          if (c < 0) {
            out.println();
            return null;
          }
          while (c >= 0 && c != '\n') {
            if (line.length() < LONGEST && c != '\r') {
              line.append((char) c);
            }
            c = lines.read();
          }
          out.println(Main.cut(line.toString()));
          return line.toString();
        } catch (IOException e) {
          return null;
        }
      }

      @Override
      public void close() {
        // Standard input is not ours to close.
      }
    };
  }
}
