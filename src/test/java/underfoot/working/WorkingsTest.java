package underfoot.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.Assertions.offset;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import underfoot.knowledge.Workings;
import underfoot.quantity.Words;

@DisplayName("The workings by name")
class WorkingsTest {
  private static final Workings WORKINGS = Workings.standard();

  private static Map<String, String> keys(List<String> pairs) {
    Map<String, String> keys = new LinkedHashMap<>();
    for (String pair : pairs) {
      keys.put(pair.substring(0, pair.indexOf('=')), pair.substring(pair.indexOf('=') + 1));
    }
    return keys;
  }

  private static Result run(String name, String... pairs) {
    return WORKINGS.named(name).read(keys(List.of(pairs)));
  }

  private static String refusal(String name, String... pairs) {
    Throwable thrown = catchThrowable(() -> run(name, pairs));
    assertThat(thrown).isInstanceOf(Refused.class);
    return thrown.getMessage();
  }

  @Test
  @DisplayName("are the 22 of the contract, with their keys and results")
  void theContract() {
    Map<String, String> contract = new LinkedHashMap<>();
    contract.put("joist-span", "breadth depth modulus grade centres load limit shear-modulus");
    contract.put("joist-deflection", "breadth depth modulus grade centres load span shear-modulus");
    contract.put("deck-deflection", "thickness modulus centres load");
    contract.put("floor-frequency", "span stiffness mass");
    contract.put("straightedge-gap", "positions heights edge");
    contract.put("best-plane", "points grid dx dy");
    contract.put("levelling-volume", "grid dx dy datum density");
    contract.put("evaporation", "surface air humidity wind");
    contract.put("cure-time", "hours reference temperature history");
    contract.put("drying-time", "screed thickness");
    contract.put("heat-output", "surface room output");
    contract.put(
        "heat-split",
        "output room below covering-resistance screed screed-conductivity resistance-below");
    contract.put("heating-programme", "screed start-day from to step hold");
    contract.put("grout", "length width thickness joint density");
    contract.put("adhesive", "notch angle powder");
    contract.put("movement-bays", "length width heated");
    contract.put("cuts", "run tile joint gap");
    contract.put("tiles-per-area", "length width joint");
    contract.put("fall", "gradient run length width drain");
    contract.put("screw-length", "overlay deck washer tip-clear");
    contract.put("wood-moisture", "temperature humidity");
    contract.put("dew-point", "temperature humidity");
    assertThat(
            WORKINGS.all().stream()
                .collect(
                    Collectors.toMap(
                        Working::name,
                        working ->
                            working.keys().stream()
                                .map(Key::name)
                                .collect(Collectors.joining(" ")))))
        .containsExactlyInAnyOrderEntriesOf(contract);
  }

  @TestFactory
  @DisplayName("run their own examples, with steps in threes, a source and finite results")
  Stream<DynamicTest> examplesRun() {
    return WORKINGS.all().stream()
        .map(
            working ->
                dynamicTest(
                    working.name(),
                    () -> {
                      Result result = working.read(keys(working.example()));
                      assertThat(result.working()).isEqualTo(working.name());
                      assertThat(result.results()).isNotEmpty();
                      assertThat(result.steps()).isNotEmpty().noneMatch(String::isBlank);
                      assertThat(result.steps().size() % 3).isZero();
                      assertThat(result.source()).isNotBlank();
                      assertThat(result.inputs().keySet())
                          .containsExactlyInAnyOrderElementsOf(keys(working.example()).keySet());
                      assertThat(working.purpose())
                          .isNotBlank()
                          .doesNotContain("\n")
                          .hasSizeLessThan(100);
                    }));
  }

  @TestFactory
  @DisplayName(
      "refuse a missing, unknown, unitless, wrongly measured or impossible key on one line"
          + " that names it and its range")
  Stream<DynamicTest> badKeys() {
    List<DynamicTest> tests = new ArrayList<>();
    for (Working working : WORKINGS.all()) {
      Map<String, String> example = keys(working.example());
      for (Key key : working.keys()) {
        if (!example.containsKey(key.name())) {
          continue;
        }
        for (String bad :
            List.of(
                "",
                " ",
                "1 furlong",
                "nonsense",
                "NaN",
                "Infinity",
                "1e400",
                "-1e9",
                "1e99",
                ";",
                ",",
                "1,,2",
                "\n",
                "1 2 3",
                "--",
                "-",
                "+",
                ".",
                "1e",
                "@",
                "0x1F",
                "1_000")) {
          tests.add(
              dynamicTest(
                  working.name() + " " + key.name() + "=" + Words.quote(bad),
                  () -> {
                    Map<String, String> given = new LinkedHashMap<>(example);
                    given.put(key.name(), bad);
                    assertThatThrownBy(() -> working.read(given))
                        .isInstanceOf(Refused.class)
                        .hasMessageStartingWith(key.name() + ": ")
                        .hasMessageEndingWith("; it is " + key.range())
                        .extracting(Throwable::getMessage)
                        .asString()
                        .doesNotContain("\n");
                  }));
        }
        tests.add(
            dynamicTest(
                working.name() + " without " + key.name(),
                () -> {
                  Map<String, String> given = new LinkedHashMap<>(example);
                  given.remove(key.name());
                  boolean marks =
                      working.alternatives().stream()
                          .anyMatch(way -> way.needed().get(0).equals(key.name()));
                  boolean within =
                      working.alternatives().stream()
                          .anyMatch(way -> way.needed().contains(key.name()));
                  if (key.needed() || within && !marks) {
                    assertThatThrownBy(() -> working.read(given))
                        .hasMessageStartingWith(key.name() + ": is missing");
                  } else if (marks) {
                    assertThatThrownBy(() -> working.read(given))
                        .hasMessageContaining("is missing (or give ");
                  } else {
                    assertThat(working.read(given).results()).isNotEmpty();
                  }
                }));
      }
      tests.add(
          dynamicTest(
              working.name() + " with a key too many",
              () -> {
                Map<String, String> given = new LinkedHashMap<>(example);
                given.put("colour", "red");
                assertThatThrownBy(() -> working.read(given))
                    .isInstanceOf(Refused.class)
                    .hasMessageContaining("\"colour\" is not a key of " + working.name());
              }));
    }
    return tests.stream();
  }

  @Test
  @DisplayName("suggest the nearest key and the nearest name")
  void suggestions() {
    assertThat(refusal("joist-span", "bredth=47 mm"))
        .isEqualTo(
            "\"bredth\" is not a key of joist-span; did you mean breadth, a length in mm, um, cm, m,"
                + " in, ft or yd, 10 mm to 1000 mm?");
    assertThatThrownBy(() -> WORKINGS.named("joist-spam"))
        .hasMessage("no working is called \"joist-spam\"; did you mean joist-span?");
    assertThatThrownBy(() -> WORKINGS.named("marmalade"))
        .hasMessage("no working is called \"marmalade\"; 'work-out' alone lists them all");
  }

  @Test
  @DisplayName("take one way of giving a key, not two and not half of one")
  void alternatives() {
    assertThat(
            refusal(
                "joist-span",
                "breadth=47 mm",
                "depth=195 mm",
                "modulus=8 GPa",
                "grade=C16",
                "centres=400 mm",
                "load=1.5 kN/m2",
                "limit=360"))
        .startsWith("grade: is not taken together with modulus; it is C14, C16,");
    assertThat(refusal("heat-output", "output=100 W/m2", "surface=29 C"))
        .startsWith("output: is not taken together with surface");
    assertThat(refusal("fall", "gradient=50", "length=1 m", "width=1 m"))
        .startsWith("drain: is missing; it is centre, corner, long edge or short edge");
    assertThat(refusal("fall", "gradient=50", "run=1 m", "drain=corner"))
        .startsWith("drain: is not taken together with run");
    assertThat(refusal("cure-time", "reference=20 C", "temperature=10 C"))
        .startsWith("hours: is missing");
    assertThat(run("heat-output", "output=100 W/m2", "room=20 C").value("excess"))
        .isCloseTo(9, offset(0.01));
  }

  @Test
  @DisplayName("read words whatever their case and hyphens")
  void words() {
    assertThat(run("drying-time", "screed=Calcium-Sulfate", "thickness=60 mm").value("days"))
        .isEqualTo(80);
    assertThat(
            run("fall", "gradient=80", "length=1.5 m", "width=1.2 m", "drain=long-edge")
                .value("longest-run"))
        .isEqualTo(1200);
  }

  @Test
  @DisplayName("refuse ragged grids, unequal lists, positions that do not rise and huge lists")
  void badShapes() {
    assertThat(refusal("best-plane", "grid=1,2;3", "dx=1 m", "dy=1 m"))
        .startsWith("grid: row 2 has 1 heights, row 1 has 2; it is rows separated by ;");
    assertThat(refusal("levelling-volume", "grid=1,2,3", "dx=1 m", "dy=1 m", "datum=5 mm"))
        .startsWith("grid: needs two rows of two heights or more");
    assertThat(refusal("best-plane", "points=0,0,0;1,1,1;2,2,5"))
        .startsWith("points: the readings lie on one line");
    assertThat(refusal("best-plane", "points=0,0,0;1,1"))
        .startsWith("points: point 2 has 2 numbers, not 3");
    assertThat(refusal("straightedge-gap", "positions=0,500,500", "heights=0,1,2"))
        .startsWith("positions: must rise, and value 3 does not");
    assertThat(refusal("straightedge-gap", "positions=0,500", "heights=0,1,2"))
        .startsWith("heights: has 3 values for 2 positions");
    assertThat(refusal("straightedge-gap", "positions=0", "heights=0"))
        .startsWith("positions: needs two readings or more");
    assertThat(
            refusal(
                "deck-deflection",
                "thickness=18 mm,15 mm",
                "modulus=3300 N/mm2",
                "centres=450 mm",
                "load=2 kN/m2"))
        .startsWith("modulus: has 1 values for 2 thicknesses");
    String many = IntStream.range(0, 20_000).mapToObj(i -> "1").collect(Collectors.joining(","));
    assertThat(refusal("straightedge-gap", "positions=" + many, "heights=" + many))
        .startsWith("positions: has more than 10000 values");
    assertThat(refusal("best-plane", "grid=" + many.replace(',', ';'), "dx=1 m", "dy=1 m"))
        .startsWith("grid: has more than 10000 values");
    assertThat(refusal("cure-time", "history=12@8,24", "reference=20 C"))
        .startsWith("history: \"24\" is not hours@temperature");
  }

  @Test
  @DisplayName("take units in cells and bare numbers where the contract says so, and nowhere else")
  void bareNumbers() {
    assertThat(
            run("straightedge-gap", "positions=0 m,1.5 m,3 m", "heights=0 mm,-0.6 cm,0")
                .value("gap"))
        .isCloseTo(4, offset(1e-6));
    assertThat(
            run("cure-time", "history=12 h@8 C,24@14,36@18", "reference=20 C")
                .value("equivalent-age"))
        .isCloseTo(54.1, offset(0.1));
    assertThat(run("best-plane", "points=0,0,0;100 cm,0,1;0,1 m,0.2 cm").value("c"))
        .isCloseTo(2, offset(1e-9));
    assertThat(refusal("dew-point", "temperature=20", "humidity=50 %"))
        .startsWith("temperature: \"20\" has no unit");
    assertThat(
            refusal(
                "deck-deflection",
                "thickness=18",
                "modulus=3300 N/mm2",
                "centres=450 mm",
                "load=2 kN/m2"))
        .startsWith("thickness: \"18\" has no unit");
    assertThat(
            refusal(
                "heating-programme",
                "screed=cement",
                "start-day=21.5",
                "from=20 C",
                "to=45 C",
                "step=5 K",
                "hold=3"))
        .startsWith("start-day: 21.5 days is not a whole number of days");
  }

  @Test
  @DisplayName("settle on condensation, no rate and the dew point where Uno gives less than nought")
  void condensation() {
    Result result = run("evaporation", "surface=10 C", "air=30 C", "humidity=90 %", "wind=5 km/h");
    assertThat(result.value("rate")).isZero();
    assertThat(result.value("condensation")).isEqualTo(1);
    assertThat(result.value("band")).isZero();
    assertThat(result.notes().get(0)).contains("dew point of the air is 28.");
    Result dry = run("evaporation", "surface=20 C", "air=20 C", "humidity=100 %", "wind=5 km/h");
    assertThat(dry.value("condensation")).isZero();
    assertThat(
            run("evaporation", "surface=20 C", "air=20 C", "humidity=0 %", "wind=0 km/h")
                .value("rate"))
        .isPositive();
  }

  @Test
  @DisplayName("tell each band of evaporation from its threshold on")
  void bands() {
    EvaporationBands bands = new EvaporationBands(0.25, 0.5, 1);
    assertThat(List.of(bands.of(0.2499), bands.of(0.25), bands.of(0.4999), bands.of(0.5)))
        .containsExactly(0, 1, 1, 2);
    assertThat(List.of(bands.of(0.9999), bands.of(1), bands.of(7))).containsExactly(2, 3, 3);
  }

  @Test
  @DisplayName("lay a short edge profile whole, and find the worst window between readings")
  void straightedgeWindows() {
    assertThat(
            run("straightedge-gap", "positions=0,400,1200", "heights=0,-3,0", "edge=2 m")
                .value("gap"))
        .isCloseTo(3, offset(1e-9));
    // A hollow 3 m long and 6 mm deep: 4 mm under 2 m, 6 mm under 3 m.
    assertThat(
            run("straightedge-gap", "positions=0,1500,3000", "heights=0,-6,0", "edge=3 m")
                .value("gap"))
        .isCloseTo(6, offset(1e-9));
    Result flat = run("straightedge-gap", "positions=250,900", "heights=3,9");
    assertThat(flat.value("gap")).isZero();
    assertThat(flat.value("at")).isEqualTo(250);
  }

  @Test
  @DisplayName("pour nothing where the floor stands above the datum")
  void nothingToPour() {
    Result result =
        run(
            "levelling-volume",
            "grid=5,6;7,8",
            "dx=1 m",
            "dy=1 m",
            "datum=5 mm",
            "density=2 kg/m2");
    for (String key : List.of("volume", "area", "min-depth", "max-depth", "mean-depth", "mass")) {
      assertThat(result.value(key)).as(key).isZero();
    }
    assertThat(run("levelling-volume", "grid=1,1;1,1", "dx=1 m", "dy=1 m", "datum=2 mm").results())
        .doesNotContainKey("mass");
  }

  @Test
  @DisplayName(
      "find whole tiles at the ends where the run allows them, and never a cut over a tile")
  void cutsAtTheEnds() {
    Result whole = run("cuts", "run=3012 mm", "tile=600 mm", "joint=3 mm", "gap=0 mm");
    assertThat(whole.value("full")).isEqualTo(3);
    assertThat(whole.value("cut")).isEqualTo(600);
    Result over = run("cuts", "run=3013 mm", "tile=600 mm", "joint=3 mm", "gap=0 mm");
    assertThat(over.value("full")).isEqualTo(4);
    assertThat(over.value("cut")).isCloseTo(299, offset(1e-9));
    assertThat(run("cuts", "run=500 mm", "tile=600 mm", "joint=3 mm", "gap=6 mm").value("cut"))
        .isCloseTo(242.5, offset(1e-9));
    assertThat(refusal("cuts", "run=12 mm", "tile=600 mm", "joint=3 mm", "gap=6 mm"))
        .startsWith("run: there is no room for two cuts");
  }

  @Test
  @DisplayName("pass a bay that meets its limits exactly and split one just over")
  void bayLimits() {
    assertThat(run("movement-bays", "length=8 m", "width=5 m", "heated=yes").value("bays"))
        .isEqualTo(1);
    assertThat(run("movement-bays", "length=8.001 m", "width=4 m", "heated=yes").value("bays"))
        .isEqualTo(2);
    assertThat(run("movement-bays", "length=8 m", "width=5.001 m", "heated=yes").value("bays"))
        .isEqualTo(2);
    assertThat(run("movement-bays", "length=10 m", "width=10 m", "heated=no").value("bays"))
        .isEqualTo(1);
    Result twelve = run("movement-bays", "length=12 m", "width=12 m", "heated=yes");
    assertThat(twelve.value("along")).isEqualTo(2);
    assertThat(twelve.value("across")).isEqualTo(2);
    assertThat(run("movement-bays", "length=5 m", "width=9 m", "heated=yes").value("across"))
        .isEqualTo(2);
    assertThat(run("movement-bays", "length=1000 m", "width=1000 m", "heated=yes").value("bays"))
        .isEqualTo(25_000);
  }

  @Test
  @DisplayName("choose no screw where none is short enough, and count washer and clearance")
  void screws() {
    Result none = run("screw-length", "overlay=6 mm", "deck=6 mm");
    assertThat(none.value("choose")).isZero();
    assertThat(none.value("grip")).isZero();
    Result counted =
        run("screw-length", "overlay=12 mm", "deck=18 mm", "washer=1 mm", "tip-clear=2 mm");
    assertThat(counted.value("longest")).isEqualTo(29);
    assertThat(counted.value("choose")).isEqualTo(25);
    assertThat(counted.value("grip")).isEqualTo(12);
    // Common practice, no source: 6 mm board on 20 mm boards, a 25 mm screw with washer stays
    // inside.
    assertThat(run("screw-length", "overlay=6 mm", "deck=20 mm", "washer=1 mm").value("choose"))
        .isEqualTo(25);
    assertThat(run("screw-length", "overlay=20 mm", "deck=5 mm").value("choose")).isEqualTo(25);
    assertThat(refusal("screw-length", "overlay=1 mm", "deck=5 mm", "tip-clear=6 mm"))
        .startsWith("tip-clear: the clearance leaves no length");
  }

  @Test
  @DisplayName("round heating steps up to whole days and note a start that is too early")
  void heatingDays() {
    Result result =
        run(
            "heating-programme",
            "screed=calcium sulfate",
            "start-day=6",
            "from=20 C",
            "to=43 C",
            "step=5 K/day",
            "hold=3 days");
    assertThat(result.value("at-top-day")).isEqualTo(11);
    assertThat(result.value("done-day")).isEqualTo(19);
    assertThat(result.notes().get(0)).startsWith("Too early");
    assertThat(
            refusal(
                "heating-programme",
                "screed=cement",
                "start-day=21",
                "from=45 C",
                "to=20 C",
                "step=5 K",
                "hold=3"))
        .startsWith("to: is below the 45 C it begins at");
  }

  @Test
  @DisplayName("tell whether a history is worth the hours asked for")
  void historyAndHours() {
    assertThat(run("cure-time", "history=12@8,24@14,36@18", "reference=20 C", "hours=60 h").notes())
        .anyMatch(note -> note.contains("falls short of the 60 h asked for by 5.9"));
    assertThat(run("cure-time", "history=12@8,24@14,36@18", "reference=20 C", "hours=50 h").notes())
        .anyMatch(note -> note.contains("is worth the 50 h"));
  }

  @Test
  @DisplayName(
      "let heat come from a warmer space below, and refuse where it would heat the room alone")
  void warmBelow() {
    String[] keys = {
      "output=20 W/m2",
      "room=20 C",
      "below=30 C",
      "covering-resistance=0.05 m2K/W",
      "screed=45 mm",
      "screed-conductivity=1.2 W/mK",
      "resistance-below=1 m2K/W"
    };
    assertThat(run("heat-split", keys).value("down")).isNegative();
    keys[2] = "below=60 C";
    assertThat(refusal("heat-split", keys)).startsWith("below: the space below is so warm");
    assertThat(refusal("heat-output", "surface=19 C", "room=20 C"))
        .startsWith("surface: is below the room's 20 C");
  }

  @Test
  @DisplayName("never answer random text with anything but a result or a refusal on one line")
  void randomText() {
    Random random = Seeded.random();
    String letters = "0123456789.,;@-+ eEmNC%/:²kKWhpsfgLin\t\"'=xX\u2212\u0000\uD83D";
    for (int round = 0; round < 4000; round++) {
      Working working = WORKINGS.all().get(random.nextInt(WORKINGS.all().size()));
      Map<String, String> given = new LinkedHashMap<>(keys(working.example()));
      List<String> names = List.copyOf(given.keySet());
      String name = names.get(random.nextInt(names.size()));
      StringBuilder text = new StringBuilder(random.nextBoolean() ? given.get(name) : "");
      for (int i = random.nextInt(8); i >= 0; i--) {
        text.insert(
            random.nextInt(text.length() + 1), letters.charAt(random.nextInt(letters.length())));
      }
      given.put(name, text.toString());
      Throwable thrown = catchThrowable(() -> working.read(given));
      if (thrown != null) {
        assertThat(thrown)
            .as(Seeded.seed(round) + " " + working.name() + " " + name + "=" + text)
            .isInstanceOf(Refused.class);
        assertThat(thrown.getMessage()).doesNotContain("\n").contains(name);
      }
    }
  }
}
