package underfoot.quantity;

import java.util.Locale;
import java.util.regex.Pattern;

/** Small helpers for what people write and what is printed back to them. */
public final class Words {
  /** Stands for a {@code ?} written alone as a value, which YAML would take for something else. */
  public static final char LONE_QUESTION_MARK = '\uE000';

  private static final Pattern THREE_DIGITS = Pattern.compile("[0-9]{3}(?![0-9])");

  /** Quotes of the user's own text are cut to this many characters. */
  private static final int LONGEST_QUOTE = 60;

  private Words() {}

  /** The text in quotation marks, cut to 60 characters, control characters escaped. */
  public static String quote(String text) {
    return '"' + cut(text) + '"';
  }

  /** The text cut to 60 characters, control and formatting characters escaped. */
  public static String cut(String text) {
    StringBuilder out = new StringBuilder();
    int shown = 0;
    int i = 0;
    while (i < text.length()) {
      if (shown == LONGEST_QUOTE) {
        return out.append('…').toString();
      }
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      shown++;
      if (c == LONE_QUESTION_MARK) {
        out.append('?');
      } else if (c == '\n') {
        out.append("\\n");
      } else if (c == '\t') {
        out.append("\\t");
      } else if (isHidden(c)) {
        out.append(String.format("\\u%04X", c));
      } else {
        out.appendCodePoint(c);
      }
    }
    return out.toString();
  }

  /** Whether a character would act on a terminal, or not be seen at all. */
  public static boolean isHidden(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> false;
    };
  }

  /** The text without leading or trailing blanks, and each run of blanks as one space. */
  public static String squeeze(String text) {
    int n = text.length();
    boolean clean = n == 0 || !(isBlank(text.charAt(0)) || isBlank(text.charAt(n - 1)));
    for (int i = 0; clean && i < n; i++) {
      char c = text.charAt(i);
      clean = !isBlank(c) || (c == ' ' && !isBlank(text.charAt(i + 1)));
    }
    if (clean) {
      return text;
    }
    StringBuilder out = new StringBuilder(n);
    boolean blank = false;
    for (int i = 0; i < n; i++) {
      char c = text.charAt(i);
      if (isBlank(c)) {
        blank = true;
      } else {
        if (blank && out.length() > 0) {
          out.append(' ');
        }
        blank = false;
        out.append(c);
      }
    }
    return out.toString();
  }

  private static boolean isBlank(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r';
  }

  /**
   * A key or choice as it is compared: lower case, hyphens and underscores as spaces, straight
   * apostrophes.
   */
  public static String alike(String text) {
    String s = text.toLowerCase(Locale.ROOT);
    StringBuilder out = new StringBuilder(s.length());
    for (int i = 0; i < s.length(); i++) {
      char c = s.charAt(i);
      out.append(
          switch (c) {
            case '-', '_', '\u2010', '\u2011', '\u2013', '\u00a0' -> ' ';
            case '\u2019', '\u2018' -> '\'';
            default -> c;
          });
    }
    return squeeze(out.toString());
  }

  /** The last part of a key, such as {@code clear span} of {@code subfloor.joists.clear span}. */
  public static String last(String key) {
    return key.substring(key.lastIndexOf('.') + 1);
  }

  /** Whether what follows a comma may be the last three digits of a number of thousands. */
  public static boolean mayBeThousands(String afterComma) {
    return THREE_DIGITS.matcher(afterComma).lookingAt();
  }

  /** Words as a sentence begins with them. */
  public static String capital(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
