package underfoot.working;

import java.util.OptionalDouble;

/**
 * How large a bay between movement joints may be.
 *
 * @param longestSideM longest side, m
 * @param largestAreaM2 largest area, m2, or empty where no area is set
 */
public record BayLimits(double longestSideM, OptionalDouble largestAreaM2) {
  /** Refuses limits that are not above 0. */
  public BayLimits {
    Need.positive("longest side", longestSideM);
    largestAreaM2.ifPresent(area -> Need.positive("largest area", area));
  }
}
