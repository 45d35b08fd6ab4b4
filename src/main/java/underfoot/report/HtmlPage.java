package underfoot.report;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * A page of HTML that stands alone: nothing fetched, no script but the one the policy names by its
 * hash, readable on a screen in light and dark and on paper.
 */
public final class HtmlPage {
  /** Whatever got into a page: nothing is fetched, sent or run. */
  public static final String POLICY = policy("'none'", "");

  private HtmlPage() {}

  private static String policy(String forms, String scripts) {
    return "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none';"
        + " form-action "
        + forms
        + scripts;
  }

  /** What a policy says of the one script that a page runs: its SHA-256. */
  private static String only(String script) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(script.getBytes(StandardCharsets.UTF_8));
      return "; script-src 'sha256-" + Base64.getEncoder().encodeToString(hash) + "'";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Begins a page, which {@link #end} ends. */
  static HtmlWriter begin(String title) {
    return begin(title, "'none'");
  }

  /** Begins a page whose forms may go to a place. */
  static HtmlWriter begin(String title, String forms) {
    return head(title, policy(forms, ""));
  }

  /** Begins a page that runs one script of our own, which its end writes. */
  static HtmlWriter beginWith(String title, String script) {
    return head(title, policy("'none'", only(HtmlWriter.resource(HtmlPage.class, script))));
  }

  private static HtmlWriter head(String title, String policy) {
    HtmlWriter out = new HtmlWriter().document();
    out.open("html", "lang", "en-GB").line().open("head").line();
    out.open("meta", "charset", "utf-8").line();
    out.open("meta", "http-equiv", "Content-Security-Policy", "content", policy).line();
    out.open("meta", "name", "viewport", "content", "width=device-width, initial-scale=1").line();
    out.block("title", title).open("style").line();
    out.style(HtmlPage.class, "sheet.css").end("style");
    return out.end("head").open("body").line().open("main").line();
  }

  /**
   * Begins a page that is one sheet of A4, read alike by browsers and by a renderer of paper;
   * {@link #endPaper} ends it.
   *
   * @param title its title
   * @param points the size of its writing, pt
   */
  public static HtmlWriter paper(String title, double points) {
    HtmlWriter out = new HtmlWriter().document();
    out.open("html", "lang", "en-GB", "xmlns", "http://www.w3.org/1999/xhtml").open("head").line();
    out.empty("meta", "charset", "utf-8").line();
    out.empty("meta", "http-equiv", "Content-Security-Policy", "content", POLICY).line();
    out.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1").line();
    out.block("title", title).open("style").style(HtmlPage.class, "one-page.css").end("style");
    out.end("head").open("body", "style", "font-size: " + points + "pt").line();
    return out.open("main").line();
  }

  /** The whole page that {@link #paper} began. */
  public static String endPaper(HtmlWriter out) {
    return out.end("main").end("body").end("html").toString();
  }

  /** The whole page, with the script that {@link #beginWith} named. */
  static String endWith(HtmlWriter out, String script) {
    out.end("main").script(HtmlPage.class, script);
    return out.end("body").end("html").toString();
  }

  /** The whole page. */
  static String end(HtmlWriter out) {
    return out.end("main").end("body").end("html").toString();
  }
}
