package underfoot.working;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import underfoot.quantity.Dimension;
import underfoot.quantity.NotAQuantity;
import underfoot.quantity.Quantity;

/** One published or derived value, a line of a file in src/test/resources/published. */
record PublishedRow(
    String file,
    String id,
    String working,
    Map<String, String> keys,
    String result,
    String value,
    String tolerance,
    String source,
    String status) {

  static final List<String> FILES =
      List.of(
          "joist-spans-irc.txt",
          "joists-and-decks.txt",
          "flat-and-level.txt",
          "climate-and-moisture.txt",
          "heated-floors.txt",
          "tiling.txt");

  static List<PublishedRow> all() {
    List<PublishedRow> rows = new ArrayList<>();
    FILES.forEach(file -> rows.addAll(of(file)));
    return rows;
  }

  static List<PublishedRow> of(String file) {
    try (var stream = PublishedRow.class.getResourceAsStream("/published/" + file)) {
      String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      return text.lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .map(line -> row(file, line))
          .toList();
    } catch (IOException unreadable) {
      throw new IllegalStateException(file, unreadable);
    }
  }

  private static PublishedRow row(String file, String line) {
    String[] cells = line.split(" \\| ", -1);
    if (cells.length != 8) {
      throw new IllegalStateException(file + ": not eight columns: " + line);
    }
    Map<String, String> keys = new LinkedHashMap<>();
    for (String pair : cells[2].split(" & ")) {
      int equals = pair.indexOf('=');
      keys.put(pair.substring(0, equals).strip(), pair.substring(equals + 1).strip());
    }
    return new PublishedRow(
        file,
        cells[0].strip(),
        cells[1].strip(),
        keys,
        cells[3].strip(),
        cells[4].strip(),
        cells[5].strip(),
        cells[6].strip(),
        cells[7].strip());
  }

  /** Whether the reference was not read but recalled. */
  boolean fromMemory() {
    return status.startsWith("M");
  }

  /** A bare number in the result's unit, or a length with its own unit. */
  static double in(String unit, String text) {
    if (text.matches("-?[0-9.]+(e-?[0-9]+)?")) {
      return Double.parseDouble(text);
    }
    try {
      return Quantity.parse(text, Dimension.LENGTH).value() / Dimension.LENGTH.unit(unit).factor();
    } catch (NotAQuantity e) {
      throw new IllegalStateException(e);
    }
  }
}
