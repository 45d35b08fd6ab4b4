package underfoot.cli;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntSupplier;
import underfoot.buildup.Remedy;
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

/** What an interview says at a terminal. */
final class InterviewScreen {
  private static final int RULES_TOLD = 5;
  private static final int CHANGES_TOLD = 4;
  private static final int CHANGES_OF_UNKNOWN = 2;
  private static final int TOLD_OF_EACH = 2;
  private static final int FIRST_THINGS = 3;
  private static final int EASY_TO_READ = 100;

  private final Interview interview;
  private final Phrases phrases;
  private final SafeOutput out;
  private final IntSupplier width;
  private final boolean colour;
  private String lastPart = "";
  private String lastPreview = "";

  /**
   * @param interview what is asked
   * @param phrases the sentences of the rule base
   * @param out where words go
   * @param width how many columns there are, asked before each paragraph
   * @param colour whether colours are wanted
   */
  InterviewScreen(
      Interview interview, Phrases phrases, SafeOutput out, IntSupplier width, boolean colour) {
    this.interview = interview;
    this.phrases = phrases;
    this.out = out;
    this.width = () -> Math.min(EASY_TO_READ, width.getAsInt());
    this.colour = colour;
  }

  /** The title of the part is told again with the next question. */
  void again() {
    lastPart = "";
  }

  /** Tells the advice as it stands. */
  void advice(TextPage advice) {
    out.page(advice);
    blank();
  }

  /** Asks a question, with its choices. */
  void ask(Place place, InterviewBook.Taken taken) {
    String part = interview.book().part(place.fact());
    if (!part.equals(lastPart)) {
      say(part, Tone.BOLD);
      lastPart = part;
    }
    put(place);
    FactDefinition fact = place.fact();
    int n = 1;
    for (String choice : TypedAnswer.choices(fact)) {
      String more = interview.book().choice(fact, choice);
      String number = String.format(Locale.ROOT, "  %2d  ", n++);
      line(number + choice + (more.isEmpty() ? "" : " - " + more), "       ");
    }
    String how = how(place, taken);
    if (!how.isEmpty()) {
      say(how, Tone.FAINT);
    }
  }

  /** How a question may be answered. */
  private String how(Place place, InterviewBook.Taken one) {
    FactDefinition fact = place.fact();
    String hint = interview.book().hint(fact);
    String how = "";
    if (one != null) {
      how = Texts.capital(one.value()) + " was taken; press Enter to leave it at that.";
    } else if (!hint.isEmpty()) {
      how = Texts.sentence(hint);
    } else if (TypedAnswer.choices(fact).isEmpty() && fact.kind() != Kind.YES_NO) {
      how = "For example: " + example(fact) + ".";
    }
    boolean drawn = !interview.book().picture(fact).isEmpty();
    return (how + (drawn ? " Say help for a picture." : "")).strip();
  }

  /** Puts a question alone. */
  void put(Place place) {
    String how =
        switch (place.fact().kind()) {
          case YES_NO -> " (yes or no)";
          case CHOICES -> " (one or several, with commas between)";
          default -> "";
        };
    say(question(place) + how, Tone.PLAIN);
  }

  /** The question as it is put, with the name of the entry it is about. */
  static String question(Place place) {
    FactDefinition fact = place.fact();
    String ask = fact.ask().isEmpty() ? fact.means() + ": what do you know of it?" : fact.ask();
    return place.about().isEmpty() ? ask : place.about() + ": " + ask;
  }

  /** Tells what a question means and how to find the answer. */
  void help(Place place) {
    FactDefinition fact = place.fact();
    say(Texts.sentence(fact.means()), Tone.PLAIN);
    if (!fact.look().isEmpty()) {
      say("How to find out: " + Texts.sentence(fact.look()), Tone.PLAIN);
    }
    String picture = interview.book().picture(fact);
    if (!picture.isEmpty()) {
      out.println(picture);
    }
    if (TypedAnswer.choices(fact).isEmpty() && fact.kind() != Kind.YES_NO) {
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

  /** Tells what hangs on an answer. */
  void why(Answers answers, Place place) {
    if (!answers.complete()) {
      say(
          Texts.sentence(
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
    String words = one.clause(most);
    return switch (fact.kind()) {
      case POINTS, READINGS, LIST -> phrases.say("if-given", "changes", words);
      case YES_NO -> phrases.say(one.value().equals("yes") ? "if-so" : "if-not", "changes", words);
      default ->
          phrases.say("if-said", "value", one.value().replaceAll("[\\[\\]]", ""), "changes", words);
    };
  }

  /** What not knowing costs. */
  void cost(Answers answers, Place place) {
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
      line("- to find out: " + Texts.sentence(place.fact().look()), "  ");
    }
  }

  /** The advice so far, in one line, if it is another than before. */
  void preview(Answers answers) {
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
  void tellFirst(Answers answers, Map<String, InterviewBook.Taken> taken) {
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

  /** Says something. */
  void say(String words, Tone tone) {
    TextPage page = new TextPage(width.getAsInt(), colour);
    page.para("", "", words, tone);
    out.page(page);
    out.flush();
  }

  private void line(String words, String rest) {
    TextPage page = new TextPage(width.getAsInt(), colour);
    int lead = 0;
    while (lead < words.length() && words.charAt(lead) == ' ') {
      lead++;
    }
    page.para(words.substring(0, lead), rest, words.substring(lead), Tone.PLAIN);
    out.page(page);
    out.flush();
  }

  void blank() {
    out.println();
    out.flush();
  }

  static String taken(InterviewBook.Taken one) {
    return "taken as " + one.value() + ": " + Texts.sentence(one.since());
  }
}
