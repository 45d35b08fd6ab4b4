package underfoot.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underfoot.knowledge.Facts;
import underfoot.scenario.Scenario;

/** Whole scenarios against worked examples: gaps, planes and volumes. */
class LevelMeasureTest {
  private static final String OUTLINE_2_BY_2 =
      "room: {use: hall, outline: [[0 m, 0 m], [2 m, 0 m], [2 m, 2 m], [0 m, 2 m]]}";

  /** A strip of floor whose profile is the same at y = 0 and y = 1 m. */
  private static Facts strip(String positionsMm, String heightsMm) {
    String[] x = positionsMm.split(",");
    String[] z = heightsMm.split(",");
    StringBuilder readings = new StringBuilder();
    for (int i = 0; i < x.length; i++) {
      readings.append(i == 0 ? "" : ", ");
      readings.append("[" + x[i].strip() + " mm, 0 mm, " + z[i].strip() + " mm]");
      readings.append(", [" + x[i].strip() + " mm, 1000 mm, " + z[i].strip() + " mm]");
    }
    return Measured.of(Measured.scenario("levels: {readings: [" + readings + "]}"));
  }

  static Scenario grid(String room, double dxM, double dyM, String rows, String wanted) {
    StringBuilder readings = new StringBuilder();
    String[] lines = rows.split(";");
    for (int i = 0; i < lines.length; i++) {
      String[] cells = lines[i].split(",");
      for (int j = 0; j < cells.length; j++) {
        readings.append(readings.isEmpty() ? "" : ", ");
        readings.append("[" + j * dxM + " m, " + i * dyM + " m, " + cells[j].strip() + " mm]");
      }
    }
    return Measured.scenario(
        room, "levels: {wanted: " + wanted + ", readings: [" + readings + "]}");
  }

  @ParameterizedTest(name = "{0}: gap {3}, hump {4}")
  @DisplayName("Straightedge gaps of worked examples G1 to G9, each profile run twice over a strip")
  @CsvSource(
      delimiter = '|',
      value = {
        "G1 | 0,500,1000,1500,2000 | 0,4,8,12,16 | 0.00 | 0.00",
        "G2 | 0,250,500,750,1000,1250,1500,1750,2000 | 0,-1,-2,-3,-4,-3,-2,-1,0 | 4.00 | 0.00",
        "G3 | 0,250,500,750,1000,1250,1500,1750,2000 | 2,3,1,0,-1,1,4,2,0 | 4.60 | 4.50",
        "G4 | 0,400,800,1200,1600,2000 | 0,3,5,5,3,0 | 0.00 | 5.00",
        "G5 | 0,500,1000,1500,2000,2500,3000,3500,4000 | 0,-2,-5,-3,1,-1,-4,-6,-2 | 5.50 | 5.52",
        "G6 | 0,500,1000,1500,2000 | 0,1.5,4,10.5,16 | 4.00 | 0.50",
        "G7 | 0,999,1000,2000 | 0,0,3,3 | 3.00 | 3.00",
        "G8 | 0,200,400,600,800,1000,1200,1400,1600,1800,2000 | 0,-1.5,0,-2,0,-1.2,0,-2.5,0,-1.8,0 |"
            + " 2.50 | 2.38",
        "G9 | 0,1500,3000 | 0,-6,0 | 4.00 | 0.00",
      })
  void gaps(String id, String positions, String heights, double gap, double hump) {
    Facts facts = strip(positions, heights);
    // Over a strip an edge may also lie askew and reach less far along the profile, never farther.
    assertThat(facts.number("flatness gap")).as(id).isCloseTo(gap, within(0.011));
    assertThat(facts.number("hump")).as(id).isCloseTo(hump, within(0.011));
  }

  @Test
  @DisplayName("A slope is out of level by 8 mm a metre and perfectly flat (worked example G1)")
  void slope() {
    Facts facts = strip("0,500,1000,1500,2000", "0,4,8,12,16");
    assertThat(facts.number("level difference")).isEqualTo(16);
    assertThat(facts.number("tilt")).isCloseTo(8, within(0.001));
  }

  @ParameterizedTest(name = "{0}")
  @DisplayName("Planes P1 to P3 and volumes Vol-1 to Vol-3 from gridded readings, poured level")
  @CsvSource(
      delimiter = '|',
      value = {
        "P1 Vol-1 | 1 | 1 | 2 | 2 | 0,4,8;2,6,10;4,8,12 | 4.472 | 3 | 9.00 | 15",
        "P2 Vol-2 | 1.5 | 1.2 | 3 | 2.4 | 0,3,9;1,2,8;3,5,12 | 2.992 | 3 | 10.875 | 15",
        "P3 Vol-3 | 1 | 1 | 3 | 3 | 5,5,5,5;5,2,1,5;5,1,2,5;5,5,5,5 | 0 | 3 | 4.556 | 7",
      })
  void planesAndVolumes(
      String id,
      double dx,
      double dy,
      double length,
      double width,
      String rows,
      double tilt,
      double least,
      double mean,
      double most) {
    Facts facts =
        Measured.of(
            grid(
                "room: {use: hall, outline: [[0 m, 0 m], [L m, 0 m], [L m, W m], [0 m, W m]]}"
                    .replace("L", "" + length)
                    .replace("W", "" + width),
                dx,
                dy,
                rows,
                "level"));
    assertThat(facts.number("tilt")).as(id).isCloseTo(tilt, within(0.001));
    assertThat(facts.number("pour least")).as(id).isCloseTo(least, within(0.001));
    assertThat(facts.number("pour mean")).as(id).isCloseTo(mean, within(0.001));
    assertThat(facts.number("pour most")).as(id).isCloseTo(most, within(0.001));
  }

  @Test
  @DisplayName(
      "A flat slope poured flat takes only the least pour (P1); poured level it takes 9 mm")
  void flatOrLevel() {
    Facts flat = Measured.of(grid(OUTLINE_2_BY_2, 1, 1, "0,4,8;2,6,10;4,8,12", "flat"));
    assertThat(flat.number("pour mean")).isCloseTo(3, within(1e-9));
    assertThat(flat.number("pour most")).isCloseTo(3, within(1e-9));
    Facts unsaid = Measured.of(grid(OUTLINE_2_BY_2, 1, 1, "0,4,8;2,6,10;4,8,12", "unknown"));
    assertThat(unsaid.find("pour mean")).isNull();
  }

  @Test
  @DisplayName(
      "P2 poured flat: from 3 mm at the highest residual to 3 + 1.722 + 2.778 at the lowest")
  void pouredFlat() {
    Facts facts =
        Measured.of(
            grid(
                "room: {use: hall, outline: [[0 m, 0 m], [3 m, 0 m], [3 m, 2.4 m], [0 m, 2.4 m]]}",
                1.5,
                1.2,
                "0,3,9;1,2,8;3,5,12",
                "flat"));
    assertThat(facts.number("pour least")).isCloseTo(3, within(0.001));
    assertThat(facts.number("pour most")).isCloseTo(3 + 1.722 + 2.778, within(0.002));
  }

  @Test
  @DisplayName("Where only the gap is known, half of it is filled on average")
  void onlyTheGap() {
    Facts facts =
        Measured.of(Measured.scenario("levels: {gap under 2 m straightedge: 8 mm, wanted: flat}"));
    assertThat(facts.number("flatness gap")).isEqualTo(8);
    assertThat(facts.number("pour least")).isEqualTo(3);
    assertThat(facts.number("pour mean")).isEqualTo(7);
    assertThat(facts.number("pour most")).isEqualTo(11);
    assertThat(facts.find("pour mean").how()).contains("no surface can be spanned");
  }

  @Test
  @DisplayName("The same readings in inches and in millimetres come to the same")
  void inches() {
    String mm =
        "levels: {readings: [[0 mm, 0 mm, 0 mm], [2540 mm, 0 mm, 6.35 mm], [0 mm, 2540 mm, 0 mm],"
            + " [2540 mm, 2540 mm, 0 mm], [1270 mm, 1270 mm, -12.7 mm]], wanted: flat}";
    String inches =
        "levels: {readings: [[0 in, 0 in, 0 in], [100 in, 0 in, 1/4 in], [0 in, 100 in, 0 in], [100 in,"
            + " 100 in, 0 in], [50 in, 50 in, -1/2 in]], wanted: flat}";
    Facts first = Measured.of(Measured.scenario(mm));
    Facts second = Measured.of(Measured.scenario(inches));
    for (String name : new String[] {"flatness gap", "hump", "tilt", "pour mean", "pour most"}) {
      assertThat(second.number(name)).as(name).isCloseTo(first.number(name), within(1e-6));
    }
  }

  @Test
  @DisplayName(
      "Either side of 3 mm: a hollow of 2.99 mm passes a 3 mm limit and one of 3.01 does not")
  void eitherSide() {
    assertThat(strip("0,1000,2000", "0,-2.99,0").number("flatness gap")).isLessThan(3);
    assertThat(strip("0,1000,2000", "0,-3.01,0").number("flatness gap")).isGreaterThan(3);
  }

  private static final String HOLLOW_ON_ONE_LINE =
      "levels: {readings: [[0 mm, 0 mm, 2 mm], [1500 mm, 0 mm, -4 mm], [3000 mm, 0 mm, 2 mm]]}";

  @Test
  @DisplayName("Where the worst gap lies is told in metres, with how many lines were tried")
  void whereTheWorstIs() {
    Facts facts = Measured.of(Measured.scenario(HOLLOW_ON_ONE_LINE));
    // An edge of 2 m from 500 to 2500 spans the hollow: -2 at either end, -4 in the middle.
    assertThat(facts.number("flatness gap")).isCloseTo(4, within(0.001));
    assertThat(facts.find("flatness gap").how())
        .endsWith(
            "; the worst of 1 line, from (0.00 m, 0.00 m) to (3.00 m, 0.00 m), at (1.50 m, 0.00 m)");
    assertThat(facts.number("hump")).isZero();
  }

  @Test
  @DisplayName("Levels are told with the readings they come from, and tilts with their plane")
  void levelsSayWhere() {
    Facts facts = Measured.of(grid(OUTLINE_2_BY_2, 1, 1, "0,4,8;2,6,10;4,8,12", "level"));
    assertThat(facts.find("level difference").how())
        .isEqualTo(
            "highest − lowest reading: 12 mm at (2.00 m, 2.00 m) − 0 mm at (0.00 m, 0.00 m)");
    assertThat(facts.find("highest point").text()).isEqualTo("12 mm at (2.00 m, 2.00 m)");
    assertThat(facts.number("highest point")).isEqualTo(12);
    // z = 4 x + 2 y.
    assertThat(facts.find("tilt").how())
        .startsWith("plane that fits the readings best: z = 0 + (4)*x + (2)*y mm");
    assertThat(facts.find("pour most").how())
        .isEqualTo("level surface at 15 mm = highest reading + 3 mm; greatest depth");
    assertThat(facts.find("pour mean").how())
        .isEqualTo(
            "level surface at 15 mm = highest reading + 3 mm; volume / area of the triangles: 36 L /"
                + " 4 m2");
  }

  @Test
  @DisplayName("A deck is packed by what a pour would be deep, less the least of a pour")
  void packing() {
    Facts poured = Measured.of(grid(OUTLINE_2_BY_2, 1, 1, "0,4,8;2,6,10;4,8,12", "level"));
    assertThat(poured.number("packing least")).isCloseTo(0, within(1e-9));
    assertThat(poured.number("packing mean")).isCloseTo(6, within(1e-9));
    assertThat(poured.number("packing most")).isCloseTo(12, within(1e-9));
    assertThat(poured.find("packing most").how())
        .isEqualTo("a pour of 15 mm less its least of 3 mm");
  }

  @Test
  @DisplayName("Level wanted and no surface: the greater of gap and level difference is filled")
  void theGreaterOfGapAndDifference() {
    // On one line: 4 mm of gap, 6 mm from the highest to the lowest.
    Facts level =
        Measured.of(
            Measured.scenario(HOLLOW_ON_ONE_LINE.replace("readings", "wanted: level, readings")));
    assertThat(level.number("level difference")).isEqualTo(6);
    assertThat(level.number("pour least")).isEqualTo(3);
    assertThat(level.number("pour mean")).isCloseTo(6, within(1e-9));
    assertThat(level.number("pour most")).isCloseTo(9, within(1e-9));
    assertThat(level.find("pour most").how())
        .isEqualTo(
            "no surface can be spanned without readings over the floor; least + the greater of gap"
                + " and level difference: 3 + 6");
    Facts flat =
        Measured.of(
            Measured.scenario(HOLLOW_ON_ONE_LINE.replace("readings", "wanted: flat, readings")));
    assertThat(flat.number("pour mean")).isCloseTo(5, within(1e-9));
    assertThat(flat.number("pour most")).isCloseTo(7, within(1e-9));
    assertThat(flat.find("pour mean").how()).endsWith("least + half gap: 3 + 4 / 2");
  }
}
