package underfoot.reasoning;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import underfoot.buildup.Conclusion;
import underfoot.buildup.Criterion;
import underfoot.buildup.Laid;
import underfoot.buildup.OfferedWay;
import underfoot.buildup.Stack;
import underfoot.buildup.StackMeasures;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.From;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Unknown;
import underfoot.language.Pass;
import underfoot.measure.Measures;
import underfoot.measure.Surveys;
import underfoot.scenario.Scenario;
import underfoot.scenario.State;
import underfoot.scenario.StatedFact;

/** Thinks a floor through. Safe to share between threads. */
public final class Advisor {
  private final RuleBase rules;
  private final Knowledge knowledge;
  private final Appraisal appraisal;
  private final Surveys surveys;
  private final Passports passports;
  private final boolean onOneCore;

  /**
   * @param rules the compiled rules
   * @param knowledge the figures and wordings they refer to
   * @param appraisal works out what a build-up costs and how long it takes
   */
  public Advisor(RuleBase rules, Knowledge knowledge, Appraisal appraisal) {
    this(rules, knowledge, appraisal, appraisal.surveys(), new Passports(knowledge), false);
  }

  private Advisor(
      RuleBase rules,
      Knowledge knowledge,
      Appraisal appraisal,
      Surveys surveys,
      Passports passports,
      boolean onOneCore) {
    this.rules = rules;
    this.knowledge = knowledge;
    this.appraisal = appraisal;
    this.surveys = surveys;
    this.passports = passports;
    this.onOneCore = onOneCore;
  }

  /**
   * The same advisor for one floor of many that are thought through side by side: each stays with
   * the thread that asks, since handing parts of it to other cores that are busy too only costs.
   */
  public Advisor onOneCore() {
    return new Advisor(rules, knowledge, appraisal, surveys, passports, true);
  }

  /** Things to think of one by one, on all cores unless this advisor keeps to one. */
  <T> Stream<T> each(Collection<T> things) {
    return onOneCore ? things.stream() : things.parallelStream();
  }

  /**
   * The same advisor with a memory, that of {@link #noting} if it noted something; itself if it
   * recalls already. Its reasons may be recalled from another floor, so what it says is compared,
   * not explained.
   */
  public Advisor remembering() {
    return rules.recalls() ? this : by(rules.remembering());
  }

  /**
   * The same advisor, noting what is concluded of one floor for those who try variants of it. What
   * it says has its own reasons.
   */
  public Advisor noting() {
    return by(rules.noting());
  }

  private Advisor by(RuleBase others) {
    return new Advisor(others, knowledge, appraisal, surveys, passports, onOneCore);
  }

  /** The rules it thinks by. */
  public RuleBase rules() {
    return rules;
  }

  /** The knowledge it thinks by. */
  public Knowledge knowledge() {
    return knowledge;
  }

  /** Thinks one floor through, with the parts of it that are otherwise. */
  public Assessment advise(Scenario scenario) {
    return scenario.zones().isEmpty()
        ? advise(scenario, List.of(), List.of())
        : new ZonedFloor(this, scenario).assessment();
  }

  /**
   * Thinks one floor through that is the same all over.
   *
   * @param scenario the floor
   * @param levels what is known of where it must end, if it is a part of a room
   * @param parts the other parts of the room, if they are built with it
   */
  Assessment advise(Scenario scenario, List<Fact> levels, List<Assessment> parts) {
    List<Object> more = List.copyOf(levels);
    FoundFloor layers = new FoundFloor(scenario, knowledge);
    if (!layers.isTold()) {
      return thoughtThrough(scenario, more, parts);
    }
    List<Object> judged = judged(scenario, layers);
    judged.addAll(more);
    Facts told = new Facts().addAll(judged);
    List<Begun> begun = new ArrayList<>();
    for (int start : layers.startsBesideEachOther(told)) {
      begun.add(begun(scenario, found(layers, start, judged), parts));
    }
    Assessment first = best(scenario, begun);
    for (int start : layers.startsWhereNothingStands(told)) {
      if (first.chosen().isPresent()) {
        break;
      }
      Assessment from =
          best(scenario, List.of(begun(scenario, found(layers, start, judged), parts)));
      first = from.chosen().isPresent() ? from : first;
    }
    return first;
  }

  /** The best of a floor begun from each of several layers, with what it is from the others. */
  private Assessment best(Scenario scenario, List<Begun> begun) {
    List<BuildUp> ways = begun.stream().flatMap(one -> one.ways().stream()).toList();
    List<Assessment> from =
        begun.stream().map(one -> settle(scenario, one.floor(), one.ways(), ways)).toList();
    Assessment best = from.get(0);
    Comparator<BuildUp> ranking = Ranks.by(best.criteria());
    for (Assessment one : from) {
      if (one.chosen().isPresent()
          && (best.chosen().isEmpty()
              || ranking.compare(one.chosen().get(), best.chosen().get()) < 0)) {
        best = one;
      }
    }
    List<Assessment> others = new ArrayList<>(from);
    others.remove(best);
    return best.besides(others);
  }

  /** What the rules say of the layers of the floor as it is today. */
  private List<Object> judged(Scenario scenario, FoundFloor layers) {
    Held floor = new Held(List.of());
    floor.add(stated(scenario));
    List<Fact> places = layers.places();
    floor.add(places);
    List<Object> judged = new ArrayList<>(places);
    judged.addAll(rules.think(Pass.FOUND, knowledge, floor.all()));
    return judged;
  }

  /** What is held of a floor whose work starts from one of its layers. */
  private List<Object> found(FoundFloor layers, int start, List<Object> judged) {
    List<Fact> facts = new ArrayList<>();
    for (Object one : judged) {
      if (one instanceof Fact fact) {
        facts.add(fact);
      }
    }
    List<Object> found = new ArrayList<>(judged);
    found.addAll(layers.from(start, facts));
    return found;
  }

  /** What is held of the layers of the floor where the work starts as that of a build-up does. */
  private List<Object> found(Scenario scenario, BuildUp like) {
    Fact start = like.facts().find(FoundFloor.START);
    if (start == null) {
      return List.of();
    }
    FoundFloor layers = new FoundFloor(scenario, knowledge);
    return found(layers, (int) start.number(), judged(scenario, layers));
  }

  private Assessment thoughtThrough(Scenario scenario, List<Object> found, List<Assessment> parts) {
    return best(scenario, List.of(begun(scenario, found, parts)));
  }

  /** A floor as it is where the work begins, and the ways of building on it. */
  private record Begun(Held floor, List<BuildUp> ways) {}

  private Begun begun(Scenario scenario, List<Object> found, List<Assessment> parts) {
    Held floor = understood(scenario, found, parts);
    if (floor.stopped()) { // whatever is built, no build-up is worth working out
      return new Begun(floor, List.of());
    }
    List<BuildUp> ways =
        each(floor.offers().entrySet())
            .map(way -> workOut(scenario, floor, way.getKey(), way.getValue()))
            .toList();
    return new Begun(floor, ways);
  }

  private Held understood(Scenario scenario, List<Object> found, List<Assessment> parts) {
    Held floor = new Held(parts);
    Set<String> told = FoundFloor.names(found);
    List<Object> stated = stated(scenario);
    stated.removeIf(one -> told.contains(nameOf(one)));
    floor.add(stated);
    floor.add(found);
    measure(scenario, floor);
    floor.add(rules.think(Pass.UNDERSTAND, knowledge, floor.all()));
    measure(scenario, floor);
    floor.add(rules.think(Pass.PROPOSE, knowledge, floor.all()));
    return floor;
  }

  /** What a stated or unknown fact of the whole floor is called. */
  private static String nameOf(Object one) {
    if (one instanceof Fact fact) {
      return fact.about().isEmpty() ? fact.name() : "";
    }
    return one instanceof Unknown unknown && unknown.about().isEmpty() ? unknown.name() : "";
  }

  /**
   * Works out a build-up of the same way as one already worked out, but of other layers, and judges
   * it.
   *
   * @param assessment what was made of the floor
   * @param like the build-up whose way it goes
   * @param stack its layers; those that rules asked for carry the rules that asked
   * @param laid which layers the rules are to see as laid
   */
  BuildUp instead(Assessment assessment, BuildUp like, Stack stack, List<Laid> laid) {
    Scenario scenario = assessment.scenario();
    List<Assessment> parts = assessment.zones().stream().map(ZonePart::assessment).toList();
    Held floor = understood(scenario, found(scenario, like), parts);
    Held own = laid(floor, like.way(), like.offers());
    own.own().removeIf(Laid.class::isInstance);
    own.add(laid);
    return judged(scenario, floor, like.way(), like.offers(), stack, own);
  }

  private List<Object> stated(Scenario scenario) {
    List<Object> stated = new ArrayList<>();
    for (StatedFact given : scenario.givens()) {
      String name = given.called();
      if (name.isEmpty()) {
        continue;
      }
      if (given.state() == State.UNKNOWN) {
        stated.add(new Unknown(given.key(), name, given.about()));
      } else {
        stated.add(Fact.stated(given.key(), name, given.about(), given.text(), given.number()));
      }
    }
    return stated;
  }

  private void measure(Scenario scenario, Held floor) {
    floor.add(Measures.of(scenario, surveys, knowledge.figures(), floor.facts()));
  }

  private BuildUp workOut(Scenario scenario, Held floor, String way, List<OfferedWay> offers) {
    Held own = laid(floor, way, offers);
    Stack stack = Stack.of(own.all(), knowledge.figures(), own.facts());
    return judged(scenario, floor, way, offers, stack, own);
  }

  private OfferedWay best(List<OfferedWay> offers) {
    OfferedWay best = offers.get(0);
    for (OfferedWay offer : offers) {
      if (standing(offer) < standing(best)) {
        best = offer;
      }
    }
    return best;
  }

  /** What is held of the floor, with what rules lay for one way of building. */
  private Held laid(Held floor, String way, List<OfferedWay> offers) {
    Held own = new Held(floor);
    own.add(
        List.of(
            new Fact(
                "build-up",
                "build-up",
                "",
                way,
                Double.NaN,
                From.CONCLUDED,
                "",
                List.of(),
                best(offers).because())));
    own.add(rules.think(Pass.LAY, knowledge, own.shown(rules, Pass.LAY)));
    return own;
  }

  private BuildUp judged(
      Scenario scenario, Held floor, String way, List<OfferedWay> offers, Stack stack, Held own) {
    int common = floor.all().size();
    int standing = standing(best(offers));
    own.add(StackMeasures.of(scenario, surveys, stack, standing, knowledge.figures(), own.facts()));
    BuildUp laid = buildUp(way, offers, stack, own, common);
    own.add(passports.of(laid));
    own.add(appraisal.of(scenario, knowledge, laid, floor.parts()));
    own.add(rules.think(Pass.JUDGE, knowledge, own.shown(rules, Pass.JUDGE)));
    act(way, own);
    own.add(Ranks.of(knowledge, own.facts(), own.all(), Verdict.of(conclusions(own.all()))));
    return buildUp(way, offers, stack, own, common);
  }

  /** Adds what follows from the acts that are asked for. */
  private void act(String way, Held own) {
    own.add(ActsApplied.asked(knowledge, way, own.all()));
    own.add(
        own.isOfFloor()
            ? rules.think(Pass.ACT, knowledge, own.all())
            : rules.think(Pass.ACT, knowledge, own.shown(rules, Pass.ACT)));
    own.add(ActsApplied.follows(knowledge, way, own.all()));
  }

  /** A build-up with all that is held of it; what follows the common part is its own. */
  private static BuildUp buildUp(
      String way, List<OfferedWay> offers, Stack stack, Held own, int common) {
    List<Conclusion> alone = conclusions(own.all().subList(common, own.all().size()));
    return new BuildUp(way, offers, stack, own.facts(), alone);
  }

  private int standing(OfferedWay offer) {
    return knowledge.scales().get("standings").indexOf(offer.standing());
  }

  /**
   * Ranks the ways of building on a floor.
   *
   * @param worked the ways
   * @param beside all ways they are seen beside, those begun from other layers too
   */
  private Assessment settle(
      Scenario scenario, Held floor, List<BuildUp> worked, List<BuildUp> beside) {
    List<BuildUp> buildUps = NearWays.of(knowledge, worked, beside);
    Held settled = new Held(floor); // the build-ups keep what was held of the floor before
    if (!floor.stopped()) {
      long standing = buildUps.stream().filter(BuildUp::stands).count();
      settled.add(
          List.of(
              Fact.measured(
                  "build-ups that stand",
                  "",
                  Long.toString(standing),
                  standing,
                  standing + " of " + buildUps.size() + " build-ups worked out stand",
                  List.of()),
              Fact.measured(
                  "build-ups worked out",
                  "",
                  Integer.toString(buildUps.size()),
                  buildUps.size(),
                  "the ways of building that rules offer",
                  List.of())));
    }
    settled.add(appraisal.ofAll(beside));
    settled.add(rules.think(Pass.SETTLE, knowledge, settled.all()));
    if (buildUps.stream().noneMatch(BuildUp::stands)) { // else each way has what it asks for
      act("", settled);
    }
    List<Conclusion> general = conclusions(settled.all());
    List<Criterion> criteria = new ArrayList<>();
    for (Conclusion one : general) {
      if (one instanceof Criterion criterion) {
        criteria.add(criterion);
      }
    }
    criteria.sort(Comparator.comparingInt(Criterion::order));
    List<BuildUp> ranked = new ArrayList<>(buildUps);
    ranked.sort(Ranks.by(criteria));
    return new Assessment(
        scenario, knowledge, verdict(general, ranked), settled.facts(), general, ranked, criteria);
  }

  private static Verdict verdict(List<Conclusion> general, List<BuildUp> ranked) {
    List<Conclusion> decisive = new ArrayList<>(general);
    if (!ranked.isEmpty()) {
      decisive.addAll(ranked.get(0).concluded());
    }
    return Verdict.of(decisive);
  }

  private static List<Conclusion> conclusions(List<?> objects) {
    List<Conclusion> found = new ArrayList<>();
    for (Object object : objects) {
      if (object instanceof Conclusion conclusion) {
        found.add(conclusion);
      }
    }
    return found;
  }
}
