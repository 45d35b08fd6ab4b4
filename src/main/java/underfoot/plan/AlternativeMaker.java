package underfoot.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import underfoot.buildup.Criterion;
import underfoot.buildup.OfferedWay;
import underfoot.buildup.RuledOut;
import underfoot.buildup.StopFinding;
import underfoot.buildup.Suggestion;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.Wording;
import underfoot.measure.Texts;
import underfoot.plan.Advice.Alternative;
import underfoot.plan.Advice.Standing;
import underfoot.plan.Sayings.Same;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.BuildUp;

/** Tells the ways that are not recommended: what sets each behind, or what rules it out. */
final class AlternativeMaker {
  private final Assessment assessment;
  private final Sayings sayings;
  private final Phrases phrases;
  private final Set<String> stopsTold;

  /**
   * @param stopsTold the wordings of the stops that the advice tells elsewhere
   */
  AlternativeMaker(Assessment assessment, Sayings sayings, Set<String> stopsTold) {
    this.assessment = assessment;
    this.sayings = sayings;
    this.phrases = sayings.phrases();
    this.stopsTold = stopsTold;
  }

  /** The other ways, and what else to think of. */
  List<Alternative> alternatives(List<ComparedBuildUp> ways) {
    List<Alternative> all = new ArrayList<>();
    Optional<BuildUp> chosen = assessment.chosen();
    for (BuildUp buildUp : assessment.everyBuildUp()) {
      boolean isChosen = chosen.isPresent() && buildUp == chosen.get();
      if (!buildUp.stands()) {
        all.add(ruledOut(buildUp));
      } else if (!isChosen && chosen.isPresent()) {
        all.add(secondChoice(buildUp, chosen.get(), ways));
      }
    }
    for (Same<Suggestion> same :
        sayings.once(assessment.of(Suggestion.class), Suggestion::wording)) {
      Wording.Filled filled = sayings.fill(same.wording(), "");
      all.add(
          new Alternative(
              same.id(),
              Standing.SUGGESTION,
              filled.title(),
              filled.text(),
              sayings.because(same, filled)));
    }
    return all;
  }

  private Alternative ruledOut(BuildUp buildUp) {
    Sayings here = sayings.with(buildUp.facts());
    List<Derivation> because = new ArrayList<>();
    Set<Object> used = new LinkedHashSet<>();
    Set<String> texts = new LinkedHashSet<>();
    for (Same<RuledOut> same : here.once(buildUp.of(RuledOut.class), RuledOut::wording)) {
      Wording.Filled filled = here.fill(same.wording(), "");
      texts.add(filled.text());
      used.addAll(filled.used());
      because.addAll(same.because());
    }
    List<StopFinding> stops =
        buildUp.of(StopFinding.class).stream().filter(StopFinding::isStop).toList();
    for (Same<StopFinding> same : here.once(stops, StopFinding::wording)) {
      if (stopsTold.contains(same.wording())) {
        String why = Texts.lower(sayings.title(same.wording(), ""));
        texts.add(phrases.say("stopped-as-above", "why", why));
      } else {
        Wording.Filled filled = here.fill(same.wording(), "");
        texts.add(filled.text());
        used.addAll(filled.used());
      }
      because.addAll(same.because());
    }
    WayNamed named = WayNamed.of(buildUp, assessment.facts(), phrases);
    return new Alternative(
        named.id(),
        Standing.RULED_OUT,
        named.title(),
        String.join(" ", texts),
        sayings.justifier().of(because, List.copyOf(used)));
  }

  private Alternative secondChoice(BuildUp buildUp, BuildUp chosen, List<ComparedBuildUp> ways) {
    List<Derivation> because = new ArrayList<>();
    buildUp.offers().stream().map(OfferedWay::because).forEach(because::add);
    String text = phrases.say("second-choice");
    List<Object> used = new ArrayList<>();
    for (Criterion criterion : assessment.criteria()) {
      Fact here = buildUp.facts().find(criterion.name());
      Fact there = chosen.facts().find(criterion.name());
      if (here != null && there != null && here.number() != there.number()) {
        String id = "behind-by-" + criterion.name().replace(" in steps", "").replace(' ', '-');
        text =
            phrases.say(
                phrases.has(id) ? id : "behind-by",
                "criterion",
                criterion.name(),
                "here",
                here.text(),
                "there",
                there.text(),
                "standing",
                standing(buildUp));
        used.add(here);
        used.add(there);
        because.add(criterion.because());
        break;
      }
    }
    WayNamed named = WayNamed.of(buildUp, assessment.facts(), phrases);
    for (ComparedBuildUp way : ways) {
      if (way.id().equals(named.id())) {
        text += gainsAndLosses(way, phrases);
      }
    }
    return new Alternative(
        named.id(),
        Standing.SECOND_CHOICE,
        named.title(),
        text,
        sayings.justifier().of(because, used));
  }

  /** What a way has over the recommended one, and what it gives up. */
  static String gainsAndLosses(ComparedBuildUp way, Phrases phrases) {
    if (way.gains().isEmpty() && way.givesUp().isEmpty()) {
      return "";
    }
    String id =
        way.givesUp().isEmpty()
            ? "only-gains"
            : way.gains().isEmpty() ? "only-losses" : "gains-and-losses";
    return ' '
        + phrases.say(
            id,
            "gains",
            String.join(", ", way.gains()),
            "losses",
            String.join(", ", way.givesUp()));
  }

  private static String standing(BuildUp buildUp) {
    return buildUp.offers().stream().map(OfferedWay::standing).distinct().reduce("", (a, b) -> b);
  }
}
