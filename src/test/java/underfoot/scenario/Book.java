package underfoot.scenario;

import java.nio.charset.StandardCharsets;

/** What the tests of this package share. */
final class Book {
  /** The shipped facts, read once. */
  static final FactBook SHIPPED = load();

  /** A scenario in which most things are said. */
  static final String GOOD =
      """
      scenario: Utility room over a cellar
      practice: uk                      # whose published guidance applies
      room:
        use: utility room
        outline: [[0 m, 0 m], [3.6 m, 0 m], [3.6 m, 2.4 m], [0 m, 2.4 m]]
        doors:
          - {name: kitchen door, wall: 0, from: 0.9 m, width: 762 mm, gap under leaf: 16 mm, can be trimmed: no}
          - name: cellar door
            wall: 2
            fire door: unknown
      subfloor:
        deck: square-edged boards
        thickness: 21 mm
        board width: 150 mm
        condition: {loose boards: yes, rot: no}
        joists: {breadth: 50 mm, depth: 150 mm, grade: C16, centres: 400 mm, clear span: 2.9 m}
        services below: unknown
      levels:                           # readings from one datum, up is positive
        readings: [[0 m, 0 m, 0 mm], [1.8 m, 1.2 m, -7 mm], [3.6 m, 2.4 m, -2 mm]]
      tile: {material: porcelain, length: 450 mm, width: 450 mm, thickness: 9 mm}
      heating: none
      site: {air temperature: 18 C, relative humidity: 60 %, air speed: 1 km/h, start: 2026-03-02}
      budget: {limit: 700 GBP, prices: price-book}
      priorities: [height, cost]
      """;

  /** The least a scenario must say. */
  static final String LEAST =
      """
      scenario: Kitchen over a crawl space
      practice: uk
      room: {use: kitchen}
      subfloor: {deck: tongue-and-groove boards}
      tile: {material: porcelain, length: 600 mm, width: 300 mm}
      """;

  private Book() {}

  static Scenario read(String yaml) throws ScenarioFaults {
    return read(yaml.getBytes(StandardCharsets.UTF_8));
  }

  static Scenario read(byte[] yaml) throws ScenarioFaults {
    return new ScenarioReader(SHIPPED).read("floor.yaml", yaml);
  }

  /** The faults of a text, as printed; empty if it has none. */
  static String faults(String yaml) {
    try {
      read(yaml);
      return "";
    } catch (ScenarioFaults e) {
      return e.text();
    }
  }

  private static FactBook load() {
    try {
      return FactBook.load(RuleFiles.shipped());
    } catch (ScenarioFaults e) {
      throw new IllegalStateException(e.text(), e);
    }
  }
}
