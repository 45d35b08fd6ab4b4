package underfoot.report.html;

/**
 * Writes well-formed markup. Everything that is not a tag goes through {@link #text}, which leaves
 * nothing that a browser could take for one.
 */
final class HtmlWriter {
  private final StringBuilder out = new StringBuilder();

  /** Opens an element. Attributes are names and values by turns; an empty value leaves one out. */
  HtmlWriter open(String name, String... attributes) {
    begin(name, attributes);
    out.append('>');
    return this;
  }

  /** An element without content. */
  HtmlWriter empty(String name, String... attributes) {
    begin(name, attributes);
    out.append("/>");
    return this;
  }

  private void begin(String name, String... attributes) {
    out.append('<').append(name);
    for (int i = 0; i + 1 < attributes.length; i += 2) {
      if (!attributes[i + 1].isEmpty()) {
        out.append(' ').append(attributes[i]).append("=\"");
        escape(attributes[i + 1]);
        out.append('"');
      }
    }
  }

  /** Closes an element. */
  HtmlWriter close(String name) {
    out.append("</").append(name).append('>');
    return this;
  }

  /** Closes an element that ends a block. */
  HtmlWriter end(String name) {
    return close(name).line();
  }

  /** Text. */
  HtmlWriter text(String words) {
    escape(words);
    return this;
  }

  /** Somebody's own words, kept from turning the direction of what stands round them. */
  HtmlWriter own(String words) {
    return open("bdi").text(words).close("bdi");
  }

  /** An element with a text. */
  HtmlWriter element(String name, String words, String... attributes) {
    return open(name, attributes).text(words).close(name);
  }

  /** A line break in the source, for whoever reads it. */
  HtmlWriter line() {
    out.append('\n');
    return this;
  }

  /** Markup made elsewhere by this class. */
  HtmlWriter add(HtmlWriter other) {
    out.append(other.out);
    return this;
  }

  /** Text that is no markup and holds none: a style sheet that comes with the program. */
  HtmlWriter raw(String known) {
    out.append(known);
    return this;
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
