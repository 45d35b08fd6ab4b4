package underfoot.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** Files written whole or not at all, and over another only if told to. */
final class SavedFile {
  private SavedFile() {}

  /** Whether something of that name is there. */
  static boolean exists(String name) {
    try {
      return Files.exists(Path.of(name), LinkOption.NOFOLLOW_LINKS);
    } catch (InvalidPathException e) {
      return false;
    }
  }

  /**
   * Writes a file.
   *
   * @param name where
   * @param text what
   * @param over whether one that is there may be replaced
   * @throws Complaint if it cannot be written, or one is there that may not be replaced; then
   *     nothing has changed
   */
  static void write(String name, String text, boolean over) throws UserError {
    try {
      Path target = Path.of(name).toAbsolutePath();
      if (Files.isDirectory(target)) {
        throw UserError.usage(name + " is a folder; give a file");
      }
      Path folder = target.getParent();
      if (folder == null || !Files.isDirectory(folder)) {
        throw UserError.usage("There is no folder " + folder + " to write " + name + " in");
      }
      AtomicFile.put(target, text.getBytes(StandardCharsets.UTF_8), over);
    } catch (FileAlreadyExistsException e) {
      throw UserError.usage(name + " is there already, so it was left as it is");
    } catch (InvalidPathException | IOException e) {
      throw UserError.usage(name + " cannot be written, so nothing was");
    }
  }
}
