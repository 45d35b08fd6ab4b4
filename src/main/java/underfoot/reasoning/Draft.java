package underfoot.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.kie.api.definition.rule.Rule;
import org.kie.api.runtime.rule.Match;
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
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.LayerKind;
import underfoot.knowledge.MissingKnowledge;
import underfoot.knowledge.RuleNote;

/**
 * What the sentences after {@code then} write on. Each method makes one conclusion that carries the
 * rule now firing and all that it matched. One draft serves one session.
 */
public final class Draft {
  private final Knowledge knowledge;
  private final Map<String, RuleNote> notes;
  private Match match;

  /**
   * @param knowledge what the sentences refer to
   * @param notes where what a rule says of itself is kept, by its name; shared between sessions
   */
  Draft(Knowledge knowledge, Map<String, RuleNote> notes) {
    this.knowledge = knowledge;
    this.notes = notes;
  }

  void firing(Match now) {
    match = now;
  }

  /** The rule now firing. */
  String rule() {
    return match == null ? "none" : match.getRule().getName();
  }

  /** Assumes a fact in words. */
  public Fact assume(String name, String about, String value) {
    return held(name, about, value, Double.NaN, From.ASSUMED, because());
  }

  /** Assumes a quantity as a figure gives it. */
  public Fact assumeAs(String name, String about, String figure) {
    Figure read = knowledge.figures().get(figure);
    return held(name, about, read.text(), read.number(), From.ASSUMED, because(read));
  }

  /** Concludes a fact in words. */
  public Fact conclude(String name, String about, String value) {
    return held(name, about, value, Double.NaN, From.CONCLUDED, because());
  }

  /** Concludes a quantity as a figure gives it. */
  public Fact concludeAs(String name, String about, String figure) {
    Figure read = knowledge.figures().get(figure);
    return held(name, about, read.text(), read.number(), From.CONCLUDED, because(read));
  }

  /** Offers a build-up. */
  public OfferedWay offer(String way, String standing) {
    return new OfferedWay(because(), way, standing);
  }

  /** Rules the build-up under judgement out. */
  public RuledOut ruleOut(String wording) {
    return new RuledOut(because(), wording);
  }

  /** Lays a layer of its kind's own thickness. */
  public Laid lay(String layer) {
    return new Laid(because(), kind(layer), "");
  }

  /** Lays a layer of a given thickness. */
  public Laid lay(String layer, String figure) {
    return new Laid(because(knowledge.figures().get(figure)), kind(layer), figure);
  }

  /** Asks for a class of material. */
  public LayerClass grade(String layer, String grade) {
    return new LayerClass(because(), kind(layer).id(), grade);
  }

  /** Says something of a layer. */
  public LayerNote say(String layer, String wording) {
    return new LayerNote(because(), kind(layer).id(), wording, false);
  }

  /** Says how a layer is fixed. */
  public LayerNote fix(String layer, String wording) {
    return new LayerNote(because(), kind(layer).id(), wording, true);
  }

  /** Asks for contact under a layer. */
  public LayerCover cover(String layer, String figure) {
    Figure read = knowledge.figures().get(figure);
    return new LayerCover(because(read), kind(layer).id(), read);
  }

  /** Puts something right first. */
  public Remedy remedy(String wording, String about) {
    return new Remedy(because(), wording, false, about);
  }

  /** Holds the work until something is cleared. */
  public Remedy hold(String wording, String about) {
    return new Remedy(because(), wording, true, about);
  }

  /** Warns that people can be hurt. */
  public Caution danger(String wording, String about) {
    return new Caution(because(), Severity.DANGER, wording, about);
  }

  /** Warns that the floor can fail. */
  public Caution care(String wording, String about) {
    return new Caution(because(), Severity.CARE, wording, about);
  }

  /** Notes something worth knowing. */
  public Caution note(String wording, String about) {
    return new Caution(because(), Severity.NOTE, wording, about);
  }

  /** Stops the work. */
  public StopFinding stop(String wording) {
    return new StopFinding(because(), Verdict.STOP, wording);
  }

  /** Says that published guidance advises against it. */
  public StopFinding outside(String wording) {
    return new StopFinding(because(), Verdict.OUTSIDE_GUIDANCE, wording);
  }

  /** Sets a coverage target for the tile bed. */
  public CoverageTarget target(String figure) {
    Figure read = knowledge.figures().get(figure);
    return new CoverageTarget(because(read), read);
  }

  /** Allows time for a step. */
  public StepTime allow(String step, String figure) {
    return allow(step, figure, StepTime.Pace.FIXED);
  }

  /** Allows time for a step that cold slows and heat hastens. */
  public StepTime allowForCure(String step, String figure) {
    return allow(step, figure, StepTime.Pace.CURES);
  }

  /** Allows time for a step for each square metre. */
  public StepTime allowByArea(String step, String figure) {
    return allow(step, figure, StepTime.Pace.BY_AREA);
  }

  /** Allows for a step the time that a fact the rule matched tells. */
  public StepTime allowAsFact(String step, String name) {
    for (Object one : match.getObjects()) {
      if (one instanceof Fact fact && fact.name().equals(name) && fact.hasNumber()) {
        return new StepTime(because(), step, fact.number(), StepTime.Pace.FIXED);
      }
    }
    throw new MissingKnowledge("time among what " + match.getRule().getName() + " asks for", name);
  }

  private StepTime allow(String step, String figure, StepTime.Pace pace) {
    Figure read = knowledge.figures().get(figure);
    return new StepTime(because(read), step, read.number(), pace);
  }

  /** Says that the build-up goes beyond a limit the client set. */
  public ClientLimit beyond(String wording) {
    return new ClientLimit(because(), wording);
  }

  /** Ranks build-ups by a criterion. */
  public Criterion rank(String order, String criterion) {
    return new Criterion(because(), Integer.parseInt(order), criterion);
  }

  /** Suggests another way. */
  public Suggestion suggest(String wording) {
    return new Suggestion(because(), wording);
  }

  /** Finds something of a proposal. */
  public Finding find(String judgement, String wording, String about) {
    return new Finding(because(), Judgement.of(judgement), wording, about);
  }

  private Fact held(
      String name, String about, String text, double number, From from, Derivation because) {
    return new Fact(knowledge.keyOf(name), name, about, text, number, from, "", List.of(), because);
  }

  private LayerKind kind(String id) {
    return knowledge.layers().get(id);
  }

  private Derivation because(Figure... read) {
    List<Object> premises = new ArrayList<>(match.getObjects());
    for (Figure figure : read) {
      if (!premises.contains(figure)) {
        premises.add(figure);
      }
    }
    return new Derivation(noteOf(match.getRule()), premises);
  }

  private RuleNote noteOf(Rule rule) {
    return notes.computeIfAbsent(rule.getName(), name -> RuleNotes.of(rule));
  }
}
