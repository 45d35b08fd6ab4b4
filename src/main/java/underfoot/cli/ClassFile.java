package underfoot.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import underfoot.lesson.ClassBook;
import underfoot.scenario.InputFile;

/**
 * The file of a class: it is read whole, and lines are only added to it, each whole or not at all.
 */
final class ClassFile {
  private final Path path;
  private ClassBook book;

  private ClassFile(Path path, ClassBook book) {
    this.path = path;
    this.book = book;
  }

  /**
   * Opens a class.
   *
   * @throws UserError if there is none, or the file is something else
   */
  static ClassFile open(CommandContext context, String name) throws UserError {
    try {
      Path path = Path.of(name);
      if (Files.isDirectory(path)) {
        path = path.resolve(CourseFiles.CLASS);
      }
      if (!Files.isRegularFile(path)) {
        throw UserError.usage(
            "There is no class " + Main.cut(name) + "; 'lesson --course' makes one");
      }
      int most = (int) context.facts().limit("largest-class");
      String lines = new String(InputFile.read(path, most), StandardCharsets.UTF_8);
      context.inputs().add(path);
      return new ClassFile(path, ClassBook.read(lines));
    } catch (FileSystemException e) {
      throw UserError.usage(
          Main.cut(name) + " " + (e.getReason() == null ? "cannot be read" : e.getReason()));
    } catch (ClassBook.NotAClass e) {
      throw new UserError(
          Exit.SCENARIO_INVALID,
          Main.cut(name) + ":" + e.line() + " is no line of a class, so nothing was changed");
    } catch (IOException | InvalidPathException e) {
      throw UserError.usage(Main.cut(name) + " cannot be read as a class");
    }
  }

  ClassBook book() {
    return book;
  }

  /** Takes answers in. */
  void take(List<ClassBook.Reply> replies) throws UserError {
    add(replies.stream().map(CourseFiles::json).toList());
    book = book.with(replies);
  }

  /** Adds lines and waits until they are on the disk; what a crash left of a line is cut off. */
  void add(List<String> lines) throws UserError {
    try (FileChannel file =
            FileChannel.open(path, StandardOpenOption.READ, StandardOpenOption.WRITE);
        FileLock held = file.tryLock()) {
      if (held == null) {
        throw UserError.usage("The class is being written by another program; try again");
      }
      long end = end(file);
      file.truncate(end);
      file.position(end);
      StringBuilder text = new StringBuilder();
      lines.forEach(line -> text.append(line).append('\n'));
      ByteBuffer bytes = ByteBuffer.wrap(text.toString().getBytes(StandardCharsets.UTF_8));
      while (bytes.hasRemaining()) {
        file.write(bytes);
      }
      file.force(true);
    } catch (IOException | java.nio.channels.OverlappingFileLockException e) {
      throw new UserError(Exit.INTERNAL, "The class cannot be written, so nothing was taken in");
    }
  }

  private static long end(FileChannel file) throws IOException {
    ByteBuffer one = ByteBuffer.allocate(1);
    for (long at = file.size(); at > 0; at--) {
      one.clear();
      file.read(one, at - 1);
      if (one.get(0) == '\n') {
        return at;
      }
    }
    return 0;
  }
}
