package underfoot.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file whole or not at all: beside it first, then moved into its place. */
final class WholeFile {
  private WholeFile() {}

  static void write(Path file, String content) throws Complaint {
    Path target = file.toAbsolutePath();
    if (Files.isDirectory(target)) {
      throw Complaint.usage(file + " is a folder; name a file");
    }
    if (target.getParent() == null || !Files.isDirectory(target.getParent())) {
      throw Complaint.usage("There is no folder to write " + file + " into");
    }
    Path beside = null;
    try {
      beside = Files.createTempFile(target.getParent(), ".underfoot", ".part");
      Files.write(beside, content.getBytes(StandardCharsets.UTF_8));
      beside.toFile().setReadable(true, false);
      try {
        Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
      }
    } catch (IOException e) {
      remove(beside);
      throw Complaint.usage(file + " cannot be written");
    }
  }

  private static void remove(Path part) {
    try {
      if (part != null) {
        Files.deleteIfExists(part);
      }
    } catch (IOException e) {
      part.toFile().deleteOnExit();
    }
  }
}
