package underfoot.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import underfoot.knowledge.LessonBook;
import underfoot.knowledge.Phrases;
import underfoot.lesson.Results;
import underfoot.lesson.Results.Result;
import underfoot.lesson.Results.Tally;
import underfoot.measure.Texts;
import underfoot.report.TextPage.Tone;

/** What a class knows, as text and as a page. */
public final class ResultsReport {
  private final Results results;
  private final LessonBook book;
  private final Phrases phrases;

  /**
   * @param results the results
   * @param book where topics are looked up
   * @param phrases what is written
   */
  public ResultsReport(Results results, LessonBook book, Phrases phrases) {
    this.results = results;
    this.book = book;
    this.phrases = phrases;
  }

  private String topic(String id) {
    return book.topics().stream()
        .filter(one -> one.id().equals(id))
        .findFirst()
        .map(one -> one.field("title"))
        .orElse(id);
  }

  private String share(Tally tally) {
    return phrases.say(
        "mark-share",
        "got",
        Texts.tenths(tally.got()),
        "of",
        Texts.tenths(tally.of()),
        "percent",
        tally.of() == 0 ? "-" : Long.toString(Math.round(100 * tally.got() / tally.of())));
  }

  /** Writes the results as text. */
  public void text(TextPage page) {
    page.bold(phrases.say("mark-title", "course", results.course()));
    text(phrases.say("mark-class"), results.together(), page);
    for (Result one : results.pupils()) {
      text(one.name(), one, page);
    }
  }

  private void text(String name, Result result, TextPage page) {
    page.heading(name);
    page.para(phrases.say("mark-total", "share", share(result.total())));
    for (String line : lines(result)) {
      page.item(line);
    }
    section("mark-misunderstood", misunderstood(result), page);
    section("mark-next", next(result), page);
    if (result != results.together() || results.pupils().size() == 1) {
      section("mark-again", again(result), page);
    }
  }

  private void section(String phrase, List<String> lines, TextPage page) {
    if (!lines.isEmpty()) {
      page.blank();
      page.para("", "", phrases.say(phrase), Tone.BOLD);
      lines.forEach(page::item);
    }
  }

  private List<String> lines(Result result) {
    List<String> lines = new ArrayList<>();
    result.topics().forEach((topic, tally) -> lines.add(topic(topic) + ": " + share(tally)));
    if (result.leftOut() > 0) {
      lines.add(phrases.say("mark-left-out", "count", Integer.toString(result.leftOut())));
    }
    return lines;
  }

  private List<String> misunderstood(Result result) {
    return result.misunderstood().entrySet().stream()
        .map(one -> one.getKey() + (one.getValue() > 1 ? times(one.getValue()) : ""))
        .toList();
  }

  private String times(int many) {
    return " (" + phrases.say("mark-times", "count", Integer.toString(many)) + ")";
  }

  private List<String> next(Result result) {
    return result.next().stream()
        .map(one -> phrases.say("mark-practise", "topic", topic(one.topic()), "aim", one.aim()))
        .toList();
  }

  private List<String> again(Result result) {
    return result.again().stream()
        .map(
            one ->
                phrases.say(
                    "mark-written",
                    "sheet",
                    Integer.toString(one.place().sheet()),
                    "question",
                    Integer.toString(one.place().question()),
                    "answer",
                    one.answer(),
                    "why",
                    phrases.say(one.say())))
        .toList();
  }

  /** The results as a page. */
  public String html() {
    String title = phrases.say("mark-title", "course", results.course());
    HtmlWriter out = HtmlPage.begin(title);
    out.block("h1", title);
    table(out);
    html(phrases.say("mark-class"), results.together(), "", out);
    for (Result one : results.pupils()) {
      html(one.name(), one, "new-page", out);
    }
    return HtmlPage.end(out);
  }

  /** Pupils down, topics across. */
  private void table(HtmlWriter out) {
    out.open("table").open("tr").block("th", phrases.say("mark-pupil"));
    Map<String, Tally> topics = results.together().topics();
    topics.keySet().forEach(topic -> out.block("th", topic(topic)));
    out.block("th", phrases.say("mark-all")).end("tr");
    for (Result one : results.pupils()) {
      row(one.name(), one, topics, out);
    }
    row(phrases.say("mark-class"), results.together(), topics, out);
    out.end("table");
  }

  private void row(String name, Result result, Map<String, Tally> topics, HtmlWriter out) {
    out.open("tr").own("th", name).line();
    topics
        .keySet()
        .forEach(
            topic -> {
              Tally tally = result.topics().get(topic);
              out.block("td", tally == null ? "" : share(tally));
            });
    out.block("td", share(result.total())).end("tr");
  }

  private void html(String name, Result result, String breaks, HtmlWriter out) {
    out.open("h2", "class", breaks).own(name).end("h2");
    out.block("p", phrases.say("mark-total", "share", share(result.total())));
    list("", lines(result), out);
    list("mark-misunderstood", misunderstood(result), out);
    list("mark-next", next(result), out);
    if (result != results.together()) {
      list("mark-again", again(result), out);
    }
  }

  private void list(String phrase, List<String> lines, HtmlWriter out) {
    if (!lines.isEmpty()) {
      if (!phrase.isEmpty()) {
        out.block("h3", phrases.say(phrase));
      }
      out.open("ul").line();
      lines.forEach(line -> out.block("li", line));
      out.end("ul");
    }
  }
}
