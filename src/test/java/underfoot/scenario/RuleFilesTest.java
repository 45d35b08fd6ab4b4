package underfoot.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The files of the rule base")
class RuleFilesTest {
  private static final List<String> FACTS = inTheSource();

  @TempDir Path folder;

  private static List<String> inTheSource() {
    try (Stream<Path> files = Files.list(Path.of("rules/facts"))) {
      return files.map(file -> "facts/" + file.getFileName()).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  @DisplayName("are listed and read from the class path")
  void class_path() {
    RuleFiles files = RuleFiles.shipped();
    assertThat(files.list("facts", ".yaml")).containsExactlyElementsOf(FACTS);
    assertThat(files.list("facts", ".txt")).isEmpty();
    assertThat(files.list("nowhere", ".yaml")).isEmpty();
    assertThat(files.read("facts/room.yaml")).isNotEmpty();
    assertThatThrownBy(() -> files.read("facts/none.yaml"))
        .isInstanceOf(UncheckedIOException.class);
  }

  @Test
  @DisplayName("are listed and read from a folder")
  void a_folder() {
    RuleFiles files = RuleFiles.of(Path.of("rules"));
    assertThat(files.list("facts", ".yaml")).containsExactlyElementsOf(FACTS);
    assertThat(files.list("nowhere", ".yaml")).isEmpty();
    assertThat(files.read("facts/room.yaml"))
        .isEqualTo(RuleFiles.shipped().read("facts/room.yaml"));
    assertThatThrownBy(() -> files.read("facts/none.yaml"))
        .isInstanceOf(UncheckedIOException.class);
  }

  @Test
  @DisplayName("are listed from a jar whose path has a space in it, with and without an index")
  void a_jar() throws Exception {
    for (boolean index : new boolean[] {false, true}) {
      Path jar = folder.resolve("a jar " + index + ".jar");
      try (OutputStream out = Files.newOutputStream(jar);
          JarOutputStream zip = new JarOutputStream(out)) {
        Path classes = Path.of("target/classes");
        for (String sub : List.of("underfoot/scenario", "rules/facts")) {
          try (Stream<Path> paths = Files.walk(classes.resolve(sub))) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
              zip.putNextEntry(new JarEntry(classes.relativize(path).toString()));
              zip.write(Files.readAllBytes(path));
            }
          }
        }
        if (index) {
          zip.putNextEntry(new JarEntry("rules/index.txt"));
          zip.write("facts/one.yaml\nfacts/two.yaml\n".getBytes());
        }
      }
      try (URLClassLoader loader =
          new URLClassLoader(
              new URL[] {jar.toUri().toURL()}, ClassLoader.getPlatformClassLoader())) {
        Class<?> type = Class.forName("underfoot.scenario.RuleFiles", true, loader);
        Object files = type.getMethod("shipped").invoke(null);
        Object names =
            type.getMethod("list", String.class, String.class).invoke(files, "facts", ".yaml");
        assertThat(names).isEqualTo(index ? List.of("facts/one.yaml", "facts/two.yaml") : FACTS);
      }
    }
  }
}
