package underfoot.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;

/** Writes a file whole or not at all: beside its place first, then moved there. */
final class AtomicFile {
  private AtomicFile() {}

  /** Writes text to a file that a person named, over one that is there. */
  static void write(Path file, String content) throws UserError {
    Path target = file.toAbsolutePath();
    if (Files.isDirectory(target)) {
      throw UserError.usage(file + " is a folder; name a file");
    }
    if (target.getParent() == null || !Files.isDirectory(target.getParent())) {
      throw UserError.usage("There is no folder to write " + file + " into");
    }
    try {
      put(target, content.getBytes(StandardCharsets.UTF_8), true);
    } catch (IOException e) {
      throw UserError.usage(file + " cannot be written");
    }
  }

  /**
   * Writes a file.
   *
   * @param target where, with the folder it lies in
   * @param content what
   * @param over whether one that is there is replaced; its rights are kept
   * @throws FileAlreadyExistsException if one is there that is not to be replaced
   * @throws IOException if it cannot be written; then nothing has changed
   */
  static void put(Path target, byte[] content, boolean over) throws IOException {
    Path beside = Files.createTempFile(target.getParent(), ".underfoot-", ".part");
    try {
      Files.write(beside, content);
      rights(target, beside);
      if (over) {
        replace(beside, target);
      } else {
        // A link cannot be made where something is, so nothing is lost even to a race.
        link(beside, target);
      }
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  private static void rights(Path target, Path beside) throws IOException {
    try {
      Files.setPosixFilePermissions(
          beside,
          Files.exists(target)
              ? Files.getPosixFilePermissions(target)
              : PosixFilePermissions.fromString("rw-r--r--"));
    } catch (UnsupportedOperationException notHere) {
      // Such rights are not known here.
    }
  }

  private static void replace(Path beside, Path target) throws IOException {
    try {
      Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static void link(Path beside, Path target) throws IOException {
    try {
      Files.createLink(target, beside);
    } catch (UnsupportedOperationException e) {
      Files.move(beside, target);
    }
  }
}
