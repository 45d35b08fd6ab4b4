package underfoot.plan;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underfoot.buildup.Caution;
import underfoot.buildup.ClientLimit;
import underfoot.buildup.OfferedWay;
import underfoot.buildup.Remedy;
import underfoot.buildup.RuledOut;
import underfoot.buildup.Severity;
import underfoot.buildup.StackLayer;
import underfoot.buildup.StopFinding;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.Wording;
import underfoot.measure.Texts;
import underfoot.plan.Advice.Standing;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.BuildUp;

/** Sets every way of building one floor beside the others, the recommended one first. */
final class BuildUpComparison {
  /** Phrases that tell what a way has over the recommended one; the rest is the fact compared. */
  private static final String GAIN = "gain-";

  private static final String LOSS = "loss-";

  private static final double TENTHS = 10;

  /** What is compared, and the fact that tells it. */
  private static final Map<String, String> COMPARED =
      Map.of(
          "cost", "cost",
          "height", "rise most",
          "time", "hours until use",
          "work", "work hours",
          "mass", "mass added",
          "disturbance", "disturbance order",
          "first", "remedies count",
          "usual", "standing order");

  private final Assessment assessment;
  private final Knowledge knowledge;
  private final Planner planner;
  private final Justifier justifier;
  private final Phrases phrases;
  private final Set<String> everywhere;
  private final List<String> compared;

  private BuildUpComparison(Assessment assessment, Planner planner, Justifier justifier) {
    this.assessment = assessment;
    this.knowledge = assessment.knowledge();
    this.planner = planner;
    this.justifier = justifier;
    this.phrases = new Phrases(knowledge.wording());
    this.everywhere = everywhere(assessment);
    this.compared =
        knowledge.wording().ids(GAIN).stream().map(id -> id.substring(GAIN.length())).toList();
  }

  /** All ways that were worked out, in the order of their ranking, and those begun otherwise. */
  static List<ComparedBuildUp> of(Assessment assessment, Planner planner, Justifier justifier) {
    BuildUpComparison ways = new BuildUpComparison(assessment, planner, justifier);
    return assessment.everyBuildUp().stream().map(ways::way).toList();
  }

  /** One of the ways alone. */
  static ComparedBuildUp of(
      Assessment assessment, BuildUp buildUp, Planner planner, Justifier justifier) {
    return new BuildUpComparison(assessment, planner, justifier).way(buildUp);
  }

  private ComparedBuildUp way(BuildUp buildUp) {
    Facts facts = buildUp.facts();
    Optional<BuildUp> chosen = assessment.chosen();
    boolean recommended = chosen.isPresent() && buildUp == chosen.get();
    Timetable timetable = Planner.timetable(assessment, buildUp);
    Set<Derivation> because = new LinkedHashSet<>();
    buildUp.offers().stream().map(OfferedWay::because).forEach(because::add);
    List<String> against = new ArrayList<>();
    for (RuledOut out : buildUp.of(RuledOut.class)) {
      add(against, fill(out.wording(), "", facts).text());
      because.add(out.because());
    }
    for (StopFinding stopFinding : buildUp.of(StopFinding.class)) {
      if (stopFinding.isStop()) {
        add(against, title(stopFinding.wording(), "", facts));
        because.add(stopFinding.because());
      }
    }
    Standing standing =
        recommended
            ? Standing.RECOMMENDED
            : buildUp.stands() ? Standing.SECOND_CHOICE : Standing.RULED_OUT;
    List<String> gains = new ArrayList<>();
    List<String> losses = new ArrayList<>();
    if (!recommended && chosen.isPresent()) {
      compare(facts, chosen.get().facts(), gains, losses);
    }
    WorkingHours working = timetable.working();
    Advice.Heights heights = AdviceMaker.heights(buildUp, facts);
    Optional<LocalDateTime> inUse =
        working.dated() ? Optional.of(working.at(timetable.inUseAfter())) : Optional.empty();
    WayNamed named = WayNamed.of(buildUp, assessment.facts(), phrases);
    return new ComparedBuildUp(
        named.id(),
        named.title(),
        standing,
        buildUp.stack().layers().stream().map(BuildUpComparison::part).toList(),
        heights.aboveOldFloor(),
        heights.doors(),
        buildUp.stack().mass(knowledge.figures()),
        facts.number("joist ratio after"),
        facts.number("deck ratio after"),
        planner.cost(assessment, buildUp, timetable),
        timetable.workHours(),
        timetable.inUseAfter(),
        inUse,
        facts.text("disturbance"),
        first(buildUp),
        risks(buildUp),
        against,
        gains,
        losses,
        justifier.of(because));
  }

  private static ComparedBuildUp.Part part(StackLayer layer) {
    return new ComparedBuildUp.Part(layer.kind().id(), layer.kind().name(), layer.thickness());
  }

  private List<String> first(BuildUp buildUp) {
    List<String> first = new ArrayList<>();
    for (Remedy remedy : buildUp.of(Remedy.class)) {
      add(first, title(remedy.wording(), remedy.about(), buildUp.facts()));
    }
    for (ClientLimit limit : buildUp.of(ClientLimit.class)) {
      add(first, title(limit.wording(), "", buildUp.facts()));
    }
    return first;
  }

  /** The cautions that every way brings. */
  private static Set<String> everywhere(Assessment assessment) {
    Set<String> everywhere = null;
    for (BuildUp one : assessment.everyBuildUp()) {
      Set<String> here = new HashSet<>();
      one.of(Caution.class).forEach(caution -> here.add(caution.wording() + caution.about()));
      if (everywhere == null) {
        everywhere = here;
      } else {
        everywhere.retainAll(here);
      }
    }
    return everywhere == null ? Set.of() : everywhere;
  }

  /** Cautions that this way brings and some other does not. */
  private List<String> risks(BuildUp buildUp) {
    List<String> risks = new ArrayList<>();
    for (Caution caution : buildUp.of(Caution.class)) {
      boolean own = !everywhere.contains(caution.wording() + caution.about());
      if (own && caution.severity() != Severity.NOTE) {
        add(risks, title(caution.wording(), caution.about(), buildUp.facts()));
      }
    }
    return risks;
  }

  private void compare(Facts here, Facts there, List<String> gains, List<String> losses) {
    for (String what : compared) {
      Fact mine = here.find(COMPARED.getOrDefault(what, ""));
      Fact theirs = there.find(COMPARED.getOrDefault(what, ""));
      if (mine == null || theirs == null || !mine.hasNumber() || !theirs.hasNumber()) {
        continue;
      }
      String by = difference(what, mine, theirs);
      if (!by.isEmpty()) {
        boolean gain = mine.number() < theirs.number();
        (gain ? gains : losses)
            .add(
                phrases.say(
                    (gain ? GAIN : LOSS) + what,
                    "by",
                    by,
                    "here",
                    text(what, mine, here),
                    "there",
                    text(what, theirs, there)));
      }
    }
  }

  private static String text(String what, Fact fact, Facts facts) {
    return what.equals("disturbance") ? facts.text("disturbance") : fact.text();
  }

  /** The difference as people tell it; empty if nobody would. */
  private static String difference(String what, Fact mine, Fact theirs) {
    double by = Math.abs(mine.number() - theirs.number());
    String unit = mine.text().substring(mine.text().indexOf(' ') + 1);
    return switch (what) {
      case "time" -> by < 1 ? "" : Planner.span(by);
      case "cost" -> by < 1 ? "" : Texts.money(by, unit);
      case "disturbance", "first", "usual" -> by < 1 ? "" : Long.toString(Math.round(by));
      default -> {
        double tenths = Math.round(by * TENTHS) / TENTHS;
        yield tenths == 0 ? "" : Texts.of(tenths, unit);
      }
    };
  }

  private static void add(List<String> texts, String text) {
    if (!texts.contains(text)) {
      texts.add(text);
    }
  }

  private String title(String wording, String about, Facts facts) {
    return fill(wording, about, facts).title(about);
  }

  private Wording.Filled fill(String wording, String about, Facts facts) {
    return knowledge.wording().fill(wording, knowledge.figures(), facts, about);
  }
}
