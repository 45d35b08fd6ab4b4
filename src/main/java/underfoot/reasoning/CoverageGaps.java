package underfoot.reasoning;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import underfoot.buildup.CoverageTarget;
import underfoot.buildup.RuledOut;
import underfoot.buildup.StopFinding;
import underfoot.language.RuleFaults;
import underfoot.scenario.FactBook;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.ScenarioReader;

/**
 * Floors to which a rule base has no complete answer. Every deck is tried with every use and every
 * heating, the tiles taking turns, and nothing else is known.
 */
public final class CoverageGaps {
  private CoverageGaps() {}

  /** One fault for each combination without a complete answer. */
  public static List<RuleFaults.Fault> faults(Advisor advisor) {
    FactBook book = advisor.knowledge().facts();
    ScenarioReader reader = new ScenarioReader(book);
    List<RuleFaults.Fault> faults = new ArrayList<>();
    List<String> tiles = choices(book, "tile.material");
    int turn = 0;
    for (String deck : choices(book, "subfloor.deck")) {
      for (String use : choices(book, "room.use")) {
        for (String heating : choices(book, "heating.kind")) {
          String tile = tiles.get(turn++ % tiles.size());
          String yaml =
              "scenario: Any\npractice: uk\nroom: {use: "
                  + use
                  + "}\nsubfloor: {deck: \""
                  + deck
                  + "\"}\ntile: {material: "
                  + tile
                  + ", length: 300 mm, width: 300 mm}\nheating: "
                  + heating
                  + "\n";
          try {
            Scenario scenario = reader.read("any.yaml", yaml.getBytes(StandardCharsets.UTF_8));
            String lacks = lacks(advisor.advise(scenario));
            if (!lacks.isEmpty()) {
              faults.add(
                  new RuleFaults.Fault(
                      "",
                      0,
                      "no complete answer for "
                          + String.join(", ", use, deck, tile, "heating: " + heating)
                          + ": "
                          + lacks));
            }
          } catch (ScenarioFaults contradiction) {
            // such a floor cannot be described, so nobody asks about it
          }
        }
      }
    }
    return faults;
  }

  private static List<String> choices(FactBook book, String key) {
    return book.find(key).map(fact -> fact.of()).orElse(List.of());
  }

  private static String lacks(Assessment assessment) {
    if (assessment.facts().number("build-ups worked out") == 0) {
      return "no way of building is offered; offer one in a rule of the pass propose";
    }
    BuildUp chosen = assessment.chosen().orElse(null);
    if (chosen == null) {
      boolean halted = assessment.general().stream().anyMatch(one -> one instanceof StopFinding);
      if (!halted) {
        return "nothing is chosen and nothing stops the work; offer a way of building, or stop it";
      }
      for (BuildUp buildUp : assessment.buildUps()) {
        if (buildUp.of(RuledOut.class).isEmpty() && buildUp.of(StopFinding.class).isEmpty()) {
          return "no rule says why " + buildUp.way() + " does not stand; rule it out by name";
        }
      }
      return "";
    }
    if (chosen.stack().layers().isEmpty()) {
      return chosen.way() + " has no layer; lay them in a rule of the pass lay";
    }
    return assessment.of(CoverageTarget.class).isEmpty()
        ? "no contact is aimed for under the tiles; write: Aim for tile contact of …"
        : "";
  }
}
