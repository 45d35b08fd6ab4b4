package underfoot.plan.setout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

class BoardLayoutTest {
  private static final GeometryFactory SHAPES = new GeometryFactory();
  private static final BoardTask.Fixing SCREWS = new BoardTask.Fixing(300, 15, 10, 51, false);

  private static BoardTask task(
      Polygon room, List<Field.Opening> doors, Optional<BoardTask.Deck> deck) {
    return new BoardTask(
        room, room, doors, 1200, 800, 3, 10, deck, 50, 300, 200, 0.34, SCREWS, 3, 5000);
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
    rowsLieInOrder(plan);
    boardsCoverTheFloor(task, plan);
  }

  private static void boardsCoverTheFloor(BoardTask task, BoardPlan plan) {
    Geometry field = Field.shrunk(task.floor(), task.gap());
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
    assertThat(plan.offDeck()).isEqualTo(offDeck(task, plan), within(1e-6));
    assertThat(plan.stagger()).isEqualTo(stagger(plan), within(1e-6));
    double asked =
        Math.min(
            task.offDeck(), task.deck().map(d -> d.pitch() / 2 - 1 - task.joint() / 2).orElse(1e9));
    assertThat(plan.offDeck()).isGreaterThanOrEqualTo(asked - 1e-6);
    cutsAreAsThePiecesAre(task, plan);
    // Nine millimetres from the edge of all boards together, so well within them.
    PreparedGeometry within = PreparedGeometryFactory.prepare(all.buffer(-9));
    assertThat(plan.screws())
        .allMatch(screw -> within.covers(SHAPES.createPoint(new Coordinate(screw[0], screw[1]))));
  }

  private static double begin(BoardPlan plan, BoardPlan.Piece piece, boolean lengthwise) {
    return plan.alongX() == lengthwise ? piece.x1() : piece.y1();
  }

  private static double end(BoardPlan plan, BoardPlan.Piece piece, boolean lengthwise) {
    return plan.alongX() == lengthwise ? piece.x2() : piece.y2();
  }

  private static void rowsLieInOrder(BoardPlan plan) {
    assertThat(plan.pieces().get(0).row()).isEqualTo(1);
    for (BoardPlan.Piece a : plan.pieces()) {
      for (BoardPlan.Piece b : plan.pieces()) {
        boolean above = end(plan, a, false) + plan.joint() <= begin(plan, b, false) + 1e-6;
        boolean level = begin(plan, a, false) < end(plan, b, false);
        if (a.row() < b.row() && !above || a.row() == b.row() && !level) {
          Assertions.fail("rows out of order: " + a + " and " + b);
        }
      }
    }
  }

  /** Joints of the deck as they follow from what is asked: places square to their run. */
  private static List<Double> deckPlaces(BoardTask task) {
    List<Double> places = new ArrayList<>();
    task.deck()
        .ifPresent(
            deck -> {
              Envelope room = task.room().getEnvelopeInternal();
              double from = deck.alongX() ? room.getMinY() : room.getMinX();
              double to = deck.alongX() ? room.getMaxY() : room.getMaxX();
              for (int k = 0; from + deck.first() + k * deck.pitch() < to; k++) {
                places.add(from + deck.first() + k * deck.pitch());
              }
            });
    return places;
  }

  /**
   * The least way from an edge with another board beyond it to a joint of the deck that runs along
   * it, measured on the pieces.
   */
  private static double offDeck(BoardTask task, BoardPlan plan) {
    List<Double> places = deckPlaces(task);
    double length = 0;
    boolean upright = task.deck().map(deck -> !deck.alongX()).orElse(false);
    for (double[] line : plan.deckJoints()) {
      assertThat(upright ? line[0] : line[1]).isEqualTo(upright ? line[2] : line[3]);
      double at = upright ? line[0] : line[1];
      assertThat(places).anyMatch(one -> Math.abs(one - at) < 1e-6);
      length += Math.hypot(line[2] - line[0], line[3] - line[1]);
    }
    double off = Double.POSITIVE_INFINITY;
    double within = 0;
    Envelope room = task.room().getEnvelopeInternal();
    List<double[]> joints = joints(plan, upright);
    for (double place : places) {
      within +=
          SHAPES
              .createLineString(
                  new Coordinate[] {
                    upright
                        ? new Coordinate(place, room.getMinY())
                        : new Coordinate(room.getMinX(), place),
                    upright
                        ? new Coordinate(place, room.getMaxY())
                        : new Coordinate(room.getMaxX(), place)
                  })
              .intersection(task.floor())
              .getLength();
      for (double[] joint : joints) {
        off = Math.min(off, Math.min(Math.abs(joint[0] - place), Math.abs(joint[1] - place)));
      }
    }
    assertThat(length).as("joints of the deck that are drawn").isCloseTo(within, within(1e-3));
    return off;
  }

  /** Joints between neighbouring boards across x or across y: both edges and the row. */
  private static List<double[]> joints(BoardPlan plan, boolean upright) {
    List<double[]> joints = new ArrayList<>();
    for (BoardPlan.Piece a : plan.pieces()) {
      for (BoardPlan.Piece b : plan.pieces()) {
        double end = upright ? a.x2() : a.y2();
        double begin = upright ? b.x1() : b.y1();
        if (Math.abs(begin - end - plan.joint()) < 0.01 && overlap(a, b, upright)) {
          joints.add(new double[] {end, begin, a.row()});
        }
      }
    }
    return joints;
  }

  /** The least between the joints of one row and those of the row before, less a joint. */
  private static double stagger(BoardPlan plan) {
    double least = Double.POSITIVE_INFINITY;
    List<double[]> joints = joints(plan, plan.alongX());
    for (double[] a : joints) {
      for (double[] b : joints) {
        if (a[2] + 1 == b[2]) {
          least = Math.min(least, Math.abs(a[0] - b[0]) - plan.joint());
        }
      }
    }
    return least;
  }

  /** Every piece has the letter of its size, whole ones are whole, and larger sizes come first. */
  private static void cutsAreAsThePiecesAre(BoardTask task, BoardPlan plan) {
    List<BoardPlan.Cut> cuts = plan.cuts();
    for (int i = 0; i < cuts.size(); i++) {
      BoardPlan.Cut cut = cuts.get(i);
      assertThat(cut.mark()).isEqualTo(BoardLayout.mark(i));
      List<BoardPlan.Piece> pieces =
          plan.pieces().stream().filter(piece -> piece.mark().equals(cut.mark())).toList();
      assertThat(pieces).hasSize(cut.count());
      for (BoardPlan.Piece piece : pieces) {
        double length = end(plan, piece, true) - begin(plan, piece, true);
        double width = end(plan, piece, false) - begin(plan, piece, false);
        assertThat(length).isCloseTo(cut.length(), within(1.0));
        assertThat(width).isCloseTo(cut.width(), within(1.0));
        boolean notched = shape(piece).getArea() < length * width - 1;
        assertThat(piece.notched()).isEqualTo(notched);
        assertThat(cut.notched()).isEqualTo(notched);
        assertThat(cut.whole())
            .isEqualTo(!notched && length > task.length() - 1 && width > task.width() - 1);
      }
      if (cut.notched()) {
        assertThat(cut.count()).as("each notch is cut as the plan shows it").isEqualTo(1);
      }
      if (i > 0) {
        BoardPlan.Cut larger = cuts.get(i - 1);
        assertThat(Math.rint(cut.length())).isLessThanOrEqualTo(Math.rint(larger.length()));
        if (Math.rint(cut.length()) == Math.rint(larger.length())) {
          assertThat(Math.rint(cut.width())).isLessThanOrEqualTo(Math.rint(larger.width()));
        }
      }
    }
  }

  private static boolean overlap(BoardPlan.Piece a, BoardPlan.Piece b, boolean upright) {
    double low = upright ? Math.max(a.y1(), b.y1()) : Math.max(a.x1(), b.x1());
    double high = upright ? Math.min(a.y2(), b.y2()) : Math.min(a.x2(), b.x2());
    return high - low > 1;
  }

  /** With x and y changed about, the plan is the same with x and y changed about. */
  private static void sameTurnedOver(BoardTask task, BoardPlan plan) {
    AffineTransformation over = new AffineTransformation(0, 1, 0, 1, 0, 0);
    BoardTask.Deck deck = task.deck().orElseThrow();
    List<Field.Opening> doors =
        task.doors().stream()
            .map(d -> new Field.Opening(d.name(), d.wall(), swapped(d.from()), swapped(d.to())))
            .toList();
    BoardTask swapped =
        task(
            (Polygon) over.transform(task.room()),
            doors,
            Optional.of(
                new BoardTask.Deck(
                    !deck.alongX(), deck.first(), deck.width(), deck.pitch(), deck.narrow())));
    BoardPlan other = BoardLayout.of(swapped).orElseThrow();
    assertThat(other.boards()).isEqualTo(plan.boards());
    assertThat(other.atDoors()).isEqualTo(plan.atDoors());
    assertThat(other.cuts()).hasSameSizeAs(plan.cuts());
    assertThat(other.screws()).hasSameSizeAs(plan.screws());
    assertThat(other.offDeck()).isEqualTo(plan.offDeck(), within(1e-6));
  }

  private static Coordinate swapped(Coordinate c) {
    return new Coordinate(c.y, c.x);
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
      if (i % 4 == 0) {
        sameTurnedOver(task, plan);
      }
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

  /** Boards lie along x, over a deck that has no joint within the room. */
  private static BoardPlan alongX(Polygon room, Field.Opening... doors) {
    BoardTask.Deck none = new BoardTask.Deck(false, 90_000, 150, 90_000, true);
    BoardTask task = task(room, List.of(doors), Optional.of(none));
    BoardPlan plan = BoardLayout.of(task).orElseThrow();
    boardsLieWell(task, plan);
    return plan;
  }

  @Test
  void joints_that_a_doorway_cannot_be_spared_are_counted() {
    // Field from 10 to 4990: five boards. First and last are 1368 together, so only one of the four
    // joints can be kept out of an opening from 500 to 4500.
    Polygon one = Rooms.of(0, 0, 5000, 0, 5000, 780, 0, 780);
    assertThat(alongX(one, Rooms.door(one, 0, 500, 4000)).atDoors()).isEqualTo(3);
    assertThat(alongX(one, Rooms.door(one, 2, 500, 4000)).atDoors()).isEqualTo(3);
    assertThat(alongX(one).atDoors()).isZero();
    // Of two rows only the one at the doorway counts.
    Polygon two = Rooms.of(0, 0, 5000, 0, 5000, 1583, 0, 1583);
    assertThat(alongX(two, Rooms.door(two, 0, 500, 4000)).atDoors()).isEqualTo(3);
    assertThat(alongX(two, Rooms.door(two, 2, 500, 4000)).atDoors()).isEqualTo(3);
    // The joint between the rows lies between 770 and 810 and meets the walls at the ends.
    assertThat(alongX(two, Rooms.door(two, 1, 300, 1000)).atDoors()).isEqualTo(1);
    assertThat(alongX(two, Rooms.door(two, 3, 300, 1000)).atDoors()).isEqualTo(1);
    assertThat(alongX(two, Rooms.door(two, 1, 0, 700)).atDoors()).isZero();
    assertThat(alongX(two, Rooms.door(two, 1, 850, 700)).atDoors()).isZero();
  }

  @Test
  void a_whole_board_and_half_of_one_are_laid_in_a_room_of_one_and_a_half() {
    BoardTask task = task(Rooms.of(0, 0, 1823, 0, 1823, 820, 0, 820), List.of(), Optional.empty());
    BoardPlan plan = BoardLayout.of(task).orElseThrow();
    assertThat(plan.alongX()).isTrue();
    assertThat(plan.boards()).isEqualTo(2);
    assertThat(plan.cuts())
        .containsExactly(
            new BoardPlan.Cut("A", 1200, 800, 1, true, false),
            new BoardPlan.Cut("B", 600, 800, 1, false, false));
    assertThat(plan.stagger()).isInfinite();
    assertThat(plan.offDeck()).isInfinite();
    assertThat(plan.deckJoints()).isEmpty();
    // The same the other way round.
    BoardTask over = task(Rooms.of(0, 0, 820, 0, 820, 1823, 0, 1823), List.of(), Optional.empty());
    BoardPlan up = BoardLayout.of(over).orElseThrow();
    assertThat(up.alongX()).isFalse();
    assertThat(up.cuts()).isEqualTo(plan.cuts());
  }

  @Test
  void a_board_with_a_column_through_it_is_one_piece_with_two_outlines() {
    Polygon room =
        Rooms.with(
            Rooms.of(0, 0, 1220, 0, 1220, 820, 0, 820), 500, 300, 700, 300, 700, 500, 500, 500);
    BoardTask task = task(room, List.of(), Optional.empty());
    BoardPlan plan = BoardLayout.of(task).orElseThrow();
    boardsLieWell(task, plan);
    assertThat(plan.pieces())
        .singleElement()
        .satisfies(
            piece -> {
              assertThat(piece.rings()).hasSize(2);
              assertThat(piece.notched()).isTrue();
              assertThat(shape(piece).getArea()).isCloseTo(1200 * 800 - 220 * 220, within(1e-3));
            });
    assertThat(plan.cuts()).singleElement().matches(cut -> !cut.whole() && cut.notched());
  }

  @Test
  void only_the_floor_without_the_parts_that_are_otherwise_is_covered() {
    Polygon room = Rooms.of(0, 0, 6000, 0, 6000, 3000, 0, 3000);
    BoardTask.Deck deck = new BoardTask.Deck(true, 150, 147, 150, true);
    Random random = new Random(5);
    for (int i = 0; i < 40; i++) {
      double x = 100 * random.nextInt(50);
      double wide = 500 + 100 * random.nextInt(20);
      // Every fourth part runs from wall to wall, so that the rest lies in two pieces.
      double from = i % 4 == 0 ? 0 : 100 * random.nextInt(20);
      double to = i % 4 == 0 ? 3000 : from + 600 + 100 * random.nextInt(10);
      Polygon part = Rooms.of(x, from, x + wide, from, x + wide, to, x, to);
      Geometry rest = room.difference(part);
      BoardTask task =
          new BoardTask(
              room,
              rest,
              List.of(),
              1200,
              800,
              3,
              10,
              Optional.of(deck),
              50,
              300,
              200,
              0.34,
              SCREWS,
              3,
              5000);
      BoardPlan plan = BoardLayout.of(task).orElseThrow();
      boardsCoverTheFloor(task, plan);
      for (double[] joint : plan.deckJoints()) {
        Coordinate middle = new Coordinate((joint[0] + joint[2]) / 2, (joint[1] + joint[3]) / 2);
        assertThat(rest.distance(SHAPES.createPoint(middle))).isLessThan(1e-6);
      }
    }
  }

  @Test
  void joints_as_far_off_the_deck_as_asked_or_as_its_boards_allow() {
    // One row of 1500: a joint of the deck at 900, and 80 to be kept off it. Without it the first
    // board would end at 1210.
    Polygon room = Rooms.of(0, 0, 1520, 0, 1520, 780, 0, 780);
    BoardTask.Deck far = new BoardTask.Deck(false, 900, 150, 90_000, true);
    BoardTask task = task(room, List.of(), Optional.of(far));
    BoardPlan plan = BoardLayout.of(task).orElseThrow();
    boardsLieWell(task, plan);
    assertThat(plan.offDeck()).isGreaterThanOrEqualTo(50);
    // Floorboards of 60: half of one less a millimetre is all that can be kept off.
    BoardTask.Deck thin = new BoardTask.Deck(false, 20, 58, 60, true);
    BoardTask close = task(room, List.of(), Optional.of(thin));
    BoardPlan over = BoardLayout.of(close).orElseThrow();
    boardsLieWell(close, over);
    assertThat(over.offDeck()).isBetween(29 - 1.5 - 1e-6, 30 - 1.5 + 1e-6);
  }

  @Test
  void sizes_have_letters_and_after_z_two_of_them() {
    assertThat(
            java.util.stream.IntStream.of(0, 1, 25, 26, 27, 51, 52, 701, 702)
                .mapToObj(BoardLayout::mark))
        .containsExactly("A", "B", "Z", "AA", "AB", "AZ", "BA", "ZZ", "AAA");
  }

  @Test
  void what_holds_no_board_or_too_many_is_not_planned() {
    assertThat(
            BoardLayout.of(
                task(Rooms.of(0, 0, 300, 0, 300, 19, 0, 19), List.of(), Optional.empty())))
        .isEmpty();
    // 5001 boards of 1200 by 800.
    Polygon most = Rooms.of(0, 0, 1200 * 5001, 0, 1200 * 5001, 800, 0, 800);
    assertThat(BoardLayout.of(task(most, List.of(), Optional.empty()))).isEmpty();
  }

  /** A room of one row over floorboards of 60; boards of 400 along x. */
  private static List<Double> overThinBoards(double to, double least) {
    Polygon room = Rooms.of(0, 0, to + 10, 0, to + 10, 780, 0, 780);
    BoardTask.Deck deck = new BoardTask.Deck(false, 44.5, 58, 60, true);
    BoardTask task =
        new BoardTask(
            room,
            room,
            List.of(),
            400,
            800,
            3,
            10,
            Optional.of(deck),
            50,
            300,
            least,
            0.34,
            SCREWS,
            3,
            5000);
    return joints(BoardLayout.of(task).orElseThrow(), 1);
  }

  /** Where the joints of a row begin, of boards along x. */
  private static List<Double> joints(BoardPlan plan, int row) {
    List<Double> ends =
        plan.pieces().stream()
            .filter(piece -> piece.row() == row)
            .map(BoardPlan.Piece::x2)
            .sorted()
            .toList();
    return ends.subList(0, ends.size() - 1);
  }

  @Test
  void a_joint_begins_at_the_very_end_of_what_the_deck_leaves_where_nothing_else_is_left() {
    // Joints of the deck at 284.5 and every 60: 29 off them a joint of 3 may begin between 312 and
    // 314. The first piece is 303 at least, from 10 on, so not before 313.
    assertThat(overThinBoards(660, 303)).containsExactly(314.0);
    // The last is 245 at least, so not after 313; and the place before, up to 254, is too near to
    // 10.
    assertThat(overThinBoards(561, 245)).containsExactly(312.0);
  }

  /** Two rows of 2000 in boards of 1200: the second one's joints. */
  private static List<Double> second(
      double offDeck, double stagger, double least, boolean doorAbove) {
    Polygon room = Rooms.of(0, 0, 2020, 0, 2020, 1603, 0, 1603);
    BoardTask.Deck none = new BoardTask.Deck(false, 90_000, 150, 90_000, true);
    BoardTask task =
        new BoardTask(
            room,
            room,
            doorAbove ? List.of(Rooms.door(room, 2, 410, 30)) : List.of(),
            1200,
            800,
            3,
            10,
            Optional.of(none),
            offDeck,
            stagger,
            least,
            0.34,
            SCREWS,
            3,
            5000);
    BoardPlan plan = BoardLayout.of(task).orElseThrow();
    // The whole board comes last.
    assertThat(joints(plan, 1)).containsExactly(807.0);
    return joints(plan, 2);
  }

  @Test
  void joints_of_a_row_begin_as_near_to_those_before_as_they_may() {
    // 412 and the joint of 3 off 807: up to 392 or from 1222. Pieces of 381 leave 391 and 392 for
    // the first; with a whole board behind it the next begins at 1595.
    assertThat(second(50, 412, 381, false)).containsExactly(392.0, 1595.0);
    // There is a doorway at 1580 to 1610.
    assertThat(second(50, 412, 381, true)).containsExactly(392.0, 1222.0);
  }

  @Test
  void rows_are_staggered_by_what_is_asked_and_a_joint_more_even_by_short_pieces() {
    // A whole board first would have its joint at 1210: 403 off, and 405 are asked.
    assertThat(second(50, 402, 100, false)).containsExactly(402.0, 1605.0);
    // Pieces of 395 leave no way; shorter ones do.
    assertThat(second(50, 402, 395, false)).containsExactly(402.0, 1605.0);
  }

  @Test
  void rows_that_cannot_be_staggered_so_far_are_staggered_as_joints_keep_off_the_deck() {
    // No place is 1303 off; 405 are kept.
    assertThat(second(402, 1300, 100, false)).containsExactly(110.0, 1220.0);
    assertThat(second(402, 1300, 395, false)).containsExactly(20.0, 1220.0);
    // And where that cannot be either, joints lie where they lie.
    assertThat(second(1300, 1300, 100, false)).containsExactly(807.0);
  }

  @Test
  void of_two_places_alike_the_joint_is_at_the_one_outside_the_doorway() {
    // 2380 in boards of 1200: either the last is whole or the first.
    Polygon row = Rooms.of(0, 0, 2400, 0, 2400, 780, 0, 780);
    assertThat(joints(alongX(row, Rooms.door(row, 0, 900, 300)), 1)).containsExactly(1210.0);
    assertThat(joints(alongX(row, Rooms.door(row, 0, 1205, 300)), 1)).containsExactly(1187.0);
    // And so between two rows of 1590 in boards of 800, at a doorway at their end.
    Polygon rows = Rooms.of(0, 0, 1220, 0, 1220, 1610, 0, 1610);
    assertThat(alongX(rows, Rooms.door(rows, 1, 700, 100)).pieces().get(0).y2()).isEqualTo(810);
    assertThat(alongX(rows, Rooms.door(rows, 1, 805, 100)).pieces().get(0).y2()).isEqualTo(797);
  }

  @Test
  void boards_lie_the_way_that_takes_fewer_and_of_two_alike_fewer_pieces() {
    Random random = new Random(12);
    int across = 0;
    int byPieces = 0;
    for (int i = 0; i < 40; i++) {
      Polygon room = Rooms.square(random);
      // Floorboards without a joint in the room say only which way boards lie.
      List<BoardPlan> ways = new ArrayList<>();
      for (boolean deckAlongX : new boolean[] {false, true}) {
        BoardTask.Deck none = new BoardTask.Deck(deckAlongX, 90_000, 150, 90_000, true);
        ways.add(BoardLayout.of(task(room, List.of(), Optional.of(none))).orElseThrow());
      }
      BoardPlan first = ways.get(0);
      BoardPlan second = ways.get(1);
      boolean alike = first.boards() == second.boards();
      boolean better =
          alike ? second.pieces().size() < first.pieces().size() : second.boards() < first.boards();
      BoardPlan plan = BoardLayout.of(task(room, List.of(), Optional.empty())).orElseThrow();
      assertThat(plan.alongX()).as("%s", room).isEqualTo(!better);
      across += better ? 1 : 0;
      byPieces += better && alike ? 1 : 0;
    }
    assertThat(across).isPositive();
    assertThat(byPieces).isPositive();
  }
}
