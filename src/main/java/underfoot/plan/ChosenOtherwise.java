package underfoot.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import underfoot.buildup.Caution;
import underfoot.buildup.Conclusion;
import underfoot.buildup.Remedy;
import underfoot.buildup.RuledOut;
import underfoot.buildup.StopFinding;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.TextParts;
import underfoot.knowledge.Wording;
import underfoot.reasoning.Advisor;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.DecisionDifferences;
import underfoot.reasoning.Difference;
import underfoot.reasoning.MaterialLookup;
import underfoot.scenario.Named;
import underfoot.scenario.Scenario;
import underfoot.scenario.StatedFact;

/**
 * What comes of something that is chosen like a material and is no layer, such as a tile of another
 * class: the floor is thought through with it, and what is decided or said otherwise is told.
 */
public final class ChosenOtherwise {
  private final Assessment now;
  private final Assessment then;
  private final Knowledge knowledge;
  private final Phrases phrases;
  private final Justifier justifier;

  private ChosenOtherwise(Assessment now, Assessment then, Scenario changed) {
    this.now = now;
    this.then = then;
    this.knowledge = then.knowledge();
    this.phrases = new Phrases(knowledge.wording());
    this.justifier = new Justifier(changed, knowledge);
  }

  /**
   * Tells it.
   *
   * @param advisor who thinks both floors through
   * @param floor the floor as it is described
   * @param changed the floor with what is asked about
   * @param words what was asked about, as the person wrote it
   * @param asked the fact and its value
   */
  public static Refusal of(
      Advisor advisor,
      Scenario floor,
      Scenario changed,
      String words,
      MaterialLookup.OfFact asked) {
    Assessment now = advisor.advise(floor);
    String was =
        floor
            .find(asked.fact().key(), "")
            .filter(StatedFact::known)
            .map(StatedFact::text)
            .orElse("");
    if (was.equals(asked.value())) {
      return new ChosenOtherwise(now, now, floor).same(words, asked);
    }
    return new ChosenOtherwise(now, advisor.advise(changed), changed).other(words, asked, was);
  }

  private Refusal same(String words, MaterialLookup.OfFact asked) {
    List<Advice.Say> reasons = new ArrayList<>();
    reasons.add(plain("why-not-fact-is", asked, ""));
    said(now, Set.of()).forEach(one -> rest(one, asked, reasons));
    return refusal(words, "as described", "why-not-fact-same", reasons);
  }

  private Refusal other(String words, MaterialLookup.OfFact asked, String was) {
    List<Advice.Say> reasons = new ArrayList<>();
    reasons.add(plain(was.isEmpty() ? "why-not-fact-unknown" : "why-not-fact-was", asked, was));
    Set<String> before = new LinkedHashSet<>();
    said(now, Set.of()).forEach(one -> before.add(wording(one)));
    List<Conclusion> more = said(then, before);
    more.forEach(one -> told(one, reasons));
    for (Difference one : new DecisionDifferences(knowledge).of(now, then)) {
      // What is to be done or feared besides is told above in full.
      if (more.stream().noneMatch(said -> one.ids().contains(wording(said)))) {
        reasons.add(new Advice.Say(TextParts.of(one.text() + "."), List.of()));
      }
    }
    boolean stands = then.chosen().isPresent() && then.verdict() != Verdict.STOP;
    if (!stands) {
      return refusal(words, "ruled out", "why-not-fact-ruled-out", reasons);
    }
    if (more.stream().anyMatch(one -> one instanceof Remedy remedy && remedy.hold())) {
      return refusal(words, "held", "why-not-fact-held", reasons);
    }
    boolean alike = reasons.size() == 1;
    return refusal(
        words, "may be chosen", alike ? "why-not-fact-alike" : "why-not-fact-may", reasons);
  }

  private Refusal refusal(String words, String standing, String phrase, List<Advice.Say> reasons) {
    String text =
        phrases.say(
            phrase,
            "asked",
            words,
            "way",
            then.chosen().map(one -> phrases.way(one.way())).orElse(""),
            "verdict",
            phrases.say("verdict-" + then.verdict().word()));
    return new Refusal(
        then.scenario().name(),
        words,
        standing,
        text,
        Optional.empty(),
        reasons,
        List.of(),
        List.of(),
        List.of());
  }

  private Advice.Say plain(String phrase, MaterialLookup.OfFact asked, String was) {
    String text =
        phrases.say(
            phrase,
            "fact",
            asked.fact().called(),
            "is",
            asked.value(),
            "was",
            was,
            "means",
            asked.fact().means());
    return new Advice.Say(TextParts.of(text), List.of());
  }

  /** What is said of a floor, or of the way that came nearest, besides what was said before. */
  private static List<Conclusion> said(Assessment assessment, Set<String> before) {
    List<Conclusion> said = new ArrayList<>(assessment.of(StopFinding.class));
    if (assessment.chosen().isEmpty()) {
      assessment.buildUps().stream()
          .findFirst()
          .ifPresent(one -> said.addAll(one.of(RuledOut.class)));
    }
    said.addAll(assessment.of(Remedy.class));
    said.addAll(assessment.of(Caution.class));
    return said.stream().filter(one -> !before.contains(wording(one))).distinct().toList();
  }

  private static String wording(Conclusion one) {
    if (one instanceof StopFinding stop) {
      return stop.wording();
    }
    if (one instanceof RuledOut out) {
      return out.wording();
    }
    if (one instanceof Remedy remedy) {
      return Sayings.id(remedy.wording(), remedy.about());
    }
    Caution caution = (Caution) one;
    return Sayings.id(caution.wording(), caution.about());
  }

  /** What rests on the fact itself, of a floor that has it already. */
  private void rest(Conclusion one, MaterialLookup.OfFact asked, List<Advice.Say> reasons) {
    boolean rests =
        one.because().premises().stream()
            .anyMatch(
                premise -> premise instanceof Fact fact && fact.key().equals(asked.fact().key()));
    if (rests) {
      told(one, reasons);
    }
  }

  private void told(Conclusion one, List<Advice.Say> reasons) {
    Named said = Named.of(wording(one));
    Facts facts = then.chosen().map(BuildUp::facts).orElse(then.facts());
    Wording.Filled filled =
        knowledge.wording().fill(said.name(), knowledge.figures(), facts, said.about());
    reasons.add(
        new Advice.Say(filled.parts(), justifier.of(List.of(one.because()), filled.used())));
  }
}
