package underfoot.cli;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underfoot.knowledge.InterviewBook;
import underfoot.measure.Texts;
import underfoot.reasoning.Interview;
import underfoot.report.TextPage;
import underfoot.report.TextPage.Tone;
import underfoot.scenario.Answers;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Kind;
import underfoot.scenario.Place;
import underfoot.scenario.ScenarioFaults;

/** The interview at a terminal: one question after another, each of which still matters. */
final class TerminalInterview {
  private static final String PROMPT = "> ";
  private static final List<String> COMMANDS =
      List.of("don't know", "help", "why", "back", "so far", "save", "enough", "quit");

  private final Interview interview;
  private final InterviewScreen screen;
  private final Prompt prompt;
  private final Deque<Step> before = new ArrayDeque<>();

  /** What was taken for want of knowing better, by place. */
  private Map<String, InterviewBook.Taken> taken = new LinkedHashMap<>();

  /** What is asked again, because it was only taken. */
  private Deque<Place> again = new ArrayDeque<>();

  private Answers answers;
  private boolean offered;
  private int asked;

  /** What was known before a question was answered. */
  private record Step(
      Answers answers, Map<String, InterviewBook.Taken> taken, Deque<Place> again) {}

  /** What a line said leads to: the same question, another one, the advice, or nothing more. */
  private enum Next {
    SAME,
    OTHER,
    ADVICE,
    LEAVE
  }

  /** How the talk ended: nothing more matters or enough was said, or the person left. */
  enum End {
    DONE,
    LEFT
  }

  /** What is done outside the talk. */
  interface Outside {
    /** Saves, to the name given or, if that is empty, to a name of its own; tells where. */
    String save(String name) throws UserError;

    /** The advice as things stand, in short. */
    TextPage advice() throws UserError;
  }

  /** Begins with what was said before, and what of that was only taken, by place. */
  TerminalInterview(
      Interview interview,
      InterviewScreen screen,
      Prompt prompt,
      Answers begun,
      Map<String, InterviewBook.Taken> taken) {
    this.interview = interview;
    this.screen = screen;
    this.prompt = prompt;
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
    screen.say(
        "Answer in your own words, with units: 9 mm, 3/4 in, 3.6 m. Press Enter where you do not"
            + " know; you are told what that costs. At any question you can also say: help, why,"
            + " back, so far (the advice as it stands), save, enough (no more questions), quit.",
        Tone.FAINT);
    screen.blank();
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
        screen.ask(place, taken.get(place.id()));
        led = answer(place, outside);
      }
      if (led == Next.ADVICE) {
        return End.DONE;
      } else if (led == Next.LEAVE) {
        return End.LEFT;
      }
      screen.preview(answers);
      next = next();
    }
    screen.say(
        asked == 0
            ? "Nothing need be asked: no answer would change the advice."
            : "That is all: no other answer would change the advice.",
        Tone.FAINT);
    screen.blank();
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
        answers = answers.with(next.get(), AnswerFile.name(answers));
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
    screen.say(
        (open == 1 ? "One thing was" : open + " things were")
            + " not known, or only by and large, when this was written.",
        Tone.PLAIN);
    while (true) {
      String said = prompt.line("Ask them again? (yes, or Enter for no) ", List.of("yes", "no"));
      String word = said == null ? "" : TypedAnswer.word(said);
      if (List.of("yes", "y").contains(word)) {
        again.addAll(unsure);
        unknown.forEach(place -> answers = answers.without(place));
        return true;
      } else if (List.of("", "no", "n").contains(word)) {
        return true;
      } else if (TypedAnswer.isQuit(word)) {
        return false;
      }
    }
  }

  /** What is left is finer: whether to go on. */
  private Next offer(Outside outside) {
    int left = interview.likely(answers).size();
    boolean stopped =
        interview
            .assessment(answers)
            .map(one -> Advise.exit(one.verdict()) != Exit.FINE)
            .orElse(false);
    screen.say(
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
      String word = said == null ? "" : TypedAnswer.word(said);
      if (List.of("yes", "y", "more", "go on").contains(word)) {
        return Next.OTHER;
      } else if (List.of("", "no", "n").contains(word) || TypedAnswer.isEnough(word)) {
        return Next.ADVICE;
      } else if (TypedAnswer.isQuit(word)) {
        return Next.LEAVE;
      } else if (word.equals("back") && back()) {
        offered = false;
        return Next.SAME;
      } else if (!saved(outside, word, said)) {
        screen.say("Say yes or no; also back, save or quit.", Tone.PLAIN);
      }
    }
  }

  /** Reads lines until one leads on. */
  private Next answer(Place place, Outside outside) {
    List<String> likely = new ArrayList<>(TypedAnswer.choices(place.fact()));
    if (place.fact().kind() == Kind.YES_NO) {
      likely.addAll(List.of("yes", "no"));
    }
    likely.addAll(interview.book().loosely(place.fact()));
    likely.addAll(COMMANDS);
    String number = "";
    while (true) {
      String said = prompt.line(PROMPT, likely);
      if (said == null) {
        return Next.ADVICE;
      }
      String text = said.strip();
      if (!number.isEmpty() && TypedAnswer.isUnit(place.fact(), text)) {
        text = number + ' ' + text; // the unit that was asked for
      }
      Next led = heed(place, outside, text);
      if (led != Next.SAME) {
        return led;
      }
      number = TypedAnswer.lacksUnit(place.fact(), text) ? text : "";
    }
  }

  private Next heed(Place place, Outside outside, String text) {
    String word = TypedAnswer.word(text);
    if (text.equals("?") || word.equals("help") || word.equals("how")) {
      screen.help(place);
    } else if (word.equals("why") || word.equals("why do you ask")) {
      screen.why(answers, place);
    } else if (word.equals("back")) {
      return back() ? Next.OTHER : Next.SAME;
    } else if (word.equals("so far")) {
      soFar(outside);
      screen.put(place);
    } else if (TypedAnswer.isEnough(word)) {
      return Next.ADVICE;
    } else if (TypedAnswer.isQuit(word)) {
      return Next.LEAVE;
    } else if (!saved(outside, word, text) && take(place, text)) {
      return Next.OTHER;
    }
    return Next.SAME;
  }

  private boolean back() {
    if (before.isEmpty()) {
      screen.say("This is the first question.", Tone.PLAIN);
      return false;
    }
    Step step = before.pop();
    answers = step.answers();
    taken = step.taken();
    again = step.again();
    screen.again();
    return true;
  }

  private void soFar(Outside outside) {
    if (!answers.complete()) {
      screen.say("There is no advice yet: say a little more.", Tone.PLAIN);
      return;
    }
    try {
      screen.advice(outside.advice());
    } catch (UserError userError) {
      screen.say(userError.getMessage(), Tone.CARE);
    }
  }

  /** Saves, if that was said. */
  private boolean saved(Outside outside, String word, String said) {
    if (!word.equals("save") && !word.startsWith("save ")) {
      return false;
    }
    try {
      screen.say(outside.save(said.strip().substring("save".length()).strip()), Tone.PLAIN);
    } catch (UserError userError) {
      screen.say(userError.getMessage(), Tone.CARE);
    }
    return true;
  }

  /** Takes an answer; false if it is none. */
  private boolean take(Place place, String said) {
    FactDefinition fact = place.fact();
    String text = TypedAnswer.chosen(fact, said);
    boolean unknown = text.equals(Answers.UNKNOWN);
    if (unknown && taken.containsKey(place.id())) {
      remember();
      again.poll();
      return true;
    }
    Optional<InterviewBook.Taken> instead = interview.book().taken(fact, text);
    if (unknown && fact.required() && instead.isEmpty()) {
      String hint = interview.book().hint(fact);
      screen.say(
          "Without this nothing can be advised. "
              + (fact.look().isEmpty()
                  ? ""
                  : "How to find out: " + Texts.sentence(fact.look()) + " ")
              + (hint.isEmpty() ? "" : hint + "."),
          Tone.CARE);
      return false;
    }
    boolean two = !interview.book().shorterSide(fact).isEmpty();
    List<String> sides = two ? Answers.sides(fact, text) : List.of();
    String value = instead.map(InterviewBook.Taken::value).orElse(text);
    Answers more;
    try {
      more = answers.with(place, sides.isEmpty() ? value : sides.get(0));
      if (!sides.isEmpty()) {
        more = more.with(shorterSide(fact), sides.get(1));
      }
    } catch (ScenarioFaults e) {
      screen.say(TypedAnswer.objection(fact, value, e), Tone.CARE);
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
      screen.cost(answers, place);
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
      screen.say(Texts.capital(asked ? "that is" : called) + ": " + one.value() + ".", Tone.FAINT);
    } else {
      taken.put(place.id(), one);
      String how = (asked ? "" : called + " ") + InterviewScreen.taken(one);
      screen.say(Texts.capital(how), Tone.CARE);
    }
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

  /** What to find out first, for the end of the talk. */
  void tellFirst() {
    screen.tellFirst(answers, taken);
  }
}
