package underfoot.working;

import java.util.ArrayList;
import java.util.List;

/**
 * A simply supported joist under loads that lie on parts of it only, such as a bath.
 *
 * <p>Source: textbook statics; for a load P at a distance a from the nearer support the middle sags
 * by P a (3 L^2 - 4 a^2)/(48 E I), and by M/(k G A) from shear, M being the moment there and k 5/6.
 */
public final class PatchLoad {
  private static final int SECTIONS = 200;

  private PatchLoad() {}

  /**
   * A load spread evenly along a part of a joist.
   *
   * @param fromMm where it begins, mm from the support
   * @param toMm where it ends, mm from the same support, not less
   * @param loadN all of it, N, not below 0
   */
  public record Patch(double fromMm, double toMm, double loadN) {
    /** Refuses a load that ends before it begins, or lifts. */
    public Patch {
      if (!(toMm >= fromMm) || !(loadN >= 0)) {
        throw new IllegalArgumentException("a load ends after it begins and presses downwards");
      }
    }

    private double middle() {
      return (fromMm + toMm) / 2;
    }

    /** The moment that the part of it before a section has about that section, N.mm. */
    private double before(double x) {
      if (x <= fromMm) {
        return 0;
      }
      if (x >= toMm) {
        return loadN * (x - middle());
      }
      return loadN * (x - fromMm) * (x - fromMm) / (2 * (toMm - fromMm));
    }
  }

  /** The greatest bending moment, N.mm. */
  public static double moment(List<Patch> patches, double spanMm) {
    List<Double> sections = new ArrayList<>();
    for (int i = 0; i <= SECTIONS; i++) {
      sections.add(spanMm * i / SECTIONS);
    }
    for (Patch patch : patches) {
      sections.add(patch.fromMm());
      sections.add(patch.middle());
      sections.add(patch.toMm());
    }
    return sections.stream().mapToDouble(x -> momentAt(patches, spanMm, x)).max().orElse(0);
  }

  private static double momentAt(List<Patch> patches, double spanMm, double x) {
    double moment = reactionAtStart(patches, spanMm) * x;
    for (Patch patch : patches) {
      moment -= patch.before(x);
    }
    return moment;
  }

  /** The greater of the loads on the two supports, N. */
  public static double reaction(List<Patch> patches, double spanMm) {
    double start = reactionAtStart(patches, spanMm);
    double all = patches.stream().mapToDouble(Patch::loadN).sum();
    return Math.max(start, all - start);
  }

  private static double reactionAtStart(List<Patch> patches, double spanMm) {
    return patches.stream()
        .mapToDouble(patch -> patch.loadN() * (spanMm - patch.middle()) / spanMm)
        .sum();
  }

  /**
   * How far the middle of the joist sags.
   *
   * @param patches the loads
   * @param spanMm span, mm
   * @param breadthMm breadth, mm
   * @param depthMm depth, mm
   * @param modulus modulus of elasticity, N/mm2
   * @param shearModulus shear modulus, N/mm2
   * @return deflection, mm
   */
  public static double deflection(
      List<Patch> patches,
      double spanMm,
      double breadthMm,
      double depthMm,
      double modulus,
      double shearModulus) {
    double stiffness = Need.positive("modulus", modulus) * Beam.secondMoment(breadthMm, depthMm);
    double bending = 0;
    for (Patch patch : patches) {
      bending += bending(patch, spanMm) / (48 * stiffness);
    }
    double area = breadthMm * depthMm;
    double shear =
        momentAt(patches, spanMm, spanMm / 2)
            / (Beam.SHEAR_FACTOR * Need.positive("shear modulus", shearModulus) * area);
    return bending + shear;
  }

  /** The mean of a (3 L^2 - 4 a^2) over the patch, times its load. */
  private static double bending(Patch patch, double spanMm) {
    if (patch.toMm() == patch.fromMm()) {
      return patch.loadN() * atPoint(patch.fromMm(), spanMm);
    }
    double half = spanMm / 2;
    double split = Math.max(patch.fromMm(), Math.min(patch.toMm(), half));
    double sum = overPart(patch.fromMm(), split, spanMm) + overPart(split, patch.toMm(), spanMm);
    return patch.loadN() * sum / (patch.toMm() - patch.fromMm());
  }

  /** Simpson's rule, which is exact for a cubic. */
  private static double overPart(double from, double to, double spanMm) {
    return (to - from)
        / 6
        * (atPoint(from, spanMm) + 4 * atPoint((from + to) / 2, spanMm) + atPoint(to, spanMm));
  }

  private static double atPoint(double x, double spanMm) {
    double nearer = Math.min(x, spanMm - x);
    return nearer * (3 * spanMm * spanMm - 4 * nearer * nearer);
  }

  /**
   * The share of a load, even between two lines, that the joist at the origin takes where the deck
   * spans simply from joist to joist.
   *
   * @param fromMm where the load begins, mm from the joist
   * @param toMm where it ends
   * @param centresMm joist spacing, mm
   */
  public static double share(double fromMm, double toMm, double centresMm) {
    if (toMm <= fromMm) {
      return Math.max(0, 1 - Math.abs(fromMm) / centresMm);
    }
    return (under(toMm / centresMm) - under(fromMm / centresMm)) * centresMm / (toMm - fromMm);
  }

  /** The area under the influence line of a joist from far left up to a place, in centres. */
  private static double under(double place) {
    double x = Math.max(-1, Math.min(1, place));
    return x < 0 ? (1 + x) * (1 + x) / 2 : 1 - (1 - x) * (1 - x) / 2;
  }
}
