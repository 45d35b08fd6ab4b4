package underfoot.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import underfoot.plan.Advice;

/** One advice on floors that grow in one way: readings, corners, tiles. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 4)
@Measurement(iterations = 3, time = 3)
@Fork(1)
public class Growing {
  private static final double HALL_M = 9.9;

  /** A hall of ten metres by ten, with so many readings. */
  @State(Scope.Benchmark)
  public static class Readings {
    @Param({"10", "100", "1000", "10000"})
    int size;

    Shop shop;
    String text;

    /** Writes the floor. */
    @Setup
    public void write() {
      shop = new Shop();
      int across = (int) Math.ceil(Math.sqrt(size));
      List<String> readings = new ArrayList<>();
      for (int k = 0; k < size; k++) {
        double x = HALL_M * (k % across) / Math.max(1, across - 1);
        double y = HALL_M * (k / across) / Math.max(1, (size - 1) / across);
        double z = 4 * Math.sin(x / 0.8) + 3 * Math.cos(y / 0.5);
        readings.add(String.format(Locale.ROOT, "[%.3f m, %.3f m, %.1f mm]", x, y, z));
      }
      text = floor(square(HALL_M, HALL_M), readings, 600);
    }
  }

  /** A room whose wall goes in and out, with so many corners. */
  @State(Scope.Benchmark)
  public static class Corners {
    @Param({"4", "20", "100", "500"})
    int size;

    Shop shop;
    String text;

    /** Writes the floor. */
    @Setup
    public void write() {
      shop = new Shop();
      List<String> corners = new ArrayList<>(List.of("[0 m, 0 m]", "[20 m, 0 m]"));
      int steps = size / 2 - 1;
      for (int k = 0; k < steps; k++) {
        double out = k % 2 == 0 ? 5 : 4.7;
        corners.add(String.format(Locale.ROOT, "[%.4f m, %.1f m]", 20 - 20.0 * k / steps, out));
        corners.add(
            String.format(Locale.ROOT, "[%.4f m, %.1f m]", 20 - 20.0 * (k + 1) / steps, out));
      }
      text = floor(String.join(", ", corners), List.of(), 600);
    }
  }

  /** A room for so many tiles. */
  @State(Scope.Benchmark)
  public static class Tiles {
    @Param({"10", "100", "1000", "10000"})
    int size;

    Shop shop;
    String text;

    /** Writes the floor. */
    @Setup
    public void write() {
      shop = new Shop();
      double side = Math.sqrt(size * 0.2 * 0.2);
      text = floor(square(side * 1.25, side * 0.8), List.of(), 200);
    }
  }

  /** Readings. */
  @Benchmark
  public Advice readings(Readings floor) {
    return floor.shop.advice(floor.shop.read(floor.text), floor.shop.planner());
  }

  /** Corners. */
  @Benchmark
  public Advice corners(Corners floor) {
    return floor.shop.advice(floor.shop.read(floor.text), floor.shop.planner());
  }

  /** Tiles. */
  @Benchmark
  public Advice tiles(Tiles floor) {
    return floor.shop.advice(floor.shop.read(floor.text), floor.shop.planner());
  }

  private static String square(double x, double y) {
    return String.format(
        Locale.ROOT, "[0 m, 0 m], [%1$.3f m, 0 m], [%1$.3f m, %2$.3f m], [0 m, %2$.3f m]", x, y);
  }

  private static String floor(String outline, List<String> readings, int tileMm) {
    return "scenario: a floor that grows\npractice: uk\n"
        + "room: {use: living room, storey: ground floor, outline: ["
        + outline
        + "]}\n"
        + "subfloor: {deck: concrete slab, age: 5 years}\n"
        + (readings.isEmpty() ? "" : "levels: {readings: [" + String.join(", ", readings) + "]}\n")
        + "tile: {material: porcelain, length: "
        + tileMm
        + " mm, width: "
        + tileMm
        + " mm, thickness: 9 mm, pattern: grid}\n";
  }
}
