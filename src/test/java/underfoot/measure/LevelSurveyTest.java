package underfoot.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import underfoot.scenario.Point;
import underfoot.scenario.Reading;
import underfoot.working.StraightedgeGap;

/** The levels of rooms of any shape, against brute force and by what must not change. */
class LevelSurveyTest {
  private static final double EDGE = 2000;

  /** Five by five metres less a corner, with a chimney breast in one leg. */
  private static final List<Point> L_WITH_BREAST =
      corners(
          0, 0, 5000, 0, 5000, 2000, 2000, 2000, 2000, 3000, 1600, 3000, 1600, 4000, 2000, 4000,
          2000, 5000, 0, 5000);

  static List<Point> corners(double... xy) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      corners.add(new Point(xy[i], xy[i + 1]));
    }
    return corners;
  }

  private static Random seeded(long seed) {
    return new Random(seed);
  }

  private static List<Reading> scattered(Random random, List<Point> outline, int count) {
    Polygon floor = RoomShape.of(outline).orElseThrow().floor();
    GeometryFactory shapes = new GeometryFactory();
    List<Reading> readings = new ArrayList<>();
    while (readings.size() < count) {
      double x = random.nextDouble() * 5000;
      double y = random.nextDouble() * 5000;
      if (floor.contains(shapes.createPoint(new Coordinate(x, y)))) {
        readings.add(new Reading(x, y, random.nextGaussian() * 4));
      }
    }
    return readings;
  }

  private static LevelSurvey survey(List<Point> outline, List<Reading> readings) {
    return LevelSurvey.of(outline, readings).orElseThrow();
  }

  /** Lines through many places in many directions, profiles sampled each 5 mm, inside the room. */
  private static double bruteGap(
      LevelSurvey survey, List<Point> outline, int directions, int rows) {
    Polygon floor = RoomShape.of(outline).orElseThrow().floor();
    GeometryFactory shapes = new GeometryFactory();
    double worst = 0;
    for (int k = 0; k < directions; k++) {
      double angle = Math.PI * k / directions;
      double ux = Math.cos(angle);
      double uy = Math.sin(angle);
      for (int row = 0; row <= rows; row++) {
        double off = -5000 + 10_000.0 * row / rows;
        List<Double> places = new ArrayList<>();
        List<Double> heights = new ArrayList<>();
        for (double s = -8000; s <= 8000; s += 25) {
          double x = 2500 + s * ux - off * uy;
          double y = 2500 + s * uy + off * ux;
          double z = survey.measured().heightAt(x, y);
          boolean on = !Double.isNaN(z) && floor.covers(shapes.createPoint(new Coordinate(x, y)));
          if (on) {
            places.add(s);
            heights.add(z);
          }
          if ((!on || s + 25 > 8000) && places.size() > 1) {
            worst =
                Math.max(
                    worst,
                    StraightedgeGap.of(
                            places.stream().mapToDouble(d -> d).toArray(),
                            heights.stream().mapToDouble(d -> d).toArray(),
                            EDGE)
                        .gapMm());
          }
          if (!on) {
            places.clear();
            heights.clear();
          }
        }
      }
    }
    return worst;
  }

  @Tag("slow")
  @Test
  @DisplayName(
      "The search finds at least what laying the edge everywhere finds, in an L with a breast")
  void againstBruteForce() {
    for (long seed = 1; seed <= 3; seed++) {
      List<Reading> readings = scattered(seeded(seed), L_WITH_BREAST, 25);
      LevelSurvey survey = survey(L_WITH_BREAST, readings);
      double found = survey.flatness(EDGE).gapMm();
      double brute = bruteGap(survey, L_WITH_BREAST, 16, 40);
      assertThat(found).as("seed %d", seed).isGreaterThan(0.98 * brute);
    }
  }

  @Test
  @DisplayName("Tilting the floor leaves gap, hump and a flat pour as they were")
  void tilting() {
    for (long seed = 1; seed <= 10; seed++) {
      Random random = seeded(seed);
      List<Reading> flat = scattered(random, L_WITH_BREAST, 8 + random.nextInt(80));
      double b = random.nextGaussian() * 10;
      double c = random.nextGaussian() * 10;
      List<Reading> tilted = new ArrayList<>();
      for (Reading one : flat) {
        tilted.add(
            new Reading(one.x(), one.y(), one.z() + b * one.x() / 1000 + c * one.y() / 1000 + 30));
      }
      LevelSurvey before = survey(L_WITH_BREAST, flat);
      LevelSurvey after = survey(L_WITH_BREAST, tilted);
      assertThat(after.flatness(EDGE).gapMm())
          .as("seed %d", seed)
          .isCloseTo(before.flatness(EDGE).gapMm(), within(1e-6));
      assertThat(after.flatness(EDGE).humpMm())
          .as("seed %d", seed)
          .isCloseTo(before.flatness(EDGE).humpMm(), within(1e-6));
      Pour first = before.pour(false, 3).orElseThrow();
      Pour second = after.pour(false, 3).orElseThrow();
      assertThat(second.volumeL()).as("seed %d", seed).isCloseTo(first.volumeL(), within(1e-6));
      assertThat(second.mostMm()).as("seed %d", seed).isCloseTo(first.mostMm(), within(1e-6));
    }
  }

  @Test
  @DisplayName("Moving the datum changes no gap, no depth and no volume")
  void movingTheDatum() {
    for (long seed = 1; seed <= 10; seed++) {
      List<Reading> readings = scattered(seeded(seed), L_WITH_BREAST, 20);
      List<Reading> moved =
          readings.stream().map(r -> new Reading(r.x(), r.y(), r.z() - 850)).toList();
      for (boolean level : new boolean[] {true, false}) {
        Pour first = survey(L_WITH_BREAST, readings).pour(level, 3).orElseThrow();
        Pour second = survey(L_WITH_BREAST, moved).pour(level, 3).orElseThrow();
        assertThat(second.volumeL()).isCloseTo(first.volumeL(), within(1e-6));
        assertThat(second.meanMm()).isCloseTo(first.meanMm(), within(1e-9));
        assertThat(second.surface().datumMm())
            .isCloseTo(first.surface().datumMm() - 850, within(1e-6));
      }
      assertThat(survey(L_WITH_BREAST, moved).flatness(EDGE).gapMm())
          .isCloseTo(survey(L_WITH_BREAST, readings).flatness(EDGE).gapMm(), within(1e-6));
    }
  }

  @Test
  @DisplayName("A wall between two hollows ends the straightedge: the edge never lies through it")
  void throughTheWall() {
    // A U of two legs a metre apart: high at the outer walls, low at the inner ones. Only an edge
    // laid through the gap between the legs would see a hollow.
    List<Point> outline =
        corners(0, 0, 3000, 0, 3000, 4000, 2000, 4000, 2000, 1000, 1000, 1000, 1000, 4000, 0, 4000);
    List<Reading> readings = new ArrayList<>();
    for (double y = 1200; y <= 4000; y += 700) {
      readings.add(new Reading(0, y, 8));
      readings.add(new Reading(1000, y, 0));
      readings.add(new Reading(2000, y, 0));
      readings.add(new Reading(3000, y, 8));
    }
    double walled = survey(outline, readings).flatness(EDGE).gapMm();
    double open =
        survey(corners(0, 0, 3000, 0, 3000, 4000, 0, 4000), readings).flatness(EDGE).gapMm();
    assertThat(walled).isLessThan(0.01);
    assertThat(open).isGreaterThan(3);
  }

  @Test
  @DisplayName("Readings on the walls count, even a little outside them")
  void onTheWalls() {
    List<Point> outline = corners(0, 0, 3000, 0, 3000, 1000, 0, 1000);
    List<Reading> readings = new ArrayList<>();
    for (double y : new double[] {-30, 1030}) {
      readings.add(new Reading(0, y, 0));
      readings.add(new Reading(1500, y, -6));
      readings.add(new Reading(3000, y, 0));
    }
    assertThat(survey(outline, readings).flatness(EDGE).gapMm()).isGreaterThanOrEqualTo(4 - 1e-9);
  }

  @Test
  @DisplayName("Readings on one line tell the gap along it, and no pour is drawn from them")
  void oneLine() {
    List<Reading> readings =
        List.of(new Reading(0, 0, 0), new Reading(1500, 1500, -6), new Reading(3000, 3000, 0));
    LevelSurvey survey = survey(List.of(), readings);
    double half = 1000 / Math.hypot(1500, 1500) * 6;
    assertThat(survey.flatness(EDGE).gapMm()).isCloseTo(half, within(0.03));
    assertThat(survey.pour(true, 3)).isEmpty();
  }

  @Test
  @DisplayName("Volume in the L is depth by area where the floor is flat, whatever the readings")
  void volumeOfFlatFloor() {
    for (long seed = 1; seed <= 5; seed++) {
      List<Reading> flat =
          scattered(seeded(seed), L_WITH_BREAST, 15).stream()
              .map(r -> new Reading(r.x(), r.y(), 2))
              .toList();
      for (boolean level : new boolean[] {true, false}) {
        Pour pour = survey(L_WITH_BREAST, flat).pour(level, 4).orElseThrow();
        assertThat(pour.volumeL()).as("seed %d", seed).isCloseTo(4 * 15.6, within(1e-6));
        assertThat(pour.areaM2()).isCloseTo(15.6, within(1e-9));
        assertThat(pour.depthsMm()).allSatisfy(d -> assertThat(d).isCloseTo(4, within(1e-9)));
      }
    }
  }

  @Test
  @DisplayName("A pour covers every reading by the least and touches it at the highest")
  void coversEverything() {
    for (long seed = 1; seed <= 10; seed++) {
      LevelSurvey survey = survey(L_WITH_BREAST, scattered(seeded(seed), L_WITH_BREAST, 30));
      for (boolean level : new boolean[] {true, false}) {
        Pour pour = survey.pour(level, 3).orElseThrow();
        assertThat(pour.depthsMm().stream().mapToDouble(d -> d).min().orElseThrow())
            .as("seed %d", seed)
            .isCloseTo(3, within(1e-6));
        assertThat(pour.leastMm()).isCloseTo(3, within(1e-6));
        assertThat(pour.meanMm()).isBetween(pour.leastMm(), pour.mostMm());
      }
    }
  }

  @Tag("slow")
  @Test
  @DisplayName("Ten thousand readings are searched in seconds, and a hollow among them is found")
  void manyReadings() {
    List<Reading> readings = new ArrayList<>();
    Random random = seeded(7);
    for (int i = 0; i < 100; i++) {
      for (int j = 0; j < 100; j++) {
        double x = i * 200 + random.nextDouble() * 50;
        double y = j * 200 + random.nextDouble() * 50;
        double away = Math.hypot(x - 7300, y - 12_100);
        readings.add(new Reading(x, y, away < 800 ? -9 * (1 - away / 800) : 0));
      }
    }
    long start = System.nanoTime();
    Flatness flatness = survey(List.of(), readings).flatness(EDGE);
    double seconds = (System.nanoTime() - start) / 1e9;
    assertThat(flatness.gapMm()).isBetween(7.5, 9.0);
    assertThat(seconds).isLessThan(20);
  }
}
