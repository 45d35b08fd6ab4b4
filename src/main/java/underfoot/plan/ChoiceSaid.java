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
          && otherwise.get() != chosen.get()
          && here < otherwise.get().facts().number(wish.getKey())) {
        return said(
            "choice-asked",
            wish.getValue(),
            named(otherwise.get(), assessment, phrases),
            ways,
            phrases);
      }
      for (BuildUp other : assessment.everyBuildUp()) {
        if (other.stands() && other.facts().number(wish.getKey()) < here) {
          return said(
              "choice-not-taken",
              wish.getValue(),
              named(other, assessment, phrases),
              ways,
              phrases);
        }
      }
    }
    return Optional.empty();
  }

  private static WayNamed named(BuildUp way, Assessment assessment, Phrases phrases) {
    return WayNamed.of(way, assessment.facts(), phrases);
  }

  private static Optional<String> said(
      String id, String wish, WayNamed other, List<ComparedBuildUp> ways, Phrases phrases) {
    String difference =
        ways.stream()
            .filter(way -> way.id().equals(other.id()))
            .map(way -> AlternativeMaker.gainsAndLosses(way, phrases).strip())
            .findFirst()
            .orElse("");
    String asked = phrases.say("wish-" + wish.replace(' ', '-'));
    return Optional.of(
        phrases.say(id, "wish", asked, "way", other.title(), "difference", difference).strip());
  }
}
