package underfoot.cli;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Hands a command over to a Java that starts quickly. A jar cannot say how Java is to run it: with
 * one compiler, one collector, room enough that it seldom collects, and the classes as they were
 * archived when the program was built, which halves the time of an advice. The launcher says so;
 * when the jar is run without it, and the archive lies beside it, the command is handed over once.
 * Without the archive, or if anything is in the way, the command runs where it is.
 */
final class FastRelaunch {
  private static final String HANDED_OVER = "underfoot.handed.over";
  private static final List<String> OPTIONS =
      List.of(
          "-XX:+IgnoreUnrecognizedVMOptions",
          "-XX:TieredStopAtLevel=1",
          "-XX:+UseSerialGC",
          "-Xms320m",
          "-XX:NewSize=200m",
          "-XX:-UsePerfData",
          "-XX:+UnlockDiagnosticVMOptions",
          "-XX:ArchiveRelocationMode=0",
          "-Xshare:auto",
          "-Xlog:disable",
          "-Xlog:all=off");

  private FastRelaunch() {}

  /** Runs the command elsewhere and gives its exit code; empty if it is to run here. */
  static OptionalInt of(String[] arguments) {
    if (System.getProperty(HANDED_OVER) != null) {
      return OptionalInt.empty();
    }
    try {
      CodeSource source = FastRelaunch.class.getProtectionDomain().getCodeSource();
      Path jar = source == null ? null : Path.of(source.getLocation().toURI());
      if (jar == null || !Files.isRegularFile(jar)) {
        return OptionalInt.empty();
      }
      String name = jar.getFileName().toString();
      Path archive = jar.resolveSibling(name.replaceAll("\\.jar$", "") + ".jsa");
      if (!Files.isRegularFile(archive)) {
        return OptionalInt.empty();
      }
      List<String> command = new ArrayList<>();
      command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
      command.addAll(OPTIONS);
      command.add("-XX:SharedArchiveFile=" + archive);
      command.add("-D" + HANDED_OVER + "=true");
      command.add("-jar");
      command.add(jar.toString());
      command.addAll(List.of(arguments));
      Process process = new ProcessBuilder(command).inheritIO().start();
      Runtime.getRuntime().addShutdownHook(new Thread(process::destroy));
      return OptionalInt.of(process.waitFor());
    } catch (IOException | URISyntaxException | InvalidPathException notPossible) {
      return OptionalInt.empty();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return OptionalInt.of(Exit.INTERNAL);
    }
  }
}
