package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.Facts;
import underfoot.scenario.Scenario;

/** What the advice works out, against published values and by going round the other way. */
class WorkingsInTheAdviceTest {
  private static final String SPAN = "subfloor.joists.clear span";

  private static Facts way(Scenario scenario, String way) {
    return Floors.advisor().advise(scenario).buildUps().stream()
        .filter(one -> one.way().equals(way))
        .findFirst()
        .map(BuildUp::facts)
        .orElseThrow();
  }

  @Test
  void at_the_clear_span_told_for_a_tile_the_joists_bend_just_as_far_as_it_stands()
      throws Exception {
    for (String tile : new String[] {"ceramic", "stone"}) {
      double limit = Floors.advisor().knowledge().figures().get("tile-ratio-" + tile).number();
      Scenario boards =
          Floors.change(Floors.read("boards"), Map.of("subfloor.joists.depth", "175 mm"));
      double clear = way(boards, "rigid board overlay").number("clear span for " + tile + " after");
      Scenario there = boards.with(SPAN, "", String.format(Locale.ROOT, "%.6f mm", clear));
      assertThat(way(there, "rigid board overlay").number("joist ratio after"))
          .as(tile)
          .isCloseTo(limit, within(1e-3));
      double doubled =
          way(boards, "rigid board overlay").number("clear span for " + tile + " if doubled after");
      Scenario far = boards.with(SPAN, "", String.format(Locale.ROOT, "%.6f mm", doubled));
      assertThat(way(far, "rigid board overlay").number("joist ratio if doubled after"))
          .as(tile + ", doubled")
          .isCloseTo(limit, within(1e-3));
    }
  }

  @Test
  void in_years_joists_bend_further_by_the_creep_of_what_lies_on_them() throws Exception {
    Facts facts = way(Floors.read("boards"), "rigid board overlay");
    double creep = Floors.advisor().knowledge().figures().get("timber-creep-factor").number();
    double share = Floors.advisor().knowledge().figures().get("imposed-load-always-there").number();
    double dead = facts.number("dead load after");
    double imposed = facts.number("imposed load");
    // Deflection goes with the load, so each part is its share of the whole.
    double whole = facts.number("joist deflection after");
    double expected =
        whole * (dead * (1 + creep) + imposed * (1 + share * creep)) / (dead + imposed);
    assertThat(facts.number("joist deflection in time after")).isCloseTo(expected, within(1e-9));
  }

  @Test
  void the_bed_is_half_the_notch_and_its_powder_as_a_data_sheet_reckons() throws Exception {
    // Reference rows Q07 and Q11: an 8 mm notch upright leaves 4 mm; 1.21 kg/m2 for each mm.
    Facts facts = way(Floors.read("slab"), "straight onto the base");
    assertThat(facts.number("tile bed depth")).isCloseTo(4.0, within(1e-9));
    assertThat(facts.number("tile bed powder")).isCloseTo(4.84, within(1e-9));
    assertThat(facts.number("rise")).isCloseTo(4 + 9, within(1e-9));
  }

  @Test
  void timber_settles_where_the_wood_handbook_has_it() throws Exception {
    // Reference row M29: 20 C, 65 % gives 12.00 %.
    Scenario boards =
        Floors.change(
            Floors.read("boards"),
            Map.of("site.air temperature", "20 C", "site.relative humidity", "65 %"));
    Facts facts = way(boards, "rigid board overlay");
    assertThat(facts.number("timber equilibrium")).isCloseTo(12.00, within(0.01));
    assertThat(facts.number("timber drying to come")).isCloseTo(11 - 12.00, within(0.01));
  }

  @Test
  void tiles_joints_gaps_and_cuts_fill_the_room_from_wall_to_wall() throws Exception {
    long seed = Long.getLong("seed", 20_260_101L);
    Random random = new Random(seed);
    for (int round = 0; round < 30; round++) {
      int length = 2500 + random.nextInt(4000);
      int width = 2000 + random.nextInt(500);
      int tile = 200 + random.nextInt(400);
      Scenario slab =
          Floors.change(
              Floors.read("slab"),
              Map.of(
                  "room.outline",
                  String.format(
                      Locale.ROOT,
                      "[[0 mm, 0 mm], [%d mm, 0 mm], [%d mm, %d mm], [0 mm, %d mm]]",
                      length,
                      length,
                      width,
                      width),
                  "tile.length",
                  tile + " mm",
                  "tile.width",
                  tile + " mm"));
      Facts facts = way(slab, "straight onto the base");
      double gap = Floors.advisor().knowledge().figures().get("movement-joint-width").number();
      double joint = facts.number("tile joint");
      String as = "seed " + seed + ", round " + round;
      for (String which : new String[] {"along", "across"}) {
        double full = facts.number("whole tiles " + which);
        double cut = facts.number("end cut " + which);
        assertThat(2 * gap + 2 * cut + full * tile + (full + 1) * joint)
            .as(as)
            .isCloseTo(which.equals("along") ? length : width, within(1e-6));
        assertThat(cut).as(as).isBetween(0.0, (double) tile);
      }
      double count = facts.number("tile count");
      double each = length / (tile + joint) * (width / (tile + joint));
      double waste = 1 + facts.number("tile waste") / 100;
      assertThat(count).as(as).isBetween(each * waste - 1e-6, each * waste + 1);
    }
  }
}
