package underfoot.scenario;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * The YAML files of the shipped rules as trees, kept when the program is built: at a cold start,
 * reading a hundred files of YAML takes ten times as long. A tree is only used for the very bytes
 * it was read from. Safe to share between threads.
 */
public final class KeptTrees {
  /** The resource they are kept in. */
  public static final String FILE = "trees.bin";

  private static final String YAML = ".yaml";
  private static final int SCALAR = 0;
  private static final int ITEMS = 1;
  private static final int KEYS = 2;

  private final Map<String, Kept> kept = new HashMap<>();

  /** Where a tree stands, and what it was read from. */
  private record Kept(long sum, int length, byte[] in, int at) {}

  private KeptTrees() {}

  /** Read when somebody first asks, and once for all who do. */
  private static final class Shipped {
    private static final KeptTrees TREES = read();
  }

  /** Those that came with the program; none if it was not built to the end. */
  static KeptTrees shipped() {
    return Shipped.TREES;
  }

  private static KeptTrees read() {
    try (InputStream in = KeptTrees.class.getResourceAsStream("/rules/" + FILE)) {
      return in == null ? new KeptTrees() : of(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Reads what {@link #written} wrote. */
  static KeptTrees of(byte[] content) {
    KeptTrees trees = new KeptTrees();
    Reader all = new Reader(content, 0);
    for (int left = all.number(); left > 0; left--) {
      String path = all.text();
      long sum = Integer.toUnsignedLong(all.number());
      int length = all.number();
      int size = all.number();
      trees.kept.put(path, new Kept(sum, length, content, all.at));
      all.at += size;
    }
    return trees;
  }

  /**
   * The tree of a file.
   *
   * @param path the file
   * @param content its bytes
   * @return nothing if no tree of just these bytes is kept
   */
  Optional<Node> find(String path, byte[] content) {
    Kept one = kept.get(path);
    return one == null || one.length() != content.length || one.sum() != sum(content)
        ? Optional.empty()
        : Optional.of(new Reader(one.in(), one.at()).node());
  }

  /**
   * The trees of all YAML files of some rules, written so that {@link #of} can read them.
   *
   * @throws ScenarioFaults if one of them cannot be read
   */
  public static byte[] written(RuleFiles files) throws ScenarioFaults {
    List<String> paths = files.all().stream().filter(path -> path.endsWith(YAML)).toList();
    Writer all = new Writer();
    all.number(paths.size());
    for (String path : paths) {
      byte[] content = files.read(path);
      Writer tree = new Writer();
      tree.node(YamlTree.read(path, content, Integer.MAX_VALUE));
      all.text(path);
      all.number((int) sum(content));
      all.number(content.length);
      all.number(tree.out.size());
      all.out.writeBytes(tree.out.toByteArray());
    }
    return all.out.toByteArray();
  }

  private static long sum(byte[] content) {
    CRC32 sum = new CRC32();
    sum.update(content);
    return sum.getValue();
  }

  /** Writes numbers in as few bytes as they need, seven bits each, the lowest first. */
  private static final class Writer {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();

    void number(int number) {
      int left = number;
      for (; (left & ~0x7F) != 0; left >>>= 7) {
        out.write(left & 0x7F | 0x80);
      }
      out.write(left);
    }

    void text(String text) {
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      number(bytes.length);
      out.writeBytes(bytes);
    }

    void node(Node node) {
      if (node instanceof Node.Scalar scalar) {
        begin(SCALAR, node);
        text(scalar.text());
      } else if (node instanceof Node.Items items) {
        begin(ITEMS, node);
        number(items.items().size());
        items.items().forEach(this::node);
      } else if (node instanceof Node.Keys keys) {
        begin(KEYS, node);
        number(keys.entries().size());
        for (Node.Entry entry : keys.entries()) {
          text(entry.key());
          number(entry.line());
          number(entry.column());
          node(entry.value());
        }
      }
    }

    private void begin(int sort, Node node) {
      out.write(sort);
      number(node.line());
      number(node.column());
    }
  }

  /** Reads the same. */
  private static final class Reader {
    private final byte[] in;
    private int at;

    Reader(byte[] in, int at) {
      this.in = in;
      this.at = at;
    }

    int number() {
      int number = 0;
      for (int shift = 0; ; shift += 7) {
        byte next = in[at++];
        number |= (next & 0x7F) << shift;
        if (next >= 0) {
          return number;
        }
      }
    }

    String text() {
      int length = number();
      String text = new String(in, at, length, StandardCharsets.UTF_8);
      at += length;
      return text;
    }

    Node node() {
      int sort = in[at++];
      int line = number();
      int column = number();
      if (sort == SCALAR) {
        return new Node.Scalar(text(), line, column);
      }
      int left = number();
      if (sort == ITEMS) {
        List<Node> items = new ArrayList<>(left);
        for (; left > 0; left--) {
          items.add(node());
        }
        return new Node.Items(items, line, column);
      }
      List<Node.Entry> entries = new ArrayList<>(left);
      for (; left > 0; left--) {
        String key = text();
        int keyLine = number();
        int keyColumn = number();
        entries.add(new Node.Entry(key, keyLine, keyColumn, node()));
      }
      return new Node.Keys(entries, line, column);
    }
  }
}
