package underfoot.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underfoot.buildup.ActRuling;
import underfoot.buildup.ByAct;
import underfoot.buildup.Caution;
import underfoot.buildup.LayerNote;
import underfoot.buildup.Severity;
import underfoot.knowledge.Knowledge;
import underfoot.plan.Advice.CautionNote;
import underfoot.plan.Advice.HaltNote;
import underfoot.plan.Advice.RemedyNote;
import underfoot.plan.LastReading.Broken;
import underfoot.plan.LastReading.Read;
import underfoot.reasoning.ActsApplied;

/**
 * Reads whether what is asked for is allowed, comes after what it waits for, and tells its dangers.
 */
final class ActsRead {
  private ActsRead() {}

  /**
   * A text that the advice tells.
   *
   * @param wording its id
   * @param about which of several things it is about; empty for the whole
   * @param told how it begins, for messages
   * @param all title and text
   */
  private record Told(String wording, String about, String told, String all) {}

  private static List<Told> told(Read read) {
    List<Told> told = new ArrayList<>();
    for (HaltNote one : read.advice().stopFindings()) {
      told.add(told(one.id(), "", one.title(), one.text()));
    }
    for (RemedyNote one : read.advice().remedies()) {
      told.add(told(one.id(), one.about(), one.title(), one.text()));
    }
    for (CautionNote one : read.advice().cautions()) {
      told.add(told(one.id(), one.about(), one.title(), one.text()));
    }
    for (LayerNote one : read.assessment().of(LayerNote.class)) {
      told.add(new Told(one.wording(), "", one.wording(), ""));
    }
    return told;
  }

  private static Told told(String id, String about, String title, String text) {
    String end = " @" + about;
    boolean named = !about.isEmpty() && id.endsWith(end);
    String wording = named ? id.substring(0, id.length() - end.length()) : id;
    return new Told(wording, about, title, title + " " + text);
  }

  static Optional<Broken> forbidden(Read read) {
    List<Told> told = told(read);
    ByAct<ActRuling> never =
        ActsApplied.rulings(read.assessment().of(ActRuling.class), ActRuling.Sort.NEVER);
    ByAct<Told> barred = new ByAct<>();
    for (Told one : told) {
      for (String act : read.knowledge().wording().work(one.wording()).barred()) {
        barred.add(act, one.about(), one);
      }
    }
    for (Told one : told) {
      for (String act : read.knowledge().wording().work(one.wording()).asked()) {
        for (ActRuling ruling : never.holdingFor(List.of(act), one.about())) {
          return LastReading.broken(
              read,
              "'" + one.told() + "' asks somebody to " + act,
              ruling.because().rule().id() + " forbids it");
        }
        for (Told other : barred.holdingFor(List.of(act), one.about())) {
          return LastReading.broken(
              read,
              "'" + one.told() + "' asks somebody to " + act,
              "'" + other.told() + "' says that nobody may");
        }
      }
    }
    return steps(read, never);
  }

  private static Optional<Broken> steps(Read read, ByAct<ActRuling> never) {
    for (ProgrammeStep step : read.advice().consequences().programme()) {
      for (String act : acts(read, step)) {
        for (ActRuling ruling : never.holdingFor(List.of(act), "")) {
          return LastReading.broken(
              read,
              "the programme has '" + step.step() + "'",
              ruling.because().rule().id() + " forbids to " + act);
        }
      }
    }
    return Optional.empty();
  }

  private static List<String> acts(Read read, ProgrammeStep step) {
    Knowledge knowledge = read.knowledge();
    return knowledge.acts().of(knowledge.steps().get(step.id()), read.advice().way());
  }

  static Optional<Broken> gates(Read read) {
    ActsInWords acts = Sayings.of(read.assessment()).acts();
    List<Told> told = told(read);
    Map<String, Integer> remedies = new HashMap<>();
    for (RemedyNote one : read.advice().remedies()) {
      remedies.putIfAbsent(RemedyOrder.wording(one), remedies.size());
    }
    for (Told one : told) {
      List<String> asked = read.knowledge().wording().work(one.wording()).asked();
      for (String gate : acts.gates(asked, one.about(), one.wording())) {
        int first = remedies.getOrDefault(gate, -1);
        int own = remedies.getOrDefault(one.wording(), -1);
        if (first < 0 || (own >= 0 && first > own)) {
          return LastReading.broken(
              read,
              "'" + one.told() + "' waits for '" + gate + "'",
              first < 0 ? "nothing of that kind is put right" : "that is put right after it");
        }
        if (!one.all().isEmpty() && !says(read, one.all(), gate)) {
          return LastReading.broken(
              read, "'" + one.told() + "' waits for '" + gate + "'", "its words do not say so");
        }
      }
    }
    for (ProgrammeStep step : read.advice().consequences().programme()) {
      for (String gate : acts.gates(acts(read, step), "", "")) {
        if (!remedies.containsKey(gate)
            || !step.after().contains(gate)
            || !says(read, step.step(), gate)) {
          return LastReading.broken(
              read,
              "the step '" + step.step() + "' waits for '" + gate + "'",
              remedies.containsKey(gate)
                  ? "it does not say so"
                  : "nothing of that kind is put right");
        }
      }
    }
    return Optional.empty();
  }

  private static boolean says(Read read, String text, String gate) {
    String once = read.knowledge().wording().work(gate).once();
    return once.isEmpty() || text.toLowerCase(Locale.ROOT).contains(once.toLowerCase(Locale.ROOT));
  }

  static Optional<Broken> dangers(Read read) {
    Set<String> dangers = new HashSet<>();
    for (CautionNote note : read.advice().cautions()) {
      if (note.severity() == Severity.DANGER) {
        dangers.add(note.id());
      }
    }
    for (Caution one : read.assessment().of(Caution.class)) {
      if (one.severity() == Severity.DANGER
          && !dangers.contains(Sayings.id(one.wording(), one.about()))) {
        return LastReading.broken(
            read,
            one.because().rule().key() + " warns of '" + one.wording() + "'",
            "the dangers do not name it");
      }
    }
    return Optional.empty();
  }

  /** What a change leaves to be done to what carries the floor stands in its words. */
  static Optional<Broken> changes(Read read) {
    Set<String> structural = new LinkedHashSet<>();
    Knowledge knowledge = read.knowledge();
    for (String wording : knowledge.wording().ids()) {
      List<String> asked = knowledge.wording().work(wording).asked();
      if (!asked.isEmpty() && knowledge.acts().get(asked.get(0)).structural()) {
        structural.add(knowledge.wording().get(wording).title());
      }
    }
    for (ChangeNote change : read.advice().consequences().changes()) {
      for (String first : change.numbers().first()) {
        boolean told =
            change.text().toLowerCase(Locale.ROOT).contains(first.toLowerCase(Locale.ROOT));
        if (structural.contains(first) && !told) {
          return LastReading.broken(
              read,
              "the change '" + change.text() + "' leaves '" + first + "' to be put right",
              "its words do not say so");
        }
      }
    }
    return Optional.empty();
  }
}
