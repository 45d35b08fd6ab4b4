package underfoot.report;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Advice as JSON in the form in which it is reviewed: of the reasons only which rules they are, so
 * that one reason worded anew is not ten thousand lines to read, and as much on a line as fits.
 * {@link #WHOLE} keeps its reasons. Nothing else is left out or changed, but for the digest of the
 * rule base, which changes with every comment.
 */
public final class GoldenJson {
  /**
   * The floor of which the golden file holds each reason with the facts, figures and reasons it
   * rests on: a small one in which nearly every sort of them occurs.
   */
  public static final String WHOLE = "hall-in-encaustic-tiles-on-painted-concrete";

  private static final int WIDTH = 120;

  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private GoldenJson() {}

  /**
   * The form that is reviewed.
   *
   * @param scenario the name of the scenario's file without its ending
   * @param json the advice as the program writes it
   */
  public static String of(String scenario, String json) {
    JsonNode advice = MAPPER.readTree(json);
    ((ObjectNode) advice.get("tool")).put("ruleBase", "a digest");
    if (!scenario.equals(WHOLE)) {
      keepRulesOnly(advice);
    }
    return String.join("\n", lines(advice, "")) + "\n";
  }

  private static void keepRulesOnly(JsonNode node) {
    if (node instanceof ObjectNode object && object.get("because") instanceof ArrayNode because) {
      ArrayNode rules = MAPPER.createArrayNode();
      because.forEach(one -> rules.add(one.get("rule")));
      object.set("because", rules);
    }
    node.forEach(GoldenJson::keepRulesOnly);
  }

  /** The lines of a node; the first without what is before it. */
  private static List<String> lines(JsonNode node, String indent) {
    String whole = MAPPER.writeValueAsString(node);
    if (!node.isContainer() || node.isEmpty() || indent.length() + whole.length() <= WIDTH) {
      return List.of(whole);
    }
    String inner = indent + " ";
    List<String> lines = new ArrayList<>(List.of(node.isObject() ? "{" : "["));
    Iterator<String> names = node.propertyNames().iterator();
    boolean open = false;
    for (Iterator<JsonNode> parts = node.iterator(); parts.hasNext(); ) {
      List<String> part = new ArrayList<>(lines(parts.next(), inner));
      if (node.isObject()) {
        part.set(0, MAPPER.writeValueAsString(names.next()) + ": " + part.get(0));
      }
      if (parts.hasNext()) {
        part.set(part.size() - 1, part.get(part.size() - 1) + ",");
      }
      String joined = lines.get(lines.size() - 1) + " " + part.get(0);
      if (open && part.size() == 1 && joined.length() <= WIDTH) {
        lines.set(lines.size() - 1, joined);
      } else {
        part.set(0, inner + part.get(0));
        lines.addAll(part);
        open = node.isObject() && part.size() == 1;
      }
    }
    lines.add(indent + (node.isObject() ? "}" : "]"));
    return lines;
  }
}
