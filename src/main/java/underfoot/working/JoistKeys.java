package underfoot.working;

import static underfoot.quantity.Dimension.LENGTH;
import static underfoot.quantity.Dimension.PRESSURE;
import static underfoot.quantity.Dimension.STRESS;
import static underfoot.working.Key.Trait.OPTIONAL;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** The keys the two joist workings share. */
final class JoistKeys {
  static final String SOURCE =
      "5wL^4/(384EI): Chudley and Greeno, Building Construction Handbook, 8th ed., Timber beam"
          + " design (published); shear part wL^2/(8kGA), k = 5/6: textbook closed form; grades: EN"
          + " 338:2016, E0,mean";

  private final Map<String, TimberGrade> grades = new LinkedHashMap<>();

  JoistKeys(List<TimberGrade> grades) {
    grades.forEach(grade -> this.grades.put(grade.name(), grade));
  }

  Key[] keys(Key last) {
    return new Key[] {
      Key.of("breadth", LENGTH, "mm", 10, 1000, "breadth of one joist"),
      Key.of("depth", LENGTH, "mm", 20, 2000, "depth of one joist"),
      Key.of("modulus", STRESS, "N/mm2", 100, 300_000, "modulus of elasticity", OPTIONAL),
      Key.choice(
          "grade",
          "strength class of EN 338, in place of modulus",
          List.copyOf(grades.keySet()),
          OPTIONAL),
      Key.of("centres", LENGTH, "mm", 10, 5000, "joist spacing, centre to centre"),
      Key.of("load", PRESSURE, "kN/m2", 0.001, 100, "load on the floor"),
      last,
      Key.of("shear-modulus", STRESS, "N/mm2", 10, 100_000, "adds shear deflection", OPTIONAL)
    };
  }

  static Alternative[] modulusOrGrade() {
    return new Alternative[] {Alternative.of("modulus"), Alternative.of("grade")};
  }

  double modulus(Inputs in) {
    return in.has("modulus") ? in.number("modulus") : grades.get(in.word("grade")).modulus();
  }

  static OptionalDouble shearModulus(Inputs in) {
    return in.has("shear-modulus")
        ? OptionalDouble.of(in.number("shear-modulus"))
        : OptionalDouble.empty();
  }

  /** Begins with what both workings need: second moment and load on one joist. */
  Result.Draft begun(Inputs in) {
    Result.Draft draft =
        new Result.Draft(in)
            .let("b", in.number("breadth"))
            .let("d", in.number("depth"))
            .let("E", modulus(in))
            .let("I", Beam.secondMoment(in.number("breadth"), in.number("depth")), "mm4")
            .let("w", Beam.lineLoad(in.number("load"), in.number("centres")));
    return draft
        .step("I = b*d^3/12")
        .step("w = load*centres", "{load}*{centres}/1000", "w = {w} N/mm");
  }

  Result.Draft notes(Inputs in, Result.Draft draft) {
    if (in.has("grade")) {
      TimberGrade grade = grades.get(in.word("grade"));
      draft.note(
          grade.name()
              + " is taken as E = {E} N/mm2 (EN 338:2016 E0,mean, "
              + grade.status()
              + ").");
    }
    boolean shear = in.has("shear-modulus");
    return draft
        .note(
            (shear ? "Bending and shear" : "Bending only, as the span tables do")
                + "; one clear span, no help from the deck.")
        .note(
            "Deflection only: bending, shear and bearing strength are another check. Anything"
                + " structural is for an engineer and the local code.");
  }
}
