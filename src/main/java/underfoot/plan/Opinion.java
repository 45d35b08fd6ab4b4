package underfoot.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import underfoot.buildup.Judgement;
import underfoot.buildup.LayerThickness;
import underfoot.buildup.Verdict;
import underfoot.plan.Advice.CautionNote;
import underfoot.plan.Advice.Heights;
import underfoot.plan.Advice.RemedyNote;

/**
 * What is to be said of a proposal, as flat data. Reports are views of it.
 *
 * @param scenario the scenario's own name
 * @param proposal the proposal's own name
 * @param verdict the advice on the floor itself, in one word
 * @param way the way of building that the proposal resembles; empty if nothing may be built
 * @param title that way in words; empty if nothing may be built
 * @param recommended the way that is recommended, in words; empty if nothing is
 * @param isRecommended whether the proposal goes the recommended way
 * @param layers the proposal's layers from the bottom, each with what is found of it
 * @param whole what is found of the proposal as a whole, the worst first, layers that are missing
 *     among it
 * @param remedies what has to be put right first, whatever is laid
 * @param dangers what can hurt people in the work
 * @param heights how far the proposal raises the floor and what that does to the doors; empty if
 *     nothing may be built
 * @param massKgPerM2 what the proposal weighs, kg/m2
 * @param stiffness what the proposal does to a timber floor
 */
public record Opinion(
    String scenario,
    String proposal,
    Verdict verdict,
    String way,
    String title,
    String recommended,
    boolean isRecommended,
    List<Layer> layers,
    List<Item> whole,
    List<RemedyNote> remedies,
    List<CautionNote> dangers,
    Optional<Heights> heights,
    double massKgPerM2,
    List<Stiffness> stiffness) {
  /** Copies the lists. */
  public Opinion {
    layers = List.copyOf(layers);
    whole = List.copyOf(whole);
    remedies = List.copyOf(remedies);
    dangers = List.copyOf(dangers);
    stiffness = List.copyOf(stiffness);
  }

  /** All that was found, of the layers first. */
  public List<Item> findings() {
    return Stream.concat(layers.stream().flatMap(layer -> layer.items().stream()), whole.stream())
        .toList();
  }

  /** How many faults stand. */
  public long faults() {
    return findings().stream().filter(item -> item.judgement().isFault()).count();
  }

  /**
   * One layer of the proposal.
   *
   * @param order its place from the bottom, from 1
   * @param label what it goes by: its own name, or {@code layer 3}
   * @param kind what the proposal calls it
   * @param part the kind of layer it is taken for
   * @param asked the name of the layer that is asked for in its place; empty if none is
   * @param thickness how thick it comes out, mm; what is asked for if the proposal does not say,
   *     and at least what the hollows take if it is poured
   * @param said how thick the proposal says it is; empty if it does not
   * @param items what is found of it, the worst first
   */
  public record Layer(
      int order,
      String label,
      String kind,
      String part,
      String asked,
      LayerThickness thickness,
      String said,
      List<Item> items) {
    /** Copies the list. */
    public Layer {
      items = List.copyOf(items);
    }

    /** The worst that is found of it; what is only not said counts for nothing. */
    public Judgement judgement() {
      return items.stream()
          .map(Item::judgement)
          .filter(one -> one != Judgement.NOT_SAID)
          .findFirst()
          .orElse(Judgement.NOT_SAID);
    }
  }

  /**
   * One thing found.
   *
   * @param judgement how it compares with what is asked
   * @param layer the layer it is about, or the missing layer; empty for the whole
   * @param id the id of the text
   * @param text what is found
   * @param consequence what goes wrong if it is done anyway; empty if nothing does
   * @param remedy what to do; empty if nothing is to be done
   * @param because why
   */
  public record Item(
      Judgement judgement,
      String layer,
      String id,
      String text,
      String consequence,
      String remedy,
      List<Justification> because) {
    /** Copies the list. */
    public Item {
      because = List.copyOf(because);
    }
  }

  /**
   * One measure of a timber floor with the proposal on it.
   *
   * @param name its name among the facts, such as {@code deck ratio after}
   * @param value its value
   * @param text its value in words
   */
  public record Stiffness(String name, double value, String text) {}
}
