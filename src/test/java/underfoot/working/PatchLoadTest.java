package underfoot.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underfoot.working.DeckPointLoad.Strip;
import underfoot.working.PatchLoad.Patch;

@DisplayName("Loads on a part of a joist or a deck")
class PatchLoadTest {
  private static final double SPAN = 4000;

  @Test
  @DisplayName("over the whole joist bend it as an even load does (references X-3: 2.974 mm)")
  void whole() {
    // 0.5 kN/m2 at 400 mm is 0.2 N/mm, 800 N over 4 m.
    List<Patch> even = List.of(new Patch(0, SPAN, 800));
    assertThat(PatchLoad.moment(even, SPAN)).isCloseTo(800 * SPAN / 8, offset(1.0));
    assertThat(PatchLoad.reaction(even, SPAN)).isCloseTo(400, offset(1e-9));
    assertThat(PatchLoad.deflection(even, SPAN, 47, 195, 8000, 500))
        .isCloseTo(2.974, offset(0.001));
  }

  @Test
  @DisplayName(
      "on one point in the middle bend it by 5.739 mm a kN (references X-5), besides shear")
  void point() {
    List<Patch> middle = List.of(new Patch(2000, 2000, 1000));
    double shear = 1000 * SPAN / (4 * 5 / 6.0 * 500 * 47 * 195);
    assertThat(PatchLoad.deflection(middle, SPAN, 47, 195, 8000, 500) - shear)
        .isCloseTo(5.739, offset(0.001));
    assertThat(PatchLoad.moment(middle, SPAN)).isCloseTo(1000 * SPAN / 4, offset(1e-6));
  }

  @Test
  @DisplayName("beside the middle obey P a b/L, and press most on the nearer support")
  void aside() {
    List<Patch> aside = List.of(new Patch(1000, 1000, 1000));
    assertThat(PatchLoad.moment(aside, SPAN)).isCloseTo(1000.0 * 1000 * 3000 / SPAN, offset(1e-6));
    assertThat(PatchLoad.reaction(aside, SPAN)).isCloseTo(750, offset(1e-9));
    // Of a bath 1700 mm long at the end of the joist the near support bears 1 - 850/4000.
    assertThat(PatchLoad.reaction(List.of(new Patch(0, 1700, 1000)), SPAN))
        .isCloseTo(787.5, offset(1e-9));
    // In the middle: P L/4 - P A/8.
    assertThat(PatchLoad.moment(List.of(new Patch(1150, 2850, 1000)), SPAN))
        .isCloseTo(1000 * SPAN / 4 - 1000 * 1700.0 / 8, offset(1.0));
  }

  @Test
  @DisplayName("are shared among joists by a deck that spans from one to the next")
  void shared() {
    assertThat(PatchLoad.share(0, 0, 400)).isEqualTo(1);
    assertThat(PatchLoad.share(200, 200, 400)).isEqualTo(0.5);
    assertThat(PatchLoad.share(400, 400, 400)).isEqualTo(0);
    // As wide as two spaces: half of it goes to the joist in the middle.
    assertThat(PatchLoad.share(-400, 400, 400)).isCloseTo(0.5, offset(1e-12));
    // 700 mm over 400 mm centres: 1 - 700/1600.
    assertThat(PatchLoad.share(-350, 350, 400)).isCloseTo(0.5625, offset(1e-12));
    double all = 0;
    for (int joist = -3; joist <= 5; joist++) {
      all += PatchLoad.share(130 - joist * 400, 930 - joist * 400, 400);
    }
    assertThat(all).isCloseTo(1, offset(1e-12));
  }

  @Test
  @DisplayName("dip a sheet as a plate on two long supports, 0.01695 P L2/D")
  void plate() {
    double rigidity = 3300 * Math.pow(18, 3) / 12; // N.mm, chipboard
    double plate = 0.01695 * 2000 * 400 * 400 / rigidity;
    double width = DeckPointLoad.sheetWidth(400, 1);
    assertThat(DeckPointLoad.of(List.of(new Strip(18, 3300, width)), 400, 2, 1))
        .isCloseTo(plate, offset(1e-9));
    // A board by itself: P L3/(48 E I).
    double board = 2000 * Math.pow(400, 3) / (48 * 8000 * 150 * Math.pow(21, 3) / 12);
    assertThat(DeckPointLoad.of(List.of(new Strip(21, 8000, 150)), 400, 2, 1))
        .isCloseTo(board, offset(1e-9));
  }
}
