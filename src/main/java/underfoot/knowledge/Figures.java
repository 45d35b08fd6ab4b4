package underfoot.knowledge;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import underfoot.scenario.Dimension;
import underfoot.scenario.NotAQuantity;
import underfoot.scenario.Quantity;
import underfoot.scenario.RuleFiles;
import underfoot.scenario.Unit;

/** Every number that a rule or a formula uses, by name. */
public final class Figures {
  /** Falls are written 1:n, and n is their number. */
  private static final String GRADIENT = "1:";

  private static final String DIFFERENCE = "K";

  /** The dimension each unit belongs to; of two, the first. */
  private static final Map<String, Dimension> BY_UNIT = byUnit();

  private final Map<String, Figure> byName;
  private final Map<String, List<Figure>> byPrefix = new ConcurrentHashMap<>();

  private Figures(Map<String, Figure> byName) {
    this.byName = byName;
  }

  /** Reads the figures for one practice; those for any practice belong to each. */
  static Figures load(RuleFiles files, String practice) throws KnowledgeFault {
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
    int start = gradient ? GRADIENT.length() : 0;
    int end = start;
    while (end < text.length() && "+-.0123456789eE".indexOf(text.charAt(end)) >= 0) {
      end++;
    }
    double value;
    try {
      value = Double.parseDouble(text.substring(start, end));
    } catch (NumberFormatException e) {
      throw new KnowledgeFault(
          entry.file(),
          entry.line(),
          "figure '" + entry.name() + "' must begin with a number; write value: 3 mm");
    }
    String unit = text.substring(end).strip();
    return new Figure(
        entry.name(),
        entry.required("description"),
        text,
        value,
        gradient ? "the n of 1:n" : unit,
        base(text, unit, value),
        entry.required("practice"),
        entry.required("source"),
        entry.required("status"),
        entry.field("note"));
  }

  /** The number in the base unit of its dimension, where scenarios use that dimension. */
  private static double base(String text, String unit, double value) {
    if (unit.equals(DIFFERENCE)) {
      return value; // scenarios state temperatures in kelvin, figures only differences
    }
    Dimension dimension = BY_UNIT.get(unit);
    if (dimension == null) {
      return value;
    }
    try {
      return Quantity.parse(text, dimension).value();
    } catch (NotAQuantity e) {
      return value;
    }
  }

  private static Map<String, Dimension> byUnit() {
    Map<String, Dimension> byUnit = new HashMap<>();
    for (Dimension dimension : Dimension.values()) {
      for (Unit unit : dimension.units()) {
        byUnit.putIfAbsent(unit.symbol(), dimension);
        unit.spellings().forEach(spelling -> byUnit.putIfAbsent(spelling, dimension));
      }
    }
    return byUnit;
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
