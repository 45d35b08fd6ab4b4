package underfoot.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import underfoot.buildup.StackLayer;
import underfoot.buildup.Wait;
import underfoot.knowledge.Because;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.PriceBook;
import underfoot.knowledge.Step;
import underfoot.measure.LevelSurvey;
import underfoot.measure.Texts;
import underfoot.reasoning.Appraisal;
import underfoot.reasoning.Candidate;
import underfoot.reasoning.Counsel;
import underfoot.scenario.Reading;
import underfoot.scenario.Scenario;

/** What follows from a build-up: what to buy, in what order to work, what it costs. */
public final class Planner implements Appraisal {
  private static final String CONTINGENCY = "contingency";
  private static final String LEVELLER = "leveller";
  private static final double PER_CENT = 100;

  private final PriceBook prices;
  private final SetOuts setOuts = new SetOuts();

  /**
   * @param prices what things cost
   */
  public Planner(PriceBook prices) {
    this.prices = prices;
  }

  /** What follows from the recommended build-up; nothing if there is none. */
  public Consequences of(Counsel counsel, Justifier justifier) {
    Optional<Candidate> chosen = counsel.chosen();
    if (chosen.isEmpty()) {
      return Consequences.none();
    }
    Candidate candidate = chosen.get();
    Knowledge knowledge = counsel.knowledge();
    SetOuts.Laid laid = setOuts.of(counsel.scenario(), knowledge, candidate);
    List<Amount> amounts = Amounts.of(knowledge, candidate.stack(), candidate.facts(), laid);
    List<QuantityLine> quantities = new ArrayList<>();
    for (Amount amount : amounts) {
      quantities.add(
          new QuantityLine(
              amount.item().item(),
              amount.amount(),
              amount.whole() ? amount.item().unit() : amount.item().unit() + " for each m2",
              packs(amount),
              justifier.of(amount.layer().because(), amount.used())));
    }
    List<ProgrammeStep> programme = new ArrayList<>();
    for (Timed timed : timed(knowledge, candidate.facts(), counsel.of(Wait.class))) {
      programme.add(
          new ProgrammeStep(
              timed.step().id(),
              timed.step().title(),
              timed.start(),
              timed.hours(),
              justifier.of(timed.because(), timed.used())));
    }
    return new Consequences(
        quantities,
        programme,
        cost(knowledge, amounts),
        levels(counsel.scenario(), candidate, justifier),
        beneath(candidate),
        SetOuts.room(counsel.scenario(), candidate.facts()),
        setOuts.justified(counsel.scenario(), knowledge, candidate, justifier));
  }

  /** What the lowest layer lies on, as it is drawn. */
  private static Beneath beneath(Candidate candidate) {
    Facts facts = candidate.facts();
    return new Beneath(
        facts.text("base family"),
        facts.text("base"),
        facts.number("deck thickness"),
        facts.number("joist breadth"),
        facts.number("joist depth"),
        facts.number("joist centres"),
        candidate.stack().replacesDeck());
  }

  /** Where the compound stands how deep, if there is compound and the floor was surveyed. */
  private static Optional<LevelPlan> levels(
      Scenario scenario, Candidate candidate, Justifier justifier) {
    Optional<StackLayer> leveller =
        candidate.stack().layers().stream()
            .filter(layer -> layer.kind().family().equals(LEVELLER))
            .findFirst();
    Optional<LevelSurvey> survey = LevelSurvey.of(scenario);
    double least = candidate.facts().number("pour least");
    if (leveller.isEmpty() || survey.isEmpty() || Double.isNaN(least)) {
      return Optional.empty();
    }
    boolean level = candidate.facts().text("levels wanted").equals("level");
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
  public List<Fact> of(Scenario scenario, Knowledge knowledge, Candidate candidate) {
    SetOuts.Laid laid = setOuts.of(scenario, knowledge, candidate);
    List<Fact> found = new ArrayList<>(laid.measured());
    List<Amount> amounts = Amounts.of(knowledge, candidate.stack(), candidate.facts(), laid);
    cost(knowledge, amounts).ifPresent(cost -> found.addAll(price(knowledge, candidate, cost)));
    List<Timed> timed = timed(knowledge, candidate.facts(), candidate.of(Wait.class));
    if (!timed.isEmpty()) {
      double hours = timed.stream().mapToDouble(one -> one.start() + one.hours()).max().orElse(0);
      found.add(
          Fact.measured(
              "hours until use",
              "",
              Texts.of(hours, "h"),
              hours,
              "the steps of the programme one after another",
              List.of()));
    }
    return found;
  }

  /** What a build-up costs, and by how much that is over the budget where there is one. */
  private List<Fact> price(Knowledge knowledge, Candidate candidate, Cost cost) {
    List<Fact> found = new ArrayList<>();
    Fact total =
        Fact.measured(
            "cost",
            "",
            money(cost.total(), cost.currency()),
            cost.total(),
            "packs × price from the price book, with contingency",
            List.of(knowledge.figures().get(CONTINGENCY)));
    found.add(total);
    Fact budget = candidate.facts().find("budget");
    if (budget != null && budget.hasNumber() && budget.text().contains(cost.currency())) {
      double over = Math.max(0, cost.total() - budget.number());
      found.add(
          Fact.measured(
              "over budget",
              "",
              money(over, cost.currency()),
              over,
              total.text() + " against " + budget.text(),
              List.of(total, budget)));
    }
    return found;
  }

  private static String money(double sum, String currency) {
    return String.format(Locale.ROOT, "%.2f %s", sum, currency);
  }

  /** One step with its time. */
  private record Timed(
      Step step, double start, double hours, List<Because> because, List<Object> used) {}

  private static List<Timed> timed(Knowledge knowledge, Facts facts, List<Wait> waits) {
    Map<String, List<Wait>> byStep = new LinkedHashMap<>();
    for (Wait wait : waits) {
      byStep.computeIfAbsent(wait.step(), id -> new ArrayList<>()).add(wait);
    }
    List<Step> steps = new ArrayList<>();
    byStep.keySet().forEach(id -> steps.add(knowledge.steps().get(id)));
    steps.sort(Comparator.comparingInt(Step::place));
    Fact speed = facts.find("cure factor");
    List<Timed> timed = new ArrayList<>();
    Map<String, Double> ends = new HashMap<>();
    double next = 0;
    for (Step step : steps) {
      double hours = 0;
      List<Because> because = new ArrayList<>();
      List<Object> used = new ArrayList<>();
      for (Wait wait : byStep.get(step.id())) {
        boolean scaled = wait.cures() && speed != null && speed.number() > 0;
        double needed = wait.figure().number() / (scaled ? speed.number() : 1);
        hours = Math.max(hours, needed);
        because.add(wait.because());
        if (scaled && !used.contains(speed)) {
          used.add(speed);
        }
      }
      boolean aside = ends.containsKey(step.from());
      double start = aside ? ends.get(step.from()) : next;
      timed.add(new Timed(step, start, hours, because, used));
      ends.put(step.id(), start + hours);
      next = aside ? next : start + hours;
    }
    timed.sort(Comparator.comparingDouble(Timed::start));
    return timed;
  }

  private Optional<Cost> cost(Knowledge knowledge, List<Amount> amounts) {
    List<Cost.Line> lines = new ArrayList<>();
    double total = 0;
    for (Amount amount : amounts) {
      Optional<PriceBook.Price> price = price(amount);
      if (amount.whole() && price.isPresent()) {
        double cost = packs(amount) * price.get().price();
        lines.add(new Cost.Line(amount.item().item(), cost));
        total += cost;
      }
    }
    if (lines.isEmpty()) {
      return Optional.empty();
    }
    Figure contingency = knowledge.figures().get(CONTINGENCY);
    double extra = total * contingency.value() / PER_CENT;
    lines.add(new Cost.Line("contingency of " + contingency.text(), extra));
    return Optional.of(new Cost(total + extra, prices.currency(), lines));
  }

  private int packs(Amount amount) {
    if (!amount.whole()) {
      return 0;
    }
    return price(amount)
        .map(price -> (int) Math.ceil(amount.amount() / price.pack() - 1e-9))
        .orElse(0);
  }

  private Optional<PriceBook.Price> price(Amount amount) {
    return prices
        .find(amount.item().item())
        .filter(price -> price.unit().equals(amount.item().unit()));
  }
}
