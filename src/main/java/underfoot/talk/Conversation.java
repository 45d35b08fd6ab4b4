package underfoot.talk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underfoot.buildup.Remedy;
import underfoot.buildup.Verdict;
import underfoot.knowledge.InterviewBook;
import underfoot.knowledge.InterviewBook.Taken;
import underfoot.knowledge.KnowledgeFault;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.RuleNote;
import underfoot.measure.Texts;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.Interview;
import underfoot.reasoning.WhatIf;
import underfoot.scenario.Answers;
import underfoot.scenario.FactBook;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Fault;
import underfoot.scenario.Kind;
import underfoot.scenario.Place;
import underfoot.scenario.ScenarioFaults;

/**
 * The conversation, whoever holds it, a terminal or a page: what is asked next, what an answer is
 * understood to be, why something is asked. It keeps nothing between two sayings: all that is known
 * is handed in and out. Safe to share between threads.
 */
public final class Conversation {
  private static final int CHANGES_TOLD = 4;
  private static final int RULES_TOLD = 5;
  private static final int CHANGES_OF_UNKNOWN = 2;
  private static final int TOLD_OF_EACH = 2;
  private static final String NAME = "scenario";

  /** How a complaint about a file says what may have been meant. */
  private static final Pattern WRITE = Pattern.compile("write: [^:\n]+: ([^\n]+)(\n.*)?");

  private final Interview interview;
  private final InterviewBook book;
  private final Phrases phrases;
  private final FactBook facts;
  private final Understanding understanding;

  /**
   * @param interview what still matters
   * @param phrases the sentences of the rule base
   * @throws KnowledgeFault if the words people are understood by are at fault
   */
  public Conversation(Interview interview, Phrases phrases) throws KnowledgeFault {
    this.interview = interview;
    this.book = interview.book();
    this.phrases = phrases;
    this.facts = interview.advisor().knowledge().facts();
    this.understanding = new Understanding(book, facts);
  }

  /** Nothing said yet but what can be said in one way only. */
  public Known begun() {
    return begun(new Known(Answers.none(facts), Map.of()));
  }

  /** What was said before, and what can be said in one way only. */
  public Known begun(Known known) {
    return new Known(Interview.begun(known.answers()), known.taken(), known.units());
  }

  /** What still matters. */
  public Interview interview() {
    return interview;
  }

  // --- what is asked

  /** The next question; empty if no answer to any could change anything. */
  public Optional<Asked> next(Known known) {
    return interview.next(named(known).answers()).map(place -> asked(known, place));
  }

  /** A question as it is put. */
  public Asked asked(Known known, Place place) {
    return Asked.of(book, known, place);
  }

  /** The place of an id, if there is such a one in what is known. */
  public Optional<Place> place(Known known, String id) {
    return known.answers().places().stream().filter(place -> place.id().equals(id)).findFirst();
  }

  /** The same with a name, if only that is missing: nobody need think of one. */
  public Known named(Known known) {
    List<Place> missing = known.answers().missing();
    if (missing.size() != 1 || !missing.get(0).fact().key().equals(NAME)) {
      return known;
    }
    try {
      return known.with(Heard.One.sure(missing.get(0), AnswerFile.name(known.answers())));
    } catch (ScenarioFaults e) {
      throw new IllegalStateException("the name of a floor is refused", e);
    }
  }

  /** What was not known, or only by and large, in the order it is asked. */
  public List<Place> unsure(Known known) {
    return interview.inOrder(known.answers()).stream()
        .filter(
            place ->
                known.isGuess(place)
                    || known.answers().said(place).map(Answers.UNKNOWN::equals).orElse(false))
        .toList();
  }

  /**
   * What is left when nothing is left that could hurt, stop the work or turn the way: a word on
   * whether to go on.
   */
  public String offer(Known known) {
    int left = interview.likely(known.answers()).size();
    boolean stopped =
        interview
            .assessment(known.answers())
            .map(one -> one.verdict().compareTo(Verdict.SOUND_ONCE_PUT_RIGHT) > 0)
            .orElse(false);
    return phrases.say(stopped ? "ask-offer-stopped" : "ask-offer")
        + ' '
        + phrases.say("ask-offer-left", "left", left < 2 ? "One or two" : "About " + left);
  }

  // --- what is said

  /** The command a saying is, such as {@code back}; empty if it is none. */
  public String command(String words) {
    return understanding.command(words);
  }

  /** Whether a saying is a yes ({@code yes}) or a no ({@code no}) and nothing else. */
  public boolean is(String sort, String words) {
    return understanding.is(sort, words);
  }

  /**
   * Takes a saying.
   *
   * @param known what is known
   * @param asked what was asked
   * @param words what was said; nothing for not knowing
   * @param meant what a yes means, if the last saying was objected to so; else empty
   */
  public Reply say(Known known, Place asked, String words, String meant) {
    FactDefinition fact = asked.fact();
    boolean yes = !meant.isEmpty() && is("yes", words);
    Heard heard = understanding.of(asked, yes ? meant : words, known);
    boolean unknown = !heard.facts().isEmpty() && isUnknown(heard.facts().get(0), asked, words);
    if (unknown && known.isGuess(asked)) {
      return new Reply(known, List.of(), true, "", "");
    }
    if (unknown && fact.required() && book.guess(fact).isEmpty()) {
      String look = fact.look().isEmpty() ? "" : "How to find out: " + Texts.sentence(fact.look());
      String hint = book.help(fact).text("hint");
      String how = (look + ' ' + (hint.isEmpty() ? "" : hint + ".")).strip();
      String objection = "Without this nothing can be advised. " + how;
      return new Reply(known, List.of(), false, objection.strip(), "");
    }
    Known now = known;
    for (Heard.One one : heard.facts()) {
      // What is said anew of one thing is held against itself, not against what it was before.
      now = asked.isOfEntry(one.place().fact()) ? now.without(one.place()) : now;
    }
    List<Reply.Told> told = new ArrayList<>();
    String objection = heard.objection();
    for (Heard.One one : heard.facts()) {
      boolean first = one.place().equals(asked) || asked.isOfEntry(one.place().fact());
      try {
        now = now.with(one);
        told.add(told(now, one, one.place().equals(asked)));
      } catch (ScenarioFaults e) {
        objection = first ? objection(one.place().fact(), e) : objection; // others are asked
        if (first) {
          return new Reply(known, List.of(), false, objection, "");
        }
      }
    }
    return new Reply(now, told, objection.isEmpty(), objection, heard.meant());
  }

  private boolean isUnknown(Heard.One one, Place asked, String words) {
    boolean guess = one.taken().equals(book.guess(asked.fact()).orElse(null));
    return one.place().equals(asked)
        && (one.value().equals(Answers.UNKNOWN)
            || guess && (words.isBlank() || is("unknown", words)));
  }

  private static Reply.Told told(Known now, Heard.One one, boolean asked) {
    Taken taken = one.taken();
    FactDefinition fact = one.place().fact();
    boolean shape = fact.kind() == Kind.POINTS || fact.kind() == Kind.LIST;
    String value = shape ? one.value() : now.answers().said(one.place()).orElse(one.value());
    return new Reply.Told(
        one.place().id(), called(one.place()), value, !taken.certain(), taken.since(), asked);
  }

  /** What a fact is called, with the name of what it is of. */
  public static String called(Place place) {
    String called = place.fact().called();
    return place.zone().isEmpty() ? called : called + ", " + place.zone();
  }

  /** The objection to an answer that is none, with how to say it. */
  private static String objection(FactDefinition fact, ScenarioFaults faults) {
    Fault fault = faults.faults().get(0);
    String what = fault.what().replaceFirst("^" + Pattern.quote(fact.word()) + ": ", "");
    String how = fault.how().strip();
    Matcher write = WRITE.matcher(how);
    if (write.matches()) {
      how = "Did you mean " + write.group(1) + "?";
    } else if (how.startsWith("choices: ")) {
      how = "Say one of the choices, by its name or number";
    } else if (how.startsWith("for example: ")) {
      how = "For example: " + fact.example();
    }
    String both = Texts.capital(what) + (how.isEmpty() ? "" : ". " + Texts.capital(how));
    return Texts.sentence(both.replace('\n', ' '));
  }

  // --- what is told

  /** Why a place is asked for, a line each; never empty. */
  public List<String> why(Known known, Place place) {
    String always = book.help(place.fact()).text("always");
    List<String> because = new ArrayList<>();
    if (!always.isEmpty()) {
      because.add(Texts.capital(Texts.sentence(always)));
    }
    Known floor = named(known);
    if (!floor.answers().complete() || place.fact().required()) {
      because.add(phrases.say("ask-why-required", "means", place.fact().means()));
      return because;
    }
    Interview.Why why = interview.why(floor.answers(), place);
    because.addAll(changes(place.fact(), why.changes(), CHANGES_TOLD));
    if (because.isEmpty()) {
      because.add(phrases.say("ask-why-with-others"));
    }
    List<RuleNote> rules = why.rules();
    for (RuleNote rule : rules.subList(0, Math.min(RULES_TOLD, rules.size()))) {
      because.add(rule.reason() + ". ‹" + rule.id() + "›");
    }
    if (rules.size() > RULES_TOLD) {
      int more = rules.size() - RULES_TOLD;
      because.add("And " + more + (more == 1 ? " more rule reads it." : " more rules read it."));
    }
    return because;
  }

  private List<String> changes(FactDefinition fact, List<WhatIf.Otherwise> changes, int most) {
    return changes.stream().limit(most).map(one -> otherwise(fact, one)).toList();
  }

  /** What another answer would change, in a sentence. */
  private String otherwise(FactDefinition fact, WhatIf.Otherwise one) {
    String words = one.clause(TOLD_OF_EACH);
    String sentence =
        switch (fact.kind()) {
          case POINTS, RECTANGLE, READINGS, LIST -> phrases.say("if-given", "changes", words);
          case YES_NO ->
              phrases.say(one.value().equals("yes") ? "if-so" : "if-not", "changes", words);
          default -> {
            String value = one.value().replaceAll("[\\[\\]]", "");
            yield phrases.say("if-said", "value", value, "changes", words);
          }
        };
    return Texts.capital(sentence) + ".";
  }

  /** What not knowing costs, a line each: what was taken, what hangs on it, how to find out. */
  public List<String> cost(Known known, Place place) {
    List<String> lines = new ArrayList<>();
    Known floor = named(known);
    if (!floor.answers().complete()) {
      return lines;
    }
    FactDefinition fact = place.fact();
    List<WhatIf.Otherwise> hangs = interview.why(floor.answers(), place).changes();
    String taken =
        interview
            .assumed(floor.answers(), place)
            .map(value -> "Not known: taken as " + value)
            .orElse("Not known: " + (fact.look().isEmpty() ? "left open" : "to be found out"));
    lines.add(taken + (hangs.isEmpty() ? "." : ". What hangs on it:"));
    lines.addAll(changes(fact, hangs, CHANGES_OF_UNKNOWN));
    if (!fact.look().isEmpty()) {
      lines.add("To find out: " + Texts.sentence(fact.look()));
    }
    return lines;
  }

  /** What to find out first, the weightiest first. */
  public List<OpenPoint> first(Known known, int most) {
    return first(known, most, () -> false);
  }

  /** The same, unless nobody waits for it any more; then what is told is not all. */
  public List<OpenPoint> first(Known known, int most, BooleanSupplier late) {
    return OpenPoint.of(interview, phrases, named(known), most, late);
  }

  /** The advice in one line: the answer, the way, the rise, and how much comes first. */
  public String preview(Assessment assessment) {
    StringBuilder line = new StringBuilder(assessment.verdict().word().replace('-', ' '));
    assessment
        .chosen()
        .ifPresent(
            chosen -> {
              line.append("; ").append(phrases.way(chosen.way()));
              long least = Math.round(chosen.stack().rise().min());
              long most = Math.round(chosen.stack().rise().max());
              line.append("; up by ").append(least);
              line.append(least == most ? "" : " to " + most).append(" mm");
            });
    long first =
        assessment.of(Remedy.class).stream()
            .map(one -> one.wording() + '@' + one.about())
            .distinct()
            .count();
    if (first > 0) {
      line.append("; ").append(first).append(first == 1 ? " thing" : " things").append(" first");
    }
    int assumed = WhatIf.assumed(assessment).size();
    if (assumed > 0) {
      line.append("; ").append(assumed).append(" assumed");
    }
    return line.toString();
  }
}
