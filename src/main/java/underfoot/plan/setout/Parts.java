package underfoot.plan.setout;

import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * A shape of many corners, cut into overlapping parts of few, so that what a small shape has in
 * common with it takes no longer where it has many corners.
 */
final class Parts {
  /** Shapes of at most so many corners are not cut further. */
  private static final int FEW = 32;

  private final Geometry shape;
  private final Envelope around;
  private final List<Parts> halves;

  /**
   * Cuts a shape up.
   *
   * @param shape what is cut up
   * @param reach how large the small shapes are at most, mm
   */
  Parts(Geometry shape, double reach) {
    this(shape, shape.getEnvelopeInternal(), reach);
  }

  private Parts(Geometry shape, Envelope around, double reach) {
    this.shape = shape;
    this.around = around;
    boolean wide = around.getWidth() > around.getHeight();
    double side = wide ? around.getWidth() : around.getHeight();
    if (shape.getNumPoints() <= FEW || side < 4 * reach) {
      this.halves = List.of();
      return;
    }
    double x = around.centre().x;
    double y = around.centre().y;
    Envelope low = new Envelope(around);
    Envelope high = new Envelope(around);
    if (wide) {
      low.init(around.getMinX(), x + reach, around.getMinY(), around.getMaxY());
      high.init(x - reach, around.getMaxX(), around.getMinY(), around.getMaxY());
    } else {
      low.init(around.getMinX(), around.getMaxX(), around.getMinY(), y + reach);
      high.init(around.getMinX(), around.getMaxX(), y - reach, around.getMaxY());
    }
    this.halves = List.of(half(low, reach), half(high, reach));
  }

  private Parts half(Envelope box, double reach) {
    return new Parts(Boxes.common(Field.SHAPES.toGeometry(box), shape), box, reach);
  }

  /** What a small shape has in common with this one. */
  Geometry common(Geometry small) {
    for (Parts half : halves) {
      if (half.around.contains(small.getEnvelopeInternal())) {
        return half.common(small);
      }
    }
    return Boxes.common(small, shape);
  }
}
