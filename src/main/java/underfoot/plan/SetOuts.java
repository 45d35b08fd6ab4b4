package underfoot.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Function;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import underfoot.buildup.LayerNote;
import underfoot.buildup.StackLayer;
import underfoot.knowledge.Boards;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.knowledge.Knowledge;
import underfoot.measure.RoomShape;
import underfoot.measure.Texts;
import underfoot.plan.setout.BoardLayout;
import underfoot.plan.setout.BoardPlan;
import underfoot.plan.setout.BoardTask;
import underfoot.plan.setout.ClosedJoints;
import underfoot.plan.setout.Field;
import underfoot.plan.setout.Pattern;
import underfoot.plan.setout.TileLayout;
import underfoot.plan.setout.TileSetOut;
import underfoot.plan.setout.TileTask;
import underfoot.plan.setout.Weights;
import underfoot.reasoning.BuildUp;
import underfoot.scenario.Point;
import underfoot.scenario.Scenario;
import underfoot.scenario.Zone;

/**
 * Sets out the tiles and boards of build-ups as the rules decided: what they are centred on, in
 * which pattern, how far from walls. The same task is worked out once.
 */
final class SetOuts {
  private static final double PER_CENT = 100;
  private static final String TILE = "tile";

  /** What decides a set-out, as the rules call it. */
  private static final List<String> DECIDES =
      List.of("set-out centre", "laid pattern", "edge gap", "least joint", "tile breakage");

  private final Memory<TileTask, Optional<TileSetOut>> tiles = new Memory<>(TileLayout::of);
  private final Memory<BoardTask, Optional<BoardPlan>> boards = new Memory<>(BoardLayout::of);

  /**
   * Remembers what was worked out last; the longest unasked is forgotten first. It saves half: all
   * scenarios with their trials take 14.5 s of the processor's time with it, 29.9 s without.
   */
  private static final class Memory<K, V> {
    private static final int MOST = 64;

    private final Function<K, V> work;
    private final Map<K, FutureTask<V>> remembered =
        new LinkedHashMap<>(16, 0.75f, true) {
          @Override
          protected boolean removeEldestEntry(Map.Entry<K, FutureTask<V>> eldest) {
            return size() > MOST;
          }
        };

    Memory(Function<K, V> work) {
      this.work = work;
    }

    /** What comes of a task; whoever asks while it is worked out waits for it. */
    V of(K task) {
      FutureTask<V> worked;
      synchronized (remembered) {
        worked = remembered.computeIfAbsent(task, t -> new FutureTask<>(() -> work.apply(t)));
      }
      worked.run(); // does nothing if it runs or has run
      try {
        return worked.get();
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new IllegalStateException("interrupted while a floor was set out", e);
      } catch (ExecutionException e) {
        throw new IllegalStateException("the floor cannot be set out", e.getCause());
      }
    }
  }

  /** The room as it is drawn; empty where its outline is not known. */
  static Optional<RoomPlan> room(Scenario scenario, Facts facts) {
    if (scenario.outline().size() < 3) {
      return Optional.empty();
    }
    List<double[]> corners = new ArrayList<>();
    scenario.outline().forEach(corner -> corners.add(new double[] {corner.x(), corner.y()}));
    List<RoomPlan.Door> doors = new ArrayList<>();
    for (Field.Opening door : doors(scenario, facts)) {
      doors.add(RoomPlan.Door.of(door, facts));
    }
    List<RoomPlan.Part> parts = new ArrayList<>();
    for (Zone zone : scenario.zones()) {
      List<double[]> around = new ArrayList<>();
      zone.floor().outline().forEach(corner -> around.add(new double[] {corner.x(), corner.y()}));
      parts.add(new RoomPlan.Part(zone.name(), around));
    }
    List<double[]> readings = new ArrayList<>();
    scenario.readings().forEach(one -> readings.add(new double[] {one.x(), one.y(), one.z()}));
    return Optional.of(new RoomPlan(corners, parts, doors, readings));
  }

  private static List<Field.Opening> doors(Scenario scenario, Facts facts) {
    List<Field.Opening> doors = new ArrayList<>();
    List<Point> outline = scenario.outline();
    for (String door : facts.abouts("door")) {
      double wall = facts.number("door wall", door);
      double from = facts.number("door from", door);
      double width = facts.number("door width", door);
      if (Double.isNaN(wall + from + width) || wall >= outline.size()) {
        continue;
      }
      Point a = outline.get((int) wall);
      Point b = outline.get(((int) wall + 1) % outline.size());
      double length = Math.hypot(b.x() - a.x(), b.y() - a.y());
      double ux = (b.x() - a.x()) / length;
      double uy = (b.y() - a.y()) / length;
      doors.add(
          new Field.Opening(
              door,
              (int) wall,
              new Coordinate(a.x() + from * ux, a.y() + from * uy),
              new Coordinate(a.x() + (from + width) * ux, a.y() + (from + width) * uy)));
    }
    return doors;
  }

  /** What was set out of one build-up, before it is justified. */
  record Laid(
      Optional<TileSetOut> tiles, String whyNoTiles, Map<String, BoardPlan> boards, Facts facts) {

    /** Nothing is laid out: what is needed goes by area. */
    static Laid notLaidOut(Facts facts) {
      return new Laid(Optional.empty(), "", Map.of(), facts);
    }

    /** Facts that rules may judge the set-out by. */
    List<Fact> measured() {
      List<Fact> found = new ArrayList<>();
      if (tiles.isPresent()) {
        TileSetOut out = tiles.get();
        List<Object> uses = new ArrayList<>();
        for (String name : DECIDES) {
          Fact fact = facts.find(name);
          if (fact != null) {
            uses.add(fact);
          }
        }
        found.add(
            Fact.measured(
                "tiles needed",
                "",
                out.tiles() + " tiles",
                out.tiles(),
                out.whole() + " whole and " + out.boxed() + " for " + out.cut() + " cut pieces",
                uses));
        found.add(
            Fact.measured(
                "slivers in the set-out",
                "",
                Texts.of(out.chosen().slivers(), ""),
                out.chosen().slivers(),
                "cuts too narrow to make and hold well, at the best start",
                uses));
      }
      return found;
    }
  }

  /** Sets out one build-up. */
  Laid of(Scenario scenario, Knowledge knowledge, BuildUp buildUp) {
    Facts facts = buildUp.facts();
    Optional<RoomShape> shape = RoomShape.of(scenario);
    if (shape.isEmpty()) {
      return new Laid(Optional.empty(), "set-out-no-outline", Map.of(), facts);
    }
    boolean tiled =
        buildUp.stack().layers().stream().anyMatch(layer -> layer.kind().id().equals(TILE));
    Optional<TileTask> task =
        tiled ? tileTask(scenario, shape.get(), knowledge.figures(), facts) : Optional.empty();
    Optional<TileSetOut> laid =
        task.flatMap(asked -> tiles.of(asked).map(out -> closed(asked, out, knowledge.figures())));
    Map<String, BoardPlan> plans = new LinkedHashMap<>();
    for (StackLayer layer : buildUp.stack().layers()) {
      knowledge
          .boards()
          .find(layer.kind().id())
          .map(board -> boardTask(scenario, shape.get(), knowledge.figures(), facts, board))
          .flatMap(boards::of)
          .ifPresent(plan -> plans.put(layer.kind().id(), plan));
    }
    String why = laid.isPresent() ? "" : why(task, facts);
    return new Laid(laid, why, plans, facts);
  }

  private TileSetOut closed(TileTask asked, TileSetOut out, Figures figures) {
    double give = figures.get("joint-give").number();
    double least = figures.get("joint-floor-least").number();
    return ClosedJoints.of(asked, out, give, least, tiles::of).orElse(out);
  }

  private static String why(Optional<TileTask> task, Facts facts) {
    if (task.isPresent()) {
      return task.get().roughly() > task.get().most() ? "set-out-too-many" : "set-out-no-room";
    }
    return facts.text("tile format").equals("mosaic")
        ? "set-out-mosaic-sheets"
        : "set-out-no-pattern";
  }

  private static Optional<TileTask> tileTask(
      Scenario scenario, RoomShape shape, Figures figures, Facts facts) {
    Pattern.Kind kind = Pattern.Kind.named(facts.text("laid pattern"));
    double length = facts.number("tile length");
    double width = facts.number("tile width");
    double joint = facts.number("least joint");
    double gap = facts.number("edge gap");
    if (kind == null || Double.isNaN(length + width + joint + gap)) {
      return Optional.empty();
    }
    Weights weights =
        new Weights(
            figures.get("points-for-a-tile").value(),
            figures.get("points-for-a-cut").value(),
            figures.get("points-for-a-narrow-cut").value(),
            figures.get("points-for-a-narrow-cut-at-a-door").value(),
            figures.get("points-for-a-sliver").value(),
            figures.get("points-off-centre").value(),
            figures.get("points-across-the-room").value(),
            figures.get("cut-least-share").value() / PER_CENT,
            figures.get("sliver-share").value() / PER_CENT,
            figures.get("sliver-width").number(),
            figures.get("saw-kerf").number());
    return Optional.of(
        new TileTask(
            shape.floor(),
            doors(scenario, facts),
            kind,
            length,
            width,
            joint(facts),
            gap,
            facts.text("set-out centre").equals("doorway"),
            weights,
            some(facts.number("longest bay"), 1),
            some(facts.number("largest bay"), 1e6),
            figures.get("movement-joint-width").number(),
            (long) figures.get("set-out-most").value(),
            figures.get("set-out-effort").value(),
            figures.get("set-out-improving").value()));
  }

  private static double joint(Facts facts) {
    double least = facts.number("least joint");
    double wanted = facts.number("wanted joint");
    return Double.isNaN(wanted) ? least : Math.max(least, wanted);
  }

  private static OptionalDouble some(double number, double times) {
    return Double.isNaN(number) ? OptionalDouble.empty() : OptionalDouble.of(number * times);
  }

  private static BoardTask boardTask(
      Scenario scenario, RoomShape shape, Figures figures, Facts facts, Boards.Board board) {
    return new BoardTask(
        shape.floor(),
        rest(scenario, shape),
        doors(scenario, facts),
        board.length().number(),
        board.width().number(),
        board.joint().number(),
        figures.get("board-wall-gap").number(),
        deck(figures, facts),
        figures.get("joint-stagger").number(),
        figures.get("board-end-stagger").number(),
        figures.get("board-least-piece").number(),
        figures.get("board-joint-in-doorway").value(),
        new BoardTask.Fixing(
            figures.get("screw-spacing-most").number(),
            figures.get("screw-edge-most").number(),
            figures.get("screw-edge-least").number(),
            figures.get("screw-corner-least").number(),
            board.onJoints()),
        figures.get("saw-kerf").number(),
        (long) figures.get("board-plan-most").value());
  }

  /** The floor of a room without its parts where it is otherwise. */
  private static Geometry rest(Scenario room, RoomShape shape) {
    Geometry rest = shape.floor();
    for (Zone zone : room.zones()) {
      rest = rest.difference(RoomShape.of(zone.floor()).orElseThrow().floor());
    }
    return rest;
  }

  private static Optional<BoardTask.Deck> deck(Figures figures, Facts facts) {
    String run = facts.text("deck run");
    boolean floorboards = facts.text("base kind").equals("boards");
    boolean sheets = facts.text("base kind").equals("sheet");
    double width =
        floorboards ? facts.number("board width") : figures.get("deck-sheet-width").number();
    if (run.isEmpty() || !(floorboards || sheets) || Double.isNaN(width)) {
      return Optional.empty();
    }
    double between = floorboards ? facts.number("gaps between boards") : 0;
    double pitch = width + (Double.isNaN(between) ? 0 : between);
    double first = facts.number("first deck joint");
    return Optional.of(
        new BoardTask.Deck(
            run.equals("along x"), Double.isNaN(first) ? width : first, width, pitch, floorboards));
  }

  /** The set-out of the chosen build-up, with its reasons. */
  Optional<SetOut> justified(
      Scenario scenario, Knowledge knowledge, BuildUp buildUp, Justifier justifier) {
    if (scenario.outline().size() < 3) {
      return Optional.empty();
    }
    Laid laid = of(scenario, knowledge, buildUp);
    Facts facts = buildUp.facts();
    List<SetOut.Boards> planned = new ArrayList<>();
    for (StackLayer layer : buildUp.stack().layers()) {
      BoardPlan plan = laid.boards().get(layer.kind().id());
      if (plan == null) {
        continue;
      }
      List<Derivation> because = new ArrayList<>(layer.because());
      for (LayerNote note : buildUp.of(LayerNote.class)) {
        if (note.layer().equals(layer.kind().id())) {
          because.add(note.because());
        }
      }
      addBecause(facts, "deck run", because);
      addBecause(facts, "first deck joint", because);
      planned.add(
          new SetOut.Boards(
              layer.kind().id(),
              layer.kind().name(),
              plan,
              !plan.deckJoints().isEmpty(),
              !Double.isNaN(facts.number("first deck joint")),
              knowledge.figures().get("screw-spacing-most").number(),
              justifier.of(because)));
    }
    return Optional.of(
        new SetOut(
            laid.tiles().map(out -> tiles(out, knowledge.figures(), facts, justifier)),
            laid.whyNoTiles(),
            planned));
  }

  private static SetOut.Tiles tiles(
      TileSetOut out, Figures figures, Facts facts, Justifier justifier) {
    List<Derivation> because = new ArrayList<>();
    DECIDES.forEach(name -> addBecause(facts, name, because));
    if (!out.movement().isEmpty()) {
      addBecause(facts, "longest bay", because);
      addBecause(facts, "largest bay", because);
    }
    double breakage = facts.number("tile breakage");
    return new SetOut.Tiles(
        out,
        facts.text("set-out centre").equals("doorway"),
        facts.text("pattern"),
        breakage,
        toOrder(out, breakage),
        figures.get("cut-least-share").value(),
        figures.get("sliver-width").number(),
        joint(facts) - out.joint(),
        justifier.of(because));
  }

  /** Tiles to order: those needed and what may break, to whole tiles. */
  static long toOrder(TileSetOut out, double breakagePercent) {
    double more = Double.isNaN(breakagePercent) ? 0 : breakagePercent;
    return (long) Math.ceil(out.tiles() * (1 + more / PER_CENT) - 1e-9);
  }

  private static void addBecause(Facts facts, String name, List<Derivation> because) {
    Fact fact = facts.find(name);
    if (fact != null && fact.because() != null) {
      because.add(fact.because());
    }
  }
}
