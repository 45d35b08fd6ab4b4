package underfoot.scenario;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Reads the plain part of YAML, quickly, and leaves everything else to the full parser.
 *
 * <p>A cold start spends a fifth of a second in the full parser, most of it on files as plain as
 * the facts: one key a line, with a plain or quoted value, or a list or keys in brackets closed on
 * the same line. Such a file is read here into the very same tree, places included; at the first
 * sign of anything else (or of a fault) this reader gives up, and the full parser decides. A test
 * holds the two against each other on damaged files.
 */
final class QuickYaml {
  private static final int DEEPEST = 12;
  private static final int LONGEST_KEY = 500;

  /** What a plain value cannot begin with, or not in all places. */
  private static final String SPECIAL = "-?:,[]{}#&*!|>'\"%@`";

  private static final String BRACKETS = ",[]{}";

  private final List<String> lines = new ArrayList<>();
  private int[] numbers = new int[256];
  private int[] indents = new int[256];

  /** The next line that holds more than a comment. */
  private int next;

  /** The line a value in brackets stands on, and how far it has been read. */
  private String flow;

  private int flowLine;
  private int at;

  private QuickYaml() {}

  /**
   * Reads a text.
   *
   * @param text the text of a file
   * @return its tree, or null if the text is not plain enough
   */
  static Node read(String text) {
    try {
      return new QuickYaml().document(text);
    } catch (NotPlain e) {
      return null;
    }
  }

  private Node document(String text) {
    split(text);
    require(!lines.isEmpty() && indents[0] == 0);
    Node root = block(0, 1);
    require(next == lines.size());
    return root;
  }

  /** Finds the lines that hold something. */
  private void split(String text) {
    int number = 0;
    int start = 0;
    int length = text.length();
    while (start < length) {
      int end = text.indexOf('\n', start);
      if (end < 0) {
        end = length;
      }
      number++;
      int first = start;
      while (first < end && text.charAt(first) == ' ') {
        first++;
      }
      boolean blank = first == end || text.charAt(first) == '#';
      for (int i = first; i < end; i++) {
        char c = text.charAt(i);
        require(c >= ' ' && c < '\u2028' || c > '\u2029' && !Character.isSurrogate(c));
        require(c != '\u0085');
      }
      if (!blank) {
        String line = text.substring(start, end);
        require(first > start || !(line.startsWith("---") || line.startsWith("...")));
        add(line, number, first - start);
      }
      start = end + 1;
    }
  }

  private void add(String line, int number, int indent) {
    int size = lines.size();
    if (size == numbers.length) {
      numbers = Arrays.copyOf(numbers, size * 2);
      indents = Arrays.copyOf(indents, size * 2);
    }
    lines.add(line);
    numbers[size] = number;
    indents[size] = indent;
  }

  /** The keys or list whose lines begin at this indent. */
  private Node block(int indent, int depth) {
    require(depth <= DEEPEST);
    return isDash(next) ? list(indent, depth) : keys(indent, depth);
  }

  private boolean isDash(int line) {
    String text = lines.get(line);
    int first = indents[line];
    return text.charAt(first) == '-'
        && (first + 1 == text.length() || text.charAt(first + 1) == ' ');
  }

  private Node list(int indent, int depth) {
    List<Node> items = new ArrayList<>();
    int line = numbers[next];
    while (next < lines.size() && indents[next] == indent && isDash(next)) {
      String text = lines.get(next);
      int first = indent + 1;
      while (first < text.length() && text.charAt(first) == ' ') {
        first++;
      }
      require(first < text.length() && text.charAt(first) != '#');
      char c = text.charAt(first);
      if (c != '[' && c != '{' && keyEnd(text, first) >= 0) {
        indents[next] = first;
        items.add(keys(first, depth + 1));
      } else {
        items.add(value(text, first, indent, depth + 1));
      }
    }
    require(next == lines.size() || indents[next] <= indent);
    return new Node.Items(items, line, indent + 1);
  }

  private Node keys(int indent, int depth) {
    require(depth <= DEEPEST);
    List<Node.Entry> entries = new ArrayList<>();
    int firstLine = numbers[next];
    while (next < lines.size() && indents[next] == indent && !isDash(next)) {
      String text = lines.get(next);
      int line = numbers[next];
      int colon = keyEnd(text, indent);
      require(colon >= 0 && colon - indent < LONGEST_KEY);
      String key =
          text.charAt(indent) == '"'
              ? text.substring(indent + 1, colon - 1)
              : text.substring(indent, colon);
      int first = colon + 1;
      while (first < text.length() && text.charAt(first) == ' ') {
        first++;
      }
      Node value;
      boolean nothing = first == text.length() || (text.charAt(first) == '#' && first > colon + 1);
      if (nothing) {
        next++;
        boolean deeper = next < lines.size() && indents[next] > indent;
        boolean dash = next < lines.size() && indents[next] == indent && isDash(next);
        value =
            deeper || dash ? block(indents[next], depth + 1) : new Node.Scalar("", line, colon + 2);
      } else {
        value = value(text, first, indent, depth + 1);
      }
      entries.add(new Node.Entry(key, line, indent + 1, value));
    }
    require(next == lines.size() || indents[next] < indent);
    return new Node.Keys(entries, firstLine, indent + 1);
  }

  /** The index of the colon that ends the key beginning here, or -1 if there is no key. */
  private int keyEnd(String text, int first) {
    char c = text.charAt(first);
    if (c == '"') {
      int close = quoteEnd(text, first);
      return close + 1 < text.length()
              && text.charAt(close + 1) == ':'
              && (close + 2 == text.length() || text.charAt(close + 2) == ' ')
          ? close + 1
          : -1;
    }
    require(SPECIAL.indexOf(c) < 0 || (c == '-' && isDashOfNumber(text, first)));
    for (int i = first; i < text.length(); i++) {
      char d = text.charAt(i);
      if (d == '#' && text.charAt(i - 1) == ' ' && i > first) {
        return -1;
      }
      if (d == ':' && (i + 1 == text.length() || text.charAt(i + 1) == ' ')) {
        require(i > first && text.charAt(i - 1) != ' ');
        return i;
      }
    }
    return -1;
  }

  private static boolean isDashOfNumber(String text, int dash) {
    return dash + 1 < text.length()
        && (Character.isDigit(text.charAt(dash + 1)) || text.charAt(dash + 1) == '.');
  }

  /** A value that ends on its own line; the next line may not continue it. */
  private Node value(String text, int first, int indent, int depth) {
    int line = numbers[next];
    char c = text.charAt(first);
    Node node;
    int end;
    if (c == '"') {
      int close = quoteEnd(text, first);
      node = new Node.Scalar(text.substring(first + 1, close), line, first + 1);
      end = close + 1;
    } else if (c == '[' || c == '{') {
      flow = text;
      flowLine = line;
      at = first;
      node = flow(depth);
      end = at;
    } else {
      require(SPECIAL.indexOf(c) < 0 || (c == '-' && isDashOfNumber(text, first)));
      end = text.length();
      for (int i = first; i < text.length(); i++) {
        char d = text.charAt(i);
        if (d == '#' && text.charAt(i - 1) == ' ') {
          end = i;
          break;
        }
        require(d != ':' || (i + 1 < text.length() && text.charAt(i + 1) != ' '));
      }
      while (text.charAt(end - 1) == ' ') {
        end--;
      }
      node = new Node.Scalar(text.substring(first, end), line, first + 1);
    }
    int rest = end;
    while (rest < text.length() && text.charAt(rest) == ' ') {
      rest++;
    }
    require(rest == text.length() || (text.charAt(rest) == '#' && rest > end));
    next++;
    require(next == lines.size() || indents[next] <= indent);
    return node;
  }

  /** The closing mark of a text in double quotation marks without special characters. */
  private static int quoteEnd(String text, int open) {
    int close = text.indexOf('"', open + 1);
    int backslash = text.indexOf('\\', open + 1);
    require(close > 0 && (backslash < 0 || backslash > close));
    return close;
  }

  private Node flow(int depth) {
    char c = peek();
    int column = at + 1;
    if (c == '[') {
      require(depth <= DEEPEST);
      at++;
      List<Node> items = new ArrayList<>();
      spaces();
      while (peek() != ']') {
        items.add(flow(depth + 1));
        comma(']');
      }
      at++;
      return new Node.Items(items, flowLine, column);
    }
    if (c == '{') {
      require(depth <= DEEPEST);
      at++;
      List<Node.Entry> entries = new ArrayList<>();
      spaces();
      while (peek() != '}') {
        int keyColumn = at + 1;
        String key = token();
        require(peek() == ':' && at + 1 < flow.length() && flow.charAt(at + 1) == ' ');
        at++;
        spaces();
        entries.add(new Node.Entry(key, flowLine, keyColumn, flow(depth + 1)));
        comma('}');
      }
      at++;
      return new Node.Keys(entries, flowLine, column);
    }
    Node scalar = new Node.Scalar(token(), flowLine, column);
    require(peek() != ':');
    return scalar;
  }

  private void comma(char close) {
    spaces();
    if (peek() == ',') {
      at++;
      require(at < flow.length() && flow.charAt(at) == ' ' || BRACKETS.indexOf(peek()) < 0);
      spaces();
      require(peek() != close && peek() != ',');
    } else {
      require(peek() == close);
    }
  }

  /** A plain or quoted text within brackets. */
  private String token() {
    int first = at;
    char c = peek();
    if (c == '"') {
      int close = quoteEnd(flow, first);
      at = close + 1;
      return flow.substring(first + 1, close);
    }
    require(SPECIAL.indexOf(c) < 0 || (c == '-' && isDashOfNumber(flow, first)));
    while (at < flow.length()) {
      char d = flow.charAt(at);
      if (BRACKETS.indexOf(d) >= 0) {
        require(d != '[' && d != '{');
        break;
      }
      if (d == ':') {
        require(at + 1 < flow.length() && BRACKETS.indexOf(flow.charAt(at + 1)) < 0);
        if (flow.charAt(at + 1) == ' ') {
          require(flow.charAt(at - 1) != ' ');
          break;
        }
      }
      require(d != '#' || flow.charAt(at - 1) != ' ');
      at++;
    }
    int end = at;
    while (flow.charAt(end - 1) == ' ') {
      end--;
    }
    require(end - first < LONGEST_KEY);
    return flow.substring(first, end);
  }

  private char peek() {
    require(at < flow.length());
    return flow.charAt(at);
  }

  private void spaces() {
    while (at < flow.length() && flow.charAt(at) == ' ') {
      at++;
    }
  }

  private static void require(boolean plain) {
    if (!plain) {
      throw NotPlain.INSTANCE;
    }
  }

  /** Says that the full parser is needed. */
  private static final class NotPlain extends RuntimeException {
    static final NotPlain INSTANCE = new NotPlain();

    NotPlain() {
      super(null, null, false, false);
    }
  }
}
