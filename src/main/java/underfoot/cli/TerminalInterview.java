package underfoot.cli;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import underfoot.knowledge.InterviewBook;
import underfoot.report.TextPage;
import underfoot.report.TextPage.Tone;
import underfoot.scenario.Answers;
import underfoot.scenario.Place;
import underfoot.talk.Asked;
import underfoot.talk.Conversation;
import underfoot.talk.Known;
import underfoot.talk.Reply;

/** The conversation at a terminal: one question after another, each of which still matters. */
final class TerminalInterview {
  private static final String PROMPT = "> ";
  private static final List<String> COMMANDS =
      List.of("don't know", "help", "why", "back", "so far", "save", "enough", "quit");

  private final Conversation conversation;
  private final InterviewScreen screen;
  private final Prompt prompt;
  private final Deque<Step> before = new ArrayDeque<>();

  /** What is asked again, because it was not known before. */
  private Deque<Place> again = new ArrayDeque<>();

  private Known known;
  private boolean offered;
  private int asked;

  /** What a yes means, after an objection that asked so; empty otherwise. */
  private String meant = "";

  /** What was known before a question was answered. */
  private record Step(Known known, Collection<Place> again) {}

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

  /** Begins with what was said before. */
  TerminalInterview(Conversation conversation, InterviewScreen screen, Prompt prompt, Known begun) {
    this.conversation = conversation;
    this.screen = screen;
    this.prompt = prompt;
    this.known = begun;
  }

  /** What is known; a floor that nobody named has a name. */
  Known known() {
    return conversation.named(known);
  }

  Answers answers() {
    return known().answers();
  }

  /** Asks until nothing more matters. */
  End hold(Outside outside) {
    screen.say(
        "Answer in your own words, as much at once as you like. Press Enter where you do not know;"
            + " you are told what that costs. At any question you can also say: help, why, back, so"
            + " far (the advice as it stands), save, enough (no more questions), quit.",
        Tone.FAINT);
    screen.blank();
    if (!askAgain()) {
      return End.LEFT;
    }
    Optional<Asked> next = next();
    while (next.isPresent()) {
      Place place = next.get().place();
      Next led = Next.OTHER;
      boolean finer = !conversation.interview().decides(answers(), place);
      if (!offered && again.isEmpty() && finer) {
        offered = true;
        led = offer(outside);
      }
      if (led == Next.OTHER) {
        asked++;
        screen.ask(next.get());
        led = answer(next.get(), outside);
      }
      if (led == Next.ADVICE) {
        return End.DONE;
      } else if (led == Next.LEAVE) {
        return End.LEFT;
      }
      screen.preview(known());
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

  private Optional<Asked> next() {
    return again.isEmpty()
        ? conversation.next(known)
        : Optional.of(conversation.asked(known, again.peek()));
  }

  /** Takes up what an earlier talk left open; false if the person leaves. */
  private boolean askAgain() {
    List<Place> unsure = conversation.unsure(known);
    if (unsure.isEmpty()) {
      return true;
    }
    int open = unsure.size();
    screen.say(
        (open == 1 ? "One thing was" : open + " things were")
            + " not known, or only by and large, when this was written.",
        Tone.PLAIN);
    while (true) {
      String said = prompt.line("Ask them again? (yes, or Enter for no) ", List.of("yes", "no"));
      if (said != null && conversation.is("yes", said)) {
        for (Place place : unsure) {
          if (known.isGuess(place)) {
            again.add(place);
          } else {
            known = known.without(place); // asked in its turn, if it still matters
          }
        }
        return true;
      } else if (isNoMore(said)) {
        return true;
      } else if (conversation.command(said).equals("quit")) {
        return false;
      }
    }
  }

  private boolean isNoMore(String said) {
    return said == null || said.isBlank() || conversation.is("no", said);
  }

  /** What is left is finer: whether to go on. */
  private Next offer(Outside outside) {
    screen.say(conversation.offer(known()), Tone.PLAIN);
    while (true) {
      String said =
          prompt.line("Go on? (yes, or Enter for the advice) ", List.of("yes", "no", "back"));
      String command = said == null ? "" : conversation.command(said);
      if (said != null && conversation.is("yes", said)) {
        return Next.OTHER;
      } else if (isNoMore(said) || command.equals("enough")) {
        return Next.ADVICE;
      } else if (command.equals("quit")) {
        return Next.LEAVE;
      } else if (command.equals("back") && back()) {
        offered = false;
        return Next.SAME;
      } else if (!saved(outside, said)) {
        screen.say("Say yes or no; also back, save or quit.", Tone.PLAIN);
      }
    }
  }

  /** Reads lines until one leads on. */
  private Next answer(Asked question, Outside outside) {
    List<String> likely = new ArrayList<>();
    question.choices().forEach(choice -> likely.add(choice.value()));
    InterviewBook book = conversation.interview().book();
    book.phrases(question.place().fact()).forEach(phrase -> likely.add(phrase.words()));
    likely.addAll(COMMANDS);
    meant = "";
    while (true) {
      String said = prompt.line(PROMPT, likely);
      Next led = said == null ? Next.ADVICE : heed(question, outside, said.strip());
      if (led != Next.SAME) {
        return led;
      }
    }
  }

  private Next heed(Asked question, Outside outside, String text) {
    switch (conversation.command(text)) {
      case "help" -> screen.help(question);
      case "why" -> screen.why(known(), question);
      case "back" -> {
        return back() ? Next.OTHER : Next.SAME;
      }
      case "so far" -> {
        soFar(outside);
        screen.put(question);
      }
      case "enough" -> {
        return Next.ADVICE;
      }
      case "quit" -> {
        return Next.LEAVE;
      }
      default -> {
        if (!saved(outside, text) && take(question.place(), text)) {
          return Next.OTHER;
        }
      }
    }
    return Next.SAME;
  }

  private boolean back() {
    if (before.isEmpty()) {
      screen.say("This is the first question.", Tone.PLAIN);
      return false;
    }
    Step step = before.pop();
    known = step.known();
    again = new ArrayDeque<>(step.again());
    screen.again();
    return true;
  }

  private void soFar(Outside outside) {
    if (!answers().complete()) {
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
  private boolean saved(Outside outside, String said) {
    if (!said.strip().matches("(?is)save(\\s.*)?")) {
      return false;
    }
    try {
      screen.say(outside.save(said.strip().substring("save".length()).strip()), Tone.PLAIN);
    } catch (UserError userError) {
      screen.say(userError.getMessage(), Tone.CARE);
    }
    return true;
  }

  /** Takes an answer; false if it is none, though other things may have been understood. */
  private boolean take(Place place, String said) {
    Reply reply = conversation.say(known, place, said, meant);
    meant = reply.meant();
    boolean told = !reply.told().isEmpty();
    if (told || reply.answered()) {
      before.push(new Step(known, List.copyOf(again)));
      known = reply.known();
      reply.told().forEach(one -> again.removeIf(each -> each.id().equals(one.id())));
    }
    for (Reply.Told one : reply.told()) {
      boolean asSaid = one.asked() && !one.guess() && one.value().equalsIgnoreCase(said);
      boolean unknown = one.value().equals(Answers.UNKNOWN);
      if (!asSaid && !unknown) {
        screen.say(one.sentence(), one.guess() ? Tone.CARE : Tone.FAINT);
      }
    }
    if (!reply.answered()) {
      screen.say(reply.objection(), Tone.CARE);
      return false;
    }
    again.remove(place);
    boolean unknown = known.answers().said(place).map(Answers.UNKNOWN::equals).orElse(false);
    if (unknown && reply.told().size() == 1) {
      screen.cost(known(), place);
    }
    return true;
  }

  /** What to find out first, for the end of the talk. */
  void tellFirst() {
    screen.tellFirst(known());
  }
}
