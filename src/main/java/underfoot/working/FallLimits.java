package underfoot.working;

/**
 * The falls a wet floor is laid to.
 *
 * @param gentlest n of the gentlest fall 1:n
 * @param steepest n of the steepest fall 1:n
 */
public record FallLimits(double gentlest, double steepest) {}
