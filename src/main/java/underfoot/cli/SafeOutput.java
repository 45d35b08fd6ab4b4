package underfoot.cli;

import java.io.FilterOutputStream;
import java.io.FilterWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import underfoot.report.Printable;
import underfoot.report.TextPage;

/**
 * Standard output or error, in UTF-8. Whatever in the words could steer a terminal is written out;
 * only the colours of a {@link TextPage}, and of help, go as they are.
 */
final class SafeOutput extends PrintWriter {
  private final Writer raw;
  private final Pipe pipe;

  SafeOutput(OutputStream to) {
    this(new Pipe(to));
  }

  private SafeOutput(Pipe pipe) {
    this(pipe, new OutputStreamWriter(pipe, StandardCharsets.UTF_8));
  }

  private SafeOutput(Pipe pipe, Writer raw) {
    super(new Safe(raw));
    this.raw = raw;
    this.pipe = pipe;
  }

  /** Prints a page, whose words are safe already. */
  void page(TextPage page) {
    trusted(page.text());
  }

  /** Prints text that holds nothing from outside. */
  void trusted(String text) {
    try {
      raw.write(text);
    } catch (IOException e) {
      setError();
    }
  }

  /** Whether what was not written was not wanted: its reader went away, as {@code head} does. */
  boolean closedByReader() {
    return pipe.closedByReader;
  }

  /** Remembers whether its reader went away. */
  private static final class Pipe extends FilterOutputStream {
    private boolean closedByReader;

    Pipe(OutputStream to) {
      super(to);
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
      try {
        out.write(bytes, from, count);
      } catch (IOException e) {
        closedByReader = String.valueOf(e.getMessage()).contains("Broken pipe");
        throw e;
      }
    }
  }

  private static final class Safe extends FilterWriter {
    Safe(Writer to) {
      super(to);
    }

    @Override
    public void write(int c) throws IOException {
      write(String.valueOf((char) c), 0, 1);
    }

    @Override
    public void write(char[] chars, int from, int count) throws IOException {
      write(new String(chars, from, count), 0, count);
    }

    @Override
    public void write(String text, int from, int count) throws IOException {
      String part = text.substring(from, from + count);
      out.write(part.equals(System.lineSeparator()) ? part : Printable.of(part));
    }
  }
}
