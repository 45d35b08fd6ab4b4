package underfoot.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import underfoot.buildup.ActRuling;
import underfoot.buildup.ByAct;
import underfoot.buildup.Conclusion;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.Wording;
import underfoot.reasoning.Assessment;
import underfoot.scenario.Named;

/**
 * The texts of one floor, filled in. What several rules say of the same thing is said once, with
 * all its reasons.
 */
record Sayings(
    Knowledge knowledge,
    Phrases phrases,
    Facts facts,
    Justifier justifier,
    ByAct<ActRuling> rulings) {
  static Sayings of(Assessment assessment) {
    Knowledge knowledge = assessment.knowledge();
    Facts facts = Facts.over(assessment.facts()); // with what was held when ways were compared
    facts.addAll(assessment.factsOfChosen().all());
    return new Sayings(
        knowledge,
        new Phrases(knowledge.wording()),
        facts,
        new Justifier(assessment.scenario(), knowledge),
        ByAct.of(assessment.of(ActRuling.class)));
  }

  /** The same where more is said of acts. */
  Sayings and(List<ActRuling> more) {
    return new Sayings(knowledge, phrases, facts, justifier, ByAct.both(rulings, more));
  }

  /** The same of other facts. */
  Sayings with(Facts others) {
    return new Sayings(knowledge, phrases, others, justifier, rulings);
  }

  /** A wording filled in, with what the acts it asks for wait for and the care they need. */
  Wording.Filled fill(String wording, String about) {
    Wording.Filled filled = alone(wording, about);
    return rulings.isEmpty() ? filled : acts().told(wording, about, filled, false);
  }

  /** The same of a layer, whose own facts it tells first; acts are forbidden for the whole. */
  Wording.Filled fillOfLayer(String wording, String layer) {
    Wording.Filled filled = alone(wording, layer);
    return rulings.isEmpty() ? filled : acts().told(wording, "", filled, false);
  }

  /** The same of something to put right, whose title begins with what it waits for. */
  Wording.Filled fillRemedy(String wording, String about) {
    Wording.Filled filled = alone(wording, about);
    return rulings.isEmpty() ? filled : acts().told(wording, about, filled, true);
  }

  /** A wording filled in, as it stands. */
  Wording.Filled alone(String wording, String about) {
    return knowledge.wording().fill(wording, knowledge.figures(), facts, about);
  }

  /** What is said of acts here. */
  ActsInWords acts() {
    return new ActsInWords(this, rulings);
  }

  /** The title of a wording. */
  String title(String wording, String about) {
    return alone(wording, about).title(about);
  }

  /** The id of a wording that is about a thing. */
  static String id(String wording, String about) {
    return new Named(wording, about).id();
  }

  /** Conclusions that say the same of the same thing, those of the first rule first. */
  record Same<T extends Conclusion>(String wording, String about, List<T> all) {
    String id() {
      return Sayings.id(wording, about);
    }

    List<Derivation> because() {
      return all.stream().map(Conclusion::because).toList();
    }
  }

  /** What is said of the room as a whole, once each, in the order of the wording files. */
  <T extends Conclusion> List<Same<T>> once(List<T> all, Function<T, String> wording) {
    return once(all, wording, one -> "");
  }

  /** What is said of each thing, once each, in the order of the wording files. */
  <T extends Conclusion> List<Same<T>> once(
      List<T> all, Function<T, String> wording, Function<T, String> about) {
    Map<List<String>, Same<T>> groups = new LinkedHashMap<>();
    for (T one : all) {
      String id = wording.apply(one);
      String thing = about.apply(one);
      groups
          .computeIfAbsent(List.of(id, thing), key -> new Same<>(id, thing, new ArrayList<>()))
          .all()
          .add(one);
    }
    groups
        .values()
        .forEach(same -> same.all().sort(Comparator.comparing(one -> one.because().rule().key())));
    return groups.values().stream()
        .sorted(
            Comparator.comparingInt((Same<T> same) -> knowledge.wording().place(same.wording()))
                .thenComparing(Same::about))
        .toList();
  }

  /**
   * Why something is said in a text, the facts and figures that the text names among the reasons.
   */
  List<Justification> because(Same<?> same, Wording.Filled filled) {
    List<Derivation> because = new ArrayList<>(same.because());
    if (!rulings.isEmpty()) {
      because.addAll(acts().because(same.wording(), same.about()));
    }
    return justifier.of(because, filled.used());
  }
}
