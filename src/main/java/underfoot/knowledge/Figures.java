package underfoot.knowledge;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underfoot.quantity.Dimension;
import underfoot.quantity.NotAQuantity;
import underfoot.quantity.Quantity;
import underfoot.scenario.RuleFiles;

/** Every number that a rule or a formula uses, by name. */
public final class Figures {
  /** Falls are written 1:n, and n is their number. */
  private static final String GRADIENT = "1:";

  private static final String DIFFERENCE = "K";

  private final Map<String, Figure> byName;
  private final Map<String, List<Figure>> byPrefix = new ConcurrentHashMap<>();

  private Figures(Map<String, Figure> byName) {
    this.byName = byName;
  }

  /** Reads the figures for one practice; those for any practice belong to each. */
  public static Figures load(RuleFiles files, String practice) throws KnowledgeFault {
    Map<String, Figure> byName = new LinkedHashMap<>();
    for (Entries.Entry entry : Entries.readFolder(files, "figures")) {
      if (!entry.fields().containsKey("value")) {
        continue; // a price book or another table kept beside the figures
      }
      Figure figure = read(entry);
      if (!figure.practice().equals(practice) && !figure.practice().equals("any")) {
        continue;
      }
      if (byName.put(figure.name(), figure) != null) {
        throw new KnowledgeFault(
            entry.file(),
            entry.line(),
            "figure '" + entry.name() + "' stands twice; give one of them another name");
      }
    }
    return new Figures(byName);
  }

  private static Figure read(Entries.Entry entry) throws KnowledgeFault {
    String text = entry.required("value");
    boolean gradient = text.startsWith(GRADIENT);
    try {
      Quantity.Count written = Quantity.count(gradient ? text.substring(GRADIENT.length()) : text);
      return new Figure(
          entry.name(),
          entry.required("description"),
          text,
          written.number(),
          gradient ? "the n of 1:n" : written.of(),
          base(text, written),
          entry.required("practice"),
          entry.required("source"),
          entry.required("status"),
          entry.field("note"));
    } catch (NotAQuantity e) {
      throw new KnowledgeFault(
          entry.file(),
          entry.line(),
          "figure '" + entry.name() + "' must begin with a number; write value: 3 mm");
    }
  }

  /** The number in the base unit of its dimension, where there is one for the unit. */
  private static double base(String text, Quantity.Count written) {
    String unit = written.of();
    if (unit.equals(DIFFERENCE)) {
      return written.number(); // temperatures are in C, what is in K is a difference
    }
    // Of feet and inches the first unit tells the dimension.
    Dimension dimension =
        Dimension.ofUnit(unit).or(() -> Dimension.ofUnit(unit.split(" ")[0])).orElse(null);
    try {
      return dimension == null ? written.number() : Quantity.parse(text, dimension).value();
    } catch (NotAQuantity e) {
      return written.number();
    }
  }

  /**
   * One figure.
   *
   * @throws MissingKnowledge if there is none of that name
   */
  public Figure get(String name) {
    Figure figure = byName.get(name);
    if (figure == null) {
      throw new MissingKnowledge("figure", name);
    }
    return figure;
  }

  /** A text with the figures that it names in braces. */
  public String filled(String text) {
    return Pattern.compile("\\{([a-z0-9-]+)}")
        .matcher(text)
        .replaceAll(found -> Matcher.quoteReplacement(get(found.group(1)).text()));
  }

  /** Whether there is a figure of that name. */
  public boolean has(String name) {
    return byName.containsKey(name);
  }

  /** All figures whose names begin with a prefix, in the order of the files. */
  public List<Figure> startingWith(String prefix) {
    return byPrefix.computeIfAbsent(
        prefix,
        begins -> byName.values().stream().filter(one -> one.name().startsWith(begins)).toList());
  }

  /** All figures. */
  public Collection<Figure> all() {
    return byName.values();
  }
}
