package underfoot.scenario;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import underfoot.quantity.Words;

/** Writes what was said, fact by fact, as a scenario file with comments. */
final class AnswersYaml {
  private static final Pattern PLAIN =
      Pattern.compile("[A-Za-z0-9](?:[A-Za-z0-9 ./%-]*[A-Za-z0-9./%])?");
  private static final int COMMENT_WIDTH = 96;

  private final FactBook book;
  private final Map<String, String> said;
  private final Function<Place, String> comment;
  private final StringBuilder out = new StringBuilder();

  AnswersYaml(FactBook book, Map<String, String> said, Function<Place, String> comment) {
    this.book = book;
    this.said = said;
    this.comment = comment;
  }

  /** The file: what was commented so far, and every fact under its keys. */
  String text() {
    group("", facts(""), "", "");
    return out.toString();
  }

  /** What was said of the room, or by a part of it of its own floor. */
  private List<FactDefinition> facts(String zone) {
    return book.definitions().stream()
        .filter(fact -> !fact.ofEntries() && (zone.isEmpty() || fact.isSaidByZones()))
        .filter(fact -> said.containsKey(new Place(fact, "", zone).id()))
        .toList();
  }

  /** Words as lines of a comment. */
  void comment(String indent, String words) {
    StringBuilder line = new StringBuilder();
    for (String word : words.strip().split("\\s+")) {
      if (line.length() > 0 && line.length() + word.length() >= COMMENT_WIDTH - indent.length()) {
        out.append(indent).append("#").append(line).append('\n');
        line.setLength(0);
      }
      if (!word.isEmpty()) {
        line.append(' ').append(word);
      }
    }
    if (line.length() > 0) {
      out.append(indent).append("#").append(line).append('\n');
    }
  }

  /** The facts under one key, those of a further group together where the first of them stands. */
  private void group(String path, List<FactDefinition> facts, String zone, String indent) {
    Set<String> keys = new LinkedHashSet<>();
    facts.forEach(fact -> keys.add(fact.key().substring(path.length()).split("\\.")[0]));
    for (String key : keys) {
      String whole = path + key;
      List<FactDefinition> under =
          facts.stream().filter(fact -> (fact.key() + '.').startsWith(whole + '.')).toList();
      if (under.get(0).key().equals(whole)) {
        place(new Place(under.get(0), "", zone), key, indent);
      } else {
        out.append(indent).append(key).append(":\n");
        group(whole + '.', under, zone, indent + "  ");
      }
    }
  }

  private void place(Place place, String key, String indent) {
    String text = said.get(place.id());
    comment(indent, comment.apply(place));
    if (place.fact().kind() == Kind.LIST && Values.state(text) == State.KNOWN) {
      list(place, key, text, indent);
    } else {
      line(indent, key, value(place.fact(), text));
    }
  }

  private void line(String indent, String key, String value) {
    out.append(indent).append(key).append(": ").append(value).append('\n');
  }

  private void list(Place place, String key, String text, String indent) {
    if (text.equals(Answers.NONE)) {
      line(indent, key, Answers.NONE);
      return;
    }
    out.append(indent).append(key).append(":\n");
    String list = place.fact().key() + "[]";
    for (String name : text.split(Answers.BETWEEN_NAMES)) {
      Optional<FactDefinition> kind = naming(place, name);
      line(indent, "  - " + kind.map(FactDefinition::word).orElse("name"), quoted(name));
      for (FactDefinition fact : book.definitions()) {
        Place inner = new Place(fact, name, place.zone());
        boolean more = fact.list().equals(list) && kind.filter(fact::equals).isEmpty();
        if (more && said.containsKey(inner.id())) {
          place(inner, fact.word(), indent + "    ");
        }
      }
      if (list.equals(ZoneReader.LIST)) {
        group(ZoneReader.SUBFLOOR + ".", facts(name), name, indent + "    ");
      }
    }
  }

  /** The fact by which an entry is named, where entries are known by what they are. */
  private Optional<FactDefinition> naming(Place list, String name) {
    return book.knownBy(list.fact())
        .filter(kind -> kind.of().contains(name))
        .filter(
            kind -> said.getOrDefault(new Place(kind, name, list.zone()).id(), name).equals(name));
  }

  private static String value(FactDefinition fact, String text) {
    return switch (fact.kind()) {
      case POINTS, RECTANGLE, READINGS -> text.startsWith("[") ? text : quoted(text);
      case CHOICES ->
          Values.state(text) != State.KNOWN
              ? text
              : Arrays.stream(text.split(","))
                  .map(choice -> quoted(Words.squeeze(choice)))
                  .collect(Collectors.joining(", ", "[", "]"));
      default -> quoted(text);
    };
  }

  /** A text as YAML, in quotation marks where it might be taken for anything else. */
  static String quoted(String text) {
    return PLAIN.matcher(text).matches() ? text : "'" + text.replace("'", "''") + "'";
  }
}
