package underfoot.plan;

import java.util.List;

/**
 * What the materials cost, and the labour if the price book has a price for it. Where something has
 * no price, or its amount is not known, there is no total: only what the rest comes to.
 *
 * @param atLeast the sum of all that has a price, before anything is kept back
 * @param contingency what is kept besides for what nobody foresaw; NaN without a total
 * @param currency such as {@code GBP}
 * @param invented whether the prices are those of the demonstration price book
 * @param lines the cost of each thing
 * @param unpriced what is to be bought and is in no line
 */
public record Cost(
    double atLeast,
    double contingency,
    String currency,
    boolean invented,
    List<Line> lines,
    List<String> unpriced) {
  /** Copies the lists. */
  public Cost {
    lines = List.copyOf(lines);
    unpriced = List.copyOf(unpriced);
  }

  /** Whether everything that is bought is in it. */
  public boolean whole() {
    return unpriced.isEmpty();
  }

  /** The sum of the lines; NaN where it is not whole. */
  public double total() {
    return whole() ? atLeast + contingency : Double.NaN;
  }

  /**
   * One line.
   *
   * @param item what is bought
   * @param cost what it costs, in the currency of the whole
   */
  public record Line(String item, double cost) {}
}
