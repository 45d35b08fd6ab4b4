package underfoot.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Lines of text of a limited width, with or without colour. */
public final class TextPage {
  /** The least width a report can be laid out in. */
  public static final int LEAST_WIDTH = 40;

  /** The greatest width; longer lines are hard to read. */
  public static final int MOST_WIDTH = 160;

  private static final Pattern RULE_ID = Pattern.compile("‹[^›]*›");

  private final int width;
  private final boolean colour;
  private final StringBuilder out = new StringBuilder();

  /** What a line is, for its colour. */
  public enum Tone {
    /** Ordinary text. */
    PLAIN(""),
    /** A heading. */
    BOLD("1"),
    /** A good answer. */
    GOOD("1;32"),
    /** Something to heed. */
    CARE("1;33"),
    /** Something that hurts. */
    DANGER("1;31"),
    /** Something unobtrusive. */
    FAINT("2");

    private final String code;

    Tone(String code) {
      this.code = code;
    }
  }

  /** How an entry of a numbered list begins. */
  static String numbered(int number) {
    return (number < 10 ? " " : "") + number + " ";
  }

  /**
   * @param width columns, brought within {@value #LEAST_WIDTH} to {@value #MOST_WIDTH}
   * @param colour whether terminal colours are written
   */
  public TextPage(int width, boolean colour) {
    this.width = Math.max(LEAST_WIDTH, Math.min(MOST_WIDTH, width));
    this.colour = colour;
  }

  /** The width in columns. */
  public int width() {
    return width;
  }

  /** All that was written. */
  public String text() {
    return out.toString();
  }

  /** An empty line, unless there is one already. */
  public void blank() {
    int end = out.length();
    if (end > 1 && out.charAt(end - 2) != '\n') {
      out.append('\n');
    }
  }

  /** A heading with an empty line before it. */
  public void heading(String words) {
    blank();
    bold(words);
  }

  /** A paragraph. */
  public void para(String words) {
    para("", "", words, Tone.PLAIN);
  }

  /**
   * A paragraph, wrapped.
   *
   * @param first what the first line begins with
   * @param rest what each further line begins with
   * @param words the text
   * @param tone its colour
   */
  public void para(String first, String rest, String words, Tone tone) {
    String before = Printable.of(first);
    for (String line : wrap(words, width - length(first), width - length(rest))) {
      String whole = (before + paint(line, tone)).stripTrailing();
      out.append(whole).append('\n');
      before = Printable.of(rest);
    }
  }

  /** An entry of a list. */
  public void item(String words) {
    para(" - ", "   ", words, Tone.PLAIN);
  }

  /** A paragraph that stands out. */
  public void bold(String words) {
    para("", "", words, Tone.BOLD);
  }

  /** An unobtrusive paragraph. */
  public void faint(String words) {
    para("", "", words, Tone.FAINT);
  }

  /** A line of painted words, not wrapped. */
  public void line(String words) {
    out.append(words.stripTrailing()).append('\n');
  }

  /** Words in a colour, fit for a terminal. */
  public String paint(String given, Tone tone) {
    String words = Printable.of(given);
    if (!colour || words.isBlank()) {
      return words;
    }
    if (tone == Tone.PLAIN) {
      return RULE_ID.matcher(words).replaceAll("\u001b[2m$0\u001b[0m");
    }
    return "\u001b[" + tone.code + "m" + words + "\u001b[0m";
  }

  /** The length of a text in characters as a reader counts them. */
  static int length(String text) {
    return text.codePointCount(0, text.length());
  }

  /** Breaks a text into lines; words longer than a line are cut. */
  static List<String> wrap(String words, int firstWidth, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    int room = Math.max(1, firstWidth);
    int used = 0;
    for (String whole : Printable.of(words.strip()).split("\\s+")) {
      String word = whole;
      int length = length(word);
      if (used > 0 && used + 1 + length > room) {
        lines.add(line.toString());
        line.setLength(0);
        used = 0;
        room = Math.max(1, width);
      }
      if (used > 0) {
        line.append(' ');
        used++;
      }
      while (length > room - used) {
        int cut = word.offsetByCodePoints(0, room - used);
        lines.add(line.append(word, 0, cut).toString());
        line.setLength(0);
        word = word.substring(cut);
        length = length(word);
        used = 0;
        room = Math.max(1, width);
      }
      line.append(word);
      used += length;
    }
    lines.add(line.toString());
    return lines;
  }
}
