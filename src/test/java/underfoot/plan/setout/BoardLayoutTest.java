package underfoot.plan.setout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

class BoardLayoutTest {
  private static final GeometryFactory SHAPES = new GeometryFactory();
  private static final BoardTask.Fixing SCREWS = new BoardTask.Fixing(300, 15, 10, 51, false);

  private static BoardTask task(
      Polygon room, List<Field.Opening> doors, Optional<BoardTask.Deck> deck) {
    return new BoardTask(room, doors, 1200, 800, 3, 10, deck, 50, 300, 200, 0.34, SCREWS, 3, 5000);
  }

  private static Geometry shape(BoardPlan.Piece piece) {
    Geometry shape = null;
    for (TileSetOut.Ring ring : piece.rings()) {
      Coordinate[] c = new Coordinate[ring.xy().length / 2 + 1];
      for (int i = 0; i < c.length; i++) {
        int k = 2 * i % ring.xy().length;
        c[i] = new Coordinate(ring.xy()[k], ring.xy()[k + 1]);
      }
      Polygon part = SHAPES.createPolygon(c);
      shape = shape == null ? part : shape.difference(part);
    }
    return shape;
  }

  /** Boards do not overlap, fit into a board, cover the floor, and keep off the deck's joints. */
  private static void boardsLieWell(BoardTask task, BoardPlan plan) {
    Geometry field = Field.shrunk(task.room(), task.gap());
    Geometry all = null;
    double area = 0;
    for (BoardPlan.Piece piece : plan.pieces()) {
      double length = plan.alongX() ? piece.x2() - piece.x1() : piece.y2() - piece.y1();
      double width = plan.alongX() ? piece.y2() - piece.y1() : piece.x2() - piece.x1();
      assertThat(length).isLessThanOrEqualTo(task.length() + 1e-6);
      assertThat(width).isLessThanOrEqualTo(task.width() + 1e-6);
      Geometry shape = shape(piece);
      area += shape.getArea();
      all = all == null ? shape : all.union(shape);
    }
    assertThat(area).as("overlap").isCloseTo(all.getArea(), within(1.0));
    BufferParameters square = new BufferParameters();
    square.setJoinStyle(BufferParameters.JOIN_MITRE);
    Geometry wider = BufferOp.bufferOp(all, task.joint() + 0.01, square);
    assertThat(field.difference(wider).getArea()).as("floor without a board").isLessThan(10);
    assertThat(plan.cuts().stream().mapToInt(BoardPlan.Cut::count).sum())
        .isEqualTo(plan.pieces().size());
    assertThat(plan.boards() * task.length() * task.width()).isGreaterThanOrEqualTo(area);
    // Joints against the deck's joints, measured afresh on the pieces: an edge within the floor
    // that runs along a joint of the deck.
    double off = Double.POSITIVE_INFINITY;
    for (double[] line : plan.deckJoints()) {
      boolean upright = Math.abs(line[0] - line[2]) < 1e-6;
      for (BoardPlan.Piece piece : plan.pieces()) {
        double[] edges =
            upright ? new double[] {piece.x1(), piece.x2()} : new double[] {piece.y1(), piece.y2()};
        for (double edge : edges) {
          // Only edges with another board beyond, not those at a wall.
          double beyond = edge == edges[0] ? edge - task.joint() : edge + task.joint();
          boolean joint =
              plan.pieces().stream()
                  .anyMatch(
                      other ->
                          Math.abs(
                                      (edge == edges[0]
                                              ? upright ? other.x2() : other.y2()
                                              : upright ? other.x1() : other.y1())
                                          - beyond)
                                  < 0.01
                              && overlap(piece, other, upright));
          if (joint) {
            off = Math.min(off, Math.abs(edge - (upright ? line[0] : line[1])));
          }
        }
      }
    }
    double asked =
        Math.min(
            task.offDeck(), task.deck().map(d -> d.pitch() / 2 - 1 - task.joint() / 2).orElse(1e9));
    assertThat(off).isGreaterThanOrEqualTo(asked - 1e-6);
    for (double[] screw : plan.screws()) {
      Geometry point = SHAPES.createPoint(new Coordinate(screw[0], screw[1]));
      assertThat(all.contains(point)).isTrue();
      assertThat(all.getBoundary().distance(point)).isGreaterThanOrEqualTo(9);
    }
  }

  private static boolean overlap(BoardPlan.Piece a, BoardPlan.Piece b, boolean upright) {
    double low = upright ? Math.max(a.y1(), b.y1()) : Math.max(a.x1(), b.x1());
    double high = upright ? Math.min(a.y2(), b.y2()) : Math.min(a.x2(), b.x2());
    return high - low > 1;
  }

  @Test
  void boards_over_floorboards_keep_off_every_joint_of_the_deck() {
    long seed = 77;
    Random random = new Random(seed);
    for (int i = 0; i < 60; i++) {
      Polygon room = i == 0 ? Rooms.withChimneyBreast() : Rooms.square(random);
      double width = 90 + random.nextInt(120);
      BoardTask.Deck deck =
          new BoardTask.Deck(random.nextBoolean(), 20 + random.nextInt(90), width, width + 4, true);
      BoardTask task = task(room, List.of(Rooms.door(room, 0, 20, 300)), Optional.of(deck));
      BoardPlan plan = BoardLayout.of(task).orElseThrow();
      boardsLieWell(task, plan);
      assertThat(plan.alongX()).as("boards lie across the floorboards").isNotEqualTo(deck.alongX());
    }
  }

  @Test
  void boards_over_sheets_keep_off_their_joints() {
    Random random = new Random(5);
    for (int i = 0; i < 20; i++) {
      Polygon room = Rooms.square(random);
      BoardTask.Deck deck = new BoardTask.Deck(random.nextBoolean(), 600, 600, 600, false);
      BoardTask task = task(room, List.of(), Optional.of(deck));
      boardsLieWell(task, BoardLayout.of(task).orElseThrow());
    }
  }

  @Test
  void neighbouring_rows_are_staggered() {
    Polygon room = Rooms.of(0, 0, 5000, 0, 5000, 4000, 0, 4000);
    BoardPlan plan = BoardLayout.of(task(room, List.of(), Optional.empty())).orElseThrow();
    assertThat(plan.stagger()).isGreaterThanOrEqualTo(300);
    boardsLieWell(task(room, List.of(), Optional.empty()), plan);
  }

  @Test
  void a_joint_is_kept_out_of_a_doorway_where_there_is_a_way() {
    Polygon room = Rooms.of(0, 0, 2400, 0, 2400, 780, 0, 780);
    Field.Opening door = Rooms.door(room, 0, 1205, 700);
    BoardPlan plan = BoardLayout.of(task(room, List.of(door), Optional.empty())).orElseThrow();
    assertThat(plan.atDoors()).isZero();
  }

  @Test
  void screws_stand_no_further_apart_than_asked() {
    Polygon room = Rooms.of(0, 0, 1220, 0, 1220, 820, 0, 820);
    BoardPlan plan = BoardLayout.of(task(room, List.of(), Optional.empty())).orElseThrow();
    assertThat(plan.pieces()).hasSize(1);
    // 1200 by 800 with the outer row 15 in: 5 columns of 4.
    assertThat(plan.screws()).hasSize(20);
  }

  @Test
  void every_floorboard_has_three_screws_across_its_width() {
    Polygon room = Rooms.of(0, 0, 3600, 0, 3600, 2400, 0, 2400);
    BoardTask.Deck deck = new BoardTask.Deck(true, 150, 150, 154, true);
    BoardPlan plan = BoardLayout.of(task(room, List.of(), Optional.of(deck))).orElseThrow();
    for (int board = 1; board < 15; board++) {
      double low = board * 154 - 4;
      long places =
          plan.screws().stream()
              .filter(screw -> screw[1] > low + 4 && screw[1] < low + 154)
              .map(screw -> Math.round(screw[1]))
              .distinct()
              .count();
      assertThat(places).as("floorboard %d", board).isGreaterThanOrEqualTo(3);
    }
  }

  @Test
  void offcuts_are_used_again() {
    assertThat(
            Packing.boards(List.of(new double[] {600, 800}, new double[] {590, 800}), 1200, 800, 3))
        .isEqualTo(1);
    assertThat(
            Packing.boards(List.of(new double[] {600, 800}, new double[] {598, 800}), 1200, 800, 3))
        .isEqualTo(2);
  }
}
