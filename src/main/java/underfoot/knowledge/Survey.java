package underfoot.knowledge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import underfoot.scenario.FactBook;
import underfoot.scenario.RuleFiles;

/** The order in which a floor is looked into, and with what. */
public final class Survey {
  private static final String FILE = "survey.yaml";

  private final List<Stage> stages;
  private final Map<String, Integer> place = new HashMap<>();

  /**
   * A stage of the survey.
   *
   * @param id its name
   * @param title what is done, in a few words
   * @param how how it is done, in a sentence
   * @param where the fact that says for which floors it is; empty if for all
   * @param is what that fact is on those floors
   * @param facts the scenario keys found out at it, in order
   */
  public record Stage(
      String id, String title, String how, String where, List<String> is, List<String> facts) {
    /** Copies the lists. */
    public Stage {
      is = List.copyOf(is);
      facts = List.copyOf(facts);
    }
  }

  private Survey(List<Stage> stages) {
    this.stages = List.copyOf(stages);
    for (Stage stage : stages) {
      for (String fact : stage.facts()) {
        place.putIfAbsent(fact, place.size());
      }
    }
  }

  static Survey load(RuleFiles files, FactBook facts) throws KnowledgeFault {
    List<Stage> stages = new ArrayList<>();
    for (Entries.Entry entry : Entries.readFile(files, FILE)) {
      List<String> keys = entry.lists().getOrDefault("facts", List.of());
      for (String key : keys) {
        if (facts.definitions().stream().noneMatch(one -> one.key().equals(key))) {
          throw new KnowledgeFault(
              entry.file(),
              entry.line(),
              "'" + entry.name() + "' names " + key + ", which is no fact of a scenario");
        }
      }
      stages.add(
          new Stage(
              entry.name(),
              entry.required("title"),
              entry.required("how"),
              entry.field("where"),
              entry.lists().getOrDefault("is", List.of()),
              keys));
    }
    return new Survey(stages);
  }

  /** The stages in their order. */
  public List<Stage> stages() {
    return stages;
  }

  /** The place of a fact in the survey, from 0; after all others if no stage names it. */
  public int placeOf(String key) {
    return place.getOrDefault(key, place.size());
  }

  /** Whether a fact is worth finding out on a floor of which some facts are held. */
  public boolean asks(String key, Facts held) {
    for (Stage stage : stages) {
      boolean here = stage.where().isEmpty() || stage.is().contains(held.text(stage.where()));
      if (here && stage.facts().contains(key)) {
        return true;
      }
    }
    return false;
  }

  /** The title of the stage at which a fact is found out; empty if no stage names it. */
  public String titleOf(String key) {
    for (Stage stage : stages) {
      if (stage.facts().contains(key)) {
        return stage.title();
      }
    }
    return "";
  }
}
