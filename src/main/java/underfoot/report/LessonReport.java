package underfoot.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.lesson.Lesson;
import underfoot.lesson.Question;
import underfoot.report.TextPage.Tone;

/** A lesson as text and as a page to print. */
public final class LessonReport {
  private static final String INDENT = "    ";

  private final Lesson lesson;
  private final Knowledge knowledge;
  private final Phrases phrases;

  /**
   * @param lesson the lesson
   * @param knowledge where phrases and sources are looked up
   */
  public LessonReport(Lesson lesson, Knowledge knowledge) {
    this.lesson = lesson;
    this.knowledge = knowledge;
    this.phrases = new Phrases(knowledge.wording());
  }

  private String title() {
    return phrases.say("lesson-title", "scenario", lesson.scenario().name());
  }

  private String variant() {
    return lesson.seed().isPresent()
        ? phrases.say("lesson-variant", "seed", Long.toString(lesson.seed().getAsLong()))
        : phrases.say("lesson-as-stated");
  }

  private String total() {
    String count = Integer.toString(lesson.questions().size());
    return phrases.say("lesson-total", "count", count, "marks", Integer.toString(lesson.marks()));
  }

  private String marks(Question question) {
    return question.level() == 1
        ? phrases.say("lesson-mark")
        : phrases.say("lesson-marks", "count", Integer.toString(question.level()));
  }

  private String level(int level) {
    return phrases.say("lesson-level-" + level);
  }

  /** How a question is to be answered. */
  public String reply(Question question) {
    return phrases.say(
        "lesson-reply-" + question.reply().name().toLowerCase(Locale.ROOT),
        "unit",
        question.unit());
  }

  /** What the right answer is, by its letters or lines first. */
  public String answer(Question question) {
    String letters = question.right().stream().map(this::anyOf).collect(Collectors.joining(", "));
    String answer = letters.isEmpty() ? question.answer() : letters + " - " + question.answer();
    return phrases.say("lesson-answer", "answer", answer);
  }

  private String anyOf(Set<String> group) {
    String lines = group.stream().sorted().collect(Collectors.joining(" or "));
    return group.size() == 1 ? lines : phrases.say("lesson-any-of", "lines", lines);
  }

  /** Why the answer is right: workings, rules, figures and sources, a line each. */
  public List<String> because(Question question) {
    List<String> lines = new ArrayList<>(question.worked());
    for (Question.Cite cite : question.cites()) {
      lines.add(
          phrases.say(
              "lesson-why",
              "reason",
              cite.reason(),
              "rule",
              cite.rule(),
              "source",
              cite.source(),
              "status",
              cite.status()));
    }
    for (Figure figure : question.figures()) {
      lines.add(
          phrases.say(
              "lesson-figure",
              "figure",
              figure.name(),
              "value",
              figure.text(),
              "description",
              figure.description(),
              "source",
              knowledge.source(figure.source()).title(),
              "status",
              figure.status()));
    }
    if (!question.source().isEmpty()) {
      lines.add(question.source());
    }
    return lines;
  }

  // --- text

  /**
   * Writes the worksheet as text.
   *
   * @param answers whether the answer sheet follows
   * @param page where it is written
   */
  public void text(boolean answers, TextPage page) {
    page.bold(title());
    page.para(variant() + ". " + total() + ".");
    page.blank();
    page.para(phrases.say("lesson-name"));
    floor(page);
    page.heading(phrases.say("lesson-questions"));
    int number = 0;
    int level = 0;
    for (Question question : lesson.questions()) {
      if (question.level() != level) {
        level = question.level();
        page.heading(level(level));
      }
      question(++number, question, page);
    }
    if (answers) {
      answers(page);
    }
  }

  /** Writes what is told of the floor. */
  public void floor(TextPage page) {
    page.heading(phrases.say("lesson-floor"));
    for (String line : lesson.floor()) {
      page.item(line);
    }
    if (!lesson.assumed().isEmpty()) {
      page.para(phrases.say("lesson-assumed", "facts", String.join("; ", lesson.assumed())));
    }
  }

  /** Writes one question without its answer. */
  public void question(int number, Question question, TextPage page) {
    page.blank();
    page.para(
        String.format(Locale.ROOT, "%2d. ", number),
        INDENT,
        question.ask() + " (" + marks(question) + ")",
        Tone.PLAIN);
    for (Question.Option option : question.options()) {
      page.para(INDENT + option.label() + ") ", INDENT + "   ", option.text(), Tone.PLAIN);
    }
    page.para(INDENT, INDENT, reply(question), Tone.FAINT);
    if (question.reply() == Question.Reply.ONE && question.ask().contains("why")) {
      page.para(INDENT, INDENT, phrases.say("lesson-sentence"), Tone.PLAIN);
    }
  }

  private void answers(TextPage page) {
    page.heading(phrases.say("lesson-answers") + " - " + variant());
    if (!lesson.changes().isEmpty()) {
      page.para(phrases.say("lesson-varied", "changes", String.join("; ", lesson.changes())));
    }
    int number = 0;
    for (Question question : lesson.questions()) {
      page.blank();
      page.para(String.format(Locale.ROOT, "%2d. ", ++number), INDENT, answer(question), Tone.BOLD);
      because(question, page);
    }
  }

  /** Writes why an answer is right. */
  public void because(Question question, TextPage page) {
    for (String line : because(question)) {
      page.para(INDENT + "- ", INDENT + "  ", line, Tone.PLAIN);
    }
  }

  // --- HTML

  /**
   * The worksheet as a page to print.
   *
   * @param answers whether the answer sheet follows, on a page of its own
   */
  public String html(boolean answers) {
    HtmlWriter out = HtmlPage.begin(title());
    out.block("h1", title());
    out.block("p", variant() + ". " + total() + ".");
    out.block("p", phrases.say("lesson-name"));
    out.block("h2", phrases.say("lesson-floor"));
    list(lesson.floor(), out);
    if (!lesson.assumed().isEmpty()) {
      soft(phrases.say("lesson-assumed", "facts", String.join("; ", lesson.assumed())), out);
    }
    int number = 0;
    int level = 0;
    for (Question question : lesson.questions()) {
      if (question.level() != level) {
        level = question.level();
        out.block("h2", level(level));
      }
      html(++number, question, out);
    }
    if (answers) {
      htmlAnswers(out);
    }
    return HtmlPage.end(out);
  }

  private static void list(List<String> lines, HtmlWriter out) {
    if (!lines.isEmpty()) {
      out.open("ul").line();
      lines.forEach(line -> out.block("li", line));
      out.end("ul");
    }
  }

  private static void soft(String words, HtmlWriter out) {
    out.block("p", words, "class", "soft");
  }

  private void html(int number, Question question, HtmlWriter out) {
    out.open("section", "class", "question").line();
    out.block("span", marks(question), "class", "mark");
    out.block("h3", number + ". " + question.ask());
    if (!question.options().isEmpty()) {
      out.open("ul", "class", "options").line();
      for (Question.Option option : question.options()) {
        out.open("li");
        if (question.reply() == Question.Reply.ONE || question.reply() == Question.Reply.SOME) {
          out.element("span", "", "class", "box", "aria-hidden", "true");
        }
        out.text(option.label() + ") " + option.text()).end("li");
      }
      out.end("ul");
    }
    soft(reply(question), out);
    int lines =
        switch (question.reply()) {
          case ONE -> question.ask().contains("why") ? 2 : 0;
          case SOME -> 0;
          case ORDER, LINES -> 1;
          case NUMBER -> 3;
        };
    for (int i = 0; i < lines; i++) {
      out.element("div", "", "class", "write");
    }
    out.line().end("section");
  }

  private void htmlAnswers(HtmlWriter out) {
    out.block("h2", phrases.say("lesson-answers") + " - " + variant(), "class", "new-page");
    if (!lesson.changes().isEmpty()) {
      soft(phrases.say("lesson-varied", "changes", String.join("; ", lesson.changes())), out);
    }
    int number = 0;
    for (Question question : lesson.questions()) {
      out.open("section", "class", "question").line();
      out.block("h3", ++number + ". " + question.ask());
      out.block("p", answer(question), "class", "answer");
      list(because(question), out);
      out.end("section");
    }
  }
}
