package underfoot.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;
import static underfoot.working.Seeded.between;
import static underfoot.working.Seeded.seed;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Against an independent solution, seeded random input")
class IndependentChecksTest {

  @Test
  @DisplayName("the best plane is that of a general least-squares solver")
  void planeAgainstLinearAlgebra() {
    Random random = Seeded.random();
    for (int round = 0; round < Seeded.ROUNDS; round++) {
      int count = 3 + random.nextInt(40);
      double farX = between(random, -500, 500);
      List<Reading> readings = new ArrayList<>();
      RealMatrix matrix = new Array2DRowRealMatrix(count, 3);
      RealVector heights = new ArrayRealVector(count);
      for (int i = 0; i < count; i++) {
        Reading reading =
            new Reading(
                farX + between(random, 0, 8), between(random, -3, 3), between(random, -40, 40));
        readings.add(reading);
        matrix.setRow(i, new double[] {1, reading.xM() - farX, reading.yM()});
        heights.setEntry(i, reading.zMm());
      }
      RealVector solved = new SingularValueDecomposition(matrix).getSolver().solve(heights);
      RealVector residuals = heights.subtract(matrix.operate(solved));
      BestPlane.Values values = BestPlane.of(readings);
      assertThat(values.bMmPerM()).as(seed(round)).isCloseTo(solved.getEntry(1), offset(1e-6));
      assertThat(values.cMmPerM()).as(seed(round)).isCloseTo(solved.getEntry(2), offset(1e-6));
      assertThat(values.heightAt(farX, 0))
          .as(seed(round))
          .isCloseTo(solved.getEntry(0), offset(1e-6));
      assertThat(values.rmsMm())
          .as(seed(round))
          .isCloseTo(residuals.getNorm() / Math.sqrt(count), offset(1e-6));
      assertThat(values.highestMm())
          .as(seed(round))
          .isCloseTo(residuals.getMaxValue(), offset(1e-6));
      assertThat(values.lowestMm())
          .as(seed(round))
          .isCloseTo(residuals.getMinValue(), offset(1e-6));
    }
  }

  @Test
  @DisplayName("the levelling volume is that of many thin columns, along both diagonals")
  void volumeAgainstColumns() {
    Random random = Seeded.random();
    for (int round = 0; round < 12; round++) {
      int rows = 2 + random.nextInt(3);
      int columns = 2 + random.nextInt(3);
      double[][] grid = new double[rows][columns];
      for (double[] row : grid) {
        for (int j = 0; j < columns; j++) {
          row[j] = between(random, -10, 10);
        }
      }
      double dx = between(random, 0.3, 2);
      double dy = between(random, 0.3, 2);
      double datum = between(random, -4, 12);
      LevellingVolume.Values values = LevellingVolume.of(grid, dx, dy, datum);
      LevellingVolume.Fill a = columns(grid, dx, dy, datum, true);
      LevellingVolume.Fill b = columns(grid, dx, dy, datum, false);
      double whole = (rows - 1) * (columns - 1) * dx * dy;
      assertThat(values.a().volumeL()).as(seed(round)).isCloseTo(a.volumeL(), offset(5e-3 * whole));
      assertThat(values.b().volumeL()).as(seed(round)).isCloseTo(b.volumeL(), offset(5e-3 * whole));
      assertThat(values.a().areaM2()).as(seed(round)).isCloseTo(a.areaM2(), offset(5e-3 * whole));
      assertThat(values.b().areaM2()).as(seed(round)).isCloseTo(b.areaM2(), offset(5e-3 * whole));
      assertThat(values.volumeL())
          .as(seed(round))
          .isCloseTo((a.volumeL() + b.volumeL()) / 2, offset(5e-3 * whole));
    }
  }

  /** Thin columns over each cell; the height inside a triangle by interpolation between corners. */
  private static LevellingVolume.Fill columns(
      double[][] grid, double dx, double dy, double datum, boolean mainDiagonal) {
    int parts = 300;
    double volume = 0;
    double area = 0;
    double column = dx * dy / parts / parts;
    for (int i = 0; i + 1 < grid.length; i++) {
      for (int j = 0; j + 1 < grid[0].length; j++) {
        for (int p = 0; p < parts; p++) {
          for (int q = 0; q < parts; q++) {
            double u = (q + 0.5) / parts;
            double v = (p + 0.5) / parts;
            double depth =
                datum
                    - (mainDiagonal
                        ? main(grid, i, j, u, v)
                        : main(
                            new double[][] {
                              {grid[i][j + 1], grid[i][j]}, {grid[i + 1][j + 1], grid[i + 1][j]}
                            },
                            0,
                            0,
                            1 - u,
                            v));
            if (depth > 0) {
              volume += depth * column;
              area += column;
            }
          }
        }
      }
    }
    return new LevellingVolume.Fill(volume, area);
  }

  private static double main(double[][] grid, int i, int j, double u, double v) {
    double z00 = grid[i][j];
    double z11 = grid[i + 1][j + 1];
    return u >= v
        ? z00 + (u - v) * (grid[i][j + 1] - z00) + v * (z11 - z00)
        : z00 + (v - u) * (grid[i + 1][j] - z00) + u * (z11 - z00);
  }

  @Test
  @DisplayName("joist and deck deflections are those of a finite-difference beam")
  void beamAgainstFiniteDifferences() {
    Random random = Seeded.random();
    for (int round = 0; round < 10; round++) {
      double breadth = between(random, 35, 100);
      double depth = between(random, 90, 300);
      double modulus = between(random, 6000, 14_000);
      double centres = between(random, 300, 610);
      double load = between(random, 0.5, 5);
      double span = between(random, 1000, 6000);
      double expected =
          finiteDifferences(
              load * centres / 1000, span, modulus * breadth * depth * depth * depth / 12);
      assertThat(
              JoistDeflection.of(
                      breadth, depth, modulus, centres, load, span, OptionalDouble.empty())
                  .deflectionMm())
          .as(seed(round))
          .isCloseTo(expected, withinPercentage(0.02));
      double t1 = between(random, 12, 25);
      double t2 = between(random, 6, 18);
      double deck = (3000 * t1 * t1 * t1 + 6000 * t2 * t2 * t2) * 1000 / 12;
      assertThat(
              DeckDeflection.of(
                      List.of(
                          new DeckDeflection.Layer(t1, 3000), new DeckDeflection.Layer(t2, 6000)),
                      centres,
                      load)
                  .deflectionMm())
          .as(seed(round))
          .isCloseTo(finiteDifferences(load, centres, deck), withinPercentage(0.02));
    }
  }

  /** Solves M'' = -w and then y'' = -M/EI between simple supports, and gives y at mid-span. */
  private static double finiteDifferences(double load, double span, double stiffness) {
    int inner = 199;
    double step = span / (inner + 1);
    RealMatrix second = new Array2DRowRealMatrix(inner, inner);
    for (int i = 0; i < inner; i++) {
      second.setEntry(i, i, -2 / step / step);
      if (i > 0) {
        second.setEntry(i, i - 1, 1 / step / step);
        second.setEntry(i - 1, i, 1 / step / step);
      }
    }
    var solver = new LUDecomposition(second).getSolver();
    RealVector moment = solver.solve(new ArrayRealVector(inner, -load));
    return solver.solve(moment.mapMultiply(-1 / stiffness)).getEntry(inner / 2);
  }

  @Test
  @DisplayName("the joist span with shear is the root a general solver finds")
  void spanAgainstRootFinder() {
    Random random = Seeded.random();
    for (int round = 0; round < Seeded.ROUNDS; round++) {
      double breadth = between(random, 20, 100);
      double depth = between(random, 50, 500);
      double modulus = between(random, 3000, 16_000);
      double shear = between(random, 20, 900);
      double centres = between(random, 200, 800);
      double load = between(random, 0.3, 10);
      double limit = between(random, 100, 1000);
      OptionalDouble shearModulus = OptionalDouble.of(shear);
      double found =
          new BrentSolver(1e-9)
              .solve(
                  1000,
                  span ->
                      JoistDeflection.of(breadth, depth, modulus, centres, load, span, shearModulus)
                              .deflectionMm()
                          - span / limit,
                  1,
                  60_000);
      assertThat(JoistSpan.of(breadth, depth, modulus, centres, load, limit, shearModulus).spanMm())
          .as(seed(round))
          .isCloseTo(found, offset(1e-5 * found));
    }
  }

  @Test
  @DisplayName("the straightedge gap is that of all chords between all points in many places")
  void gapAgainstBruteForce() {
    Random random = Seeded.random();
    for (int round = 0; round < 40; round++) {
      int count = 2 + random.nextInt(12);
      double[] x = new double[count];
      double[] z = new double[count];
      double place = between(random, -500, 500);
      for (int i = 0; i < count; i++) {
        x[i] = place;
        z[i] = between(random, -8, 8);
        place += between(random, 20, 800);
      }
      double edge = between(random, 500, 3000);
      StraightedgeGap.Values values = StraightedgeGap.of(x, z, edge);
      double[] mirrored = new double[count];
      for (int i = 0; i < count; i++) {
        mirrored[i] = -z[i];
      }
      assertThat(values.gapMm()).as(seed(round)).isCloseTo(chords(x, z, edge), offset(0.01));
      assertThat(values.humpMm())
          .as(seed(round))
          .isCloseTo(chords(x, mirrored, edge), offset(0.01));
    }
  }

  private static double chords(double[] x, double[] z, double edge) {
    double last = x[x.length - 1];
    double most = 0;
    for (double start = x[0]; ; start += 0.5) {
      double from = Math.max(x[0], Math.min(start, last - edge));
      double to = Math.min(last, from + edge);
      List<double[]> points = new ArrayList<>();
      points.add(new double[] {from, interpolated(x, z, from)});
      for (int i = 0; i < x.length; i++) {
        if (x[i] > from && x[i] < to) {
          points.add(new double[] {x[i], z[i]});
        }
      }
      points.add(new double[] {to, interpolated(x, z, to)});
      for (double[] left : points) {
        for (double[] right : points) {
          for (double[] middle : points) {
            if (left[0] < middle[0] && middle[0] < right[0]) {
              double share = (middle[0] - left[0]) / (right[0] - left[0]);
              most = Math.max(most, left[1] + share * (right[1] - left[1]) - middle[1]);
            }
          }
        }
      }
      if (start >= last - edge) {
        return most;
      }
    }
  }

  private static double interpolated(double[] x, double[] z, double place) {
    for (int i = 1; i < x.length; i++) {
      if (place <= x[i]) {
        return z[i - 1] + (place - x[i - 1]) / (x[i] - x[i - 1]) * (z[i] - z[i - 1]);
      }
    }
    return z[z.length - 1];
  }

  @Test
  @DisplayName("the movement bays are the fewest of all ways to divide the floor")
  void baysAgainstAllWays() {
    Random random = Seeded.random();
    BayLimits heated = new BayLimits(8, OptionalDouble.of(40));
    BayLimits plain = new BayLimits(10, OptionalDouble.empty());
    for (int round = 0; round < Seeded.ROUNDS; round++) {
      double length = Math.round(between(random, 1, 60) * 2) / 2.0;
      double width = Math.round(between(random, 1, 60) * 2) / 2.0;
      for (BayLimits limits : List.of(heated, plain)) {
        long fewest = Long.MAX_VALUE;
        double squarest = 0;
        for (int along = 1; along <= 80; along++) {
          for (int across = 1; across <= 80; across++) {
            double a = length / along;
            double b = width / across;
            boolean fits =
                Math.max(a, b) <= limits.longestSideM() + 1e-9
                    && (limits.largestAreaM2().isEmpty()
                        || a * b <= limits.largestAreaM2().getAsDouble() + 1e-9);
            long bays = (long) along * across;
            double square = Math.min(a, b) / Math.max(a, b);
            if (fits && (bays < fewest || bays == fewest && square > squarest)) {
              fewest = bays;
              squarest = square;
            }
          }
        }
        MovementBays.Values values = MovementBays.of(length, width, limits);
        String told = seed(round) + ": " + length + " by " + width;
        assertThat(values.bays()).as(told).isEqualTo(fewest);
        assertThat(values.along() * values.across()).as(told).isEqualTo(fewest);
        double a = values.bayLengthM();
        double b = values.bayWidthM();
        assertThat(Math.min(a, b) / Math.max(a, b)).as(told).isCloseTo(squarest, offset(1e-6));
      }
    }
  }

  @Test
  @DisplayName("the end cuts are the largest of all numbers of whole tiles")
  void cutsAgainstAllNumbers() {
    Random random = Seeded.random();
    for (int round = 0; round < Seeded.ROUNDS; round++) {
      double tile = Math.round(between(random, 50, 1200));
      double joint = random.nextInt(11);
      double gap = random.nextInt(13);
      double run = 2 * gap + joint + 5 + Math.round(between(random, 0, 9000));
      double largest = 0;
      long whole = -1;
      for (int full = 0; full <= 300; full++) {
        double cut = (run - 2 * gap - full * tile - (full + 1) * joint) / 2;
        if (cut > largest && cut <= tile) {
          largest = cut;
          whole = full;
        }
      }
      Cuts.Values values = Cuts.of(run, tile, joint, gap);
      assertThat(values.cutMm()).as(seed(round)).isCloseTo(largest, offset(1e-9));
      assertThat(values.full()).as(seed(round)).isEqualTo(whole);
    }
  }

  @Test
  @DisplayName("the dew point is where saturated air holds what the air holds")
  void dewPointAgainstRootFinder() {
    Random random = Seeded.random();
    for (int round = 0; round < Seeded.ROUNDS; round++) {
      double air = between(random, -20, 45);
      double humidity = between(random, 5, 99.9);
      double held = humidity / 100 * saturated(air);
      double found = new BrentSolver(1e-10).solve(1000, point -> saturated(point) - held, -90, 60);
      assertThat(DewPoint.of(air, humidity)).as(seed(round)).isCloseTo(found, offset(1e-6));
    }
  }

  private static double saturated(double temperature) {
    return 6.112 * Math.exp(17.62 * temperature / (243.12 + temperature));
  }

  @Test
  @DisplayName("the heating programme is what a day-by-day diary of it shows")
  void programmeAgainstDiary() {
    Random random = Seeded.random();
    for (int round = 0; round < Seeded.ROUNDS; round++) {
      int start = random.nextInt(40);
      int from = 10 + random.nextInt(15);
      int to = from + random.nextInt(40);
      int step = 1 + random.nextInt(10);
      int hold = random.nextInt(8);
      int day = start;
      int temperature = from;
      while (temperature < to) {
        day++;
        temperature = Math.min(to, temperature + step);
      }
      HeatingProgramme.Values values = HeatingProgramme.of(start, from, to, step, hold);
      assertThat(values.atTopDay()).as(seed(round)).isEqualTo(day);
      day += hold;
      assertThat(values.coolFromDay()).as(seed(round)).isEqualTo(day);
      while (temperature > from) {
        day++;
        temperature = Math.max(from, temperature - step);
      }
      assertThat(values.doneDay()).as(seed(round)).isEqualTo(day);
    }
  }
}
