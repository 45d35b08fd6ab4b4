package underfoot.working;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

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
  private static final Pattern IN_BRACES = Pattern.compile("\\{([^}]+)}");

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

  /**
   * Collects a result step by step. A number has a name, under which formulas and texts have it:
   * keys bear their own, results theirs, and others are let be called something.
   */
  static final class Draft {
    private final Inputs in;
    private final Map<String, Measure> named = new LinkedHashMap<>();
    private final Map<String, Measure> results = new LinkedHashMap<>();
    private final List<String> steps = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    Draft(Inputs in) {
      this.in = in;
      in.numbers().forEach(this::let);
    }

    Draft let(String name, double number) {
      return let(name, number, "");
    }

    Draft let(String name, double number, String unit) {
      named.put(name, new Measure(number, unit));
      return this;
    }

    Draft value(String key, double value, String unit) {
      results.put(key, new Measure(value, unit));
      return let(key, value, unit);
    }

    /**
     * Adds a step whose formula says all: {@code bed = notch/2*sin(angle)}, where all but functions
     * is a number with a name. What stands after a comma explains it.
     */
    Draft step(String formula) {
      String name = formula.substring(0, formula.indexOf(" = "));
      return step(formula, name + " = " + named.get(name));
    }

    /** Adds a step whose outcome is told in other words, with {@code {name}} for a number. */
    Draft step(String formula, String outcome) {
      int end = formula.indexOf(", ");
      String right =
          formula.substring(
              formula.indexOf(" = ") + " = ".length(), end < 0 ? formula.length() : end);
      String names =
          named.keySet().stream()
              .sorted(Comparator.comparing(String::length).reversed())
              .collect(Collectors.joining("|"));
      Pattern name = Pattern.compile("(?<![A-Za-z0-9])(?:" + names + ")(?![A-Za-z0-9])");
      String numbers =
          name.matcher(right).replaceAll(found -> Show.term(named.get(found.group()).value()));
      return add(formula, numbers, outcome);
    }

    /** Adds a step whose numbers and outcome are told, with {@code {name}} for a number. */
    Draft step(String formula, String numbers, String outcome) {
      return add(formula, fill(numbers), outcome);
    }

    private Draft add(String formula, String numbers, String outcome) {
      steps.add(formula);
      steps.add(numbers);
      steps.add(fill(outcome));
      return this;
    }

    /** Adds a note, with {@code {name}} for a number. */
    Draft note(String note) {
      notes.add(fill(note));
      return this;
    }

    /** Adds a note where it applies. */
    Draft noteIf(boolean applies, String note) {
      return applies ? note(note) : this;
    }

    private String fill(String text) {
      return IN_BRACES
          .matcher(text)
          .replaceAll(found -> Show.number(named.get(found.group(1)).value()));
    }

    Result done(Working working) {
      return new Result(working.name(), in.shown(), results, steps, working.source(), notes);
    }
  }
}
