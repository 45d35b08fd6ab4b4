package underfoot.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underfoot.buildup.Finding;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.LessonBook.Item;
import underfoot.plan.ProposalDraft;
import underfoot.plan.ProposalDraft.Line;

/**
 * The recommended build-up, given faults: which lines are they in? Each fault was found by having
 * the build-up judged with it, and is gone when it alone is taken out again.
 */
final class Faults {
  private final Workshop shop;
  private final Floor floor;
  private final Item kind;
  private final Values values;
  private final Set<Derivation> because = new LinkedHashSet<>();

  private Faults(Workshop shop, Floor floor, Item kind, Values values) {
    this.shop = shop;
    this.floor = floor;
    this.kind = kind;
    this.values = values;
  }

  static Optional<Question> of(Workshop shop, Floor floor, Item kind, Values values) {
    return shop.proposal(floor)
        .filter(sound -> shop.faults(floor.assessment(), sound).isEmpty())
        .flatMap(sound -> new Faults(shop, floor, kind, values).make(sound));
  }

  private Optional<Question> make(ProposalDraft sound) {
    Map<String, Item> made = new LinkedHashMap<>();
    List<Item> known = kind.table("plant");
    for (Item one : floor.drawn(known, known.size())) {
      String line = line(one.list("lay").get(0));
      boolean free = !made.containsKey(line) && floor.holds(one.list("only"));
      if (made.size() < kind.whole("rights", 2) && free && alone(sound, one)) {
        made.put(line, one);
      }
    }
    if (made.size() < kind.whole("rights", 2) || !apart(sound, List.copyOf(made.values()))) {
      return Optional.empty();
    }
    return Optional.of(question(laid(sound, List.copyOf(made.values())), made));
  }

  private ProposalDraft laid(ProposalDraft sound, List<Item> made) {
    ProposalDraft all = sound;
    for (Item one : made) {
      all = Workshop.edited(all, one.list("lay")).orElseThrow();
    }
    return all;
  }

  private boolean alone(ProposalDraft sound, Item one) {
    Optional<ProposalDraft> spoilt = Workshop.edited(sound, one.list("lay"));
    if (spoilt.isEmpty()) {
      return false;
    }
    List<Finding> faults = shop.faults(floor.assessment(), spoilt.get());
    faults.stream().limit(1).forEach(fault -> because.add(fault.because()));
    return !faults.isEmpty();
  }

  /** Whether each fault goes when it is taken out of the whole, and none when another is. */
  private boolean apart(ProposalDraft sound, List<Item> made) {
    int all = shop.faults(floor.assessment(), laid(sound, made)).size();
    for (Item one : made) {
      List<Item> others = made.stream().filter(other -> other != one).toList();
      if (shop.faults(floor.assessment(), laid(sound, others)).size() >= all) {
        return false;
      }
    }
    return true;
  }

  /** The line that an edit is about, by the layer or key that it names. */
  private static String line(String edit) {
    return edit.startsWith("whole.")
        ? edit.substring(0, edit.indexOf(" = "))
        : edit.split("\\.", 2)[0];
  }

  private Question question(ProposalDraft all, Map<String, Item> made) {
    List<Question.Option> options = new ArrayList<>();
    Map<String, String> numbers = new LinkedHashMap<>();
    for (Line layer : all.layers()) {
      add(layer.id(), text(layer), made, numbers, options);
    }
    for (Map.Entry<String, String> one : all.whole().entrySet()) {
      String phrase = "lesson-line-" + one.getKey().replace(' ', '-');
      add(
          "whole." + one.getKey(),
          floor.say(phrase, "value", one.getValue()),
          made,
          numbers,
          options);
    }
    List<Set<String>> right = new ArrayList<>();
    List<String> answers = new ArrayList<>();
    numbers.forEach(
        (line, number) -> {
          if (made.containsKey(line)) {
            right.add(Set.of(number));
            answers.add(
                floor.say(
                    "lesson-fault",
                    "line",
                    number,
                    "what",
                    values.fill(made.get(line).field("says"))));
          }
        });
    return new Draft(kind, floor, values)
        .ask("count", Integer.toString(made.size()))
        .lines(options, right)
        .answer(String.join("; ", answers))
        .cites(floor.cites(because))
        .made();
  }

  private void add(
      String line,
      String text,
      Map<String, Item> made,
      Map<String, String> numbers,
      List<Question.Option> options) {
    String number = Integer.toString(options.size() + 1);
    numbers.put(line, number);
    Item fault = made.get(line);
    // Whoever does not give the line has not seen this; whoever gives a sound one takes it amiss.
    String shows = fault == null ? floor.say("lesson-sound-line") : fault.field("shows");
    options.add(new Question.Option(number, text, shows));
  }

  /** What a line of a proposal says, as far as faults can lie in it. */
  private String text(Line layer) {
    StringBuilder text = new StringBuilder();
    layer
        .keys()
        .forEach(
            (key, value) -> {
              String phrase = "lesson-part-" + key.replace(' ', '-');
              if (kind.list("shown").contains(key)) {
                text.append(floor.say(phrase, "value", value.replace("[", "").replace("]", "")));
              }
            });
    return text.toString();
  }
}
