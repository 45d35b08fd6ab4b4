package underfoot.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import underfoot.knowledge.Phrases;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.BuildUp;

/** What it costs that the client asked for something first, or that it was not followed. */
final class ChoiceSaid {
  private ChoiceSaid() {}

  /** A sentence on it; empty where what was asked for and the choice agree without a price. */
  static Optional<String> of(Assessment assessment, List<ComparedBuildUp> ways, Phrases phrases) {
    Optional<BuildUp> chosen = assessment.chosen();
    if (chosen.isEmpty()) {
      return Optional.empty();
    }
    Optional<BuildUp> otherwise = assessment.withoutWishes();
    for (Map.Entry<String, String> wish : assessment.wishes().entrySet()) {
      double here = chosen.get().facts().number(wish.getKey());
      if (otherwise.isPresent()
          && !otherwise.get().way().equals(chosen.get().way())
          && here < otherwise.get().facts().number(wish.getKey())) {
        return said("choice-asked", wish.getValue(), otherwise.get(), ways, phrases);
      }
      for (BuildUp other : assessment.buildUps()) {
        if (other.stands() && other.facts().number(wish.getKey()) < here) {
          return said("choice-not-taken", wish.getValue(), other, ways, phrases);
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<String> said(
      String id, String wish, BuildUp other, List<ComparedBuildUp> ways, Phrases phrases) {
    String difference =
        ways.stream()
            .filter(way -> way.id().equals(other.way()))
            .map(way -> AlternativeMaker.gainsAndLosses(way, phrases).strip())
            .findFirst()
            .orElse("");
    String asked = phrases.say("wish-" + wish.replace(' ', '-'));
    return Optional.of(
        phrases
            .say(id, "wish", asked, "way", phrases.way(other.way()), "difference", difference)
            .strip());
  }
}
