package underfoot.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import underfoot.scenario.InputFile;

/**
 * What a command reads: each file once. What is read is known, so that nothing is written over it.
 */
final class Inputs {
  /**
   * Largest input that is read before it is refused, in bytes; whoever makes something of it
   * refuses less, by the limits of the rules. It stands here because what is read may be asked for
   * before the rules are, and so that rules from outside cannot have anything of any size read.
   */
  private static final int MOST_READ = 4_000_000;

  private final InputStream standard;
  private final Set<Path> files = new LinkedHashSet<>();

  Inputs(InputStream standard) {
    this.standard = standard;
  }

  /** The bytes of a file, or of standard input if the name is {@code -}. */
  byte[] read(String name) throws UserError {
    try {
      if (name.equals("-")) {
        return standard.readNBytes(MOST_READ);
      }
      Path path = Path.of(name);
      if (Files.isDirectory(path)) {
        throw UserError.usage(name + " is a folder; give a file");
      }
      byte[] content = InputFile.read(path, MOST_READ);
      add(path);
      return content;
    } catch (NoSuchFileException | InvalidPathException e) {
      throw UserError.usage("There is no file " + name);
    } catch (AccessDeniedException e) {
      throw UserError.usage(name + " may not be read; look at who owns it");
    } catch (FileSystemException e) {
      String why = e.getReason() == null ? "cannot be read" : e.getReason();
      boolean pipe = why.startsWith("is no");
      throw UserError.usage(
          name + " " + why + (pipe ? "; what comes down a pipe is read as -" : ""));
    } catch (IOException e) {
      throw UserError.usage(name + " cannot be read");
    }
  }

  /**
   * The bytes of a file that a scenario names: it lies beside the scenario or below it.
   *
   * @param scenario the file that names it, or what stands for one, which is read where one works
   * @param name the name as the scenario has it
   * @return empty if it lies elsewhere or there is no such file
   */
  Optional<byte[]> beside(String scenario, String name) {
    try {
      Path folder = Path.of(scenario).toAbsolutePath().getParent().toRealPath();
      Path file = folder.resolve(name);
      boolean inside = file.normalize().equals(file) && file.toRealPath().startsWith(folder);
      if (Path.of(name).isAbsolute() || name.contains("..") || !inside) {
        return Optional.empty();
      }
      byte[] content = InputFile.read(file, MOST_READ);
      add(file);
      return Optional.of(content);
    } catch (IOException | InvalidPathException e) {
      return Optional.empty();
    }
  }

  /** Takes note of a file or folder that is read. */
  synchronized void add(Path file) {
    files.add(file);
  }

  /** Whether a file is read, by whatever name, or lies in a folder that is. */
  synchronized boolean have(Path file) throws IOException {
    if (!Files.exists(file)) {
      return false;
    }
    Path real = file.toRealPath();
    for (Path one : files) {
      if (Files.exists(one) && (Files.isSameFile(one, file) || real.startsWith(one.toRealPath()))) {
        return true;
      }
    }
    return false;
  }
}
