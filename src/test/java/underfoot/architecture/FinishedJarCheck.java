package underfoot.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;

/**
 * What is in the jar as it is given away. Run by {@code mvn verify} once the jar is made: no test
 * of the classes can tell what became of them on the way.
 */
class FinishedJarCheck {
  private static final Path JAR = Path.of("target/underfoot.jar");

  private static byte[] content(ZipFile jar, String name) throws IOException {
    ZipEntry entry = jar.getEntry(name);
    assertThat(entry).as(name).isNotNull();
    try (InputStream in = jar.getInputStream(entry)) {
      return in.readAllBytes();
    }
  }

  @Test
  void every_licence_and_notice_of_every_library_is_in_the_jar_as_it_came() throws IOException {
    int compared = 0;
    Set<String> without = new TreeSet<>();
    try (ZipFile ours = new ZipFile(JAR.toFile())) {
      assertThat(content(ours, "META-INF/LICENSE"))
          .isEqualTo(Files.readAllBytes(Path.of("LICENSE")));
      for (LibrariesTest.Library library : LibrariesTest.shipped()) {
        String base = library.name() + "-" + library.version();
        Path kept = Path.of("src/main/resources/licences", library.name() + ".txt");
        boolean has = Files.exists(kept);
        if (has) {
          String name = "licences/" + library.name() + ".txt";
          assertThat(content(ours, name)).as(name).isEqualTo(Files.readAllBytes(kept));
        }
        try (ZipFile theirs = new ZipFile(library.jar().toFile())) {
          List<? extends ZipEntry> notices = theirs.stream().filter(LibrariesTest::notice).toList();
          for (ZipEntry notice : notices) {
            String name = "licences/" + base + "-jar/" + notice.getName();
            assertThat(content(ours, name)).as(name).isEqualTo(content(theirs, notice.getName()));
            compared++;
          }
          has |= !notices.isEmpty();
        }
        if (!has) {
          without.add(base);
        }
      }
    }
    assertThat(without).as("libraries whose licence is not in the jar").isEmpty();
    assertThat(compared).isGreaterThan(20);
  }

  @Test
  void no_parser_of_rule_text_and_no_compiler_is_in_the_jar() throws IOException {
    try (ZipFile ours = new ZipFile(JAR.toFile())) {
      assertThat(ours.stream().map(ZipEntry::getName))
          .noneMatch(
              name ->
                  name.startsWith("org/drools/drl/parser/")
                      || name.startsWith("org/drools/mvelcompiler/")
                      || name.startsWith("org/eclipse/jdt/")
                      || name.startsWith("org/antlr/")
                      || name.startsWith("com/github/javaparser/")
                      || name.startsWith("org/mvel2/"));
    }
  }
}
