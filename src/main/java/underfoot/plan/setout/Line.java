package underfoot.plan.setout;

/** An edge, where it lies before joints are widened. */
final class Line {
  final Field.Edge edge;
  double x1;
  double y1;
  double x2;
  double y2;
  double length;

  Line(Field.Edge edge) {
    this.edge = edge;
    lie(edge.x1(), edge.y1(), edge.x2(), edge.y2());
  }

  void lie(double ax, double ay, double bx, double by) {
    x1 = ax;
    y1 = ay;
    x2 = bx;
    y2 = by;
    length = Math.sqrt((bx - ax) * (bx - ax) + (by - ay) * (by - ay));
  }

  boolean alongX() {
    return Math.abs(y2 - y1) < Field.SLIP;
  }

  boolean alongY() {
    return Math.abs(x2 - x1) < Field.SLIP;
  }

  /** Whether another begins where this one ends. */
  boolean meets(Line next) {
    return (x2 - next.x1) * (x2 - next.x1) + (y2 - next.y1) * (y2 - next.y1)
        < Field.SLIP * Field.SLIP;
  }
}
