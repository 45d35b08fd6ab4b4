package underfoot.cli;

import java.io.PrintWriter;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntSupplier;
import underfoot.buildup.Remedy;
import underfoot.buildup.Verdict;
import underfoot.knowledge.InterviewBook;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.RuleNote;
import underfoot.measure.Texts;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.Interview;
import underfoot.reasoning.WhatIf;
import underfoot.report.TextPage;
import underfoot.report.TextPage.Tone;
import underfoot.scenario.Answers;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Kind;
import underfoot.scenario.Place;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.StatedFact;

/** The interview at a terminal: one question after another, each of which still matters. */
final class TerminalInterview {
  private static final int RULES_TOLD = 5;
  private static final int CHANGES_TOLD = 4;
  private static final int CHANGES_OF_UNKNOWN = 2;
  private static final int TOLD_OF_EACH = 2;
  private static final int FIRST_THINGS = 3;
  private static final int EASY_TO_READ = 100;
  private static final String PROMPT = "> ";
  private static final List<String> COMMANDS =
      List.of("don't know", "help", "why", "back", "so far", "save", "enough", "quit");

  private final Interview interview;
  private final Phrases phrases;
  private final Prompt prompt;
  private final PrintWriter out;
  private final IntSupplier width;
  private final boolean colour;
  private final Deque<Step> before = new ArrayDeque<>();

  /** What was taken for want of knowing better, by place. */
  private Map<String, InterviewBook.Taken> taken = new LinkedHashMap<>();

  /** What is asked again, because it was only taken. */
  private Deque<Place> again = new ArrayDeque<>();

  private Answers answers;
  private String lastPart = "";
  private String lastPreview = "";
  private boolean offered;
  private int asked;

  /** What was known before a question was answered. */
  private record Step(
      Answers answers, Map<String, InterviewBook.Taken> taken, Deque<Place> again) {}

  /** What a line said at a question led to. */
  private enum Next {
    /** The same question again. */
    SAME,
    /** Another question. */
    OTHER,
    /** The advice. */
    ADVICE,
    /** Nothing more. */
    LEAVE
  }

  /** How the talk ended. */
  enum End {
    /** Nothing more matters, or enough was said. */
    DONE,
    /** The person left. */
    LEFT
  }

  /** What is done outside the talk. */
  interface Outside {
    /** Saves, to the name given or, if that is empty, to a name of its own; tells where. */
    String save(String name) throws UserError;

    /** The advice as things stand, in short. */
    String advice() throws UserError;
  }

  /**
   * @param interview what is asked
   * @param phrases the sentences of the rule base
   * @param prompt where lines come from
   * @param out where words go
   * @param width how many columns there are, asked before each paragraph
   * @param colour whether colours are wanted
   * @param begun what was said before
   * @param taken what of that was only taken, by place
   */
  TerminalInterview(
      Interview interview,
      Phrases phrases,
      Prompt prompt,
      PrintWriter out,
      IntSupplier width,
      boolean colour,
      Answers begun,
      Map<String, InterviewBook.Taken> taken) {
    this.interview = interview;
    this.phrases = phrases;
    this.prompt = prompt;
    this.out = out;
    this.width = () -> Math.min(EASY_TO_READ, width.getAsInt());
    this.colour = colour;
    this.answers = begun;
    this.taken.putAll(taken);
  }

  Answers answers() {
    return answers;
  }

  /** The file of the answers, with the questions and what is not known as comments. */
  String file() {
    return AnswerFile.text(answers, taken);
  }

  /** Asks until nothing more matters. */
  End hold(Outside outside) {
    say(
        "Answer in your own words, with units: 9 mm, 3/4 in, 3.6 m. Press Enter where you do not"
            + " know; you are told what that costs. At any question you can also say: help, why,"
            + " back, so far (the advice as it stands), save, enough (no more questions), quit.",
        Tone.FAINT);
    blank();
    if (!askAgain()) {
      return End.LEFT;
    }
    Optional<Place> next = next();
    while (next.isPresent()) {
      Place place = next.get();
      Next led = Next.OTHER;
      if (!offered && again.isEmpty() && !interview.decides(answers, place)) {
        offered = true;
        led = offer(outside);
      }
      if (led == Next.OTHER) {
        asked++;
        ask(place);
        led = answer(place, outside);
      }
      if (led == Next.ADVICE) {
        return End.DONE;
      } else if (led == Next.LEAVE) {
        return End.LEFT;
      }
      preview();
      next = next();
    }
    say(
        asked == 0
            ? "Nothing need be asked: no answer would change the advice."
            : "That is all: no other answer would change the advice.",
        Tone.FAINT);
    blank();
    return End.DONE;
  }

  /** The next question; a floor nobody named is named by what it is. */
  private Optional<Place> next() {
    if (!again.isEmpty()) {
      return Optional.of(again.peek());
    }
    Optional<Place> next = interview.next(answers);
    if (next.isPresent() && next.get().fact().key().equals("scenario")) {
      try {
        answers = answers.with(next.get(), name(answers));
      } catch (ScenarioFaults e) {
        return next;
      }
      return interview.next(answers);
    }
    return next;
  }

  /** Takes up what an earlier talk left open; false if the person leaves. */
  private boolean askAgain() {
    List<Place> unsure = new ArrayList<>();
    List<Place> unknown = new ArrayList<>();
    for (Place place : interview.inOrder(answers)) {
      if (taken.containsKey(place.id())) {
        unsure.add(place);
      } else if (answers.said(place).map(Answers.UNKNOWN::equals).orElse(false)) {
        unknown.add(place);
      }
    }
    int open = unsure.size() + unknown.size();
    if (open == 0) {
      return true;
    }
    say(
        (open == 1 ? "One thing was" : open + " things were")
            + " not known, or only by and large, when this was written.",
        Tone.PLAIN);
    while (true) {
      String said = prompt.line("Ask them again? (yes, or Enter for no) ", List.of("yes", "no"));
      String word = said == null ? "" : word(said);
      if (List.of("yes", "y").contains(word)) {
        again.addAll(unsure);
        unknown.forEach(place -> answers = answers.without(place));
        return true;
      } else if (List.of("", "no", "n").contains(word)) {
        return true;
      } else if (isQuit(word)) {
        return false;
      }
    }
  }

  /** What is left is finer: whether to go on. */
  private Next offer(Outside outside) {
    int left = interview.likely(answers).size();
    boolean stopped = interview.assessment(answers).map(one -> !built(one.verdict())).orElse(false);
    say(
        (stopped
                ? "As things stand the floor is not to be tiled, and no likely answer to what is left"
                    + " changes that."
                : "None of the questions that are left is likely to stop the work or to change the"
                    + " way of building.")
            + (left < 2 ? " One or two" : " About " + left)
            + " more would make the advice finer: thicknesses, classes, what is put right first.",
        Tone.PLAIN);
    while (true) {
      String said =
          prompt.line("Go on? (yes, or Enter for the advice) ", List.of("yes", "no", "back"));
      String word = said == null ? "" : word(said);
      if (List.of("yes", "y", "more", "go on").contains(word)) {
        return Next.OTHER;
      } else if (List.of("", "no", "n").contains(word) || isEnough(word)) {
        return Next.ADVICE;
      } else if (isQuit(word)) {
        return Next.LEAVE;
      } else if (word.equals("back") && back()) {
        offered = false;
        return Next.SAME;
      } else if (word.equals("save") || word.startsWith("save ")) {
        save(outside, said.strip().substring("save".length()).strip());
      } else {
        say("Say yes or no; also back, save or quit.", Tone.PLAIN);
      }
    }
  }

  private void ask(Place place) {
    String part = part(place.fact());
    if (!part.equals(lastPart)) {
      say(part, Tone.BOLD);
      lastPart = part;
    }
    put(place);
    FactDefinition fact = place.fact();
    int n = 1;
    for (String choice : choices(fact)) {
      String more = interview.book().choice(fact, choice);
      String number = String.format(Locale.ROOT, "  %2d  ", n++);
      line(number + choice + (more.isEmpty() ? "" : " - " + more), "       ");
    }
    String how = how(place);
    if (!how.isEmpty()) {
      say(how, Tone.FAINT);
    }
  }

  /** How a question may be answered. */
  private String how(Place place) {
    FactDefinition fact = place.fact();
    InterviewBook.Taken one = taken.get(place.id());
    String hint = interview.book().hint(fact);
    String how = "";
    if (one != null) {
      how = Texts.capital(one.value()) + " was taken; press Enter to leave it at that.";
    } else if (!hint.isEmpty()) {
      how = sentence(hint);
    } else if (choices(fact).isEmpty() && fact.kind() != Kind.YES_NO) {
      how = "For example: " + example(fact) + ".";
    }
    boolean drawn = !interview.book().picture(fact).isEmpty();
    return (how + (drawn ? " Say help for a picture." : "")).strip();
  }

  private void put(Place place) {
    String how =
        switch (place.fact().kind()) {
          case YES_NO -> " (yes or no)";
          case CHOICES -> " (one or several, with commas between)";
          default -> "";
        };
    say(question(place) + how, Tone.PLAIN);
  }

  private static List<String> choices(FactDefinition fact) {
    return fact.kind() == Kind.CHOICE || fact.kind() == Kind.CHOICES ? fact.of() : List.of();
  }

  /** The question as it is put, with the name of the entry it is about. */
  static String question(Place place) {
    FactDefinition fact = place.fact();
    String ask = fact.ask().isEmpty() ? fact.means() + ": what do you know of it?" : fact.ask();
    return place.about().isEmpty() ? ask : place.about() + ": " + ask;
  }

  private String part(FactDefinition fact) {
    for (InterviewBook.Part part : interview.book().parts()) {
      if (part.facts().contains(fact.key())) {
        return part.title();
      }
    }
    return "Further";
  }

  /** Reads lines until one leads on. */
  private Next answer(Place place, Outside outside) {
    List<String> likely = new ArrayList<>(choices(place.fact()));
    if (place.fact().kind() == Kind.YES_NO) {
      likely.addAll(List.of("yes", "no"));
    }
    likely.addAll(interview.book().loosely(place.fact()));
    likely.addAll(COMMANDS);
    String number = "";
    while (true) {
      out.flush();
      String said = prompt.line(PROMPT, likely);
      if (said == null) {
        return Next.ADVICE;
      }
      String text = said.strip();
      if (!number.isEmpty() && AnswerError.isUnit(place.fact(), text)) {
        text = number + ' ' + text; // the unit that was asked for
      }
      Next led = heed(place, outside, text);
      if (led != Next.SAME) {
        return led;
      }
      number = isBare(place.fact(), text) ? text : "";
    }
  }

  private Next heed(Place place, Outside outside, String text) {
    String word = word(text);
    if (text.equals("?") || word.equals("help") || word.equals("how")) {
      help(place);
    } else if (word.equals("why") || word.equals("why do you ask")) {
      why(place);
    } else if (word.equals("back")) {
      return back() ? Next.OTHER : Next.SAME;
    } else if (word.equals("so far")) {
      soFar(outside);
      put(place);
    } else if (word.equals("save") || word.startsWith("save ")) {
      save(outside, text.substring("save".length()).strip());
    } else if (isEnough(word)) {
      return Next.ADVICE;
    } else if (isQuit(word)) {
      return Next.LEAVE;
    } else if (take(place, text)) {
      return Next.OTHER;
    }
    return Next.SAME;
  }

  private static boolean built(Verdict verdict) {
    return verdict == Verdict.SOUND || verdict == Verdict.SOUND_ONCE_PUT_RIGHT;
  }

  private static String word(String said) {
    return said.strip().toLowerCase(Locale.ROOT).replaceAll("[?!.]+$", "").strip();
  }

  private static boolean isEnough(String word) {
    return word.equals("enough") || word.equals("done");
  }

  private static boolean isQuit(String word) {
    return word.equals("quit") || word.equals("exit");
  }

  private void help(Place place) {
    FactDefinition fact = place.fact();
    say(sentence(fact.means()), Tone.PLAIN);
    if (!fact.look().isEmpty()) {
      say("How to find out: " + sentence(fact.look()), Tone.PLAIN);
    }
    String picture = interview.book().picture(fact);
    if (!picture.isEmpty()) {
      out.println(picture);
    }
    if (choices(fact).isEmpty() && fact.kind() != Kind.YES_NO) {
      say("For example: " + example(fact) + ".", Tone.PLAIN);
    }
    blank();
    put(place);
  }

  private static String example(FactDefinition fact) {
    return switch (fact.kind()) {
      case POINTS -> "3.6 m x 2.4 m; for other shapes the corners, " + fact.example();
      case READINGS ->
          "0 m, 0 m, 0 mm; 1.8 m, 1.2 m, -7 mm (along, across, height; up is positive)";
      case LIST -> fact.example().replaceAll("^.*name: ([^,}]*).*$", "$1") + "; or none";
      default -> fact.example();
    };
  }

  private void why(Place place) {
    if (!answers.complete()) {
      say(
          sentence(
              place.fact().means()
                  + ": no advice can be given without it, for every way of building hangs on it"),
          Tone.PLAIN);
    } else {
      Interview.Why why = interview.why(answers, place);
      say("It matters because", Tone.PLAIN);
      changes(place.fact(), why.changes(), CHANGES_TOLD);
      if (why.changes().isEmpty()) {
        line("- heights or thicknesses come out otherwise with some values", "  ");
      }
      List<RuleNote> rules = why.rules();
      for (RuleNote rule : rules.subList(0, Math.min(RULES_TOLD, rules.size()))) {
        line("- " + rule.reason() + ". ‹" + rule.id() + "›", "  ");
      }
      if (rules.size() > RULES_TOLD) {
        int more = rules.size() - RULES_TOLD;
        line("- and " + more + (more == 1 ? " more rule reads it" : " more rules read it"), "  ");
      }
    }
    blank();
    put(place);
  }

  private void changes(FactDefinition fact, List<WhatIf.Otherwise> changes, int most) {
    for (WhatIf.Otherwise one : changes.subList(0, Math.min(most, changes.size()))) {
      line("- " + otherwise(fact, one, TOLD_OF_EACH), "  ");
    }
  }

  /** What another answer would change, in a sentence without its stop. */
  private String otherwise(FactDefinition fact, WhatIf.Otherwise one, int most) {
    List<String> some = one.differences();
    String words = String.join("; ", some.subList(0, Math.min(most, some.size())));
    return switch (fact.kind()) {
      case POINTS, READINGS, LIST -> phrases.say("if-given", "changes", words);
      case YES_NO -> phrases.say(one.value().equals("yes") ? "if-so" : "if-not", "changes", words);
      default ->
          phrases.say("if-said", "value", one.value().replaceAll("[\\[\\]]", ""), "changes", words);
    };
  }

  private boolean back() {
    if (before.isEmpty()) {
      say("This is the first question.", Tone.PLAIN);
      return false;
    }
    Step step = before.pop();
    answers = step.answers();
    taken = step.taken();
    again = step.again();
    lastPart = "";
    return true;
  }

  private void soFar(Outside outside) {
    try {
      out.println(
          answers.complete() ? outside.advice() : "There is no advice yet: say a little more.");
    } catch (UserError userError) {
      say(userError.getMessage(), Tone.CARE);
    }
  }

  private void save(Outside outside, String name) {
    try {
      say(outside.save(name), Tone.PLAIN);
    } catch (UserError userError) {
      say(userError.getMessage(), Tone.CARE);
    }
  }

  /** Takes an answer; false if it is none. */
  private boolean take(Place place, String said) {
    FactDefinition fact = place.fact();
    String text = chosen(fact, said);
    boolean unknown = text.equals(Answers.UNKNOWN);
    if (unknown && taken.containsKey(place.id())) {
      remember();
      again.poll();
      return true;
    }
    Optional<InterviewBook.Taken> instead = interview.book().taken(fact, text);
    if (unknown && fact.required() && instead.isEmpty()) {
      String hint = interview.book().hint(fact);
      say(
          "Without this nothing can be advised. "
              + (fact.look().isEmpty() ? "" : "How to find out: " + sentence(fact.look()) + " ")
              + (hint.isEmpty() ? "" : hint + "."),
          Tone.CARE);
      return false;
    }
    List<String> sides = sides(fact, text);
    String value = instead.map(InterviewBook.Taken::value).orElse(text);
    Answers more;
    try {
      more = answers.with(place, sides.isEmpty() ? value : sides.get(0));
      if (!sides.isEmpty()) {
        more = more.with(shorterSide(fact), sides.get(1));
      }
    } catch (ScenarioFaults e) {
      say(AnswerError.to(fact, value, e), Tone.CARE);
      return false;
    }
    remember();
    answers = more;
    taken.remove(place.id());
    again.remove(place);
    if (!sides.isEmpty()) {
      taken.remove(shorterSide(fact).id());
      again.remove(shorterSide(fact));
    }
    if (instead.isPresent()) {
      note(place, instead.get(), true);
      if (!unknown) {
        others(text);
      }
    } else if (unknown) {
      cost(place);
    }
    return true;
  }

  private void remember() {
    before.push(new Step(answers, new LinkedHashMap<>(taken), new ArrayDeque<>(again)));
  }

  /** Takes down what a person's own words came to; the fact is named if it was not asked for. */
  private void note(Place place, InterviewBook.Taken one, boolean asked) {
    String called = place.fact().called();
    if (one.certain()) {
      taken.remove(place.id());
      say(Texts.capital(asked ? "that is" : called) + ": " + one.value() + ".", Tone.FAINT);
    } else {
      taken.put(place.id(), one);
      String how = (asked ? "" : called + " ") + taken(one);
      say(Texts.capital(how), Tone.CARE);
    }
  }

  private static String taken(InterviewBook.Taken one) {
    return "taken as " + one.value() + ": " + sentence(one.since());
  }

  /** What the same words say of other facts: the length and the width of "big tiles". */
  private void others(String words) {
    for (Place place : interview.inOrder(answers)) {
      Optional<InterviewBook.Taken> one = interview.book().taken(place.fact(), words);
      if (one.isPresent() && !answers.has(place)) {
        try {
          answers = answers.with(place, one.get().value());
          note(place, one.get(), false);
        } catch (ScenarioFaults contradiction) {
          continue; // then it is asked
        }
      }
    }
  }

  private Place shorterSide(FactDefinition longer) {
    String key = interview.book().shorterSide(longer);
    return new Place(answers.book().find(key).orElseThrow(), "");
  }

  /** The longer side and the shorter one, if both were said at once. */
  private List<String> sides(FactDefinition fact, String text) {
    if (interview.book().shorterSide(fact).isEmpty()) {
      return List.of();
    }
    return Answers.sides(fact, text);
  }

  private static boolean isUnknown(String text) {
    String plain =
        text.toLowerCase(Locale.ROOT)
            .replace('’', '\'')
            .replaceAll("[.!]+$", "")
            .replaceFirst("^i( am|'m)? ", "")
            .strip();
    return List.of(
            "",
            "unknown",
            "don't know",
            "dont know",
            "do not know",
            "not known",
            "not sure",
            "unsure",
            "no idea",
            "dunno",
            "have no idea",
            "skip",
            "?")
        .contains(plain);
  }

  /** An answer as the fact's file writes it: choices by their numbers, "unknown" by any name. */
  static String chosen(FactDefinition fact, String said) {
    boolean shape = fact.kind() == Kind.READINGS || fact.kind() == Kind.POINTS;
    if (isUnknown(said) || shape && List.of("no", "none", "not yet").contains(word(said))) {
      return Answers.UNKNOWN;
    }
    List<String> choices = choices(fact);
    if (choices.isEmpty() || !said.matches("[0-9]{1,2}([ ,;]+[0-9]{1,2})*")) {
      return said;
    }
    List<String> named = new ArrayList<>();
    for (String number : said.split("[ ,;]+")) {
      int n = Integer.parseInt(number);
      named.add(n >= 1 && n <= choices.size() ? choices.get(n - 1) : number);
    }
    return String.join(", ", named);
  }

  /** A name for a floor nobody named. */
  static String name(Answers answers) {
    String use = known(answers, "room.use").orElse("room");
    String deck = known(answers, "subfloor.deck").orElse("old floor");
    return Texts.capital(use) + " on " + deck;
  }

  /** The same without a name that an earlier talk gave; what is said now may call for another. */
  static Answers unnamed(Answers answers) {
    Optional<Place> named =
        answers.places().stream()
            .filter(place -> place.fact().key().equals("scenario"))
            .findFirst();
    return named.isPresent() && answers.said(named.get()).equals(Optional.of(name(answers)))
        ? answers.without(named.get())
        : answers;
  }

  private static Optional<String> known(Answers answers, String key) {
    return answers.scenario().find(key).filter(StatedFact::known).map(StatedFact::text);
  }

  private static boolean isBare(FactDefinition fact, String value) {
    return fact.kind() == Kind.QUANTITY && AnswerError.isBare(value);
  }

  /** What not knowing costs. */
  private void cost(Place place) {
    if (!answers.complete()) {
      return;
    }
    Optional<String> assumed = interview.assumed(answers, place);
    List<WhatIf.Otherwise> hangs = interview.why(answers, place).changes();
    say(
        assumed
                .map(value -> "Not known: taken as " + value)
                .orElse(
                    "Not known: "
                        + (place.fact().look().isEmpty() ? "left open" : "to be found out"))
            + (hangs.isEmpty() ? "." : ". What hangs on it:"),
        Tone.CARE);
    changes(place.fact(), hangs, CHANGES_OF_UNKNOWN);
    if (!place.fact().look().isEmpty()) {
      line("- to find out: " + sentence(place.fact().look()), "  ");
    }
  }

  /** The advice so far, in one line, if it is another than before. */
  private void preview() {
    String now = interview.assessment(answers).map(one -> preview(one, phrases)).orElse("");
    if (!now.isEmpty() && !now.equals(lastPreview)) {
      say("So far: " + now, Tone.FAINT);
    }
    lastPreview = now;
    blank();
  }

  /** The advice in one line: the answer, the way, the rise, and how much comes first. */
  static String preview(Assessment assessment, Phrases phrases) {
    StringBuilder line = new StringBuilder(assessment.verdict().word().replace('-', ' '));
    assessment
        .chosen()
        .ifPresent(
            chosen -> {
              line.append("; ").append(phrases.way(chosen.way()));
              double least = chosen.stack().rise().min();
              double most = chosen.stack().rise().max();
              line.append("; up by ").append(Math.round(least));
              line.append(Math.round(least) == Math.round(most) ? "" : " to " + Math.round(most));
              line.append(" mm");
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

  /** What to find out first, for the end of the talk. */
  void tellFirst() {
    List<OpenPoint> first = OpenPoint.of(interview, phrases, answers, taken, FIRST_THINGS);
    if (first.isEmpty()) {
      return;
    }
    say("Find out first", Tone.BOLD);
    int n = 1;
    for (OpenPoint thing : first) {
      line(" " + n++ + "  " + thing.words(), "    ");
    }
    blank();
  }

  private static String sentence(String words) {
    return words.isEmpty() || words.matches("(?s).*[.?!]") ? words : words + ".";
  }

  private void say(String words, Tone tone) {
    TextPage page = new TextPage(width.getAsInt(), colour);
    page.para("", "", words, tone);
    out.print(page.text());
    out.flush();
  }

  private void line(String words, String rest) {
    TextPage page = new TextPage(width.getAsInt(), colour);
    int lead = 0;
    while (lead < words.length() && words.charAt(lead) == ' ') {
      lead++;
    }
    page.para(words.substring(0, lead), rest, words.substring(lead), Tone.PLAIN);
    out.print(page.text());
    out.flush();
  }

  private void blank() {
    out.println();
    out.flush();
  }
}
