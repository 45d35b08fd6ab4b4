package underfoot.cli;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;
import underfoot.report.Printable;

/**
 * Where the lines of a batch go: standard output, or a file that lines are only added to. A file is
 * gone on with by what its lines say: each names the scenario it answers and the digest of its
 * content. Only one batch at a time may write to a file.
 */
final class Journal implements AutoCloseable {
  private static final JsonFactory JSON = new JsonFactory();
  private static final String BEGINS = "{\"format\":\"underfoot.";

  /** Held beyond all lines, so that others may read meanwhile. */
  private static final long LOCKED = Long.MAX_VALUE - 1;

  private final PrintWriter out;
  private final FileChannel file;

  /** The digest that the last line of each scenario answers, by its name. */
  private final Map<String, String> answered = new HashMap<>();

  private final Set<String> digests = new HashSet<>();

  private Journal(PrintWriter out, FileChannel file) {
    this.out = out;
    this.file = file;
  }

  /** Lines that are printed. */
  static Journal printed(PrintWriter out) {
    return new Journal(out, null);
  }

  /**
   * Lines in a file.
   *
   * @param output which file
   * @param resume whether it is gone on with; else it is begun anew
   * @throws UserError if another batch writes to it, or it is to be gone on with and is none of
   *     ours
   */
  static Journal in(OutputFile output, boolean resume) throws UserError {
    Path target = output.target();
    try {
      FileChannel file =
          FileChannel.open(
              target, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
      Journal journal = new Journal(null, file);
      try {
        journal.begin(output.name(), resume);
        return journal;
      } catch (IOException | UserError e) {
        file.close();
        throw e;
      }
    } catch (IOException e) {
      throw UserError.usage(Main.cut(output.name()) + " cannot be written");
    }
  }

  private void begin(String name, boolean resume) throws IOException, UserError {
    boolean locked;
    try {
      locked = file.tryLock(LOCKED, 1, false) != null;
    } catch (OverlappingFileLockException e) {
      locked = false;
    }
    if (!locked) {
      throw UserError.usage(Main.cut(name) + " is being written by another batch");
    }
    long end = resume ? read(name) : 0;
    file.truncate(end);
    file.position(end);
  }

  /** Takes note of every whole line; gives where the last one ends. */
  private long read(String name) throws IOException, UserError {
    long end = 0;
    int number = 0;
    InputStream in = new BufferedInputStream(Channels.newInputStream(file.position(0)));
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    for (int one = in.read(); one >= 0; one = in.read()) {
      if (one == '\n') {
        number++;
        if (!note(line.toByteArray())) {
          throw notOurs(name, number);
        }
        end += line.size() + 1;
        line.reset();
      } else {
        line.write(one);
      }
    }
    String torn = line.toString(StandardCharsets.UTF_8); // what a crash left of a line
    if (!torn.startsWith(BEGINS) && !BEGINS.startsWith(torn)) {
      throw notOurs(name, number + 1);
    }
    return end;
  }

  private static UserError notOurs(String name, int line) {
    return UserError.usage(
        Main.cut(name)
            + ":"
            + line
            + " is no line of a batch that says which scenario it answers (file, sha256), so"
            + " nothing was changed; name another file with --out");
  }

  /** Takes note of a line; false if it is none of a batch. */
  private boolean note(byte[] line) {
    String format = "";
    String name = null;
    String digest = null;
    try (JsonParser json = JSON.createParser(ObjectReadContext.empty(), line)) {
      if (json.nextToken() != JsonToken.START_OBJECT) {
        return false;
      }
      while (json.nextToken() == JsonToken.PROPERTY_NAME) {
        String key = json.currentName();
        boolean text = json.nextToken() == JsonToken.VALUE_STRING;
        if (text && key.equals("format")) {
          format = json.getString();
        } else if (text && key.equals("file")) {
          name = json.getString();
        } else if (text && key.equals("sha256")) {
          digest = json.getString();
        }
        json.skipChildren();
      }
      if (json.currentToken() != JsonToken.END_OBJECT) {
        return false;
      }
    } catch (JacksonException e) {
      return false;
    }
    if (!format.startsWith("underfoot.") || name == null || digest == null) {
      return false;
    }
    answered.put(name, digest);
    digests.add(digest);
    return true;
  }

  /** The digest of the content that the last line of a scenario answers; null if it has none. */
  String answered(String name) {
    return answered.get(name);
  }

  /** Whether a line answers such content, under any name. */
  boolean hasAnswered(String digest) {
    return digests.contains(digest);
  }

  /** Adds a line, in which nothing steers a terminal on which the file is shown. */
  void add(String line) throws IOException {
    String text = Printable.of(line);
    if (file == null) {
      out.print(text);
      out.print('\n');
      if (out.checkError()) {
        throw new IOException("the reader has gone or the disk is full");
      }
      return;
    }
    write(text);
    write("\n");
  }

  private void write(String text) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
    while (bytes.hasRemaining()) {
      file.write(bytes);
    }
  }

  @Override
  public void close() throws IOException {
    if (file != null) {
      file.close();
    }
  }
}
