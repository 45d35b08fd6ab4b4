package underfoot.reasoning;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import tools.jackson.core.type.TypeReference;
import tools.jackson.dataformat.yaml.YAMLMapper;
import underfoot.buildup.Caution;
import underfoot.buildup.Conclusion;
import underfoot.buildup.LayerClass;
import underfoot.buildup.LayerNote;
import underfoot.buildup.Remedy;
import underfoot.buildup.StopFinding;
import underfoot.buildup.Suggestion;
import underfoot.knowledge.Fact;
import underfoot.knowledge.From;

/** Finds what an answer says and also says the opposite of, by the rows of opposites.yaml. */
final class Opposites {
  private static final Path FILE = Path.of("src/test/resources/opposites.yaml");

  /** What must not be said together: things of one side may. */
  private final Map<String, List<List<String>>> rows;

  Opposites() {
    this(
        new YAMLMapper()
            .readValue(
                FILE.toFile(), new TypeReference<LinkedHashMap<String, List<List<String>>>>() {}));
  }

  Opposites(Map<String, List<List<String>>> rows) {
    this.rows = rows;
  }

  /** The rows. */
  Map<String, List<List<String>>> rows() {
    return rows;
  }

  /** A thing said, and the door or heavy thing it is said of; empty for the whole floor. */
  record Said(String thing, String about) {
    boolean together(Said other) {
      return about.equals(other.about) || about.isEmpty() || other.about.isEmpty();
    }
  }

  /** What an answer says twice and otherwise: of each way that stands, and whatever is built. */
  Set<String> in(Assessment assessment) {
    Set<String> found = new TreeSet<>(of(said(assessment.general())));
    for (BuildUp way : assessment.buildUps()) {
      if (way.stands()) {
        List<Said> all = said(assessment.general());
        all.addAll(said(way.concluded()));
        way.stack().layers().forEach(one -> all.add(new Said("lay " + one.kind().id(), "")));
        found.addAll(of(all));
      }
    }
    return found;
  }

  private Set<String> of(List<Said> said) {
    Map<String, List<Said>> things = new HashMap<>();
    said.forEach(one -> things.computeIfAbsent(one.thing(), key -> new ArrayList<>()).add(one));
    Set<String> found = new TreeSet<>();
    rows.forEach(
        (what, sides) -> {
          for (int i = 0; i < sides.size(); i++) {
            for (int j = i + 1; j < sides.size(); j++) {
              for (String one : sides.get(i)) {
                for (String other : sides.get(j)) {
                  if (together(things.get(one), things.get(other))) {
                    found.add(what + ": " + one + ", " + other);
                  }
                }
              }
            }
          }
        });
    return found;
  }

  private static boolean together(List<Said> ones, List<Said> others) {
    return ones != null
        && others != null
        && ones.stream().anyMatch(one -> others.stream().anyMatch(one::together));
  }

  private static List<Said> said(List<Conclusion> conclusions) {
    List<Said> said = new ArrayList<>();
    for (Conclusion one : conclusions) {
      if (one instanceof Remedy remedy) {
        said.add(new Said(remedy.wording(), remedy.about()));
      } else if (one instanceof Caution caution) {
        said.add(new Said(caution.wording(), caution.about()));
      } else if (one instanceof StopFinding stop) {
        said.add(new Said(stop.wording(), ""));
      } else if (one instanceof Suggestion suggestion) {
        said.add(new Said(suggestion.wording(), ""));
      } else if (one instanceof LayerNote note) {
        said.add(new Said(note.wording(), ""));
      } else if (one instanceof LayerClass grade) {
        said.add(new Said("class " + grade.grade(), ""));
      }
    }
    return said;
  }

  /**
   * Facts that rules gave two values, told by rule and value. What differs between ways of building
   * is no contradiction, and a value that is assumed gives way to one that is concluded.
   *
   * @param listening an advisor that remembers what was concluded of this floor alone
   */
  static Set<String> twoValues(Advisor listening, Assessment assessment) {
    Map<String, Map<String, String>> values = new HashMap<>();
    for (Object one : listening.rules().concluded()) {
      if (one instanceof Fact fact && fact.from() == From.CONCLUDED && fact.because() != null) {
        values
            .computeIfAbsent(fact.name() + "\n" + fact.about(), key -> new LinkedHashMap<>())
            .putIfAbsent(fact.text(), fact.because().rule().id());
      }
    }
    Set<String> found = new TreeSet<>();
    values.forEach(
        (key, by) -> {
          String[] fact = key.split("\n", -1);
          Set<String> ways = new HashSet<>();
          for (BuildUp way : assessment.buildUps()) {
            Fact held = way.facts().find(fact[0], fact[1]);
            ways.add(held == null ? "" : held.text());
          }
          if (by.size() > 1 && ways.size() < 2) {
            found.add(fact[0] + " is " + by);
          }
        });
    return found;
  }
}
