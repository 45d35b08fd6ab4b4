package underfoot.report.html;

import underfoot.knowledge.Phrases;
import underfoot.report.HtmlWriter;

/** A table of the page, in a region that scrolls on its own where it is wider than the screen. */
final class Table {
  private final HtmlWriter out;
  private final Phrases speech;

  Table(HtmlWriter out, Phrases speech) {
    this.out = out;
    this.speech = speech;
  }

  /** Begins it, with its caption and the headings of its columns. */
  void open(String caption, String... columns) {
    out.open(
        "div",
        "class",
        "table",
        "role",
        "region",
        "tabindex",
        "0",
        "aria-label",
        speech.say(caption));
    out.open("table").element("caption", speech.say(caption)).line();
    out.open("thead").open("tr");
    for (String column : columns) {
      out.element("th", speech.say(column), "scope", "col");
    }
    out.close("tr").close("thead").open("tbody").line();
  }

  /** A cell with a number in it. */
  void number(String words) {
    out.element("td", words, "class", "n");
  }

  /** Ends it. */
  void close() {
    out.close("tbody").close("table").end("div");
  }
}
