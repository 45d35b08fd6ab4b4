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
import underfoot.lesson.Sheet;
import underfoot.plan.Advice.CautionNote;
import underfoot.report.TextPage.Tone;
import underfoot.report.html.FloorDrawing;

/** Sheets of questions as text and as pages to print. */
public final class LessonReport {
  private static final String INDENT = "    ";

  private final Knowledge knowledge;
  private final Phrases phrases;

  /**
   * @param knowledge where phrases and sources are looked up
   */
  public LessonReport(Knowledge knowledge) {
    this.knowledge = knowledge;
    this.phrases = new Phrases(knowledge.wording());
  }

  private String variant(Lesson lesson) {
    return lesson.seed().isPresent()
        ? phrases.say("lesson-variant", "seed", Long.toString(lesson.seed().getAsLong()))
        : phrases.say("lesson-as-stated");
  }

  private String total(Sheet sheet) {
    return phrases.say(
        "lesson-total",
        "count",
        Integer.toString(sheet.questions().size()),
        "marks",
        Integer.toString(sheet.marks()));
  }

  private String name(Sheet sheet) {
    return sheet.pupil().isEmpty()
        ? phrases.say("lesson-name")
        : phrases.say("lesson-pupil", "name", sheet.pupil());
  }

  private String marks(Question question) {
    return question.level() == 1
        ? phrases.say("lesson-mark")
        : phrases.say("lesson-marks", "count", Integer.toString(question.level()));
  }

  /** How a question is to be answered. */
  public String reply(Question question) {
    return phrases.say(
        "lesson-reply-" + question.reply().name().toLowerCase(Locale.ROOT),
        "unit",
        question.unit(),
        "count",
        Integer.toString(question.right().size()));
  }

  /** What the right answer is, by its letters or lines first. */
  public String answer(Question question) {
    String letters = question.right().stream().map(this::anyOf).collect(Collectors.joining(", "));
    String answer = letters.isEmpty() ? question.answer() : letters + " - " + question.answer();
    return phrases.say("lesson-answer", "answer", answer);
  }

  private String anyOf(Set<String> group) {
    return group.stream().sorted().collect(Collectors.joining(" or "));
  }

  /** Why the answer is right: workings, rules and figures, a line each. */
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
    return lines.stream().distinct().toList();
  }

  /** What each wrong answer shows, a line each. */
  private List<String> shown(Question question) {
    List<String> lines = new ArrayList<>();
    Set<String> right = question.right().stream().flatMap(Set::stream).collect(Collectors.toSet());
    for (Question.Option option : question.options()) {
      boolean lines2 = question.reply() == Question.Reply.LINES;
      if (!option.shows().isEmpty() && lines2 == right.contains(option.label())) {
        lines.add(phrases.say("lesson-shows", "answer", option.label(), "shows", option.shows()));
      }
    }
    for (Question.Slip slip : question.slips()) {
      lines.add(
          phrases.say(
              "lesson-shows",
              "answer",
              underfoot.measure.Texts.of(slip.number(), question.unit()),
              "shows",
              slip.shows()));
    }
    return lines;
  }

  // --- text

  /**
   * Writes a sheet as text.
   *
   * @param sheet the sheet
   * @param answers whether the answer sheet follows
   * @param page where it is written
   */
  public void text(Sheet sheet, boolean answers, TextPage page) {
    page.bold(sheet.title());
    page.para(total(sheet) + ".");
    page.blank();
    page.para(name(sheet));
    know(sheet, page);
    int number = 0;
    for (Lesson lesson : sheet.lessons()) {
      floor(lesson, page);
      page.heading(phrases.say("lesson-questions"));
      for (Question question : lesson.questions()) {
        question(++number, question, page);
      }
    }
    if (answers) {
      answers(sheet, page);
    }
  }

  private void know(Sheet sheet, TextPage page) {
    for (Lesson.Know know : know(sheet)) {
      page.heading(phrases.say("lesson-know", "topic", know.title()));
      know.lines().forEach(page::item);
    }
  }

  private static List<Lesson.Know> know(Sheet sheet) {
    return sheet.lessons().stream().flatMap(one -> one.know().stream()).distinct().toList();
  }

  /** Writes what is told of a floor. */
  public void floor(Lesson lesson, TextPage page) {
    page.heading(phrases.say("lesson-floor", "floor", lesson.scenario().name()));
    lesson.floor().forEach(page::item);
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
    for (String line : question.given()) {
      page.para(INDENT + "| ", INDENT + "| ", line, Tone.PLAIN);
    }
    for (Question.Option option : question.options()) {
      page.para(INDENT + option.label() + ") ", INDENT + "   ", option.text(), Tone.PLAIN);
    }
    page.para(INDENT, INDENT, reply(question), Tone.FAINT);
  }

  private void answers(Sheet sheet, TextPage page) {
    page.heading(phrases.say("lesson-answers") + owner(sheet));
    for (Lesson lesson : sheet.lessons()) {
      page.para(varied(lesson));
    }
    int number = 0;
    for (Question question : sheet.questions()) {
      page.blank();
      page.para(String.format(Locale.ROOT, "%2d. ", ++number), INDENT, answer(question), Tone.BOLD);
      page.para(INDENT, INDENT, aim(question), Tone.FAINT);
      because(question, page);
      for (String line : shown(question)) {
        page.para(INDENT + "- ", INDENT + "  ", line, Tone.FAINT);
      }
    }
    for (Lesson lesson : sheet.lessons()) {
      page.blank();
      page.para(dangersOf(lesson));
      for (CautionNote danger : lesson.dangers()) {
        page.para(INDENT + "- ", INDENT + "  ", whole(danger), Tone.PLAIN);
      }
    }
  }

  private String dangersOf(Lesson lesson) {
    return lesson.dangers().isEmpty()
        ? phrases.say("lesson-no-danger", "floor", lesson.scenario().name())
        : phrases.say("lesson-dangers", "floor", lesson.scenario().name());
  }

  private static String whole(CautionNote danger) {
    return danger.title() + ". " + danger.parts().must();
  }

  private String owner(Sheet sheet) {
    return sheet.pupil().isEmpty() ? "" : " - " + sheet.pupil();
  }

  private String aim(Question question) {
    return phrases.say("lesson-aim", "aim", question.aim());
  }

  private String varied(Lesson lesson) {
    String said = lesson.scenario().name() + ", " + underfoot.measure.Texts.lower(variant(lesson));
    return lesson.changes().isEmpty()
        ? said + "."
        : said
            + ". "
            + phrases.say("lesson-varied", "changes", String.join("; ", lesson.changes()));
  }

  /** Writes why an answer is right. */
  public void because(Question question, TextPage page) {
    for (String line : because(question)) {
      page.para(INDENT + "- ", INDENT + "  ", line, Tone.PLAIN);
    }
  }

  // --- HTML

  /** How a page is made. */
  public enum Pages {
    /** The sheets alone: no answer is in the source. */
    SHEETS,
    /** The answers alone. */
    ANSWERS,
    /** The sheets, and the answers after each. */
    BOTH
  }

  /**
   * Sheets as one page to print, each on paper of its own.
   *
   * @param title the title of the page
   * @param sheets the sheets
   * @param pages what of them
   */
  public String html(String title, List<Sheet> sheets, Pages pages) {
    HtmlWriter out = HtmlPage.begin(title);
    int drawing = 0;
    for (Sheet sheet : sheets) {
      String breaks = sheet == sheets.get(0) ? "" : "new-page";
      if (pages != Pages.ANSWERS) {
        drawing = html(sheet, breaks, drawing, out);
      }
      if (pages != Pages.SHEETS) {
        htmlAnswers(sheet, pages == Pages.BOTH ? "new-page" : breaks, out);
      }
    }
    return HtmlPage.end(out);
  }

  private int html(Sheet sheet, String breaks, int drawing, HtmlWriter out) {
    out.block("h1", sheet.title(), "class", breaks);
    out.block("p", total(sheet) + ". " + name(sheet));
    for (Lesson.Know know : know(sheet)) {
      out.open("section", "class", "know").line();
      out.block("h3", phrases.say("lesson-know", "topic", know.title()));
      list(know.lines(), out);
      out.end("section");
    }
    int number = 0;
    int drawn = drawing;
    for (Lesson lesson : sheet.lessons()) {
      out.block("h2", phrases.say("lesson-floor", "floor", lesson.scenario().name()));
      out.add(new FloorDrawing(lesson, phrases, "floor-" + ++drawn).draw());
      list(lesson.floor(), out);
      if (!lesson.assumed().isEmpty()) {
        soft(phrases.say("lesson-assumed", "facts", String.join("; ", lesson.assumed())), out);
      }
      for (Question question : lesson.questions()) {
        html(++number, question, out);
      }
    }
    return drawn;
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

  /** A question without its answer, and room to write. */
  public void html(int number, Question question, HtmlWriter out) {
    ask(number, question, out);
    soft(reply(question), out);
    int lines =
        switch (question.reply()) {
          case ONE -> question.level() > 1 ? 2 : 1;
          case SOME, ORDER, LINES -> 1;
          case NUMBER -> 4;
        };
    for (int i = 0; i < lines; i++) {
      out.element("div", "", "class", "write");
    }
    out.line().end("section");
  }

  /** The beginning of a question: its section is left open. */
  void ask(int number, Question question, HtmlWriter out) {
    out.open("section", "class", "question").line();
    out.block("span", marks(question), "class", "mark");
    out.block("h3", number + ". " + question.ask());
    if (!question.given().isEmpty()) {
      out.open("div", "class", "given").line();
      question.given().forEach(line -> out.block("p", line));
      out.end("div");
    }
    if (!question.options().isEmpty()) {
      out.open("ul", "class", "options").line();
      for (Question.Option option : question.options()) {
        out.open("li");
        if (question.reply() != Question.Reply.ORDER) {
          out.element("span", "", "class", "box", "aria-hidden", "true");
        }
        out.text(option.label() + ") " + option.text()).end("li");
      }
      out.end("ul");
    }
  }

  private void htmlAnswers(Sheet sheet, String breaks, HtmlWriter out) {
    out.block(
        "h2", phrases.say("lesson-answers") + ": " + sheet.title() + owner(sheet), "class", breaks);
    sheet.lessons().forEach(lesson -> soft(varied(lesson), out));
    int number = 0;
    for (Question question : sheet.questions()) {
      out.open("section", "class", "question").line();
      out.block("h3", ++number + ". " + question.ask());
      out.block("p", answer(question), "class", "answer");
      soft(aim(question), out);
      list(because(question), out);
      for (String line : shown(question)) {
        soft(line, out);
      }
      out.end("section");
    }
    for (Lesson lesson : sheet.lessons()) {
      out.open("section", "class", "question").line();
      out.block("h3", dangersOf(lesson));
      list(lesson.dangers().stream().map(LessonReport::whole).toList(), out);
      out.end("section");
    }
  }
}
