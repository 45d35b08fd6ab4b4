package underfoot.reasoning;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import underfoot.scenario.RuleFiles;

/** The shipped rule base with some files put in the place of others, or beside them. */
public final class Overlay implements RuleFiles {
  /** A file of this ending is joined to the end of the one whose name comes before it. */
  private static final String ADD = ".add";

  private final RuleFiles shipped = RuleFiles.shipped();
  private final Map<String, byte[]> own = new LinkedHashMap<>();

  /** The shipped files with one of its own. */
  public Overlay with(String path, byte[] content) {
    own.put(path, content);
    return this;
  }

  /** The shipped files with those of a folder. */
  public static Overlay of(Path folder) throws IOException {
    Overlay overlay = new Overlay();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        String path = folder.relativize(file).toString().replace('\\', '/');
        byte[] content = Files.readAllBytes(file);
        if (path.endsWith(ADD)) {
          path = path.substring(0, path.length() - ADD.length());
          byte[] before = overlay.shipped.read(path);
          byte[] joined = new byte[before.length + content.length];
          System.arraycopy(before, 0, joined, 0, before.length);
          System.arraycopy(content, 0, joined, before.length, content.length);
          content = joined;
        }
        overlay.own.put(path, content);
      }
    }
    return overlay;
  }

  @Override
  public List<String> list(String folder, String suffix) {
    TreeSet<String> names = new TreeSet<>(shipped.list(folder, suffix));
    String prefix = folder.isEmpty() ? "" : folder + "/";
    for (String path : own.keySet()) {
      if (path.startsWith(prefix)
          && path.indexOf('/', prefix.length()) < 0
          && path.endsWith(suffix)) {
        names.add(path);
      }
    }
    return new ArrayList<>(names);
  }

  @Override
  public List<String> all() {
    TreeSet<String> names = new TreeSet<>(shipped.all());
    names.addAll(own.keySet());
    return new ArrayList<>(names);
  }

  @Override
  public InputStream open(String path) {
    byte[] content = own.get(path);
    if (content == null) {
      return shipped.open(path);
    }
    return new ByteArrayInputStream(content);
  }
}
