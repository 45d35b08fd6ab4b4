package underfoot.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.lang.module.ModuleDescriptor.Version;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * What {@code libraries.yaml} says of the libraries in the jar is so, and each library's licences
 * and notices go into the jar with it. No test goes by the calendar: what has become newer since is
 * told by {@code mvn -Pnewer versions:display-dependency-updates}.
 */
class LibrariesTest {
  private static final Pattern NOTICE =
      Pattern.compile(
          "META-INF/[^/]*LICENSE[^/]*|META-INF/NOTICE[^/]*|about\\.html" + "|license/.*[^/]");
  private static final Path GATHERED = Path.of("target/classes/licences");
  private static final JsonNode DATA =
      new YAMLMapper().readTree(Path.of("src/test/resources/libraries.yaml").toFile());

  /** A library as it lies in the local repository: group/as/folders/name/version/file. */
  record Library(Path jar) {
    String version() {
      return jar.getParent().getFileName().toString();
    }

    String name() {
      return jar.getParent().getParent().getFileName().toString();
    }

    /** Whether it is the library, or one of the family, that a line of the data names. */
    boolean is(String pattern) {
      String[] parts = pattern.split(":");
      String folder = parts[0].replace(".*", "/*").replace('.', '/') + "/" + parts[1];
      String regex = ".*/" + folder.replace(".", "\\.").replace("*", "[^/]*");
      return jar.getParent().getParent().toString().replace('\\', '/').matches(regex);
    }
  }

  static List<Library> shipped() {
    String path =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    List<Library> libraries =
        new ArrayList<>(
            Arrays.stream(path.split(java.io.File.pathSeparator))
                .filter(entry -> entry.endsWith(".jar") && entry.contains("repository"))
                .map(entry -> new Library(Path.of(entry)))
                .toList());
    libraries.removeIf(
        library -> DATA.get("tests-only").valueStream().anyMatch(p -> library.is(p.asString())));
    assertThat(libraries).hasSizeGreaterThan(20);
    return libraries;
  }

  @Test
  void every_library_in_the_jar_is_written_down_once_with_its_version() {
    Map<String, List<String>> wrong = new TreeMap<>();
    Set<String> used = new TreeSet<>();
    for (Library library : shipped()) {
      List<String> versions = new ArrayList<>();
      for (JsonNode line : DATA.get("libraries")) {
        if (library.is(line.get("library").asString())) {
          versions.add(line.get("version").asString());
          used.add(line.get("library").asString());
        }
      }
      if (!versions.equals(List.of(library.version()))) {
        wrong.put(library.jar().getFileName().toString(), versions);
      }
    }
    assertThat(wrong).as("libraries, and the versions written down for them").isEmpty();
    assertThat(DATA.get("libraries").valueStream().map(line -> line.get("library").asString()))
        .as("libraries written down")
        .containsExactlyInAnyOrderElementsOf(used);
  }

  @Test
  void what_is_behind_says_why_and_no_fault_written_down_is_left_unmended() {
    for (JsonNode line : DATA.get("libraries")) {
      String name = line.get("library").asString();
      Version version = Version.parse(line.get("version").asString());
      int behind = version.compareTo(Version.parse(line.get("newest").asString()));
      assertThat(behind).as(name + " against the newest").isLessThanOrEqualTo(0);
      assertThat(line.has("why")).as(name + " says why it is behind").isEqualTo(behind < 0);
      assertThat(line.get("terms").asString()).as(name).isNotBlank();
      for (JsonNode fault : line.path("faults")) {
        assertThat(version)
            .as(name + ": " + fault.get("source").asString())
            .isGreaterThanOrEqualTo(Version.parse(fault.get("mended-in").asString()));
      }
    }
  }

  @Test
  void every_licence_and_notice_of_a_library_goes_into_the_jar_as_it_is() throws IOException {
    Set<String> without = new TreeSet<>();
    for (Library library : shipped()) {
      String base = library.name() + "-" + library.version();
      boolean has = Files.exists(GATHERED.resolve(library.name() + ".txt"));
      try (ZipFile jar = new ZipFile(library.jar().toFile())) {
        for (ZipEntry entry : jar.stream().filter(LibrariesTest::notice).toList()) {
          Path gathered = GATHERED.resolve(base + "-jar").resolve(entry.getName());
          try (InputStream in = jar.getInputStream(entry)) {
            assertThat(gathered).hasBinaryContent(in.readAllBytes());
          }
          has = true;
        }
      }
      if (!has) {
        without.add(base);
      }
    }
    assertThat(without).as("libraries whose licence is not in the jar").isEmpty();
  }

  @Test
  void the_readme_names_the_terms_of_every_part() throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    String licence =
        readme
            .substring(readme.indexOf("## Licence"))
            .replaceAll("\\s+", " ")
            .replace("Apache License", "Apache")
            .replace('-', ' ');
    for (JsonNode line : DATA.get("libraries")) {
      for (String terms : line.get("terms").asString().split(" (or|and) ")) {
        assertThat(licence).as(line.toString()).contains(terms.replace('-', ' '));
      }
    }
  }

  @Test
  void no_licence_is_kept_of_a_library_that_is_gone() throws IOException {
    Set<String> names = new TreeSet<>();
    shipped().forEach(library -> names.add(library.name() + ".txt"));
    try (Stream<Path> kept = Files.list(Path.of("src/main/resources/licences"))) {
      assertThat(kept.map(file -> file.getFileName().toString())).isSubsetOf(names);
    }
  }

  static boolean notice(ZipEntry entry) {
    return !entry.isDirectory() && NOTICE.matcher(entry.getName()).matches();
  }
}
