package underfoot.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
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

  static Scenario grid(String room, double dxM, double dyM, String rows) {
    StringBuilder readings = new StringBuilder();
    String[] lines = rows.split(";");
    for (int i = 0; i < lines.length; i++) {
      String[] cells = lines[i].split(",");
      for (int j = 0; j < cells.length; j++) {
        readings.append(readings.isEmpty() ? "" : ", ");
        readings.append("[" + j * dxM + " m, " + i * dyM + " m, " + cells[j].strip() + " mm]");
      }
    }
    return Measured.scenario(room, "levels: {readings: [" + readings + "]}");
  }

  @Test
  @DisplayName("A slope is out of level and perfectly flat (worked example G1)")
  void slope() {
    Facts facts = strip("0,500,1000,1500,2000", "0,4,8,12,16");
    assertThat(facts.number("flatness gap")).isCloseTo(0, within(0.01));
    assertThat(facts.number("level difference")).isEqualTo(16);
    assertThat(facts.number("tilt")).isCloseTo(8, within(0.001));
  }

  @Test
  @DisplayName("The edge slides between readings: 4 mm, not 3 mm (worked example G9)")
  void slides() {
    Facts facts = strip("0,1500,3000", "0,-6,0");
    assertThat(facts.number("flatness gap")).isGreaterThanOrEqualTo(4 - 0.01);
  }

  @Test
  @DisplayName(
      "A hump shows no gap along its profile but the edge rocks by 5 mm (worked example G4)")
  void hump() {
    Facts facts = strip("0,400,800,1200,1600,2000", "0,3,5,5,3,0");
    assertThat(facts.number("flatness gap")).isCloseTo(0, within(0.01));
    assertThat(facts.number("hump")).isCloseTo(5, within(0.01));
  }
}
