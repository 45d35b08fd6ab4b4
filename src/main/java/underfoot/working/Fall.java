package underfoot.working;

import java.util.List;

/** How much a floor drops to its drain, and how steep it is at its steepest. */
public final class Fall implements Working {
  private final FallLimits limits;

  /**
   * Makes the working.
   *
   * @param limits falls a wet floor is laid to, for the notes
   */
  public Fall(FallLimits limits) {
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
  public String name() {
    return "fall";
  }

  @Override
  public String purpose() {
    return "How much a floor drops to its drain, and how steep it is at its steepest";
  }

  @Override
  public List<Key> keys() {
    return List.of(
        Key.of("gradient", Dimension.GRADIENT, "", 1, 10_000, "n of 1:n, as 50, 1:50 or 2 %")
            .takesBare(),
        Key.of("run", Dimension.LENGTH, "m", 0.001, 1000, "one straight run").optional(),
        Key.of("length", Dimension.LENGTH, "m", 0.001, 1000, "length of the area, in place of run")
            .optional(),
        Key.of("width", Dimension.LENGTH, "m", 0.001, 1000, "width of the area").optional(),
        Key.choice(
                "drain",
                "where the drain lies",
                List.of("centre", "corner", "long edge", "short edge"))
            .optional());
  }

  @Override
  public List<Alternative> alternatives() {
    return List.of(Alternative.of("run"), Alternative.of("length", "width", "drain"));
  }

  @Override
  public List<String> example() {
    return List.of("gradient=1:60", "length=1.8 m", "width=0.9 m", "drain=centre");
  }

  @Override
  public String source() {
    return "Geometry; falls between 1:80 and 1:35 from BS 5385-3:2024 (quoted)";
  }

  @Override
  public Result work(Inputs in) {
    double gradient = in.number("gradient");
    Result.Draft draft = new Result.Draft();
    Values values;
    if (in.has("run")) {
      values = of(gradient, in.number("run"));
    } else {
      Drain drain = Drain.named(in.word("drain"));
      double length = in.number("length");
      double width = in.number("width");
      values = of(gradient, length, width, drain);
      String way =
          switch (drain) {
            case CENTRE -> "sqrt(length^2 + width^2)/2";
            case CORNER -> "sqrt(length^2 + width^2)";
            case LONG_EDGE -> "the shorter side";
            case SHORT_EDGE -> "the longer side";
          };
      draft.step(
          "longest run = " + way,
          Show.number(length) + " mm by " + Show.number(width) + " mm",
          "longest-run = " + Show.number(values.longestRunMm()) + " mm");
    }
    draft
        .step(
            "fall = longest run/n",
            Show.number(values.longestRunMm()) + "/" + Show.number(gradient),
            "fall = " + Show.number(values.fallMm()) + " mm")
        .step(
            "steepest = shortest run/fall",
            Show.number(values.shortestRunMm()) + "/" + Show.number(values.fallMm()),
            "steepest = 1:" + Show.number(values.steepest()))
        .value("fall", values.fallMm(), "mm")
        .value("longest-run", values.longestRunMm(), "mm")
        .value("steepest", values.steepest(), "");
    if (values.steepest() < limits.steepest()) {
      draft.note(
          "Its steepest part is steeper than 1:"
              + Show.number(limits.steepest())
              + ", the steepest that BS 5385-3:2024 calls suitable (quoted).");
    }
    if (gradient > limits.gentlest()) {
      draft.note(
          "Gentler than 1:"
              + Show.number(limits.gentlest())
              + ", the least fall of BS 5385-3:2024 (quoted).");
    }
    return draft.done(this, in);
  }
}
