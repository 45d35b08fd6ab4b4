package underfoot.knowledge;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Something to buy for a build-up, and how much of it.
 *
 * @param item what it is, as a price book names it
 * @param forLayers the layers it is bought for
 * @param by what the amount grows with
 * @param unit the unit of the amount
 * @param rate the name of the figure for the amount for each unit of what it grows with; empty for
 *     one
 * @param waste the name of the figure for what is lost in cutting and mixing, per cent, or {@code
 *     the} followed by a fact's name; empty for none
 * @param counted what of the set-out is counted instead where the outline is known: {@code tiles},
 *     {@code boards} or {@code screws}; empty for nothing
 * @param besides figures of what a bed takes besides its own thickness, by the wording that asks
 *     for it, mm
 * @param onlyIf what must be held for it to be bought, as a fact says it, such as {@code bed made
 *     of: resin}; empty for nothing
 * @param notIf what must not be held for it to be bought; empty for nothing
 * @param floor the fact that tells how much of the floor it is bought for, m2, where that is known;
 *     empty for the whole
 * @param less facts of floor that it is not bought for, m2, such as what falls to a drain
 * @param asOne whether it is sold in one piece that must not be larger than the amount
 */
public record MaterialItem(
    String item,
    List<String> forLayers,
    By by,
    String unit,
    String rate,
    String waste,
    String counted,
    Map<String, String> besides,
    String onlyIf,
    String notIf,
    String floor,
    List<String> less,
    boolean asOne) {
  /** Copies the list. */
  public MaterialItem {
    forLayers = List.copyOf(forLayers);
    less = List.copyOf(less);
    besides = Collections.unmodifiableMap(new LinkedHashMap<>(besides));
  }

  /** What an amount grows with. */
  public enum By {
    /** The area of the floor, m2. */
    AREA,
    /** The area of the floor times the mean thickness of the layer, m2 × mm. */
    DEPTH,
    /** The powder of an adhesive bed as thick as the layer is on average, over the floor, kg. */
    BED,
    /** The length round the room, m. */
    PERIMETER,
    /** The volume of the joints between tiles, L. */
    JOINTS,
    /** One for the floor, however large that is. */
    FLOOR
  }
}
