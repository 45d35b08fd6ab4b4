package underfoot.cli;

import java.util.List;
import java.util.Locale;
import java.util.function.IntSupplier;
import underfoot.measure.Texts;
import underfoot.report.TextPage;
import underfoot.report.TextPage.Tone;
import underfoot.scenario.Kind;
import underfoot.scenario.Place;
import underfoot.talk.Asked;
import underfoot.talk.Conversation;
import underfoot.talk.Known;
import underfoot.talk.OpenPoint;

/** What an interview says at a terminal. */
final class InterviewScreen {
  private static final int FIRST_THINGS = 3;
  private static final int EASY_TO_READ = 100;

  private final Conversation conversation;
  private final SafeOutput out;
  private final IntSupplier width;
  private final boolean colour;
  private String lastPart = "";
  private String lastPreview = "";

  /**
   * @param conversation what is asked and told
   * @param out where words go
   * @param width how many columns there are, asked before each paragraph
   * @param colour whether colours are wanted
   */
  InterviewScreen(Conversation conversation, SafeOutput out, IntSupplier width, boolean colour) {
    this.conversation = conversation;
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
  void ask(Asked question) {
    if (!question.part().equals(lastPart)) {
      say(question.part(), Tone.BOLD);
      lastPart = question.part();
    }
    put(question);
    if (question.place().fact().kind() != Kind.YES_NO) {
      int n = 1;
      for (Asked.Choice choice : question.choices()) {
        String more = choice.looks().isEmpty() ? "" : " - " + choice.looks();
        line(String.format(Locale.ROOT, "  %2d  ", n++) + choice.value() + more, "       ");
      }
    }
    String how = question.how();
    if (!question.guess().isEmpty()) {
      how = Texts.capital(question.said()) + " was taken; press Enter to leave it at that.";
    }
    how = (how + (question.picture().isEmpty() ? "" : " Say help for a picture.")).strip();
    if (!how.isEmpty()) {
      say(how, Tone.FAINT);
    }
  }

  /** Puts a question alone. */
  void put(Asked question) {
    String how =
        switch (question.place().fact().kind()) {
          case YES_NO -> " (yes or no)";
          case CHOICES -> " (one or several, with commas between)";
          default -> "";
        };
    say(question.ask() + how, Tone.PLAIN);
  }

  /** Tells what a question means and how to find the answer. */
  void help(Asked question) {
    say(Texts.sentence(question.means()), Tone.PLAIN);
    if (!question.look().isEmpty()) {
      say("How to find out: " + Texts.sentence(question.look()), Tone.PLAIN);
    }
    if (!question.picture().isEmpty()) {
      out.println(question.picture());
    }
    if (!question.how().isEmpty()) {
      say(question.how(), Tone.PLAIN);
    }
    blank();
    put(question);
  }

  /** Tells what hangs on an answer. */
  void why(Known known, Asked question) {
    say("It matters because", Tone.PLAIN);
    conversation.why(known, question.place()).forEach(one -> line("- " + one, "  "));
    blank();
    put(question);
  }

  /** What not knowing costs. */
  void cost(Known known, Place place) {
    List<String> lines = conversation.cost(known, place);
    for (int i = 0; i < lines.size(); i++) {
      if (i == 0) {
        say(lines.get(i), Tone.CARE);
      } else {
        line("- " + lines.get(i), "  ");
      }
    }
  }

  /** The advice so far, in one line, if it is another than before. */
  void preview(Known known) {
    String now =
        conversation.interview().assessment(known.answers()).map(conversation::preview).orElse("");
    if (!now.isEmpty() && !now.equals(lastPreview)) {
      say("So far: " + now, Tone.FAINT);
    }
    lastPreview = now;
    blank();
  }

  /** What to find out first, for the end of the talk. */
  void tellFirst(Known known) {
    List<OpenPoint> first = conversation.first(known, FIRST_THINGS);
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
}
