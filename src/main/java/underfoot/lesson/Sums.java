package underfoot.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underfoot.knowledge.Fact;
import underfoot.knowledge.LessonBook.Item;
import underfoot.measure.Texts;

/** Questions that are worked out, from the numbers as they are printed. */
final class Sums {
  private static final double PER_CENT = 100;
  private static final double HAIR = 1e-9;

  /** How far off a number may be before a count that hangs on it comes out otherwise. */
  private static final double SHAKEN = 0.005;

  private Sums() {}

  static Optional<Question> of(Floor floor, Item kind, Values values) {
    String formula = kind.field("is");
    String unit = kind.field("unit");
    double number = values.work(kind.fields().getOrDefault("called", "answer"), formula, unit);
    String percent = kind.field("within");
    double within = Double.parseDouble(percent.replace("%", "").strip()) / PER_CENT;
    if (!Double.isFinite(number) || !sure(kind, values, formula, number, within)) {
      return Optional.empty();
    }
    Fact same = floor.fact(kind.field("same as"));
    if (!kind.field("same as").isEmpty()
        && (same == null || off(same.number(), number) > within + HAIR)) {
      return Optional.empty();
    }
    List<Question.Slip> slips = new ArrayList<>();
    for (Item slip : kind.table("slips")) {
      double other = values.number(slip.field("is"));
      if (Double.isFinite(other) && off(other, number) > 2 * within + HAIR) {
        slips.add(new Question.Slip(other, values.fill(slip.field("shows"))));
      }
    }
    return Optional.of(
        new Draft(kind, floor, values)
            .number(number, within, slips)
            .answer(
                Texts.of(
                    number,
                    number == 1 && kind.fields().containsKey("one") ? kind.field("one") : unit))
            .worked(values.steps())
            .made());
  }

  private static double off(double one, double other) {
    return Math.abs(one - other) / Math.max(Math.abs(other), HAIR);
  }

  /** Whether rounding on the way makes no difference, nor what a careful hand reads otherwise. */
  private static boolean sure(
      Item kind, Values values, String formula, double number, double within) {
    if (off(values.unrounded(formula), number) > within / 2 + HAIR) {
      return false;
    }
    if (within > 0) {
      return true;
    }
    Map<String, String> sources = kind.named("values");
    for (String name : sources.keySet()) {
      for (double share : new double[] {SHAKEN, -SHAKEN}) {
        boolean rough = kind.list("rough").contains(name);
        if (rough && off(values.shaken(formula, name, share, sources), number) > HAIR) {
          return false;
        }
      }
    }
    return true;
  }
}
