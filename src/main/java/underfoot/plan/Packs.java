package underfoot.plan;

import underfoot.knowledge.PriceBook;

/**
 * In how many packs a thing is bought, and what they hold. Pieces that are counted, such as tiles,
 * come whole in their packs: a box holds as many as fit into what it is sold as, one at least.
 *
 * @param count how many packs
 * @param holds what a pack holds, in the item's unit
 * @param pieces how many pieces a pack holds; 0 where they are not counted
 * @param cost what all packs cost, in the book's currency
 */
record Packs(int count, double holds, int pieces, double cost) {
  private static final double NEARLY = 1e-9;

  /** How far what a pack is sold as may be rounded. */
  private static final double ROUNDED = 0.005;

  static Packs of(Amount amount, PriceBook.Price price) {
    if (amount.item().asOne()) { // one piece, made or cut to fit
      double whole = Double.isNaN(amount.amount()) ? 0 : amount.amount();
      return new Packs(1, whole, 0, whole / price.pack() * price.price());
    }
    double holds = price.pack();
    int pieces = 0;
    if (amount.piece() > 0) {
      pieces = Math.max(1, (int) Math.floor(price.pack() / amount.piece() * (1 + ROUNDED)));
      holds = pieces * amount.piece();
    }
    double packs = Math.ceil(amount.amount() / holds - NEARLY);
    int count = Double.isNaN(packs) ? 0 : (int) packs;
    return new Packs(count, holds, pieces, count * price.price());
  }
}
