package underfoot.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.Workings;

/** The formulas called straight, at the very ends of what they take. */
@DisplayName("A formula")
class BoundsTest {
  private static final double[][] FLAT = {{0, 0}, {0, 0}};

  @Test
  @DisplayName("takes air from the least to the greatest of its range, and nothing beyond")
  void air() {
    // At saturation the dew point is the temperature of the air itself.
    assertThat(DewPoint.of(100, 100)).isCloseTo(100, within(1e-9));
    assertThat(DewPoint.of(-59.9, 100)).isCloseTo(-59.9, within(1e-9));
    assertThatIllegalArgumentException().isThrownBy(() -> DewPoint.of(-60, 50));
    assertThatIllegalArgumentException().isThrownBy(() -> DewPoint.of(100.1, 50));
    assertThatIllegalArgumentException().isThrownBy(() -> DewPoint.of(20, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> DewPoint.of(20, 100.1));

    assertThat(WoodMoisture.of(-1.1, 0)).isZero();
    assertThat(WoodMoisture.of(132.2, 0)).isZero();
    assertThat(WoodMoisture.of(20, 100)).isBetween(25.0, 35.0);
    assertThatIllegalArgumentException().isThrownBy(() -> WoodMoisture.of(-1.2, 50));
    assertThatIllegalArgumentException().isThrownBy(() -> WoodMoisture.of(132.3, 50));
    assertThatIllegalArgumentException().isThrownBy(() -> WoodMoisture.of(20, -0.1));
    assertThatIllegalArgumentException().isThrownBy(() -> WoodMoisture.of(20, 100.1));
  }

  @Test
  @DisplayName("takes a trowel from flat on the floor, not quite, to upright")
  void trowel() {
    // Upright, the ridge is as high as the notch, and half of it is there: 10/2 = 5 mm.
    assertThat(Adhesive.of(10, 90, 1).bedMm()).isCloseTo(5, within(1e-12));
    assertThatIllegalArgumentException().isThrownBy(() -> Adhesive.of(10, 90.1, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> Adhesive.of(10, 0, 1));
  }

  @Test
  @DisplayName("of a straightedge refuses a profile that is no profile")
  void profiles() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> StraightedgeGap.of(new double[] {0}, new double[] {0}, 2000));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> StraightedgeGap.of(new double[] {0, 9}, new double[] {0}, 2000));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> StraightedgeGap.of(new double[] {0, 0}, new double[] {0, 1}, 2000))
        .withMessageContaining("must rise");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> StraightedgeGap.of(new double[] {0, 9}, new double[] {0, 1}, 0))
        .withMessageContaining("edge");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> StraightedgeGap.of(new double[] {0, 1.1e8}, new double[] {0, 1}, 2000))
        .withMessageContaining("too long");
    // A profile that begins far off is no longer than its length.
    assertThat(StraightedgeGap.of(new double[] {9e7, 9.1e7}, new double[] {0, 1}, 1e6).gapMm())
        .isZero();
    assertThat(Workings.standard().named("straightedge-gap").keys())
        .anySatisfy(key -> assertThat(key.explanation()).contains("2 m if left out"));
  }

  @Test
  @DisplayName("of a grid refuses one that is too small, ragged or not of numbers")
  void grids() {
    assertThat(LevellingVolume.of(FLAT, 1, 1, 3).volumeL()).isCloseTo(3, within(1e-12));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LevellingVolume.of(new double[][] {{0, 0}}, 1, 1, 3));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LevellingVolume.of(new double[][] {{0}, {0}}, 1, 1, 3));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LevellingVolume.of(new double[][] {{0, 0}, {0}}, 1, 1, 3));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LevellingVolume.of(new double[][] {{0, 0}, {0, Double.NaN}}, 1, 1, 3));
  }

  @Test
  @DisplayName("of shear refuses a shear modulus that is not above nought")
  void shear() {
    OptionalDouble nought = OptionalDouble.of(0);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> JoistDeflection.of(47, 195, 8000, 400, 1.5, 4000, nought))
        .withMessageContaining("shear modulus");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> JoistSpan.of(47, 195, 8000, 400, 1.5, 360, nought))
        .withMessageContaining("shear modulus");
  }

  @Test
  @DisplayName("of bays takes the fewest that keep the limits, and of those the squarest")
  void squareBays() {
    Random random = Seeded.random();
    for (int round = 0; round < Seeded.ROUNDS; round++) {
      double length = 0.5 + random.nextInt(60) / 2.0;
      double width = 0.5 + random.nextInt(60) / 2.0;
      BayLimits limits =
          new BayLimits(
              8,
              random.nextBoolean()
                  ? OptionalDouble.of(20 + random.nextInt(21))
                  : OptionalDouble.empty());
      long fewest = Long.MAX_VALUE;
      double squarest = 0;
      for (int along = 1; along <= 100; along++) {
        for (int across = 1; across <= 100; across++) {
          double a = length / along;
          double b = width / across;
          boolean keeps =
              Math.max(a, b) <= 8 + 1e-9 && a * b <= limits.largestAreaM2().orElse(64) + 1e-9;
          double square = Math.min(a, b) / Math.max(a, b);
          if (keeps && along * across < fewest) {
            fewest = along * across;
            squarest = square;
          } else if (keeps && along * across == fewest) {
            squarest = Math.max(squarest, square);
          }
        }
      }
      MovementBays.Values found = MovementBays.of(length, width, limits);
      String as = Seeded.seed(round) + ", " + length + " by " + width + " m, " + limits;
      assertThat(found.bays()).as(as).isEqualTo(fewest).isEqualTo(found.along() * found.across());
      double a = found.bayLengthM();
      double b = found.bayWidthM();
      assertThat(Math.min(a, b) / Math.max(a, b)).as(as).isCloseTo(squarest, within(1e-9));
      assertThat(a * found.along()).as(as).isCloseTo(length, within(1e-9));
      assertThat(b * found.across()).as(as).isCloseTo(width, within(1e-9));
    }
    assertThatIllegalArgumentException().isThrownBy(() -> new BayLimits(8, OptionalDouble.of(0)));
  }

  @Test
  @DisplayName("of drying counts the first depth at its own rate")
  void drying() {
    // 40 mm at 1.5 days a mm and 20 mm more at 3: 60 + 60.
    assertThat(DryingTime.of(60, new DryingRates(40, 1.5, 3))).isCloseTo(120, within(1e-12));
    assertThat(DryingTime.of(30, new DryingRates(40, 1.5, 3))).isCloseTo(45, within(1e-12));
  }

  @Test
  @DisplayName("of long-term bending takes any share of the load from none to all of it")
  void shares() {
    // 2 mm dead and 3 mm imposed, creep 0.5: dead 3; imposed 3 for none, 4.5 for all of it.
    assertThat(LongTermDeflection.of(2, 3, 0.5, 0)).isCloseTo(6, within(1e-12));
    assertThat(LongTermDeflection.of(2, 3, 0.5, 1)).isCloseTo(7.5, within(1e-12));
    assertThatIllegalArgumentException().isThrownBy(() -> LongTermDeflection.of(2, 3, 0.5, 1.1));
  }

  @Test
  @DisplayName("of a heated screed refuses a space below that heats the room alone")
  void warmBelow() {
    // Ro = 1/10.8; down = (Ro*10.8 + 20 - below)/1 = 21 - below: at 31.8 C all 10.8 W come from it.
    assertThatIllegalArgumentException().isThrownBy(() -> HeatSplit.of(10.8, 20, 31.9, 0, 0, 1, 1));
    assertThat(HeatSplit.of(10.8, 20, 31.7, 0, 0, 1, 1).upShare()).isGreaterThan(1);
    assertThat(HeatSplit.of(10.8, 20, 20, 0, 0, 1, 1).upShare())
        .isCloseTo(10.8 / 11.8, within(1e-9));
  }

  @Test
  @DisplayName("of evaporation bands refuses steps that do not rise")
  void bands() {
    assertThatIllegalArgumentException().isThrownBy(() -> new EvaporationBands(0.5, 0.5, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new EvaporationBands(0.25, 1, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new EvaporationBands(0, 0.5, 1));
  }

  @Test
  @DisplayName("of a room's outline refuses what encloses nothing, and closes what is open")
  void outlines() {
    List<Reading> readings =
        List.of(new Reading(0, 0, 0), new Reading(2, 0, 0), new Reading(0, 2, 0));
    PourVolume.Corner a = new PourVolume.Corner(0, 0);
    PourVolume.Corner b = new PourVolume.Corner(2, 0);
    PourVolume.Corner c = new PourVolume.Corner(0, 2);
    // Half of 2 m by 2 m, 5 mm deep.
    assertThat(PourVolume.of(readings, List.of(a, b, c), 5).volumeL()).isCloseTo(10, within(1e-9));
    assertThat(PourVolume.of(readings, List.of(a, b, c, a), 5).volumeL())
        .isCloseTo(10, within(1e-9));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PourVolume.of(readings, List.of(a, b), 5))
        .withMessageContaining("three corners");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PourVolume.of(readings, List.of(a, b, a), 5))
        .withMessageContaining("three corners");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PourVolume.of(readings, List.of(a, b, new PourVolume.Corner(4, 0)), 5))
        .withMessageContaining("enclose nothing");
    assertThat(PourVolume.of(readings, List.of(a, b, c), -5).meanDepthMm()).isZero();
    // Only half of a floor that slopes by 10 mm to each side is covered at 5 mm.
    List<Reading> slope =
        List.of(
            new Reading(0, 0, 0),
            new Reading(2, 0, 10),
            new Reading(0, 2, 0),
            new Reading(2, 2, 10));
    PourVolume.Values half =
        PourVolume.of(
            slope, List.of(a, b, new PourVolume.Corner(2, 2), new PourVolume.Corner(0, 2)), 5);
    assertThat(half.areaM2()).isCloseTo(2, within(1e-9));
    assertThat(half.volumeL()).isCloseTo(5, within(1e-9));
    assertThat(half.meanDepthMm()).isCloseTo(2.5, within(1e-9));
  }

  @Test
  @DisplayName("chooses a screw that is as long as may be, to the last digit")
  void screws() {
    List<Double> stock = List.of(25.0, 30.0);
    // 0.1 + 29.9 is 30 but for the last digits.
    assertThat(ScrewLength.of(0.1, 29.9, 0, 0, stock).chooseMm()).hasValue(30);
    assertThat(ScrewLength.of(12, 17.9, 0, 0, stock).chooseMm()).hasValue(25);
    assertThat(ScrewLength.of(12, 12.9, 0, 0, stock).chooseMm()).isEmpty();
    assertThat(ScrewLength.of(1, 2, 0, 0, Collections.emptyList()).chooseMm()).isEmpty();
  }

  @Test
  @DisplayName("of a programme holds a screed at one temperature where there is nothing to raise")
  void noRise() {
    HeatingProgramme.Values none = HeatingProgramme.of(21, 20, 20, 5, 3);
    assertThat(List.of(none.steps(), none.atTopDay(), none.coolFromDay(), none.doneDay()))
        .containsExactly(0L, 21L, 24L, 24L);
    // 15.0000000001 K in steps of 5 K are three steps, not four.
    assertThat(HeatingProgramme.of(0, 20, 35.000_000_000_1, 5, 0).steps()).isEqualTo(3);
    assertThat(HeatingProgramme.of(0, 20, 35.1, 5, 0).steps()).isEqualTo(4);
  }

  @Test
  @DisplayName(
      "of a plane gives residuals that are heights less the plane, far from the origin too")
  void residuals() {
    List<Reading> readings =
        List.of(
            new Reading(1000, 2000, 1),
            new Reading(1002, 2000, 5),
            new Reading(1000, 2003, 2),
            new Reading(1002, 2003, 12));
    BestPlane.Values plane = BestPlane.of(readings);
    for (int i = 0; i < readings.size(); i++) {
      Reading reading = readings.get(i);
      double height = plane.aMm() + plane.bMmPerM() * reading.xM() + plane.cMmPerM() * reading.yM();
      assertThat(plane.residualsMm().get(i)).isCloseTo(reading.zMm() - height, within(1e-6));
    }
    // The twist of a rectangle of four readings is spread evenly: (1 - 5 - 2 + 12)/4 = 1.5.
    assertThat(plane.residualsMm().get(0)).isCloseTo(1.5, within(1e-9));
    assertThat(plane.residualsMm().get(1)).isCloseTo(-1.5, within(1e-9));
    assertThat(plane.highestMm()).isCloseTo(1.5, within(1e-9));
  }

  @Test
  @DisplayName("of a plane refuses readings that stand on one line, wherever that line runs")
  void onALine() {
    for (double[] way : new double[][] {{1, 0}, {0, 1}, {1, 1}, {3, -2}}) {
      List<Reading> line =
          List.of(
              new Reading(7, 9, 0),
              new Reading(7 + way[0], 9 + way[1], 3),
              new Reading(7 + 3 * way[0], 9 + 3 * way[1], 1));
      assertThatIllegalArgumentException()
          .isThrownBy(() -> BestPlane.of(line))
          .withMessageContaining("one line");
    }
  }
}
