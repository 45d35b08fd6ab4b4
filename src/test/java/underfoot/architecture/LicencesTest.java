package underfoot.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every library the program or its tests use has a licence that goes with the program's own. Read
 * from the project files that stand beside the libraries in the local repository.
 */
class LicencesTest {
  /** How licences that are welcome are named in project files; LGPL is of the PDF library. */
  private static final Pattern WELCOME =
      Pattern.compile(
          ".*(Apache|MIT|BSD|EPL|EDL|Eclipse Public|Eclipse Distribution|ASF|LGPL).*",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern NAME =
      Pattern.compile("<license>.*?<name>\\s*(.*?)\\s*</name>", Pattern.DOTALL);
  private static final Pattern PARENT = Pattern.compile("<parent>(.*?)</parent>", Pattern.DOTALL);

  @Test
  void every_library_has_a_licence_that_goes_with_ours() throws IOException {
    Map<String, Set<String>> licences = new TreeMap<>();
    String path =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    for (String entry : path.split(java.io.File.pathSeparator)) {
      Path jar = Path.of(entry);
      String name = jar.getFileName().toString();
      Path pom = jar.resolveSibling(name.replaceAll("\\.jar$", ".pom"));
      if (name.endsWith(".jar") && Files.exists(pom)) {
        licences.put(name, licences(pom, 0));
      }
    }
    assertThat(licences).hasSizeGreaterThan(20);
    Map<String, Set<String>> other = new TreeMap<>(licences);
    other.values().removeIf(names -> names.stream().anyMatch(n -> WELCOME.matcher(n).matches()));
    assertThat(other).as("libraries without a licence that goes with ours").isEmpty();
  }

  /** The licences a project file names; if none, those of its parent. */
  private static Set<String> licences(Path pom, int depth) throws IOException {
    String text = Files.readString(pom);
    Set<String> names = new TreeSet<>();
    Matcher name = NAME.matcher(text);
    while (name.find()) {
      names.add(name.group(1));
    }
    Matcher parent = PARENT.matcher(text);
    if (names.isEmpty() && depth < 6 && parent.find()) {
      String group = tag(parent.group(1), "groupId");
      String artifact = tag(parent.group(1), "artifactId");
      String version = tag(parent.group(1), "version");
      String beneath = "/" + group.replace('.', '/') + "/" + artifact + "/" + version + "/";
      for (Path up = pom; up != null; up = up.getParent()) {
        Path there = Path.of(up + beneath + artifact + "-" + version + ".pom");
        if (Files.exists(there)) {
          return licences(there, depth + 1);
        }
      }
    }
    return names;
  }

  private static String tag(String text, String tag) {
    Matcher found = Pattern.compile("<" + tag + ">\\s*(.*?)\\s*</" + tag + ">").matcher(text);
    return found.find() ? found.group(1) : "";
  }

  @Test
  void no_version_is_left_open() throws IOException {
    String pom = Files.readString(Path.of("pom.xml"));
    try (Stream<String> lines = pom.lines()) {
      assertThat(lines.filter(line -> line.contains("<version>")))
          .noneMatch(line -> line.matches(".*(SNAPSHOT|LATEST|RELEASE|[\\[(].*,).*"));
    }
    Matcher dependency =
        Pattern.compile("<(dependency|plugin)>(.*?)</\\1>", Pattern.DOTALL).matcher(pom);
    while (dependency.find()) {
      assertThat(dependency.group(2)).contains("<version>");
    }
    assertThat(pom).contains("<project.build.outputTimestamp>");
  }
}
