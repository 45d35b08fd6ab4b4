package underfoot.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;
import static underfoot.working.Seeded.between;
import static underfoot.working.Seeded.seed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What must hold whatever the numbers")
class PropertiesTest {
  private static final OptionalDouble NO_SHEAR = OptionalDouble.empty();

  @Test
  @DisplayName(
      "a joist's span grows with the cube root of its stiffness and falls with that of its load")
  void spanScales() {
    Random random = Seeded.random();
    for (int round = 0; round < Seeded.ROUNDS; round++) {
      double b = between(random, 30, 100);
      double d = between(random, 90, 300);
      double e = between(random, 5000, 15_000);
      double c = between(random, 300, 600);
      double w = between(random, 0.5, 5);
      double n = between(random, 200, 800);
      double span = JoistSpan.of(b, d, e, c, w, n, NO_SHEAR).spanMm();
      double factor = between(random, 0.3, 3);
      double cubeRoot = Math.cbrt(factor);
      assertThat(JoistSpan.of(b, d, e * factor, c, w, n, NO_SHEAR).spanMm())
          .as(seed(round))
          .isCloseTo(span * cubeRoot, withinPercentage(1e-8));
      assertThat(JoistSpan.of(b, d, e, c, w * factor, n, NO_SHEAR).spanMm())
          .as(seed(round))
          .isCloseTo(span / cubeRoot, withinPercentage(1e-8));
      assertThat(JoistSpan.of(2 * b, d, e, c, w, n, NO_SHEAR).spanMm())
          .as("sistering, " + seed(round))
          .isCloseTo(span * 1.259921, withinPercentage(1e-4));
      assertThat(JoistSpan.of(b, d, e, c, w, 2 * n, NO_SHEAR).spanMm())
          .as("half the deflection, " + seed(round))
          .isCloseTo(span * 0.793701, withinPercentage(1e-4));
      assertThat(JoistSpan.of(b, d, e, c, w, n, OptionalDouble.of(e / 16)).spanMm())
          .as("shear only shortens, " + seed(round))
          .isLessThan(span)
          .isGreaterThan(span * 0.6);
    }
  }

  @Test
  @DisplayName("span and deflection are each other's inverse, with and without shear")
  void spanAndDeflectionRoundTrip() {
    Random random = Seeded.random();
    for (int round = 0; round < Seeded.ROUNDS; round++) {
      double b = between(random, 30, 100);
      double d = between(random, 90, 300);
      double e = between(random, 5000, 15_000);
      double c = between(random, 300, 600);
      double w = between(random, 0.5, 5);
      double n = between(random, 200, 800);
      for (OptionalDouble g : List.of(NO_SHEAR, OptionalDouble.of(between(random, 100, 900)))) {
        double span = JoistSpan.of(b, d, e, c, w, n, g).spanMm();
        assertThat(JoistDeflection.of(b, d, e, c, w, span, g).ratio())
            .as(seed(round))
            .isCloseTo(n, withinPercentage(1e-8));
      }
    }
  }

  @Test
  @DisplayName(
      "a straightedge gap does not change when the profile is tilted, lifted or turned round")
  void gapKeepsUnderTilt() {
    Random random = Seeded.random();
    for (int round = 0; round < 60; round++) {
      int count = 3 + random.nextInt(10);
      double[] x = new double[count];
      double[] z = new double[count];
      double[] tilted = new double[count];
      double[] back = new double[count];
      double[] backHeights = new double[count];
      double slope = between(random, -0.02, 0.02);
      double place = 0;
      for (int i = 0; i < count; i++) {
        x[i] = place;
        z[i] = between(random, -6, 6);
        tilted[i] = z[i] + slope * x[i] + 17;
        place += 10 * (3 + random.nextInt(60));
      }
      for (int i = 0; i < count; i++) {
        back[i] = x[count - 1] - x[count - 1 - i];
        backHeights[i] = z[count - 1 - i];
      }
      StraightedgeGap.Values values = StraightedgeGap.of(x, z, 2000);
      StraightedgeGap.Values slanted = StraightedgeGap.of(x, tilted, 2000);
      StraightedgeGap.Values turned = StraightedgeGap.of(back, backHeights, 2000);
      assertThat(slanted.gapMm()).as(seed(round)).isCloseTo(values.gapMm(), offset(1e-6));
      assertThat(slanted.humpMm()).as(seed(round)).isCloseTo(values.humpMm(), offset(1e-6));
      assertThat(turned.gapMm()).as(seed(round)).isCloseTo(values.gapMm(), offset(0.01));
      double[] doubled = Arrays.stream(z).map(height -> 2 * height).toArray();
      assertThat(StraightedgeGap.of(x, doubled, 2000).gapMm())
          .as(seed(round))
          .isCloseTo(2 * values.gapMm(), offset(1e-6));
      assertThat(StraightedgeGap.of(x, z, 1000).gapMm())
          .as("a shorter edge never shows more, " + seed(round))
          .isLessThanOrEqualTo(values.gapMm() + 0.01);
    }
  }

  @Test
  @DisplayName("a plane added to the heights comes back in a, b and c and leaves the residuals")
  void planeAdds() {
    Random random = Seeded.random();
    for (int round = 0; round < Seeded.ROUNDS; round++) {
      List<Reading> readings = new ArrayList<>();
      List<Reading> lifted = new ArrayList<>();
      for (int i = 0; i < 12; i++) {
        double x = between(random, 0, 6);
        double y = between(random, 0, 4);
        double z = between(random, -5, 5);
        readings.add(new Reading(x, y, z));
        lifted.add(new Reading(x, y, z + 3 + 2 * x - y));
      }
      BestPlane.Values values = BestPlane.of(readings);
      BestPlane.Values raised = BestPlane.of(lifted);
      assertThat(raised.aMm()).as(seed(round)).isCloseTo(values.aMm() + 3, offset(1e-9));
      assertThat(raised.bMmPerM()).as(seed(round)).isCloseTo(values.bMmPerM() + 2, offset(1e-9));
      assertThat(raised.cMmPerM()).as(seed(round)).isCloseTo(values.cMmPerM() - 1, offset(1e-9));
      assertThat(raised.rmsMm()).as(seed(round)).isCloseTo(values.rmsMm(), offset(1e-9));
      assertThat(values.residualsMm().stream().mapToDouble(Double::doubleValue).sum())
          .as("residuals balance, " + seed(round))
          .isCloseTo(0, offset(1e-9));
    }
  }

  @Test
  @DisplayName("a levelling volume is the sum of its parts and doubles with the area")
  void volumeAdds() {
    Random random = Seeded.random();
    for (int round = 0; round < Seeded.ROUNDS; round++) {
      int rows = 3 + random.nextInt(5);
      int columns = 3 + random.nextInt(5);
      double[][] grid = new double[rows][columns];
      double highest = Double.NEGATIVE_INFINITY;
      for (double[] row : grid) {
        for (int j = 0; j < columns; j++) {
          row[j] = between(random, -10, 10);
          highest = Math.max(highest, row[j]);
        }
      }
      double datum = between(random, -5, 12);
      LevellingVolume.Values whole = LevellingVolume.of(grid, 0.8, 1.1, datum);
      int cut = 1 + random.nextInt(rows - 2);
      LevellingVolume.Values first =
          LevellingVolume.of(Arrays.copyOfRange(grid, 0, cut + 1), 0.8, 1.1, datum);
      LevellingVolume.Values second =
          LevellingVolume.of(Arrays.copyOfRange(grid, cut, rows), 0.8, 1.1, datum);
      assertThat(first.a().volumeL() + second.a().volumeL())
          .as(seed(round))
          .isCloseTo(whole.a().volumeL(), offset(1e-9));
      assertThat(first.areaM2() + second.areaM2())
          .as(seed(round))
          .isCloseTo(whole.areaM2(), offset(1e-9));
      assertThat(LevellingVolume.of(grid, 1.6, 1.1, datum).volumeL())
          .as(seed(round))
          .isCloseTo(2 * whole.volumeL(), offset(1e-9));
      double area = (rows - 1) * (columns - 1) * 0.8 * 1.1;
      double full = LevellingVolume.of(grid, 0.8, 1.1, highest).volumeL();
      assertThat(LevellingVolume.of(grid, 0.8, 1.1, highest + 3).volumeL())
          .as("3 mm more over all of it, " + seed(round))
          .isCloseTo(full + 3 * area, offset(1e-9));
      assertThat(whole.volumeL()).as(seed(round)).isNotNegative();
    }
  }

  @Test
  @DisplayName("a triangle of depths filled and the same turned over make up the whole prism")
  void triangleTurnsOver() {
    Random random = Seeded.random();
    for (int round = 0; round < Seeded.ROUNDS; round++) {
      double a = between(random, -5, 5);
      double b = between(random, -5, 5);
      double c = between(random, -5, 5);
      LevellingVolume.Fill fill = LevellingVolume.triangle(2, a, b, c);
      LevellingVolume.Fill turned = LevellingVolume.triangle(2, -c, -a, -b);
      assertThat(fill.volumeL() - turned.volumeL())
          .as(seed(round))
          .isCloseTo(2 * (a + b + c) / 3, offset(1e-9));
      assertThat(fill.areaM2() + turned.areaM2()).as(seed(round)).isCloseTo(2, offset(1e-9));
    }
  }

  @Test
  @DisplayName("heat output and excess are each other's inverse")
  void heatRoundTrip() {
    Random random = Seeded.random();
    for (int round = 0; round < Seeded.ROUNDS; round++) {
      double excess = between(random, 0, 20);
      assertThat(HeatOutput.excess(HeatOutput.output(excess)))
          .as(seed(round))
          .isCloseTo(excess, offset(1e-9));
    }
  }

  @Test
  @DisplayName(
      "curing hours times the rate give back the hours, and a steady history its own length")
  void cureRoundTrip() {
    Random random = Seeded.random();
    for (int round = 0; round < Seeded.ROUNDS; round++) {
      double hours = between(random, 1, 500);
      double reference = between(random, 15, 25);
      double temperature = between(random, 2, 40);
      double needed = CureTime.hours(hours, reference, temperature);
      assertThat(
              CureTime.equivalentAge(List.of(new CureTime.Spell(needed, temperature)), reference))
          .as(seed(round))
          .isCloseTo(hours, withinPercentage(1e-8));
      assertThat(CureTime.rate(reference, reference)).as(seed(round)).isEqualTo(1);
      assertThat(CureTime.rate(temperature + 1, reference))
          .as("warmer is faster, " + seed(round))
          .isGreaterThan(CureTime.rate(temperature, reference));
    }
  }

  @Test
  @DisplayName(
      "speed-up per 10 K by rates relative to 20 C is 2.56, 2.01 and 1.57 (references E28)")
  void speedUp() {
    assertThat(CureTime.rate(15, 20) / CureTime.rate(5, 20)).isCloseTo(2.56, offset(0.01));
    assertThat(CureTime.rate(20, 20) / CureTime.rate(10, 20)).isCloseTo(2.01, offset(0.01));
    assertThat(CureTime.rate(30, 20) / CureTime.rate(20, 20)).isCloseTo(1.57, offset(0.01));
    assertThat(CureTime.rate(21, 20) / CureTime.rate(13, 20))
        .as("E29: 21 to 13 C against the trade's doubling per 8 C")
        .isCloseTo(1.63, offset(0.05));
  }

  @Test
  @DisplayName(
      "wetter air leaves wood wetter, raises the dew point and slows drying; wind speeds it")
  void airBehaves() {
    Random random = Seeded.random();
    EvaporationBands bands = new EvaporationBands(0.25, 0.5, 1);
    for (int round = 0; round < Seeded.ROUNDS; round++) {
      double air = between(random, 0, 40);
      double humidity = between(random, 5, 90);
      double surface = between(random, 0, 40);
      assertThat(WoodMoisture.of(air, humidity + 5))
          .as(seed(round))
          .isGreaterThan(WoodMoisture.of(air, humidity));
      assertThat(DewPoint.of(air, humidity)).as(seed(round)).isLessThan(air);
      assertThat(DewPoint.of(air, 100)).as(seed(round)).isCloseTo(air, offset(1e-9));
      Evaporation.Values calm = Evaporation.of(surface, air, humidity, 2, bands);
      Evaporation.Values windy = Evaporation.of(surface, air, humidity, 20, bands);
      Evaporation.Values wetter = Evaporation.of(surface, air, humidity + 5, 2, bands);
      assertThat(windy.formulaKgPerM2h())
          .as(seed(round))
          .isCloseTo(4 * calm.formulaKgPerM2h(), offset(1e-9));
      assertThat(wetter.formulaKgPerM2h()).as(seed(round)).isLessThan(calm.formulaKgPerM2h());
      assertThat(calm.condensation()).as(seed(round)).isEqualTo(calm.formulaKgPerM2h() < 0);
      assertThat(calm.rateKgPerM2h()).as(seed(round)).isNotNegative();
    }
  }

  @Test
  @DisplayName("no chosen screw comes out under the deck, and none is chosen shorter than need be")
  void screwsStayIn() {
    Random random = Seeded.random();
    List<Double> stock = List.of(16.0, 20.0, 25.0, 30.0, 35.0, 40.0, 45.0, 50.0, 60.0);
    for (int round = 0; round < Seeded.ROUNDS; round++) {
      double overlay = random.nextInt(40);
      double deck = 12 + random.nextInt(20);
      double washer = random.nextInt(3);
      double clear = random.nextInt(4);
      ScrewLength.Values values = ScrewLength.of(overlay, deck, washer, clear, stock);
      if (values.chooseMm().isEmpty()) {
        assertThat(values.longestMm()).as(seed(round)).isLessThan(16);
        continue;
      }
      double choose = values.chooseMm().getAsDouble();
      assertThat(choose - washer - overlay + clear).as(seed(round)).isLessThanOrEqualTo(deck);
      assertThat(stock.stream().filter(length -> length > choose))
          .as(seed(round))
          .allMatch(length -> length - washer - overlay + clear > deck);
    }
  }

  @Test
  @DisplayName(
      "exact grout fills what the tiles leave, and is never more than the shorter formula says")
  void groutFillsTheRest() {
    Random random = Seeded.random();
    for (int round = 0; round < Seeded.ROUNDS; round++) {
      double length = between(random, 10, 1200);
      double width = between(random, 10, 1200);
      double joint = between(random, 1, 12);
      Grout.Values values = Grout.of(length, width, 8, joint, 1.6);
      double tiled = TilesPerArea.of(length, width, joint) * length * width / 1e6;
      assertThat(values.exactKgPerM2())
          .as(seed(round))
          .isCloseTo((1 - tiled) * 8 * 1.6, offset(1e-9));
      assertThat(values.exactKgPerM2()).as(seed(round)).isLessThan(values.simpleKgPerM2());
    }
  }

  @Test
  @DisplayName(
      "a drain's fall holds along its longest run, and no straight run to an edge is gentler")
  void fallsHold() {
    Random random = Seeded.random();
    for (int round = 0; round < Seeded.ROUNDS; round++) {
      double n = between(random, 20, 100);
      double length = between(random, 500, 4000);
      double width = between(random, 500, 4000);
      for (Fall.Drain drain : Fall.Drain.values()) {
        Fall.Values values = Fall.of(n, length, width, drain);
        assertThat(values.longestRunMm() / values.fallMm())
            .as(seed(round))
            .isCloseTo(n, withinPercentage(1e-9));
        assertThat(values.steepest()).as(seed(round)).isLessThanOrEqualTo(n * (1 + 1e-12));
        assertThat(Fall.of(n, width, length, drain)).as(seed(round)).isEqualTo(values);
      }
    }
  }

  @Test
  @DisplayName("drying takes longer per mm beyond the first depth, and joins there without a step")
  void dryingJoins() {
    DryingRates rates = new DryingRates(50, 1, 2);
    assertThat(DryingTime.of(50, rates)).isEqualTo(50);
    assertThat(DryingTime.of(50.0001, rates)).isCloseTo(50, offset(0.001));
    assertThat(DryingTime.of(51, rates)).isEqualTo(52);
  }
}
