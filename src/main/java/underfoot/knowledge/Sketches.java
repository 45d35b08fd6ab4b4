package underfoot.knowledge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underfoot.scenario.RuleFiles;

/**
 * The small drawings that help with questions, shape by shape, as {@code
 * rules/questions/drawings.yaml} has them. They are data: nothing of a drawing is ever taken over
 * as it is written.
 */
public final class Sketches {
  static final String FILE = "questions/drawings.yaml";

  private static final String NUMBER = "(?: -?[0-9]{1,4}(?:\\.[0-9])?)";

  /** What is drawn of, the form, its numbers; for words what they are. */
  private static final Pattern SHAPE =
      Pattern.compile("([a-z]+) (box|line|dot|arrow)(" + NUMBER + "{2,48})");

  private static final Pattern WORDS =
      Pattern.compile("([a-z]+) (words)(" + NUMBER + "{2}) (\\S.*)");

  private static final int FEWEST_NUMBERS = 2;

  private final Map<String, Sketch> all = new LinkedHashMap<>();

  private Sketches() {}

  /**
   * One drawing.
   *
   * @param title what it shows, for whoever cannot see it
   * @param width its width, in its own units
   * @param height its height
   * @param shapes its shapes, the hindmost first
   */
  public record Sketch(String title, int width, int height, List<Shape> shapes) {
    /** Copies the list. */
    public Sketch {
      shapes = List.copyOf(shapes);
    }
  }

  /**
   * One shape.
   *
   * @param of what it is of, such as {@code timber}; it decides the colour
   * @param form box, line, dot, arrow or words
   * @param numbers a box: left, top, width, height; a line: x and y by turns; a dot: x, y, radius;
   *     an arrow: from x, y to x, y; words: x, y
   * @param words the words; empty unless they are such
   */
  public record Shape(String of, String form, List<Double> numbers, String words) {
    /** Copies the list. */
    public Shape {
      numbers = List.copyOf(numbers);
    }
  }

  static Sketches load(RuleFiles files) throws KnowledgeFault {
    Sketches sketches = new Sketches();
    if (files.list("questions", ".yaml").contains(FILE)) {
      for (Entries.Entry entry : Entries.readFile(files, FILE)) {
        List<Shape> shapes = new ArrayList<>();
        for (String line : entry.named("shapes")) {
          shapes.add(shape(entry, line));
        }
        Matcher size = Pattern.compile("([0-9]{1,3}) x ([0-9]{1,3})").matcher(size(entry));
        if (!size.matches() || shapes.isEmpty()) {
          throw fault(entry, "a drawing needs a size such as 120 x 80, and shapes");
        }
        int width = Integer.parseInt(size.group(1));
        int height = Integer.parseInt(size.group(2));
        sketches.all.put(entry.name(), new Sketch(entry.required("title"), width, height, shapes));
      }
    }
    return sketches;
  }

  private static String size(Entries.Entry entry) {
    return entry.field("size").isEmpty() ? "120 x 80" : entry.field("size");
  }

  private static Shape shape(Entries.Entry entry, String line) throws KnowledgeFault {
    Matcher shape = WORDS.matcher(line);
    boolean worded = shape.matches();
    if (!worded) {
      shape = SHAPE.matcher(line);
    }
    if (!worded && !shape.matches()) {
      throw fault(entry, "'" + line + "' is no shape; write for example: timber box 10 20 100 14");
    }
    List<Double> numbers = new ArrayList<>();
    for (String number : shape.group(3).strip().split(" ")) {
      numbers.add(Double.valueOf(number));
    }
    boolean enough =
        switch (shape.group(2)) {
          case "box", "arrow" -> numbers.size() == 2 * FEWEST_NUMBERS;
          case "dot" -> numbers.size() == FEWEST_NUMBERS + 1;
          case "words" -> true;
          default -> numbers.size() >= 2 * FEWEST_NUMBERS && numbers.size() % 2 == 0;
        };
    if (!enough) {
      throw fault(entry, "'" + line + "' has not the numbers its form needs");
    }
    String words = worded ? shape.group(4) : "";
    return new Shape(shape.group(1), shape.group(2), numbers, words);
  }

  private static KnowledgeFault fault(Entries.Entry entry, String what) {
    return new KnowledgeFault(entry.file(), entry.line(), "'" + entry.name() + "': " + what);
  }

  /** Whether there is a drawing of that name. */
  public boolean has(String name) {
    return all.containsKey(name);
  }

  /** Every drawing by name. */
  public Map<String, Sketch> all() {
    return Map.copyOf(all);
  }
}
