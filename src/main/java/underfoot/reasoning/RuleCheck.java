package underfoot.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.LayerKind;
import underfoot.knowledge.MissingKnowledge;
import underfoot.scenario.Nearest;
import underfoot.scenario.RuleFiles;

/**
 * Checks that whatever rules, figures and wordings refer to is there. A misspelt figure would
 * otherwise never fire, and nobody would hear of it.
 */
public final class RuleCheck {
  private final Knowledge knowledge;
  private final List<RuleFaults.Fault> faults = new ArrayList<>();
  private final Vocabulary vocabulary;
  private final List<RuleText> rules;

  private RuleCheck(RuleFiles files, Knowledge knowledge) throws RuleFaults {
    this.knowledge = knowledge;
    this.rules = RuleText.readAll(files);
    this.faults.addAll(RuleText.faults(files, files.list("", ".dslr")));
    this.vocabulary = Vocabulary.read(files, faults);
  }

  /**
   * All that is missing or misspelt.
   *
   * @param files the rule base
   * @param knowledge the figures and wordings read from the same place
   * @throws RuleFaults if the rule files cannot be read at all
   */
  public static List<RuleFaults.Fault> faults(RuleFiles files, Knowledge knowledge)
      throws RuleFaults {
    RuleCheck check = new RuleCheck(files, knowledge);
    check.run();
    return List.copyOf(check.faults);
  }

  private void run() {
    Set<String> ids = new TreeSet<>();
    for (RuleText rule : rules) {
      ids.add(rule.note().id());
    }
    for (RuleText rule : rules) {
      need(rule, "source", rule.note().source(), knowledge.sources().keySet());
      for (String line : rule.when()) {
        checkTaken(rule, line, true);
        vocabulary.condition(line).ifPresent(said -> checkSlots(rule, said, ids));
      }
      for (String line : rule.then()) {
        checkTaken(rule, line, false);
        vocabulary.consequence(line).ifPresent(said -> checkSlots(rule, said, ids));
      }
    }
    for (Figure figure : knowledge.figures().all()) {
      if (!knowledge.sources().containsKey(figure.source())) {
        faults.add(
            new RuleFaults.Fault(
                "figures",
                0,
                "figure '"
                    + figure.name()
                    + "' cites '"
                    + figure.source()
                    + "', which is not in sources.yaml"
                    + nearest(figure.source(), knowledge.sources().keySet())));
      }
    }
    for (LayerKind kind : knowledge.layers().all()) {
      checkLayer(kind);
    }
    for (String id : knowledge.wording().ids()) {
      checkFigures(id);
    }
  }

  private void checkTaken(RuleText rule, String line, boolean condition) {
    vocabulary
        .thief(line, condition)
        .ifPresent(
            thief ->
                faults.add(
                    new RuleFaults.Fault(
                        rule.file(),
                        rule.line(),
                        rule.note().id()
                            + " says '"
                            + line
                            + "', which "
                            + thief.file()
                            + ":"
                            + thief.line()
                            + " takes first: '"
                            + thief.said()
                            + "'; word one of them otherwise")));
  }

  private void checkSlots(RuleText rule, Vocabulary.Said said, Set<String> ids) {
    for (Map.Entry<String, String> slot : said.slots().entrySet()) {
      String value = slot.getValue();
      switch (slot.getKey()) {
        case "figure" -> {
          if (!knowledge.figures().has(value)) {
            miss(rule, "figure", value, figureNames());
          }
        }
        case "wording" -> need(rule, "wording", value, knowledge.wording().ids());
        case "layer" -> need(rule, "layer", value, layerIds());
        case "id" -> need(rule, "rule", value, ids);
        case "step" -> need(rule, "step", value, knowledge.steps().ids());
        default -> {
          // names of facts, values and criteria are free
        }
      }
    }
  }

  private void checkLayer(LayerKind kind) {
    List<String> named = new ArrayList<>(List.of(kind.mass(), kind.conductivity(), kind.modulus()));
    boolean ofFact = kind.thickness().startsWith("the ") || kind.thickness().equals("none");
    if (!ofFact) {
      named.add(kind.thickness());
    }
    for (String name : named) {
      if (!name.isEmpty() && !knowledge.figures().has(name)) {
        faults.add(
            new RuleFaults.Fault(
                "layers",
                0,
                "layer '"
                    + kind.id()
                    + "' names the figure '"
                    + name
                    + "', which is not there"
                    + nearest(name, figureNames())));
      }
    }
  }

  private void checkFigures(String wording) {
    for (String part : knowledge.wording().get(wording).parts().values()) {
      int at = part.indexOf('{');
      while (at >= 0) {
        int end = part.indexOf('}', at);
        String name = end < 0 ? part.substring(at) : part.substring(at + 1, end);
        try {
          knowledge.figures().get(name);
        } catch (MissingKnowledge e) {
          faults.add(
              new RuleFaults.Fault(
                  "wording",
                  0,
                  "'"
                      + wording
                      + "' names the figure '"
                      + name
                      + "', which is not there"
                      + nearest(name, figureNames())));
        }
        at = part.indexOf('{', at + 1);
      }
    }
  }

  private Set<String> figureNames() {
    Set<String> names = new TreeSet<>();
    knowledge.figures().all().forEach(figure -> names.add(figure.name()));
    return names;
  }

  private Set<String> layerIds() {
    Set<String> ids = new TreeSet<>();
    knowledge.layers().all().forEach(kind -> ids.add(kind.id()));
    return ids;
  }

  private void need(RuleText rule, String sort, String name, Set<String> known) {
    if (!known.contains(name)) {
      miss(rule, sort, name, known);
    }
  }

  private void miss(RuleText rule, String sort, String name, Set<String> known) {
    faults.add(
        new RuleFaults.Fault(
            rule.file(),
            rule.line(),
            rule.note().id()
                + " names the "
                + sort
                + " '"
                + name
                + "', which is not there"
                + nearest(name, known)));
  }

  private static String nearest(String name, Set<String> known) {
    return Optional.of(Nearest.to(name, known))
        .filter(near -> !near.isEmpty())
        .map(near -> "; did you mean " + near + "?")
        .orElse("");
  }
}
