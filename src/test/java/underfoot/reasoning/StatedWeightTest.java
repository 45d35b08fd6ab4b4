package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underfoot.buildup.Remedy;
import underfoot.scenario.Scenario;

/** What is weighed never comes out worse than what nobody has weighed. */
class StatedWeightTest {
  @ParameterizedTest
  @DisplayName("A bath whose weight is stated is judged no worse than one that nobody lists")
  @CsvSource({
    "timber joists, 2.6 m, 200 mm",
    "timber joists, 3.4 m, 200 mm",
    "timber joists, 3.4 m, 175 mm",
    "timber joists, unknown, 200 mm",
    "doubled or trimmed joists, 3.4 m, 200 mm"
  })
  void a_bath(String carrier, String span, String depth) throws Exception {
    Scenario floor = Floors.read("boards");
    for (Map.Entry<String, String> change :
        Map.of(
                "room.use", "bathroom",
                "subfloor.carried by.kind", carrier,
                "subfloor.joists.clear span", span,
                "subfloor.joists.depth", depth)
            .entrySet()) {
      floor = Floors.change(floor, change.getKey(), change.getValue());
    }
    Set<String> unstated = asked(floor);
    for (String mass : new String[] {"180 kg", "260 kg", "300 kg", "345 kg"}) {
      Scenario stated =
          Floors.change(floor, "room.heavy items", "[{name: bath, mass: " + mass + "}]");
      assertThat(unstated).as(mass).containsAll(asked(stated));
    }
  }

  /** What has to be put right or waited for, in any build-up. */
  private static Set<String> asked(Scenario floor) {
    Assessment assessment = Floors.advisor().advise(floor);
    Set<String> asked = new TreeSet<>();
    assessment.general().forEach(one -> ask(one, asked));
    assessment.buildUps().forEach(way -> way.concluded().forEach(one -> ask(one, asked)));
    return asked;
  }

  private static void ask(Object one, Set<String> asked) {
    if (one instanceof Remedy remedy) {
      asked.add(remedy.wording());
    }
  }
}
