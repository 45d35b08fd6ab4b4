package underfoot.reasoning;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Kind;
import underfoot.scenario.Place;
import underfoot.scenario.Point;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;

/** The values that are tried of a fact, to find out whether it matters. */
final class TriedValues {
  /** How many values are tried between the least and the most a quantity may be. */
  private static final int BETWEEN = 6;

  private static final int YEARS_APART = 12;
  private static final double ROUGHLY = 100;

  private TriedValues() {}

  /** The floor with another value; empty if that contradicts what else is said. */
  static Optional<Scenario> changed(Scenario scenario, Place place, String value) {
    try {
      return Optional.of(scenario.with(place, value));
    } catch (ScenarioFaults impossibleHere) {
      return Optional.empty();
    }
  }

  /** Values fit to be told a person: the choices, or those the facts file tries. */
  static List<String> spoken(Scenario scenario, Place place) {
    FactDefinition fact = place.fact();
    boolean few = fact.kind() == Kind.CHOICE || fact.kind() == Kind.YES_NO;
    if (fact.otherwise().isEmpty() && fact.kind() == Kind.QUANTITY) {
      return List.of(fact.example());
    }
    return few || fact.otherwise().isEmpty() ? of(scenario, place) : fact.otherwise();
  }

  /** The values of a fact that are tried: all there are, or a spread over what it may be. */
  static List<String> of(Scenario scenario, Place place) {
    FactDefinition fact = place.fact();
    Set<String> values = new LinkedHashSet<>(fact.otherwise());
    switch (fact.kind()) {
      case CHOICE -> values.addAll(fact.of());
      case CHOICES -> fact.of().forEach(one -> values.add("[" + one + "]"));
      case YES_NO -> values.addAll(List.of("yes", "no"));
      case QUANTITY, COUNT -> {
        values.add(fact.example());
        spread(fact, values);
      }
      case YEAR -> {
        for (int year = (int) fact.most(); year >= fact.least(); year -= YEARS_APART) {
          values.add(Integer.toString(year));
        }
      }
      case READINGS -> readings(scenario, fact, values);
      default -> values.add(fact.example());
    }
    return List.copyOf(values);
  }

  private static void spread(FactDefinition fact, Set<String> values) {
    double least = fact.least();
    double most = fact.most();
    if (Double.isNaN(least) || Double.isNaN(most)) {
      return;
    }
    String unit = fact.dimension() == null ? "" : fact.dimension().base();
    values.add(fact.leastText());
    values.add(fact.mostText());
    for (int i = 1; i < BETWEEN; i++) {
      double share = (double) i / BETWEEN;
      // Most of what is decided lies near the small end: closer together there.
      double value = least + (most - least) * share * share * share;
      double rounded =
          fact.kind() == Kind.COUNT ? Math.rint(value) : Math.round(value * ROUGHLY) / ROUGHLY;
      String number =
          rounded == Math.rint(rounded)
              ? String.format(Locale.ROOT, "%.0f", rounded)
              : Double.toString(rounded);
      values.add((number + " " + unit).strip());
    }
  }

  /** Flat, and out in the middle by as much as the facts file's example is. */
  private static void readings(Scenario scenario, FactDefinition fact, Set<String> values) {
    List<Point> outline = scenario.outline();
    if (outline.isEmpty()) {
      values.add(fact.example());
      return;
    }
    double x = outline.stream().mapToDouble(Point::x).average().orElse(0);
    double y = outline.stream().mapToDouble(Point::y).average().orElse(0);
    String out = fact.example().replaceFirst("^.*,", "").replaceAll("]", "").strip();
    for (String height : List.of("0 mm", out)) {
      List<String> spots = new ArrayList<>();
      for (Point corner : outline) {
        spots.add("[" + corner.x() + " mm, " + corner.y() + " mm, 0 mm]");
      }
      spots.add("[" + x + " mm, " + y + " mm, " + height + "]");
      values.add("[" + String.join(", ", spots) + "]");
    }
  }
}
