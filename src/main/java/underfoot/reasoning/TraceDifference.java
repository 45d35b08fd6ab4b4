package underfoot.reasoning;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import underfoot.buildup.Caution;
import underfoot.buildup.ClientLimit;
import underfoot.buildup.Conclusion;
import underfoot.buildup.LayerClass;
import underfoot.buildup.Remedy;
import underfoot.buildup.RuledOut;
import underfoot.buildup.StackLayer;
import underfoot.buildup.StopFinding;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Figure;
import underfoot.scenario.Named;

/**
 * Why one thing is decided otherwise: what two traces do not have in common on the way to it.
 *
 * @param difference what is decided otherwise
 * @param noLonger the rules behind the first decision that no longer hold, what comes first first
 * @param newly the rules behind the second decision that did not hold before
 * @param figures the figures behind the second decision
 */
public record TraceDifference(
    Difference difference,
    List<Derivation> noLonger,
    List<Derivation> newly,
    List<Figure> figures) {
  /** Copies the lists. */
  public TraceDifference {
    noLonger = List.copyOf(noLonger);
    newly = List.copyOf(newly);
    figures = List.copyOf(figures);
  }

  /** Whether the traces tell why: a decision that is added has a rule that newly holds. */
  public boolean explains() {
    return !newly.isEmpty() || difference.kind().isLeftOut() && !noLonger.isEmpty();
  }

  /** Everything decided otherwise, with what the two traces say of it. */
  public static List<TraceDifference> of(Assessment now, Assessment then) {
    List<Difference> differences = new DecisionDifferences(now.knowledge()).of(now, then);
    List<TraceDifference> all = new ArrayList<>();
    if (!differences.isEmpty()) {
      Set<String> held = FiredRules.behind(all(now)).keySet();
      Set<String> holds = FiredRules.behind(all(then)).keySet();
      for (Difference one : differences) {
        boolean way = one.kind() == Difference.Kind.WAY;
        Map<String, Derivation> was = way ? offering(one.was(), now) : behind(one, now);
        Map<String, Derivation> is = way ? offering(one.is(), then) : behind(one, then);
        if (way) { // what is held against the one way speaks for the other
          is.putAll(against(one.was(), then));
        }
        if (one.kind() == Difference.Kind.VERDICT && now.chosen().isPresent()) {
          Map<String, Derivation> first = against(now.chosen().get().way(), then);
          first.putAll(is); // a floor stops where no way is left: that is what the ways fall by
          is = first;
        }
        List<Object> rests = new ArrayList<>(decided(one, then));
        rests.addAll(decided(one, now));
        rests.addAll(is.values());
        rests.addAll(was.values());
        List<Figure> figures = new ArrayList<>(FiredRules.figuresBehind(rests));
        was.keySet().removeAll(holds);
        is.keySet().removeAll(held);
        all.add(
            new TraceDifference(one, List.copyOf(was.values()), List.copyOf(is.values()), figures));
      }
    }
    return all;
  }

  /** All that holds of a floor and of the way that is built. */
  private static Collection<Object> all(Assessment assessment) {
    List<Object> all = new ArrayList<>(assessment.general());
    all.addAll(assessment.factsOfChosen().all());
    assessment.chosen().ifPresent(chosen -> all.addAll(chosen.concluded()));
    return all;
  }

  /** The rules that offer a way. */
  private static Map<String, Derivation> offering(String way, Assessment assessment) {
    List<Object> offers = new ArrayList<>();
    assessment.buildUps().stream()
        .filter(one -> one.way().equals(way))
        .forEach(one -> offers.addAll(one.offers()));
    return FiredRules.behind(offers);
  }

  /** The rules that rule a way out. */
  private static Map<String, Derivation> against(String way, Assessment assessment) {
    List<Object> against = new ArrayList<>();
    for (BuildUp one : assessment.buildUps()) {
      if (one.way().equals(way)) {
        against.addAll(one.of(RuledOut.class));
        one.of(StopFinding.class).stream().filter(StopFinding::isStop).forEach(against::add);
      }
    }
    return FiredRules.behind(against);
  }

  private static Map<String, Derivation> behind(Difference one, Assessment assessment) {
    return FiredRules.behind(decided(one, assessment));
  }

  /** What was decided of that which is decided otherwise. */
  private static List<Object> decided(Difference one, Assessment assessment) {
    List<Object> decided = new ArrayList<>();
    for (String id : one.ids()) {
      String wording = Named.of(id).name();
      String about = Named.of(id).about();
      switch (one.kind()) {
        case LAYERS_ADDED, LAYERS_LEFT_OUT, THICKNESS -> {
          for (StackLayer layer : layers(assessment, id)) {
            decided.addAll(layer.because());
            thickness(layer, assessment, decided);
          }
        }
        case CLASS ->
            gather(assessment, LayerClass.class, each -> each.layer().equals(id), decided);
        case FIRST_ADDED, FIRST_LEFT_OUT -> {
          gather(
              assessment,
              Remedy.class,
              each -> each.wording().equals(wording) && each.about().equals(about),
              decided);
          gather(assessment, ClientLimit.class, each -> each.wording().equals(wording), decided);
        }
        case DANGER_ADDED, DANGER_LEFT_OUT ->
            gather(
                assessment,
                Caution.class,
                each -> each.wording().equals(wording) && each.about().equals(about),
                decided);
        default ->
            gather(assessment, StopFinding.class, each -> each.wording().equals(wording), decided);
      }
    }
    return decided;
  }

  private static List<StackLayer> layers(Assessment assessment, String id) {
    return assessment.chosen().stream()
        .flatMap(chosen -> chosen.stack().layers().stream())
        .filter(layer -> layer.kind().id().equals(id))
        .toList();
  }

  /** The fact or figure that a layer's thickness is taken from, if it is one. */
  private static void thickness(StackLayer layer, Assessment assessment, List<Object> decided) {
    String source = layer.kind().thickness();
    if (assessment.knowledge().figures().has(source)) {
      decided.add(assessment.knowledge().figures().get(source));
    }
    if (source.startsWith("the ")) {
      String name = source.substring("the ".length());
      for (String one : List.of(name, name + " mean")) {
        Fact fact = assessment.factsOfChosen().find(one);
        if (fact != null) {
          decided.add(fact);
        }
      }
    }
  }

  private static <T extends Conclusion> void gather(
      Assessment assessment, Class<T> sort, Predicate<T> fits, List<Object> decided) {
    assessment.of(sort).stream().filter(fits).forEach(decided::add);
  }
}
