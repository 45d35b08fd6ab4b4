package underfoot.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleFunction;
import java.util.function.Predicate;
import underfoot.buildup.ClientLimit;
import underfoot.knowledge.Changes.Change;
import underfoot.knowledge.Fact;
import underfoot.measure.Texts;
import underfoot.quantity.Dimension;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.StatedFact;

/**
 * The least change of a floor or a job that would make a way stand where none does: one thing
 * changed, or failing that two together, each by as little as will do. Every change told was proved
 * by thinking the changed floor through.
 */
public final class LeastChange {
  /** Pairs are many; so many are told. */
  private static final int PAIRS_TOLD = 3;

  private static final int HALVINGS = 12;

  /** How often a floor is thought through for one change, about, until its least is found. */
  private static final int FOR_ONE = 10;

  private final Advisor advisor;
  private final Predicate<Assessment> wanted;

  /** How often a floor was thought through in this search. */
  private final AtomicInteger thought = new AtomicInteger();

  private LeastChange(Advisor advisor, Predicate<Assessment> wanted) {
    this.advisor = advisor;
    this.wanted = wanted;
  }

  /**
   * A fact changed.
   *
   * @param change what was changed
   * @param about which of several things it is about; empty for the room
   * @param was its value before, in words
   * @param is its value now, as a scenario writes it
   * @param by how much it was changed; empty where the value is none of more or less
   */
  public record Altered(Change change, String about, String was, String is, String by) {}

  /**
   * A change that makes a way stand.
   *
   * @param altered what is changed, together
   * @param then what is decided of the changed floor
   */
  public record Proposal(List<Altered> altered, Assessment then) {
    /** Copies the list. */
    public Proposal {
      altered = List.copyOf(altered);
    }
  }

  /**
   * What was found.
   *
   * @param proposals the changes that do, the least trouble first
   * @param every whether all changes were tried; not all are where a floor holds very much
   */
  public record Found(List<Proposal> proposals, boolean every) {
    /** Copies the list. */
    public Found {
      proposals = List.copyOf(proposals);
    }
  }

  /** What could be tried of one change: either values in turn, or more and more of one. */
  private record Trial(
      Change change,
      String about,
      StatedFact before,
      double now,
      List<Option> options,
      boolean stepped) {

    /** The furthest that may be tried. */
    Option furthest() {
      return stepped
          ? amount(Math.floor((change.bound() - now) / change.step() + 1e-9))
          : options.get(options.size() - 1);
    }

    /** So many steps. */
    Option amount(double steps) {
      double by = steps * change.step();
      return new Option(text(now + by), text(Math.abs(by)));
    }

    private String text(double number) {
      FactDefinition fact = change.fact();
      if (fact.dimension() == Dimension.MONEY) {
        return Texts.of(number, before.text().substring(before.text().lastIndexOf(' ') + 1));
      }
      if (change.unit() != null) {
        return Texts.of(
            number / change.unit().factor() - change.unit().offset(), change.unit().symbol());
      }
      return Texts.of(number, fact.dimension() == null ? "" : fact.dimension().base());
    }
  }

  /** One value to try. */
  private record Option(String value, String by) {}

  /**
   * Searches for what would let a floor be built: for a way to stand if none does, and else for the
   * recommended way to keep the limits the client set.
   *
   * @param advisor who thinks the changed floors through
   * @param assessment what was decided of the floor as it is
   * @return the changes that do; none if it fits already, if something stops it that no change of
   *     the job can mend, or if no change was found
   */
  public static Found of(Advisor advisor, Assessment assessment) {
    boolean stands = assessment.chosen().isPresent();
    if (stands && keepsLimits(assessment)) {
      return new Found(List.of(), true);
    }
    return search(
        advisor, assessment, stands ? LeastChange::keepsLimits : then -> then.chosen().isPresent());
  }

  /**
   * Searches for what would make something hold.
   *
   * @param advisor who thinks the changed floors through
   * @param assessment what was decided of the floor as it is
   * @param wanted what is to hold of the changed floor
   * @return the changes that do; none if something stops the floor that no change of the job can
   *     mend, or if no change was found
   */
  public static Found search(Advisor advisor, Assessment assessment, Predicate<Assessment> wanted) {
    if (assessment.buildUps().isEmpty()) {
      return new Found(List.of(), true);
    }
    LeastChange search = new LeastChange(advisor.remembering(), wanted);
    int afforded = Effort.trials(assessment);
    List<Trial> all = trials(assessment);
    List<Trial> trials = Effort.some(all, one -> one.change().wording(), afforded / FOR_ONE);
    List<Proposal> single =
        search
            .advisor
            .each(trials)
            .map(trial -> search.least(assessment.scenario(), List.of(), trial))
            .flatMap(Optional::stream)
            .toList();
    if (!single.isEmpty()) {
      return new Found(single, trials.size() == all.size());
    }
    List<int[]> pairs = pairs(trials);
    int left = Math.max(0, afforded - search.thought.get() - PAIRS_TOLD * 2 * FOR_ONE);
    List<int[]> some = pairs.subList(0, Math.min(pairs.size(), left));
    return new Found(
        search.promising(assessment.scenario(), trials, some),
        trials.size() == all.size() && some.size() == pairs.size());
  }

  /** Whether a way was chosen that keeps the limits the client set. */
  public static boolean keepsLimits(Assessment assessment) {
    return assessment.chosen().isPresent() && assessment.of(ClientLimit.class).isEmpty();
  }

  private static List<int[]> pairs(List<Trial> trials) {
    List<int[]> places = new ArrayList<>();
    for (int i = 0; i < trials.size(); i++) {
      for (int j = i + 1; j < trials.size(); j++) {
        if (!trials.get(i).change().equals(trials.get(j).change())
            || !trials.get(i).about().equals(trials.get(j).about())) {
          places.add(new int[] {i, j});
        }
      }
    }
    return places;
  }

  private List<Proposal> promising(Scenario scenario, List<Trial> trials, List<int[]> places) {
    List<int[]> promising =
        advisor
            .each(places)
            .filter(
                pair ->
                    proved(
                            scenario,
                            List.of(
                                altered(trials.get(pair[0]), trials.get(pair[0]).furthest()),
                                altered(trials.get(pair[1]), trials.get(pair[1]).furthest())))
                        .isPresent())
            .limit(PAIRS_TOLD)
            .toList();
    return promising.stream()
        .map(pair -> both(scenario, trials.get(pair[0]), trials.get(pair[1])))
        .flatMap(Optional::stream)
        .toList();
  }

  /** The least of the second with the first at its furthest, then the least of the first. */
  private Optional<Proposal> both(Scenario scenario, Trial first, Trial second) {
    Optional<Proposal> found = least(scenario, List.of(altered(first, first.furthest())), second);
    if (found.isEmpty()) {
      return found;
    }
    Altered kept = found.get().altered().get(1);
    Optional<Proposal> less = least(scenario, List.of(kept), first);
    return less.isPresent() ? less : found;
  }

  private static Altered altered(Trial trial, Option option) {
    return new Altered(
        trial.change(), trial.about(), trial.before().text(), option.value(), option.by());
  }

  private static List<Trial> trials(Assessment assessment) {
    List<Trial> trials = new ArrayList<>();
    for (Change change : assessment.knowledge().changes()) {
      for (StatedFact given : assessment.scenario().givens()) {
        boolean here = given.definition().key().equals(change.fact().key());
        if (here && ActsApplied.allows(assessment, change, given.about())) {
          trial(assessment, change, given).ifPresent(trials::add);
        }
      }
    }
    return trials;
  }

  private static Optional<Trial> trial(Assessment assessment, Change change, StatedFact given) {
    Fact held = assessment.factsOfChosen().find(change.fact().called(), given.about());
    String now = given.known() ? given.text() : held == null ? "" : held.text();
    double number = given.known() ? given.number() : held == null ? Double.NaN : held.number();
    if (!change.onlyFor().isEmpty() && !change.onlyFor().contains(now)) {
      return Optional.empty();
    }
    List<Option> options = new ArrayList<>();
    for (String value : change.to()) {
      if (!value.equals(now)) {
        options.add(new Option(value, ""));
      }
    }
    // How texts are written is the same for all of a trial.
    Trial bare = new Trial(change, given.about(), given, number, List.of(), true);
    if (!Double.isNaN(number)) {
      for (double factor : change.times()) {
        options.add(new Option(bare.text(number * factor), ""));
      }
      for (double more : change.more()) {
        options.add(new Option(bare.text(number + more), bare.text(more)));
      }
      if (change.step() != 0 && (change.bound() - number) / change.step() >= 1) {
        return Optional.of(bare);
      }
    }
    return options.isEmpty()
        ? Optional.empty()
        : Optional.of(new Trial(change, given.about(), given, number, options, false));
  }

  /** The least of one change that makes the floor fit, with others already made. */
  private Optional<Proposal> least(Scenario scenario, List<Altered> made, Trial trial) {
    if (!trial.stepped()) {
      Optional<Proposal> first = Optional.empty();
      for (Option option : trial.options()) {
        Optional<Proposal> proposal = proved(scenario, with(made, altered(trial, option)));
        if (proposal.isPresent() && ActsApplied.structural(proposal.get().then()).isEmpty()) {
          return proposal; // one that leaves nothing to be done to what carries goes first
        }
        first = first.isPresent() ? first : proposal;
      }
      return first;
    }
    DoubleFunction<Optional<Proposal>> at =
        steps -> proved(scenario, with(made, altered(trial, trial.amount(steps))));
    double most = Math.floor((trial.change().bound() - trial.now()) / trial.change().step() + 1e-9);
    double enough = firstThatDoes(at, most);
    if (Double.isNaN(enough)) {
      return Optional.empty();
    }
    double tooLittle = enough == 1 ? 0 : Math.floor(enough / 2);
    while (enough - tooLittle > 1) {
      double middle = Math.floor((enough + tooLittle) / 2);
      if (at.apply(middle).isPresent()) {
        enough = middle;
      } else {
        tooLittle = middle;
      }
    }
    // Where one step is more than is needed, less than a step is told.
    for (int i = 0; i < HALVINGS && at.apply(enough / 2).isPresent(); i++) {
      enough /= 2;
    }
    return at.apply(enough);
  }

  /** Doubles the steps until they do, so that the least is found near the least. */
  private static double firstThatDoes(DoubleFunction<Optional<Proposal>> at, double most) {
    for (double steps = 1; steps < most; steps *= 2) {
      if (at.apply(steps).isPresent()) {
        return steps;
      }
    }
    return at.apply(most).isPresent() ? most : Double.NaN;
  }

  private static List<Altered> with(List<Altered> made, Altered one) {
    List<Altered> all = new ArrayList<>(made);
    all.add(one);
    return all;
  }

  /** The changed floor thought through; empty if it does not fit, or cannot be so. */
  private Optional<Proposal> proved(Scenario scenario, List<Altered> altered) {
    try {
      Scenario changed = scenario;
      for (Altered one : altered) {
        changed = changed.with(one.change().fact().key(), one.about(), one.is());
      }
      thought.incrementAndGet();
      Assessment then = advisor.advise(changed);
      return wanted.test(then) ? Optional.of(new Proposal(altered, then)) : Optional.empty();
    } catch (ScenarioFaults impossibleHere) {
      return Optional.empty();
    }
  }
}
