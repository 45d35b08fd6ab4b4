package underfoot.scenario;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underfoot.quantity.Dimension;
import underfoot.quantity.Nearest;
import underfoot.quantity.NotAQuantity;
import underfoot.quantity.Quantity;
import underfoot.quantity.Words;

/** Reads one fact's definition. */
final class FactReader {
  private static final Set<String> PROPERTIES =
      Set.of(
          "called",
          "kind",
          "of",
          "also",
          "refused",
          "dimension",
          "least",
          "most",
          "required",
          "known by",
          "instead of it",
          "shorthand for",
          "joined by",
          "also at",
          "means",
          "ask",
          "look",
          "acts",
          "otherwise",
          "example");

  private final String file;
  private final Node.Entry entry;
  private final Map<String, Node> properties = new LinkedHashMap<>();
  private final List<Fault> faults;

  FactReader(String file, Node.Entry entry, Node.Keys keys, List<Fault> faults) {
    this.file = file;
    this.entry = entry;
    this.faults = faults;
    for (Node.Entry property : keys.entries()) {
      if (!PROPERTIES.contains(property.key())) {
        String near = Nearest.to(property.key(), PROPERTIES);
        fault(
            property,
            Words.quote(property.key()) + " is not a property of a fact",
            near.isEmpty() ? "" : "write: " + near);
      } else if (properties.put(property.key(), property.value()) != null) {
        fault(
            property,
            property.key() + " is written twice for " + entry.key(),
            "keep one of the two");
      }
    }
  }

  FactDefinition read() {
    Optional<Kind> kind = Kind.named(text("kind"));
    if (kind.isEmpty()) {
      fault(
          entry,
          entry.key() + " needs a kind, but has " + Words.quote(text("kind")),
          "write one of: text, choice, choices, yes-no, quantity, count, year, date, points,"
              + " rectangle, readings, list");
      return null;
    }
    Dimension dimension = Dimension.named(text("dimension")).orElse(null);
    if (kind.get() == Kind.QUANTITY && dimension == null) {
      fault(
          entry,
          entry.key() + " is a quantity, so it needs a dimension",
          "for example: dimension: length");
      return null;
    }
    List<String> of = texts("of");
    if ((kind.get() == Kind.CHOICE || kind.get() == Kind.CHOICES) && of.isEmpty()) {
      fault(entry, entry.key() + " needs its choices", "write: of: […]");
    }
    String called = text("called");
    Dimension measure = kind.get() == Kind.QUANTITY ? dimension : Dimension.NUMBER;
    return new FactDefinition(
        entry.key(),
        called.isEmpty() ? Words.last(entry.key()) : called,
        kind.get(),
        of,
        map("also"),
        map("refused"),
        kind.get() == Kind.QUANTITY ? dimension : null,
        bound("least", measure),
        bound("most", measure),
        text("least"),
        text("most"),
        text("required").equals("true"),
        text("known by"),
        text("instead of it"),
        text("shorthand for"),
        text("means"),
        text("ask"),
        text("look"),
        texts("acts"),
        texts("otherwise"),
        text("example"),
        file,
        entry.line());
  }

  private double bound(String property, Dimension dimension) {
    if (!(properties.get(property) instanceof Node.Scalar scalar)) {
      return Double.NaN;
    }
    try {
      return Quantity.parse(scalar.text(), dimension).value();
    } catch (NotAQuantity e) {
      fault(scalar, property + ": " + e.getMessage(), e.suggestion());
      return Double.NaN;
    }
  }

  private String text(String property) {
    Node node = properties.get(property);
    if (node == null) {
      return "";
    }
    if (node instanceof Node.Scalar scalar) {
      return scalar.text();
    }
    fault(node, property + " must be one text", "");
    return "";
  }

  private List<String> texts(String property) {
    Node node = properties.get(property);
    if (node == null) {
      return List.of();
    }
    List<String> texts = new ArrayList<>();
    if (node instanceof Node.Items items) {
      for (Node item : items.items()) {
        if (item instanceof Node.Scalar scalar) {
          texts.add(scalar.text());
        } else {
          fault(item, property + " holds texts only", "");
        }
      }
    } else {
      fault(node, property + " must be a list", "");
    }
    return Collections.unmodifiableList(texts);
  }

  private Map<String, String> map(String property) {
    Node node = properties.get(property);
    if (node == null) {
      return Map.of();
    }
    Map<String, String> map = new LinkedHashMap<>();
    if (node instanceof Node.Keys keys) {
      for (Node.Entry each : keys.entries()) {
        if (each.value() instanceof Node.Scalar scalar) {
          map.put(each.key(), scalar.text());
        } else {
          fault(each, property + " holds texts only", "");
        }
      }
    } else {
      fault(node, property + " must hold keys", "");
    }
    return Collections.unmodifiableMap(map);
  }

  private void fault(Spot at, String what, String how) {
    faults.add(Fault.at(file, at, what, how));
  }
}
