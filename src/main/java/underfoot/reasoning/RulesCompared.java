package underfoot.reasoning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Figure;
import underfoot.language.Rule;
import underfoot.scenario.Scenario;

/**
 * Two rule bases compared: what stands otherwise in them, and what they decide otherwise of floors.
 *
 * @param rules the rules that are not the same, by id
 * @param figures the figures that are not the same, by name
 * @param floors the floors of which something is decided otherwise
 * @param alike of how many floors nothing is
 */
public record RulesCompared(
    List<Changed> rules, List<Changed> figures, List<OfFloor> floors, int alike) {
  /** Copies the lists. */
  public RulesCompared {
    rules = List.copyOf(rules);
    figures = List.copyOf(figures);
    floors = List.copyOf(floors);
  }

  /**
   * Something that is not the same.
   *
   * @param id its id
   * @param was what it said; empty if it was not there
   * @param is what it says; empty if it is not there any more
   */
  public record Changed(String id, String was, String is) {}

  /**
   * What is decided otherwise of a floor.
   *
   * @param floor its name
   * @param decisions what, and which rules and changed figures it hangs on
   */
  public record OfFloor(String floor, List<Decided> decisions) {
    /** Copies the list. */
    public OfFloor {
      decisions = List.copyOf(decisions);
    }
  }

  /**
   * A decision that moves.
   *
   * @param what what is decided otherwise
   * @param noLonger rules that no longer hold, with their reasons
   * @param newly rules that newly hold, with their reasons
   * @param figures changed figures that it rests on
   */
  public record Decided(
      String what, Map<String, String> noLonger, Map<String, String> newly, List<String> figures) {}

  /**
   * Compares.
   *
   * @param before who thinks floors through by the first rules
   * @param after who does so by the second
   * @param floors the floors
   */
  public static RulesCompared of(Advisor before, Advisor after, List<Scenario> floors) {
    List<Changed> figures = changed(figures(before), figures(after));
    Set<String> moved = new LinkedHashSet<>();
    figures.forEach(one -> moved.add(one.id()));
    List<OfFloor> told = new ArrayList<>();
    for (Scenario floor : floors) {
      List<Decided> decisions = new ArrayList<>();
      for (TraceDifference one : TraceDifference.of(before.advise(floor), after.advise(floor))) {
        List<String> names =
            one.figures().stream().map(Figure::name).filter(moved::contains).distinct().toList();
        decisions.add(
            new Decided(
                one.difference().text(), reasons(one.noLonger()), reasons(one.newly()), names));
      }
      if (!decisions.isEmpty()) {
        told.add(new OfFloor(floor.name(), decisions));
      }
    }
    return new RulesCompared(
        changed(rules(before), rules(after)), figures, told, floors.size() - told.size());
  }

  private static Map<String, String> reasons(List<Derivation> rules) {
    Map<String, String> reasons = new LinkedHashMap<>();
    rules.forEach(one -> reasons.put(one.rule().key(), one.rule().reason()));
    return reasons;
  }

  private static Map<String, String> rules(Advisor advisor) {
    Map<String, String> rules = new LinkedHashMap<>();
    for (Rule one : advisor.rules().set().rules()) {
      rules.put(
          one.key(),
          String.join("; ", one.when())
              + " -> "
              + String.join("; ", one.then())
              + " ("
              + one.note().reason()
              + ")");
    }
    return rules;
  }

  private static Map<String, String> figures(Advisor advisor) {
    Map<String, String> figures = new LinkedHashMap<>();
    advisor.knowledge().figures().all().forEach(one -> figures.put(one.name(), one.text()));
    return figures;
  }

  private static List<Changed> changed(Map<String, String> was, Map<String, String> is) {
    Set<String> all = new TreeSet<>(was.keySet());
    all.addAll(is.keySet());
    List<Changed> changed = new ArrayList<>();
    for (String id : all) {
      String before = was.getOrDefault(id, "");
      String after = is.getOrDefault(id, "");
      if (!before.equals(after)) {
        changed.add(new Changed(id, before, after));
      }
    }
    return changed;
  }
}
