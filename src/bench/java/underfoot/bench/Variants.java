package underfoot.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * The example floors as lines of JSON, each with another temperature, so that no two are the same.
 */
final class Variants {
  private static final Pattern NAME = Pattern.compile("\"scenario\":\"([^\"]*)\"");

  private Variants() {}

  /** The floors of these texts, each on a line. */
  static List<String> of(List<String> texts) {
    List<String> lines = new ArrayList<>();
    YAMLMapper yaml = new YAMLMapper();
    ObjectMapper json = new ObjectMapper();
    for (String text : texts) {
      JsonNode tree = yaml.readTree(text);
      lines.add(json.writeValueAsString(tree));
    }
    return lines;
  }

  /** One line of an endless row of floors. */
  static String line(List<String> floors, int number) {
    String floor = floors.get(number % floors.size());
    Matcher name = NAME.matcher(floor);
    return name.replaceFirst("\"scenario\":\"$1, variant " + number / floors.size() + "\"") + "\n";
  }
}
