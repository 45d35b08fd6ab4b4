package underfoot.plan;

import java.util.List;

/**
 * What to buy of one thing.
 *
 * @param item what it is
 * @param amount how much of it, waste included; NaN if that cannot be worked out
 * @param unit the unit of the amount, such as {@code m2} or {@code kg}
 * @param packs how many packs that makes; 0 if it is not sold in packs
 * @param because why that much
 */
public record QuantityLine(
    String item, double amount, String unit, int packs, List<Justification> because) {
  /** Copies the list. */
  public QuantityLine {
    because = List.copyOf(because);
  }
}
