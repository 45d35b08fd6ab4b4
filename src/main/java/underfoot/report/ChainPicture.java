package underfoot.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
   * Draws a decision's chain.
   *
   * @param decision the decision
   * @param goesOn the words of a box whose reasons are not drawn
   * @param id what tells this drawing from others on the page
   * @return an SVG element
   */
  static String svg(Decision decision, String goesOn, String id) {
    ChainPicture picture = new ChainPicture(goesOn);
    Box root = picture.box(decision, "decision", decision.heading());
    for (Justification why : decision.because()) {
      picture.link(root, picture.rule(why, 1));
    }
    picture.columns();
    picture.place();
    return picture.draw(decision.heading(), id);
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

  private Box rule(Justification why, int depth) {
    Box known = boxes.get(why);
    if (known != null) {
      return known;
    }
    if (depth >= MOST_COLUMNS) {
      return null;
    }
    Box made = box(why, "rule", why.rule().id() + " " + why.rule().title());
    for (Premise fact : why.facts()) {
      link(made, fact(fact, depth + 1));
    }
    for (Figure figure : why.figures()) {
      link(made, figure(figure, depth + 1));
    }
    for (Justification deeper : why.restsOn()) {
      boolean byFact = why.facts().stream().anyMatch(fact -> leadsTo(fact, deeper));
      if (!byFact) {
        link(made, rule(deeper, depth + 1));
      }
    }
    return made;
  }

  private static boolean leadsTo(Premise fact, Justification why) {
    return fact.because() == why || fact.uses().stream().anyMatch(used -> leadsTo(used, why));
  }

  private Box fact(Premise fact, int depth) {
    Box known = boxes.get(fact);
    if (known != null) {
      return known;
    }
    if (depth >= MOST_COLUMNS) {
      return null;
    }
    Box made = box(fact, "fact", fact.fact() + ": " + fact.value());
    for (Premise used : fact.uses()) {
      link(made, fact(used, depth + 1));
    }
    for (Figure figure : fact.figures()) {
      link(made, figure(figure, depth + 1));
    }
    if (fact.because() != null) {
      link(made, rule(fact.because(), depth + 1));
    }
    return made;
  }

  private Box figure(Figure figure, int depth) {
    Box known = boxes.get(figure);
    if (known != null) {
      return known;
    }
    return depth >= MOST_COLUMNS
        ? null
        : box(figure, "figure", figure.name() + " = " + figure.text());
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

  private String draw(String heading, String id) {
    int columns = all.stream().mapToInt(box -> box.column).max().orElse(0) + 1;
    double width = columns * (WIDTH + GAP) - GAP + 2.0;
    double height = all.stream().mapToDouble(box -> box.top + box.height()).max().orElse(0) + 2;
    StringBuilder svg = new StringBuilder();
    svg.append(
        String.format(
            Locale.ROOT,
            "<svg viewBox=\"-1 -1 %.0f %.0f\" width=\"%.0f\" role=\"img\" aria-labelledby=\"%s\">%n",
            width,
            height,
            width,
            id));
    svg.append("<title id=\"").append(id).append("\">").append(HtmlPage.escape(heading));
    svg.append("</title>\n");
    for (Box box : all) {
      for (Box part : box.parts) {
        svg.append(edge(box, part));
      }
    }
    for (Box box : all) {
      svg.append(drawn(box));
    }
    return svg.append("</svg>\n").toString();
  }

  private static double left(Box box) {
    return box.column * (double) (WIDTH + GAP);
  }

  private static String edge(Box from, Box to) {
    double x = left(from) + WIDTH;
    double bend = x + (left(to) - x) / 2;
    return String.format(
        Locale.ROOT,
        "<path d=\"M%.1f %.1fC%.1f %.1f %.1f %.1f %.1f %.1f\" class=\"edge\"/>%n",
        x,
        from.middle(),
        bend,
        from.middle(),
        bend,
        to.middle(),
        left(to),
        to.middle());
  }

  private String drawn(Box box) {
    StringBuilder svg = new StringBuilder();
    svg.append("<g><title>").append(HtmlPage.escape(box.whole)).append("</title>");
    svg.append(
        String.format(
            Locale.ROOT,
            "<rect x=\"%.1f\" y=\"%.1f\" width=\"%d\" height=\"%.1f\" rx=\"%d\" class=\"%s\"/>",
            left(box),
            box.top,
            WIDTH,
            box.height(),
            box.style.equals("rule") || box.style.equals("decision") ? 2 : 8,
            box.style));
    double y = box.top + PADDING + LINE - 3.5;
    for (String line : box.lines) {
      svg.append(
          String.format(Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\">", left(box) + PADDING, y));
      svg.append(HtmlPage.escape(line)).append("</text>");
      y += LINE;
    }
    if (box.cut) {
      svg.append(
          String.format(
              Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" class=\"more\">", left(box) + PADDING, y));
      svg.append(HtmlPage.escape(goesOn)).append("</text>");
    }
    return svg.append("</g>\n").toString();
  }
}
