package underfoot.scenario;

import java.util.List;
import java.util.Map;
import underfoot.quantity.Dimension;
import underfoot.quantity.Words;

/**
 * What may be said of one fact of a scenario, as a facts file defines it.
 *
 * @param key the fact's place in a scenario, such as {@code room.doors[].gap under leaf}; {@code
 *     []} marks the entries of a list
 * @param called the name rules use, such as {@code gap under leaf}
 * @param kind what sort of value it has
 * @param of its choices; empty unless it is a choice
 * @param also other words for its choices, each with the choice it stands for
 * @param refused values that are out of scope, each with the message that says why
 * @param dimension what its quantity measures; null unless it is a quantity
 * @param least the least value allowed, in the base unit; NaN if there is none
 * @param most the greatest value allowed, in the base unit; NaN if there is none
 * @param leastText the least value as the facts file writes it; empty if there is none
 * @param mostText the greatest value as the facts file writes it; empty if there is none
 * @param required whether a scenario must give it
 * @param knownBy for a list the key of its entries that names one which has no name; empty if they
 *     are known by their place
 * @param insteadOfIt the key of another fact that says the same in another way: of the two one is
 *     written; empty if there is none
 * @param shorthandFor the key that may hold this fact's value directly ({@code heating: none} for
 *     {@code heating: {kind: none}}); empty if there is none
 * @param means what the fact is, in plain words
 * @param ask the question put to a person; empty if it is not asked
 * @param look how to find out on site; empty if there is no advice
 * @param acts what somebody does who finds it out so
 * @param otherwise other values tried to see what hangs on the fact
 * @param example a value as a scenario would write it
 * @param file the facts file that defines it
 * @param line the line of that file
 */
public record FactDefinition(
    String key,
    String called,
    Kind kind,
    List<String> of,
    Map<String, String> also,
    Map<String, String> refused,
    Dimension dimension,
    double least,
    double most,
    String leastText,
    String mostText,
    boolean required,
    String knownBy,
    String insteadOfIt,
    String shorthandFor,
    String means,
    String ask,
    String look,
    List<String> acts,
    List<String> otherwise,
    String example,
    String file,
    int line) {

  /**
   * The word its value is written after in a scenario: the last part of the key, such as {@code gap
   * under leaf}, or the short form if there is one, such as {@code heating}.
   */
  public String word() {
    return Words.last(shorthandFor.isEmpty() ? key : shorthandFor);
  }

  /** Whether it is a fact of the entries of a list, such as each door. */
  public boolean ofEntries() {
    return key.contains("[].");
  }

  /**
   * Whether it is told of the floor and its levels, which differ from zone to zone of a room; all
   * else is told of the room.
   */
  public boolean ofTheFloorItself() {
    String first = key.split("[.\\[]")[0];
    return first.equals("subfloor")
        || first.equals("zones")
        || first.equals("levels")
        || kind == Kind.POINTS
        || kind == Kind.READINGS
        || ofEntries();
  }

  /** Whether it is told of the room and holds in each of its zones; money is the room's alone. */
  public boolean holdsInEachZone() {
    return !ofTheFloorItself() && !key.startsWith("budget.");
  }

  /** Whether each part of a room says it of its own floor. */
  public boolean isSaidByZones() {
    return key.startsWith(ZoneReader.SUBFLOOR + ".");
  }

  /** The list it belongs to, such as {@code room.doors[]}; empty if it belongs to none. */
  public String list() {
    int end = key.lastIndexOf("[].");
    return end < 0 ? "" : key.substring(0, end + 2);
  }
}
