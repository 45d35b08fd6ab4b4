package underfoot.plan;

import java.util.List;

/**
 * How the levelling compound is set out.
 *
 * @param level whether its surface is level; otherwise it is flat and follows the floor's slope
 * @param datumMm height of the surface above the survey's datum, mm, where x and y are 0
 * @param volumeL compound over the whole floor, L
 * @param markers how deep it stands at each reading
 * @param because the rules that asked for it
 */
public record LevelPlan(
    boolean level,
    double datumMm,
    double volumeL,
    List<Marker> markers,
    List<Justification> because) {
  /** Copies the lists. */
  public LevelPlan {
    markers = List.copyOf(markers);
    because = List.copyOf(because);
  }

  /**
   * A marker that stands on the base and shows how high to pour.
   *
   * @param xMm its place, mm
   * @param yMm its place, mm
   * @param readingMm height of the base there, mm
   * @param heightMm height of the marker, which is the depth of the pour there, mm
   */
  public record Marker(double xMm, double yMm, double readingMm, double heightMm) {}
}
