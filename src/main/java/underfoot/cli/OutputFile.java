package underfoot.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;

/**
 * The one way files are written: whole, beside their place first and then moved there, so that
 * nothing is ever half written. Onto a link its target is written. What is no regular file is
 * refused, and what is read; a file that is there is replaced only when that was asked for.
 */
final class OutputFile {
  private static final int MOST_LINKS = 40;

  private final String name;
  private final boolean replace;
  private final Inputs inputs;

  /**
   * @param name where; {@code -} is standard output
   * @param replace whether a file that is there may be replaced
   * @param inputs what is read
   * @throws UserError if it cannot be written there
   */
  OutputFile(String name, boolean replace, Inputs inputs) throws UserError {
    this.name = name;
    this.replace = replace;
    this.inputs = inputs;
    if (!isStandard()) {
      target();
    }
  }

  /** Whether this is standard output. */
  boolean isStandard() {
    return name.equals("-");
  }

  /** The name a person gave it. */
  String name() {
    return name;
  }

  /** Where it is written, links followed, looked at anew. */
  Path target() throws UserError {
    String shown = Main.cut(name);
    try {
      Path target = Path.of(name).toAbsolutePath();
      if (Files.exists(target) && !Files.isRegularFile(target) && !Files.isDirectory(target)) {
        // Asked before links are followed: where /dev/stdout leads has no name of its own.
        throw UserError.usage(shown + " is no regular file, so nothing is written to it");
      }
      for (int links = 0; Files.isSymbolicLink(target) && links < MOST_LINKS; links++) {
        target = target.resolveSibling(Files.readSymbolicLink(target));
      }
      if (name.isBlank() || Files.isDirectory(target)) {
        throw UserError.usage(shown + " is a folder; name a file to write");
      }
      Path folder = target.getParent();
      if (folder == null || !Files.isDirectory(folder)) {
        throw UserError.usage("There is no folder to write " + shown + " in");
      }
      if (Files.exists(target) || Files.isSymbolicLink(target)) {
        if (!Files.isRegularFile(target)) {
          throw UserError.usage(shown + " is no regular file, so nothing is written to it");
        }
        if (inputs.have(target)) {
          throw UserError.usage(shown + " is what is read; name another file to write");
        }
        if (!replace) {
          throw UserError.usage(shown + " is there already; add --replace to write over it");
        }
      }
      if (!Files.isWritable(folder)) {
        throw UserError.usage(shown + " may not be written there");
      }
      refuseNoName(target);
      return target;
    } catch (InvalidPathException e) {
      throw UserError.usage(shown + " is no name of a file");
    } catch (IOException e) {
      throw UserError.usage(shown + " cannot be written");
    }
  }

  /**
   * Refuses a name that the file system takes for none, as one that is too long.
   *
   * @throws IOException if it does
   */
  private static void refuseNoName(Path target) throws IOException {
    try {
      Files.readAttributes(target, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    } catch (NoSuchFileException notYet) {
      // It may be written.
    }
  }

  /**
   * Writes a text, or prints it.
   *
   * @throws UserError if it cannot be written; then nothing has changed
   */
  void write(String text, PrintWriter out) throws UserError {
    if (isStandard()) {
      out.print(text);
    } else {
      write(text.getBytes(StandardCharsets.UTF_8));
    }
  }

  /** Writes bytes; see {@link #write(String, PrintWriter)}. */
  void write(byte[] content) throws UserError {
    Map<OutputFile, byte[]> alone = new LinkedHashMap<>();
    alone.put(this, content);
    write(alone);
  }

  /**
   * Writes several files, in their order: none is in its place before there is room for all.
   *
   * @throws UserError if one cannot be written; then nothing has changed
   */
  static void write(Map<OutputFile, byte[]> files) throws UserError {
    Map<OutputFile, Path> ready = new LinkedHashMap<>();
    try {
      for (Map.Entry<OutputFile, byte[]> one : files.entrySet()) {
        Path target = one.getKey().target();
        Path beside = target.resolveSibling(".underfoot-" + UUID.randomUUID() + ".part");
        ready.put(one.getKey(), beside);
        one.getKey().write(beside, one.getValue());
      }
      for (Map.Entry<OutputFile, Path> one : ready.entrySet()) {
        one.getKey().move(one.getValue());
      }
    } finally {
      ready.values().forEach(beside -> beside.toFile().delete()); // there if something went wrong
    }
  }

  private void write(Path beside, byte[] content) throws UserError {
    try (FileChannel channel =
        FileChannel.open(beside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer bytes = ByteBuffer.wrap(content);
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      channel.force(true);
    } catch (IOException e) {
      throw new UserError(Exit.INTERNAL, Main.cut(name) + " cannot be written, so nothing was");
    }
  }

  private void move(Path beside) throws UserError {
    try {
      move(beside, target());
    } catch (FileAlreadyExistsException e) {
      throw UserError.usage(Main.cut(name) + " is there already; add --replace to write over it");
    } catch (IOException e) {
      throw new UserError(Exit.INTERNAL, Main.cut(name) + " cannot be written");
    }
  }

  private void move(Path beside, Path target) throws IOException {
    if (!replace) {
      Files.move(beside, target);
      return;
    }
    if (Files.exists(target)) {
      try {
        Files.setPosixFilePermissions(beside, Files.getPosixFilePermissions(target));
      } catch (IOException | UnsupportedOperationException notHere) {
        // Not every file system has such rights.
      }
    }
    try {
      Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
