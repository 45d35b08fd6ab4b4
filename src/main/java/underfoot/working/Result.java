package underfoot.working;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a working came to.
 *
 * @param working its name
 * @param inputs what it was given, units made plain: a {@link Measure}, a word, or lists
 * @param results each result by name, unrounded
 * @param steps formula, formula with numbers, and outcome, again and again
 * @param source where the formula and its constants come from
 * @param notes what a reader should know besides
 */
public record Result(
    String working,
    Map<String, Object> inputs,
    Map<String, Measure> results,
    List<String> steps,
    String source,
    List<String> notes) {

  /** Keeps the order things were put in. */
  public Result {
    inputs = Collections.unmodifiableMap(new LinkedHashMap<>(inputs));
    results = Collections.unmodifiableMap(new LinkedHashMap<>(results));
    steps = List.copyOf(steps);
    notes = List.copyOf(notes);
  }

  /** One result's number, in the unit the contract names. */
  public double value(String key) {
    Measure measure = results.get(key);
    if (measure == null) {
      throw new IllegalArgumentException("no result " + key + " in " + results.keySet());
    }
    return measure.value();
  }

  /** Collects a result step by step. */
  static final class Draft {
    private final Map<String, Measure> results = new LinkedHashMap<>();
    private final List<String> steps = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    Draft step(String formula, String withNumbers, String outcome) {
      steps.add(formula);
      steps.add(withNumbers);
      steps.add(outcome);
      return this;
    }

    Draft value(String key, double value, String unit) {
      results.put(key, new Measure(value, unit));
      return this;
    }

    Draft note(String note) {
      notes.add(note);
      return this;
    }

    Result done(Working working, Inputs inputs) {
      return new Result(working.name(), inputs.shown(), results, steps, working.source(), notes);
    }
  }
}
