package underfoot.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.kie.api.runtime.rule.Match;
import underfoot.buildup.ActRuling;
import underfoot.buildup.Caution;
import underfoot.buildup.ClientLimit;
import underfoot.buildup.CoverageTarget;
import underfoot.buildup.Criterion;
import underfoot.buildup.Finding;
import underfoot.buildup.Judgement;
import underfoot.buildup.Laid;
import underfoot.buildup.LayerClass;
import underfoot.buildup.LayerCover;
import underfoot.buildup.LayerNote;
import underfoot.buildup.LayerThickness;
import underfoot.buildup.OfferedWay;
import underfoot.buildup.Remedy;
import underfoot.buildup.RuledOut;
import underfoot.buildup.Severity;
import underfoot.buildup.StepTime;
import underfoot.buildup.StopFinding;
import underfoot.buildup.Suggestion;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Figure;
import underfoot.knowledge.From;
import underfoot.knowledge.Kinds;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.LayerKind;
import underfoot.knowledge.MissingKnowledge;
import underfoot.knowledge.RuleNote;
import underfoot.language.Effect;
import underfoot.language.Effect.Place;

/**
 * What a rule that fires writes on. Each conclusion carries the rule and all that it matched. One
 * draft serves one session.
 */
final class Draft {
  /** How many rules lie between a limit and what is judged by it: one lays, one asked for it. */
  private static final int REACH = 2;

  private final Knowledge knowledge;
  private RuleNote rule;
  private Match match;

  /**
   * @param knowledge what the sentences refer to
   */
  Draft(Knowledge knowledge) {
    this.knowledge = knowledge;
  }

  void firing(Match now) {
    match = now;
  }

  /** The id of the rule now firing. */
  String rule() {
    return match == null ? "none" : match.getRule().getName();
  }

  /**
   * Concludes what a rule says.
   *
   * @param fired the rule
   * @param effects what it says
   * @param about what the thing is about that it speaks of; empty for the whole
   * @param into takes each conclusion
   */
  void conclude(RuleNote fired, List<Effect> effects, String about, Consumer<Object> into) {
    for (Effect effect : effects) {
      rule = fired;
      if (effect.verb() == Effect.Verb.ROWS) {
        rows(matched(effect.word(Place.FACT)), into);
      } else {
        into.accept(conclusion(effect, about));
      }
    }
  }

  /** What the row of a fact's kind says of it, each for the reason that stands there. */
  private void rows(Fact fact, Consumer<Object> into) {
    RuleNote fired = rule;
    for (Kinds.Said said : knowledge.kinds().of(fact.name(), fact.text())) {
      rule = new RuleNote(fired.id(), fired.title(), said.reason(), said.source());
      boolean number = said.sort() == Kinds.Sort.FIGURE;
      Figure figure = number ? knowledge.figures().get(said.value()) : null;
      Derivation because = because(figure);
      into.accept(
          number
              ? fact(said.called(), fact.about(), figure, From.CONCLUDED, because)
              : fact(said.called(), fact.about(), said.value(), From.CONCLUDED, because));
    }
  }

  /**
   * A word of an effect, or what it looks up. What a row says brings the row's reason with it,
   * which is nearer to the point than that of a rule for all rows.
   */
  private String word(Effect effect, Place place) {
    String word = effect.word(place);
    if (!Effect.isLookedUp(word)) {
      return word;
    }
    if (place == Place.LAYER) {
      for (Object one : match.getObjects()) {
        if (one instanceof Laid laid && laid.getFamily().equals(Effect.lookedUp(word))) {
          return laid.getLayer();
        }
      }
    }
    Fact fact = matched(Effect.lookedUp(word));
    if (knowledge.kinds().says(fact.name())) {
      RuleNote row = fact.because().rule();
      rule = new RuleNote(rule.id(), rule.title(), row.reason(), row.source(), rule.row());
    }
    return fact.text();
  }

  private Object conclusion(Effect effect, String ofThing) {
    String named = effect.word(Place.ABOUT);
    String about = named.equals(Effect.ABOUT) ? ofThing : named;
    String wording = word(effect, Place.WORDING);
    String word = word(effect, Place.WORD);
    String laid = word(effect, Place.LAYER);
    String layer = laid.equals(Effect.ABOUT) ? ofThing : laid;
    String read = effect.word(Place.FIGURE);
    String step = effect.word(Place.STEP);
    String name = effect.word(Place.FACT);
    boolean ofFact = Effect.isLookedUp(read);
    Figure figure = read.isEmpty() || ofFact ? null : knowledge.figures().get(read);
    String thickness = ofFact ? LayerThickness.OF_FACT + Effect.lookedUp(read) : read;
    Derivation because = because(figure);
    return switch (effect.verb()) {
      case ASSUME -> fact(name, about, effect, word, From.ASSUMED, because);
      case ASSUME_AS -> fact(name, about, figure, From.ASSUMED, because);
      case CONCLUDE -> fact(name, about, effect, word, From.CONCLUDED, because);
      case CONCLUDE_AS -> fact(name, about, figure, From.CONCLUDED, because);
      case OFFER -> new OfferedWay(because, effect.word(Place.WAY), word);
      case RULE_OUT -> new RuledOut(because, wording);
      case LAY -> new Laid(because, kind(layer), "");
      case LAY_AS -> new Laid(because, kind(layer), thickness);
      case LAY_MORE -> new Laid(because, kind(layer), LayerThickness.AND + thickness);
      case GRADE -> new LayerClass(because, kind(layer).id(), word);
      case SAY -> new LayerNote(because, kind(layer).id(), wording, false);
      case FIX -> new LayerNote(because, kind(layer).id(), wording, true);
      case COVER -> new LayerCover(because, kind(layer).id(), figure);
      case REMEDY -> new Remedy(because, wording, false, about);
      case HOLD -> new Remedy(because, wording, true, about);
      case DANGER -> new Caution(because, Severity.DANGER, wording, about);
      case CARE -> new Caution(because, Severity.CARE, wording, about);
      case NOTE -> new Caution(because, Severity.NOTE, wording, about);
      case STOP -> new StopFinding(because, Verdict.STOP, wording);
      case OUTSIDE -> new StopFinding(because, Verdict.OUTSIDE_GUIDANCE, wording);
      case TARGET -> new CoverageTarget(because, figure);
      case ALLOW -> new StepTime(because, step, figure.number(), StepTime.Pace.FIXED);
      case ALLOW_FOR_CURE -> new StepTime(because, step, figure.number(), StepTime.Pace.CURES);
      case ALLOW_BY_AREA -> new StepTime(because, step, figure.number(), StepTime.Pace.BY_AREA);
      case ALLOW_AS_FACT ->
          new StepTime(because, step, matched(name).number(), StepTime.Pace.FIXED);
      case BEYOND -> new ClientLimit(because, wording);
      case RANK -> new Criterion(because, Integer.parseInt(word), name);
      case SUGGEST -> new Suggestion(because, wording);
      case FIND -> new Finding(because, judgement(word, because), wording, about);
      case FORBID -> ruling(because, ActRuling.Sort.NEVER, effect, "", about);
      case GATE -> ruling(because, ActRuling.Sort.AFTER, effect, wording, about);
      case GUARD -> ruling(because, ActRuling.Sort.SO, effect, wording, about);
      case ROWS -> throw new IllegalArgumentException("a row says more than one thing");
    };
  }

  private static ActRuling ruling(
      Derivation because, ActRuling.Sort sort, Effect effect, String wording, String about) {
    return new ActRuling(because, sort, effect.word(Place.ACT), wording, about);
  }

  /** What is asked by a limit that holds elsewhere is advised; to miss it is no fault. */
  private Judgement judgement(String word, Derivation because) {
    Judgement judgement = Judgement.of(word);
    return judgement.isFault() && isBorrowed(because, REACH) ? Judgement.ADVISED : judgement;
  }

  /** Whether a rule, or one that concluded what it matched, rests on what holds elsewhere only. */
  private boolean isBorrowed(Derivation because, int reach) {
    return !knowledge.source(because.rule().source()).holds().isEmpty()
        || reach > 0
            && because.premises().stream()
                .anyMatch(
                    one ->
                        one instanceof Fact fact
                            && fact.because() != null
                            && isBorrowed(fact.because(), reach - 1));
  }

  /** A fact in words, or with the number of the fact that the word looks up. */
  private Fact fact(
      String name, String about, Effect effect, String value, From from, Derivation because) {
    String word = effect.word(Place.WORD);
    double number = Effect.isLookedUp(word) ? matched(Effect.lookedUp(word)).number() : Double.NaN;
    return new Fact(
        knowledge.keyOf(name), name, about, value, number, from, "", List.of(), because);
  }

  private Fact fact(String name, String about, String value, From from, Derivation because) {
    return new Fact(
        knowledge.keyOf(name), name, about, value, Double.NaN, from, "", List.of(), because);
  }

  private Fact fact(String name, String about, Figure figure, From from, Derivation because) {
    return new Fact(
        knowledge.keyOf(name),
        name,
        about,
        figure.text(),
        figure.number(),
        from,
        "",
        List.of(),
        because);
  }

  /** A fact that the rule matched. */
  private Fact matched(String name) {
    for (Object one : match.getObjects()) {
      if (one instanceof Fact fact && fact.name().equals(name)) {
        return fact;
      }
    }
    throw new MissingKnowledge("fact among what " + rule() + " asks for", name);
  }

  private LayerKind kind(String id) {
    return knowledge.layers().get(id);
  }

  private Derivation because(Figure read) {
    List<Object> premises = new ArrayList<>(match.getObjects());
    if (read != null && !premises.contains(read)) {
      premises.add(read);
    }
    return new Derivation(rule, premises);
  }
}
