package underfoot.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.Workings;

@DisplayName("The steps of a working, reckoned over again as they are written")
class StepsTest {
  private static final Pattern OUTCOME =
      Pattern.compile("(?:=\\s*(?:span/|1:)?|cuts of )(-?[0-9][0-9.]*(?:e[-+]?[0-9]+)?)");

  /** Workings whose steps are told in words, not in sums. */
  private static final Set<String> IN_WORDS =
      Set.of("straightedge-gap", "movement-bays", "wood-moisture");

  /** Ways of giving keys that no example and no published row takes. */
  private static final List<String> MORE =
      List.of(
          "joist-span breadth=47 mm;depth=220 mm;grade=C24;centres=450 mm;load=2 kN/m2;limit=480;"
              + "shear-modulus=690 N/mm2",
          "joist-deflection breadth=47 mm;depth=195 mm;modulus=8000 N/mm2;centres=450 mm;"
              + "load=1.7 kN/m2;span=3.6 m;shear-modulus=500 N/mm2",
          "cure-time hours=24 h;reference=20 C;temperature=20 C",
          "cure-time hours=24 h;reference=20 C;temperature=-5 C",
          "cure-time history=12@8,24@14,36@18;reference=23 C",
          "heat-output output=60 W/m2",
          "heat-split output=50 W/m2;room=20 C;below=-5 C;covering-resistance=0.05 m2K/W;"
              + "screed=65 mm;screed-conductivity=1.2 W/mK;resistance-below=0.8 m2K/W",
          "heat-split output=20 W/m2;room=20 C;below=30 C;covering-resistance=0.05 m2K/W;"
              + "screed=45 mm;screed-conductivity=1.2 W/mK;resistance-below=1 m2K/W",
          "evaporation surface=10 C;air=-4 C;humidity=80 %;wind=20 km/h",
          "dew-point temperature=-5 C;humidity=80 %",
          "cuts run=3013 mm;tile=600 mm;joint=3 mm;gap=5 mm",
          "fall gradient=80;run=2.4 m",
          "screw-length overlay=12 mm;deck=18 mm;washer=1 mm;tip-clear=2 mm",
          "levelling-volume grid=0,4;2,9;dx=0.7 m;dy=1.3 m;datum=5 mm;density=1.7 kg/m2");

  private record Run(String working, Map<String, String> keys) {}

  private static List<Run> runs() {
    List<Run> runs = new ArrayList<>();
    for (Working working : Workings.standard().all()) {
      runs.add(new Run(working.name(), keys(working.example())));
    }
    PublishedRow.all().forEach(row -> runs.add(new Run(row.working(), row.keys())));
    MORE.forEach(line -> runs.add(read(line)));
    return runs;
  }

  private static Map<String, String> keys(List<String> pairs) {
    return pairs.stream()
        .map(pair -> pair.split("=", 2))
        .collect(Collectors.toMap(p -> p[0], p -> p[1], (a, b) -> b, LinkedHashMap::new));
  }

  @Test
  @DisplayName("come to what they say they come to")
  void comeOut() {
    Workings workings = Workings.standard();
    Set<String> reckoned = new TreeSet<>();
    for (Run run : runs()) {
      Result result = workings.named(run.working()).read(run.keys());
      List<String> steps = result.steps();
      for (int i = 0; i < steps.size(); i += 3) {
        String sum = steps.get(i + 1);
        Matcher outcome = OUTCOME.matcher(steps.get(i + 2));
        if (Arithmetic.of(sum).isEmpty() || !outcome.find()) {
          continue;
        }
        double value = Arithmetic.of(sum).get();
        double expected = steps.get(i).contains("rounded up") ? Math.ceil(value - 1e-6) : value;
        double said = Double.parseDouble(outcome.group(1));
        assertThat(said)
            .as(run + ": " + sum)
            .isCloseTo(expected, within(2e-5 + 1e-4 * Math.abs(expected)));
        reckoned.add(run.working());
      }
    }
    Set<String> others =
        workings.all().stream().map(Working::name).collect(Collectors.toCollection(TreeSet::new));
    others.removeAll(reckoned);
    assertThat(others).isEqualTo(new TreeSet<>(IN_WORDS));
  }

  @Test
  @DisplayName("hold every key that was given, as a number of the formula")
  void numbersOfTheKeys() {
    Workings workings = Workings.standard();
    assertThat(run(workings, "wood-moisture temperature=20 C;humidity=65 %").steps())
        .contains("T = 20", "h = 0.65");
    assertThat(run(workings, "movement-bays length=12 m;width=6 m;heated=yes").steps())
        .contains("12/2 m by 6/1 m", "2 bays of 6 m by 6 m, 36 m2");
    assertThat(run(workings, "movement-bays length=6 m;width=5 m;heated=yes").steps())
        .contains("1 bay of 6 m by 5 m, 30 m2");
    assertThat(run(workings, "fall gradient=50;length=1.8 m;width=0.9 m;drain=corner").steps())
        .contains("1800 mm by 900 mm");
    assertThat(run(workings, "levelling-volume grid=1,1,1;1,1,1;dx=1 m;dy=2 m;datum=2 mm").steps())
        .contains(
            "datum 2 mm, 2 cells of 1 m by 2 m, two triangles each, cut both ways",
            "volume-a = 4 L, volume-b = 4 L");
    assertThat(run(workings, "cure-time hours=24 h;reference=20 C;temperature=10 C").steps())
        .contains("T = 10 C", "E = 48.2 kJ/mol");
    assertThat(run(workings, "cure-time history=10@10,20@30;reference=20 C").steps())
        .contains("T = 10 C", "E = 48.2 kJ/mol");
    assertThat(
            run(
                    workings,
                    "joist-span breadth=47 mm;depth=220 mm;modulus=8000 N/mm2;centres=450 mm;"
                        + "load=2 kN/m2;limit=480;shear-modulus=500 N/mm2")
                .steps())
        .contains("5*0.9*L^3/(384*8000*41704700) + 0.9*L/(8*5/6*500*47*220) = 1/480");
    assertThat(
            run(
                    workings,
                    "joist-deflection breadth=47 mm;depth=195 mm;modulus=8000 N/mm2;"
                        + "centres=400 mm;load=1.5 kN/m2;span=4 m;shear-modulus=500 N/mm2")
                .steps())
        .contains("shear = w*L^2/(8*k*G*b*d), k = 5/6");
  }

  @Test
  @DisplayName("tell at most eight spells of a history one by one")
  void longHistories() {
    Workings workings = Workings.standard();
    String spell = "6@20";
    String eight = String.join(",", java.util.Collections.nCopies(8, spell));
    String sumOfEight = String.join(" + ", java.util.Collections.nCopies(8, "6*1"));
    assertThat(run(workings, "cure-time history=" + eight + ";reference=20 C").steps())
        .contains(sumOfEight, "equivalent-age = 48 h", "48/48");
    assertThat(
            run(workings, "cure-time history=" + eight + "," + spell + ";reference=20 C").steps())
        .contains(sumOfEight + " + ... (9 spells)", "equivalent-age = 54 h", "54/54");
  }

  /** A working's name and its keys; a ; within a grid parts no key. */
  private static Run read(String line) {
    String name = line.substring(0, line.indexOf(' '));
    return new Run(name, keys(List.of(line.substring(name.length() + 1).split(";(?=[a-z-]+=)"))));
  }

  private static Result run(Workings workings, String line) {
    Run run = read(line);
    return workings.named(run.working()).read(run.keys());
  }
}
