package underfoot.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underfoot.knowledge.Workings;

/** What a working warns of, from the very number on at which it has to. */
@DisplayName("A working notes")
class NotesTest {
  private static String notes(String working, String keys) {
    Map<String, String> given = new LinkedHashMap<>();
    Arrays.stream(keys.split(" & "))
        .map(pair -> pair.split("=", 2))
        .forEach(pair -> given.put(pair[0], pair[1]));
    return String.join("\n", Workings.standard().named(working).read(given).notes());
  }

  @ParameterizedTest(name = "{0} {1}: {2}")
  @DisplayName("what holds for these numbers")
  @CsvSource(
      delimiter = '|',
      value = {
        // Falls of BS 5385-3: from 1:80 to 1:35, both still in order.
        "fall | gradient=80 & run=1 m & | none of | Gentler",
        "fall | gradient=81 & run=1 m & | one of | Gentler than 1:80",
        "fall | gradient=35 & run=1 m & | none of | steeper",
        "fall | gradient=34 & run=1 m & | one of | steeper than 1:35",
        "cure-time | hours=1 h & reference=20 C & temperature=5 C | none of | may stop hardening",
        "cure-time | hours=1 h & reference=20 C & temperature=4.9 C | one of | Below 5 C cement",
        "cure-time | history=5@20,5@4,5@20 & reference=20 C | one of | may stop hardening",
        "cure-time | history=5@20 & reference=20 C | one of | For Portland cement products",
        "cure-time | history=24@20 & reference=20 C & hours=24 h | one of | is worth the 24 h",
        "cuts | run=3012 mm & tile=600 mm & joint=3 mm & gap=0 mm | one of | whole tiles: nothing",
        "cuts | run=3012 mm & tile=600 mm & joint=3 mm & gap=0 mm | one of | A tile lies on the",
        "cuts | run=3013 mm & tile=600 mm & joint=3 mm & gap=0 mm | one of | A joint lies on the",
        "cuts | run=3013 mm & tile=600 mm & joint=3 mm & gap=0 mm | one of | less than half a tile",
        "cuts | run=3015 mm & tile=600 mm & joint=3 mm & gap=0 mm | none of | less than half",
        "heat-split | output=20 W/m2 & room=20 C & below=30 C & covering-resistance=0.05 m2K/W &"
            + " screed=45 mm & screed-conductivity=1.2 W/mK & resistance-below=1 m2K/W | one of |"
            + " down is negative",
        "heat-split | output=20 W/m2 & room=20 C & below=20 C & covering-resistance=0.05 m2K/W &"
            + " screed=45 mm & screed-conductivity=1.2 W/mK & resistance-below=1 m2K/W | none of |"
            + " negative",
        // EN 1264-4: cement screeds from day 21, calcium sulfate screeds from day 7.
        "heating-programme | screed=cement & start-day=21 & from=20 C & to=45 C & step=5 K & hold=3"
            + " | none of | Too early",
        "heating-programme | screed=cement & start-day=20 & from=20 C & to=45 C & step=5 K & hold=3"
            + " | one of | first warmed on day 21",
        "heating-programme | screed=calcium sulfate & start-day=7 & from=20 C & to=45 C & step=5 K"
            + " & hold=3 | none of | Too early",
        "heating-programme | screed=calcium sulfate & start-day=6 & from=20 C & to=45 C & step=5 K"
            + " & hold=3 | one of | first warmed on day 7",
        "heat-output | output=100 W/m2 & room=20 C | one of | the surface is at 28.99",
        "heat-output | surface=20 C & room=20 C | one of | within 9 K of the room",
        "evaporation | surface=10 C & air=30 C & humidity=90 % & wind=5 km/h | none of | expect it",
        "evaporation | surface=13.3 C & air=20 C & humidity=65 % & wind=50 km/h | none of | expect",
        "floor-frequency | span=5.3 m & stiffness=5.81e6 N.m2 & mass=226 kg/m2 | one of | is above",
        "floor-frequency | span=6.3 m & stiffness=5.81e6 N.m2 & mass=226 kg/m2 | none of | is"
            + " above",
        "joist-span | breadth=47 mm & depth=195 mm & grade=C16 & centres=400 mm & load=1.5 kN/m2 &"
            + " limit=360 | one of | C16 is taken as E = 8000 N/mm2",
        "joist-span | breadth=47 mm & depth=195 mm & grade=C16 & centres=400 mm & load=1.5 kN/m2 &"
            + " limit=360 | one of | Bending only",
        "joist-deflection | breadth=47 mm & depth=195 mm & modulus=8000 N/mm2 & centres=400 mm &"
            + " load=1.5 kN/m2 & span=4 m & shear-modulus=500 N/mm2 | one of | Bending and shear",
        "joist-deflection | breadth=47 mm & depth=195 mm & modulus=8000 N/mm2 & centres=400 mm &"
            + " load=1.5 kN/m2 & span=4 m | one of | is for an engineer and the local code",
        "levelling-volume | grid=0,0;0,0 & dx=3 m & dy=2 m & datum=1 mm | none of | above the"
            + " datum",
        "levelling-volume | grid=0,0,0;2,2,2 & dx=3 m & dy=2 m & datum=1 mm | one of | 6 m2 of 12"
            + " m2",
        "levelling-volume | grid=0,0;0,0 & dx=3 m & dy=2 m & datum=1 mm | one of | No density",
        "screw-length | overlay=6 mm & deck=6 mm | one of | No stocked screw is short enough",
        "screw-length | overlay=20 mm & deck=1 mm | one of | does not reach into the deck",
        "screw-length | overlay=12 mm & deck=18 mm | none of | does not reach",
        "screw-length | overlay=12 mm & deck=18 mm & tip-clear=1 mm | none of | No clearance",
        "straightedge-gap | positions=0,1000,2000 & heights=0,0,0 & edge=2 m | none of | shorter",
        "straightedge-gap | positions=0,1000,1999 & heights=0,0,0 & edge=2 m | one of | shorter",
        "straightedge-gap | positions=500,1500,2600 & heights=0,0,0 & edge=2 m | none of | shorter",
        "straightedge-gap | positions=0,1000,2000 & heights=0,0,0 & edge=2 m | one of | no gap",
        "straightedge-gap | positions=0,1000,2000 & heights=0,0,0 & edge=2 m | none of | rocks",
        "straightedge-gap | positions=0,1000,2000 & heights=0,-3,0 & edge=2 m | none of | no gap",
        "straightedge-gap | positions=0,1000,2000 & heights=0,-3,0 & edge=2 m | none of | rocks",
        "straightedge-gap | positions=0,1000,2000 & heights=0,3,0 & edge=2 m | one of | rocks on a"
            + " hump at 1000 mm",
        "straightedge-gap | positions=0,1000 & heights=0,3 | one of | one of 2 m is taken",
        "straightedge-gap | positions=0,1000 & heights=0,3 & edge=2 m | none of | is taken",
      })
  void holds(String working, String keys, String whether, String words) {
    String notes = notes(working, keys.replaceAll(" & ?$", ""));
    if (whether.equals("one of")) {
      assertThat(notes).contains(words);
    } else {
      assertThat(notes).doesNotContain(words);
    }
  }

  @Test
  @DisplayName("that a surface at or below the dew point will be wet, and no other")
  void wetSurface() {
    // 20 C and 100 %: the dew point is the air's own temperature, and there is no condensation yet.
    assertThat(notes("evaporation", "surface=20 C & air=20 C & humidity=100 % & wind=5 km/h"))
        .contains("not above the dew point of 20 C: expect it to be wet");
    assertThat(notes("evaporation", "surface=20.1 C & air=20 C & humidity=100 % & wind=5 km/h"))
        .doesNotContain("expect it to be wet");
    assertThat(notes("evaporation", "surface=20 C & air=20 C & humidity=0 % & wind=5 km/h"))
        .doesNotContain("dew point");
  }
}
