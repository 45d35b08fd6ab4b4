package underfoot.reasoning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import underfoot.buildup.Verdict;
import underfoot.reasoning.Interview.Hanging;
import underfoot.scenario.Answers;
import underfoot.scenario.Place;
import underfoot.scenario.Scenario;

/** What is not known of a floor, by how much hangs on it. */
final class HangingSearch {
  private final Advisor advisor;
  private final DecisionDifferences differences;

  HangingSearch(Advisor advisor, DecisionDifferences differences) {
    this.advisor = advisor;
    this.differences = differences;
  }

  /**
   * What is not known and matters most: first what could stop the work, then what could change the
   * answer, then the way, then what changes most; among equals in the order of the questions.
   *
   * @param answers all that was said
   * @param inOrder all places in the order they are asked
   * @param most how many at most
   * @param late whether nobody waits for it any more; then no more is tried, and what is told is
   *     not all
   */
  List<Hanging> first(Answers answers, List<Place> inOrder, int most, BooleanSupplier late) {
    Scenario scenario = answers.scenario();
    Advisor quick = advisor.remembering();
    Assessment now = quick.advise(scenario);
    DecisionDigest gist = DecisionDigest.of(now);
    Map<String, String> assumed = assumed(now);
    record Weighed(Hanging hanging, int[] weight) {}
    List<Place> unknown =
        Effort.afforded(
            inOrder.stream()
                .filter(place -> isUnknown(answers, place) && !place.fact().otherwise().isEmpty())
                .toList(),
            place -> place.fact().key() + place.zone(),
            place -> place.fact().otherwise().size(),
            Effort.ofTalk(now));
    List<Hanging> first =
        unknown.parallelStream()
            .map(
                place -> {
                  int[] weight = new int[4];
                  List<WhatIf.Otherwise> changes = new ArrayList<>();
                  for (String value : place.fact().otherwise()) {
                    Optional<Scenario> other = TriedValues.changed(scenario, place, value);
                    if (other.isEmpty() || late.getAsBoolean()) {
                      continue;
                    }
                    Assessment then = quick.advise(other.get());
                    DecisionDigest otherwise = DecisionDigest.of(then);
                    if (!otherwise.equals(gist)) {
                      weigh(gist, otherwise, weight);
                      List<Difference> said = differences.of(now, then);
                      if (!said.isEmpty()) {
                        changes.add(WhatIf.otherwise(place, value, now, then, said));
                      }
                    }
                  }
                  if (weight[0] > 0) { // what could stop the work is as weighty as any other such
                    Arrays.fill(weight, 1, weight.length, 0);
                  }
                  String taken = assumed.getOrDefault(place.id(), "");
                  return new Weighed(new Hanging(place, taken, changes), weight);
                })
            .filter(one -> !one.hanging().changes().isEmpty())
            .sorted(
                Comparator.<Weighed>comparingInt(one -> -one.weight()[0])
                    .thenComparingInt(one -> -one.weight()[1])
                    .thenComparingInt(one -> -one.weight()[2])
                    .thenComparingInt(one -> -one.weight()[3]))
            .limit(most)
            .map(Weighed::hanging)
            .toList();
    return first;
  }

  private static boolean isUnknown(Answers answers, Place place) {
    return !place.fact().required()
        && answers.said(place).map(said -> said.equals(Answers.UNKNOWN)).orElse(true);
  }

  private static void weigh(DecisionDigest now, DecisionDigest then, int[] weight) {
    boolean stops = then.verdict() == Verdict.STOP && now.verdict() != Verdict.STOP;
    weight[0] |= stops ? 1 : 0;
    weight[1] |= then.verdict() != now.verdict() ? 1 : 0;
    weight[2] |= then.way().equals(now.way()) ? 0 : 1;
    int different = 0;
    Set<String> all = new LinkedHashSet<>(now.decided().keySet());
    all.addAll(then.decided().keySet());
    for (String what : all) {
      if (!String.valueOf(now.decided().get(what)).equals(then.decided().get(what))) {
        different++;
      }
    }
    weight[3] = Math.max(weight[3], different);
  }

  /** What was assumed, by the place it was assumed for. */
  static Map<String, String> assumed(Assessment assessment) {
    Map<String, String> assumed = new LinkedHashMap<>();
    assumed(assessment, "", assumed);
    for (ZonePart part : assessment.zones()) {
      assumed(part.assessment(), part.name(), assumed);
    }
    return assumed;
  }

  private static void assumed(Assessment floor, String zone, Map<String, String> assumed) {
    for (WhatIf.Assumed one : WhatIf.assumed(floor)) {
      one.definition()
          .ifPresent(
              fact -> assumed.put(new Place(fact, one.about(), zone).id(), one.fact().text()));
    }
  }
}
