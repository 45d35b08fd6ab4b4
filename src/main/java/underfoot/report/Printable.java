package underfoot.report;

/**
 * Text fit for a terminal. What could steer one, or turn the order of reading round, is written out
 * as {@code \}{@code u001b}: so a person sees it, and JSON still means the same.
 */
public final class Printable {
  private Printable() {}

  /** The text with such characters written out; line feeds and tabs stay. */
  public static String of(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (steers(text.charAt(i))) {
        return escaped(text);
      }
    }
    return text;
  }

  private static String escaped(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 16);
    for (char c : text.toCharArray()) {
      if (steers(c)) {
        safe.append(String.format("\\u%04x", (int) c));
      } else {
        safe.append(c);
      }
    }
    return safe.toString();
  }

  private static boolean steers(char c) {
    return c < ' ' && c != '\n' && c != '\t'
        || c >= 0x7f && c <= 0x9f
        || c == 0x061c
        || c == 0x200e
        || c == 0x200f
        || c >= 0x2028 && c <= 0x202e
        || c >= 0x2066 && c <= 0x2069;
  }
}
