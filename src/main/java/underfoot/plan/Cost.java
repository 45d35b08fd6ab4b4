package underfoot.plan;

import java.util.List;

/**
 * What the materials cost, and the labour if the price book has a price for it.
 *
 * @param total the sum of the lines
 * @param contingency what of it is kept for what nobody foresaw
 * @param currency such as {@code GBP}
 * @param lines the cost of each thing
 */
public record Cost(double total, double contingency, String currency, List<Line> lines) {
  /** Copies the list. */
  public Cost {
    lines = List.copyOf(lines);
  }

  /**
   * One line.
   *
   * @param item what is bought
   * @param cost what it costs, in the currency of the whole
   */
  public record Line(String item, double cost) {}
}
