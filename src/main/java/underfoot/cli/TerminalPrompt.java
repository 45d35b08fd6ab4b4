package underfoot.cli;

import java.io.IOException;
import java.util.List;
import org.jline.reader.Candidate;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;

/** Lines typed at a terminal, with editing, recall, and completion of the choices. */
final class TerminalPrompt implements Prompt {
  private final Terminal terminal;
  private final LineReader reader;
  private List<String> likely = List.of();

  TerminalPrompt() throws IOException {
    terminal = TerminalBuilder.builder().system(true).build();
    reader =
        LineReaderBuilder.builder()
            .terminal(terminal)
            .completer(
                (line, parsed, candidates) -> likely.forEach(w -> candidates.add(new Candidate(w))))
            .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
            .build();
  }

  @Override
  public String line(String question, List<String> words) {
    likely = words;
    try {
      return reader.readLine(question);
    } catch (UserInterruptException e) {
      return "quit";
    } catch (EndOfFileException e) {
      return null;
    }
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
