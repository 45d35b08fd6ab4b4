package underfoot.scenario;

import java.io.IOException;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;
import underfoot.quantity.Words;

/**
 * Reads one YAML document into a tree of nodes with their places.
 *
 * <p>Every scalar stays the text it was written as, so {@code no}, {@code 2026-03-02} and {@code
 * 3:4} mean themselves. Anchors, aliases, tags, several documents and deep nesting are refused:
 * nobody describing a floor needs them.
 */
public final class YamlTree {
  private static final YAMLFactory YAML = new YAMLFactory();
  private static final String UNREADABLE = "cannot be read as YAML";
  private static final String CHECK =
      "check its colon, its brackets, its quotation marks and its indent";
  private static final int DEEPEST = 12;

  private final String file;
  private final List<Fault> faults;
  private final String text;
  private YAMLParser parser;

  private YamlTree(String file, String text, List<Fault> faults) {
    this.file = file;
    this.text = text;
    this.faults = faults;
  }

  /**
   * Reads a file.
   *
   * @param file its name, for messages
   * @param content its bytes, in UTF-8
   * @param most how many bytes it may have
   * @return the tree
   * @throws ScenarioFaults if it is not one plain YAML document
   */
  public static Node read(String file, byte[] content, int most) throws ScenarioFaults {
    List<Fault> faults = new ArrayList<>();
    Node root = null;
    if (content.length > most) {
      faults.add(
          new Fault(
              file,
              0,
              0,
              "the file has " + content.length + " bytes, but at most " + most + " are read",
              "leave out what the floor does not need"));
    } else {
      String text = decode(file, content, faults);
      if (text != null && faults.isEmpty()) {
        root = new YamlTree(file, markQuestions(text), faults).document();
      }
    }
    if (!faults.isEmpty()) {
      throw new ScenarioFaults(faults);
    }
    return root;
  }

  private static String decode(String file, byte[] content, List<Fault> faults) {
    if (content.length >= 2
        && ((content[0] == (byte) 0xFF && content[1] == (byte) 0xFE)
            || (content[0] == (byte) 0xFE && content[1] == (byte) 0xFF))) {
      faults.add(
          new Fault(
              file, 1, 1, "the file is saved as UTF-16, but UTF-8 is needed", "save it as UTF-8"));
      return null;
    }
    int start =
        content.length >= 3
                && content[0] == (byte) 0xEF
                && content[1] == (byte) 0xBB
                && content[2] == (byte) 0xBF
            ? 3
            : 0;
    ByteBuffer in = ByteBuffer.wrap(content, start, content.length - start);
    CharBuffer out = CharBuffer.allocate(content.length + 1);
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    CoderResult result = decoder.decode(in, out, true);
    out.flip();
    String text = out.toString();
    if (result.isError()) {
      int[] place = place(text, text.length());
      faults.add(
          new Fault(
              file,
              place[0],
              place[1],
              String.format(
                  "the byte %02X here is not part of UTF-8 text", content[in.position()] & 0xFF),
              "save the file as UTF-8"));
      return null;
    }
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean control =
          (c < ' ' && c != '\t' && c != '\n' && c != '\r') || (c >= 0x7F && c < 0xA0 && c != 0x85);
      if (control || c == '\uFEFF' || c == '\uFFFE' || c == '\uFFFF') {
        int[] place = place(text, i);
        faults.add(
            new Fault(
                file,
                place[0],
                place[1],
                String.format("there is a character here that cannot be seen (U+%04X)", (int) c),
                "delete it"));
        return null;
      }
    }
    return text;
  }

  /** Line and column, from 1, of an index into a text; the column counts characters. */
  private static int[] place(String text, int index) {
    int line = 1;
    int start = 0;
    for (int i = 0; i < index; i++) {
      char c = text.charAt(i);
      if (c == '\n' || (c == '\r' && (i + 1 >= text.length() || text.charAt(i + 1) != '\n'))) {
        line++;
        start = i + 1;
      }
    }
    return new int[] {line, text.codePointCount(Math.min(start, index), index) + 1};
  }

  /** Replaces each {@code ?} that is a whole value by a stand-in, places unchanged. */
  private static String markQuestions(String text) {
    StringBuilder out = null;
    int seen = 0;
    boolean quoted = false; // whether a quotation mark or a comment stands before, on the same line
    for (int i = text.indexOf(": ?"); i >= 0; i = text.indexOf(": ?", i + 3)) {
      for (; seen < i; seen++) {
        char c = text.charAt(seen);
        quoted = c != '\n' && (quoted || c == '"' || c == '\'' || c == '#');
      }
      int mark = i + 2;
      int next = mark + 1;
      while (next < text.length() && text.charAt(next) == ' ') {
        next++;
      }
      boolean whole = next == text.length() || "\r\n,}".indexOf(text.charAt(next)) >= 0;
      boolean comment = next < text.length() && next > mark + 1 && text.charAt(next) == '#';
      if ((whole || comment) && !quoted) {
        if (out == null) {
          out = new StringBuilder(text);
        }
        out.setCharAt(mark, Words.LONE_QUESTION_MARK);
      }
    }
    return out == null ? text : out.toString();
  }

  /** The tree; null if there are faults. */
  private Node document() {
    try (YAMLParser open =
        (YAMLParser) YAML.createParser(ObjectReadContext.empty(), new WholeCharacters(text))) {
      parser = open;
      JsonToken token = parser.nextToken();
      if (token == null) {
        fault(
            1,
            1,
            "the file is empty",
            "write at least: scenario, practice, room, subfloor and tile");
        return null;
      }
      Node root = node(token, 1);
      if (faults.isEmpty() && parser.nextToken() != null) {
        TokenStreamLocation second = parser.currentTokenLocation();
        fault(
            second.getLineNr(),
            second.getColumnNr(),
            "a second document begins here, but a file holds one scenario",
            "put each scenario in a file of its own, without --- between");
      }
      return root;
    } catch (Stop stop) {
      return null;
    } catch (JacksonException e) {
      syntax(e);
      return null;
    } catch (RuntimeException e) {
      // A defect of the library itself: the file is refused, not the program stopped.
      fault(1, 1, "the file " + UNREADABLE, CHECK);
      return null;
    }
  }

  private Node node(JsonToken token, int depth) {
    TokenStreamLocation at = parser.currentTokenLocation();
    int line = at.getLineNr();
    int column = at.getColumnNr();
    if (parser.isCurrentAlias()) {
      fault(
          line,
          column,
          Words.quote("*" + parser.getString())
              + " points to another part of the file; that is not read",
          "write the value out in full");
    } else if (parser.getObjectId() != null) {
      fault(
          line,
          column,
          Words.quote("&" + parser.getObjectId()) + " names a part of the file; that is not read",
          "leave the & and the name out");
    } else if (parser.getTypeId() != null) {
      fault(line, column, "a type is given with ! here; that is not read", "write the value alone");
    }
    if (token != JsonToken.START_OBJECT && token != JsonToken.START_ARRAY) {
      return new Node.Scalar(parser.getString(), line, column);
    }
    if (depth > DEEPEST) {
      fault(line, column, "this is nested more than " + DEEPEST + " deep", "write it flatter");
      throw new Stop();
    }
    if (token == JsonToken.START_ARRAY) {
      List<Node> items = new ArrayList<>();
      for (JsonToken next = parser.nextToken();
          next != JsonToken.END_ARRAY;
          next = parser.nextToken()) {
        items.add(node(next, depth + 1));
      }
      return new Node.Items(items, line, column);
    }
    List<Node.Entry> entries = new ArrayList<>();
    for (JsonToken next = parser.nextToken();
        next != JsonToken.END_OBJECT;
        next = parser.nextToken()) {
      TokenStreamLocation key = parser.currentTokenLocation();
      int keyLine = key.getLineNr();
      int keyColumn = key.getColumnNr();
      String name = parser.currentName();
      entries.add(new Node.Entry(name, keyLine, keyColumn, node(parser.nextToken(), depth + 1)));
    }
    return new Node.Keys(entries, line, column);
  }

  /** Tells a syntax fault in plain words. */
  private void syntax(JacksonException e) {
    if (e.getCause() instanceof MarkedYamlEngineException marked) {
      String problem = String.valueOf(marked.getProblem());
      Mark at = marked.getProblemMark().or(marked::getContextMark).orElse(null);
      Mark begun = marked.getContextMark().orElse(at);
      if (at != null) {
        syntax(problem, at, begun);
        return;
      }
    }
    TokenStreamLocation at = e.getLocation();
    boolean key = String.valueOf(e.getOriginalMessage()).startsWith("Expected a property name");
    fault(
        at == null ? 1 : Math.max(1, at.getLineNr()),
        at == null ? 1 : Math.max(1, at.getColumnNr()),
        key
            ? "a key must be plain words, not a list, keys or a pointer"
            : "this line " + UNREADABLE,
        key ? "write: key: value" : CHECK);
  }

  private void syntax(String problem, Mark at, Mark begun) {
    Mark place = at;
    String what = "this line " + UNREADABLE;
    String how = CHECK;
    int since = begun.getLine() + 1;
    if (problem.contains("(TAB)")) {
      what = "a tab stands here, but lines are indented with spaces";
      how = "replace the tab by spaces";
    } else if (problem.contains("cannot start any token")) {
      what = "a value cannot begin with " + Words.quote(characterAt(at)) + " here";
      how = "put the value in quotation marks";
    } else if (problem.contains("mapping values are not allowed")) {
      what = "a second colon stands in one value, or this line is indented too far";
      how =
          "write one key a line, the keys of one group at the same column;"
              + " a text with a colon goes in quotation marks";
    } else if (problem.contains("mapping keys are not allowed")) {
      what = "a ? cannot begin a value here";
      how = "write: unknown";
    } else if (problem.contains("sequence entries are not allowed")) {
      what = "a - cannot begin a value here";
      how = "put each entry on a line of its own, or write: unknown";
    } else if (problem.contains("',' or ']'")) {
      what = "the list begun with [ on line " + since + " is not closed, or a comma is missing";
      how = "close it with ]";
    } else if (problem.contains("',' or '}'")) {
      what = "the keys begun with { on line " + since + " are not closed, or a comma is missing";
      how = "close them with }; a value with a [ or { in it goes in quotation marks";
    } else if (problem.contains("unexpected end of stream")) {
      place = begun;
      what = "the text begun here with a quotation mark is not closed";
      how = "close it with the same mark; for inches write in";
    } else if (problem.contains("could not find expected ':'")) {
      place = begun;
      what = "this line has no colon after its key";
      how = "write: key: value";
    } else if (problem.contains("escape")) {
      what = "a backslash within double quotation marks begins a special character";
      how = "use single quotation marks, or write two backslashes";
    } else if (problem.contains("<block end>")) {
      what = "this does not line up with what stands above it";
      how =
          "begin the keys of one group at the same column;"
              + " write nothing after a closing quotation mark";
    } else if (problem.contains("<document start>")) {
      what = "there is more here after the end of the scenario";
      how = "check the brackets, and leave out lines of --- or ...";
    }
    fault(place.getLine() + 1, place.getColumn() + 1, what, how);
  }

  /** The one character at a place. */
  private String characterAt(Mark at) {
    String line = text.lines().skip(at.getLine()).findFirst().orElse("");
    int[] characters = line.codePoints().toArray();
    return at.getColumn() < characters.length ? Character.toString(characters[at.getColumn()]) : "";
  }

  private void fault(int line, int column, String what, String how) {
    faults.add(new Fault(file, line, column, what, how));
  }

  /**
   * Hands the text out in portions that end with a whole character: the parser fails on one cut
   * between the two halves of, say, an emoji.
   */
  private static final class WholeCharacters extends StringReader {
    WholeCharacters(String text) {
      super(text);
    }

    @Override
    public int read(char[] into, int from, int most) throws IOException {
      mark(0);
      int count = super.read(into, from, most);
      if (count > 1 && Character.isHighSurrogate(into[from + count - 1])) {
        reset();
        return super.read(into, from, count - 1);
      }
      return count;
    }
  }

  /** Ends the reading of a document that is not worth reading on. */
  private static final class Stop extends RuntimeException {
    Stop() {
      super(null, null, false, false);
    }
  }
}
