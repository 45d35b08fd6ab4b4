package underfoot.working;

import static underfoot.quantity.Dimension.GRADIENT;
import static underfoot.quantity.Dimension.LENGTH;
import static underfoot.working.Key.Trait.OPTIONAL;

import java.util.Arrays;

/** How much a floor drops to its drain, and how steep it is at its steepest. */
public final class Fall extends Working {
  private final FallLimits limits;

  /**
   * Makes the working.
   *
   * @param limits falls a wet floor is laid to, for the notes
   */
  public Fall(FallLimits limits) {
    super(
        new Sheet(
                "fall",
                "How much a floor drops to its drain, and how steep it is at its steepest",
                "Geometry; falls between 1:80 and 1:35 from BS 5385-3:2024 (quoted)",
                "gradient=1:60",
                "length=1.8 m",
                "width=0.9 m",
                "drain=centre")
            .ways(Alternative.of("run"), Alternative.of("length", "width", "drain")),
        Key.of("gradient", GRADIENT, "", 1, 10_000, "n of 1:n, as 50, 1:50 or 2 %"),
        Key.of("run", LENGTH, "m", 0.001, 1000, "one straight run", OPTIONAL),
        Key.of("length", LENGTH, "m", 0.001, 1000, "length of the area, in place of run", OPTIONAL),
        Key.of("width", LENGTH, "m", 0.001, 1000, "width of the area", OPTIONAL),
        Key.choice(
            "drain",
            "where the drain lies",
            Arrays.stream(Drain.values()).map(Drain::words).toList(),
            OPTIONAL));
    this.limits = limits;
  }

  /** Where the drain lies. */
  public enum Drain {
    /** A point in the middle of the area. */
    CENTRE("centre"),
    /** A point in a corner. */
    CORNER("corner"),
    /** A channel along the whole of a longer edge. */
    LONG_EDGE("long edge"),
    /** A channel along the whole of a shorter edge. */
    SHORT_EDGE("short edge");

    private final String words;

    Drain(String words) {
      this.words = words;
    }

    /** Its name in words. */
    public String words() {
      return words;
    }

    /**
     * The drain of that name.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static Drain named(String words) {
      for (Drain each : values()) {
        if (each.words.equals(words)) {
          return each;
        }
      }
      throw new IllegalArgumentException("no drain lies at " + words);
    }
  }

  /**
   * What a floor drops.
   *
   * @param fallMm drop from the farthest point to the drain, mm
   * @param longestRunMm run to the farthest point, mm
   * @param shortestRunMm shortest straight run from the drain to an edge, mm
   * @param steepest n of 1:n on that shortest run
   * @param meanMm mean height above the drain, mm
   */
  public record Values(
      double fallMm, double longestRunMm, double shortestRunMm, double steepest, double meanMm) {}

  /**
   * The fall along one straight run.
   *
   * @param gradient n of 1:n, above 0
   * @param runMm run, mm, above 0
   */
  public static Values of(double gradient, double runMm) {
    double fall = Need.positive("run", runMm) / Need.positive("gradient", gradient);
    return new Values(fall, runMm, runMm, gradient, fall / 2);
  }

  /**
   * The fall of a rectangular area to its drain. The gradient holds along the longest run; all
   * edges lie level, so shorter runs are steeper.
   *
   * @param gradient n of 1:n along the longest run, above 0
   * @param lengthMm length of the area, mm, above 0
   * @param widthMm width of the area, mm, above 0
   * @param drain where the drain lies
   * @throws IllegalArgumentException outside those ranges
   */
  public static Values of(double gradient, double lengthMm, double widthMm, Drain drain) {
    double longer = Math.max(Need.positive("length", lengthMm), Need.positive("width", widthMm));
    double shorter = Math.min(lengthMm, widthMm);
    double longest =
        switch (drain) {
          case CENTRE -> Math.hypot(longer, shorter) / 2;
          case CORNER -> Math.hypot(longer, shorter);
          case LONG_EDGE -> shorter;
          case SHORT_EDGE -> longer;
        };
    double shortest =
        switch (drain) {
          case CENTRE -> shorter / 2;
          case CORNER, LONG_EDGE -> shorter;
          case SHORT_EDGE -> longer;
        };
    double fall = longest / Need.positive("gradient", gradient);
    // To a channel the floor is one plane; to a point it is made of triangles of which two corners
    // stand at the edge and one at the drain.
    double share =
        switch (drain) {
          case CENTRE, CORNER -> 2.0 / 3;
          case LONG_EDGE, SHORT_EDGE -> 1.0 / 2;
        };
    return new Values(fall, longest, shortest, shortest / fall, share * fall);
  }

  @Override
  Result work(Inputs in) {
    double gradient = in.number("gradient");
    Drain drain = in.has("run") ? null : Drain.named(in.word("drain"));
    Values values =
        drain == null
            ? of(gradient, in.number("run"))
            : of(gradient, in.number("length"), in.number("width"), drain);
    Result.Draft draft =
        new Result.Draft(in)
            .let("n", gradient)
            .let("longest run", values.longestRunMm())
            .let("shortest run", values.shortestRunMm())
            .let("suitable", limits.steepest())
            .let("least", limits.gentlest())
            .value("fall", values.fallMm(), "mm")
            .value("longest-run", values.longestRunMm(), "mm")
            .value("steepest", values.steepest(), "");
    if (drain != null) {
      String way =
          switch (drain) {
            case CENTRE -> "sqrt(length^2 + width^2)/2";
            case CORNER -> "sqrt(length^2 + width^2)";
            case LONG_EDGE -> "the shorter side";
            case SHORT_EDGE -> "the longer side";
          };
      draft.step(
          "longest run = " + way, "{length} mm by {width} mm", "longest-run = {longest-run} mm");
    }
    return draft
        .step("fall = longest run/n")
        .step("steepest = shortest run/fall", "steepest = 1:{steepest}")
        .noteIf(
            values.steepest() < limits.steepest(),
            "Its steepest part is steeper than 1:{suitable}, the steepest that BS 5385-3:2024 calls"
                + " suitable (quoted).")
        .noteIf(
            gradient > limits.gentlest(),
            "Gentler than 1:{least}, the least fall of BS 5385-3:2024 (quoted).")
        .done(this);
  }
}
