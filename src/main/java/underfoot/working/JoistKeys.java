package underfoot.working;

import java.util.ArrayList;
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

  List<Key> keys(Key last) {
    List<Key> keys = new ArrayList<>();
    keys.add(Key.of("breadth", Dimension.LENGTH, "mm", 10, 1000, "breadth of one joist"));
    keys.add(Key.of("depth", Dimension.LENGTH, "mm", 20, 2000, "depth of one joist"));
    keys.add(
        Key.of("modulus", Dimension.STRESS, "N/mm2", 100, 300_000, "modulus of elasticity")
            .optional());
    keys.add(
        Key.choice(
                "grade",
                "strength class of EN 338, in place of modulus",
                List.copyOf(grades.keySet()))
            .optional());
    keys.add(
        Key.of("centres", Dimension.LENGTH, "mm", 10, 5000, "joist spacing, centre to centre"));
    keys.add(Key.of("load", Dimension.AREA_LOAD, "kN/m2", 0.001, 100, "load on the floor"));
    keys.add(last);
    keys.add(
        Key.of("shear-modulus", Dimension.STRESS, "N/mm2", 10, 100_000, "adds shear deflection")
            .optional());
    return List.copyOf(keys);
  }

  static List<Alternative> modulusOrGrade() {
    return List.of(Alternative.of("modulus"), Alternative.of("grade"));
  }

  double modulus(Inputs in) {
    return in.has("modulus") ? in.number("modulus") : grades.get(in.word("grade")).modulus();
  }

  static OptionalDouble shearModulus(Inputs in) {
    return in.has("shear-modulus")
        ? OptionalDouble.of(in.number("shear-modulus"))
        : OptionalDouble.empty();
  }

  void notes(Inputs in, Result.Draft draft) {
    if (in.has("grade")) {
      TimberGrade grade = grades.get(in.word("grade"));
      draft.note(
          grade.name()
              + " is taken as E = "
              + Show.number(grade.modulus())
              + " N/mm2 (EN 338:2016 E0,mean, "
              + grade.status()
              + ").");
    }
    draft.note(
        in.has("shear-modulus")
            ? "Bending and shear; one clear span, no help from the deck."
            : "Bending only, as the span tables do; one clear span, no help from the deck.");
    draft.note(
        "Deflection only: bending, shear and bearing strength are another check. Anything"
            + " structural is for an engineer and the local code.");
  }
}
