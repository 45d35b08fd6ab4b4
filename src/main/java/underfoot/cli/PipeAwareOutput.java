package underfoot.cli;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** Standard output that remembers whether its reader went away, as {@code head} does. */
final class PipeAwareOutput extends FilterOutputStream {
  private boolean closedByReader;

  PipeAwareOutput(OutputStream to) {
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

  /** Whether what was not written was not wanted. */
  boolean closedByReader() {
    return closedByReader;
  }
}
