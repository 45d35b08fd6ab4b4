package underfoot.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Function;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.Advice.Door;
import underfoot.plan.Advice.Standing;
import underfoot.plan.ComparedBuildUp;
import underfoot.report.TextPage.Tone;

/** Ways of building in columns beside each other, as many as the page is wide for. */
final class SideBySide {
  private static final int LABEL = 15;
  private static final int LEAST_COLUMN = 20;
  private static final int GAP = 2;

  private final Phrases phrases;
  private final TextPage page;

  SideBySide(Phrases phrases, TextPage page) {
    this.phrases = phrases;
    this.page = page;
  }

  /** One column: a heading over it, and the way; null for none. */
  record Column(String heading, ComparedBuildUp way) {}

  /** One row: its label, and what stands in each column. */
  private record Row(String label, List<String> cells) {}

  /** Writes the columns, those that find no room beneath the others. */
  void write(List<Column> columns) {
    int fit = Math.max(1, (page.width() - LABEL) / (LEAST_COLUMN + GAP));
    int tables = (columns.size() + fit - 1) / fit;
    int each = (columns.size() + tables - 1) / Math.max(1, tables);
    for (int i = 0; i < columns.size(); i += each) {
      if (i > 0) {
        page.blank();
      }
      table(columns.subList(i, Math.min(columns.size(), i + each)));
    }
  }

  private void table(List<Column> columns) {
    int wide = (page.width() - LABEL) / columns.size() - GAP;
    List<String> headings = columns.stream().map(Column::heading).toList();
    cells(new Row("", headings), wide, Tone.BOLD);
    for (Row row : rows(columns)) {
      if (row.cells().stream().anyMatch(cell -> !cell.isEmpty())) {
        cells(row, wide, Tone.PLAIN);
      }
    }
  }

  private List<Row> rows(List<Column> columns) {
    List<Row> rows = new ArrayList<>();
    Set<String> doors = new LinkedHashSet<>();
    columns.stream()
        .filter(column -> column.way() != null)
        .forEach(column -> column.way().doors().forEach(door -> doors.add(door.name())));
    BiConsumer<String, Function<ComparedBuildUp, String>> row =
        (label, cell) -> rows.add(row(phrases.say(label), columns, cell));
    row.accept("row-way", ComparedBuildUp::title);
    row.accept("row-layers", this::layers);
    row.accept("row-cost", way -> way.cost().map(cost -> CostText.of(cost, phrases)).orElse(""));
    row.accept("row-rise", way -> Texts.mm(way.aboveOldFloor().mean()));
    for (String door : doors) {
      rows.add(row(phrases.say("row-door", "door", door), columns, way -> gap(way, door)));
    }
    row.accept("row-mass", way -> Texts.of(Math.round(way.massKgPerM2()), "kg/m2"));
    row.accept("row-joists", way -> ratio(way.joistRatio()));
    row.accept("row-deck", way -> ratio(way.deckRatio()));
    row.accept("row-work", way -> Texts.of(Math.ceil(way.workHours()), "h"));
    row.accept("row-in-use", way -> TimeText.when(phrases, way.inUse(), way.inUseAfterHours()));
    row.accept("row-disturbs", ComparedBuildUp::disturbance);
    row.accept("row-first", way -> list(way.first()));
    row.accept("row-risks", way -> list(way.risks()));
    row.accept("row-gains", way -> list(way.gains()));
    row.accept("row-losses", way -> list(way.givesUp()));
    row.accept("row-against", way -> list(way.against()));
    row.accept(
        "row-rules",
        way -> String.join(" ", way.because().stream().map(one -> one.rule().id()).toList()));
    return rows;
  }

  private static Row row(
      String label, List<Column> columns, Function<ComparedBuildUp, String> cell) {
    return new Row(
        label,
        columns.stream()
            .map(column -> column.way() == null ? "" : cell.apply(column.way()))
            .toList());
  }

  private String layers(ComparedBuildUp way) {
    List<String> layers = new ArrayList<>();
    for (ComparedBuildUp.Part part : way.layers()) {
      double mean = part.thickness().mean();
      layers.add(mean > 0 ? Texts.mm(mean) + " " + part.name() : part.name());
    }
    return list(layers);
  }

  private static String gap(ComparedBuildUp way, String name) {
    for (Door door : way.doors()) {
      if (door.name().equals(name) && !Double.isNaN(door.gapInTheEndMm())) {
        return Texts.mm(door.gapInTheEndMm());
      }
    }
    return "";
  }

  private String ratio(double ratio) {
    return Double.isNaN(ratio)
        ? ""
        : phrases.say("span-over", "ratio", Long.toString(Math.round(ratio)));
  }

  /** Each on a line of its own. */
  private static String list(List<String> texts) {
    return String.join("\n", texts.stream().map(text -> "· " + text).toList());
  }

  private void cells(Row row, int wide, Tone tone) {
    List<List<String>> columns = new ArrayList<>();
    columns.add(TextPage.wrap(row.label(), LABEL - GAP, LABEL - GAP));
    for (String cell : row.cells()) {
      List<String> lines = new ArrayList<>();
      for (String line : cell.split("\n")) {
        lines.addAll(TextPage.wrap(line, wide, wide));
      }
      columns.add(lines);
    }
    int height = columns.stream().mapToInt(List::size).max().orElse(0);
    for (int i = 0; i < height; i++) {
      StringBuilder line = new StringBuilder();
      for (int j = 0; j < columns.size(); j++) {
        List<String> cell = columns.get(j);
        String text = i < cell.size() ? cell.get(i) : "";
        int to = j == 0 ? LABEL - GAP : wide;
        String padded = text + " ".repeat(Math.max(0, to - TextPage.length(text)));
        line.append(page.paint(padded, j == 0 ? Tone.FAINT : tone)).append(" ".repeat(GAP));
      }
      page.line(line.toString());
    }
  }

  /** How a way stands, as a heading. */
  static String standing(Phrases phrases, Standing standing) {
    return phrases.say("standing-of-" + standing.word().replace(' ', '-'));
  }
}
