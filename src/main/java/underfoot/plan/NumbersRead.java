package underfoot.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underfoot.buildup.LayerThickness;
import underfoot.buildup.Verdict;
import underfoot.plan.Advice.Standing;
import underfoot.plan.LastReading.Broken;
import underfoot.plan.LastReading.Read;

/** Reads whether the answer, the picture and the figures agree, and no figure is absurd. */
final class NumbersRead {
  /** What rounding may leave between a figure and the sum of its parts. */
  private static final double TOLERANCE = 1e-6;

  /** A length, a weight, a time or a share below nought, in words; a temperature may be. */
  private static final Pattern BELOW_NOUGHT =
      Pattern.compile("(?<![\\w)])-\\d\\S* ?(?:mm|m|kg|kg/m2|h|days?|%)(?!\\w)");

  private NumbersRead() {}

  /** A figure and where it stands. */
  private record Number(String where, double value) {}

  static Optional<Broken> answer(Read read) {
    Advice advice = read.advice();
    String verdict = "the verdict is '" + advice.verdict().word() + "'";
    boolean stops = advice.verdict() == Verdict.STOP;
    if (stops == advice.builds() || advice.way().isEmpty() == advice.builds()) {
      return LastReading.broken(
          read, verdict, advice.builds() ? "layers are given" : "no layers are given");
    }
    boolean halted =
        advice.stopFindings().stream().anyMatch(one -> one.verdict() == advice.verdict());
    boolean halts = stops || advice.verdict() == Verdict.OUTSIDE_GUIDANCE;
    if (halts != halted || (!halts && !advice.stopFindings().isEmpty())) {
      return LastReading.broken(
          read, verdict, halts ? "nothing says what halts the work" : "something halts the work");
    }
    boolean first = !advice.remedies().isEmpty();
    if (advice.verdict() == Verdict.SOUND && first
        || advice.verdict() == Verdict.SOUND_ONCE_PUT_RIGHT && !first) {
      return LastReading.broken(
          read,
          verdict,
          first ? "there is something to put right" : "there is nothing to put right");
    }
    if (!advice.builds()
        && !(advice.consequences().programme().isEmpty()
            && advice.consequences().quantities().isEmpty()
            && advice.consequences().setOut().isEmpty())) {
      return LastReading.broken(read, verdict, "there is a programme, a list or a drawing");
    }
    return order(read);
  }

  private static Optional<Broken> order(Read read) {
    List<Advice.Layer> layers = read.advice().layers();
    double level = 0;
    for (int i = 0; i < layers.size(); i++) {
      level += layers.get(i).thickness().mean();
      if (layers.get(i).order() != i + 1 || Math.abs(layers.get(i).level() - level) > TOLERANCE) {
        return LastReading.broken(
            read,
            layers.get(i).name() + " is layer " + (i + 1) + " and its top is at " + level + " mm",
            "it is drawn as layer "
                + layers.get(i).order()
                + " with its top at "
                + layers.get(i).level()
                + " mm");
      }
    }
    return Optional.empty();
  }

  static Optional<Broken> absurd(Read read) {
    for (Number one : numbers(read.advice())) {
      if (!(one.value() >= 0) || Double.isInfinite(one.value())) {
        return LastReading.broken(read, one.where() + " is told", "it comes to " + one.value());
      }
    }
    for (Advice.Told one : told(read.advice())) {
      Matcher below = BELOW_NOUGHT.matcher(one.text());
      if (below.find()) {
        return LastReading.broken(
            read, "a size or a time is told", "'" + one.text() + "' has " + below.group());
      }
    }
    Set<String> things = new HashSet<>();
    read.advice().remedies().forEach(one -> things.add(one.about()));
    read.advice().cautions().forEach(one -> things.add(one.about()));
    for (Advice.Door door : read.advice().heights().doors()) {
      boolean told = things.contains(door.name());
      if (door.gapLeftMm() < 0 && (door.fits().orElse(false) || !told)) {
        return LastReading.broken(
            read,
            "the leaf of " + door.name() + " has a gap of " + door.gapLeftMm() + " mm",
            door.fits().orElse(false) ? "it is said to fit" : "nothing is said of that door");
      }
    }
    return Optional.empty();
  }

  /** All that is told in sentences that are filled in. */
  private static List<Advice.Told> told(Advice advice) {
    List<Advice.Told> all = new ArrayList<>(advice.remedies());
    all.addAll(advice.cautions());
    for (Advice.Layer layer : advice.layers()) {
      all.addAll(layer.spec());
      all.addAll(layer.fixing());
    }
    return all;
  }

  private static List<Number> numbers(Advice advice) {
    List<Number> all = new ArrayList<>();
    for (Advice.Layer layer : advice.layers()) {
      LayerThickness thickness = layer.thickness();
      all.add(new Number("the thickness of " + layer.name(), thickness.min()));
      all.add(new Number("the most of " + layer.name(), thickness.max() - thickness.mean()));
      all.add(new Number("the mean of " + layer.name(), thickness.mean() - thickness.min()));
    }
    all.add(new Number("the weight", advice.massKgPerM2()));
    for (ProgrammeStep step : advice.consequences().programme()) {
      all.add(new Number("the begin of '" + step.step() + "'", step.startHour()));
      all.add(new Number("the time of '" + step.step() + "'", step.hours()));
      all.add(new Number("the end of '" + step.step() + "'", step.endHour() - step.startHour()));
    }
    for (QuantityLine line : advice.consequences().quantities()) {
      double amount = Double.isNaN(line.amount()) ? 0 : line.amount(); // not known, and said so
      all.add(new Number("the amount of " + line.item(), amount));
      all.add(new Number("the packs of " + line.item(), line.packs()));
    }
    advice
        .consequences()
        .cost()
        .ifPresent(
            cost -> {
              all.add(new Number("the cost", cost.atLeast()));
              cost.lines().forEach(one -> all.add(new Number(one.item(), one.cost())));
            });
    return all;
  }

  static Optional<Broken> sums(Read read) {
    Advice advice = read.advice();
    if (!advice.builds()) {
      return Optional.empty();
    }
    double top = advice.layers().get(advice.layers().size() - 1).level();
    double rise = advice.heights().rise().mean();
    if (Math.abs(top - rise) > TOLERANCE) {
      return LastReading.broken(
          read, "the layers come to " + top + " mm", "the floor rises by " + rise + " mm");
    }
    Optional<Cost> cost = advice.consequences().cost();
    if (cost.isPresent() && cost.get().whole()) {
      double sum = cost.get().lines().stream().mapToDouble(Cost.Line::cost).sum();
      if (Math.abs(sum - cost.get().total()) > 1e-3) {
        return LastReading.broken(
            read, "the lines of the bill come to " + sum, "its sum is " + cost.get().total());
      }
    }
    for (ComparedBuildUp way : advice.consequences().ways()) {
      if (way.standing() == Standing.RECOMMENDED) {
        Optional<Broken> differs = compared(read, way);
        if (differs.isPresent()) {
          return differs;
        }
      }
    }
    return Optional.empty();
  }

  /** The recommended way in the comparison has the figures of the advice. */
  private static Optional<Broken> compared(Read read, ComparedBuildUp way) {
    Advice advice = read.advice();
    List<Number[]> pairs =
        List.of(
            pair("weight", way.massKgPerM2(), advice.massKgPerM2()),
            pair("layers", way.layers().size(), advice.layers().size()),
            pair("work hours", way.workHours(), advice.consequences().schedule().workHours()),
            pair(
                "hours until use",
                way.inUseAfterHours(),
                advice.consequences().schedule().inUseAfterHours()),
            pair(
                "cost",
                way.cost().map(Cost::atLeast).orElse(0.0),
                advice.consequences().cost().map(Cost::atLeast).orElse(0.0)));
    for (Number[] pair : pairs) {
      if (Math.abs(pair[0].value() - pair[1].value()) > TOLERANCE) {
        return LastReading.broken(
            read,
            "among the ways the " + pair[0].where() + " is " + pair[0].value(),
            "the advice has " + pair[1].value());
      }
    }
    return Optional.empty();
  }

  private static Number[] pair(String what, double one, double other) {
    return new Number[] {new Number(what, one), new Number(what, other)};
  }
}
