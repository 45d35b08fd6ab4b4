package underfoot.working;

import static underfoot.quantity.Dimension.ANGLE;
import static underfoot.quantity.Dimension.LENGTH;
import static underfoot.quantity.Dimension.MASS_PER_DEPTH;
import static underfoot.working.Key.Trait.ABOVE;
import static underfoot.working.Key.Trait.BARE;

/** The bed a square-notched trowel leaves once the tile is pressed home, and the powder for it. */
public final class Adhesive extends Working {
  /** Makes the working. */
  public Adhesive() {
    super(
        new Sheet(
            "adhesive",
            "The bed a notched trowel leaves, and the powder for it",
            "Geometry of square notches, teeth as wide as the gaps; the powder comes from the data"
                + " sheet",
            "notch=10 mm",
            "angle=45",
            "powder=1.21 kg/m2"),
        Key.of("notch", LENGTH, "mm", 1, 60, "depth of the square notches"),
        Key.of("angle", ANGLE, "degrees", 0, 90, "angle of the trowel to the floor", ABOVE, BARE),
        Key.of("powder", MASS_PER_DEPTH, "kg/m2", 0, 30, "powder for each mm of bed", ABOVE));
  }

  /**
   * What a trowel leaves.
   *
   * @param bedMm thickness of the bed, mm
   * @param massKgPerM2 dry powder, kg/m2
   */
  public record Values(double bedMm, double massKgPerM2) {}

  /**
   * Works out bed = notch/2 sin(angle), mass = bed powder. Teeth as wide as the gaps.
   *
   * @param notchMm depth of the notches, mm, above 0
   * @param angleDegrees angle of the trowel to the floor, degrees, above 0 and at most 90
   * @param powderKgPerM2PerMm dry powder for each mm of bed, kg/m2, above 0
   * @throws IllegalArgumentException outside those ranges
   */
  public static Values of(double notchMm, double angleDegrees, double powderKgPerM2PerMm) {
    if (!(angleDegrees > 0) || !(angleDegrees <= 90)) {
      throw new IllegalArgumentException("the angle must be above 0 and at most 90 degrees");
    }
    double bed = Need.positive("notch", notchMm) / 2 * Math.sin(Math.toRadians(angleDegrees));
    return new Values(bed, massKgPerM2(bed, powderKgPerM2PerMm));
  }

  /**
   * Works out mass = bed powder, for a bed of any make.
   *
   * @param bedMm thickness of the bed, mm, 0 or more
   * @param powderKgPerM2PerMm dry powder for each mm of bed, kg/m2, above 0
   * @return dry powder, kg/m2
   * @throws IllegalArgumentException outside those ranges
   */
  public static double massKgPerM2(double bedMm, double powderKgPerM2PerMm) {
    return Need.notNegative("bed", bedMm) * Need.positive("powder", powderKgPerM2PerMm);
  }

  @Override
  Result work(Inputs in) {
    Values values = of(in.number("notch"), in.number("angle"), in.number("powder"));
    return new Result.Draft(in)
        .value("bed", values.bedMm(), "mm")
        .value("mass", values.massKgPerM2(), "kg/m2")
        .step("bed = notch/2*sin(angle)")
        .step("mass = bed*powder")
        .note("An ideal ridge and a flat back: a ceiling. Back-buttering and hollows come on top.")
        .done(this);
  }
}
