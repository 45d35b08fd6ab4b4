package underfoot.working;

import static underfoot.quantity.Dimension.LENGTH;
import static underfoot.working.Key.Trait.OPTIONAL;

import java.util.List;
import java.util.OptionalDouble;

/** The longest screw through an overlay that stays inside the deck below it. */
public final class ScrewLength extends Working {
  private static final double SLIP_MM = 1e-9;

  private final List<Double> stock;

  /**
   * Makes the working.
   *
   * @param stockMm stocked lengths, mm
   */
  public ScrewLength(List<Double> stockMm) {
    super(
        new Sheet(
            "screw-length",
            "The longest screw through an overlay that stays inside the deck",
            "Geometry: the tip never passes the underside of the deck, derived from the cable and"
                + " notch rules of BS 7671 and the timber codes (quoted)",
            "overlay=12 mm",
            "deck=18 mm"),
        Key.of(
            "overlay",
            LENGTH,
            "mm",
            0,
            300,
            "all the screw passes over the deck, adhesive bed counted"),
        Key.of("deck", LENGTH, "mm", 1, 300, "thickness of the deck"),
        Key.of("washer", LENGTH, "mm", 0, 20, "washer under the head; 0 if left out", OPTIONAL),
        Key.of(
            "tip-clear",
            LENGTH,
            "mm",
            0,
            100,
            "clearance from tip to underside of deck; 0 if left out",
            OPTIONAL));
    stock = stockMm.stream().sorted().toList();
  }

  /**
   * The screw to use.
   *
   * @param longestMm longest that keeps its clearance inside the deck, mm
   * @param chooseMm longest stocked length that is no longer, mm; empty where there is none
   * @param gripMm how much of the chosen screw is in the deck, mm; 0 where none reaches it
   */
  public record Values(double longestMm, OptionalDouble chooseMm, double gripMm) {}

  /**
   * Works out longest = overlay + deck + washer - clearance, the stocked length no longer than
   * that, and its grip = length - washer - overlay.
   *
   * @param overlayMm everything over the deck the screw passes, adhesive bed counted, mm, 0 or more
   * @param deckMm thickness of the deck, mm, above 0
   * @param washerMm thickness of the washer under the head, mm, 0 or more
   * @param tipClearMm clearance kept from the tip to the underside of the deck, mm, 0 or more
   * @param stockMm stocked lengths, mm
   * @throws IllegalArgumentException outside those ranges, or where the clearance leaves no screw
   */
  public static Values of(
      double overlayMm, double deckMm, double washerMm, double tipClearMm, List<Double> stockMm) {
    double longest =
        Need.notNegative("overlay", overlayMm)
            + Need.positive("deck", deckMm)
            + Need.notNegative("washer", washerMm)
            - Need.notNegative("tip clearance", tipClearMm);
    if (!(longest > 0)) {
      throw new IllegalArgumentException("the clearance leaves no length for a screw");
    }
    OptionalDouble choose =
        stockMm.stream()
            .mapToDouble(Double::doubleValue)
            .filter(length -> length <= longest + SLIP_MM)
            .max();
    double grip = choose.isPresent() ? Math.max(0, choose.getAsDouble() - overlayMm - washerMm) : 0;
    return new Values(longest, choose, grip);
  }

  @Override
  Result work(Inputs in) {
    double washer = in.number("washer", 0);
    double clear = in.number("tip-clear", 0);
    Values values =
        in.blaming(
            "tip-clear", () -> of(in.number("overlay"), in.number("deck"), washer, clear, stock));
    boolean none = values.chooseMm().isEmpty();
    return new Result.Draft(in)
        .let("washer", washer)
        .let("clearance", clear)
        .value("longest", values.longestMm(), "mm")
        .value("choose", values.chooseMm().orElse(0), "mm")
        .value("grip", values.gripMm(), "mm")
        .step("longest = overlay + deck + washer - clearance")
        .step(
            "choose = longest stocked length that is no longer",
            "of " + Show.numbers(stock.stream().mapToDouble(Double::doubleValue).toArray()) + " mm",
            "choose = {choose} mm")
        .step("grip = choose - washer - overlay")
        .noteIf(none, "No stocked screw is short enough: choose is 0.")
        .noteIf(
            !none && values.gripMm() == 0,
            "The longest stocked screw does not reach into the deck.")
        .noteIf(
            !in.has("tip-clear"),
            "No clearance was given: the tip may come level with the underside of the deck.")
        .note(
            "Such a screw clamps the adhesive bed; it is no structural joint. Trace pipes and cables"
                + " before any screw goes in, and over joists too.")
        .done(this);
  }
}
