package underfoot.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underfoot.buildup.StepTime;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.LessonBook.Item;
import underfoot.knowledge.Step;

/** Steps of the work, to be put in order. */
final class Orders {
  private static final int STEPS = 5;

  private Orders() {}

  static Optional<Question> of(Floor floor, Item kind, Values values) {
    Map<Step, List<Derivation>> steps = new LinkedHashMap<>();
    for (StepTime time : floor.assessment().of(StepTime.class)) {
      if (kind.list("steps").contains(time.step())) {
        steps
            .computeIfAbsent(floor.knowledge().steps().get(time.step()), step -> new ArrayList<>())
            .add(time.because());
      }
    }
    List<Step> fit = new ArrayList<>(steps.keySet());
    fit.sort(Comparator.comparingDouble(Step::place));
    Set<Step> drawn = new LinkedHashSet<>(floor.drawn(fit, kind.whole("show", STEPS)));
    if (drawn.size() < kind.whole("show", STEPS)) {
      return Optional.empty();
    }
    fit.retainAll(drawn);
    List<Derivation> because = new ArrayList<>();
    fit.forEach(step -> because.addAll(steps.get(step)));
    return Optional.of(
        new Draft(kind, floor, values)
            .order(fit.stream().map(Step::title).toList())
            .cites(floor.cites(because))
            .made());
  }
}
