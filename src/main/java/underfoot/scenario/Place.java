package underfoot.scenario;

/**
 * One fact of one floor that may be asked for.
 *
 * @param fact what may be said of it
 * @param about the entry of a list it belongs to; empty for a fact of the floor as a whole
 * @param zone the part of the room whose floor it is said of; empty for the rest of the room
 */
public record Place(FactDefinition fact, String about, String zone) {
  /** A fact of the room, or of its floor where nothing else is said. */
  public Place(FactDefinition fact, String about) {
    this(fact, about, "");
  }

  /**
   * Its key and entry in one text, such as {@code room.doors[].gap under leaf@kitchen door}; of a
   * part of the room {@code zones[old hearth].subfloor.deck}.
   */
  public String id() {
    String id = about.isEmpty() ? fact.key() : fact.key() + '@' + about;
    return zone.isEmpty() ? id : prefix(zone) + id;
  }

  /** How the ids of all places of a part of the room begin. */
  static String prefix(String zone) {
    return ZoneReader.ZONES + '[' + zone + "].";
  }

  /**
   * How many others a place of such an id hangs on: a list comes before its entries, and a part of
   * the room before what is said of its floor.
   */
  public static int hangsOn(String id) {
    boolean ofZone = id.startsWith(ZoneReader.ZONES + '[') && !id.startsWith(ZoneReader.LIST);
    return (ofZone ? 2 : 0) + (id.contains("@") ? 1 : 0);
  }

  /**
   * The place of another fact of the same floor: of the same part, if parts say it themselves, and
   * of the same entry, if it is of the same list.
   */
  public Place beside(FactDefinition other) {
    return new Place(other, isOfEntry(other) ? about : "", other.isSaidByZones() ? zone : "");
  }

  /** Whether another fact is told of the same entry of a list, such as of the same door. */
  public boolean isOfEntry(FactDefinition other) {
    return !about.isEmpty() && !other.list().isEmpty() && other.list().equals(fact.list());
  }

  /** The name of the thing it is about, with the part of the room it lies in; mostly empty. */
  public String whose() {
    return zone.isEmpty() || about.isEmpty() ? zone + about : zone + ", " + about;
  }

  /** The key of a fact, with the name of the thing it is about if there are several. */
  public static String named(String key, String about) {
    return key.contains("[]") && !about.isEmpty()
        ? key.replace("[]", '[' + about + ']')
        : new Named(key, about).id();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Place that && id().equals(that.id());
  }

  @Override
  public int hashCode() {
    return id().hashCode();
  }

  @Override
  public String toString() {
    return id();
  }
}
