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
import underfoot.buildup.Halt;
import underfoot.buildup.Offer;
import underfoot.buildup.Remedy;
import underfoot.buildup.RuledOut;
import underfoot.buildup.Severity;
import underfoot.buildup.StackLayer;
import underfoot.buildup.Wait;
import underfoot.knowledge.Because;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.Wording;
import underfoot.measure.Texts;
import underfoot.plan.Advice.Standing;
import underfoot.reasoning.Candidate;
import underfoot.reasoning.Counsel;

/** Sets every way of building one floor beside the others, the recommended one first. */
final class Ways {
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

  private final Counsel counsel;
  private final Knowledge knowledge;
  private final Planner planner;
  private final Justifier justifier;
  private final Phrases phrases;
  private final Set<String> everywhere;
  private final List<String> compared;

  private Ways(Counsel counsel, Planner planner, Justifier justifier) {
    this.counsel = counsel;
    this.knowledge = counsel.knowledge();
    this.planner = planner;
    this.justifier = justifier;
    this.phrases = new Phrases(knowledge.wording());
    this.everywhere = everywhere(counsel);
    this.compared =
        knowledge.wording().ids(GAIN).stream().map(id -> id.substring(GAIN.length())).toList();
  }

  /** All ways that were worked out, in the order of their ranking. */
  static List<Way> of(Counsel counsel, Planner planner, Justifier justifier) {
    Ways ways = new Ways(counsel, planner, justifier);
    return counsel.candidates().stream().map(ways::way).toList();
  }

  /** One of the ways alone. */
  static Way of(Counsel counsel, Candidate candidate, Planner planner, Justifier justifier) {
    return new Ways(counsel, planner, justifier).way(candidate);
  }

  private Way way(Candidate candidate) {
    Facts facts = candidate.facts();
    Optional<Candidate> chosen = counsel.chosen();
    boolean recommended = chosen.isPresent() && candidate == chosen.get();
    Timetable timetable = Timetable.of(knowledge, facts, candidate.of(Wait.class));
    Set<Because> because = new LinkedHashSet<>();
    candidate.offers().stream().map(Offer::because).forEach(because::add);
    List<String> against = new ArrayList<>();
    for (RuledOut out : candidate.of(RuledOut.class)) {
      add(against, words(out.wording(), "", facts));
      because.add(out.because());
    }
    for (Halt halt : candidate.of(Halt.class)) {
      if (halt.isStop()) {
        add(against, title(halt.wording(), "", facts));
        because.add(halt.because());
      }
    }
    Standing standing =
        recommended
            ? Standing.RECOMMENDED
            : candidate.stands() ? Standing.SECOND_CHOICE : Standing.RULED_OUT;
    List<String> gains = new ArrayList<>();
    List<String> losses = new ArrayList<>();
    if (!recommended && chosen.isPresent()) {
      compare(facts, chosen.get().facts(), gains, losses);
    }
    WorkingHours working = timetable.working();
    Advice.Heights heights = AdviceMaker.heights(candidate, facts);
    Optional<LocalDateTime> inUse =
        working.dated() ? Optional.of(working.at(timetable.inUseAfter())) : Optional.empty();
    return new Way(
        candidate.route(),
        phrases.way(candidate.route()),
        standing,
        candidate.stack().layers().stream().map(Ways::part).toList(),
        heights.aboveOldFloor(),
        heights.doors(),
        candidate.stack().mass(knowledge.figures()),
        facts.number("joist ratio after"),
        facts.number("deck ratio after"),
        planner.cost(counsel.scenario(), knowledge, candidate, timetable),
        timetable.workHours(),
        timetable.inUseAfter(),
        inUse,
        facts.text("disturbance"),
        first(candidate),
        risks(candidate),
        against,
        gains,
        losses,
        justifier.of(because));
  }

  private static Way.Part part(StackLayer layer) {
    return new Way.Part(layer.kind().id(), layer.kind().name(), layer.thickness());
  }

  private List<String> first(Candidate candidate) {
    List<String> first = new ArrayList<>();
    for (Remedy remedy : candidate.of(Remedy.class)) {
      add(first, title(remedy.wording(), remedy.about(), candidate.facts()));
    }
    for (ClientLimit limit : candidate.of(ClientLimit.class)) {
      add(first, title(limit.wording(), "", candidate.facts()));
    }
    return first;
  }

  /** The cautions that every way brings. */
  private static Set<String> everywhere(Counsel counsel) {
    Set<String> everywhere = null;
    for (Candidate one : counsel.candidates()) {
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
  private List<String> risks(Candidate candidate) {
    List<String> risks = new ArrayList<>();
    for (Caution caution : candidate.of(Caution.class)) {
      boolean own = !everywhere.contains(caution.wording() + caution.about());
      if (own && caution.severity() != Severity.NOTE) {
        add(risks, title(caution.wording(), caution.about(), candidate.facts()));
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

  private String words(String wording, String about, Facts facts) {
    return fill(wording, about, facts).text();
  }

  private String title(String wording, String about, Facts facts) {
    Wording.Filled filled = fill(wording, about, facts);
    String title = filled.title().isEmpty() ? filled.text() : filled.title();
    return about.isEmpty() || title.contains(about) ? title : title + " (" + about + ")";
  }

  private Wording.Filled fill(String wording, String about, Facts facts) {
    return knowledge.wording().fill(wording, knowledge.figures(), facts, about);
  }
}
