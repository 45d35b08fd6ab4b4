package underfoot.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.knowledge.Figure;
import underfoot.knowledge.From;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.Advice;
import underfoot.plan.Advice.Decision;
import underfoot.plan.Justification;
import underfoot.plan.Premise;
import underfoot.quantity.Nearest;
import underfoot.report.TextPage.Tone;

/** The full chain from a decision down to what the scenario states and the figures say. */
public final class WhyReport {
  private static final String BRANCH = "├─ ";
  private static final String LAST = "└─ ";
  private static final String TRUNK = "│  ";
  private static final String GAP = "   ";
  private static final int DEEPEST_INDENT = 24;

  /** A formula of more letters than this is cut in the normal form. */
  private static final int FORMULA = 90;

  private final Knowledge knowledge;
  private final Phrases phrases;
  private final TextPage page;
  private final Map<Object, Boolean> told = new IdentityHashMap<>();
  private final Set<String> saidBefore = new HashSet<>();
  private final Detail detail;

  private WhyReport(Knowledge knowledge, Detail detail, TextPage page) {
    this.knowledge = knowledge;
    this.detail = detail;
    this.phrases = new Phrases(knowledge.wording());
    this.page = page;
  }

  /**
   * The decisions an id may mean: those of that id, else those that the rule of that id decided.
   *
   * @return empty if it means none
   */
  public static List<Decision> find(Advice advice, String id) {
    List<Decision> found = new ArrayList<>();
    List<Decision> byRule = new ArrayList<>();
    for (Decision one : advice.decisions()) {
      if (one.id().equals(id)) {
        found.add(one);
      }
      if (one.because().stream().anyMatch(why -> why.rule().id().equalsIgnoreCase(id))) {
        byRule.add(one);
      }
    }
    return found.isEmpty() ? byRule : found;
  }

  /** The ids most like one that means nothing; at most three, the nearest first. */
  public static List<String> nearest(Advice advice, String id) {
    Set<String> ids = new LinkedHashSet<>();
    advice.decisions().forEach(one -> ids.add(one.id()));
    List<String> sorted = new ArrayList<>(ids);
    String cut = id.length() > 80 ? id.substring(0, 80) : id;
    sorted.sort(Comparator.comparingInt(one -> Nearest.distance(one, cut)));
    return sorted.subList(0, Math.min(3, sorted.size()));
  }

  /**
   * Writes the chains of decisions.
   *
   * @param decisions the decisions
   * @param knowledge where sources and phrases are looked up
   * @param page where they are written
   */
  public static void write(List<Decision> decisions, Knowledge knowledge, TextPage page) {
    write(decisions, knowledge, Detail.FULL, page);
  }

  /**
   * Writes the chains of decisions in as much detail as wanted. The short form has the rules that
   * decided and their reasons; the normal one the chain down to the scenario; the full one all that
   * is known of each figure and formula besides.
   *
   * @param decisions the decisions
   * @param knowledge where sources and phrases are looked up
   * @param detail how much is told
   * @param page where they are written
   */
  public static void write(
      List<Decision> decisions, Knowledge knowledge, Detail detail, TextPage page) {
    WhyReport report = new WhyReport(knowledge, detail, page);
    for (Decision one : decisions) {
      report.decision(one);
    }
    if (detail == Detail.NORMAL) {
      page.blank();
      page.faint(report.phrases.say("why-more"));
    }
  }

  private void decision(Decision one) {
    page.blank();
    page.bold(one.heading() + "  [" + one.id() + "]");
    String words = what(one, phrases);
    if (!words.isEmpty()) {
      page.para(words);
    }
    if (detail == Detail.SHORT) {
      for (Justification why : one.because()) {
        if (!saidBefore.add(why.rule().id() + ' ' + why.rule().reason())) {
          continue; // it was the reason of something above
        }
        String reason =
            phrases.say(
                "why-in-short",
                "reason",
                why.rule().reason(),
                "rule",
                why.rule().id(),
                "status",
                why.source().status());
        page.para(" - ", GAP, reason, Tone.PLAIN);
      }
      return;
    }
    for (int i = 0; i < one.because().size(); i++) {
      justification(one.because().get(i), "", i == one.because().size() - 1);
    }
  }

  /** What was decided, in words; empty if its heading says it all. */
  static String what(Decision one, Phrases phrases) {
    String words = "";
    if (one instanceof Advice.Layer layer) {
      words =
          layer.material()
              + (layer.thickness().max() > 0 ? ", " + Texts.whole(layer.thickness().mean()) : "");
    } else if (one instanceof Advice.RemedyNote remedy) {
      words = remedy.text();
    } else if (one instanceof Advice.CautionNote caution) {
      words = caution.text();
    } else if (one instanceof Advice.HaltNote stopFinding) {
      words = stopFinding.text();
    } else if (one instanceof Advice.Alternative other) {
      words = other.text();
    } else if (one instanceof Advice.Coverage coverage) {
      words =
          phrases.say(
              "coverage-target",
              "target",
              underfoot.measure.Texts.of(coverage.targetPercent(), "%"));
    } else if (one instanceof Advice.Assumption assumption) {
      words = phrases.say("assumed", "fact", assumption.called(), "value", assumption.assumed());
    }
    return words;
  }

  /** A branch of the tree: something to write once its place is known. */
  private interface Branch {
    void write(String indent, boolean last);
  }

  private void grow(List<Branch> branches, String indent) {
    for (int i = 0; i < branches.size(); i++) {
      branches.get(i).write(indent, i == branches.size() - 1);
    }
  }

  /** Further in than this the tree would leave no room for words. */
  private static String below(String indent, boolean last) {
    return indent.length() >= DEEPEST_INDENT ? indent : indent + (last ? GAP : TRUNK);
  }

  private void entry(String indent, boolean last, String words, boolean more) {
    String rest = indent + (last ? GAP : TRUNK) + (more ? TRUNK : GAP);
    page.para(indent + (last ? LAST : BRANCH), rest, words, Tone.PLAIN);
  }

  private void justification(Justification one, String indent, boolean last) {
    String name = "‹" + one.rule().id() + "› " + one.rule().title();
    if (told.put(one, true) != null) {
      entry(indent, last, name + " - " + phrases.say("as-shown-above"), false);
      return;
    }
    List<Branch> branches = new ArrayList<>();
    for (Premise fact : one.facts()) {
      branches.add((at, end) -> premise(fact, at, end));
    }
    Set<Figure> ofFacts = new LinkedHashSet<>();
    one.facts().forEach(fact -> gatherFigures(fact, ofFacts));
    for (Figure figure : one.figures()) {
      if (detail == Detail.FULL || !ofFacts.contains(figure)) {
        branches.add((at, end) -> figure(figure, at, end));
      }
    }
    for (Justification earlier : deeper(one)) {
      branches.add((at, end) -> justification(earlier, at, end));
    }
    entry(indent, last, name, !branches.isEmpty());
    String inner = below(indent, last);
    String bar = branches.isEmpty() ? GAP : TRUNK;
    page.para(
        inner + bar,
        inner + bar,
        phrases.say("why-reason", "reason", one.rule().reason()),
        Tone.PLAIN);
    boolean root = indent.isEmpty();
    if (root || detail == Detail.FULL) {
      page.para(inner + bar, inner + bar, source(one, phrases), Tone.PLAIN);
    }
    grow(branches, inner);
  }

  /** What a decision rests on that is not told with its facts. */
  static List<Justification> deeper(Justification one) {
    List<Justification> deeper = new ArrayList<>(one.restsOn());
    one.facts().forEach(fact -> removeTold(fact, deeper));
    return deeper;
  }

  private static void removeTold(Premise premise, List<Justification> deeper) {
    deeper.remove(premise.because());
    premise.uses().forEach(used -> removeTold(used, deeper));
  }

  /** The source of a decision, and how well it is known. */
  static String source(Justification one, Phrases phrases) {
    return phrases.say(
        "why-source", "source", one.source().title(), "status", one.source().status());
  }

  /** A fact, its value and where it is from. */
  static String said(Premise fact, Phrases phrases) {
    String from = fact.from().word();
    if (fact.from() == From.SCENARIO) {
      from =
          fact.line() > 0
              ? phrases.say("why-line", "line", Integer.toString(fact.line()))
              : phrases.say("why-left-out");
    }
    return fact.fact() + ": " + fact.value() + " (" + from + ")";
  }

  /** All that is known of a figure. */
  static String said(Figure figure, Knowledge knowledge) {
    String source = knowledge.source(figure.source()).title();
    String known = figure.name() + " = " + figure.text() + ": " + figure.description();
    String note = figure.note().isEmpty() ? "" : ". " + figure.note();
    return known + "; " + source + " (" + figure.status() + ")" + note;
  }

  /** Whether a fact rests on something that can be told. */
  static boolean isDeeper(Premise fact) {
    return fact.because() != null || !fact.uses().isEmpty() || !fact.figures().isEmpty();
  }

  /** The figures told with a fact. */
  private static void gatherFigures(Premise premise, Set<Figure> shown) {
    shown.addAll(premise.figures());
    premise.uses().forEach(used -> gatherFigures(used, shown));
  }

  private void premise(Premise fact, String indent, boolean last) {
    String words = said(fact, phrases);
    boolean deeper = isDeeper(fact);
    boolean again = deeper && told.put(fact, true) != null;
    if (!fact.how().isEmpty() && (detail == Detail.FULL || !again)) {
      boolean whole = detail == Detail.FULL || fact.how().length() <= FORMULA;
      words += " = " + (whole ? fact.how() : fact.how().substring(0, FORMULA) + "…");
    }
    if (again) {
      entry(indent, last, words + " - " + phrases.say("as-shown-above"), false);
      return;
    }
    entry(indent, last, words, deeper);
    List<Branch> branches = new ArrayList<>();
    for (Premise used : fact.uses()) {
      branches.add((at, end) -> premise(used, at, end));
    }
    for (Figure figure : fact.figures()) {
      branches.add((at, end) -> figure(figure, at, end));
    }
    if (fact.because() != null) {
      branches.add((at, end) -> justification(fact.because(), at, end));
    }
    grow(branches, below(indent, last));
  }

  private void figure(Figure figure, String indent, boolean last) {
    String words =
        detail == Detail.FULL
            ? said(figure, knowledge)
            : figure.name() + " = " + figure.text() + " (" + figure.status() + ")";
    entry(indent, last, words, false);
  }
}
