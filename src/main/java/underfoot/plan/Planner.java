package underfoot.plan;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import underfoot.buildup.StackLayer;
import underfoot.buildup.StepTime;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.PriceBook;
import underfoot.measure.LevelSurvey;
import underfoot.measure.Surveys;
import underfoot.measure.Texts;
import underfoot.reasoning.Appraisal;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.ZonePart;
import underfoot.scenario.Reading;
import underfoot.scenario.Scenario;

/** What follows from a build-up: what to buy, in what order to work, what it costs. */
public final class Planner implements Appraisal {
  private static final String SEPARATOR = ", ";
  private static final String CONTINGENCY = "contingency";
  private static final String LEVELLER = "leveller";
  private static final String UNPRICED = "unpriced";
  private static final String FOREIGN = "foreign currency";
  private static final double HOURS_A_DAY = 24;
  private static final double TENTHS = 10;
  private static final double PER_CENT = 100;

  private final PriceBook prices;
  private final SetOuts setOuts;
  private final Surveys surveys;

  /**
   * @param prices what things cost
   */
  public Planner(PriceBook prices) {
    this(prices, new SetOuts(), new Surveys());
  }

  private Planner(PriceBook prices, SetOuts setOuts, Surveys surveys) {
    this.prices = prices;
    this.setOuts = setOuts;
    this.surveys = surveys;
  }

  /**
   * One that works by other prices and remembers the same set-outs and levels.
   *
   * @param others what things cost
   */
  public Planner by(PriceBook others) {
    return others == prices ? this : new Planner(others, setOuts, surveys);
  }

  /** The room of a floor as it is drawn; empty where its outline is not known. */
  public static Optional<RoomPlan> room(Scenario scenario, Facts facts) {
    return SetOuts.room(scenario, facts);
  }

  /** What follows from the recommended build-up; nothing if there is none. */
  public Consequences of(Assessment assessment, Justifier justifier) {
    Optional<BuildUp> chosen = assessment.chosen();
    if (chosen.isEmpty()) {
      return Consequences.none(BuildUpComparison.of(assessment, this, justifier));
    }
    BuildUp buildUp = chosen.get();
    Knowledge knowledge = assessment.knowledge();
    SetOuts.Laid laid = setOuts.of(assessment.scenario(), knowledge, buildUp);
    List<Assessment> parts = parts(assessment);
    List<Amount> amounts = amounts(knowledge, buildUp, laid, parts);
    List<QuantityLine> quantities = new ArrayList<>();
    for (Amount amount : amounts) {
      quantities.add(
          new QuantityLine(
              amount.item().item(),
              amount.amount(),
              amount.whole() || Double.isNaN(amount.amount())
                  ? amount.item().unit()
                  : amount.item().unit() + " for each m2",
              amount.whole() ? packs(amount).map(Packs::count).orElse(0) : 0,
              justifier.of(amount.layer().because(), amount.used())));
    }
    Timetable timetable =
        timetable(knowledge, buildUp.facts(), assessment.of(StepTime.class), parts);
    return new Consequences(
        quantities,
        new ShoppingMaker(assessment, buildUp, this::packs, laid).lines(amounts),
        programme(assessment, timetable, justifier),
        schedule(timetable),
        cost(knowledge, amounts, timetable),
        levels(assessment.scenario(), buildUp, justifier),
        BuildUpComparison.of(assessment, this, justifier),
        List.of(),
        Optional.empty(),
        beneath(buildUp),
        SetOuts.room(assessment.scenario(), buildUp.facts()),
        setOuts.justified(assessment.scenario(), knowledge, buildUp, justifier));
  }

  /** The other parts of a room. */
  private static List<Assessment> parts(Assessment room) {
    return room.zones().stream().map(ZonePart::assessment).toList();
  }

  /** What a build-up takes together with the other parts of its room. */
  private static List<Amount> amounts(
      Knowledge knowledge, BuildUp buildUp, SetOuts.Laid laid, List<Assessment> parts) {
    List<Amount> amounts = Amounts.of(knowledge, buildUp, laid);
    for (Assessment part : parts) {
      Optional<BuildUp> there = part.chosen();
      if (there.isPresent()) {
        amounts = Amounts.together(amounts, Amounts.ofPart(knowledge, there.get()));
      }
    }
    return amounts;
  }

  private static Timetable timetable(
      Knowledge knowledge, Facts facts, List<StepTime> steps, List<Assessment> parts) {
    List<Timetable.Part> all = new ArrayList<>();
    all.add(new Timetable.Part(facts, steps));
    for (Assessment part : parts) {
      part.chosen()
          .ifPresent(there -> all.add(new Timetable.Part(there.facts(), part.of(StepTime.class))));
    }
    return Timetable.of(knowledge, all);
  }

  /** How a build-up is built, in time, together with the other parts of its room. */
  static Timetable timetable(Assessment room, BuildUp buildUp) {
    return timetable(room.knowledge(), buildUp.facts(), buildUp.of(StepTime.class), parts(room));
  }

  private Optional<Packs> packs(Amount amount) {
    return prices.find(amount.item().item()).map(price -> Packs.of(amount, price));
  }

  private static List<ProgrammeStep> programme(
      Assessment assessment, Timetable timetable, Justifier justifier) {
    ActsInWords words = Sayings.of(assessment).acts();
    String way = assessment.chosen().map(BuildUp::way).orElse("");
    List<ProgrammeStep> programme = new ArrayList<>();
    for (Timetable.Timed timed : timetable.steps()) {
      List<String> acts = assessment.knowledge().acts().of(timed.step(), way);
      Set<String> after = words.gates(acts, "", "");
      programme.add(
          new ProgrammeStep(
              timed.step().id(),
              words.once(after, timed.step().title()),
              timed.step().kind(),
              timed.span().start(),
              timed.hours(),
              timed.span().end(),
              on(timetable, timed.span().start()),
              on(timetable, timed.span().end()),
              timed.critical(),
              List.copyOf(after),
              justifier.of(timed.because(), timed.used())));
    }
    return programme;
  }

  private static Schedule schedule(Timetable timetable) {
    List<Milestone> milestones = new ArrayList<>();
    for (Timetable.Timed timed : timetable.steps()) {
      milestone(timetable, timed, timed.step().atStart(), timed.span().start(), milestones);
      milestone(timetable, timed, timed.step().atEnd(), timed.span().end(), milestones);
    }
    milestones.sort(Comparator.comparingDouble(Milestone::hour));
    return new Schedule(timetable.workHours(), timetable.inUseAfter(), milestones);
  }

  private static void milestone(
      Timetable timetable,
      Timetable.Timed timed,
      String what,
      double hour,
      List<Milestone> milestones) {
    if (!what.isEmpty()) {
      milestones.add(new Milestone(what, timed.step().id(), hour, on(timetable, hour)));
    }
  }

  private static Optional<LocalDateTime> on(Timetable timetable, double hour) {
    WorkingHours working = timetable.working();
    return working.dated() ? Optional.of(working.at(hour)) : Optional.empty();
  }

  /** What the lowest layer lies on, as it is drawn. */
  private static BaseBelow beneath(BuildUp buildUp) {
    return BaseBelow.of(
        buildUp.facts(),
        buildUp.stack().replacesDeck() ? "" : buildUp.beneath(),
        buildUp.stack().replacesDeck());
  }

  /** Where the compound stands how deep, if there is compound and the floor was surveyed. */
  private Optional<LevelPlan> levels(Scenario scenario, BuildUp buildUp, Justifier justifier) {
    Optional<StackLayer> leveller =
        buildUp.stack().layers().stream()
            .filter(layer -> layer.kind().family().equals(LEVELLER))
            .findFirst();
    Optional<LevelSurvey> survey = surveys.of(scenario);
    double least = buildUp.facts().number("pour least");
    if (leveller.isEmpty() || survey.isEmpty() || Double.isNaN(least)) {
      return Optional.empty();
    }
    boolean level = buildUp.facts().text("levels wanted").equals("level");
    return survey
        .get()
        .pour(level, least)
        .map(
            pour -> {
              List<LevelPlan.Marker> markers = new ArrayList<>();
              for (int i = 0; i < pour.depthsMm().size(); i++) {
                Reading reading = scenario.readings().get(i);
                markers.add(
                    new LevelPlan.Marker(
                        reading.x(), reading.y(), reading.z(), pour.depthsMm().get(i)));
              }
              return new LevelPlan(
                  level,
                  pour.surface().datumMm(),
                  pour.volumeL(),
                  markers,
                  justifier.of(leveller.get().because()));
            });
  }

  @Override
  public List<Fact> of(
      Scenario scenario, Knowledge knowledge, BuildUp buildUp, List<Assessment> parts) {
    SetOuts.Laid laid = setOuts.of(scenario, knowledge, buildUp);
    List<Fact> found = new ArrayList<>(laid.measured());
    Facts facts = buildUp.facts();
    List<Amount> amounts = amounts(knowledge, buildUp, laid, parts);
    Timetable timetable = timetable(knowledge, facts, buildUp.of(StepTime.class), parts);
    cost(knowledge, amounts, timetable)
        .ifPresent(cost -> found.addAll(price(knowledge, buildUp, cost)));
    if (!timetable.steps().isEmpty()) {
      found.addAll(time(facts, timetable));
    }
    return found;
  }

  /** How long a build-up takes, and by how much that is later than wanted. */
  private static List<Fact> time(Facts facts, Timetable timetable) {
    List<Object> used = new ArrayList<>();
    timetable.steps().forEach(step -> used.addAll(step.used()));
    List<Object> once = used.stream().distinct().toList();
    double hours = timetable.inUseAfter();
    Fact until =
        Fact.measured(
            "hours until use",
            "",
            span(hours),
            hours,
            "the steps of the programme one after another, nights and days off included",
            once);
    List<Fact> found = new ArrayList<>();
    found.add(until);
    found.add(
        Fact.measured(
            "work hours",
            "",
            Texts.of(Math.ceil(timetable.workHours()), "h"),
            timetable.workHours(),
            "the hours of all steps in which hands work",
            once));
    Fact wanted = facts.find("ready within");
    if (wanted != null && wanted.hasNumber()) {
      double late = Math.max(0, hours - wanted.number());
      found.add(
          Fact.measured(
              "late by",
              "",
              span(late),
              late,
              until.text() + " against " + wanted.text(),
              List.of(until, wanted)));
    }
    return found;
  }

  /** A time as people count it: hours up to two days, then days and tenths. */
  static String span(double hours) {
    return hours < 2 * HOURS_A_DAY
        ? Texts.of(Math.ceil(hours), "h")
        : Texts.of(Math.ceil(hours / HOURS_A_DAY * TENTHS) / TENTHS, "days");
  }

  /** What a build-up costs, and by how much that is over the budget where there is one. */
  private static List<Fact> price(Knowledge knowledge, BuildUp buildUp, Cost cost) {
    List<Fact> found = new ArrayList<>();
    found.add(
        Fact.measured(
            "prices from",
            "",
            cost.invented() ? "the demonstration price book, all invented" : "the price book",
            Double.NaN,
            "",
            List.of()));
    Fact sum =
        cost.whole()
            ? Fact.measured(
                "cost",
                "",
                Texts.money(cost.total(), cost.currency()),
                cost.total(),
                "packs × price from the price book, with contingency",
                List.of(knowledge.figures().get(CONTINGENCY)))
            : Fact.measured(
                "priced part",
                "",
                Texts.money(cost.atLeast(), cost.currency()),
                cost.atLeast(),
                "packs × price from the price book, of what has a price",
                List.of());
    found.add(sum);
    if (!cost.whole()) {
      found.add(Fact.measured(UNPRICED, "", items(cost.unpriced()), Double.NaN, "", List.of()));
    }
    Fact budget = buildUp.facts().find("budget");
    if (budget == null || !budget.hasNumber()) {
      return found;
    }
    if (!budget.text().contains(cost.currency())) {
      found.add(Fact.measured(FOREIGN, "", cost.currency(), Double.NaN, "", List.of(budget)));
    } else if (cost.whole()) {
      found.add(over("over budget", cost.total(), cost.currency(), sum, budget));
      found.add(
          over("over budget before contingency", cost.atLeast(), cost.currency(), sum, budget));
    } else {
      found.add(over("least over budget", cost.atLeast(), cost.currency(), sum, budget));
    }
    return found;
  }

  private static String items(Collection<String> items) {
    return String.join(SEPARATOR, items);
  }

  @Override
  public Surveys surveys() {
    return surveys;
  }

  @Override
  public List<Fact> ofAll(List<BuildUp> buildUps) {
    List<Object> unpriced = new ArrayList<>();
    Set<String> items = new LinkedHashSet<>();
    List<Fact> found = new ArrayList<>();
    for (BuildUp buildUp : buildUps) {
      Fact here = buildUp.facts().find(UNPRICED);
      if (here != null) {
        unpriced.add(here);
        items.addAll(List.of(here.text().split(SEPARATOR)));
      }
      Fact foreign = buildUp.facts().find(FOREIGN);
      if (foreign != null && found.isEmpty()) {
        found.add(foreign);
      }
    }
    if (!unpriced.isEmpty()) {
      found.add(Fact.measured("unpriced in some way", "", items(items), Double.NaN, "", unpriced));
    }
    return found;
  }

  private static Fact over(String name, double sum, String currency, Fact total, Fact budget) {
    double over = Math.max(0, sum - budget.number());
    return Fact.measured(
        name,
        "",
        Texts.money(over, currency),
        over,
        Texts.money(sum, currency) + " against " + budget.text(),
        List.of(total, budget));
  }

  /** What a build-up costs with the parts of its room; empty if area or prices are not known. */
  Optional<Cost> cost(Assessment room, BuildUp buildUp, Timetable timetable) {
    return cost(room.scenario(), room.knowledge(), buildUp, parts(room), timetable);
  }

  /** The same by its parts. */
  Optional<Cost> cost(
      Scenario scenario,
      Knowledge knowledge,
      BuildUp buildUp,
      List<Assessment> parts,
      Timetable timetable) {
    SetOuts.Laid laid = setOuts.of(scenario, knowledge, buildUp);
    return cost(knowledge, amounts(knowledge, buildUp, laid, parts), timetable);
  }

  private Optional<Cost> cost(Knowledge knowledge, List<Amount> amounts, Timetable timetable) {
    List<Cost.Line> lines = new ArrayList<>();
    Set<String> unpriced = new LinkedHashSet<>();
    double total = 0;
    for (Amount amount : amounts) {
      Optional<PriceBook.Price> price = prices.find(amount.item().item());
      if (amount.whole() && price.isPresent()) {
        double cost = Packs.of(amount, price.get()).cost();
        lines.add(new Cost.Line(amount.item().item(), cost));
        total += cost;
      } else {
        unpriced.add(amount.item().item());
      }
    }
    if (amounts.stream().noneMatch(Amount::whole)) {
      return Optional.empty();
    }
    Optional<PriceBook.Price> labour = prices.find(PriceBook.LABOUR);
    if (labour.isPresent()) {
      double hours = Math.ceil(timetable.workHours() / labour.get().pack());
      lines.add(new Cost.Line(PriceBook.LABOUR, hours * labour.get().price()));
      total += hours * labour.get().price();
    }
    double extra = Double.NaN;
    if (unpriced.isEmpty()) {
      Figure contingency = knowledge.figures().get(CONTINGENCY);
      extra = total * contingency.value() / PER_CENT;
      lines.add(new Cost.Line(CONTINGENCY + " of " + contingency.text(), extra));
    }
    return Optional.of(
        new Cost(total, extra, prices.currency(), prices.invented(), lines, List.copyOf(unpriced)));
  }
}
