package underfoot.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import underfoot.knowledge.Phrases;
import underfoot.lesson.Lesson;
import underfoot.lesson.Marking;
import underfoot.lesson.Question;
import underfoot.lesson.Sheet;
import underfoot.report.LessonReport;
import underfoot.report.TextPage;
import underfoot.report.TextPage.Tone;

/** Asks questions on the terminal. What can only be a slip of the hand is asked for again. */
final class AnswerTalk {
  private final Environment around;
  private final SafeOutput out;
  private final LessonReport report;
  private final Phrases phrases;
  private final Pages pages;
  private final BufferedReader replies;

  /** Makes empty pages. */
  interface Pages {
    TextPage page() throws UserError;
  }

  AnswerTalk(
      Environment around, SafeOutput out, LessonReport report, Phrases phrases, Pages pages) {
    this.around = around;
    this.out = out;
    this.report = report;
    this.phrases = phrases;
    this.pages = pages;
    this.replies = new BufferedReader(new InputStreamReader(around.in(), StandardCharsets.UTF_8));
  }

  /** Where answers go. */
  interface Taker {
    void take(int question, String answer) throws UserError;
  }

  /**
   * Asks a sheet and marks every answer at once. Where the input ends, the rest is not answered.
   */
  void ask(Sheet sheet) throws UserError {
    TextPage first = pages.page();
    first.para("", "", sheet.title(), Tone.BOLD);
    for (Lesson lesson : sheet.lessons()) {
      report.floor(lesson, first);
    }
    out.page(first);
    List<Question> questions = sheet.questions();
    double got = 0;
    int answered = 0;
    for (int i = 0; i < questions.size(); i++) {
      Question question = questions.get(i);
      String reply = reply(i + 1, question);
      Marking.Marked marked = Marking.of(question, reply == null ? "" : reply);
      got += marked.got();
      answered += marked.read() ? 1 : 0;
      TextPage told = pages.page();
      told.para(verdict(question, marked));
      marked.shows().forEach(told::para);
      told.para(report.answer(question));
      report.because(question, told);
      out.page(told);
    }
    TextPage score = pages.page();
    score.blank();
    score.para(
        "",
        "",
        phrases.say(
            "lesson-score",
            "got",
            half(got),
            "marks",
            Integer.toString(sheet.marks()),
            "answered",
            Integer.toString(answered),
            "count",
            Integer.toString(questions.size())),
        Tone.BOLD);
    out.page(score);
  }

  /** Asks one question until it is answered; null where the input ends. */
  private String reply(int number, Question question) throws UserError {
    TextPage ask = pages.page();
    report.question(number, question, ask);
    out.println();
    out.page(ask);
    String last = null;
    while (true) {
      out.print("> ");
      out.flush();
      String line = line();
      if (!around.terminal()) {
        out.println(line == null ? "" : line);
      }
      if (line == null) {
        return last;
      }
      Marking.Marked marked = Marking.of(question, line);
      if (marked.state() != Marking.State.AGAIN) {
        return line;
      }
      last = line;
      TextPage again = pages.page();
      again.para(again(question, marked));
      out.page(again);
    }
  }

  private String again(Question question, Marking.Marked marked) {
    return phrases.say(marked.say()) + " " + report.reply(question);
  }

  /**
   * Asks questions and takes the answers in, without telling what is right.
   *
   * @param questions the questions
   * @param known what was answered before; an empty line leaves it as it is
   * @param taker takes each answer in as soon as it is given
   */
  void take(List<Question> questions, List<String> known, Taker taker) throws UserError {
    for (int i = 0; i < questions.size(); i++) {
      if (!known.get(i).isBlank()) {
        TextPage before = pages.page();
        before.blank();
        before.para(phrases.say("mark-answered-before", "answer", known.get(i)));
        out.page(before);
      }
      String reply = reply(i + 1, questions.get(i));
      if (reply == null) {
        return;
      }
      if (!reply.isBlank()) {
        taker.take(i + 1, reply.strip());
      }
    }
  }

  private String verdict(Question question, Marking.Marked marked) {
    return switch (marked.state()) {
      case RIGHT -> phrases.say("lesson-right");
      case PARTLY ->
          phrases.say(
              "lesson-partly",
              "got",
              half(marked.got()),
              "marks",
              Integer.toString(question.level()));
      case WRONG -> phrases.say("lesson-wrong");
      default -> phrases.say("lesson-no-answer");
    };
  }

  /** Marks, in halves. */
  static String half(double marks) {
    return marks == Math.rint(marks)
        ? Integer.toString((int) marks)
        : String.format(Locale.ROOT, "%.1f", marks);
  }

  private String line() throws UserError {
    try {
      return replies.readLine();
    } catch (IOException e) {
      throw UserError.usage("Standard input cannot be read");
    }
  }
}
