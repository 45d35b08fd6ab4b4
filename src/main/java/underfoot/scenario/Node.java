package underfoot.scenario;

import java.util.List;
import underfoot.quantity.Words;

/** A part of a YAML file with the place it stands at (line and column from 1). */
public sealed interface Node extends Spot {
  /**
   * A single text; YAML's own ideas of numbers, dates and booleans are not applied.
   *
   * @param text what was written, empty if nothing was
   * @param line the line
   * @param column the column
   */
  record Scalar(String text, int line, int column) implements Node {}

  /**
   * A list.
   *
   * @param items its entries in order
   * @param line the line
   * @param column the column
   */
  record Items(List<Node> items, int line, int column) implements Node {}

  /**
   * Keys with their values.
   *
   * @param entries the keys in order; one key may stand twice
   * @param line the line
   * @param column the column
   */
  record Keys(List<Entry> entries, int line, int column) implements Node {
    /**
     * The value of a key, letter case, hyphens and underscores not minded.
     *
     * @param key the key
     * @return its first value, or null if the key is not there
     */
    public Node get(String key) {
      String alike = Words.alike(key);
      for (Entry entry : entries) {
        if (Words.alike(entry.key()).equals(alike)) {
          return entry.value();
        }
      }
      return null;
    }
  }

  /**
   * A key and its value.
   *
   * @param key the key as written
   * @param line the key's line
   * @param column the key's column
   * @param value what it holds
   */
  record Entry(String key, int line, int column, Node value) implements Spot {}
}
