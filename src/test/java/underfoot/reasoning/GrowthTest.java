package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import underfoot.knowledge.Phrases;
import underfoot.plan.Advice;
import underfoot.plan.AdviceMaker;
import underfoot.plan.Justifier;
import underfoot.plan.LastReading;
import underfoot.plan.Planner;
import underfoot.report.Detail;
import underfoot.report.JsonReport;
import underfoot.report.MadeBy;
import underfoot.report.TextPage;
import underfoot.report.TextReport;
import underfoot.report.html.HtmlReport;
import underfoot.scenario.Scenario;

/**
 * What one advice takes grows no faster than what the floor holds. Work is counted, not timed: in
 * bytes that the thinking thread asks for, which are the same on every machine, and in characters
 * of the answer written whole, which hold each reason.
 */
class GrowthTest {
  private static final double MOST = 1.2;

  /** What may come and go with the place at which a search ends, as a share of all. */
  private static final double LOOSE = 0.1;

  /** What there may be many of, how many, and how a floor has them. */
  enum Many {
    DOORS(100, n -> floor(hall(60, 40) + doors(n), "concrete slab", "", "")),
    ITEMS(100, n -> floor(hall(60, 40) + items(n), "tongue-and-groove boards", joists(""), "")),
    CUTS(100, n -> floor(hall(6, 4), "tongue-and-groove boards", joists(cuts(n)), "")),
    CORNERS(240, n -> floor("  outline: " + comb(n) + "\n", "concrete slab", "", "")),
    READINGS(5000, n -> floor(hall(60, 40), "concrete slab", "", readings(n))),
    TILES(20, n -> floor(hall(n, 10), "concrete slab", "", "")),
    ZONES(14, n -> floor(hall(60, 40), "chipboard", "", zones(n)));

    private final int few;
    private final IntFunction<String> floor;

    Many(int few, IntFunction<String> floor) {
      this.few = few;
      this.floor = floor;
    }
  }

  /** Counts what is written and keeps nothing, so that no buffer of the test is counted as work. */
  private static final class Counted extends Writer {
    private long characters;

    @Override
    public void write(char[] text, int from, int length) {
      characters += length;
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}
  }

  /** What an answer took. */
  private record Took(double bytes, double json, double text, double html) {}

  @ParameterizedTest
  @EnumSource(Many.class)
  void twice_as_much_more_takes_hardly_more_than_twice_the_work(Many many) throws Exception {
    took(many, 1); // what is loaded and remembered once is not counted
    Took half = took(many, many.few / 2);
    Took few = took(many, many.few);
    Took twice = took(many, 2 * many.few);
    grows("work", half.bytes(), few.bytes(), twice.bytes());
    grows("JSON", half.json(), few.json(), twice.json());
    grows("text", half.text(), few.text(), twice.text());
    grows("page", half.html(), few.html(), twice.html());
  }

  /**
   * By all that it takes; and, so that what any floor takes is left out, by what is added: from
   * half to few, and then from few to twice as many.
   */
  private static void grows(String what, double half, double few, double twice) {
    assertThat(Math.log(twice / few) / Math.log(2))
        .as("all of the %s: %s, %s", what, few, twice)
        .isLessThan(MOST);
    double most = Math.pow(2, MOST) * Math.max(0, few - half) + LOOSE * twice;
    assertThat(twice - few).as("%s: %s, %s, %s", what, half, few, twice).isLessThan(most);
  }

  private static Took took(Many many, int count) throws Exception {
    byte[] text = many.floor.apply(count).getBytes(StandardCharsets.UTF_8);
    Advisor shipped = Floors.advisor();
    Planner planner = new Planner(shipped.knowledge().prices());
    Advisor advisor = new Advisor(shipped.rules(), shipped.knowledge(), planner).onOneCore();
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = threads.getThreadAllocatedBytes(Thread.currentThread().getId());
    Scenario scenario = Floors.reader().read(many.name(), text);
    Assessment assessment = advisor.advise(scenario);
    Advice advice =
        AdviceMaker.make(
            assessment,
            WhatIf.assumed(assessment),
            planner.of(assessment, new Justifier(scenario, assessment.knowledge())));
    Counted answer = new Counted();
    JsonReport.line(new JsonReport.Origin("", "", ""), advice, new MadeBy("", "", ""), answer);
    LastReading.kept(advice, assessment);
    TextPage page = new TextPage(80, false);
    Phrases phrases = new Phrases(assessment.knowledge().wording());
    TextReport.write(advice, phrases, Detail.FULL, page);
    long after = threads.getThreadAllocatedBytes(Thread.currentThread().getId());
    MadeBy nobody = new MadeBy("", "", "");
    int html = HtmlReport.of(advice, phrases, nobody, HtmlReport.Medium.SCREEN).length();
    return new Took(after - before, answer.characters, page.text().length(), html);
  }

  private static String floor(String room, String deck, String joists, String more) {
    String zones = more.startsWith("zones") ? more : "";
    return """
        scenario: Much of one thing
        practice: uk
        building: {built: 2020}
        subfloor:
          deck: %s
        %s
        tile: {material: ceramic, length: 300 mm, width: 300 mm, pattern: diagonal}
        room:
          use: hall
        %s%s%s"""
        .formatted(deck, joists, room, zones.isEmpty() ? more : "", zones);
  }

  private static String hall(int length, int width) {
    return "  outline: [[0 m, 0 m], [%d m, 0 m], [%d m, %d m], [0 m, %d m]]\n"
        .formatted(length, length, width, width);
  }

  private static String each(int count, IntFunction<String> one) {
    return IntStream.range(0, count).mapToObj(one).collect(Collectors.joining(", ", "[", "]"));
  }

  private static String doors(int count) {
    return "  doors: "
        + each(
            count,
            i ->
                "{name: door %d, wall: %d, from: %.1f m, width: 400 mm, gap under leaf: %d mm}"
                    .formatted(i, i % 2 * 2, 0.1 + 0.55 * (i / 2), 9 + i % 7))
        + "\n";
  }

  private static String items(int count) {
    return "  heavy items: "
        + each(
            count,
            i ->
                "{name: thing %d, kind: bath, mass: %d kg, feet: 4, at: [[%d.1 m, %d.1 m], [%d.8 m, %d.8 m]]}"
                    .formatted(
                        i, 100 + i % 9, 3 * (i % 20), 4 * (i / 20), 3 * (i % 20) + 1, 4 * (i / 20)))
        + "\n";
  }

  private static String joists(String cuts) {
    return "  joists: {breadth: 50 mm, depth: 150 mm, grade: C16, centres: 400 mm, clear span: 2.9 m,"
        + " direction: along y%s}".formatted(cuts);
  }

  private static String cuts(int count) {
    return ", notches: "
        + each(
            count,
            i ->
                "{name: notch %d, depth: %d mm, from support: %d mm, joist: j%d}"
                    .formatted(i, 5 + i % 10, 10 * (i % 25) + 50, i % 7))
        + ", holes: "
        + each(
            count,
            i ->
                "{name: hole %d, diameter: %d mm, from support: %d mm, joist: j%d}"
                    .formatted(i, 12 + i % 10, 9 * (i % 25) + 50, i % 7));
  }

  /** A room like a comb, with so many corners. */
  private static String comb(int corners) {
    int teeth = Math.max(1, corners / 4);
    StringBuilder outline = new StringBuilder("[[0 m, 0 m], [%.1f m, 0 m]".formatted(teeth - 0.5));
    for (int i = 0; i < teeth; i++) {
      double right = teeth - 0.5 - i;
      double depth = 4 - 0.01 * (i % 17);
      outline.append(corner(right, depth)).append(corner(right - 0.5, depth));
      if (i < teeth - 1) {
        double gap = 1 + 0.007 * (i % 13);
        outline.append(corner(right - 0.5, gap)).append(corner(right - 1, gap));
      }
    }
    return outline.append(']').toString();
  }

  private static String corner(double x, double y) {
    return String.format(Locale.ROOT, ", [%.3f m, %.3f m]", x, y);
  }

  private static String readings(int count) {
    Random random = new Random(1);
    return "levels: {readings: "
        + each(
            count,
            i ->
                String.format(
                    Locale.ROOT,
                    "[%.3f m, %.3f m, %d mm]",
                    random.nextDouble() * 60,
                    random.nextDouble() * 40,
                    random.nextInt(19) - 9))
        + "}\n";
  }

  private static String zones(int count) {
    List<String> decks = List.of("concrete slab", "plywood", "chipboard");
    return "zones: "
        + each(
            count,
            i ->
                "{name: part %d, deck: %s, surface: %d mm, outline: [[%d m, %d m], [%d m, %d m], [%d m, %d m]]}"
                    .formatted(
                        i,
                        decks.get(i % 3),
                        i % 5,
                        3 * (i % 20),
                        4 * (i / 20),
                        3 * (i % 20) + 2,
                        4 * (i / 20),
                        3 * (i % 20) + 2,
                        4 * (i / 20) + 3))
        + "\n";
  }
}
