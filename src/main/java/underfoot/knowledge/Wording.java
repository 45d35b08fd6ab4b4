package underfoot.knowledge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import underfoot.scenario.RuleFiles;

/**
 * The sentences that advice is made of, by id. A text may name a figure in braces, {@code
 * {leveller-least-pour}}, and a fact in brackets, {@code [deck thickness]}; {@code [it]} is the
 * name of the thing spoken of, such as a door.
 */
public final class Wording {
  private final Map<String, Text> byId;
  private final Map<String, Integer> places = new HashMap<>();
  private final Map<String, List<String>> byPrefix = new ConcurrentHashMap<>();

  private Wording(Map<String, Text> byId) {
    this.byId = byId;
    byId.keySet().forEach(id -> places.put(id, places.size()));
  }

  /**
   * One wording as it stands in its file.
   *
   * @param title a few words; may be empty
   * @param parts the sentences by part: {@code text} alone, or {@code danger}, {@code whom} and
   *     {@code instead}
   */
  public record Text(String title, Map<String, String> parts) {}

  /**
   * A wording with its figures and facts filled in.
   *
   * @param title a few words; may be empty
   * @param text all parts as one paragraph
   * @param parts the parts by name
   * @param used the figures and facts that were filled in
   */
  public record Filled(String title, String text, Map<String, String> parts, List<Object> used) {}

  static Wording load(RuleFiles files) throws KnowledgeFault {
    Map<String, Text> byId = new LinkedHashMap<>();
    for (Entries.Entry entry : Entries.readFolder(files, "wording")) {
      Map<String, String> parts = new LinkedHashMap<>(entry.fields());
      String title = parts.containsKey("title") ? parts.remove("title") : "";
      if (parts.isEmpty()) {
        throw new KnowledgeFault(
            entry.file(), entry.line(), "wording '" + entry.name() + "' says nothing");
      }
      if (byId.put(entry.name(), new Text(title, parts)) != null) {
        throw new KnowledgeFault(
            entry.file(),
            entry.line(),
            "wording '" + entry.name() + "' stands twice; give one of them another name");
      }
    }
    return new Wording(byId);
  }

  /** The ids of all wordings. */
  public Set<String> ids() {
    return byId.keySet();
  }

  /** The ids that begin with a prefix, in the order of the files. */
  public List<String> ids(String prefix) {
    return byPrefix.computeIfAbsent(
        prefix, begins -> byId.keySet().stream().filter(id -> id.startsWith(begins)).toList());
  }

  /** How many wordings stand before it in the files; the largest number there is if it is none. */
  public int place(String id) {
    return places.getOrDefault(id, Integer.MAX_VALUE);
  }

  /**
   * A wording as it stands.
   *
   * @throws MissingKnowledge if there is none of that id
   */
  public Text get(String id) {
    Text text = byId.get(id);
    if (text == null) {
      throw new MissingKnowledge("wording", id);
    }
    return text;
  }

  /**
   * Fills a wording in.
   *
   * @param id the wording
   * @param figures where figures are looked up
   * @param facts where facts are looked up
   * @param about the thing spoken of; empty for the room
   * @throws MissingKnowledge if the wording, or a figure it names, is not there
   */
  public Filled fill(String id, Figures figures, Facts facts, String about) {
    Text text = get(id);
    List<Object> used = new ArrayList<>();
    Map<String, String> parts = new LinkedHashMap<>();
    StringBuilder whole = new StringBuilder();
    for (Map.Entry<String, String> part : text.parts().entrySet()) {
      String filled = fillText(part.getValue().strip(), figures, facts, about, used);
      parts.put(part.getKey(), filled);
      whole.append(whole.isEmpty() ? "" : " ").append(filled);
    }
    String title = fillText(text.title(), figures, facts, about, used);
    return new Filled(title, whole.toString(), parts, List.copyOf(used));
  }

  private static String fillText(
      String text, Figures figures, Facts facts, String about, List<Object> used) {
    StringBuilder out = new StringBuilder();
    int at = 0;
    while (at < text.length()) {
      char c = text.charAt(at);
      int end = c == '{' ? text.indexOf('}', at) : c == '[' ? text.indexOf(']', at) : -1;
      if (end < 0) {
        out.append(c);
        at++;
        continue;
      }
      String name = text.substring(at + 1, end);
      if (c == '{') {
        Figure figure = figures.get(name);
        out.append(figure.text());
        use(figure, used);
      } else if (name.equals("it")) {
        out.append(about);
      } else {
        Fact fact = facts.findNear(name, about);
        if (fact == null) {
          out.append("an unknown ").append(name);
        } else {
          out.append(fact.text());
          use(fact, used);
        }
      }
      at = end + 1;
    }
    return out.toString();
  }

  private static void use(Object one, List<Object> used) {
    if (!used.contains(one)) {
      used.add(one);
    }
  }
}
