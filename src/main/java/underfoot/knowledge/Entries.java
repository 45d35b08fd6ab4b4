package underfoot.knowledge;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.dataformat.yaml.YAMLFactory;
import underfoot.scenario.RuleFiles;

/**
 * Reads a file of the knowledge base: named entries, each a text or a small table of texts and
 * lists. A tree binder would do, but is the slowest part of a cold start.
 */
final class Entries {
  private static final YAMLFactory YAML =
      YAMLFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

  private Entries() {}

  /**
   * One entry.
   *
   * @param name its key
   * @param file where it stands
   * @param line where it stands
   * @param fields its texts by name; a bare text has the name {@code text}
   * @param lists its lists by name; a bare list has the name {@code list}
   */
  record Entry(
      String name,
      String file,
      int line,
      Map<String, String> fields,
      Map<String, List<String>> lists) {
    String field(String field) {
      return fields.getOrDefault(field, "");
    }

    String required(String field) throws KnowledgeFault {
      String value = fields.get(field);
      if (value == null || value.isBlank()) {
        throw new KnowledgeFault(
            file, line, "'" + name + "' has no " + field + "; write " + field + ": …");
      }
      return value;
    }
  }

  /** Reads every file of a folder, in the order of their names. */
  static List<Entry> readFolder(RuleFiles files, String folder) throws KnowledgeFault {
    List<Entry> all = new ArrayList<>();
    for (String path : files.list(folder, ".yaml")) {
      all.addAll(readFile(files, path));
    }
    return all;
  }

  /** Reads one file. */
  static List<Entry> readFile(RuleFiles files, String path) throws KnowledgeFault {
    try (InputStream in = files.open(path);
        JsonParser parser = YAML.createParser(ObjectReadContext.empty(), in)) {
      return read(path, parser);
    } catch (JacksonException e) {
      int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
      throw new KnowledgeFault(
          path, line, "this is not well-formed YAML, or a name stands twice; check the indents");
    } catch (IOException e) {
      throw new KnowledgeFault(path, 0, "the file cannot be read");
    }
  }

  private static List<Entry> read(String path, JsonParser parser) throws KnowledgeFault {
    List<Entry> entries = new ArrayList<>();
    if (parser.nextToken() == null) {
      return entries;
    }
    expect(path, parser, JsonToken.START_OBJECT);
    while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
      String name = parser.currentName();
      int line = parser.currentTokenLocation().getLineNr();
      Map<String, String> fields = new LinkedHashMap<>();
      Map<String, List<String>> lists = new LinkedHashMap<>();
      JsonToken token = parser.nextToken();
      if (token == JsonToken.START_OBJECT) {
        while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
          String field = parser.currentName();
          JsonToken value = parser.nextToken();
          if (value == JsonToken.START_ARRAY) {
            lists.put(field, list(path, parser));
          } else {
            fields.put(field, scalar(path, parser));
          }
        }
      } else if (token == JsonToken.START_ARRAY) {
        lists.put("list", list(path, parser));
      } else {
        fields.put("text", scalar(path, parser));
      }
      entries.add(new Entry(name, path, line, fields, lists));
    }
    return entries;
  }

  private static List<String> list(String path, JsonParser parser) throws KnowledgeFault {
    List<String> list = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      list.add(scalar(path, parser));
    }
    return list;
  }

  private static String scalar(String path, JsonParser parser) throws KnowledgeFault {
    JsonToken token = parser.currentToken();
    if (token == null || !token.isScalarValue()) {
      throw new KnowledgeFault(
          path, parser.currentTokenLocation().getLineNr(), "a text or a number belongs here");
    }
    return parser.getString() == null ? "" : parser.getString();
  }

  private static void expect(String path, JsonParser parser, JsonToken token)
      throws KnowledgeFault {
    if (parser.currentToken() != token) {
      throw new KnowledgeFault(
          path,
          parser.currentTokenLocation().getLineNr(),
          "the file must be a list of entries, each written as name: and what is said of it");
    }
  }
}
