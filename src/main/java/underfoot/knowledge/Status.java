package underfoot.knowledge;

import java.util.LinkedHashMap;
import java.util.Map;
import underfoot.scenario.RuleFiles;

/**
 * How well something is known.
 *
 * @param id the word for it
 * @param means the same in a sentence
 * @param document whether a document is named
 * @param fact whether what it stands at is a fact of the trade, true whoever says it; not what this
 *     rule base assumes, allows for or weighs
 */
public record Status(String id, String means, boolean document, boolean fact) {
  /** Reads all of them, the best known first. */
  static Map<String, Status> load(RuleFiles files) throws KnowledgeFault {
    Map<String, Status> all = new LinkedHashMap<>();
    for (Entries.Entry entry : Entries.readFile(files, "statuses.yaml")) {
      boolean document = entry.required("names a document").equals("yes");
      boolean fact = entry.required("states a fact of the trade").equals("yes");
      all.put(entry.name(), new Status(entry.name(), entry.required("means"), document, fact));
    }
    return all;
  }
}
