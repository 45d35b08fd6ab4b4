package underfoot.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * Writes well-formed markup. Everything that is not a tag goes through {@link #text}, which leaves
 * nothing that a browser could take for one.
 */
public final class HtmlWriter {
  private final StringBuilder out = new StringBuilder();

  /** Opens an element. Attributes are names and values by turns; an empty value leaves one out. */
  public HtmlWriter open(String name, String... attributes) {
    return begin(name, attributes).content();
  }

  /** An element without content. */
  public HtmlWriter empty(String name, String... attributes) {
    return begin(name, attributes).finish();
  }

  /** Begins a tag, to which {@link #with} adds; {@link #content} or {@link #finish} ends it. */
  public HtmlWriter begin(String name, String... attributes) {
    out.append('<').append(name);
    return with(attributes);
  }

  /** Attributes of the tag begun. */
  public HtmlWriter with(String... attributes) {
    for (int i = 0; i + 1 < attributes.length; i += 2) {
      if (!attributes[i + 1].isEmpty()) {
        out.append(' ').append(attributes[i]).append("=\"");
        escape(attributes[i + 1]);
        out.append('"');
      }
    }
    return this;
  }

  /** Ends the tag begun; its content follows. */
  public HtmlWriter content() {
    out.append('>');
    return this;
  }

  /** Ends the tag begun, and with it the element. */
  public HtmlWriter finish() {
    out.append("/>");
    return this;
  }

  /** Closes an element. */
  public HtmlWriter close(String name) {
    out.append("</").append(name).append('>');
    return this;
  }

  /** Closes an element that ends a block. */
  public HtmlWriter end(String name) {
    return close(name).line();
  }

  /** Text. */
  public HtmlWriter text(String words) {
    escape(words);
    return this;
  }

  /** Somebody's own words, kept from turning the direction of what stands round them. */
  public HtmlWriter own(String words) {
    return open("bdi").text(words).close("bdi");
  }

  /** An element with somebody's own words. */
  public HtmlWriter own(String name, String words, String... attributes) {
    return open(name, attributes).own(words).close(name);
  }

  /** An element with a text. */
  public HtmlWriter element(String name, String words, String... attributes) {
    return open(name, attributes).text(words).close(name);
  }

  /** A line break in the source, for whoever reads it. */
  public HtmlWriter line() {
    out.append('\n');
    return this;
  }

  /** Markup made elsewhere by this class. */
  public HtmlWriter add(HtmlWriter other) {
    out.append(other.out);
    return this;
  }

  /** An element with a text, on a line of its own. */
  public HtmlWriter block(String name, String words, String... attributes) {
    return element(name, words, attributes).line();
  }

  /** Begins a document. */
  public HtmlWriter document() {
    out.append("<!DOCTYPE html>\n");
    return this;
  }

  /** A style sheet that comes with the program, as it is. */
  public HtmlWriter style(Class<?> beside, String file) {
    out.append(resource(beside, file));
    return this;
  }

  /** A script of our own, as it stands in a file; a policy names it by what it is. */
  public HtmlWriter script(Class<?> beside, String file) {
    out.append("<script>").append(resource(beside, file)).append("</script>\n");
    return this;
  }

  /** What stands in a file beside a class. */
  static String resource(Class<?> beside, String file) {
    try (InputStream in = beside.getResourceAsStream(file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void escape(String words) {
    for (int i = 0; i < words.length(); ) {
      int c = words.codePointAt(i);
      i += Character.charCount(c);
      switch (c) {
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '&' -> out.append("&amp;");
        case '"' -> out.append("&quot;");
        case '\'' -> out.append("&#39;");
        default -> {
          if (allowed(c)) {
            out.appendCodePoint(c);
          } else {
            out.append('\uFFFD');
          }
        }
      }
    }
  }

  /** Whether XML allows a character, and it does not turn the direction of text unseen. */
  private static boolean allowed(int c) {
    boolean control = c < 0x20 && c != '\t' && c != '\n' || c >= 0x7F && c < 0xA0;
    boolean half = c >= 0xD800 && c <= 0xDFFF || c == 0xFFFE || c == 0xFFFF;
    boolean turns = c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069;
    return !control && !half && !turns;
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
