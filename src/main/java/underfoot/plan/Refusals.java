package underfoot.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import underfoot.buildup.Conclusion;
import underfoot.buildup.Judgement;
import underfoot.buildup.LayerClass;
import underfoot.buildup.OfferedWay;
import underfoot.buildup.RuledOut;
import underfoot.buildup.StopFinding;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.From;
import underfoot.knowledge.Kinds;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.TextParts;
import underfoot.knowledge.Wording;
import underfoot.measure.Texts;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.LeastChange;
import underfoot.reasoning.StackKinds;
import underfoot.reasoning.WhyNot;
import underfoot.scenario.Kind;
import underfoot.scenario.Place;

/** Puts into words why a material is not what is recommended. */
public final class Refusals {
  private static final String OF_THE_WAY = "way-";

  /** What is said of a layer that nothing asks for. */
  private static final String NOBODY_ASKS = "layer-nobody-asks-for";

  private static final double LEAST_TOLD = 0.1;

  private final WhyNot found;
  private final List<Derivation> laid;
  private final Knowledge knowledge;
  private final Phrases phrases;
  private final Justifier justifier;

  private Refusals(WhyNot found, List<Derivation> laid) {
    this.found = found;
    this.laid = laid;
    this.knowledge = found.assessment().knowledge();
    this.phrases = new Phrases(knowledge.wording());
    this.justifier = new Justifier(found.assessment().scenario(), knowledge);
  }

  /**
   * The words.
   *
   * @param found what was found out
   * @param asked what was asked about, as the person wrote it
   * @param askedFor the ids of the rules that would ask for it
   * @param laid why the material itself is in the build-up; empty where a way was asked about
   * @param opinion what is said of it when it is proposed, where no rule lays it anywhere
   * @param planner works out what the build-up with it would come to
   */
  public static Refusal of(
      WhyNot found,
      String asked,
      List<String> askedFor,
      List<Derivation> laid,
      Optional<Opinion> opinion,
      Planner planner) {
    return new Refusals(found, laid).refusal(asked, askedFor, opinion, planner);
  }

  private Refusal refusal(
      String asked, List<String> askedFor, Optional<Opinion> opinion, Planner planner) {
    boolean otherClass = found.standing().isOtherClass();
    List<Advice.Say> never =
        otherClass ? List.of() : opinion.map(Refusals::never).orElse(List.of());
    Assessment assessment = found.assessment();
    Optional<ComparedBuildUp> way =
        found
            .nearest()
            .map(nearest -> BuildUpComparison.of(assessment, nearest, planner, justifier));
    String standing =
        never.isEmpty()
            ? found.standing().name().toLowerCase(Locale.ROOT).replace('_', ' ')
            : "must never";
    String text =
        phrases.say(
            "why-not-" + standing.replace(' ', '-'),
            "asked",
            asked,
            "way",
            way.map(ComparedBuildUp::title).orElse(""),
            "chosen",
            assessment.chosen().map(one -> phrases.way(one.way())).orElse(""),
            "layer",
            ofClass().map(this::layer).orElse(""),
            "class",
            ofClass().map(LayerClass::grade).orElse(""));
    boolean nothing = found.standing().isOfClass() && assessment.chosen().isEmpty();
    return new Refusal(
        assessment.scenario().name(),
        asked,
        standing,
        nothing ? text + " " + phrases.say("why-not-class-nothing-stands") : text,
        way,
        never.isEmpty() ? reasons(way, opinion) : never,
        failed(),
        never.isEmpty() ? found.changes().stream().map(this::opening).toList() : List.of(),
        askedFor);
  }

  /** The class that is asked, where one was asked about. */
  private Optional<LayerClass> ofClass() {
    return found.refusals().stream()
        .filter(LayerClass.class::isInstance)
        .map(LayerClass.class::cast)
        .findFirst();
  }

  private Advice.Say ofClass(String phrase, LayerClass asked) {
    String text = phrases.say(phrase, "class", asked.grade(), "why", reason(asked.because()));
    return new Advice.Say(TextParts.of(text), justifier.of(List.of(asked.because())));
  }

  /** What is of a class: the layer, or what it is filled with. */
  private String layer(LayerClass asked) {
    List<String> of = new StackKinds(knowledge).of(asked.layer(), List.of(asked.grade()));
    return Texts.lower(knowledge.layers().get(of.get(of.size() - 1)).name());
  }

  /** What is said against a layer that must never be laid so; empty if nothing is. */
  private static List<Advice.Say> never(Opinion opinion) {
    List<Advice.Say> said = new ArrayList<>();
    for (Opinion.Layer layer : opinion.layers()) {
      for (Opinion.Item item : layer.items()) {
        // What is said of the whole way is said of what else was proposed with it.
        if (item.judgement() == Judgement.MUST_NOT && !item.id().startsWith(OF_THE_WAY)) {
          said.add(whole(item));
        }
      }
    }
    return said;
  }

  /** All that is said of one point: what it is, what comes of it, and what to do. */
  private static Advice.Say whole(Opinion.Item item) {
    String text =
        String.join(
            " ",
            Stream.of(item.text(), item.consequence(), item.remedy())
                .filter(one -> !one.isEmpty())
                .toList());
    return new Advice.Say(TextParts.of(text), item.because());
  }

  private List<Advice.Say> reasons(Optional<ComparedBuildUp> way, Optional<Opinion> opinion) {
    List<Advice.Say> reasons = new ArrayList<>();
    Set<String> told = new LinkedHashSet<>();
    Facts facts = found.nearest().map(BuildUp::facts).orElse(found.assessment().facts());
    switch (found.standing()) {
      case RULED_OUT, FLOOR_STOPPED -> {
        for (Conclusion one : found.refusals()) {
          String wording =
              one instanceof RuledOut out ? out.wording() : ((StopFinding) one).wording();
          Wording.Filled filled = knowledge.wording().fill(wording, knowledge.figures(), facts, "");
          if (told.add(filled.text())) {
            reasons.add(
                new Advice.Say(
                    filled.parts(), justifier.of(List.of(one.because()), filled.used())));
          }
        }
      }
      case SECOND_CHOICE -> {
        List<Justification> because =
            justifier.of(found.refusals().stream().map(Conclusion::because).toList());
        way.ifPresent(
            one -> {
              for (Conclusion behind : found.refusals()) {
                String reason = behind.because().rule().reason() + ".";
                reasons.add(new Advice.Say(TextParts.of(reason), because));
              }
              one.gains().forEach(gain -> reasons.add(say("why-not-for", gain)));
              one.givesUp().forEach(loss -> reasons.add(say("why-not-against", loss)));
            });
      }
      case RECOMMENDED -> {
        List<Derivation> why =
            laid.isEmpty()
                ? found.nearest().stream()
                    .flatMap(one -> one.offers().stream())
                    .map(OfferedWay::because)
                    .toList()
                : laid;
        because(why, told, reasons);
      }
      case CLASS_ASKED, CLASS_SHORT, CLASS_MORE, CLASS_NOT_ASKED -> {
        opinion.ifPresent(tried -> judged(tried, false, reasons));
        for (Conclusion one : found.refusals()) {
          reasons.add(ofClass("why-not-class-for", (LayerClass) one));
        }
      }
      default -> {
        opinion.ifPresent(tried -> tried(tried, reasons));
        ofClass().ifPresent(one -> reasons.add(ofClass("why-not-class-enough", one)));
      }
    }
    return reasons;
  }

  /** Why rules ask for something, each reason once. */
  private void because(List<Derivation> why, Set<String> told, List<Advice.Say> reasons) {
    for (Derivation because : why) {
      if (told.add(reason(because))) {
        reasons.add(
            new Advice.Say(TextParts.of(reason(because) + "."), justifier.of(List.of(because))));
      }
    }
  }

  private static String reason(Derivation because) {
    return because.rule().reason();
  }

  /** What rules say of the material itself, but for what is only not said of it. */
  private static void judged(Opinion tried, boolean agrees, List<Advice.Say> reasons) {
    for (Opinion.Layer layer : tried.layers()) {
      for (Opinion.Item item : layer.items()) {
        // Asked is the material alone, and that nothing asks for it is told already.
        if (item.judgement() != Judgement.NOT_SAID
            && (agrees || item.judgement() != Judgement.AGREES)
            && !item.id().equals(NOBODY_ASKS)) {
          reasons.add(whole(item));
        }
      }
    }
  }

  /** What would come of a thing that no rule asks for, laid where it belongs. */
  private void tried(Opinion tried, List<Advice.Say> reasons) {
    judged(tried, true, reasons);
    tried.layers().forEach(layer -> passport(layer.part(), reasons));
    Optional<BuildUp> chosen = found.assessment().chosen();
    if (chosen.isPresent() && tried.heights().isPresent()) {
      double higher = tried.heights().get().rise().mean() - chosen.get().facts().number("rise");
      double heavier = tried.massKgPerM2() - chosen.get().facts().number("mass added");
      comesTo(higher, "why-not-higher", "why-not-lower", "mm", reasons);
      comesTo(heavier, "why-not-heavier", "why-not-lighter", "kg/m2", reasons);
    }
  }

  /** What the passport of a material says: how it comes, and what it needs before and after. */
  private void passport(String material, List<Advice.Say> reasons) {
    for (Kinds.Said said : knowledge.kinds().of("material", material)) {
      String phrase = "why-not-" + said.called().replace(' ', '-');
      if (phrases.has(phrase)) {
        String text = phrases.say(phrase, "what", said.value(), "why", said.reason());
        reasons.add(new Advice.Say(TextParts.of(text), List.of()));
      }
    }
  }

  private void comesTo(
      double more, String rises, String falls, String unit, List<Advice.Say> reasons) {
    if (Math.abs(more) >= LEAST_TOLD) {
      String text = phrases.say(more > 0 ? rises : falls, "by", Texts.of(Math.abs(more), unit));
      reasons.add(new Advice.Say(TextParts.of(text), List.of()));
    }
  }

  private Advice.Say say(String phrase, String what) {
    return new Advice.Say(TextParts.of(phrases.say(phrase, "what", what) + "."), List.of());
  }

  private List<Refusal.Failed> failed() {
    List<Refusal.Failed> failed = new ArrayList<>();
    for (Fact fact : found.failed()) {
      failed.add(
          new Refusal.Failed(
              Place.named(fact.key(), fact.about()),
              fact.about().isEmpty() ? fact.name() : fact.name() + " (" + fact.about() + ")",
              fact.text(),
              fact.from() == From.ASSUMED));
    }
    return failed;
  }

  private Refusal.Opening opening(WhyNot.Opening opening) {
    List<String> parts = new ArrayList<>();
    List<String> with = new ArrayList<>();
    for (WhyNot.Asked asked : opening.asked()) {
      String key = Place.named(asked.fact().key(), asked.about());
      with.add(key + "=" + asked.is());
      boolean answered =
          asked.fact().kind() == Kind.YES_NO
              && !asked.fact().ask().isEmpty()
              && asked.about().isEmpty();
      String phrase = answered ? "why-not-answer" : "why-not-were";
      parts.add(
          phrases.say(
              asked.was().equals("unknown") ? phrase + "-unknown" : phrase,
              "ask",
              asked.fact().ask(),
              "fact",
              asked.about().isEmpty()
                  ? asked.fact().called()
                  : asked.fact().called() + " (" + asked.about() + ")",
              "was",
              asked.was(),
              "is",
              asked.is()));
    }
    Optional<LeastChange.Proposal> least = opening.least();
    String text =
        least.isPresent() ? ChangeNotes.text(least.get(), phrases) : String.join("; ", parts);
    return new Refusal.Opening(
        text, with, opening.then().chosen().map(one -> phrases.way(one.way())).orElse(""));
  }
}
