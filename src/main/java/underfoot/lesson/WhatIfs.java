package underfoot.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.LessonBook.Item;
import underfoot.measure.Texts;
import underfoot.reasoning.Difference;
import underfoot.reasoning.TraceDifference;
import underfoot.scenario.StatedFact;

/**
 * What would become of the floor if one thing about it were otherwise. The reasons are what the two
 * traces do not have in common.
 */
final class WhatIfs {
  private static final int OPTIONS = 4;

  /** How many changes are thought through, at the least where there are as many. */
  private static final int TRIALS = 12;

  /** How many rules are told on either side, those nearest to the decision. */
  private static final int REASONS = 4;

  private final Workshop shop;
  private final Floor floor;
  private final Item kind;

  private WhatIfs(Workshop shop, Floor floor, Item kind) {
    this.shop = shop;
    this.floor = floor;
    this.kind = kind;
  }

  static Optional<Question> of(Workshop shop, Floor floor, Item kind, Values values) {
    return new WhatIfs(shop, floor, kind).make(values);
  }

  /** A fact told otherwise, and what becomes of it. */
  private record Trial(
      StatedFact given, String value, boolean asked, List<TraceDifference> differences) {
    Set<String> texts() {
      Set<String> texts = new LinkedHashSet<>();
      differences.forEach(one -> texts.add(one.difference().text()));
      return texts;
    }

    /** What makes an option: the class of the tile is that of its grout, and reads amiss. */
    List<TraceDifference> askable() {
      return differences.stream()
          .filter(
              one ->
                  one.difference().kind() != Difference.Kind.CLASS
                      || !one.difference().ids().contains("tile"))
          .toList();
    }
  }

  private Optional<Question> make(Values values) {
    List<Trial> trials = trials();
    for (Trial trial : floor.drawn(trials, trials.size())) {
      List<TraceDifference> told =
          trial.askable().stream()
              .filter(TraceDifference::explains)
              .filter(one -> !givesAway(trial, one.difference().text()))
              .toList();
      Map<String, String> wrong = new LinkedHashMap<>();
      for (Trial other : trials) {
        String shows =
            floor.say("lesson-shows-what-if", "fact", called(trial), "other", called(other));
        boolean another = !called(trial).equals(called(other));
        other.askable().stream()
            .map(one -> one.difference().text())
            .filter(text -> another && !givesAway(trial, text) && !givesAway(other, text))
            .forEach(text -> wrong.putIfAbsent(text, shows));
      }
      wrong.keySet().removeAll(trial.texts());
      if (trial.asked() && !told.isEmpty() && wrong.size() >= OPTIONS - 1) {
        return Optional.of(question(values, trial, floor.drawn(told, 1).get(0), wrong));
      }
    }
    return Optional.empty();
  }

  /** An option that repeats what is changed needs no thought. */
  private static boolean givesAway(Trial trial, String text) {
    return text.toLowerCase().contains(trial.value().toLowerCase())
        || text.toLowerCase().contains(trial.given().text().toLowerCase());
  }

  private List<Trial> trials() {
    List<Trial> trials = new ArrayList<>();
    List<Item> changes = kind.table("change");
    for (Item change : floor.drawn(changes, changes.size())) {
      if (trials.size() >= TRIALS) {
        break;
      }
      Optional<StatedFact> given =
          floor.assessment().scenario().givens().stream()
              .filter(one -> one.known() && one.called().equals(change.field("fact")))
              .findFirst();
      List<String> from = change.list("from");
      if (given.isEmpty()
          || !from.isEmpty() && !from.contains(given.get().text())
          || !floor.holds(change.list("only"))) {
        continue;
      }
      for (String value : change.list("to")) {
        String edit = change.field("fact") + " = " + value;
        if (!value.equals(given.get().text())) {
          shop.changed(floor, List.of(edit))
              .ifPresent(
                  then ->
                      trials.add(
                          new Trial(
                              given.get(),
                              value,
                              !change.field("asked").equals("no"),
                              TraceDifference.of(floor.assessment(), then.assessment()))));
        }
      }
    }
    return trials;
  }

  private String called(Trial trial) {
    StatedFact given = trial.given();
    return given.about().isEmpty()
        ? given.called()
        : floor.say("lesson-fact-about", "fact", given.called(), "thing", given.about());
  }

  private Question question(
      Values values, Trial trial, TraceDifference told, Map<String, String> wrong) {
    StatedFact given = trial.given();
    String fact = called(trial);
    List<Question.Option> options = new ArrayList<>();
    options.add(new Question.Option("", Texts.capital(told.difference().text()), ""));
    for (String text : floor.drawn(List.copyOf(wrong.keySet()), OPTIONS - 1)) {
      options.add(new Question.Option("", Texts.capital(text), wrong.get(text)));
    }
    List<String> worked = new ArrayList<>();
    tell("lesson-no-longer", told.noLonger(), worked);
    tell("lesson-newly", told.newly(), worked);
    worked.add(floor.say("lesson-so", "change", told.difference().text()));
    List<String> others =
        trial.texts().stream().filter(one -> !one.equals(told.difference().text())).toList();
    if (!others.isEmpty()) {
      worked.add(floor.say("lesson-also-changes", "changes", String.join("; ", others)));
    }
    return new Draft(kind, floor, values)
        .ask("fact", fact, "value", trial.value(), "now", given.text())
        .choice(floor.drawn(options, options.size()), false)
        .worked(worked)
        .made();
  }

  private void tell(String phrase, List<Derivation> rules, List<String> worked) {
    for (Derivation one : rules.subList(Math.max(0, rules.size() - REASONS), rules.size())) {
      worked.add(floor.say(phrase, "reason", one.rule().reason(), "rule", one.rule().id()));
    }
  }
}
