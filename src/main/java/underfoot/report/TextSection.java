package underfoot.report;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.Advice;
import underfoot.plan.Advice.Layer;
import underfoot.report.TextPage.Tone;

/**
 * The build-up cut through: the tile on top, the old floor at the bottom, each layer with its
 * thickness, each surface with its level above the old floor.
 */
final class TextSection {
  private static final int LEVEL = 10;
  private static final int THICKNESS = 10;
  private static final String HANGING = "     ";
  private static final Map<String, String> GRAIN =
      Map.ofEntries(
          Map.entry("tile", "████"),
          Map.entry("bed", "░░░░"),
          Map.entry("board", "▓▓▓▓"),
          Map.entry("deck", "▓▓▓▓"),
          Map.entry("leveller", "▒▒▒▒"),
          Map.entry("screed", "▒▒▒▒"),
          Map.entry("mortar bed", "▒▒▒▒"),
          Map.entry("damp-proofing", "━━━━"),
          Map.entry("heating", "∿∿∿∿"),
          Map.entry("membrane", "╌╌╌╌"),
          Map.entry("sealing", "━━━━"),
          Map.entry("primer", "····"),
          Map.entry("packing", "▓▓▓▓"));

  private final Advice advice;
  private final Phrases phrases;
  private final TextPage page;
  private final int inside;

  TextSection(Advice advice, Phrases phrases, TextPage page) {
    this.advice = advice;
    this.phrases = phrases;
    this.page = page;
    this.inside = page.width() - LEVEL - THICKNESS - 4;
  }

  /** Draws the layers with their names and thicknesses. */
  void draw() {
    draw(layer -> "");
  }

  /** Draws them with what is said of each beneath its name; nothing where that is empty. */
  void draw(Function<Layer, String> said) {
    List<Layer> layers = advice.layers();
    double base = advice.heights().ofBase();
    page.line(
        page.paint(
            left(phrases.say("level-column-mm"))
                + " ".repeat(inside + 4)
                + phrases.say("thickness-column-mm"),
            Tone.FAINT));
    for (int i = layers.size() - 1; i >= 0; i--) {
      Layer layer = layers.get(i);
      boolean top = i == layers.size() - 1;
      rule(base + layer.level(), top ? "┌" : "├", "─", top ? "┐" : "┤");
      row(
          GRAIN.getOrDefault(layer.family(), "    ") + " " + layer.order() + " " + layer.name(),
          Sentences.bareThickness(layer.thickness(), phrases));
      String words = said.apply(layer);
      if (!words.isEmpty()) {
        TextPage.wrap(words, inside - HANGING.length(), inside - HANGING.length())
            .forEach(line -> line(HANGING + line, ""));
      }
    }
    rule(base, "╞", "═", "╡");
    row("//// " + phrases.say("old-floor", "base", advice.base()), "");
    page.line(" ".repeat(LEVEL) + "└" + "╱".repeat(inside + 2) + "┘");
  }

  private void rule(double level, String start, String line, String end) {
    String height = (Math.rint(level) > 0 ? "+" : "") + Texts.of(Math.rint(level) + 0.0, "");
    page.line(left(height) + start + line.repeat(inside + 2) + end);
  }

  private void row(String words, String thickness) {
    boolean first = true;
    for (String text : TextPage.wrap(words, inside, inside - HANGING.length())) {
      line(first ? text : HANGING + text, first ? " " + thickness : "");
      first = false;
    }
  }

  private void line(String words, String beside) {
    String rest = " ".repeat(Math.max(0, inside - TextPage.length(words)));
    page.line(" ".repeat(LEVEL) + "│ " + words + rest + " │" + beside);
  }

  private static String left(String words) {
    return " ".repeat(Math.max(0, LEVEL - 1 - TextPage.length(words))) + words + " ";
  }
}
