package underfoot.reasoning;

import java.util.ArrayList;
import java.util.List;
import underfoot.buildup.Conclusion;
import underfoot.buildup.OfferedWay;
import underfoot.buildup.RuledOut;
import underfoot.buildup.Stack;
import underfoot.buildup.StopFinding;
import underfoot.knowledge.Facts;

/**
 * One build-up, worked out and judged.
 *
 * @param way the way of building
 * @param offers the rules that offered it
 * @param stack its layers
 * @param facts all facts held when it was judged, its own heights and weights included
 * @param concluded what the rules concluded of it alone
 */
public record BuildUp(
    String way, List<OfferedWay> offers, Stack stack, Facts facts, List<Conclusion> concluded) {
  /** Copies the lists. */
  public BuildUp {
    offers = List.copyOf(offers);
    concluded = List.copyOf(concluded);
  }

  /** Conclusions of one sort. */
  public <T extends Conclusion> List<T> of(Class<T> sort) {
    List<T> found = new ArrayList<>();
    for (Conclusion one : concluded) {
      if (sort.isInstance(one)) {
        found.add(sort.cast(one));
      }
    }
    return found;
  }

  /** What its lowest layer lies on; empty where nothing known is left of the floor. */
  public String beneath() {
    return StackKinds.beneath(facts);
  }

  /** Whether it takes up the base that it starts from, and so lies on what is beneath that. */
  public boolean takesUpTheBase() {
    return stack.replacesDeck() || !beneath().equals(facts.text("base"));
  }

  /** Whether it may be built here. */
  public boolean stands() {
    return of(RuledOut.class).isEmpty()
        && of(StopFinding.class).stream().noneMatch(StopFinding::isStop);
  }
}
