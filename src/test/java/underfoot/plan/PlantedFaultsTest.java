package underfoot.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import underfoot.reasoning.Floors;
import underfoot.scenario.Scenario;

/** In every example proposal the planted fault is found, and nothing else is accused. */
class PlantedFaultsTest {
  private static final Map<String, Set<String>> PLANTED =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry("a-rigid-board-as-recommended", Set.of()),
              Map.entry("plywood-and-a-membrane-where-a-rigid-board-is-recommended", Set.of()),
              Map.entry("a-board-fixed-with-the-wrong-screw", Set.of("layer 3: CHECK-61")),
              Map.entry("a-foam-board-on-square-edged-boards", Set.of("layer 3: CHECK-56")),
              Map.entry("a-leveller-without-fibres-on-timber", Set.of("layer 5: CHECK-51")),
              Map.entry("pva-for-a-primer", Set.of("layer 1: CHECK-50")),
              Map.entry(
                  "a-wet-room-without-tanking", Set.of("Waterproof cement coating: CHECK-12")),
              Map.entry("board-joints-over-deck-joints", Set.of("layer 3: CHECK-63")),
              Map.entry("no-layer-between-plywood-and-tiles", Set.of("layer 4: CHECK-53")),
              Map.entry("adhesive-used-to-level", Set.of("layer 4: CHECK-54")),
              Map.entry("no-gap-at-the-walls", Set.of("whole: CHECK-70")),
              Map.entry("compound-poured-at-32-degrees", Set.of("whole: CHECK-64")),
              Map.entry(
                  "a-board-that-is-only-screwed", Set.of("Adhesive bed under the board: CHECK-11")),
              Map.entry(
                  "cement-on-bare-calcium-sulfate",
                  Set.of("Sealer on the calcium sulfate: CHECK-12", "layer 1: CHECK-04")),
              Map.entry(
                  "tiles-before-the-seal-is-dry-and-seal-under-the-compound",
                  Set.of(
                      "layer 4: CHECK-05",
                      "layer 4: CHECK-72",
                      "layer 5: NEXT-02",
                      "layer 6: NEXT-20",
                      "layer 6: PASS-70",
                      "lay the tiles: CHECK-08"))));

  private static Opinion judge(Path file) throws Exception {
    Scenario proposal = Proposals.read(file);
    Path floor = Path.of("scenarios", proposal.find("for").orElseThrow().text() + ".yaml");
    return Proposals.judge(
        Floors.reader().read(floor.toString(), Files.readAllBytes(floor)), proposal);
  }

  @TestFactory
  Stream<DynamicTest> the_planted_fault_is_found_and_no_sound_layer_is_accused() throws Exception {
    return Proposals.examples().stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    name(file).replace('-', ' '),
                    () ->
                        assertThat(Proposals.faults(judge(file)))
                            .isEqualTo(PLANTED.get(name(file)))));
  }

  @Test
  void every_example_proposal_says_what_is_planted_in_it() throws Exception {
    List<String> names = Proposals.examples().stream().map(PlantedFaultsTest::name).toList();
    assertThat(names).containsExactlyElementsOf(PLANTED.keySet());
  }

  @TestFactory
  Stream<DynamicTest> each_fault_says_what_goes_wrong_and_what_to_do_and_names_its_rule()
      throws Exception {
    return Proposals.examples().stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    name(file).replace('-', ' '),
                    () -> {
                      Opinion opinion = judge(file);
                      Stream.concat(
                              opinion.whole().stream(),
                              opinion.layers().stream().flatMap(one -> one.items().stream()))
                          .forEach(
                              item -> {
                                assertThat(item.because()).as(item.text()).isNotEmpty();
                                assertThat(item.text()).isNotBlank().doesNotContain("unknown");
                                if (item.judgement().isFault()) {
                                  assertThat(item.consequence()).isNotBlank();
                                  assertThat(item.remedy()).isNotBlank();
                                }
                                assertThat(item.text() + item.consequence() + item.remedy())
                                    .doesNotContain("[", "{", " safe");
                              });
                    }));
  }

  private static String name(Path file) {
    return file.getFileName().toString().replace(".yaml", "");
  }
}
