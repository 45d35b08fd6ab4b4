package underfoot.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** What is kept of the rules' YAML files when the program is built is what stands in them. */
class KeptTreesTest {
  private static final RuleFiles FILES = RuleFiles.shipped();
  private static final String ROOM = "facts/room.yaml";

  @Test
  void every_file_is_kept_as_it_is_read_with_its_lines_and_columns() throws Exception {
    KeptTrees kept = KeptTrees.of(KeptTrees.written(FILES));
    int files = 0;
    for (String path : FILES.all()) {
      if (path.endsWith(".yaml")) {
        byte[] content = FILES.read(path);
        assertThat(kept.find(path, content))
            .contains(YamlTree.read(path, content, Integer.MAX_VALUE));
        files++;
      }
    }
    assertThat(files).isGreaterThan(100);
  }

  @Test
  void a_file_that_was_changed_since_is_read_anew() throws Exception {
    KeptTrees kept = KeptTrees.of(KeptTrees.written(FILES));
    byte[] content = FILES.read(ROOM);
    byte[] changed = content.clone();
    changed[changed.length / 2] ^= 1;
    assertThat(kept.find(ROOM, content)).isPresent();
    assertThat(kept.find(ROOM, changed)).isEmpty();
    assertThat(kept.find(ROOM, "a: b".getBytes(StandardCharsets.UTF_8))).isEmpty();
    assertThat(kept.find("facts/none.yaml", content)).isEmpty();
  }

  @Test
  void the_program_is_built_with_a_tree_of_every_file() {
    KeptTrees shipped = KeptTrees.shipped();
    assertThat(FILES.all())
        .filteredOn(path -> path.endsWith(".yaml"))
        .allMatch(path -> shipped.find(path, FILES.read(path)).isPresent());
  }
}
