package underfoot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underfoot.scenario.InputFile;

/**
 * Places to write and folders of scenarios made up at random: nothing is lost and nothing but what
 * was asked for is written. {@code -Dplaces=500 -Dseed=2} makes more.
 */
class AnywhereTest {
  private static final int PLACES = Integer.getInteger("places", 30);
  private static final long SEED = Long.getLong("seed", 1);
  private static final String FLOOR =
      "scenario: A floor\npractice: uk\nroom: {use: hall, outline: [[0 m, 0 m], [SIZE m, 0 m],"
          + " [SIZE m, 2 m], [0 m, 2 m]]}\nsubfloor: {deck: concrete slab}\ntile: {material: ceramic,"
          + " length: 300 mm, width: 300 mm}\nheating: none\n";

  @TempDir private Path folder;

  private Path floor(String name, int size) throws IOException {
    return Files.writeString(
        folder.resolve(name), FLOOR.replace("SIZE", Integer.toString(2 + size)));
  }

  /** Every file of the folder by its name, with what tells its content; what is no file by name. */
  private Map<String, String> there() throws IOException {
    Map<String, String> all = new TreeMap<>();
    try (Stream<Path> found = Files.walk(folder)) {
      for (Path one : found.toList()) {
        String content = Files.isSymbolicLink(one) ? Files.readSymbolicLink(one).toString() : "";
        boolean file = Files.isRegularFile(one, LinkOption.NOFOLLOW_LINKS);
        all.put(folder.relativize(one).toString(), file ? digest(one) : content);
      }
    }
    return all;
  }

  private static String digest(Path file) throws IOException {
    return java.util.HexFormat.of().formatHex(InputFile.digest().digest(Files.readAllBytes(file)));
  }

  @Test
  void only_the_place_that_was_named_changes_and_only_when_it_may() throws Exception {
    Random random = new Random(SEED);
    String floor = floor("floor.yaml", 1).toString();
    Files.createDirectory(folder.resolve("sub"));
    Files.createSymbolicLink(folder.resolve("to-the-floor"), Path.of("floor.yaml"));
    Files.createSymbolicLink(folder.resolve("to-a-page"), Path.of("sub/page"));
    Files.createSymbolicLink(folder.resolve("round"), Path.of("round"));
    Files.createSymbolicLink(folder.resolve("to-nowhere"), Path.of("no/such/place"));
    new ProcessBuilder("mkfifo", folder.resolve("pipe").toString()).start().waitFor();
    List<String> places =
        List.of(
            "floor.yaml",
            "new",
            "sub",
            "to-the-floor",
            "to-a-page",
            "round",
            "to-nowhere",
            "pipe",
            "sub/../floor.yaml",
            "sub/page",
            "no/such/folder/page",
            "",
            "a\u0007b",
            "old");
    String[][] commands = {
      {"advise", floor, "--html"},
      {"why", floor, "--html"},
      {"lesson", floor, "--html"},
      {"batch", "--without-trials", floor, "--out"},
    };
    int written = 0;
    for (int i = 0; i < PLACES; i++) {
      if (random.nextBoolean()) {
        Files.writeString(folder.resolve("old"), "old");
      }
      String place = places.get(random.nextInt(places.size()));
      List<String> line = new ArrayList<>(List.of(commands[random.nextInt(commands.length)]));
      line.add(place.isEmpty() ? "" : folder.resolve(place).toString());
      boolean replace = random.nextBoolean();
      if (replace) {
        line.add("--replace");
      }
      Map<String, String> before = there();
      Console.Ran ran = Console.run(line.toArray(String[]::new));
      Map<String, String> after = new HashMap<>(there());
      String what = line + ": " + ran.err();
      assertThat(ran.err()).as(what).doesNotContain("Exception", "\tat ", "\u0007");
      boolean fine = ran.exit() == Exit.FINE || ran.exit() == Exit.NOT_TO_BE_BUILT;
      String target = place.equals("to-a-page") ? "sub/page" : place;
      if (fine) {
        written++;
        assertThat(List.of("new", "sub/page", "a\u0007b", "old")).as(what).contains(target);
        assertThat(replace || !before.containsKey(target)).as(what).isTrue();
        assertThat(after.remove(target)).as(what).isNotNull();
        before.remove(target);
      } else {
        assertThat(ran.exit()).as(what).isEqualTo(2);
      }
      assertThat(after).as(what).isEqualTo(before);
    }
    assertThat(written).isPositive();
  }

  @Test
  void a_batch_that_goes_on_answers_what_is_there_whatever_became_of_the_folder() throws Exception {
    Random random = new Random(SEED);
    Path many = Files.createDirectory(folder.resolve("many"));
    Path out = folder.resolve("answers.jsonl");
    for (int round = 0; round < Math.max(4, PLACES / 6); round++) {
      for (int k = 0; k < 4; k++) {
        Path one = many.resolve("floor-" + random.nextInt(6) + ".yaml");
        if (random.nextInt(4) == 0) {
          Files.deleteIfExists(one);
        } else {
          floor("many/" + one.getFileName(), random.nextInt(3));
        }
      }
      if (Files.exists(out) && random.nextInt(3) == 0) { // stopped in the middle of a line
        byte[] whole = Files.readAllBytes(out);
        Files.write(out, java.util.Arrays.copyOf(whole, whole.length - random.nextInt(40)));
      }
      Console.Ran ran =
          Console.run(
              "batch", "--without-trials", many.toString(), "--out", out.toString(), "--resume");
      assertThat(ran.exit()).as(ran.err()).isZero();
      Map<String, String> last = new HashMap<>();
      for (String line : Files.readAllLines(out)) {
        JsonNode answer = JsonMapper.shared().readTree(line);
        last.put(answer.get("file").asString(), answer.get("sha256").asString());
      }
      try (Stream<Path> now = Files.list(many)) {
        for (Path one : now.toList()) {
          assertThat(last).containsEntry(one.toString(), digest(one));
        }
      }
    }
  }
}
