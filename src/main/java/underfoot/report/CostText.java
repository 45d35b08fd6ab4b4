package underfoot.report;

import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.Cost;

/** What materials come to, in words: a total only where it is whole. */
public final class CostText {
  private CostText() {}

  /** The total, or what has a price and what has none; invented prices are called so. */
  public static String of(Cost cost, Phrases phrases) {
    String sum =
        cost.whole()
            ? Texts.money(cost.total(), cost.currency())
            : phrases.say(
                "cost-at-least",
                "sum",
                Texts.money(cost.atLeast(), cost.currency()),
                "without",
                String.join(", ", cost.unpriced()));
    return marked(cost, sum, phrases);
  }

  /**
   * What stands beside a total in a table: its currency, or all there is to say if it is not whole.
   */
  public static String unit(Cost cost, Phrases phrases) {
    return cost.whole() ? marked(cost, cost.currency(), phrases) : of(cost, phrases);
  }

  private static String marked(Cost cost, String text, Phrases phrases) {
    return cost.invented() ? phrases.say("cost-invented", "sum", text) : text;
  }
}
