package underfoot.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import underfoot.scenario.Point;
import underfoot.scenario.Reading;
import underfoot.working.Fall;
import underfoot.working.StraightedgeGap;

/** Surfaces whose heights, gaps and volumes are known beforehand. */
class SurfaceTest {
  private static final List<Point> SQUARE =
      LevelSurveyTest.corners(0, 0, 4500, 0, 4500, 4500, 0, 4500);

  private static List<Reading> grid(int n, double step, DoubleBinaryOperator height) {
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        readings.add(new Reading(i * step, j * step, height.applyAsDouble(i * step, j * step)));
      }
    }
    return readings;
  }

  private static LevelSurvey survey(List<Point> outline, List<Reading> readings) {
    return LevelSurvey.of(outline, readings).orElseThrow();
  }

  // --- the surface of triangles

  @Test
  void a_surface_gives_back_a_plane_everywhere_on_it_and_nothing_beside_it() {
    TriangulatedSurface tin =
        TriangulatedSurface.of(
            List.of(
                new Coordinate(0, 0, 1),
                new Coordinate(2000, 0, 5),
                new Coordinate(2000, 1000, 8),
                new Coordinate(0, 1000, 4)));
    // 1 + 2 mm a metre along x and 3 along y.
    assertThat(tin.heightAt(500, 500)).isCloseTo(1 + 1 + 1.5, within(1e-9));
    assertThat(tin.heightAt(1900, 100)).isCloseTo(1 + 3.8 + 0.3, within(1e-9));
    assertThat(tin.heightAt(0, 0)).isCloseTo(1, within(1e-9));
    assertThat(tin.heightAt(2000, 1000)).isCloseTo(8, within(1e-9));
    assertThat(tin.heightAt(-1, 500)).isNaN();
    assertThat(tin.heightAt(2001, 500)).isNaN();
    assertThat(tin.heightAt(500, 1001)).isNaN();
    assertThat(tin.heightAt(500, -1)).isNaN();
    assertThat(tin.triangles()).hasSize(2);
    assertThat(tin.edges()).hasSize(5);
    double[] raised = {2, 6, 9, 5};
    assertThat(tin.with(raised).heightAt(500, 500)).isCloseTo(4.5, within(1e-9));
    assertThat(tin.heightAt(500, 500)).isCloseTo(3.5, within(1e-9));
  }

  @Test
  void readings_of_one_place_are_taken_at_their_mean_and_two_places_span_no_surface() {
    TriangulatedSurface tin =
        TriangulatedSurface.of(
            List.of(
                new Coordinate(0, 0, 2),
                new Coordinate(0, 0, 4),
                new Coordinate(1000, 0, 0),
                new Coordinate(0, 1000, 0)));
    assertThat(tin.vertices()).hasSize(3);
    assertThat(tin.heightAt(0, 0)).isCloseTo(3, within(1e-9));
    TriangulatedSurface line =
        TriangulatedSurface.of(List.of(new Coordinate(0, 0, 2), new Coordinate(1000, 0, 4)));
    assertThat(line.triangles()).isEmpty();
    assertThat(line.heightAt(500, 0)).isNaN();
  }

  @Test
  void the_part_of_a_surface_over_a_floor_has_its_area_and_its_heights() {
    TriangulatedSurface tin =
        TriangulatedSurface.of(
            List.of(
                new Coordinate(0, 0, 0),
                new Coordinate(4000, 0, 8),
                new Coordinate(4000, 4000, 8),
                new Coordinate(0, 4000, 0)));
    // An L: 3 m by 1 m and 1 m by 2 m more; 5 m2.
    Polygon floor =
        RoomShape.of(
                LevelSurveyTest.corners(
                    500, 500, 3500, 500, 3500, 1500, 1500, 1500, 1500, 3500, 500, 3500))
            .orElseThrow()
            .floor();
    double area = 0;
    double volume = 0;
    double highest = Double.NEGATIVE_INFINITY;
    for (SurfaceCut.Piece piece : SurfaceCut.of(tin, floor)) {
      area += piece.areaM2();
      double mean = 0;
      for (Coordinate corner : piece.corners()) {
        assertThat(corner.getZ()).isCloseTo(corner.x * 0.002, within(1e-6));
        mean += corner.getZ() / 3;
        highest = Math.max(highest, corner.getZ());
      }
      volume += piece.areaM2() * mean;
    }
    assertThat(area).isCloseTo(5, within(1e-9));
    // Means of 2 mm a metre: 3 m2 about x = 2 m, 2 m2 about x = 1 m.
    assertThat(volume).isCloseTo(3 * 4 + 2 * 2, within(1e-6));
    assertThat(highest).isCloseTo(7, within(1e-6));
    // A floor that holds the whole of it.
    double whole =
        SurfaceCut.of(
                tin,
                RoomShape.of(LevelSurveyTest.corners(-1, -1, 5000, -1, 5000, 5000, -1, 5000))
                    .orElseThrow()
                    .floor())
            .stream()
            .mapToDouble(SurfaceCut.Piece::areaM2)
            .sum();
    assertThat(whole).isCloseTo(16, within(1e-9));
  }

  @Test
  void the_highest_within_a_part_is_told_of_that_part_alone() {
    LevelSurvey survey = survey(SQUARE, grid(10, 500, (x, y) -> x / 1000));
    Polygon part =
        RoomShape.of(LevelSurveyTest.corners(1000, 1000, 2200, 1000, 2200, 2000, 1000, 2000))
            .orElseThrow()
            .floor();
    assertThat(survey.highestWithin(part)).isCloseTo(2.2, within(1e-9));
    Polygon elsewhere =
        RoomShape.of(LevelSurveyTest.corners(9000, 9000, 9900, 9000, 9900, 9900))
            .orElseThrow()
            .floor();
    assertThat(survey.highestWithin(elsewhere)).isNaN();
  }

  // --- surveys

  @Test
  void the_highest_and_the_lowest_reading_are_the_first_of_their_height() {
    LevelSurvey survey =
        survey(
            List.of(),
            List.of(
                new Reading(0, 0, 1),
                new Reading(1, 0, 5),
                new Reading(2, 9, 5),
                new Reading(3, 0, -2),
                new Reading(4, 0, -2)));
    assertThat(survey.highest().x()).isEqualTo(1);
    assertThat(survey.lowest().x()).isEqualTo(3);
    assertThat(survey.readings()).hasSize(5);
    assertThat(survey.room()).isEmpty();
    assertThat(LevelSurvey.of(List.of(), List.of(new Reading(0, 0, 1)))).isEmpty();
    assertThat(LevelSurvey.of(List.of(), List.of(new Reading(0, 0, 1), new Reading(1, 0, 1))))
        .isPresent();
  }

  @Test
  void the_floor_is_carried_on_level_to_corners_beyond_the_readings() {
    List<Reading> inner =
        List.of(
            new Reading(1000, 1000, 1),
            new Reading(3000, 1000, 2),
            new Reading(3000, 3000, 3),
            new Reading(1000, 3000, 4));
    LevelSurvey survey = survey(LevelSurveyTest.corners(0, 0, 4000, 0, 4000, 4000, 0, 4000), inner);
    assertThat(survey.measured().vertices()).hasSize(4);
    assertThat(survey.measured().heightAt(100, 100)).isNaN();
    assertThat(survey.floor().vertices()).hasSize(8);
    assertThat(survey.floor().heightAt(0, 0)).isCloseTo(1, within(1e-9));
    assertThat(survey.floor().heightAt(4000, 0)).isCloseTo(2, within(1e-9));
    assertThat(survey.floor().heightAt(4000, 4000)).isCloseTo(3, within(1e-9));
    assertThat(survey.floor().heightAt(0, 4000)).isCloseTo(4, within(1e-9));
    // Readings in the corners leave nothing to carry on.
    LevelSurvey full = survey(SQUARE, grid(10, 500, (x, y) -> 0));
    assertThat(full.floor()).isSameAs(full.measured());
  }

  @Test
  void a_pour_is_level_over_the_highest_reading_or_parallel_to_the_best_plane() {
    // 2 mm a metre along x, 1 along y, and a lump of 4 mm on one reading of a hundred.
    LevelSurvey survey =
        survey(
            SQUARE,
            grid(10, 500, (x, y) -> 2 * x / 1000 + y / 1000 + (x == 2000 && y == 2000 ? 4 : 0)));
    PourSurface level = survey.surface(true, 3).orElseThrow();
    assertThat(level.level()).isTrue();
    assertThat(level.datumMm()).isCloseTo(9 + 4.5 + 3, within(1e-9));
    assertThat(level.at(1234, 4321)).isEqualTo(level.datumMm());
    Pour pour = survey.pour(true, 3).orElseThrow();
    assertThat(pour.leastMm()).isCloseTo(3, within(1e-9));
    assertThat(pour.mostMm()).isCloseTo(16.5, within(1e-9));
    assertThat(pour.areaM2()).isCloseTo(20.25, within(1e-9));
    // The mean depth of the plane is 16.5 - 6.75; the lump of 4 mm is a pyramid on 6 triangles
    // of the grid, whose corners' mean is a third: 4/3 mm over 6 * 0.125 m2 = 1 L.
    assertThat(pour.volumeL()).isCloseTo(9.75 * 20.25 - 1, within(0.01));
    assertThat(pour.meanMm()).isCloseTo(pour.volumeL() / 20.25, within(1e-9));
    assertThat(pour.depthsMm()).hasSize(100);
    assertThat(pour.depthsMm().get(0)).isCloseTo(16.5, within(1e-9));
    Pour flat = survey.pour(false, 3).orElseThrow();
    assertThat(flat.surface().level()).isFalse();
    // Over the lump there are 3 mm, over the rest 3 + 4 less what the plane gives way.
    assertThat(flat.leastMm()).isCloseTo(3, within(1e-9));
    assertThat(flat.mostMm()).isBetween(6.9, 7.2);
    assertThat(flat.surface().at(1000, 0) - flat.surface().at(0, 0)).isCloseTo(2, within(0.05));
    assertThat(survey.pour(true, 3).orElseThrow()).isSameAs(pour);
  }

  @Test
  void levels_of_more_floors_than_are_kept_are_still_told_right() {
    Surveys surveys = new Surveys();
    for (int floor = 0; floor < 20; floor++) {
      String levels =
          "levels: {readings: [[0 m, 0 m, 0 mm], [3 m, 0 m, " + floor + " mm], [0 m, 3 m, 1 mm]]}";
      assertThat(surveys.of(Measured.scenario(levels)).orElseThrow().readings().get(1).z())
          .isEqualTo(floor);
    }
  }

  // --- the straightedge over many readings

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    // A trough of 5 mm along one row of a 0.5 m grid: an edge of 2 m across it sees all of it.
    "a row, 5",
    "a column, 5",
    // Along a diagonal an edge across meets the next readings 0.71 m away, and sees all of it too.
    "a diagonal, 5",
  })
  void a_trough_through_many_readings_is_seen_from_across(String which, double gap) {
    DoubleBinaryOperator height =
        switch (which) {
          case "a row" -> (x, y) -> y == 2000 ? -5 : 0;
          case "a column" -> (x, y) -> x == 2000 ? -5 : 0;
          default -> (x, y) -> x == y ? -5 : 0;
        };
    LevelSurvey survey = survey(SQUARE, grid(10, 500, height));
    Flatness found = survey.flatness(2000);
    assertThat(found.gapMm()).isCloseTo(gap, within(0.01));
    assertThat(found.linesTried()).isBetween(60, 8 * 60 + 12 * 60);
    Flatness.Line line = found.gap();
    Coordinate worst = line.at(line.values().atMm());
    assertThat(height.applyAsDouble(Math.rint(worst.x), Math.rint(worst.y))).isEqualTo(-5);
    assertThat(survey.measured().heightAt(worst.x, worst.y)).isCloseTo(-5, within(0.01));
  }

  @Test
  void one_reading_that_stands_out_of_many_is_found_above_and_below() {
    for (double lump : new double[] {6, -6}) {
      LevelSurvey survey =
          survey(SQUARE, grid(10, 500, (x, y) -> x == 2500 && y == 1500 ? lump : 0));
      Flatness found = survey.flatness(2000);
      if (lump > 0) {
        assertThat(found.humpMm()).isCloseTo(6, within(0.01));
        Coordinate top = found.hump().at(found.hump().values().humpAtMm());
        assertThat(top.x).isCloseTo(2500, within(0.01));
        assertThat(top.y).isCloseTo(1500, within(0.01));
      } else {
        assertThat(found.gapMm()).isCloseTo(6, within(0.01));
        Coordinate bottom = found.gap().at(found.gap().values().atMm());
        assertThat(bottom.x).isCloseTo(2500, within(0.01));
        assertThat(bottom.y).isCloseTo(1500, within(0.01));
        // Between the lowest point and the flat 0.5 m away nothing stands above an edge.
        assertThat(found.humpMm()).isLessThan(6);
      }
    }
  }

  @Test
  void turning_the_room_with_its_readings_changes_neither_gap_nor_volume() {
    Random random = new Random(11);
    for (int round = 0; round < 60; round++) {
      int n = round % 5 == 4 ? 9 : 2 + random.nextInt(5);
      double step = 300 + random.nextInt(500);
      double[] rows = random.doubles(n, -4, 4).toArray();
      double[] columns = random.doubles(n, -4, 4).toArray();
      // Without twist in any square of four, so that both ways of halving it are the same surface.
      List<Reading> readings =
          grid(
              n,
              step,
              (x, y) -> rows[(int) Math.rint(x / step)] + columns[(int) Math.rint(y / step)]);
      double along = (n - 1) * step;
      // A hair longer one way, so that the longer side is the same one whichever way it is turned.
      List<Point> room = LevelSurveyTest.corners(0, 0, along + 9, 0, along + 9, along, 0, along);
      double turn = random.nextDouble() * Math.PI;
      List<Point> turned = room.stream().map(p -> turn(p.x(), p.y(), turn)).toList();
      List<Reading> moved =
          readings.stream()
              .map(
                  r -> {
                    Point p = turn(r.x(), r.y(), turn);
                    return new Reading(p.x(), p.y(), r.z());
                  })
              .toList();
      LevelSurvey first = survey(room, readings);
      LevelSurvey second = survey(turned, moved);
      String as = "round " + round + ", " + n + " by " + n + " readings, turned by " + turn;
      assertThat(second.flatness(2000).gapMm())
          .as(as)
          .isCloseTo(first.flatness(2000).gapMm(), within(0.01));
      double volume = first.pour(true, 3).orElseThrow().volumeL();
      assertThat(second.pour(true, 3).orElseThrow().volumeL())
          .as(as)
          .isCloseTo(volume, within(0.1)); // the strip beyond the readings is spanned either way
      assertThat(second.pour(true, 3).orElseThrow().areaM2())
          .as(as)
          .isCloseTo(first.pour(true, 3).orElseThrow().areaM2(), within(1e-6));
    }
  }

  private static Point turn(double x, double y, double angle) {
    return new Point(
        x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle));
  }

  @Test
  void rows_of_many_readings_hold_no_more_than_the_search_finds_along_them() {
    Random random = new Random(5);
    List<Reading> readings = grid(10, 500, (x, y) -> random.nextInt(9));
    LevelSurvey survey = survey(SQUARE, readings);
    double found = survey.flatness(2000).gapMm();
    double hump = survey.flatness(2000).humpMm();
    for (int k = 0; k < 10; k++) {
      for (boolean along : new boolean[] {true, false}) {
        double line = k * 500;
        List<Reading> row = readings.stream().filter(r -> (along ? r.y() : r.x()) == line).toList();
        double[] places = row.stream().mapToDouble(r -> along ? r.x() : r.y()).toArray();
        double[] heights = row.stream().mapToDouble(Reading::z).toArray();
        StraightedgeGap.Values values = StraightedgeGap.of(places, heights, 2000);
        assertThat(found).isGreaterThanOrEqualTo(values.gapMm() - 0.01);
        assertThat(hump).isGreaterThanOrEqualTo(values.humpMm() - 0.01);
      }
    }
    // What is told of the worst line is what an edge along it finds.
    for (Flatness.Line line : List.of(survey.flatness(2000).gap(), survey.flatness(2000).hump())) {
      StraightedgeGap.Values again = StraightedgeGap.of(line.positions(), line.heights(), 2000);
      assertThat(line.values().gapMm()).isCloseTo(again.gapMm(), within(1e-9));
      for (int i = 0; i < line.positions().length; i++) {
        Coordinate place = line.at(line.positions()[i]);
        double fit = survey.plane().orElseThrow().heightAt(place.x / 1000, place.y / 1000);
        assertThat(survey.measured().heightAt(place.x, place.y) - fit)
            .isCloseTo(line.heights()[i], within(1e-4));
      }
    }
  }

  @Test
  void a_wall_between_many_readings_ends_the_edge() {
    // Two legs a metre apart, high at the outer walls: only through the gap is there a hollow.
    List<Point> outline =
        LevelSurveyTest.corners(
            0, 0, 3000, 0, 3000, 8000, 2000, 8000, 2000, 1000, 1000, 1000, 1000, 8000, 0, 8000);
    List<Reading> readings = new ArrayList<>();
    for (double y = 1200; y <= 8000; y += 400) {
      readings.add(new Reading(0, y, 8));
      readings.add(new Reading(1000, y, 0));
      readings.add(new Reading(2000, y, 0));
      readings.add(new Reading(3000, y, 8));
    }
    assertThat(readings).hasSizeGreaterThan(60);
    assertThat(survey(outline, readings).flatness(2000).gapMm()).isLessThan(0.01);
    assertThat(
            survey(LevelSurveyTest.corners(0, 0, 3000, 0, 3000, 8000, 0, 8000), readings)
                .flatness(2000)
                .gapMm())
        .isGreaterThan(3);
  }

  @Test
  void readings_all_on_one_line_are_searched_along_it_from_the_first_to_the_farthest() {
    // 3-4-5: places 0, 1000, 2000, 3000 along the line.
    List<Reading> readings =
        List.of(
            new Reading(0, 0, 0),
            new Reading(1200, 1600, -4),
            new Reading(600, 800, 0),
            new Reading(1800, 2400, 0));
    Flatness found = survey(List.of(), readings).flatness(2000);
    assertThat(found.gapMm()).isCloseTo(4, within(1e-9));
    Coordinate worst = found.gap().at(found.gap().values().atMm());
    assertThat(worst.x).isCloseTo(1200, within(1e-6));
    assertThat(worst.y).isCloseTo(1600, within(1e-6));
    assertThat(found.linesTried()).isEqualTo(1);
    Flatness none =
        survey(List.of(), List.of(new Reading(5, 5, 0), new Reading(5, 5, 3))).flatness(2000);
    assertThat(none.gap()).isNull();
    assertThat(none.gapMm()).isZero();
    assertThat(none.humpMm()).isZero();
  }

  @Test
  void a_long_profile_is_cut_into_stretches_and_the_worst_of_any_of_them_is_found() {
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i <= 40; i++) {
      double z = i == 33 ? -7 : i == 7 ? 6 : 0;
      readings.add(new Reading(i * 500, 0, z));
    }
    Flatness found = survey(List.of(), readings).flatness(2000);
    assertThat(found.gapMm()).isCloseTo(7, within(1e-9));
    assertThat(found.gap().at(found.gap().values().atMm()).x).isCloseTo(33 * 500, within(1e-6));
    // Beside the trough an edge held from its bottom rises to 0 two metres on: 5.25 mm, less than
    // 6.
    assertThat(found.humpMm()).isCloseTo(6, within(1e-9));
    assertThat(found.hump().at(found.hump().values().humpAtMm()).x)
        .isCloseTo(7 * 500, within(1e-6));
  }

  // --- shapes

  @Test
  void a_room_has_the_area_the_walls_and_the_sides_of_its_smallest_rectangle() {
    RoomShape room =
        RoomShape.of(LevelSurveyTest.corners(0, 0, 2000, 0, 2000, 5000, 0, 5000)).orElseThrow();
    assertThat(room.areaM2()).isCloseTo(10, within(1e-9));
    assertThat(room.perimeterMm()).isCloseTo(14_000, within(1e-9));
    assertThat(room.longestRunMm()).isCloseTo(5000, within(1e-6));
    assertThat(room.shortestRunMm()).isCloseTo(2000, within(1e-6));
    assertThat(Math.abs(Math.sin(room.direction()))).isCloseTo(1, within(1e-9));
    assertThat(RoomShape.of(LevelSurveyTest.corners(0, 0, 1, 1))).isEqualTo(Optional.empty());
    assertThat(RoomShape.of(LevelSurveyTest.corners(0, 0, 1, 0, 0, 1))).isPresent();
  }

  @Test
  void bays_that_hold_floor_are_counted_along_and_across() {
    // An L of 8 by 8 m with arms 2 m wide: of 4 by 4 bays of 2 m seven hold floor.
    RoomShape room =
        RoomShape.of(
                LevelSurveyTest.corners(0, 0, 8000, 0, 8000, 2000, 2000, 2000, 2000, 8000, 0, 8000))
            .orElseThrow();
    assertThat(room.baysWithFloor(4, 4)).isEqualTo(7);
    assertThat(room.baysWithFloor(2, 2)).isEqualTo(3);
    assertThat(room.baysWithFloor(1, 1)).isEqualTo(1);
    assertThat(room.baysWithFloor(4, 1)).isEqualTo(4);
  }

  @Test
  void water_runs_round_every_corner_that_stands_into_the_room() {
    // A U: from the end of one leg to the end of the other, round two corners.
    List<Point> corners =
        LevelSurveyTest.corners(
            0, 0, 3000, 0, 3000, 4000, 2000, 4000, 2000, 1000, 1000, 1000, 1000, 4000, 0, 4000);
    // From (0, 4000) to the turns at (1000, 1000), (2000, 1000), and on to (3000, 4000).
    double way = Math.hypot(1000, 3000) + 1000 + Math.hypot(1000, 3000);
    for (boolean turned : new boolean[] {false, true}) {
      List<Point> outline = new ArrayList<>(corners);
      if (turned) {
        java.util.Collections.reverse(outline);
      }
      RoomShape room = RoomShape.of(outline).orElseThrow();
      FallShape fall = FallShape.of(room, Fall.Drain.CORNER);
      // The corner from which the farthest corner is farthest as the crow flies: 5 m, (0, 0) and
      // its like. From (3000, 4000) the way goes round to (0, 4000), from (0, 0) to (3000, 4000).
      assertThat(fall.longestRunMm()).isBetween(3000 + 1000.0, way + 1);
      assertThat(FallShape.isRectangle(room)).isFalse();
      // The longest walls are the outer legs of 4 m; farthest is the other leg's end.
      FallShape along = FallShape.of(room, Fall.Drain.LONG_EDGE);
      assertThat(along.longestRunMm()).isCloseTo(1000 + 1000 + Math.hypot(1000, 3000), within(2.0));
      assertThat(along.shortestRunMm()).isCloseTo(1000, within(1.0));
    }
  }

  @Test
  void a_drain_in_the_middle_of_a_floor_that_goes_round_its_middle_lies_on_the_floor() {
    // The centroid of thin arms lies outside them.
    RoomShape arms =
        RoomShape.of(
                LevelSurveyTest.corners(0, 0, 6000, 0, 6000, 500, 500, 500, 500, 6000, 0, 6000))
            .orElseThrow();
    FallShape fall = FallShape.of(arms, Fall.Drain.CENTRE);
    assertThat(fall.shortestRunMm()).isLessThanOrEqualTo(500);
    assertThat(fall.longestRunMm()).isGreaterThan(5000);
    RoomShape square = RoomShape.of(SQUARE).orElseThrow();
    FallShape middle = FallShape.of(square, Fall.Drain.CENTRE);
    assertThat(middle.longestRunMm()).isCloseTo(Math.hypot(2250, 2250), within(1e-6));
    assertThat(middle.shortestRunMm()).isCloseTo(2250, within(1e-6));
  }

  @Test
  void a_round_room_is_taken_straight_across() {
    List<Point> circle = new ArrayList<>();
    for (int i = 0; i < 80; i++) {
      double angle = 2 * Math.PI * i / 80;
      circle.add(new Point(2000 * Math.cos(angle), 2000 * Math.sin(angle)));
    }
    FallShape fall = FallShape.of(RoomShape.of(circle).orElseThrow(), Fall.Drain.CENTRE);
    assertThat(fall.longestRunMm()).isCloseTo(2000, within(1e-6));
    assertThat(fall.shortestRunMm()).isCloseTo(2000 * Math.cos(Math.PI / 80), within(1e-6));
  }

  @Test
  void a_channel_along_the_shortest_wall_is_far_from_the_other_end() {
    // A room tapering from 3 m to 2 m over 5 m, square at one side.
    RoomShape room =
        RoomShape.of(LevelSurveyTest.corners(0, 0, 5000, 0, 5000, 2000, 0, 3000)).orElseThrow();
    FallShape fall = FallShape.of(room, Fall.Drain.SHORT_EDGE);
    assertThat(fall.longestRunMm()).isCloseTo(Math.hypot(5000, 1000), within(1.0));
  }
}
