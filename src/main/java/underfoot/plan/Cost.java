package underfoot.plan;

import java.util.List;

/**
 * What the materials cost.
 *
 * @param total the sum of the lines
 * @param currency such as {@code GBP}
 * @param lines the cost of each thing
 */
public record Cost(double total, String currency, List<Line> lines) {
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
