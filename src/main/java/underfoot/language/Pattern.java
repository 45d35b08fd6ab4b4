package underfoot.language;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Something a condition asks for among what is known and concluded.
 *
 * @param quantity whether each one counts, or only whether there is any
 * @param variable the name by which later patterns speak of it; empty if none does
 * @param type what sort of thing it is
 * @param constraints what must hold of it
 */
public record Pattern(Quantity quantity, String variable, Type type, List<Constraint> constraints) {

  /** Copies the list. */
  public Pattern {
    constraints = List.copyOf(constraints);
  }

  /** How many there must be. */
  public enum Quantity {
    /** The rule fires for each. */
    EACH,
    /** There must be one. */
    ANY,
    /** There must be none. */
    NONE
  }

  /** The sorts of things rules can match, with the fields they may ask about. */
  public enum Type {
    FACT("Fact", "name", "about", "text", "says", "number", "from"),
    UNKNOWN("Unknown", "name", "about"),
    FIGURE("Figure", "name", "number"),
    LAID("Laid", "layer", "family", "rule"),
    CONCLUSION("Conclusion", "rule"),
    REMEDY("Remedy", "rule", "wording", "about"),
    CAUTION("Caution", "rule", "wording", "about"),
    FINDING("Finding", "rule", "wording", "about");

    private static final Map<String, Type> BY_WORD =
        List.of(values()).stream().collect(Collectors.toMap(Type::word, type -> type));
    private final String word;
    private final Set<String> fields;

    Type(String word, String... fields) {
      this.word = word;
      this.fields = Set.of(fields);
    }

    /** How a vocabulary file writes it. */
    public String word() {
      return word;
    }

    /** The fields it has. */
    public Set<String> fields() {
      return fields;
    }

    static Optional<Type> of(String word) {
      return Optional.ofNullable(BY_WORD.get(word));
    }
  }

  /** The one word that a field must be; empty if it is not held to one. */
  public String word(String field) {
    for (Constraint constraint : constraints) {
      if (constraint.field().equals(field) && constraint.operator() == Constraint.Operator.IS) {
        return constraint.word();
      }
    }
    return "";
  }

  /** The name of the fact it asks for; empty if it names none. */
  public String name() {
    String says = word("says");
    int colon = says.indexOf(": ");
    return colon < 0 ? word("name") : says.substring(0, colon);
  }

  /** The value it asks a fact to have; empty if it asks for none. */
  public String value() {
    String says = word("says");
    int colon = says.indexOf(": ");
    return colon < 0 ? word("text") : says.substring(colon + 2);
  }

  /**
   * What a thing may be called for a pattern to match it.
   *
   * @param name its name; empty for any
   * @param value the value it must have; empty for any
   */
  public record Asked(String name, String value) {}

  /** All that things it matches may be called, one of them at a time; whatever else must hold. */
  public List<Asked> asked() {
    List<String> says = words("says");
    if (!says.isEmpty()) {
      return says.stream()
          .map(one -> one.split(": ", 2))
          .map(one -> one.length < 2 ? new Asked("", "") : new Asked(one[0], one[1]))
          .toList();
    }
    List<Asked> asked = new ArrayList<>();
    List<String> texts = words("text");
    for (String name : words("name")) {
      if (texts.isEmpty()) {
        asked.add(new Asked(name, ""));
      }
      texts.forEach(text -> asked.add(new Asked(name, text)));
    }
    return asked.isEmpty() ? List.of(new Asked("", "")) : asked;
  }

  private List<String> words(String field) {
    for (Constraint constraint : constraints) {
      if (constraint.field().equals(field)
          && constraint.operator() == Constraint.Operator.IS
          && constraint.with() instanceof Operand.Words words) {
        return words.words();
      }
    }
    return List.of();
  }

  /** Whether it asks for a fact that is there. */
  public boolean isFactThere() {
    return type == Type.FACT && quantity != Quantity.NONE;
  }

  /** The same with another quantity, naming nothing. */
  public Pattern with(Quantity other) {
    return new Pattern(other, "", type, constraints);
  }

  @Override
  public String toString() {
    String lead = quantity == Quantity.EACH ? "" : quantity == Quantity.ANY ? "exists " : "not ";
    String named = variable.isEmpty() ? "" : '$' + variable + " : ";
    return lead
        + named
        + type.word()
        + constraints.stream()
            .map(Constraint::toString)
            .collect(Collectors.joining(", ", "( ", " )"));
  }
}
