package underfoot.lesson;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import underfoot.buildup.ActRuling;
import underfoot.buildup.Caution;
import underfoot.buildup.Conclusion;
import underfoot.buildup.CoverageTarget;
import underfoot.buildup.LayerClass;
import underfoot.buildup.Remedy;
import underfoot.buildup.Severity;
import underfoot.buildup.StackLayer;
import underfoot.buildup.StepTime;
import underfoot.buildup.StopFinding;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.Source;
import underfoot.reasoning.ActsApplied;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.BuildUp;

/**
 * A floor and what was decided on it, as lesson files ask after it. What they say of a floor is a
 * condition, such as {@code layer tile-bed}, {@code stop rot-stops}, {@code not danger silica},
 * {@code class of tile-bed is C2 S1}, {@code base family is timber or floating} or {@code floor
 * humidity above humidity-limit}. Of several doors the first is meant.
 */
final class Floor {
  private static final int CITED = 3;
  private static final int LETTERS = 26;

  private final Assessment assessment;
  private final Phrases phrases;
  private final Random random;
  private final String door;

  Floor(Assessment assessment, Random random) {
    this.assessment = assessment;
    this.phrases = new Phrases(assessment.knowledge().wording());
    this.random = random;
    List<String> doors = assessment.scenario().entries("room.doors[]");
    this.door = doors.isEmpty() ? "" : doors.get(0);
  }

  Assessment assessment() {
    return assessment;
  }

  Knowledge knowledge() {
    return assessment.knowledge();
  }

  Facts facts() {
    return assessment.factsOfChosen();
  }

  Random random() {
    return random;
  }

  /** Whether none of some acts is forbidden here, of the whole floor or of its first door. */
  boolean allows(List<String> acts) {
    return ActsApplied.rulings(assessment.of(ActRuling.class), ActRuling.Sort.NEVER)
        .holdingFor(acts, door)
        .isEmpty();
  }

  /** The first door; empty if there is none. */
  String door() {
    return door;
  }

  /** A fact of the floor or its first door; null if there is none. */
  Fact fact(String name) {
    return facts().findNear(name, door);
  }

  String say(String id, String... filling) {
    return phrases.say(id, filling);
  }

  /** Some of a list, drawn by chance, in the order of chance. */
  <T> List<T> drawn(List<T> from, int most) {
    List<T> shuffled = new ArrayList<>(from);
    Collections.shuffle(shuffled, random);
    return shuffled.subList(0, Math.min(most, shuffled.size()));
  }

  /** Names for options: letters, as many as there are. */
  static String letter(int place) {
    if (place >= LETTERS) {
      throw new IllegalArgumentException("no question has so many options: " + place);
    }
    return String.valueOf((char) ('a' + place));
  }

  /** Whether all conditions hold. */
  boolean holds(List<String> conditions) {
    return conditions.stream().allMatch(this::holds);
  }

  /** Whether a condition holds. */
  boolean holds(String condition) {
    if (condition.startsWith("not ")) {
      return !holds(condition.substring(4));
    }
    Optional<Boolean> compared = compared(condition);
    return compared.isPresent() ? compared.get() : !because(condition).isEmpty();
  }

  private Optional<Boolean> compared(String condition) {
    if (condition.startsWith("stated ")) {
      String key = condition.substring("stated ".length());
      return Optional.of(
          assessment.scenario().givens().stream()
              .anyMatch(one -> one.said() && one.known() && one.called().equals(key)));
    }
    if (condition.startsWith("verdict ")) {
      return Optional.of(assessment.verdict().word().equals(condition.substring(8)));
    }
    if (condition.startsWith("fact ")) {
      return Optional.of(fact(condition.substring("fact ".length())) != null);
    }
    if (condition.equals("builds")) {
      return Optional.of(assessment.chosen().isPresent());
    }
    for (String relation : List.of(" above ", " below ", " at least ", " at most ")) {
      int at = condition.indexOf(relation);
      if (at > 0) {
        Fact fact = fact(condition.substring(0, at));
        double limit = limit(condition.substring(at + relation.length()));
        return Optional.of(fact != null && fact.hasNumber() && stands(fact, relation, limit));
      }
    }
    int at = condition.indexOf(" is ");
    if (at > 0 && !condition.startsWith("class of ")) {
      Fact fact = fact(condition.substring(0, at));
      List<String> values = Arrays.asList(condition.substring(at + 4).split(" or "));
      return Optional.of(fact != null && values.contains(fact.text()));
    }
    return Optional.empty();
  }

  private double limit(String text) {
    Figures figures = knowledge().figures();
    if (figures.has(text)) {
      return figures.get(text).number();
    }
    Fact fact = fact(text);
    return fact == null ? Double.parseDouble(text.split(" ")[0]) : fact.number();
  }

  private static boolean stands(Fact fact, String relation, double limit) {
    return switch (relation.strip()) {
      case "above" -> fact.number() > limit;
      case "below" -> fact.number() < limit;
      case "at least" -> fact.number() >= limit;
      default -> fact.number() <= limit;
    };
  }

  /** Why something holds, by how a lesson file names it; empty if it does not hold. */
  List<Derivation> because(String named) {
    int space = named.indexOf(' ');
    String sort = space < 0 ? named : named.substring(0, space);
    String id = space < 0 ? "" : named.substring(space + 1);
    Set<Derivation> found = new LinkedHashSet<>();
    switch (sort) {
      case "layer" -> {
        for (StackLayer layer : layers()) {
          if (layer.kind().id().equals(id)) {
            found.addAll(layer.because());
          }
        }
      }
      case "way" ->
          assessment
              .chosen()
              .filter(chosen -> chosen.way().equals(id))
              .ifPresent(chosen -> chosen.offers().forEach(one -> found.add(one.because())));
      case "stop" -> {
        for (StopFinding one : assessment.of(StopFinding.class)) {
          add(one, one.wording().equals(id), found);
        }
      }
      case "first" -> {
        for (Remedy one : assessment.of(Remedy.class)) {
          add(one, one.wording().equals(id), found);
        }
      }
      case "caution", "danger" -> {
        for (Caution one : assessment.of(Caution.class)) {
          boolean grave = sort.equals("caution") || one.severity() == Severity.DANGER;
          add(one, grave && one.wording().equals(id), found);
        }
      }
      case "step" -> {
        for (StepTime one : assessment.of(StepTime.class)) {
          add(one, one.step().equals(id), found);
        }
      }
      case "contact" ->
          assessment.of(CoverageTarget.class).forEach(one -> found.add(one.because()));
      case "class" -> {
        String[] of = id.substring("of ".length()).split(" is ");
        for (LayerClass one : assessment.of(LayerClass.class)) {
          add(
              one,
              one.layer().equals(of[0]) && (of.length < 2 || one.grade().equals(of[1])),
              found);
        }
      }
      case "fact" -> {
        Fact fact = fact(id);
        if (fact != null) {
          rulesOf(fact, found);
        }
      }
      default ->
          throw new IllegalArgumentException(
              "'"
                  + named
                  + "' is no condition; write layer, way, stop, first, caution, danger, class of,"
                  + " contact, fact, step, stated, verdict or builds, or compare a fact");
    }
    return List.copyOf(found);
  }

  private static void add(Conclusion one, boolean fits, Set<Derivation> to) {
    if (fits) {
      to.add(one.because());
    }
  }

  private static void rulesOf(Fact fact, Set<Derivation> to) {
    if (fact.because() != null) {
      to.add(fact.because());
    }
    for (Object used : fact.uses()) {
      if (used instanceof Fact other) {
        rulesOf(other, to);
      }
    }
  }

  /** The layers of the recommended way. */
  List<StackLayer> layers() {
    return assessment.chosen().map(BuildUp::stack).map(stack -> stack.layers()).orElse(List.of());
  }

  /** The rules behind some decisions, each once; the first few. */
  List<Question.Cite> cites(Iterable<Derivation> because) {
    Map<String, Question.Cite> found = new LinkedHashMap<>();
    for (Derivation one : because) {
      if (found.size() < CITED) {
        Source source = knowledge().source(one.rule().source());
        found.putIfAbsent(
            one.rule().key(),
            new Question.Cite(
                one.rule().id(), one.rule().reason(), source.title(), source.status()));
      }
    }
    return List.copyOf(found.values());
  }
}
