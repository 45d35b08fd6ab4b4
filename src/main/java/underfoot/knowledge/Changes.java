package underfoot.knowledge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underfoot.quantity.Dimension;
import underfoot.quantity.NotAQuantity;
import underfoot.quantity.Quantity;
import underfoot.quantity.Unit;
import underfoot.scenario.FactBook;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.RuleFiles;

/** What may be changed of a floor or a job when nothing fits, the least trouble first. */
public final class Changes {
  private static final String FILE = "changes.yaml";

  private Changes() {}

  /**
   * One thing that may be changed.
   *
   * @param id its name; its text is the wording {@code change-} and this
   * @param fact the fact that is changed
   * @param step by how much its number is changed at a time, in the base unit; 0 if it is not
   *     changed in steps
   * @param unit the unit its number is told in; null for a bare number
   * @param bound the value beyond which no step leads, in the base unit
   * @param times what its number is multiplied with, each in turn
   * @param more what is added to its number, each in turn, in the base unit
   * @param to values, each in turn
   * @param ways texts of the ways in which it may be done, of which those stay that ask for nothing
   *     forbidden; none where its own text says how
   * @param onlyFor values of which it must have one before; none if any will do
   */
  public record Change(
      String id,
      FactDefinition fact,
      double step,
      Unit unit,
      double bound,
      List<Double> times,
      List<Double> more,
      List<String> to,
      List<String> ways,
      List<String> onlyFor) {
    /** Copies the lists. */
    public Change {
      times = List.copyOf(times);
      more = List.copyOf(more);
      to = List.copyOf(to);
      ways = List.copyOf(ways);
      onlyFor = List.copyOf(onlyFor);
    }

    /** The id of its text. */
    public String wording() {
      return "change-" + id;
    }
  }

  static List<Change> load(RuleFiles files, FactBook facts) throws KnowledgeFault {
    List<Change> all = new ArrayList<>();
    for (Entries.Entry entry : Entries.readFile(files, FILE)) {
      String key = entry.required("fact");
      Optional<FactDefinition> fact = facts.find(key).filter(one -> one.key().equals(key));
      if (fact.isEmpty()) {
        throw new KnowledgeFault(FILE, entry.line(), "there is no fact '" + key + "'");
      }
      double step = 0;
      Unit unit = null;
      double bound = 0;
      if (!entry.field("add").isEmpty()) {
        step = number(entry, fact.get(), entry.field("add"));
        unit = unit(fact.get(), entry.field("add"));
        bound = number(entry, fact.get(), entry.required(step > 0 ? "most" : "least"));
      }
      List<Double> times = new ArrayList<>();
      for (String factor : entry.lists().getOrDefault("times", List.of())) {
        times.add(number(entry, null, factor));
      }
      List<Double> more = new ArrayList<>();
      for (String added : entry.lists().getOrDefault("more", List.of())) {
        more.add(number(entry, fact.get(), added));
      }
      List<String> to = entry.lists().getOrDefault("to", List.of());
      if (step == 0 && times.isEmpty() && more.isEmpty() && to.isEmpty()) {
        throw new KnowledgeFault(
            FILE, entry.line(), "'" + entry.name() + "' needs one of: add, times, more, to");
      }
      all.add(
          new Change(
              entry.name(),
              fact.get(),
              step,
              unit,
              bound,
              times,
              more,
              to,
              entry.named("ways"),
              entry.lists().getOrDefault("only-for", List.of())));
    }
    return List.copyOf(all);
  }

  /** The unit a quantity was written in; null for a bare number. */
  private static Unit unit(FactDefinition fact, String text) throws KnowledgeFault {
    if (fact.dimension() == null) {
      return null;
    }
    try {
      String symbol = Quantity.parse(text, fact.dimension()).unit();
      return fact.dimension().units().stream()
          .filter(one -> one.symbol().equals(symbol))
          .findFirst()
          .orElse(null);
    } catch (NotAQuantity e) {
      throw new KnowledgeFault(FILE, 0, e.getMessage());
    }
  }

  private static double number(Entries.Entry entry, FactDefinition fact, String text)
      throws KnowledgeFault {
    try {
      return fact == null || fact.dimension() == null
          ? Double.parseDouble(text)
          : Quantity.parse(text, fact.dimension()).value();
    } catch (NotAQuantity | NumberFormatException e) {
      throw new KnowledgeFault(
          FILE,
          entry.line(),
          "'" + text + "' is not " + (fact == null ? "a number" : phrase(fact.dimension())));
    }
  }

  private static String phrase(Dimension dimension) {
    return dimension == null ? "a number" : dimension.phrase();
  }
}
