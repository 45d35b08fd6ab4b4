package underfoot.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import underfoot.knowledge.Figure;
import underfoot.plan.Advice.Decision;
import underfoot.plan.Justification;
import underfoot.plan.Premise;

/**
 * The chain of reasons of one decision as a drawing: the decision on the left, the rules that made
 * it next, what they rest on to the right. What several things rest on is drawn once. A chain of
 * more columns than a sheet of paper holds is cut, and each box that goes on says so.
 */
final class ChainPicture {
  private static final int MOST_COLUMNS = 5;
  private static final int WIDTH = 148;
  private static final int GAP = 24;
  private static final int SPACE = 9;
  private static final int LINE = 14;
  private static final int PADDING = 7;
  private static final int LETTERS = 21;
  private static final int MOST_LINES = 6;

  private final Map<Object, Box> boxes = new IdentityHashMap<>();
  private final List<Box> all = new ArrayList<>();
  private final String goesOn;

  /** One box of the drawing. */
  private static final class Box {
    private final String style;
    private final List<String> lines;
    private final String whole;
    private final List<Box> parts = new ArrayList<>();
    private final List<Box> parents = new ArrayList<>();
    private int column;
    private double top;
    private boolean cut;

    Box(String style, String text) {
      this.style = style;
      this.whole = text;
      List<String> wrapped = TextPage.wrap(text, LETTERS, LETTERS);
      if (wrapped.size() > MOST_LINES) {
        wrapped = new ArrayList<>(wrapped.subList(0, MOST_LINES));
        wrapped.set(MOST_LINES - 1, wrapped.get(MOST_LINES - 1) + " …");
      }
      this.lines = wrapped;
    }

    double height() {
      return (lines.size() + (cut ? 1 : 0)) * LINE + 2.0 * PADDING;
    }

    double middle() {
      return top + height() / 2;
    }
  }

  private ChainPicture(String goesOn) {
    this.goesOn = goesOn;
  }

  /**
   * Draws a decision's chain as an SVG element.
   *
   * @param decision the decision
   * @param goesOn the words of a box whose reasons are not drawn
   * @param id what tells this drawing from others on the page
   * @param out where it is written
   */
  static void draw(Decision decision, String goesOn, String id, HtmlWriter out) {
    ChainPicture picture = new ChainPicture(goesOn);
    Box root = picture.box(decision, "decision", decision.heading());
    for (Justification why : decision.because()) {
      picture.link(root, picture.rule(why, 1));
    }
    picture.columns();
    picture.place();
    picture.write(decision.heading(), id, out);
  }

  private Box box(Object of, String style, String text) {
    Box made = new Box(style, text);
    boxes.put(of, made);
    all.add(made);
    return made;
  }

  private void link(Box from, Box to) {
    if (to == null) {
      from.cut = true;
    } else if (!from.parts.contains(to)) {
      from.parts.add(to);
      to.parents.add(from);
    }
  }

  /** The box of a thing, made if there is none; null beyond the last column. */
  private Box known(Object of, int depth, String style, String text, Consumer<Box> parts) {
    Box known = boxes.get(of);
    if (known == null && depth < MOST_COLUMNS) {
      known = box(of, style, text);
      parts.accept(known);
    }
    return known;
  }

  private Box rule(Justification why, int depth) {
    String text = why.rule().id() + " " + why.rule().title();
    return known(
        why,
        depth,
        "rule",
        text,
        made -> {
          why.facts().forEach(fact -> link(made, fact(fact, depth + 1)));
          why.figures().forEach(figure -> link(made, figure(figure, depth + 1)));
          WhyReport.deeper(why).forEach(deeper -> link(made, rule(deeper, depth + 1)));
        });
  }

  private Box fact(Premise fact, int depth) {
    return known(
        fact,
        depth,
        "fact",
        fact.fact() + ": " + fact.value(),
        made -> {
          fact.uses().forEach(used -> link(made, fact(used, depth + 1)));
          fact.figures().forEach(figure -> link(made, figure(figure, depth + 1)));
          if (fact.because() != null) {
            link(made, rule(fact.because(), depth + 1));
          }
        });
  }

  private Box figure(Figure figure, int depth) {
    return known(figure, depth, "figure", figure.name() + " = " + figure.text(), made -> {});
  }

  /** Each box stands one column to the right of the last that leads to it. */
  private void columns() {
    boolean moved = true;
    for (int round = 0; moved && round < all.size(); round++) {
      moved = false;
      for (Box box : all) {
        for (Box part : box.parts) {
          if (part.column <= box.column) {
            part.column = box.column + 1;
            moved = true;
          }
        }
      }
    }
    // Boxes reached by several ways may stand beyond the last column; their parents say so instead.
    for (Box box : List.copyOf(all)) {
      if (box.column >= MOST_COLUMNS) {
        all.remove(box);
        box.parents.forEach(
            parent -> {
              parent.parts.remove(box);
              parent.cut = true;
            });
      }
    }
  }

  private void place() {
    int last = all.stream().mapToInt(box -> box.column).max().orElse(0);
    for (int column = 0; column <= last; column++) {
      int here = column;
      List<Box> boxesHere = new ArrayList<>(all.stream().filter(b -> b.column == here).toList());
      boxesHere.sort(Comparator.comparingDouble(ChainPicture::wanted));
      double next = 0;
      for (Box box : boxesHere) {
        box.top = Math.max(next, wanted(box) - box.height() / 2);
        next = box.top + box.height() + SPACE;
      }
    }
    double above = all.stream().mapToDouble(box -> box.top).min().orElse(0);
    all.forEach(box -> box.top -= above);
    // The decision stands in the middle of what it rests on.
    Box root = all.get(0);
    double middle = root.parts.stream().mapToDouble(Box::middle).average().orElse(0);
    root.top = Math.max(0, middle - root.height() / 2);
  }

  private static double wanted(Box box) {
    return box.parents.stream().mapToDouble(Box::middle).average().orElse(0);
  }

  private void write(String heading, String id, HtmlWriter out) {
    int columns = all.stream().mapToInt(box -> box.column).max().orElse(0) + 1;
    double width = columns * (WIDTH + GAP) - GAP + 2.0;
    double height = all.stream().mapToDouble(box -> box.top + box.height()).max().orElse(0) + 2;
    String view = say("-1 -1 %.0f %.0f", width, height);
    String wide = say("%.0f", width);
    out.open("svg", "viewBox", view, "width", wide, "role", "img", "aria-labelledby", id).line();
    out.block("title", heading, "id", id);
    for (Box box : all) {
      box.parts.forEach(part -> edge(box, part, out));
    }
    all.forEach(box -> write(box, out));
    out.end("svg");
  }

  private static String say(String form, Object... numbers) {
    return String.format(Locale.ROOT, form, numbers);
  }

  private static double left(Box box) {
    return box.column * (double) (WIDTH + GAP);
  }

  private static void edge(Box from, Box to, HtmlWriter out) {
    double x = left(from) + WIDTH;
    double bend = x + (left(to) - x) / 2;
    double y = from.middle();
    double end = to.middle();
    String path =
        say("M%.1f %.1fC%.1f %.1f %.1f %.1f %.1f %.1f", x, y, bend, y, bend, end, left(to), end);
    out.empty("path", "d", path, "class", "edge").line();
  }

  private void write(Box box, HtmlWriter out) {
    out.open("g").element("title", box.whole);
    boolean square = box.style.equals("rule") || box.style.equals("decision");
    out.empty(
        "rect",
        "x",
        say("%.1f", left(box)),
        "y",
        say("%.1f", box.top),
        "width",
        Integer.toString(WIDTH),
        "height",
        say("%.1f", box.height()),
        "rx",
        square ? "2" : "8",
        "class",
        box.style);
    double y = box.top + PADDING + LINE - 3.5;
    for (String line : box.lines) {
      line(box, y, line, "", out);
      y += LINE;
    }
    if (box.cut) {
      line(box, y, goesOn, "more", out);
    }
    out.end("g");
  }

  private static void line(Box box, double y, String words, String style, HtmlWriter out) {
    String x = say("%.1f", left(box) + PADDING);
    out.element("text", words, "x", x, "y", say("%.1f", y), "class", style);
  }
}
