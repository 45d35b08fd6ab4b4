package underfoot.knowledge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import underfoot.quantity.Spoken;
import underfoot.quantity.Words;
import underfoot.scenario.RuleFiles;

/**
 * The sentences that advice is made of, by id. A text may name a figure in braces, {@code
 * {leveller-least-pour}}, and a fact in brackets, {@code [deck thickness]}; {@code [it]} is the
 * name of the thing spoken of, such as a door.
 */
public final class Wording {
  /** The parts of a wording but its title, in the order in which they are told. */
  private static final List<String> ORDER =
      List.of(
          TextParts.TEXT,
          TextParts.DANGER,
          TextParts.WHOM,
          TextParts.INSTEAD,
          "consequence",
          "remedy",
          TextParts.MORE);

  private static final String KNOWN = String.join(", ", ORDER);

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
   * @param parts the sentences by part, as in {@link TextParts}
   * @param work which acts it speaks of
   */
  public record Text(String title, Map<String, String> parts, ActsNamed work) {
    /** The word that each of its sentences and clauses begins with, in small letters. */
    public List<String> firstWords() {
      List<String> words = new ArrayList<>();
      for (String part : parts.values()) {
        for (String sentence : part.split("[.;:] ")) {
          words.add(sentence.strip().split(" ", 2)[0].toLowerCase(Locale.ROOT));
        }
      }
      return words;
    }
  }

  /**
   * A wording with its figures and facts filled in.
   *
   * @param title a few words; may be empty
   * @param parts the sentences by part
   * @param used the figures and facts that were filled in
   */
  public record Filled(String title, TextParts parts, List<Object> used) {
    /** All parts as one paragraph. */
    public String text() {
      return parts.whole();
    }

    /** Its title, with the thing it is about if it does not name it; empty if it has none. */
    public String title(String about) {
      return about.isEmpty() || title.contains(about) ? title : title + " (" + about + ")";
    }
  }

  /** Whether words are a whole sentence, and need no full stop more. */
  public static boolean isSentence(String words) {
    return words.endsWith(".");
  }

  static Wording load(RuleFiles files) throws KnowledgeFault {
    Map<String, Text> byId = new LinkedHashMap<>();
    for (Entries.Entry entry : Entries.readFolder(files, "wording")) {
      Map<String, String> parts = new LinkedHashMap<>(entry.fields());
      String title = parts.containsKey("title") ? parts.remove("title") : "";
      ActsNamed work = ActsNamed.of(entry);
      parts.remove(ActsNamed.ONCE);
      String wrong = wrong(title, parts);
      if (!wrong.isEmpty()) {
        throw new KnowledgeFault(
            entry.file(), entry.line(), "wording '" + entry.name() + "' " + wrong);
      }
      if (byId.put(entry.name(), new Text(title, parts, work)) != null) {
        throw new KnowledgeFault(
            entry.file(),
            entry.line(),
            "wording '" + entry.name() + "' stands twice; give one of them another name");
      }
    }
    return new Wording(byId);
  }

  /** What is wrong with how a wording is made up; empty if nothing is. */
  private static String wrong(String title, Map<String, String> parts) {
    if (parts.isEmpty()) {
      return "says nothing";
    }
    for (String part : parts.keySet()) {
      if (!ORDER.contains(part)) {
        return "has the part '" + part + "', which nobody tells; its parts may be title, " + KNOWN;
      }
    }
    boolean danger = parts.containsKey(TextParts.DANGER);
    if (danger && parts.containsKey(TextParts.TEXT)) {
      return "has both text and danger; say what can happen as danger, and what to do as instead";
    }
    if (danger != parts.containsKey(TextParts.INSTEAD)) {
      return danger
          ? "tells a danger and not what to do; write instead: …"
          : "has instead without danger; write danger: …, or call it text";
    }
    if (!danger && !parts.containsKey(TextParts.TEXT)) {
      return "has nothing that must be read; write text: …, or danger: … and instead: …";
    }
    if (parts.containsKey("consequence") && parts.containsKey(TextParts.MORE)) {
      return "has more, though of a proposal all is told; write it into the other parts";
    }
    List<String> written = List.copyOf(parts.keySet());
    List<String> told = written.stream().sorted(Comparator.comparingInt(ORDER::indexOf)).toList();
    if (!written.equals(told)) {
      return "tells its parts out of order; write " + String.join(", ", told) + " in this order";
    }
    return title.strip().endsWith(".") ? "has a title with a full stop; leave the stop out" : "";
  }

  /** The ids of all wordings. */
  public Set<String> ids() {
    return byId.keySet();
  }

  /** The acts a wording speaks of; none if there is no wording of that id. */
  public ActsNamed work(String id) {
    Text text = byId.get(id);
    return text == null ? ActsNamed.NONE : text.work();
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
    for (Map.Entry<String, String> part : text.parts().entrySet()) {
      parts.put(part.getKey(), begun(part.getValue().strip(), figures, facts, about, used));
    }
    String title = begun(text.title(), figures, facts, about, used);
    return new Filled(title, new TextParts(parts), List.copyOf(used));
  }

  /**
   * Fills a text in that stands elsewhere than among the wordings.
   *
   * @param text the text, with figures in braces and facts in brackets
   * @param figures where figures are looked up
   * @param facts where facts are looked up
   * @return the text; empty if it names a fact of which nothing is known
   */
  public static String known(String text, Figures figures, Facts facts) {
    List<Object> used = new ArrayList<>();
    String filled = fillText(text, figures, facts, "", used);
    long facted = text.chars().filter(c -> c == '[').count();
    return used.stream().filter(Fact.class::isInstance).count() < facted ? "" : filled;
  }

  /** A text filled in that begins as a sentence does, though with the name of a thing. */
  private static String begun(
      String text, Figures figures, Facts facts, String about, List<Object> used) {
    String filled = fillText(text, figures, facts, about, used);
    return text.startsWith("[") ? Words.capital(filled) : filled;
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
          out.append(Spoken.of(fact.text()));
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
