package underfoot.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static underfoot.working.Seeded.between;

import java.util.Arrays;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The straightedge against trying every place of it. */
class StraightedgeGapTest {
  private static final double SLIDE = 10;
  private static final double SAME = 1e-9;

  private record Profile(double[] x, double[] z) {}

  private static Profile profile(Random random) {
    int n = 2 + random.nextInt(40);
    TreeSet<Double> places = new TreeSet<>();
    double length = between(random, 300, 9000);
    while (places.size() < n) {
      // On whole centimetres now and then, where places of the edge coincide.
      double place = between(random, 0, length);
      places.add(random.nextBoolean() ? place : Math.rint(place / 10) * 10);
    }
    double[] x = places.stream().mapToDouble(d -> d).toArray();
    double[] z = Arrays.stream(x).map(place -> random.nextInt(4) * 2 - place / 400).toArray();
    return new Profile(x, z);
  }

  /** Every place of the edge in turn, and at each every two readings as points of contact. */
  private static double[] everyPlace(Profile profile, double edge, int side) {
    double[] x = profile.x();
    double first = x[0];
    double last = x[x.length - 1] - edge;
    TreeSet<Double> starts = new TreeSet<>();
    starts.add(first);
    if (last > first) {
      starts.add(last);
      for (int i = 1; first + i * SLIDE < last; i++) {
        starts.add(first + i * SLIDE);
      }
      for (double reading : x) {
        for (double start : new double[] {reading, reading - edge}) {
          if (start >= first && start <= last) {
            starts.add(start);
          }
        }
      }
    }
    double most = 0;
    double at = first;
    for (double start : starts) {
      double[] here = under(profile, start, Math.min(start + edge, x[x.length - 1]), side);
      if (here[0] > most + SAME) {
        most = here[0];
        at = here[1];
      }
    }
    return new double[] {most, at};
  }

  private static double[] under(Profile profile, double start, double end, int side) {
    double[] places =
        Arrays.stream(profile.x()).filter(place -> place > start && place < end).sorted().toArray();
    double[] x = new double[places.length + 2];
    x[0] = start;
    System.arraycopy(places, 0, x, 1, places.length);
    x[x.length - 1] = end;
    double[] z = Arrays.stream(x).map(place -> side * height(profile, place)).toArray();
    double most = 0;
    double at = start;
    for (int i = 0; i < x.length; i++) {
      double hull = z[i];
      for (int a = 0; a < i; a++) {
        for (int b = i + 1; b < x.length; b++) {
          hull = Math.max(hull, z[a] + (x[i] - x[a]) / (x[b] - x[a]) * (z[b] - z[a]));
        }
      }
      if (hull - z[i] > most + SAME) {
        most = hull - z[i];
        at = x[i];
      }
    }
    return new double[] {most, at};
  }

  private static double height(Profile profile, double place) {
    double[] x = profile.x();
    int i = 1;
    while (i < x.length - 1 && x[i] < place) {
      i++;
    }
    double share = (place - x[i - 1]) / (x[i] - x[i - 1]);
    return profile.z()[i - 1] + share * (profile.z()[i] - profile.z()[i - 1]);
  }

  @Test
  void the_worst_gap_and_hump_are_those_of_every_place_of_the_edge_tried_in_turn() {
    Random random = Seeded.random();
    for (int round = 0; round < 60; round++) {
      Profile profile = profile(random);
      double edge = between(random, 400, 2500);
      StraightedgeGap.Values found = StraightedgeGap.of(profile.x(), profile.z(), edge);
      double[] gap = everyPlace(profile, edge, 1);
      double[] hump = everyPlace(profile, edge, -1);
      assertThat(found.gapMm()).as(Seeded.seed(round)).isCloseTo(gap[0], within(1e-7));
      assertThat(found.humpMm()).as(Seeded.seed(round)).isCloseTo(hump[0], within(1e-7));
      // The gap found is to be had where it is said to be.
      double[] there = under(profile, found.windowFromMm(), found.windowToMm(), 1);
      assertThat(there[0]).as(Seeded.seed(round)).isCloseTo(found.gapMm(), within(1e-7));
      assertThat(there[1]).as(Seeded.seed(round)).isCloseTo(found.atMm(), within(1e-6));
    }
  }

  @Test
  void passing_over_what_is_below_a_floor_loses_nothing_above_it() {
    Random random = Seeded.random();
    int above = 0;
    int below = 0;
    for (int round = 0; round < Seeded.ROUNDS; round++) {
      Profile profile = profile(random);
      double edge = between(random, 400, 2500);
      StraightedgeGap.Values whole = StraightedgeGap.of(profile.x(), profile.z(), edge);
      double gapFloor = between(random, 0, 6);
      double humpFloor = between(random, 0, 6);
      StraightedgeGap.Values part =
          StraightedgeGap.of(profile.x(), profile.z(), edge, gapFloor, humpFloor);
      if (whole.gapMm() > gapFloor) {
        above++;
        assertThat(part.gapMm()).as(Seeded.seed(round)).isEqualTo(whole.gapMm());
        assertThat(part.atMm()).as(Seeded.seed(round)).isEqualTo(whole.atMm());
      } else {
        below++;
        assertThat(part.gapMm()).as(Seeded.seed(round)).isLessThanOrEqualTo(gapFloor);
      }
      if (whole.humpMm() > humpFloor) {
        assertThat(part.humpMm()).as(Seeded.seed(round)).isEqualTo(whole.humpMm());
      } else {
        assertThat(part.humpMm()).as(Seeded.seed(round)).isLessThanOrEqualTo(humpFloor);
      }
    }
    assertThat(above).isGreaterThan(20);
    assertThat(below).isGreaterThan(20);
  }
}
