package underfoot.report;

import java.util.ArrayList;
import java.util.List;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.Advice.Door;
import underfoot.plan.ComparedBuildUp;

/** One way of building in one line of numbers. */
public final class BuildUpLine {
  private BuildUpLine() {}

  /** What it costs, how high it comes, what is left under the doors, and so on. */
  public static String numbers(ComparedBuildUp way, Phrases phrases) {
    List<String> parts = new ArrayList<>();
    way.cost()
        .ifPresent(cost -> parts.add(phrases.say("way-costs", "cost", CostText.of(cost, phrases))));
    parts.add(phrases.say("way-rises", "rise", Texts.whole(way.aboveOldFloor().mean())));
    for (Door door : way.doors()) {
      if (!Double.isNaN(door.gapInTheEndMm())) {
        parts.add(
            phrases.say(
                door.gapInTheEndMm() < 0 ? "way-gap-lacking" : "way-gap",
                "gap",
                Texts.whole(Math.abs(door.gapInTheEndMm())),
                "door",
                door.name()));
      }
    }
    parts.add(phrases.say("way-weighs", "mass", Texts.of(Math.round(way.massKgPerM2()), "kg/m2")));
    parts.add(
        phrases.say(
            "way-works",
            "hours",
            Texts.of(Math.ceil(way.workHours()), "h"),
            "when",
            TimeText.when(phrases, way.inUse(), way.inUseAfterHours())));
    if (!way.disturbance().isEmpty()) {
      parts.add(phrases.say("way-disturbs", "how", way.disturbance()));
    }
    return String.join("; ", parts) + ".";
  }
}
