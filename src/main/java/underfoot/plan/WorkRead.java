package underfoot.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import underfoot.knowledge.LayerKind;
import underfoot.knowledge.MaterialItem;
import underfoot.knowledge.Step;
import underfoot.plan.LastReading.Broken;
import underfoot.plan.LastReading.Read;

/** Reads whether all that is laid is bought, done and waited for. */
final class WorkRead {
  private static final double TOLERANCE = 1e-6;

  private WorkRead() {}

  static Optional<Broken> materials(Read read) {
    Set<String> bought =
        read.advice().consequences().quantities().stream()
            .map(QuantityLine::item)
            .collect(Collectors.toSet());
    for (Advice.Layer layer : read.advice().layers()) {
      boolean has = false;
      for (MaterialItem item : read.knowledge().materials().all()) {
        has |= item.forLayers().contains(layer.id()) && bought.contains(item.item());
      }
      if (!has) {
        return LastReading.broken(
            read, "the layers have " + layer.name(), "the list of what to buy has nothing for it");
      }
    }
    return Optional.empty();
  }

  static Optional<Broken> steps(Read read) {
    Map<String, ProgrammeStep> programme = programme(read.advice());
    for (Advice.Layer layer : read.advice().layers()) {
      LayerKind kind = read.knowledge().layers().get(layer.id());
      for (String step : List.of(kind.step(), kind.sets())) {
        if (!step.isEmpty() && !programme.containsKey(step)) {
          return LastReading.broken(
              read,
              "the layers have " + layer.name(),
              "the programme has no '" + read.knowledge().steps().get(step).title() + "'");
        }
      }
    }
    return Optional.empty();
  }

  private static Map<String, ProgrammeStep> programme(Advice advice) {
    return advice.consequences().programme().stream()
        .collect(Collectors.toMap(ProgrammeStep::id, Function.identity(), (one, same) -> one));
  }

  /** Each step comes after those it rests on, and the room is in use after all but the heating. */
  static Optional<Broken> use(Read read) {
    double inUse = read.advice().consequences().schedule().inUseAfterHours();
    for (ProgrammeStep step : read.advice().consequences().programme()) {
      boolean work = step.kind() != Step.Kind.WAIT;
      if (work && step.endHour() > inUse + TOLERANCE) {
        return LastReading.broken(
            read,
            "the room is in use after " + inUse + " h",
            "'" + step.step() + "' ends after " + step.endHour() + " h");
      }
    }
    for (Milestone one : read.advice().consequences().schedule().milestones()) {
      ProgrammeStep at = programme(read.advice()).get(one.step());
      if (at == null || one.hour() < at.startHour() - TOLERANCE) {
        return LastReading.broken(
            read,
            "'" + one.what() + "' after " + one.hour() + " h",
            at == null ? "no step brings it" : "its step begins after " + at.startHour() + " h");
      }
    }
    return light(read, inUse);
  }

  /** What is walked on, and what is loaded, waits for the last work and the last cure. */
  private static Optional<Broken> light(Read read, double inUse) {
    Map<String, ProgrammeStep> programme = programme(read.advice());
    for (ProgrammeStep step : read.advice().consequences().programme()) {
      Step known = read.knowledge().steps().get(step.id());
      if (known.from().isEmpty() || !known.waits()) {
        continue;
      }
      for (ProgrammeStep other : programme.values()) {
        Step before = read.knowledge().steps().get(other.id());
        boolean rests = known.inUse() ? before.place() < known.place() : !before.waits();
        if (rests
            && before.place() < known.place()
            && other.endHour() > step.endHour() + TOLERANCE) {
          return LastReading.broken(
              read,
              "'" + step.step() + "' ends after " + step.endHour() + " h",
              "'" + other.step() + "', on which it rests, after " + other.endHour() + " h");
        }
      }
    }
    return Optional.empty();
  }
}
