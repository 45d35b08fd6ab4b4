package underfoot.plan;

/**
 * One thing to buy, borrow or put on, as it is asked for in a shop.
 *
 * @param shelf where shops keep it
 * @param item what it is
 * @param kind of what kind and class; empty if its name says all
 * @param size its size or length; empty if it has none
 * @param amount how much is needed, what is lost included; NaN if that cannot be told
 * @param unit the unit of that
 * @param packs how many packs; 0 where its packs are not known
 * @param pack what a pack holds, in the unit; 0 where that is not known
 * @param pieces how many pieces a pack holds; 0 where they are not counted
 * @param forWhat the layer it is for; empty for tools
 * @param spare what is bought beyond what is laid; empty for nothing
 */
public record ShoppingLine(
    String shelf,
    String item,
    String kind,
    String size,
    double amount,
    String unit,
    int packs,
    double pack,
    int pieces,
    String forWhat,
    String spare) {}
