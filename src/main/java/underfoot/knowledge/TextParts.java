package underfoot.knowledge;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A text by its parts, so that a view may leave out what can be left out without reading prose.
 *
 * @param parts the sentences by part, in the order in which they are told: {@code text}; or {@code
 *     danger}, {@code whom} and {@code instead}; or, of a proposal, {@code text}, {@code
 *     consequence} and {@code remedy}; and last {@code more}, which may be left out
 */
public record TextParts(Map<String, String> parts) {
  /** What must always be read of a text that warns of nothing. */
  public static final String TEXT = "text";

  /** What can happen. */
  public static final String DANGER = "danger";

  /** Whom or what it hurts. */
  public static final String WHOM = "whom";

  /** What to do instead. */
  public static final String INSTEAD = "instead";

  /** Background, other ways and elaboration: what may be left out. */
  public static final String MORE = "more";

  /** Copies the parts, in their order. */
  public TextParts {
    parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
  }

  /** A text of which nothing may be left out. */
  public static TextParts of(String text) {
    return new TextParts(Map.of(TEXT, text));
  }

  /** A part; empty if the text has none of that name. */
  public String part(String name) {
    return parts.getOrDefault(name, "");
  }

  /** All parts as one paragraph. */
  public String whole() {
    return String.join(" ", parts.values());
  }

  /** What must be read, as one paragraph: all but {@code more}. */
  public String must() {
    return parts.entrySet().stream()
        .filter(one -> !one.getKey().equals(MORE))
        .map(Map.Entry::getValue)
        .collect(Collectors.joining(" "));
  }
}
