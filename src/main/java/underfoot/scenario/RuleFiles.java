package underfoot.scenario;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/** The files of a rule base: those shipped with the program, or a folder of the user's own. */
public interface RuleFiles {

  /**
   * The files directly in a folder, sorted by name.
   *
   * @param folder the folder within the rule base, such as {@code facts}
   * @param suffix how the names end, such as {@code .yaml}
   * @return paths within the rule base, such as {@code facts/room.yaml}; empty if there is no such
   *     folder
   */
  List<String> list(String folder, String suffix);

  /** Every file of the rule base, sorted by path. */
  List<String> all();

  /**
   * Opens a file.
   *
   * @param path its path within the rule base, such as {@code facts/room.yaml}
   * @return its content; the caller closes it
   * @throws UncheckedIOException if there is no such file or it cannot be read
   */
  InputStream open(String path);

  /**
   * The whole content of a file.
   *
   * @param path its path within the rule base
   * @return its bytes
   * @throws UncheckedIOException if there is no such file or it cannot be read
   */
  default byte[] read(String path) {
    try (InputStream in = open(path)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * A YAML file as a tree.
   *
   * @param path its path within the rule base
   * @param most how many bytes it may have
   * @throws ScenarioFaults if it is not one plain YAML document
   * @throws UncheckedIOException if there is no such file or it cannot be read
   */
  default Node tree(String path, int most) throws ScenarioFaults {
    return YamlTree.read(path, read(path), most);
  }

  /** The rule base shipped with the program. */
  static RuleFiles shipped() {
    return new Shipped();
  }

  /**
   * A rule base in a folder.
   *
   * @param folder the folder that holds {@code facts}, {@code figures} and so on
   */
  static RuleFiles of(Path folder) {
    return new Folder(folder);
  }

  /** Files in a folder. */
  record Folder(Path root) implements RuleFiles {
    /**
     * Largest file of rules that is read; it cannot be a limit of the rules, which it is read for.
     */
    private static final int MOST_BYTES = 4_000_000;

    @Override
    public List<String> list(String folder, String suffix) {
      Path directory = root.resolve(folder);
      if (!Files.isDirectory(directory)) {
        return List.of();
      }
      try (Stream<Path> files = Files.list(directory)) {
        String prefix = folder.isEmpty() ? "" : folder + "/";
        return files
            .filter(Files::isRegularFile)
            .map(file -> file.getFileName().toString())
            .filter(name -> name.endsWith(suffix))
            .sorted()
            .map(name -> prefix + name)
            .toList();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    @Override
    public List<String> all() {
      try (Stream<Path> files = Files.walk(root, 3)) {
        return files
            .filter(Files::isRegularFile)
            .map(file -> root.relativize(file).toString().replace('\\', '/'))
            .filter(name -> name.matches(".*\\.(dslr|dsl|yaml)"))
            .sorted()
            .toList();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    @Override
    public InputStream open(String path) {
      Path file = root.resolve(path);
      try {
        if (Files.exists(file) && !file.toRealPath().startsWith(root.toRealPath())) {
          throw new FileSystemException(path, null, "leads out of the folder of the rules");
        }
        return new ByteArrayInputStream(InputFile.read(file, MOST_BYTES));
      } catch (FileSystemException e) {
        String why = e.getReason() == null ? "cannot be read" : e.getReason();
        throw new UncheckedIOException(path + " " + why, e);
      } catch (IOException e) {
        throw new UncheckedIOException(path + " cannot be read", e);
      }
    }
  }

  /**
   * Files on the class path, under {@code rules/}. A jar's folders cannot be listed through the
   * class loader: names come from {@code rules/index.txt} (one path a line) if it is there, else
   * from the jar or folder this class was loaded from.
   */
  final class Shipped implements RuleFiles {
    private static final String ROOT = "rules/";

    private List<String> names;

    private Shipped() {}

    @Override
    public Node tree(String path, int most) throws ScenarioFaults {
      byte[] content = read(path);
      Optional<Node> kept = KeptTrees.shipped().find(path, content);
      return kept.isPresent() ? kept.get() : YamlTree.read(path, content, most);
    }

    @Override
    public List<String> list(String folder, String suffix) {
      String prefix = folder.isEmpty() ? "" : folder + "/";
      List<String> found = new ArrayList<>();
      for (String name : names()) {
        if (name.startsWith(prefix)
            && name.indexOf('/', prefix.length()) < 0
            && name.endsWith(suffix)) {
          found.add(name);
        }
      }
      found.sort(null);
      return List.copyOf(found);
    }

    @Override
    public List<String> all() {
      return names().stream()
          .filter(name -> !name.equals("index.txt") && !name.equals(KeptTrees.FILE))
          .sorted()
          .toList();
    }

    @Override
    public InputStream open(String path) {
      InputStream in = RuleFiles.class.getResourceAsStream("/" + ROOT + path);
      if (in == null) {
        throw new UncheckedIOException(new NoSuchFileException(ROOT + path));
      }
      return in;
    }

    private synchronized List<String> names() {
      if (names == null) {
        try {
          names = index();
        } catch (IOException | URISyntaxException e) {
          throw new UncheckedIOException(new IOException("the rule base cannot be listed", e));
        }
      }
      return names;
    }

    private static List<String> index() throws IOException, URISyntaxException {
      try (InputStream in = RuleFiles.class.getResourceAsStream("/" + ROOT + "index.txt")) {
        if (in != null) {
          return new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .lines()
              .map(String::strip)
              .filter(line -> !line.isEmpty())
              .toList();
        }
      }
      Path source = source();
      if (!Files.isDirectory(source)) {
        try (JarFile jar = new JarFile(source.toFile(), false)) {
          return jar.stream()
              .map(entry -> entry.getName())
              .filter(name -> name.startsWith(ROOT) && !name.endsWith("/"))
              .map(name -> name.substring(ROOT.length()))
              .toList();
        }
      }
      Path root = source.resolve(ROOT);
      try (Stream<Path> files = Files.walk(root)) {
        return files
            .filter(Files::isRegularFile)
            .map(file -> root.relativize(file).toString().replace('\\', '/'))
            .toList();
      }
    }

    /** The jar or folder that holds the shipped rules. */
    private static Path source() throws IOException, URISyntaxException {
      URL facts = RuleFiles.class.getResource("/" + ROOT + "facts/limits.yaml");
      if (facts == null) {
        throw new NoSuchFileException(ROOT + "facts/limits.yaml");
      }
      String text = facts.toString();
      if (text.startsWith("jar:")) {
        return Path.of(new URI(text.substring("jar:".length(), text.indexOf("!/"))));
      }
      return Path.of(facts.toURI()).getParent().getParent().getParent();
    }
  }
}
