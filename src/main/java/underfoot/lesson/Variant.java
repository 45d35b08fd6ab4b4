package underfoot.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import underfoot.knowledge.LessonBook;
import underfoot.measure.Texts;
import underfoot.quantity.Dimension;
import underfoot.quantity.NotAQuantity;
import underfoot.quantity.Quantity;
import underfoot.reasoning.Advisor;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.BuildUp;
import underfoot.scenario.Point;
import underfoot.scenario.Reading;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.StatedFact;

/**
 * The same floor with other numbers, drawn within ordinary bounds. Verdict and way of building stay
 * as they were, so that variants are equally hard; numbers that would change them are left alone.
 */
final class Variant {
  private static final double MM_PER_M = 1000;

  /** Each may be tried alone; of a floor with hundreds of doors the first few are varied. */
  private static final int MOST_CHANGES = 24;

  private final Advisor advisor;
  private final LessonBook book;
  private final Tries tries;
  private final Random random;
  private final List<String> changes = new ArrayList<>();
  private Assessment assessment;

  private Variant(Workshop shop, Assessment stated, long seed) {
    this.advisor = shop.advisor();
    this.book = shop.book();
    this.tries = shop.tries();
    this.assessment = stated;
    this.random = new Random(LessonMaker.scattered(seed));
  }

  /**
   * A variant.
   *
   * @param assessment what was decided on it
   * @param changes what was varied
   */
  record Drawn(Assessment assessment, List<String> changes) {}

  static Drawn of(Workshop shop, Assessment stated, long seed) {
    Variant variant = new Variant(shop, stated, seed);
    variant.draw();
    return new Drawn(variant.assessment, List.copyOf(variant.changes));
  }

  /** One fact with another value. */
  private record Change(
      String key, String about, String value, String also, String alsoValue, String told) {
    Scenario in(Scenario scenario) throws ScenarioFaults {
      Scenario changed = scenario.with(key, about, value);
      return also.isEmpty() ? changed : changed.with(also, about, alsoValue);
    }
  }

  private void draw() {
    List<Change> drawn = new ArrayList<>();
    List<String> varied = new ArrayList<>();
    for (LessonBook.Item item : book.variations()) {
      for (StatedFact given : assessment.scenario().givens()) {
        String id = given.key() + '\n' + given.about();
        boolean wanted = given.key().equals(item.field("fact")) && given.known();
        if (drawn.size() < MOST_CHANGES && wanted && !varied.contains(id)) {
          Change change = change(item, given);
          if (change != null) {
            drawn.add(change);
            varied.add(id);
            if (!change.also().isEmpty()) {
              varied.add(change.also() + '\n' + given.about());
            }
          }
        }
      }
    }
    if (!take(drawn)) {
      for (Change one : drawn) {
        take(List.of(one));
      }
    }
  }

  /** Takes changes if the floor is still one, and verdict and way stay as they are. */
  private boolean take(List<Change> drawn) {
    Scenario changed = assessment.scenario();
    try {
      for (Change one : drawn) {
        changed = one.in(changed);
      }
    } catch (ScenarioFaults contradiction) {
      return false;
    }
    if (!tries.spend()) {
      return false;
    }
    Assessment then = advisor.advise(changed);
    if (then.verdict() != assessment.verdict() || !way(then).equals(way(assessment))) {
      return false;
    }
    assessment = then;
    drawn.forEach(one -> changes.add(one.told()));
    return true;
  }

  private static String way(Assessment assessment) {
    return assessment.chosen().map(BuildUp::way).orElse("");
  }

  private Change change(LessonBook.Item item, StatedFact given) {
    if (!item.field("stretch").isEmpty()) {
      return outline(item, given);
    }
    if (given.key().equals("levels.readings")) {
      return readings(item, given);
    }
    Dimension dimension = given.definition().dimension();
    if (dimension == null) {
      return null;
    }
    double step = base(item.field("step"), dimension);
    double within = base(item.field("within"), dimension) / step;
    double now = given.number();
    if (now < base(item.field("least"), dimension) || now > base(item.field("most"), dimension)) {
      return null;
    }
    int steps = 1 + random.nextInt(Math.max(1, (int) Math.floor(within + 1e-9)));
    double drawn = now + (random.nextBoolean() ? steps : -steps) * step;
    drawn = Math.rint(drawn / step) * step;
    drawn =
        Math.max(
            base(item.field("least"), dimension),
            Math.min(base(item.field("most"), dimension), drawn));
    if (Math.abs(drawn - now) < step / 2) {
      return null;
    }
    boolean metres = "m".equals(unit(given));
    String value = metres ? Texts.metres(drawn) : Texts.of(drawn, dimension.base());
    String also = item.field("also");
    if (!also.isEmpty()) {
      double other =
          assessment
              .scenario()
              .find(also, given.about())
              .map(StatedFact::number)
              .orElse(Double.NaN);
      also = other == now ? also : "";
    }
    String along = item.field("along");
    Optional<StatedFact> moved =
        assessment.scenario().find(along, given.about()).filter(StatedFact::known);
    if (moved.isPresent()) {
      String other = Texts.of(moved.get().number() + drawn - now, dimension.base());
      String both = told(given, value) + "; " + told(moved.get(), other);
      return new Change(given.key(), given.about(), value, along, other, both);
    }
    return new Change(given.key(), given.about(), value, also, value, told(given, value));
  }

  private static String told(StatedFact given, String value) {
    String name =
        given.about().isEmpty() ? given.called() : given.called() + " (" + given.about() + ")";
    return name + " " + value + " (was " + given.text() + ")";
  }

  private static String unit(StatedFact given) {
    String text = given.text();
    return text.substring(text.lastIndexOf(' ') + 1);
  }

  private static double base(String text, Dimension dimension) {
    try {
      return Quantity.parse(text, dimension).value();
    } catch (NotAQuantity e) {
      throw new IllegalStateException("a lesson's variation '" + text + "' " + e.getMessage(), e);
    }
  }

  private Change outline(LessonBook.Item item, StatedFact given) {
    double most = base(item.field("stretch"), Dimension.RATIO) / 100;
    double step = base(item.field("step"), Dimension.LENGTH);
    double along = 1 + most * (1 + random.nextInt(10)) / 10;
    double across = 1 + most * random.nextInt(11) / 10;
    StringBuilder text = new StringBuilder("[");
    for (Point point : assessment.scenario().outline()) {
      text.append(text.length() > 1 ? ", " : "")
          .append('[')
          .append(Texts.metres(Math.rint(point.x() * along / step) * step))
          .append(", ")
          .append(Texts.metres(Math.rint(point.y() * across / step) * step))
          .append(']');
    }
    return new Change(given.key(), "", text + "]", "", "", given.called());
  }

  private Change readings(LessonBook.Item item, StatedFact given) {
    double step = base(item.field("step"), Dimension.LENGTH);
    int within = (int) Math.round(base(item.field("within"), Dimension.LENGTH) / step);
    StringBuilder text = new StringBuilder("[");
    for (Reading reading : assessment.scenario().readings()) {
      double moved = reading.z() + (random.nextInt(2 * within + 1) - within) * step;
      text.append(text.length() > 1 ? ", " : "")
          .append('[')
          .append(reading.x() / MM_PER_M)
          .append(" m, ")
          .append(reading.y() / MM_PER_M)
          .append(" m, ")
          .append(moved)
          .append(" mm]");
    }
    return new Change(given.key(), "", text + "]", "", "", given.called());
  }
}
