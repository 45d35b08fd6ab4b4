package underfoot.report;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.Advice.Decision;
import underfoot.plan.Justification;
import underfoot.plan.Premise;
import underfoot.scenario.Named;

/**
 * Why something was decided, as a talk: one question after another, each reason once, down to what
 * was said, measured or assumed.
 */
public final class WhyTalk {
  private static final String GAP = "   ";

  private final Knowledge knowledge;
  private final Phrases phrases;
  private final Function<String, List<String>> notSo;
  private final TextPage page;
  private final Set<String> told = new LinkedHashSet<>();
  private final Deque<Question> open = new ArrayDeque<>();

  /** Something that was said without a reason so far. */
  private record Question(String what, Justification answer) {}

  private WhyTalk(Knowledge knowledge, Function<String, List<String>> notSo, TextPage page) {
    this.knowledge = knowledge;
    this.phrases = new Phrases(knowledge.wording());
    this.notSo = notSo;
    this.page = page;
  }

  /**
   * Writes the talk about decisions.
   *
   * @param decisions the decisions
   * @param knowledge where phrases are looked up
   * @param notSo the conditions of a rule that say what must not be so, by the rule's id
   * @param page where it is written
   */
  public static void write(
      List<Decision> decisions,
      Knowledge knowledge,
      Function<String, List<String>> notSo,
      TextPage page) {
    WhyTalk talk = new WhyTalk(knowledge, notSo, page);
    for (Decision one : decisions) {
      page.blank();
      page.bold(talk.phrases.say("talk-why", "what", one.heading()) + "  [" + one.id() + "]");
      String words = WhyReport.what(one, talk.phrases);
      if (!words.isEmpty()) {
        page.para(words);
      }
      one.because().forEach(talk::answer);
    }
    talk.goOn();
    talk.end();
  }

  /**
   * Writes the talk that begins at a rule.
   *
   * @param start where the rule decided
   * @param decided what rests on it, in a few words each
   * @param knowledge where phrases are looked up
   * @param notSo the conditions of a rule that say what must not be so, by the rule's id
   * @param page where it is written
   */
  public static void from(
      List<Justification> start,
      List<String> decided,
      Knowledge knowledge,
      Function<String, List<String>> notSo,
      TextPage page) {
    WhyTalk talk = new WhyTalk(knowledge, notSo, page);
    for (Justification one : start) {
      talk.ask(of(one), one == start.get(0) ? "talk-why" : "talk-and-why");
    }
    page.blank();
    page.para(talk.phrases.say("talk-decided", "what", String.join("; ", decided)));
    talk.goOn();
    talk.end();
  }

  /** The places in an advice's chains where a rule decided, each once. */
  public static List<Justification> of(List<? extends Decision> decisions, String rule) {
    Map<String, Justification> found = new LinkedHashMap<>();
    Set<Justification> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    decisions.forEach(one -> one.because().forEach(why -> search(why, rule, seen, found)));
    return List.copyOf(found.values());
  }

  private static void search(
      Justification why, String rule, Set<Justification> seen, Map<String, Justification> found) {
    if (!seen.add(why)) {
      return;
    }
    if (why.rule().id().equalsIgnoreCase(rule)) {
      found.putIfAbsent(why.rule().key() + why.facts(), why);
    }
    why.restsOn().forEach(one -> search(one, rule, seen, found));
    why.facts().forEach(fact -> search(fact, rule, seen, found));
  }

  private static void search(
      Premise fact, String rule, Set<Justification> seen, Map<String, Justification> found) {
    if (fact.because() != null) {
      search(fact.because(), rule, seen, found);
    }
    fact.uses().forEach(used -> search(used, rule, seen, found));
  }

  private void goOn() {
    while (!open.isEmpty()) {
      ask(open.poll(), "talk-and-why");
    }
  }

  private void end() {
    page.blank();
    page.faint(phrases.say("talk-end"));
  }

  private void ask(Question one, String phrase) {
    if (told.contains(key(one.answer()))) {
      return;
    }
    page.blank();
    page.bold(phrases.say(phrase, "what", one.what()));
    answer(one.answer());
  }

  private static Question of(Justification one) {
    return new Question(one.rule().title(), one);
  }

  private static String key(Justification one) {
    return one.rule().key() + one.facts();
  }

  /** The reason, what it went by, and what was not so. */
  private void answer(Justification one) {
    if (!told.add(key(one))) {
      return;
    }
    page.para(
        "",
        GAP,
        phrases.say(
            "talk-reason",
            "reason",
            one.rule().reason(),
            "rule",
            one.rule().id(),
            "status",
            one.source().status()),
        TextPage.Tone.PLAIN);
    List<String> went = new ArrayList<>();
    for (Premise fact : one.facts()) {
      String about = Named.of(fact.fact()).about();
      if (about.isEmpty() || !about.equals(fact.value())) { // a thing is itself
        went.add(said(fact));
      }
      deeper(fact);
    }
    for (Figure figure : one.figures()) {
      went.add(phrases.say("talk-figure", "what", figure.description(), "is", figure.text()));
    }
    if (!went.isEmpty()) {
      page.para(
          GAP,
          GAP,
          phrases.say("talk-went-by", "facts", String.join("; ", went)),
          TextPage.Tone.PLAIN);
    }
    List<String> not = notSo.apply(one.rule().id());
    if (!not.isEmpty()) {
      String words = String.join("; ", not.stream().map(Texts::lower).toList());
      page.para(GAP, GAP, phrases.say("talk-not-so", "what", words), TextPage.Tone.PLAIN);
    }
    WhyReport.deeper(one).forEach(rule -> open.add(of(rule)));
  }

  private void deeper(Premise fact) {
    if (fact.because() != null) {
      open.add(
          new Question(
              phrases.say("talk-concluded", "fact", named(fact), "value", fact.value()),
              fact.because()));
    }
    fact.uses().forEach(this::deeper);
  }

  /** What a fact is called, and of which layer it is. */
  private String named(Premise fact) {
    Named named = Named.of(fact.fact());
    String about = named.about();
    return about.isEmpty()
        ? named.name()
        : phrases.say(
            "talk-of",
            "fact",
            named.name(),
            "what",
            knowledge.layers().has(about)
                ? Texts.lower(knowledge.layers().get(about).name())
                : about);
  }

  private String said(Premise fact) {
    String id =
        switch (fact.from()) {
          case SCENARIO, PROPOSAL -> fact.line() > 0 ? "talk-said" : "talk-unsaid";
          case MEASURED -> "talk-measured";
          case ASSUMED -> "talk-assumed";
          case CONCLUDED -> "talk-concluded";
        };
    return phrases.say(
        id,
        "fact",
        named(fact),
        "value",
        fact.value(),
        "line",
        Integer.toString(fact.line()),
        "how",
        fact.how());
  }
}
