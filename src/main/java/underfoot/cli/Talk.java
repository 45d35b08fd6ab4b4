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
import underfoot.buildup.Remedy;
import underfoot.knowledge.InterviewBook;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.RuleNote;
import underfoot.measure.Texts;
import underfoot.reasoning.Counsel;
import underfoot.reasoning.Interview;
import underfoot.reasoning.WhatIf;
import underfoot.report.Page;
import underfoot.report.Page.Tone;
import underfoot.scenario.Answers;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Fault;
import underfoot.scenario.Given;
import underfoot.scenario.Kind;
import underfoot.scenario.Place;
import underfoot.scenario.ScenarioFaults;

/** The interview at a terminal: one question after another, each of which still matters. */
final class Talk {
  private static final int RULES_TOLD = 5;
  private static final int CHANGES_TOLD = 4;
  private static final int TOLD_OF_EACH = 2;
  private static final int FIRST_THINGS = 3;
  private static final String PROMPT = "> ";

  private final Interview interview;
  private final Phrases phrases;
  private final Prompt prompt;
  private final PrintWriter out;
  private final int width;
  private final boolean colour;
  private final Deque<Step> before = new ArrayDeque<>();

  /** What was taken for want of knowing better, by place. */
  private final Map<String, InterviewBook.Taken> taken = new LinkedHashMap<>();

  private Answers answers;
  private String lastPart = "";
  private int asked;

  /** A question that was answered, and what was said before it. */
  private record Step(Place place, Answers answers) {}

  /** How the talk ended. */
  enum End {
    /** Nothing more matters, or enough was said. */
    DONE,
    /** The person left. */
    LEFT
  }

  /** Where a save goes; tells what became of it. */
  interface Saver {
    /** Saves, to the name given or, if that is empty, to a name of its own. */
    String save(Answers answers, String name) throws Complaint;
  }

  Talk(
      Interview interview,
      Phrases phrases,
      Prompt prompt,
      PrintWriter out,
      Page page,
      boolean colour,
      Answers begun) {
    this.interview = interview;
    this.phrases = phrases;
    this.prompt = prompt;
    this.out = out;
    this.width = page.width();
    this.colour = colour;
    this.answers = begun;
  }

  Answers answers() {
    return answers;
  }

  /** Asks until nothing more matters. */
  End hold(Saver saver) {
    say(
        "Answer in your own words, with units: 9 mm, 3/4 in, 3.6 m. Press Enter, or say: don't"
            + " know, wherever you do not know; you are told what that costs. Also: help, why,"
            + " back, save, enough (the advice with what is known now), quit.",
        Tone.FAINT);
    Optional<Place> next = interview.next(answers);
    while (next.isPresent()) {
      Place place = next.get();
      asked++;
      ask(place);
      End end = answer(place, saver);
      if (end != null) {
        return end;
      }
      preview();
      next = interview.next(answers);
    }
    say(
        asked == 0
            ? "Nothing need be asked: no answer would change the advice."
            : "That is all: no other answer would change the advice.",
        Tone.FAINT);
    return End.DONE;
  }

  private void ask(Place place) {
    String part = part(place.fact());
    if (!part.equals(lastPart)) {
      say(part, Tone.BOLD);
      lastPart = part;
    }
    FactDefinition fact = place.fact();
    say(question(place), Tone.PLAIN);
    int n = 1;
    for (String choice : choices(fact)) {
      String more = interview.book().choice(fact, choice);
      line("  " + n + "  " + choice + (more.isEmpty() ? "" : " - " + more), "     ");
      n++;
    }
  }

  private static List<String> choices(FactDefinition fact) {
    return switch (fact.kind()) {
      case CHOICE, CHOICES -> fact.of();
      case YES_NO -> List.of("yes", "no");
      default -> List.of();
    };
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

  /** Reads lines until one answers the question; null to go on. */
  private End answer(Place place, Saver saver) {
    while (true) {
      String said = prompt.line(PROMPT, choices(place.fact()));
      if (said == null) {
        return End.DONE;
      }
      String word = said.strip().toLowerCase(Locale.ROOT).replaceAll("[?!.]+$", "").strip();
      if (said.strip().equals("?") || word.equals("help") || word.equals("how")) {
        help(place);
      } else if (word.equals("why") || word.equals("why do you ask")) {
        why(place);
      } else if (word.equals("back")) {
        if (back()) {
          return null;
        }
      } else if (word.equals("save") || word.startsWith("save ")) {
        save(saver, said.strip().substring("save".length()).strip());
      } else if (word.equals("enough") || word.equals("done")) {
        return End.DONE;
      } else if (word.equals("quit") || word.equals("exit")) {
        return End.LEFT;
      } else if (take(place, said.strip())) {
        return null;
      }
    }
  }

  private void help(Place place) {
    FactDefinition fact = place.fact();
    say(fact.means() + ".", Tone.PLAIN);
    if (!fact.look().isEmpty()) {
      say("How to find out: " + fact.look() + ".", Tone.PLAIN);
    }
    String picture = interview.book().picture(fact);
    if (!picture.isEmpty()) {
      out.println(picture);
    }
    say("For example: " + example(fact), Tone.PLAIN);
    out.flush();
  }

  private static String example(FactDefinition fact) {
    return switch (fact.kind()) {
      case POINTS -> "3.6 m x 2.4 m; for other shapes the corners, " + fact.example();
      case READINGS ->
          "0 m, 0 m, 0 mm; 1.8 m, 1.2 m, -7 mm (along, across, height; up is positive)";
      case LIST -> "names with commas between, or none";
      default -> fact.example();
    };
  }

  private void why(Place place) {
    if (!answers.complete()) {
      say(
          place.fact().means()
              + ": no advice can be given without it, for every way of building"
              + " hangs on it.",
          Tone.PLAIN);
      return;
    }
    Interview.Why why = interview.why(answers, place);
    say("It matters because", Tone.PLAIN);
    changes(why.changes());
    if (why.changes().isEmpty()) {
      line("- heights or thicknesses come out otherwise with some values", "  ");
    }
    int n = 0;
    for (RuleNote rule : why.rules()) {
      if (n++ == RULES_TOLD) {
        break;
      }
      line("- " + rule.reason() + ". ‹" + rule.id() + "›", "  ");
    }
    if (why.rules().size() > RULES_TOLD) {
      int more = why.rules().size() - RULES_TOLD;
      line("- and " + more + (more == 1 ? " rule more reads it" : " rules more read it"), "  ");
    }
    out.flush();
  }

  private void changes(List<WhatIf.Otherwise> changes) {
    for (WhatIf.Otherwise one : changes.subList(0, Math.min(CHANGES_TOLD, changes.size()))) {
      List<String> some = one.differences();
      String words = String.join("; ", some.subList(0, Math.min(TOLD_OF_EACH, some.size())));
      line("- " + phrases.say("if-it-is", "value", one.value(), "changes", words), "  ");
    }
  }

  private boolean back() {
    if (before.isEmpty()) {
      say("This is the first question.", Tone.PLAIN);
      return false;
    }
    Step step = before.pop();
    answers = step.answers();
    taken.remove(step.place().id());
    lastPart = "";
    return true;
  }

  private void save(Saver saver, String name) {
    try {
      say(saver.save(answers, name), Tone.PLAIN);
    } catch (Complaint complaint) {
      say(complaint.getMessage(), Tone.CARE);
    }
  }

  private boolean take(Place place, String said) {
    FactDefinition fact = place.fact();
    String text = chosen(fact, said.isEmpty() ? Answers.UNKNOWN : said);
    if (fact.key().equals("scenario") && said.isEmpty()) {
      text = name(answers);
    }
    boolean unknown = isUnknown(text);
    Optional<InterviewBook.Taken> instead =
        interview.book().taken(fact, unknown ? Answers.UNKNOWN : text);
    if (unknown && fact.required() && instead.isEmpty()) {
      say(
          "Without this nothing can be advised. "
              + (fact.look().isEmpty() ? "" : "How to find out: " + fact.look() + ". ")
              + "If you know it only by and large, say that much"
              + (fact.key().equals("subfloor.deck") ? " (wood, solid, old tiles)." : "."),
          Tone.CARE);
      return false;
    }
    String value = instead.map(InterviewBook.Taken::value).orElse(text);
    Answers more;
    try {
      more = answers.with(place, value);
    } catch (ScenarioFaults e) {
      complain(fact, value, e);
      return false;
    }
    before.push(new Step(place, answers));
    answers = more;
    if (instead.isPresent()) {
      taken.put(place.id(), instead.get());
      say("Taken as " + value + ": " + instead.get().since() + ".", Tone.CARE);
    } else if (unknown) {
      cost(place);
    }
    return true;
  }

  private static boolean isUnknown(String text) {
    String plain = text.toLowerCase(Locale.ROOT).replace('’', '\'').strip();
    return List.of(
            "unknown",
            "don't know",
            "dont know",
            "do not know",
            "not known",
            "not sure",
            "no idea",
            "dunno",
            "?")
        .contains(plain);
  }

  /** A choice by its number. */
  private static String chosen(FactDefinition fact, String said) {
    List<String> choices = choices(fact);
    if (isUnknown(said)) {
      return Answers.UNKNOWN;
    }
    if (said.matches("[0-9]{1,2}")) {
      int n = Integer.parseInt(said);
      if (n >= 1 && n <= choices.size()) {
        return choices.get(n - 1);
      }
    }
    return said;
  }

  /** A name for a floor nobody named. */
  static String name(Answers answers) {
    String use = answers.scenario().find("room.use").map(Given::text).orElse("room");
    String deck = answers.scenario().find("subfloor.deck").map(Given::text).orElse("old floor");
    return Texts.capital(use) + " on " + deck;
  }

  private void complain(FactDefinition fact, String value, ScenarioFaults faults) {
    Fault fault = faults.faults().get(0);
    boolean bare = fact.kind() == Kind.QUANTITY && value.matches("-?[0-9]*[.,]?[0-9]+");
    say(
        bare
            ? value + " what? Say the unit, too: " + value + " " + unit(fact) + "."
            : (fault.what() + (fault.how().isEmpty() ? "" : ". " + fault.how())).replace('\n', ' '),
        Tone.CARE);
  }

  private static String unit(FactDefinition fact) {
    return fact.example().replaceFirst("^[-0-9./ ]+", "");
  }

  /** What not knowing costs. */
  private void cost(Place place) {
    Optional<Counsel> counsel = interview.counsel(answers);
    if (counsel.isEmpty()) {
      return;
    }
    String assumed = interview.assumed(answers, place).orElse("");
    List<WhatIf.Otherwise> hangs = interview.why(answers, place).changes();
    say(
        (assumed.isEmpty()
                ? "Not known, and not taken for granted: it is to be found out"
                : "Not known: taken as " + assumed)
            + (hangs.isEmpty() ? "." : ". What hangs on it:"),
        Tone.CARE);
    changes(hangs);
    if (!place.fact().look().isEmpty()) {
      line("- to find out: " + place.fact().look(), "  ");
    }
    out.flush();
  }

  /** The advice so far, in one line. */
  private void preview() {
    interview
        .counsel(answers)
        .ifPresent(counsel -> say("So far: " + preview(counsel, phrases), Tone.FAINT));
    out.println();
    out.flush();
  }

  /** The advice in one line: the answer, the way, the rise, and how much comes first. */
  static String preview(Counsel counsel, Phrases phrases) {
    StringBuilder line = new StringBuilder(counsel.verdict().word().replace('-', ' '));
    counsel
        .chosen()
        .ifPresent(
            chosen -> {
              line.append("; ").append(phrases.way(chosen.route()));
              double least = chosen.stack().rise().min();
              double most = chosen.stack().rise().max();
              line.append("; up by ").append(Math.round(least));
              line.append(Math.round(least) == Math.round(most) ? "" : " to " + Math.round(most));
              line.append(" mm");
            });
    long first =
        counsel.of(Remedy.class).stream()
            .map(one -> one.wording() + '@' + one.about())
            .distinct()
            .count();
    if (first > 0) {
      line.append("; ").append(first).append(first == 1 ? " thing" : " things").append(" first");
    }
    int assumed = WhatIf.assumed(counsel).size();
    if (assumed > 0) {
      line.append("; ").append(assumed).append(" assumed");
    }
    return line.toString();
  }

  /** What to find out first, for the end of the talk. */
  void tellFirst() {
    List<FirstThing> first = FirstThing.of(interview, phrases, answers, taken, FIRST_THINGS);
    if (first.isEmpty()) {
      return;
    }
    say("Find out first", Tone.BOLD);
    int n = 1;
    for (FirstThing thing : first) {
      line(" " + n++ + "  " + thing.words(), "    ");
    }
    out.println();
    out.flush();
  }

  /** The file of the answers, with the questions and what is not known as comments. */
  String file() {
    return file(answers, interview, taken);
  }

  static String file(Answers answers, Interview interview, Map<String, InterviewBook.Taken> taken) {
    List<String> head = new ArrayList<>();
    head.add("Written by the interview: underfoot ask. Change it as you find out more.");
    head.add(
        answers.complete()
            ? "To be advised: underfoot advise FILE. To go on asking: underfoot ask --from FILE."
            : "Not finished: required facts are missing. Go on with: underfoot ask --from FILE.");
    return answers.file(
        head,
        place -> {
          InterviewBook.Taken one = taken.get(place.id());
          FactDefinition fact = place.fact();
          if (one != null) {
            return "Not certain; taken so: " + one.since() + ".";
          }
          boolean unknown =
              answers.said(place).map(said -> said.equals(Answers.UNKNOWN)).orElse(false);
          String ask = fact.ask().isEmpty() ? fact.means() : fact.ask();
          return unknown && !fact.look().isEmpty() ? ask + " To find out: " + fact.look() : ask;
        });
  }

  private void say(String words, Tone tone) {
    Page page = new Page(width, colour);
    page.para("", "", words, tone);
    out.print(page.text());
    out.flush();
  }

  private void line(String words, String rest) {
    Page page = new Page(width, colour);
    int lead = 0;
    while (lead < words.length() && words.charAt(lead) == ' ') {
      lead++;
    }
    page.para(words.substring(0, lead), rest, words.substring(lead), Tone.PLAIN);
    out.print(page.text());
  }
}
