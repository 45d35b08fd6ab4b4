package underfoot.reasoning;

import java.util.ArrayList;
import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Knowledge;
import underfoot.measure.Texts;

/**
 * What of a way can be told only beside the others: whether it tears out what another leaves, and
 * how far it is from the best, counted in steps below which nothing is told apart.
 */
final class NearWays {
  /** A figure of this name and a fact's is the step in which that fact is told apart. */
  private static final String STEP = "step-of-";

  private NearWays() {}

  /**
   * The same ways, each with what sets it apart from the others.
   *
   * @param beside all ways that they are seen beside, themselves among them
   */
  static List<BuildUp> of(Knowledge knowledge, List<BuildUp> ways, List<BuildUp> beside) {
    List<BuildUp> standing = beside.stream().filter(BuildUp::stands).toList();
    if (standing.size() < 2) {
      return ways;
    }
    List<Figure> steps =
        knowledge.figures().all().stream().filter(one -> one.name().startsWith(STEP)).toList();
    List<BuildUp> told = new ArrayList<>();
    for (BuildUp way : ways) {
      List<Fact> apart = new ArrayList<>();
      apart.add(tornOut(way, standing));
      for (Figure step : steps) {
        inSteps(way, standing, step, apart);
      }
      told.add(
          new BuildUp(
              way.way(),
              way.offers(),
              way.stack(),
              Facts.over(way.facts()).addAll(apart),
              way.concluded()));
    }
    return told;
  }

  /** Whether it takes out what a way no less usual and no less sound leaves where it is. */
  private static Fact tornOut(BuildUp way, List<BuildUp> standing) {
    BuildUp gentler = null;
    for (BuildUp other : standing) {
      if (tornOut(other) < tornOut(way)
          && number(other, "standing order") <= number(way, "standing order")
          && number(other, "verdict order") <= number(way, "verdict order")) {
        gentler = other;
        break;
      }
    }
    return Fact.measured(
        "torn out without need",
        "",
        gentler == null ? "no" : "yes",
        gentler == null ? 0 : 1,
        gentler == null
            ? "nothing that another way leaves is taken out"
            : "'" + gentler.way() + "' stands as well and leaves what is there",
        List.of());
  }

  /** How many parts of the floor that could stay are taken out. */
  private static double tornOut(BuildUp way) {
    double layers = number(way, FoundFloor.SOUND_UP);
    return (Double.isNaN(layers) ? 0 : layers) + (tearsOut(way) ? 1 : 0);
  }

  /** Whether the way takes out what it begins from, as a new deck does. */
  static boolean tearsOut(BuildUp way) {
    return way.facts().text("tears out").equals("yes");
  }

  private static void inSteps(BuildUp way, List<BuildUp> standing, Figure step, List<Fact> apart) {
    String name = step.name().substring(STEP.length()).replace('-', ' ');
    Fact own = way.facts().find(name);
    double best =
        standing.stream()
            .mapToDouble(one -> number(one, name))
            .filter(one -> !Double.isNaN(one))
            .min()
            .orElse(Double.NaN);
    if (own == null || !own.hasNumber() || Double.isNaN(best)) {
      return;
    }
    double wide = step.unit().equals("%") ? best * step.value() / 100 : step.number();
    double steps = wide > 0 ? Math.max(0, Math.floor((own.number() - best) / wide)) : 0;
    apart.add(
        Fact.measured(
            name + " in steps",
            "",
            own.text(),
            steps,
            "how many times " + step.text() + " it is above the best: " + Texts.of(steps, ""),
            List.of(own, step)));
  }

  private static double number(BuildUp way, String name) {
    return way.facts().number(name);
  }
}
