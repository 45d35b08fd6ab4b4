package underfoot.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.ShoppingLine;

/** What to buy, in words, as a list for a shop and as a table for a spreadsheet. */
public final class ShoppingText {
  private static final List<String> COLUMNS =
      List.of("shelf", "item", "kind", "size", "buy", "pack", "needed", "for", "spare");

  private ShoppingText() {}

  /** How many packs of what size, or pieces; what is needed where packs are not known. */
  public static String buy(ShoppingLine line, Phrases phrases) {
    if (line.packs() > 0) {
      return line.packs() + " × " + pack(line);
    }
    if (Double.isNaN(line.amount())) {
      return phrases.say("amount-to-measure");
    }
    return line.unit().equals("pieces") ? Texts.of(line.amount(), "") : needed(line);
  }

  /** What a pack holds; empty where that is not known. */
  public static String pack(ShoppingLine line) {
    if (line.pieces() > 0) {
      return line.pieces() == 1 ? "1 piece" : line.pieces() + " pieces";
    }
    return line.pack() > 0 ? Texts.of(line.pack(), line.unit()) : "";
  }

  /** How much is needed, rounded up; empty for tools and where it cannot be told. */
  public static String needed(ShoppingLine line) {
    boolean tool = line.pack() == 0 && line.unit().equals("pieces");
    return tool || Double.isNaN(line.amount()) ? "" : Sentences.amount(line.amount(), line.unit());
  }

  /** One line of the list without how much: the thing, its kind and its size. */
  public static String what(ShoppingLine line) {
    StringJoiner words = new StringJoiner(", ");
    words.add(Texts.capital(line.item()));
    for (String more : List.of(line.kind(), line.size())) {
      if (!more.isEmpty()) {
        words.add(more);
      }
    }
    return words.toString();
  }

  /** What it is for and what is spare; empty if there is nothing to tell. */
  public static String purpose(ShoppingLine line, Phrases phrases) {
    StringJoiner words = new StringJoiner("; ");
    String needed = needed(line);
    if (!needed.isEmpty() && !line.forWhat().isEmpty()) {
      words.add(
          phrases.say("shopping-for", "needed", needed, "layer", Texts.lower(line.forWhat())));
    }
    if (!line.spare().isEmpty()) {
      words.add(phrases.say("shopping-spare", "spare", line.spare()));
    }
    return words.toString();
  }

  /** The lines by shelf, the shelves in their order. */
  public static Map<String, List<ShoppingLine>> shelves(List<ShoppingLine> lines) {
    Map<String, List<ShoppingLine>> shelves = new LinkedHashMap<>();
    lines.forEach(
        line -> shelves.computeIfAbsent(line.shelf(), shelf -> new ArrayList<>()).add(line));
    return shelves;
  }

  /** The things that are sold in packs, in one line. */
  static String brief(List<ShoppingLine> lines) {
    StringJoiner words = new StringJoiner("; ");
    for (ShoppingLine line : lines) {
      if (line.packs() > 0) {
        String pack =
            line.pieces() > 0 || line.unit().equals("pieces") ? count(line) : pack(line) + " ";
        words.add(line.packs() + " × " + pack + line.item());
      }
    }
    return words.toString();
  }

  /** How many pieces are in a pack, before their name; nothing for one. */
  private static String count(ShoppingLine line) {
    long pieces = line.pieces() > 0 ? line.pieces() : Math.round(line.pack());
    return pieces == 1 ? "" : pieces + " ";
  }

  static void write(List<ShoppingLine> lines, Phrases phrases, TextPage page) {
    shelves(lines)
        .forEach(
            (shelf, all) -> {
              page.para(Texts.capital(shelf));
              for (ShoppingLine line : all) {
                String purpose = purpose(line, phrases);
                page.item(
                    what(line)
                        + ": "
                        + buy(line, phrases)
                        + (purpose.isEmpty() ? "" : " (" + purpose + ")"));
              }
            });
  }

  /**
   * The list as a table of values set apart by commas, as RFC 4180 writes them.
   *
   * @param lines the list
   * @param phrases the phrase book
   */
  public static String csv(List<ShoppingLine> lines, Phrases phrases) {
    StringBuilder out = new StringBuilder();
    row(COLUMNS, out);
    for (ShoppingLine line : lines) {
      String count = line.packs() > 0 ? Integer.toString(line.packs()) : buy(line, phrases);
      row(
          List.of(
              line.shelf(),
              line.item(),
              line.kind(),
              line.size(),
              count,
              pack(line),
              needed(line),
              line.forWhat(),
              line.spare()),
          out);
    }
    return out.toString();
  }

  private static void row(List<String> cells, StringBuilder out) {
    StringJoiner row = new StringJoiner(",");
    for (String cell : cells) {
      // A cell that begins like a formula is kept from being one.
      String safe = cell.matches("^[=+@\\-].*") ? "'" + cell : cell;
      boolean quoted = safe.matches("(?s).*[\",\r\n].*");
      row.add(quoted ? '"' + safe.replace("\"", "\"\"") + '"' : safe);
    }
    out.append(row).append("\r\n");
  }
}
