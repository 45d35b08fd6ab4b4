package underfoot.report.html;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import underfoot.knowledge.Phrases;
import underfoot.measure.LevelSurvey;
import underfoot.measure.Texts;
import underfoot.measure.TriangulatedSurface;
import underfoot.plan.LevelPlan;
import underfoot.plan.RoomPlan;
import underfoot.report.HtmlWriter;
import underfoot.report.html.Svg.Anchor;
import underfoot.scenario.Point;
import underfoot.scenario.Reading;
import underfoot.working.BestPlane;

/**
 * The floor's levels: how deep the compound stands, or how the floor lies where none is poured, in
 * shades with lines of equal depth, the places surveyed, the highest point, the way the floor
 * tilts, and the depth in every doorway.
 */
final class LevelDrawing {
  private static final int SHADES = 6;
  private static final double[] STEPS = {0.5, 1, 2, 5, 10, 20, 50, 100};
  private static final String[] TINTS = {
    "#f4f8fa", "#dbe9ef", "#bdd6e0", "#9bc0cf", "#78a8bb", "#5590a6", "#37788f", "#1d5f7a"
  };
  private static final double CLOSE = 21;

  /** Less fall than this is not drawn, mm a metre. */
  private static final double LEVEL = 0.2;

  /** Of more readings than these, those that stand highest and lowest of each square are drawn. */
  private static final int MOST_DRAWN = 800;

  private static final int SQUARES = 20;

  private final RoomPlan room;
  private final List<Integer> drawn;
  private final Optional<LevelPlan> plan;
  private final Phrases speech;
  private final TriangulatedSurface tin;
  private final double step;
  private final double lowest;

  private LevelDrawing(
      RoomPlan room,
      List<Integer> drawn,
      Optional<LevelPlan> plan,
      Phrases speech,
      LevelSurvey survey) {
    this.room = room;
    this.drawn = drawn;
    this.plan = plan;
    this.speech = speech;
    List<Coordinate> shown = new ArrayList<>();
    Optional<BestPlane.Values> surface = surface();
    for (Coordinate vertex : survey.floor().vertices()) {
      double z = vertex.getZ();
      if (surface.isPresent()) {
        BestPlane.Values at = surface.get();
        z = at.aMm() + at.bMmPerM() * vertex.x / 1000 + at.cMmPerM() * vertex.y / 1000 - z;
      }
      shown.add(new Coordinate(vertex.x, vertex.y, z));
    }
    this.tin = TriangulatedSurface.of(shown);
    double low = shown.stream().mapToDouble(Coordinate::getZ).min().orElse(0);
    double high = shown.stream().mapToDouble(Coordinate::getZ).max().orElse(0);
    double found = STEPS[STEPS.length - 1];
    for (int i = STEPS.length - 1; i >= 0; i--) {
      if ((high - low) / STEPS[i] <= SHADES) {
        found = STEPS[i];
      }
    }
    this.step = found;
    this.lowest = Math.floor(low / step + 1e-9) * step;
  }

  /** The drawing; empty where there are too few readings. */
  static Optional<LevelDrawing> of(RoomPlan room, Optional<LevelPlan> plan, Phrases speech) {
    List<Point> outline = new ArrayList<>();
    room.corners().forEach(c -> outline.add(new Point(c[0], c[1])));
    List<Integer> drawn = drawn(room.readings());
    List<Reading> readings = new ArrayList<>();
    for (int i : drawn) {
      double[] r = room.readings().get(i);
      readings.add(new Reading(r[0], r[1], r[2]));
    }
    return LevelSurvey.of(outline, readings)
        .filter(survey -> survey.plane().isPresent() && !survey.floor().triangles().isEmpty())
        .map(survey -> new LevelDrawing(room, drawn, plan, speech, survey));
  }

  /** Which readings are drawn: all, unless there are more than can be told from each other. */
  private static List<Integer> drawn(List<double[]> readings) {
    List<Integer> all = IntStream.range(0, readings.size()).boxed().toList();
    if (readings.size() <= MOST_DRAWN) {
      return all;
    }
    Map<List<Integer>, int[]> squares = new HashMap<>();
    double[] least = {Double.MAX_VALUE, Double.MAX_VALUE};
    double[] most = {-Double.MAX_VALUE, -Double.MAX_VALUE};
    for (double[] one : readings) {
      for (int axis = 0; axis < 2; axis++) {
        least[axis] = Math.min(least[axis], one[axis]);
        most[axis] = Math.max(most[axis], one[axis]);
      }
    }
    double side = Math.max(1, Math.max(most[0] - least[0], most[1] - least[1]) / SQUARES);
    for (int i : all) {
      double[] one = readings.get(i);
      List<Integer> square =
          List.of((int) ((one[0] - least[0]) / side), (int) ((one[1] - least[1]) / side));
      int[] held = squares.computeIfAbsent(square, at -> new int[] {i, i});
      held[0] = one[2] > readings.get(held[0])[2] ? i : held[0];
      held[1] = one[2] < readings.get(held[1])[2] ? i : held[1];
    }
    return squares.values().stream()
        .flatMap(held -> Stream.of(held[0], held[1]))
        .distinct()
        .sorted()
        .toList();
  }

  /** The phrase that says what is drawn. */
  static String caption(Optional<LevelPlan> plan) {
    return plan.isPresent() ? "level-map-pour-caption" : "level-map-caption";
  }

  /** The surface of the compound. */
  private Optional<BestPlane.Values> surface() {
    if (plan.isEmpty()) {
      return Optional.empty();
    }
    List<underfoot.working.Reading> tops = new ArrayList<>();
    for (LevelPlan.Marker marker : plan.get().markers()) {
      tops.add(
          new underfoot.working.Reading(
              marker.xMm() / 1000, marker.yMm() / 1000, marker.readingMm() + marker.heightMm()));
    }
    return Optional.of(BestPlane.of(tops));
  }

  private String step(double from) {
    return speech.say("from-to-plain", "least", Texts.tenths(from), "most", Texts.mm(from + step));
  }

  HtmlWriter draw() {
    double top = tin.vertices().stream().mapToDouble(Coordinate::getZ).max().orElse(lowest);
    int bands = (int) Math.ceil((top - lowest) / step - 1e-9);
    bands = Math.max(1, Math.min(bands, TINTS.length));
    RoomDrawing drawing =
        new RoomDrawing(
            room,
            "levels",
            speech.say(plan.isPresent() ? "level-map-pour-title" : "level-map-title"),
            speech.say("level-map-described", "count", Integer.toString(room.readings().size())),
            26 + 13 * ((bands + 2) / 3));
    Svg svg = drawing.svg();
    svg.clip("room", drawing.outline());
    svg.fill(drawing.outline(), TINTS[0], "p0");
    for (int band = 0; band < bands; band++) {
      double from = lowest + band * step;
      int tint = tint(band, bands);
      svg.fill(each(triangle -> between(triangle, from, drawing)), TINTS[tint], "p" + tint);
    }
    for (int band = 1; band < bands; band++) {
      double height = lowest + band * step;
      svg.stroke(each(triangle -> at(triangle, height, drawing)), Ink.POUR, 0.9);
    }
    svg.endClip();
    drawing.walls(this::said);
    double slope = tilt(drawing);
    places(drawing);
    doors(drawing);
    legend(svg, drawing.below(), bands, slope);
    return svg.markup();
  }

  /** A path of what is drawn of every triangle. */
  private String each(Function<int[], String> drawn) {
    return tin.triangles().stream().map(drawn).collect(Collectors.joining());
  }

  private static int tint(int band, int bands) {
    return bands <= 1 ? 2 : (int) Math.round((double) band * (TINTS.length - 2) / (bands - 1));
  }

  /** The part of a triangle from a height to a step above it, as a path. */
  private String between(int[] triangle, double low, RoomDrawing drawing) {
    List<double[]> shape = new ArrayList<>();
    for (int corner : triangle) {
      Coordinate c = tin.vertices().get(corner);
      shape.add(new double[] {c.x, c.y, c.getZ()});
    }
    shape = cut(cut(shape, low, 1), low + step, -1);
    double[] xy = new double[2 * shape.size()];
    for (int i = 0; i < shape.size(); i++) {
      double x = drawing.x(shape.get(i)[0]);
      double y = drawing.y(shape.get(i)[1]);
      xy[2 * i] = x;
      xy[2 * i + 1] = y;
    }
    return shape.size() < 3 ? "" : Svg.path(xy) + "Z";
  }

  /** What of a shape lies above a height, or below it. */
  private static List<double[]> cut(List<double[]> shape, double height, int side) {
    List<double[]> left = new ArrayList<>();
    for (int i = 0; i < shape.size(); i++) {
      double[] a = shape.get(i);
      double[] b = shape.get((i + 1) % shape.size());
      double da = (a[2] - height) * side;
      double db = (b[2] - height) * side;
      if (da >= 0) {
        left.add(a);
      }
      if (da > 0 && db < 0 || da < 0 && db > 0) {
        double share = da / (da - db);
        left.add(new double[] {a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1]), height});
      }
    }
    return left;
  }

  /** The line of one height across a triangle, as a path. */
  private String at(int[] triangle, double height, RoomDrawing drawing) {
    List<double[]> ends = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      Coordinate a = tin.vertices().get(triangle[k]);
      Coordinate b = tin.vertices().get(triangle[(k + 1) % 3]);
      double da = a.getZ() - height;
      double db = b.getZ() - height;
      if (da >= 0 != db >= 0) {
        double share = da / (da - db);
        ends.add(new double[] {a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)});
      }
    }
    return ends.size() < 2
        ? ""
        : Svg.path(
            drawing.x(ends.get(0)[0]),
            drawing.y(ends.get(0)[1]),
            drawing.x(ends.get(1)[0]),
            drawing.y(ends.get(1)[1]));
  }

  /** The places surveyed, each with its number and the height of its marker. */
  private void places(RoomDrawing drawing) {
    Svg svg = drawing.svg();
    double highest =
        room.readings().stream().mapToDouble(reading -> reading[2]).max().orElse(Double.NaN);
    List<double[]> told = new ArrayList<>();
    double cx = drawing.x(mean(0));
    double cy = drawing.y(mean(1));
    for (int i : drawn) {
      double[] reading = room.readings().get(i);
      double x = drawing.x(reading[0]);
      double y = drawing.y(reading[1]);
      if (reading[2] == highest) {
        svg.fill(Svg.path(x - 5, y + 4, x + 5, y + 4, x, y - 5) + "Z", Ink.MARK);
      } else {
        svg.circle(x, y, 2.2, Ink.INK);
      }
      double dx = cx - x;
      double dy = cy - y;
      double far = Math.max(1, Math.hypot(dx, dy));
      double wx = x + 9 * dx / far;
      double wy = y + 3 + 10 * dy / far;
      Anchor anchor = dx / far > 0.5 ? Anchor.START : dx / far < -0.5 ? Anchor.END : Anchor.MIDDLE;
      boolean free =
          told.stream()
              .noneMatch(
                  other -> Math.abs(other[0] - wx) < CLOSE && Math.abs(other[1] - wy) < CLOSE / 2);
      if (free) {
        told.add(new double[] {wx, wy});
        double value =
            plan.isPresent() && i < plan.get().markers().size()
                ? Math.round(plan.get().markers().get(i).heightMm() * 2) / 2.0
                : reading[2];
        svg.halo(wx, wy, (i + 1) + ": " + Texts.tenths(value), 8.5, anchor);
      }
    }
  }

  private double mean(int axis) {
    return room.readings().stream().mapToDouble(one -> one[axis]).average().orElse(0);
  }

  /** An arrow the way the floor falls; gives how much it falls, mm a metre. */
  private double tilt(RoomDrawing drawing) {
    List<underfoot.working.Reading> readings = new ArrayList<>();
    for (double[] one : room.readings()) {
      readings.add(new underfoot.working.Reading(one[0] / 1000, one[1] / 1000, one[2]));
    }
    BestPlane.Values fit = BestPlane.of(readings);
    double slope = Math.hypot(fit.bMmPerM(), fit.cMmPerM());
    if (slope < LEVEL) {
      return slope;
    }
    double dx = -fit.bMmPerM() / slope;
    double dy = fit.cMmPerM() / slope;
    double cx = drawing.x(mean(0));
    double cy = drawing.y(mean(1));
    double length = 34;
    double tipX = cx + dx * length / 2;
    double tipY = cy + dy * length / 2;
    Svg svg = drawing.svg();
    svg.line(cx - dx * length / 2, cy - dy * length / 2, tipX, tipY, Ink.MARK, 2);
    svg.fill(
        Svg.path(
                tipX + dx * 5,
                tipY + dy * 5,
                tipX - dx * 4 - dy * 4,
                tipY - dy * 4 + dx * 4,
                tipX - dx * 4 + dy * 4,
                tipY - dy * 4 - dx * 4)
            + "Z",
        Ink.MARK);
    return slope;
  }

  /** How deep it stands in a doorway, or how high the floor is there. */
  private String said(RoomPlan.Door door) {
    double z = atDoor((door.x1() + door.x2()) / 2, (door.y1() + door.y2()) / 2);
    return Double.isNaN(z) ? "" : Texts.mm(z);
  }

  /** Marks the doorways. */
  private void doors(RoomDrawing drawing) {
    for (RoomPlan.Door door : room.doors()) {
      drawing.line(door.x1(), door.y1(), door.x2(), door.y2(), Ink.MARK, 2.4);
    }
  }

  private double atDoor(double x, double y) {
    double z = tin.heightAt(x, y);
    return Double.isNaN(z) && !tin.vertices().isEmpty() ? tin.nearest(x, y).getZ() : z;
  }

  private void legend(Svg svg, double top, int bands, double slope) {
    if (slope >= LEVEL) {
      svg.text(
          RoomDrawing.WIDTH - 8,
          top + 8,
          speech.say("falls", "slope", Texts.tenths(slope)),
          9.5,
          Anchor.END,
          Ink.MARK);
    }
    svg.text(
        8,
        top + 8,
        speech.say(plan.isPresent() ? "legend-depth" : "legend-height"),
        9.5,
        Anchor.START,
        Ink.INK,
        true,
        0);
    for (int band = 0; band < bands; band++) {
      double x = 8 + (band % 3) * 116;
      double y = top + 16 + 13.0 * (band / 3);
      int tint = tint(band, bands);
      svg.rect(x, y, 16, 9, TINTS[tint], "p" + tint);
      svg.stroke(Svg.path(x, y) + "h16v9h-16Z", Ink.FAINT, 0.6);
      svg.text(x + 21, y + 8, step(lowest + band * step), 9, Anchor.START);
    }
  }
}
