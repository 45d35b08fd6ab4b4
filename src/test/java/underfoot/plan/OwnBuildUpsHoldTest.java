package underfoot.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import underfoot.buildup.Judgement;
import underfoot.plan.ProposalDraft.Line;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.Floors;
import underfoot.scenario.Scenario;

/**
 * What the rules themselves lay is put to them as somebody's proposal. What stands must hold, what
 * is ruled out must not, and whatever single thing is spoilt must be found.
 */
class OwnBuildUpsHoldTest {
  private static final long SEED = 20261125L;
  private static final int SPOILT_EACH = Integer.getInteger("spoilt", 4);

  /** A build-up of an example floor. */
  private record Case(Path file, Scenario floor, BuildUp buildUp) {
    String name() {
      return file.getFileName().toString().replace(".yaml", "") + ", " + buildUp.way();
    }
  }

  private static List<Case> cases() throws Exception {
    List<Case> cases = new ArrayList<>();
    for (Path file : Floors.examples()) {
      Scenario floor = Floors.reader().read(file.toString(), Files.readAllBytes(file));
      Assessment assessment = Floors.advisor().advise(floor);
      assessment.buildUps().forEach(one -> cases.add(new Case(file, floor, one)));
    }
    return cases;
  }

  private static ProposalDraft draft(Case one) {
    return Proposals.of(Floors.advisor().knowledge(), one.buildUp());
  }

  private static Opinion judge(Case one, ProposalDraft draft) throws Exception {
    return Proposals.judge(one.floor(), Proposals.read("proposal", draft.yaml()));
  }

  private static boolean stopped(Case one) {
    return Floors.advisor().advise(one.floor()).chosen().isEmpty();
  }

  @TestFactory
  Stream<DynamicTest> a_build_up_that_stands_holds_as_a_proposal_with_nothing_left_open()
      throws Exception {
    return cases().stream()
        .filter(one -> one.buildUp().stands() && !stopped(one))
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.name(),
                    () -> {
                      ProposalDraft draft = draft(one);
                      Opinion opinion = judge(one, draft);
                      assertThat(Proposals.faults(opinion)).as(draft.yaml()).isEmpty();
                      assertThat(opinion.way()).isEqualTo(one.buildUp().way());
                      assertThat(opinion.layers())
                          .allMatch(layer -> layer.judgement() == Judgement.AGREES);
                      assertThat(opinion.whole()).isEmpty();
                    }));
  }

  @TestFactory
  Stream<DynamicTest> it_holds_with_only_the_kinds_of_its_layers_said_too() throws Exception {
    return cases().stream()
        .filter(one -> one.buildUp().stands() && !stopped(one))
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.name(),
                    () -> {
                      ProposalDraft draft = draft(one);
                      draft.whole().clear();
                      draft
                          .layers()
                          .forEach(line -> line.keys().keySet().retainAll(Set.of("kind")));
                      assertThat(Proposals.faults(judge(one, draft))).as(draft.yaml()).isEmpty();
                    }));
  }

  @TestFactory
  Stream<DynamicTest> a_build_up_that_is_ruled_out_does_not_hold_as_a_proposal() throws Exception {
    return cases().stream()
        .filter(one -> !one.buildUp().stands() || stopped(one))
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.name(),
                    () ->
                        assertThat(Proposals.faults(judge(one, draft(one))))
                            .anyMatch(fault -> fault.matches(".*CHECK-(06|07|56)"))));
  }

  @TestFactory
  Stream<DynamicTest> whatever_is_spoilt_in_it_is_found() throws Exception {
    Random random = new Random(SEED);
    return cases().stream()
        .filter(one -> one.buildUp().stands() && !stopped(one))
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.name() + ", seed " + SEED,
                    () -> {
                      for (int i = 0; i < SPOILT_EACH; i++) {
                        ProposalDraft draft = draft(one).copy();
                        String how = spoil(draft, random);
                        Opinion opinion = judge(one, draft);
                        // What is left may be another way of building, and sound as that.
                        if (opinion.way().equals(one.buildUp().way())) {
                          assertThat(Proposals.faultsOrAdvised(opinion))
                              .as(how + " in\n" + draft.yaml())
                              .isNotEmpty();
                        }
                      }
                    }));
  }

  /** Whether a layer of the same name lies next to it: then one does the work of both. */
  private static boolean beside(ProposalDraft draft, int at) {
    String kind = draft.layers().get(at).keys().get("kind");
    List<Line> all = draft.layers();
    return (at > 0 && all.get(at - 1).keys().get("kind").equals(kind))
        || (at + 1 < all.size() && all.get(at + 1).keys().get("kind").equals(kind));
  }

  /** Spoils one thing and says what. */
  private static String spoil(ProposalDraft draft, Random random) {
    while (true) {
      int at = random.nextInt(draft.layers().size());
      Line line = draft.layers().get(at);
      Map<String, String> keys = line.keys();
      String kind = keys.get("kind");
      switch (random.nextInt(9)) {
        case 0 -> {
          if (!kind.equals("tile")) {
            if (beside(draft, at)) {
              continue;
            }
            draft.layers().remove(at);
            // A board that is said to be bonded has a bed, whether it is listed or not.
            draft.layers().forEach(left -> left.keys().replace("fixing", "screwed only"));
            return "no " + kind;
          }
        }
        case 1 -> {
          if (kind.equals("primer") || kind.equals("gritted primer")) {
            keys.put("kind", "PVA");
            return "PVA for " + kind;
          }
        }
        case 2 -> {
          if (keys.containsKey("thickness")
              && !Set.of("tile", "decoupling membrane", "packing on joists").contains(kind)) {
            keys.put("thickness", "1 mm");
            if (!line.id().equals("heating-overlay") && !line.id().equals("tanking")) {
              return "a thin " + kind;
            }
          }
        }
        case 3 -> {
          if (keys.getOrDefault("class", "").contains("C2 S1")) {
            keys.put("class", keys.get("class").replace("C2 S1", "C1"));
            return "a weak " + kind;
          }
        }
        case 4 -> {
          if (keys.containsKey("coverage")) {
            keys.put("coverage", "60 %");
            return "hollow " + kind;
          }
        }
        case 5 -> {
          if (keys.containsKey("screw length")
              && !Set.of("new-deck", "inset-deck").contains(line.id())) {
            keys.put("screw length", random.nextBoolean() ? "90 mm" : "10 mm");
            return "a wrong screw in " + kind;
          }
        }
        case 6 -> {
          if (keys.containsKey("joints")) {
            keys.put("joints", "over deck joints");
            return "joints over joints in " + kind;
          }
        }
        case 7 -> {
          if (keys.containsKey("wait after")) {
            keys.put("wait after", "0 h");
            return "no wait after " + kind;
          }
        }
        default -> {
          int other = at + 1;
          if (other < draft.layers().size()
              && !draft.layers().get(other).keys().get("kind").equals(kind)) {
            draft.layers().set(at, draft.layers().get(other));
            draft.layers().set(other, line);
            return "the " + kind + " above what belongs on it";
          }
        }
      }
    }
  }
}
