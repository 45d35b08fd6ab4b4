package underfoot.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underfoot.knowledge.Facts;

/** Rooms, tiles, climate, drying and heating, from whole scenarios. */
class RoomAndSiteMeasureTest {
  @Test
  @DisplayName("An L-shaped room with a chimney breast: area and walls as added by hand")
  void outline() {
    Facts facts =
        Measured.of(
            Measured.scenario(
                "room: {use: hall, outline: [[0 m, 0 m], [5 m, 0 m], [5 m, 2 m], [2 m, 2 m], [2 m, 3"
                    + " m], [1.6 m, 3 m], [1.6 m, 4 m], [2 m, 4 m], [2 m, 5 m], [0 m, 5 m]]}"));
    // 5 x 2 + 2 x 3 less a breast of 0.4 x 1.0.
    assertThat(facts.number("area")).isCloseTo(15.6, within(1e-9));
    assertThat(facts.number("perimeter")).isCloseTo(20_800, within(1e-6));
    assertThat(facts.number("longest run")).isCloseTo(5000, within(1e-6));
    assertThat(facts.number("shortest run")).isCloseTo(5000, within(1e-6));
  }

  @Test
  @DisplayName("A turned room has the same runs, and feet the same as metres")
  void turned() {
    Facts feet =
        Measured.of(
            Measured.scenario(
                "room: {use: hall, outline: [[0 ft, 0 ft], [9 ft, 12 ft], [5 ft, 15 ft], [-4 ft, 3"
                    + " ft]]}"));
    assertThat(feet.number("longest run")).isCloseTo(15 * 304.8, within(1e-6));
    assertThat(feet.number("shortest run")).isCloseTo(5 * 304.8, within(1e-6));
    assertThat(feet.number("area")).isCloseTo(75 * 0.09290304, within(1e-9));
  }

  @Test
  @DisplayName("Without an outline the stated area and longest side are used")
  void stated() {
    Facts facts =
        Measured.of(Measured.scenario("room: {use: hall, area: 12 m2, longest side: 4 m}"));
    assertThat(facts.number("area")).isEqualTo(12);
    assertThat(facts.number("shortest run")).isCloseTo(3000, within(1e-9));
    assertThat(facts.find("perimeter")).isNull();
    assertThat(Measured.of(Measured.scenario()).find("area")).isNull();
  }

  @ParameterizedTest(name = "{0} by {1}, heated {2}: {3} bays")
  @DisplayName("Bays: 10 m, heated 8 m and 40 m2 (trade association's guide); a limit met passes")
  @CsvSource({
    "10 m, 6 m, no, 1",
    "10.01 m, 6 m, no, 2",
    "8 m, 5 m, yes, 1",
    "8 m, 5.01 m, yes, 2",
    "8.01 m, 3 m, yes, 2",
    "21 m, 11 m, no, 6",
  })
  void bays(String length, String width, String heated, double bays) {
    String room =
        "room: {use: hall, outline: [[0 m, 0 m], [L, 0 m], [L, W], [0 m, W]]}"
            .replace("L", length)
            .replace("W", width);
    assertThat(Measured.of(Measured.scenario(room), "heated: " + heated).number("bays"))
        .isEqualTo(bays);
  }

  @Test
  @DisplayName("Bays that hold no floor of an L-shaped room are not counted")
  void baysOfAnL() {
    Facts facts =
        Measured.of(
            Measured.scenario(
                "room: {use: hall, outline: [[0 m, 0 m], [20 m, 0 m], [20 m, 3 m], [4 m, 3 m], [4 m, 20"
                    + " m], [0 m, 20 m]]}"),
            "heated: no");
    assertThat(facts.number("bays")).isEqualTo(3);
    assertThat(facts.number("bay length")).isCloseTo(10_000, within(1e-6));
    assertThat(facts.find("bays").how()).contains("3 of these 4 bays hold floor");
  }

  @Test
  @DisplayName("Bow is told as a share of the longest edge")
  void bow() {
    Facts facts =
        Measured.of(
            Measured.scenario(
                "tile: {material: porcelain, length: 600 mm, width: 300 mm, thickness: 9 mm, bow: 1.2"
                    + " mm}"));
    assertThat(facts.number("tile bow share")).isCloseTo(0.2, within(1e-9));
    assertThat(facts.number("slenderness")).isEqualTo(2);
    assertThat(facts.number("face area")).isEqualTo(1800);
  }

  @ParameterizedTest(name = "floor {0}, air {1}, {2}, {3}: {4} kg/m2h, band {5}")
  @DisplayName("Evaporation after Uno 1998, worked examples E4 to E9")
  @CsvSource({
    "20 C, 20 C, 50 %, 0 km/h, 0.0890, 0",
    "25 C, 25 C, 50 %, 10 km/h, 0.4244, 1",
    "30 C, 30 C, 50 %, 20 km/h, 0.9578, 2",
    "15 C, 10 C, 70 %, 5 km/h, 0.1508, 0",
    "30 C, 20 C, 45 %, 1 km/h, 0.2989, 1",
    "32 C, 35 C, 30 %, 25 km/h, 1.6737, 3",
  })
  void evaporation(
      String floor, String air, String humidity, String wind, double rate, double band) {
    Facts facts = Measured.of(Measured.scenario(site(floor, air, humidity, wind)));
    assertThat(facts.number("evaporation rate")).isCloseTo(rate, within(0.0005));
    assertThat(facts.number("evaporation band")).isEqualTo(band);
    assertThat(facts.find("evaporation rate").how()).contains("5*(");
  }

  private static String site(String floor, String air, String humidity, String wind) {
    return "site: {air temperature: "
        + air
        + ", floor temperature: "
        + floor
        + ", relative humidity: "
        + humidity
        + ", air speed: "
        + wind
        + "}";
  }

  @ParameterizedTest(name = "{0} and {1}: {2} C")
  @DisplayName("Dew point by the Magnus form, worked examples M33")
  @CsvSource({
    "20 C, 50 %, 9.26",
    "20 C, 65 %, 13.22",
    "20 C, 75 %, 15.43",
    "15 C, 80 %, 11.58",
    "25 C, 60 %, 16.69",
  })
  void dewPoint(String air, String humidity, double dewPoint) {
    Facts facts = Measured.of(Measured.scenario(site("12 C", air, humidity, "0 km/h")));
    assertThat(facts.number("dew point")).isCloseTo(dewPoint, within(0.02));
    assertThat(facts.number("dew margin")).isCloseTo(12 - dewPoint, within(0.02));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @DisplayName("Speed of curing relative to 23 C, worked examples E20")
  @CsvSource({"5 C, 0.2322", "10 C, 0.4071", "15 C, 0.6309", "20 C, 0.8700", "30 C, 1.3691"})
  void cureFactor(String floor, double factor) {
    Facts facts = Measured.of(Measured.scenario("site: {floor temperature: " + floor + "}"));
    assertThat(facts.number("cure factor")).isCloseTo(factor, within(0.001));
  }

  @Test
  @DisplayName("Where the floor's temperature is not known the air's is taken")
  void workingTemperature() {
    Facts air = Measured.of(Measured.scenario("site: {air temperature: 12 C}"));
    assertThat(air.number("working temperature")).isEqualTo(12);
    Facts both =
        Measured.of(Measured.scenario("site: {air temperature: 12 C, floor temperature: 7 C}"));
    assertThat(both.number("working temperature")).isEqualTo(7);
    assertThat(Measured.of(Measured.scenario()).find("working temperature")).isNull();
  }

  @ParameterizedTest(name = "{0} of {1}: {2} days")
  @DisplayName("Drying: cement screed (M19), calcium sulfate screed (M21)")
  @CsvSource({
    "cement:sand screed, 25 mm, 25",
    "cement:sand screed, 50 mm, 50",
    "cement:sand screed, 60 mm, 70",
    "cement:sand screed, 75 mm, 100",
    "cement:sand screed, 100 mm, 150",
    "calcium sulfate screed, 30 mm, 30",
    "calcium sulfate screed, 40 mm, 40",
    "calcium sulfate screed, 60 mm, 80",
    "calcium sulfate screed, 75 mm, 110",
  })
  void drying(String base, String thickness, double days) {
    Facts facts =
        Measured.of(
            Measured.scenario(
                "subfloor: {deck: '" + base + "', thickness: " + thickness + ", age: 10 days}"),
            "base: " + base);
    assertThat(facts.number("drying needed")).isCloseTo(days * 24, within(1e-9));
    assertThat(facts.number("drying left")).isCloseTo((days - 10) * 24, within(1e-9));
  }

  @Test
  @DisplayName(
      "A slab of 150 mm takes more than a year to dry from one face (M22), never less than 0")
  void slab() {
    Facts young =
        Measured.of(
            Measured.scenario("subfloor: {deck: concrete slab, thickness: 150 mm, age: 3 weeks}"),
            "base: concrete slab");
    assertThat(young.number("drying needed")).isGreaterThan(365 * 24);
    Facts old =
        Measured.of(
            Measured.scenario("subfloor: {deck: concrete slab, thickness: 150 mm, age: 30 years}"),
            "base: concrete slab");
    assertThat(old.number("drying left")).isZero();
  }

  @ParameterizedTest(name = "{0} at {1}: {2} C")
  @DisplayName("Surface of a heated floor: 100 W/m2 is 9.00 K over the room (EN 1264-2, H18)")
  @CsvSource({
    "living area, 100 W/m2, 29.0",
    "bathroom, 100 W/m2, 33.0",
    "living area, 50 W/m2, 24.79"
  })
  void heatedFloor(String use, String output, double surface) {
    Facts facts =
        Measured.of(
            Measured.scenario(
                "room: {use: " + use + "}",
                "heating: {kind: electric mat, output: " + output + "}"),
            "heated: yes");
    assertThat(facts.number("floor surface temperature")).isCloseTo(surface, within(0.01));
  }

  @Test
  @DisplayName("Every measured fact says how it was worked out and what from")
  void chain() {
    Facts facts =
        Measured.of(
            Measured.scenario(
                "room: {use: hall, outline: [[0 m, 0 m], [5 m, 0 m], [5 m, 2 m], [0 m, 2 m]]}",
                "levels: {readings: [[0 m, 0 m, 0 mm], [5 m, 0 m, 4 mm], [2 m, 2 m, 1 mm]], wanted:"
                    + " flat}",
                site("12 C", "14 C", "60 %", "1 km/h")),
            "heated: no");
    assertThat(facts.all())
        .filteredOn(fact -> fact.from() == underfoot.knowledge.From.MEASURED)
        .hasSizeGreaterThan(15)
        .allSatisfy(
            fact -> {
              assertThat(fact.how()).as(fact.name()).isNotBlank();
              assertThat(fact.uses()).as(fact.name()).isNotEmpty().doesNotContainNull();
            });
  }

  @Test
  @DisplayName("Timber of 14 % dries, and swells by as little less, to what its air brings it to")
  void timber() {
    Facts facts =
        Measured.of(
            Measured.scenario(
                "site: {air temperature: 20 C, relative humidity: 65 %}",
                "subfloor: {deck: chipboard, timber moisture: 14 %}"));
    // Wood Handbook table: 12.0 % at 20 C and 65 %.
    assertThat(facts.number("timber equilibrium")).isCloseTo(12.0, within(0.1));
    double rest = facts.number("timber equilibrium");
    assertThat(facts.number("timber drying to come")).isCloseTo(14 - rest, within(1e-6));
    assertThat(facts.number("timber swelling to come")).isCloseTo(rest - 14, within(1e-6));
    Facts unknown =
        Measured.of(Measured.scenario("site: {air temperature: 20 C, relative humidity: 65 %}"));
    assertThat(unknown.find("timber equilibrium")).isNotNull();
    assertThat(unknown.find("timber drying to come")).isNull();
  }

  @Test
  @DisplayName("A notch of 10 mm leaves a bed of 3.54 mm under tile, board and membrane alike")
  void beds() {
    Facts facts = Measured.stated(Measured.scenario());
    for (String notch : new String[] {"trowel notch", "board notch", "membrane notch"}) {
      facts.add(underfoot.knowledge.Fact.stated(notch, notch, "", "10 mm", 10));
    }
    underfoot.knowledge.Figures figures = Measured.knowledge().figures();
    Measures.of(Measured.scenario(), new Surveys(), figures, facts);
    double bed = 5 * Math.sin(Math.toRadians(figures.get("trowel-angle").number()));
    double powder = figures.get("use-of-adhesive-powder").value();
    for (String of : new String[] {"tile", "board", "membrane"}) {
      assertThat(facts.number(of + " bed depth")).isCloseTo(bed, within(1e-6));
      assertThat(facts.number(of + " bed powder")).isCloseTo(bed * powder, within(1e-6));
    }
    Facts none = Measured.of(Measured.scenario());
    assertThat(none.find("board bed depth")).isNull();
  }

  @Test
  @DisplayName("Measures give only what was not held, and what they give is held afterwards")
  void onlyTheNew() {
    underfoot.scenario.Scenario scenario =
        Measured.scenario("site: {air temperature: 20 C, relative humidity: 65 %}");
    Facts facts = Measured.stated(scenario);
    underfoot.knowledge.Figures figures = Measured.knowledge().figures();
    java.util.List<underfoot.knowledge.Fact> first =
        Measures.of(scenario, new Surveys(), figures, facts);
    assertThat(first).extracting(underfoot.knowledge.Fact::name).contains("dew point");
    assertThat(facts.all()).containsAll(first);
    assertThat(Measures.of(scenario, new Surveys(), figures, facts)).isEmpty();
  }
}
