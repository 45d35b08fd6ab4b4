package underfoot.plan;

import java.util.List;
import underfoot.buildup.StackLayer;
import underfoot.knowledge.MaterialItem;

/**
 * How much of one thing a build-up takes.
 *
 * @param item what is bought
 * @param layer the layer it is bought for
 * @param amount how much, waste included, in the item's unit; for each square metre if the area of
 *     the floor is unknown, and NaN if it cannot be worked out
 * @param whole whether it is for the whole floor
 * @param piece how much one piece holds where pieces are counted, in the item's unit; 0 where they are
 *     not
 * @param used the facts and figures it was worked out from
 */
record Amount(
    MaterialItem item,
    StackLayer layer,
    double amount,
    boolean whole,
    double piece,
    List<Object> used) {
  Amount {
    used = List.copyOf(used);
  }
}
