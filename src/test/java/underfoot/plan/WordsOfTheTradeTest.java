package underfoot.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underfoot.knowledge.LayerKind;
import underfoot.reasoning.Floors;
import underfoot.scenario.FactDefinition;

/** What people call layers is understood, and everything the rules lay can be proposed. */
class WordsOfTheTradeTest {
  @ParameterizedTest
  @CsvSource({
    "backer board, cement board",
    "Backerboard, cement board",
    "SLC, levelling compound",
    "self-leveller, levelling compound",
    "self levelling compound, levelling compound",
    "fibre leveller, fibre levelling compound",
    "ply, plywood",
    "thinset, tile adhesive",
    "tanking, waterproof coating",
    "uncoupling membrane, decoupling membrane",
    "DPM, surface damp-proof membrane",
    "plasterboard, gypsum board",
    "drywall, gypsum board",
    "XPS board, foam-core tile board",
    "ready-mixed adhesive, ready-mixed paste adhesive"
  })
  void a_word_of_the_trade_is_understood(String word, String kind) throws Exception {
    assertThat(
            Proposals.read("p", "proposal: p\nlayers: [{kind: \"" + word + "\"}]\n")
                .find("layers[].kind", "layer 1")
                .orElseThrow()
                .text())
        .isEqualTo(kind);
  }

  @Test
  void every_kind_that_may_be_written_is_a_layer_and_every_layer_can_be_proposed() {
    List<String> choices =
        Proposals.book().definitions().stream()
            .filter(fact -> fact.key().equals("layers[].kind"))
            .map(FactDefinition::of)
            .findFirst()
            .orElseThrow();
    assertThat(Proposals.kinds().names()).containsExactlyInAnyOrderElementsOf(choices);
    Set<String> proposable = new LinkedHashSet<>();
    choices.forEach(kind -> proposable.addAll(Proposals.kinds().get(kind).is()));
    List<String> layers = new ArrayList<>();
    for (LayerKind kind : Floors.advisor().knowledge().layers().all()) {
      layers.add(kind.id());
    }
    assertThat(proposable).containsExactlyInAnyOrderElementsOf(layers);
  }

  @Test
  void every_class_and_every_piece_of_work_that_may_be_written_is_known() {
    for (FactDefinition fact : Proposals.book().definitions()) {
      if (fact.key().equals("layers[].class")) {
        Set<String> graded = new LinkedHashSet<>();
        Floors.advisor().knowledge().scales().values().forEach(graded::addAll);
        assertThat(graded).containsAll(fact.of());
      }
      if (fact.key().equals("order of work")) {
        assertThat(Proposals.kinds().work().keySet())
            .containsExactlyInAnyOrderElementsOf(fact.of());
      }
      assertThat(fact.of()).as(fact.key()).containsAll(fact.also().values());
    }
  }
}
