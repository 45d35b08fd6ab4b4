package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import underfoot.buildup.ClientLimit;
import underfoot.buildup.Remedy;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.StatedFact;

/** What must hold of the choice between build-ups, on floors made up by chance. */
class ChoosingTest {
  private static final int FLOORS = Integer.getInteger("choices", 25);
  private static final double SLIP = 1e-6;

  /** Asked for in turns, one of each floor. */
  private static final List<String> ASKED = List.of("foam-board", "tanking", "decoupling-membrane");

  private final Advisor advisor = Floors.advisor();

  /** A floor and what is decided of it. */
  private record Case(String yaml, Scenario scenario, Assessment assessment) {}

  private List<Case> cases(long seed, Map<String, String> fixed) {
    RandomFloors floors = new RandomFloors(advisor.knowledge().facts(), seed);
    List<Case> cases = new ArrayList<>();
    while (cases.size() < FLOORS) {
      String yaml = floors.next(fixed);
      try {
        Scenario scenario =
            Floors.reader().read("chance.yaml", yaml.getBytes(StandardCharsets.UTF_8));
        cases.add(new Case(yaml, scenario, advisor.advise(scenario)));
      } catch (ScenarioFaults contradictsItself) {
        // Made up by chance, some floors contradict themselves; the next one is taken.
      }
    }
    return cases;
  }

  private Optional<Assessment> with(Scenario scenario, String key, String about, String value) {
    try {
      return Optional.of(advisor.advise(scenario.with(key, about, value)));
    } catch (ScenarioFaults contradicts) {
      return Optional.empty();
    }
  }

  private static int badness(Assessment assessment) {
    boolean beyond = !assessment.of(ClientLimit.class).isEmpty();
    return assessment.verdict() == Verdict.SOUND_ONCE_PUT_RIGHT && !beyond
        ? 0
        : assessment.verdict().compareTo(Verdict.SOUND_ONCE_PUT_RIGHT) * 2 + (beyond ? 1 : 0);
  }

  @Test
  void more_budget_never_gives_a_worse_or_newly_refused_result() {
    int compared = 0;
    for (Case one : cases(11, Map.of("room.area", "9 m2", "room.longest side", "4 m"))) {
      Assessment before = null;
      for (String budget : List.of("50 GBP", "400 GBP", "800 GBP", "1500 GBP", "90000 GBP")) {
        Optional<Assessment> now = with(one.scenario(), "budget.limit", "", budget);
        if (now.isEmpty()) {
          continue;
        }
        if (before != null) {
          compared++;
          assertThat(badness(now.get()))
              .as("with %s of\n%s", budget, one.yaml())
              .isLessThanOrEqualTo(badness(before));
          assertThat(now.get().chosen().isPresent() || before.chosen().isEmpty()).isTrue();
        }
        before = now.get();
      }
    }
    assertThat(compared).isGreaterThan(FLOORS);
  }

  /** Before a leaf a pour may end: how high a floor comes there is what the leaf leaves of it. */
  @Test
  void a_tighter_door_never_gives_a_build_up_that_is_higher_at_its_leaf() {
    int compared = 0;
    List<Case> cases = cases(12, Map.of());
    cases.addAll(cases(16, Map.of()));
    cases.addAll(cases(17, Map.of("priorities", "[height]")));
    for (Case one : cases) {
      for (String door : one.scenario().entries("room.doors[]")) {
        double looser = Double.NaN;
        for (String gap : List.of("60 mm", "30 mm", "20 mm", "12 mm", "5 mm")) {
          Optional<Assessment> now = with(one.scenario(), "room.doors[].gap under leaf", door, gap);
          double rise =
              now.flatMap(Assessment::chosen)
                  .map(chosen -> atTheLeaf(chosen, door))
                  .orElse(Double.NaN);
          if (!Double.isNaN(rise) && !Double.isNaN(looser)) {
            compared++;
            assertThat(rise)
                .as("with %s under %s of\n%s", gap, door, one.yaml())
                .isLessThanOrEqualTo(looser + SLIP);
          }
          looser = Double.isNaN(rise) ? looser : rise;
        }
      }
    }
    assertThat(compared).isGreaterThan(FLOORS / 2);
  }

  /** How high the floor comes at a leaf; falls that are too high for it are brought down first. */
  private static double atTheLeaf(BuildUp chosen, String door) {
    Facts facts = chosen.facts();
    double high = high(facts, door);
    boolean lowered =
        chosen.of(Remedy.class).stream()
            .anyMatch(
                one -> one.wording().equals("start-the-falls-lower") && one.about().equals(door));
    return lowered ? high - facts.number("trim needed", door) : high;
  }

  private static double high(Facts facts, String door) {
    Fact left = facts.find("gap left beside the pour", door);
    return facts.find("gap under leaf", door).number()
        - (left == null ? facts.find("gap left", door) : left).number();
  }

  @Test
  void the_order_in_which_facts_are_told_changes_nothing() throws Exception {
    Random random = new Random(13);
    for (Path file : Floors.examples()) {
      String yaml = Files.readString(file);
      List<String> blocks = new ArrayList<>(List.of(yaml.split("\n(?=[a-z])")));
      Collections.shuffle(blocks, random);
      Scenario shuffled =
          Floors.reader()
              .read("told.yaml", String.join("\n", blocks).getBytes(StandardCharsets.UTF_8));
      Assessment one = advisor.advise(Floors.reader().read("told.yaml", Files.readAllBytes(file)));
      Assessment other = advisor.advise(shuffled);
      assertThat(other.verdict()).as(file.toString()).isEqualTo(one.verdict());
      assertThat(other.buildUps().stream().map(BuildUp::way))
          .as(file.toString())
          .containsExactlyElementsOf(one.buildUps().stream().map(BuildUp::way).toList());
      assertThat(Floors.rulesOf(other)).as(file.toString()).isEqualTo(Floors.rulesOf(one));
    }
  }

  @Test
  void each_least_change_makes_a_way_stand_and_half_of_it_does_not() throws Exception {
    int found = 0;
    List<Case> cases = cases(14, Map.of("budget.limit", "300 GBP", "room.area", "6 m2"));
    cases.addAll(cases(15, Map.of("site.ready within", "5 days")));
    for (Case one : cases) {
      boolean stands = one.assessment().chosen().isPresent();
      for (LeastChange.Proposal proposal : LeastChange.of(advisor, one.assessment()).proposals()) {
        found++;
        Assessment then =
            advisor.advise(changed(one.scenario(), proposal, proposal.altered().size()));
        assertThat(then.chosen()).as("%s of\n%s", proposal.altered(), one.yaml()).isPresent();
        assertThat(!stands || LeastChange.keepsLimits(then))
            .as("%s of\n%s", proposal.altered(), one.yaml())
            .isTrue();
        half(one, proposal, stands);
      }
    }
    assertThat(found).isGreaterThan(FLOORS / 3);
  }

  private void half(Case one, LeastChange.Proposal proposal, boolean stands) throws ScenarioFaults {
    LeastChange.Altered last = proposal.altered().get(proposal.altered().size() - 1);
    StatedFact before = one.scenario().find(last.change().fact().key(), last.about()).orElseThrow();
    if (last.change().step() == 0 || !before.known()) {
      return;
    }
    Scenario most = changed(one.scenario(), proposal, proposal.altered().size());
    double to = most.find(last.change().fact().key(), last.about()).orElseThrow().number();
    double half = (before.number() + to) / 2;
    String unit = last.change().fact().dimension().base();
    Assessment then =
        advisor.advise(
            changed(one.scenario(), proposal, proposal.altered().size() - 1)
                .with(last.change().fact().key(), last.about(), half + " " + unit));
    boolean fits = stands ? LeastChange.keepsLimits(then) : then.chosen().isPresent();
    assertThat(fits).as("half of %s of\n%s", last, one.yaml()).isFalse();
  }

  private static Scenario changed(Scenario scenario, LeastChange.Proposal proposal, int many)
      throws ScenarioFaults {
    Scenario changed = scenario;
    for (LeastChange.Altered one : proposal.altered().subList(0, many)) {
      changed = changed.with(one.change().fact().key(), one.about(), one.is());
    }
    return changed;
  }

  @Test
  void what_would_let_a_material_in_does_so_when_the_floor_is_thought_through_again()
      throws Exception {
    int opened = 0;
    int turn = 0;
    for (Path file : Floors.examples()) {
      Scenario scenario = Floors.reader().read(file.toString(), Files.readAllBytes(file));
      String layer = ASKED.get(turn++ % ASKED.size());
      WhyNot found = WhyNot.of(advisor, scenario, buildUp -> lays(buildUp, layer));
      boolean nothing = found.assessment().buildUps().stream().noneMatch(BuildUp::stands);
      for (WhyNot.Opening opening : found.changes()) {
        opened++;
        Scenario changed = scenario;
        for (WhyNot.Asked asked : opening.asked()) {
          changed = changed.with(asked.fact().key(), asked.about(), asked.is());
        }
        assertThat(advisor.advise(changed).buildUps())
            .as("%s in %s", opening.asked(), file)
            .anyMatch(one -> lays(one, layer) && (nothing || one.stands()));
      }
      if (found.standing() == WhyNot.Standing.RULED_OUT) {
        assertThat(found.refusals()).isNotEmpty();
        assertThat(found.failed()).extracting(Fact::key).isNotEmpty();
      }
    }
    assertThat(opened).isGreaterThan(20 / ASKED.size());
  }

  private static boolean lays(BuildUp buildUp, String layer) {
    return buildUp.stack().layers().stream().anyMatch(one -> one.kind().id().equals(layer));
  }
}
