package underfoot.report;

/**
 * A page of HTML that stands alone: no script, nothing fetched, readable on a screen in light and
 * dark and on paper. All text is escaped on its way in.
 */
public final class HtmlPage {
  private static final String STYLE =
      """
      :root{color-scheme:light dark;--ink:#1b1b1b;--soft:#555;--line:#bbb;--paper:#fff;--wash:#f3f1ec;\
      --rule:#e3eef8;--fact:#eef5e6;--figure:#fdf3d8;--key:#0b57a4}
      @media (prefers-color-scheme:dark){:root{--ink:#ececec;--soft:#b5b5b5;--line:#666;--paper:#181818;\
      --wash:#262626;--rule:#1d3448;--fact:#24361a;--figure:#42371a;--key:#8ec5ff}}
      *{box-sizing:border-box}
      body{margin:0 auto;padding:1.5rem;max-width:52rem;background:var(--paper);color:var(--ink);\
      font:16px/1.5 Georgia,'Times New Roman',serif}
      h1,h2,h3,nav,.id,.mark,th{font-family:Verdana,'DejaVu Sans',sans-serif}
      h1{font-size:1.5rem;line-height:1.25}h2{font-size:1.15rem;margin-top:2rem;\
      border-bottom:2px solid var(--line);padding-bottom:.2rem}h3{font-size:1rem;margin:1.2rem 0 .3rem}
      p{margin:.4rem 0}ul,ol{margin:.3rem 0;padding-left:1.6rem}
      a{color:var(--key)}.soft{color:var(--soft);font-size:.92em}.id{font-size:.82em;color:var(--key)}
      .mark{float:right;font-size:.8rem;color:var(--soft)}
      .write{border-bottom:1px solid var(--line);height:1.9rem}
      .box{display:inline-block;width:1em;height:1em;border:1.5px solid var(--ink);margin-right:.5em;\
      vertical-align:-.12em}
      .question,.rule{break-inside:avoid}.options{list-style:none;padding-left:.3rem}
      .answer{background:var(--wash);padding:.4rem .8rem;margin:.4rem 0;border-left:4px solid var(--key)}
      pre{white-space:pre-wrap;font-family:'DejaVu Sans Mono',Consolas,monospace;font-size:.9em;margin:.3rem 0}
      dl{display:grid;grid-template-columns:max-content 1fr;gap:.1rem .9rem;margin:.3rem 0}
      dt{color:var(--soft)}dd{margin:0}
      svg{max-width:100%;height:auto;display:block;margin:.6rem 0}
      svg text{font-family:Verdana,'DejaVu Sans',sans-serif;fill:var(--ink)}
      .chain{margin:.6rem 0}svg text{font-size:11px}svg text.more{font-style:italic;fill:var(--soft)}
      .edge{fill:none;stroke:var(--line);stroke-width:1.2}rect{stroke:var(--ink);stroke-width:1}
      rect.decision{fill:var(--wash);stroke-width:2.2}rect.rule{fill:var(--rule)}rect.fact{fill:var(--fact)}
      rect.figure{fill:var(--figure);stroke-dasharray:4 2}dd a{white-space:nowrap}
      a:focus-visible{outline:3px solid var(--key)}
      @page{size:A4;margin:16mm 15mm}
      @media print{:root{--ink:#000;--soft:#333;--line:#777;--paper:#fff;--wash:#f4f4f4;--rule:#eef4fa;\
      --fact:#f1f6ec;--figure:#fbf5e4;--key:#000}
      body{max-width:none;padding:0;font-size:11pt}a{text-decoration:none}nav{display:none}
      .new-page{break-before:page}h2,h3{break-after:avoid}}
      """;

  /** Whatever got into a page: nothing is fetched, sent or run. */
  public static final String POLICY =
      "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none';"
          + " form-action 'none'";

  private final StringBuilder out = new StringBuilder();

  HtmlPage(String title) {
    out.append("<!DOCTYPE html>\n<html lang=\"en-GB\">\n<head>\n<meta charset=\"utf-8\">\n")
        .append("<meta http-equiv=\"Content-Security-Policy\" content=\"" + POLICY + "\">\n")
        .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>")
        .append(escape(title))
        .append("</title>\n<style>\n")
        .append(STYLE)
        .append("</style>\n</head>\n<body>\n<main>\n");
  }

  /** Markup of our own, as it is. */
  HtmlPage raw(String markup) {
    out.append(markup);
    return this;
  }

  /** An element with text in it. */
  HtmlPage element(String name, String text) {
    return raw("<" + name + ">").text(text).raw("</" + name + ">\n");
  }

  /** An element of a class, with text in it. */
  HtmlPage element(String name, String style, String text) {
    return raw("<" + name + " class=\"" + style + "\">").text(text).raw("</" + name + ">\n");
  }

  /** Text, escaped. */
  HtmlPage text(String text) {
    out.append(escape(text));
    return this;
  }

  /** The whole page. */
  String html() {
    return out + "</main>\n</body>\n</html>\n";
  }

  /** Text so that no character of it is taken for markup, within elements or attributes. */
  static String escape(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 16);
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> {
                  if (c >= ' ' || c == '\n' || c == '\t') {
                    safe.appendCodePoint(c);
                  } else {
                    safe.append(' ');
                  }
                }
              }
            });
    return safe.toString();
  }
}
