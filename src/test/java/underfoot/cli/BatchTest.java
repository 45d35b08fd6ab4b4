package underfoot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underfoot.report.JsonReport.Origin;
import underfoot.report.MadeBy;

/** A batch is a journal: each line says what it answers, and what it says is gone on with. */
class BatchTest {
  private static final String GOOD =
      "scenario: %s\npractice: uk\nroom: {use: hall, outline: [[0 m, 0 m], [2 m, 0 m], [2 m, 2 m],"
          + " [0 m, 2 m]]}\nsubfloor: {deck: concrete slab}\ntile: {material: ceramic, length: 300"
          + " mm, width: 300 mm}\n";

  @TempDir private Path folder;
  private Path floors;
  private Path out;

  @BeforeEach
  void put() throws Exception {
    floors = Files.createDirectory(folder.resolve("floors"));
    out = folder.resolve("out.jsonl");
    for (String name : List.of("b", "d")) {
      floor(name, GOOD.formatted(name));
    }
  }

  private Path floor(String name, String text) throws Exception {
    return Files.writeString(floors.resolve(name + ".yaml"), text);
  }

  private Console.Ran batch(String... more) {
    List<String> words = new ArrayList<>(List.of("batch", "--without-trials", floors.toString()));
    words.addAll(List.of("--out", out.toString()));
    words.addAll(List.of(more));
    return Console.run(words.toArray(String[]::new));
  }

  private List<JsonNode> lines() throws Exception {
    return Files.readAllLines(out).stream().map(JsonMapper.shared()::readTree).toList();
  }

  private List<String> names() throws Exception {
    return lines().stream()
        .map(line -> Path.of(line.get("file").asString()).getFileName().toString())
        .toList();
  }

  @Test
  void each_line_says_which_file_and_which_content_it_answers() throws Exception {
    assertThat(batch().exit()).isZero();
    for (JsonNode line : lines()) {
      Path file = Path.of(line.get("file").asString());
      String sha =
          java.util.HexFormat.of()
              .formatHex(
                  java.security.MessageDigest.getInstance("SHA-256")
                      .digest(Files.readAllBytes(file)));
      assertThat(line.get("sha256").asString()).isEqualTo(sha);
    }
  }

  @Test
  void what_was_added_or_changed_is_done_and_nothing_twice() throws Exception {
    batch();
    assertThat(names()).containsExactly("b.yaml", "d.yaml");
    String old = lines().get(1).get("sha256").asString();
    floor("a", GOOD.formatted("a"));
    floor("c", "scenario: [");
    floor("d", GOOD.formatted("d otherwise"));
    Files.delete(floors.resolve("b.yaml"));
    assertThat(batch("--resume").exit()).isEqualTo(3);
    assertThat(names()).containsExactly("b.yaml", "d.yaml", "a.yaml", "c.yaml", "d.yaml");
    assertThat(lines().get(4).get("supersedes").asString()).isEqualTo(old);
    assertThat(lines().get(2).has("supersedes")).isFalse();
    assertThat(batch("--resume").exit()).isZero();
    assertThat(names()).hasSize(5);
    floor("d", GOOD.formatted("d"));
    batch("--resume");
    assertThat(lines().get(5).get("sha256").asString()).isEqualTo(old);
  }

  @Test
  void lines_of_standard_input_are_known_by_what_they_say() throws Exception {
    String first = "{scenario: One}\n";
    piped(first + "{scenario: Two}\n");
    piped("\n{scenario: Three}\n" + first);
    assertThat(lines()).hasSize(3);
  }

  private void piped(String text) {
    Console.run(
        text.getBytes(StandardCharsets.UTF_8),
        Map.of(),
        false,
        "batch",
        "-",
        "--out",
        out.toString(),
        "--resume");
  }

  @Test
  void only_a_torn_last_line_is_taken_away() throws Exception {
    batch();
    String whole = Files.readString(out);
    for (int torn : new int[] {1, 5, 40, 400}) {
      int second = whole.indexOf('\n') + 1;
      Files.writeString(out, whole.substring(0, second + torn));
      assertThat(batch("--resume").exit()).isZero();
      assertThat(out).hasContent(whole.strip());
    }
    Files.writeString(out, whole.substring(0, 30));
    assertThat(batch("--resume").exit()).isZero();
    assertThat(out).hasContent(whole.strip());
  }

  @Test
  void a_file_that_is_no_batch_is_left_as_it_is() throws Exception {
    batch();
    String whole = Files.readString(out);
    for (String other :
        List.of(
            "my notes",
            "my notes\nmore",
            whole + "my notes",
            whole + "{\"a\": 1}\n",
            "{\"format\":\"underfoot.advice/1\",\"file\":\"a.yaml\"}\n")) {
      Files.writeString(out, other);
      Console.Ran ran = batch("--resume");
      assertThat(ran.exit()).as(other).isEqualTo(2);
      assertThat(ran.err()).contains("is no line of a batch", "nothing was changed");
      assertThat(Files.readString(out)).isEqualTo(other);
      assertThat(batch().exit()).isEqualTo(2);
      assertThat(Files.readString(out)).isEqualTo(other);
    }
  }

  @Test
  void two_at_once_on_one_file_are_refused() throws Exception {
    batch();
    String whole = Files.readString(out);
    try (FileChannel other = FileChannel.open(out, StandardOpenOption.WRITE);
        FileLock held = other.lock()) {
      for (String how : List.of("--resume", "--replace")) {
        Console.Ran ran = batch(how);
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("is being written by another batch");
      }
      assertThat(held.isValid()).isTrue();
    }
    assertThat(Files.readString(out)).isEqualTo(whole);
  }

  @Test
  void whatever_goes_wrong_with_one_floor_is_its_line_and_no_more() {
    Origin origin = new Origin("a.yaml", "00", "");
    for (Throwable fault :
        List.of(
            new StackOverflowError(), new OutOfMemoryError(), new IllegalStateException("odd"))) {
      Batch.Line line =
          Batch.line(
              (name, content) -> {
                throw BatchTest.<RuntimeException>unchecked(fault);
              },
              origin,
              new byte[0],
              new MadeBy("trial", "rules", ""));
      assertThat(line.advised()).isFalse();
      JsonNode told = JsonMapper.shared().readTree(line.text());
      assertThat(told.get("file").asString()).isEqualTo("a.yaml");
      assertThat(told.get("exit").asInt()).isEqualTo(1);
      assertThat(told.get("faults").get(0).asString()).startsWith("Internal error");
    }
  }

  @SuppressWarnings("unchecked")
  private static <T extends Throwable> T unchecked(Throwable fault) throws T {
    throw (T) fault;
  }
}
