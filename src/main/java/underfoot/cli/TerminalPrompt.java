package underfoot.cli;

import java.io.IOException;
import java.util.List;
import org.jline.reader.Candidate;
import org.jline.reader.CompletingParsedLine;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import underfoot.report.Printable;

/** Lines typed at a terminal, with editing, recall, and completion of the choices. */
final class TerminalPrompt implements Prompt {
  private final Terminal terminal;
  private final LineReader reader;
  private List<String> likely = List.of();

  /** The terminal the program was started at. */
  TerminalPrompt() throws IOException {
    this(TerminalBuilder.builder().system(true).build());
  }

  TerminalPrompt(Terminal terminal) {
    this.terminal = terminal;
    this.reader =
        LineReaderBuilder.builder()
            .terminal(terminal)
            .parser((line, cursor, context) -> new WholeLine(line, cursor))
            .completer(
                (line, parsed, found) ->
                    likely.forEach(w -> found.add(new Candidate(Printable.of(w)))))
            .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
            .option(LineReader.Option.CASE_INSENSITIVE, true)
            .build();
  }

  /** An answer is one word, whatever spaces and quotes are in it: {@code don't know}. */
  private record WholeLine(String line, int cursor) implements CompletingParsedLine {
    @Override
    public String word() {
      return line;
    }

    @Override
    public int wordCursor() {
      return cursor;
    }

    @Override
    public int wordIndex() {
      return 0;
    }

    @Override
    public List<String> words() {
      return List.of(line);
    }

    @Override
    public CharSequence escape(CharSequence buildUp, boolean complete) {
      return buildUp;
    }

    @Override
    public int rawWordCursor() {
      return cursor;
    }

    @Override
    public int rawWordLength() {
      return line.length();
    }
  }

  /** The line typed; what was typed is dropped by Ctrl-C, and Ctrl-C on an empty line leaves. */
  @Override
  public String line(String question, List<String> words) {
    likely = words;
    while (true) {
      try {
        return reader.readLine(question);
      } catch (UserInterruptException e) {
        if (e.getPartialLine() == null || e.getPartialLine().isBlank()) {
          return "quit";
        }
      } catch (EndOfFileException e) {
        return null;
      }
    }
  }

  @Override
  public int columns() {
    return terminal.getWidth();
  }

  @Override
  public void close() {
    try {
      terminal.close();
    } catch (IOException e) {
      // It is given back by the system when the program ends.
    }
  }
}
