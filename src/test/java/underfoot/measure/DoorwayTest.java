package underfoot.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import underfoot.scenario.Scenario;

/** A door in a room of 4 by 3 m, its floor a plane, so that all heights are known by hand. */
class DoorwayTest {
  private static final String ANTICLOCKWISE = "[[0 m, 0 m], [4 m, 0 m], [4 m, 3 m], [0 m, 3 m]]";
  private static final String CLOCKWISE = "[[0 m, 0 m], [0 m, 3 m], [4 m, 3 m], [4 m, 0 m]]";

  /** A floor that rises by so much a metre along x and along y. */
  private static Scenario room(String outline, String door, double alongX, double alongY) {
    StringBuilder readings = new StringBuilder();
    for (int x : new int[] {0, 2, 4}) {
      for (double y : new double[] {0, 1.5, 3}) {
        readings.append(readings.isEmpty() ? "" : ", ");
        readings.append("[" + x + " m, " + y + " m, " + (alongX * x + alongY * y) + " mm]");
      }
    }
    return Measured.scenario(
        "room: {use: living area, outline: " + outline + ", doors: [{name: d, " + door + "}]}",
        "levels: {readings: [" + readings + "]}");
  }

  private static Optional<Doorway> find(Scenario scenario) {
    return Doorway.of(
        scenario, LevelSurvey.of(scenario).orElseThrow(), Measured.stated(scenario), "d");
  }

  private static Doorway door(Scenario scenario) {
    return find(scenario).orElseThrow();
  }

  @Test
  void an_opening_lies_in_its_wall_and_the_room_lies_before_it_whichever_way_the_corners_run() {
    Doorway along = door(room(ANTICLOCKWISE, "wall: 0, from: 1 m, width: 800 mm", 0, 0));
    assertThat(along.way().from().x).isCloseTo(1000, within(1e-9));
    assertThat(along.way().to().x).isCloseTo(1800, within(1e-9));
    assertThat(along.way().from().y).isZero();
    assertThat(along.way().inX()).isCloseTo(0, within(1e-12));
    assertThat(along.way().inY()).isCloseTo(1, within(1e-12));
    assertThat(along.way().room()).isCloseTo(3000, within(1e-6));
    // Wall 3 of the corners the other way round is the same wall, from its other end.
    Doorway other = door(room(CLOCKWISE, "wall: 3, from: 2.2 m, width: 800 mm", 0, 0));
    assertThat(other.way().from().x).isCloseTo(1800, within(1e-9));
    assertThat(other.way().to().x).isCloseTo(1000, within(1e-9));
    assertThat(other.way().inY()).isCloseTo(1, within(1e-12));
    assertThat(other.way().room()).isCloseTo(3000, within(1e-6));
    // The last wall closes the room: from corner 3 down to corner 0.
    Doorway last = door(room(ANTICLOCKWISE, "wall: 3, from: 500 mm, width: 900 mm", 0, 0));
    assertThat(last.way().from().y).isCloseTo(2500, within(1e-9));
    assertThat(last.way().to().y).isCloseTo(1600, within(1e-9));
    assertThat(last.way().inX()).isCloseTo(1, within(1e-12));
    assertThat(last.way().room()).isCloseTo(4000, within(1e-6));
  }

  @Test
  void a_door_without_a_place_has_no_doorway() {
    assertThat(find(room(ANTICLOCKWISE, "wall: 0, width: 800 mm", 0, 0))).isEmpty();
    Scenario noOutline =
        Measured.scenario(
            "room: {use: living area, doors: [{name: d, wall: 0, from: 1 m, width: 800 mm}]}",
            "levels: {readings: [[0 m, 0 m, 0 mm], [4 m, 0 m, 1 mm], [0 m, 3 m, 0 mm]]}");
    assertThat(find(noOutline)).isEmpty();
  }

  @Test
  void a_leaf_that_opens_inwards_sweeps_both_quarter_circles_and_one_that_does_not_the_opening() {
    String door = "wall: 0, from: 1 m, width: 800 mm, opens: ";
    double in = door(room(ANTICLOCKWISE, door + "into the room", 0, 0)).swept().getArea();
    // Two quarter circles with each other's hinge on the rim: pi/2 less half a lens of
    // (2 pi/3 - sqrt(3)/2), of the leaf squared.
    double share = Math.PI / 2 - (2 * Math.PI / 3 - Math.sqrt(3) / 2) / 2;
    assertThat(in).isCloseTo(share * 800 * 800, within(0.002 * 800 * 800));
    Doorway unsaid = door(room(ANTICLOCKWISE, "wall: 0, from: 1 m, width: 800 mm", 0, 0));
    assertThat(unsaid.swept().getArea()).isEqualTo(in);
    for (String way : new String[] {"out of the room", "sliding"}) {
      assertThat(door(room(ANTICLOCKWISE, door + way, 0, 0)).swept().getArea())
          .isCloseTo(800, within(1e-6));
    }
  }

  @Test
  void a_leaf_whose_hinges_are_known_sweeps_one_quarter_circle_on_the_side_seen_from_inside() {
    // Looking from the room at wall 0 along y = 0, the left hand is where x is greater.
    for (String[] one :
        new String[][] {
          {ANTICLOCKWISE, "wall: 0, from: 1 m"}, {CLOCKWISE, "wall: 3, from: 2.2 m"},
        }) {
      String door = one[1] + ", width: 800 mm, opens: into the room, hinge: ";
      for (String side : new String[] {"left", "right"}) {
        Doorway doorway = door(room(one[0], door + side, 0, 0));
        assertThat(doorway.swept().getArea())
            .isCloseTo(Math.PI / 4 * 800 * 800, within(0.004 * 800 * 800));
        double middle = doorway.swept().getCentroid().getX();
        assertThat(middle > 1400).as(side).isEqualTo(side.equals("left"));
      }
    }
  }

  @Test
  void a_leaf_sweeps_no_floor_beyond_the_walls() {
    // In a passage 0.5 m deep the quarter circles are cut off.
    Scenario passage =
        Measured.scenario(
            "room: {use: hall, outline: [[0 m, 0 m], [4 m, 0 m], [4 m, 0.5 m], [0 m, 0.5 m]],"
                + " doors: [{name: d, wall: 0, from: 1 m, width: 800 mm}]}",
            "levels: {readings: [[0 m, 0 m, 0 mm], [4 m, 0 m, 0 mm], [0 m, 0.5 m, 0 mm]]}");
    Doorway doorway = door(passage);
    assertThat(doorway.swept().getEnvelopeInternal().getMaxY()).isCloseTo(500, within(1e-9));
    assertThat(doorway.way().room()).isCloseTo(500, within(1e-6));
  }

  @Test
  void a_pour_is_as_deep_in_the_opening_as_its_surface_stands_over_the_floor_midway() {
    // The floor rises by 2 mm a metre along the wall: 2.8 mm midway, at 1.4 m.
    Doorway doorway = door(room(ANTICLOCKWISE, "wall: 0, from: 1 m, width: 800 mm", 2, 0));
    PourSurface level = new PourSurface(true, 20, 0, 0);
    assertThat(doorway.depthInTheOpening(level)).isCloseTo(17.2, within(1e-9));
    assertThat(doorway.depthInTheOpening(new PourSurface(true, 2, 0, 0))).isZero();
    // Half a metre into the room it is deepest where the floor is lowest, at 1 m: 2 mm.
    assertThat(doorway.depthBefore(level, 500)).isCloseTo(18, within(1e-9));
    assertThat(doorway.depthBefore(new PourSurface(true, 1, 0, 0), 500)).isZero();
    // Into the room the floor rises by 3 mm a metre: 1.5 mm half a metre in, 3 a whole one.
    Doorway rising = door(room(ANTICLOCKWISE, "wall: 0, from: 1 m, width: 800 mm", 0, 3));
    assertThat(rising.depthBefore(level, 500)).isCloseTo(18.5, within(1e-9));
    assertThat(rising.depthBefore(level, 1000)).isCloseTo(17, within(1e-9));
    // A surface that rises by 5 mm a metre along x stands 1.8 m on at the far side: 29 - 0.
    Doorway flat = door(room(ANTICLOCKWISE, "wall: 0, from: 1 m, width: 800 mm", 0, 0));
    assertThat(flat.depthBefore(new PourSurface(false, 20, 5, 0), 500)).isCloseTo(29, within(1e-9));
    assertThat(flat.depthInTheOpening(new PourSurface(false, 20, 5, 0)))
        .isCloseTo(27, within(1e-9));
  }

  @Test
  void a_leaf_climbs_by_what_the_floor_it_sweeps_stands_above_the_floor_under_it() {
    // The floor rises into the room by 3 mm a metre; the leaf reaches 0.8 m in.
    Doorway rising =
        door(room(ANTICLOCKWISE, "wall: 0, from: 1 m, width: 800 mm, opens: into the room", 0, 3));
    assertThat(rising.climbUnderTheLeaf(Optional.empty())).isCloseTo(2.4, within(1e-6));
    // Falling away from the door there is nothing to climb.
    Doorway falling = door(room(ANTICLOCKWISE, "wall: 0, from: 1 m, width: 800 mm", 0, -3));
    assertThat(falling.climbUnderTheLeaf(Optional.empty())).isCloseTo(0, within(1e-9));
    // A level pour 20 mm above the datum, over a floor of 3.6 mm at its highest under the leaf.
    Doorway across = door(room(ANTICLOCKWISE, "wall: 0, from: 1 m, width: 800 mm", 2, 0));
    assertThat(across.climbUnderTheLeaf(Optional.of(new PourSurface(true, 20, 0, 0))))
        .isCloseTo(16.4, within(1e-9));
    // A pour that rises into the room by 4 mm a metre stands 3.2 mm higher where the leaf ends.
    assertThat(across.climbUnderTheLeaf(Optional.of(new PourSurface(false, 20, 0, 4))))
        .isCloseTo(20 + 3.2 - 3.6, within(1e-6));
  }

  /** The same room turned by so much and moved, its plane turned with it. */
  private static Scenario turned(double angle, String door, double alongX, double alongY) {
    StringBuilder corners = new StringBuilder();
    for (double[] c : new double[][] {{0, 0}, {4000, 0}, {4000, 3000}, {0, 3000}}) {
      corners.append(corners.isEmpty() ? "[" : ", ").append("[" + place(angle, c[0], c[1]) + "]");
    }
    StringBuilder readings = new StringBuilder();
    for (double x : new double[] {0, 2000, 4000}) {
      for (double y : new double[] {0, 1500, 3000}) {
        readings.append(readings.isEmpty() ? "" : ", ");
        double z = (alongX * x + alongY * y) / 1000;
        readings.append("[" + place(angle, x, y) + ", " + z + " mm]");
      }
    }
    return Measured.scenario(
        "room: {use: living area, outline: " + corners + "], doors: [{name: d, " + door + "}]}",
        "levels: {readings: [" + readings + "]}");
  }

  private static String place(double angle, double x, double y) {
    return String.format(
        java.util.Locale.ROOT,
        "%.7f mm, %.7f mm",
        5000 + x * Math.cos(angle) - y * Math.sin(angle),
        700 + x * Math.sin(angle) + y * Math.cos(angle));
  }

  @Test
  void turning_and_moving_the_room_with_its_floor_changes_nothing_before_the_door() {
    for (double angle : new double[] {0.3, 1.9, 2.6}) {
      for (String opens : new String[] {"into the room", "sliding"}) {
        String door = "wall: 0, from: 1 m, width: 800 mm, opens: " + opens;
        Doorway turned = door(turned(angle, door, 2, 3));
        Doorway plain = door(room(ANTICLOCKWISE, door, 2, 3));
        assertThat(turned.way().from().x).isCloseTo(5000 + 1000 * Math.cos(angle), within(1e-4));
        assertThat(turned.way().from().y).isCloseTo(700 + 1000 * Math.sin(angle), within(1e-4));
        assertThat(turned.way().to().x).isCloseTo(5000 + 1800 * Math.cos(angle), within(1e-4));
        assertThat(turned.way().to().y).isCloseTo(700 + 1800 * Math.sin(angle), within(1e-4));
        assertThat(turned.way().inX()).isCloseTo(-Math.sin(angle), within(1e-6));
        assertThat(turned.way().inY()).isCloseTo(Math.cos(angle), within(1e-6));
        assertThat(turned.swept().getArea()).isCloseTo(plain.swept().getArea(), within(1.0));
        assertThat(turned.way().room()).isCloseTo(3000, within(1e-3));
        PourSurface level = new PourSurface(true, 40, 0, 0);
        // 2.8 mm midway in the opening; half a metre in, 2 mm and 1.5 mm at its lowest.
        assertThat(turned.depthInTheOpening(level)).isCloseTo(37.2, within(1e-3));
        assertThat(turned.depthBefore(level, 500)).isCloseTo(36.5, within(1e-3));
        assertThat(turned.climbUnderTheLeaf(Optional.empty()))
            .isCloseTo(plain.climbUnderTheLeaf(Optional.empty()), within(0.01));
        assertThat(turned.climbUnderTheLeaf(Optional.of(level))).isCloseTo(36.4, within(1e-3));
      }
    }
  }
}
