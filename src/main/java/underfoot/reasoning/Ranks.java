package underfoot.reasoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import underfoot.buildup.Criterion;
import underfoot.buildup.Remedy;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Knowledge;
import underfoot.measure.Texts;

/** By what build-ups are ranked besides what is measured of them. */
final class Ranks {
  private static final String THRESHOLD = "accessible-threshold";
  private static final String STEP = "step at the door";

  private Ranks() {}

  /** Those that stand first, then by each criterion in turn, and by name where nothing tells. */
  static Comparator<BuildUp> by(List<Criterion> criteria) {
    Comparator<BuildUp> ranking = Comparator.comparing(buildUp -> !buildUp.stands());
    for (Criterion criterion : criteria) {
      ranking = ranking.thenComparingDouble(c -> sortable(c.facts().number(criterion.name())));
    }
    return ranking.thenComparing(BuildUp::way);
  }

  private static double sortable(double number) {
    return Double.isNaN(number) ? Double.MAX_VALUE : number;
  }

  /** What build-ups may be ranked by once they are judged. */
  static List<Fact> of(Knowledge knowledge, Facts facts, List<?> held, Verdict verdict) {
    String disturbance = facts.text("disturbance");
    List<Object> trims = new ArrayList<>();
    double lacking = 0;
    for (String door : facts.abouts("trim needed")) {
      Fact trim = facts.find("trim needed", door);
      trims.add(trim);
      lacking += Math.max(0, trim.number());
    }
    double most = knowledge.figures().get(THRESHOLD).value();
    List<Object> steps = new ArrayList<>();
    double beyond = 0;
    for (String door : facts.abouts(STEP)) {
      Fact step = facts.find(STEP, door);
      if (step.hasNumber()) {
        steps.add(step);
        beyond += Math.max(0, Math.abs(step.number()) - most);
      }
    }
    long remedies =
        held.stream()
            .filter(Remedy.class::isInstance)
            .map(Remedy.class::cast)
            .map(one -> one.wording() + '@' + one.about())
            .distinct()
            .count();
    return List.of(
        Fact.measured(
            "verdict order",
            "",
            verdict.word(),
            Math.max(0, verdict.compareTo(Verdict.SOUND_ONCE_PUT_RIGHT)),
            "what can be put right counts as sound; the rest is worse",
            List.of()),
        Fact.measured(
            "remedies count",
            "",
            Long.toString(remedies),
            remedies,
            "how many things are put right first",
            List.of()),
        Fact.measured(
            "room lacking at doors",
            "",
            Texts.of(lacking, "mm"),
            lacking,
            "what the leaves of all doors lack, added up",
            trims),
        Fact.measured(
            "steps too high for wheels",
            "",
            Texts.of(beyond, "mm"),
            beyond,
            "what the steps at all doors are above " + Texts.of(most, "mm") + ", added up",
            steps),
        Fact.measured(
            "disturbance order",
            "",
            disturbance,
            knowledge.scales().get("disturbances").indexOf(disturbance),
            "how much the house is disturbed, least first",
            List.of()));
  }
}
