package underfoot.report;

import java.util.List;
import underfoot.knowledge.Phrases;
import underfoot.lesson.ClassBook;
import underfoot.lesson.Question;

/** Pages on which a class gives its answers. What is right does not get into them. */
public final class ClassForms {
  private final LessonReport report;
  private final Phrases phrases;

  /**
   * @param report writes the questions
   * @param phrases what else is written
   */
  public ClassForms(LessonReport report, Phrases phrases) {
    this.report = report;
    this.phrases = phrases;
  }

  /**
   * The sheets of a class, each a link.
   *
   * @param book the class
   * @param open how many questions of each sheet are open
   */
  public String list(ClassBook book, List<Integer> open) {
    HtmlWriter out = HtmlPage.begin(book.course(), "'self'");
    out.block("h1", book.course());
    String pupil = "";
    for (int i = 0; i < book.sheets().size(); i++) {
      ClassBook.Handed one = book.sheets().get(i);
      if (i == 0 || !one.pupil().equals(pupil)) {
        pupil = one.pupil();
        out.open("h2").own(pupil).end("h2");
      }
      out.open("p").element("a", sheet(one), "href", Integer.toString(i));
      out.text(" " + phrases.say("mark-still", "open", Integer.toString(open.get(i)))).end("p");
    }
    return HtmlPage.end(out);
  }

  private String sheet(ClassBook.Handed one) {
    return phrases.say(
        "course-sheet", "number", Integer.toString(one.sheet()), "title", one.title());
  }

  /**
   * A sheet to answer.
   *
   * @param sheet the sheet
   * @param answers what was answered before
   * @param again for each question the phrase that says why its answer is given back, or nothing
   */
  public String form(ClassBook.Handed sheet, List<String> answers, List<String> again) {
    HtmlWriter out = HtmlPage.begin(sheet(sheet), "'self'");
    out.block("h1", sheet(sheet));
    out.open("p").own(sheet.pupil()).text(". " + phrases.say("mark-floor-on-paper")).end("p");
    out.open("form", "method", "post").line();
    for (int i = 0; i < sheet.questions().size(); i++) {
      Question question = sheet.questions().get(i);
      String id = "q" + (i + 1);
      report.ask(i + 1, question, out);
      out.open("p").element("label", report.reply(question), "for", id).empty("br");
      out.empty("input", "id", id, "name", id, "value", answers.get(i), "autocomplete", "off");
      out.end("p");
      if (!again.get(i).isEmpty()) {
        out.block("p", phrases.say(again.get(i)), "class", "answer", "role", "alert");
      }
      out.end("section");
    }
    out.block("button", phrases.say("mark-send"), "type", "submit").end("form");
    out.open("p").element("a", phrases.say("mark-back"), "href", "./").end("p");
    return HtmlPage.end(out);
  }
}
