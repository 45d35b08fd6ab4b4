package underfoot.scenario;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/**
 * The one way files come in: only regular ones, whole, and none that is too large; and how one
 * content is told from another.
 */
public final class InputFile {
  private InputFile() {}

  /**
   * Reads a file.
   *
   * @param file the file; a link to one will do
   * @param most the largest it may be, in bytes
   * @return its content
   * @throws NoSuchFileException if there is none
   * @throws FileSystemException if it is a folder, a pipe or a device, or too large; {@code
   *     getReason()} says which
   * @throws IOException if it cannot be read
   */
  public static byte[] read(Path file, int most) throws IOException {
    if (!Files.exists(file)) {
      throw new NoSuchFileException(file.toString());
    }
    if (!Files.isRegularFile(file)) {
      throw new FileSystemException(file.toString(), null, "is no regular file");
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] content = in.readNBytes(most + 1);
      if (content.length > most) {
        throw new FileSystemException(
            file.toString(), null, "is larger than " + most / 1_000_000 + " MB");
      }
      return content;
    }
  }

  /** What tells one content from another in short, SHA-256. */
  public static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
