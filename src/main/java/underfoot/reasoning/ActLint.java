package underfoot.reasoning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import underfoot.knowledge.Act;
import underfoot.knowledge.ActsNamed;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.KnowledgeFault;
import underfoot.knowledge.LayerKind;
import underfoot.knowledge.LessonBook;
import underfoot.knowledge.Listed;
import underfoot.knowledge.Wording;
import underfoot.language.Effect;
import underfoot.language.Effect.Place;
import underfoot.language.Rule;
import underfoot.language.RuleFaults;
import underfoot.quantity.Nearest;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.RuleFiles;

/**
 * What is wrong with the acts that texts, steps, layers and ways ask for: acts that are none, acts
 * nobody asks for, texts that speak of an act or ask for work without naming it.
 */
final class ActLint {
  private static final String ACTS = "acts.yaml";
  private static final String VERBS = "verbs-of-work.yaml";

  private final RuleFiles files;
  private final Knowledge knowledge;
  private final List<Rule> rules;
  private final List<RuleFaults.Fault> faults = new ArrayList<>();

  ActLint(RuleFiles files, Knowledge knowledge, List<Rule> rules) {
    this.files = files;
    this.knowledge = knowledge;
    this.rules = rules;
  }

  /** The acts that something asks for. */
  static Set<String> askedFor(Knowledge knowledge) {
    Set<String> asked = new TreeSet<>();
    for (String wording : knowledge.wording().ids()) {
      asked.addAll(knowledge.wording().work(wording).asked());
    }
    for (LayerKind kind : knowledge.layers().all()) {
      asked.addAll(kind.acts());
    }
    for (String step : knowledge.steps().ids()) {
      asked.addAll(knowledge.acts().of(knowledge.steps().get(step), ""));
    }
    knowledge.acts().ways().forEach(way -> asked.addAll(knowledge.acts().ofWay(way)));
    for (FactDefinition fact : knowledge.facts().definitions()) {
      asked.addAll(fact.acts());
    }
    return asked;
  }

  List<RuleFaults.Fault> faults() throws KnowledgeFault {
    if (knowledge.acts().ids().isEmpty()) {
      return faults;
    }
    Map<String, Listed> places = new HashMap<>();
    Listed.in(files, "wording").forEach(one -> places.put(one.name(), one));
    for (String id : knowledge.wording().ids()) {
      wording(places.get(id), knowledge.wording().get(id));
    }
    for (LayerKind kind : knowledge.layers().all()) {
      kind.acts().forEach(act -> known("layers", 0, "layer " + kind.id(), act));
    }
    for (String step : knowledge.steps().ids()) {
      List<String> acts = knowledge.acts().of(knowledge.steps().get(step), "");
      acts.forEach(act -> known("tables/steps.yaml", 0, "step " + step, act));
    }
    for (String way : knowledge.acts().ways()) {
      knowledge.acts().ofWay(way).forEach(act -> known("tables/ways.yaml", 0, "way " + way, act));
    }
    for (FactDefinition fact : knowledge.facts().definitions()) {
      fact.acts().forEach(act -> known(fact.file(), fact.line(), fact.key(), act));
    }
    for (LessonBook.Item kind : LessonBook.load(files).kinds()) {
      lesson(kind);
    }
    Set<String> asked = askedFor(knowledge);
    for (Listed act : Listed.in(files, ACTS)) {
      if (!asked.contains(act.name()) && !isBarred(act.name()) && !isRuledOn(act.name())) {
        String what = "nothing asks for the act '" + act.name() + "'; ask for it or take it out";
        faults.add(new RuleFaults.Fault(ACTS, act.line(), what));
      }
    }
    withoutAct(places);
    return faults;
  }

  /** A question and the answers that may be right name the acts that they speak of. */
  private void lesson(LessonBook.Item kind) {
    List<String> acts = new ArrayList<>(kind.list("acts"));
    acts.addAll(kind.list("speaks of"));
    acts.forEach(act -> known(kind.file(), kind.line(), "question " + kind.id(), act));
    StringBuilder all = new StringBuilder(kind.field("ask"));
    kind.table("options").stream()
        .filter(option -> !option.list("right").isEmpty())
        .forEach(option -> all.append(' ').append(option.field("says")));
    unnamed(
        all.toString(),
        acts::contains,
        kind.file(),
        kind.line(),
        "question '"
            + kind.id()
            + "' says '%s' and does not name the act '%s'; write it under acts"
            + " if its answer asks for it, else under speaks of");
  }

  /** The acts that words speak of and that are not named beside them. */
  private void unnamed(String all, Predicate<String> named, String file, int line, String what) {
    for (Act act : knowledge.acts().all()) {
      for (String words : act.saidAs()) {
        if (all.contains(words) && !named.test(act.id())) {
          faults.add(new RuleFaults.Fault(file, line, what.formatted(words, act.id())));
        }
      }
    }
  }

  private boolean isBarred(String act) {
    return knowledge.wording().ids().stream()
        .anyMatch(id -> knowledge.wording().work(id).barred().contains(act));
  }

  private boolean isRuledOn(String act) {
    return rules.stream()
        .flatMap(rule -> rule.effects().stream())
        .anyMatch(effect -> effect.word(Place.ACT).equals(act));
  }

  private void known(String file, int line, String who, String act) {
    if (!knowledge.acts().ids().contains(act)) {
      String near = Nearest.to(act, knowledge.acts().ids());
      String what = who + " names the act '" + act + "', which is none of " + ACTS;
      String mend = near.isEmpty() ? "" : "; did you mean " + near + "?";
      faults.add(new RuleFaults.Fault(file, line, what + mend));
    }
  }

  /** What it names must be there, and what its words speak of must be named. */
  private void wording(Listed place, Wording.Text text) {
    ActsNamed work = text.work();
    for (List<String> named : List.of(work.asked(), work.barred(), work.spoken())) {
      named.forEach(act -> known(place.file(), place.line(), place.name(), act));
    }
    if (work == ActsNamed.NONE) {
      return; // told whether it should name any by who tells it
    }
    String all = String.join(" ", text.parts().values());
    unnamed(
        all,
        work::names,
        place.file(),
        place.line(),
        "'"
            + place.name()
            + "' says '%s' and does not name the act '%s'; write it under acts if it"
            + " is asked for, under bars if nobody may do it, else under speaks of");
  }

  /** Texts that rules tell, that ask for work by its verb, and that name no act. */
  private void withoutAct(Map<String, Listed> places) throws KnowledgeFault {
    if (!files.list("", ".yaml").contains(VERBS)) {
      return;
    }
    Set<String> verbs = new HashSet<>();
    Listed.in(files, VERBS).forEach(one -> verbs.addAll(one.list()));
    Set<String> told = new TreeSet<>();
    for (Rule rule : rules) {
      for (Effect effect : rule.effects()) {
        if (asks(effect.verb())) {
          told.add(effect.word(Place.WORDING));
        }
      }
    }
    told.retainAll(knowledge.wording().ids());
    for (String id : told) {
      Wording.Text text = knowledge.wording().get(id);
      String verb = text.work() == ActsNamed.NONE ? verb(text, verbs) : "";
      if (!verb.isEmpty()) {
        String what = "'%s' asks somebody to %s and names no act; write acts: […]";
        Listed place = places.get(id);
        faults.add(new RuleFaults.Fault(place.file(), place.line(), what.formatted(id, verb)));
      }
    }
  }

  private static boolean asks(Effect.Verb verb) {
    return switch (verb) {
      case REMEDY, HOLD, DANGER, CARE, NOTE, STOP, OUTSIDE, SAY, FIX, BEYOND, SUGGEST -> true;
      default -> false;
    };
  }

  /** The first verb by which a text asks for work: one that a sentence begins with. */
  private static String verb(Wording.Text text, Set<String> verbs) {
    return text.firstWords().stream().filter(verbs::contains).findFirst().orElse("");
  }
}
