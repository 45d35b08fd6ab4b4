package underfoot.reasoning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import underfoot.buildup.Caution;
import underfoot.buildup.ClientLimit;
import underfoot.buildup.Conclusion;
import underfoot.buildup.LayerClass;
import underfoot.buildup.Remedy;
import underfoot.buildup.RuledOut;
import underfoot.buildup.Severity;
import underfoot.buildup.StackLayer;
import underfoot.buildup.StopFinding;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;

/**
 * Tells in plain words how what is decided of one floor differs from what is decided of another.
 */
public final class DecisionDifferences {
  private final Phrases phrases;

  /**
   * @param knowledge where the phrases are
   */
  public DecisionDifferences(Knowledge knowledge) {
    this.phrases = new Phrases(knowledge.wording());
  }

  /** The differences, each as a clause; empty if nothing that matters is decided otherwise. */
  public List<String> of(Assessment now, Assessment then) {
    return differences(Digest.of(now), then);
  }

  /** What is compared of two counsels. Maps are from an id to its words. */
  private record Digest(
      Verdict verdict,
      String way,
      Map<String, String> stopFindings,
      Map<String, String> layers,
      Map<String, String> thicknesses,
      Map<String, String> classes,
      Map<String, String> remedies,
      Map<String, String> dangers) {

    static Digest of(Assessment assessment) {
      Digest digest =
          new Digest(
              assessment.verdict(),
              assessment.chosen().map(BuildUp::way).orElse(""),
              new LinkedHashMap<>(),
              new LinkedHashMap<>(),
              new LinkedHashMap<>(),
              new LinkedHashMap<>(),
              new LinkedHashMap<>(),
              new LinkedHashMap<>());
      for (StopFinding stopFinding : assessment.of(StopFinding.class)) {
        digest.stopFindings.put(
            stopFinding.wording(), title(assessment, stopFinding.wording(), ""));
      }
      assessment
          .chosen()
          .ifPresent(
              chosen -> {
                for (StackLayer layer : chosen.stack().layers()) {
                  String id = layer.kind().id();
                  digest.layers.put(id, layer.kind().name());
                  digest.thicknesses.put(id, thickness(layer));
                  digest.classes.put(id, grades(assessment, id));
                }
              });
      for (ClientLimit limit : assessment.of(ClientLimit.class)) {
        digest.remedies.put(limit.wording() + '@', title(assessment, limit.wording(), ""));
      }
      for (Remedy remedy : assessment.of(Remedy.class)) {
        digest.remedies.put(
            remedy.wording() + '@' + remedy.about(),
            title(assessment, remedy.wording(), remedy.about()));
      }
      for (Caution caution : assessment.of(Caution.class)) {
        if (caution.severity() == Severity.DANGER) {
          digest.dangers.put(
              caution.wording() + '@' + caution.about(),
              title(assessment, caution.wording(), caution.about()));
        }
      }
      return digest;
    }

    private static String thickness(StackLayer layer) {
      double mean = Math.round(layer.thickness().mean() * 10) / 10.0;
      return Texts.of(mean, "mm");
    }

    private static String grades(Assessment assessment, String layer) {
      List<String> grades = new ArrayList<>();
      for (LayerClass asked : assessment.of(LayerClass.class)) {
        if (asked.layer().equals(layer)) {
          grades.add(asked.grade());
        }
      }
      return String.join(", ", MaterialClasses.strictest(assessment.knowledge(), grades));
    }
  }

  private static String title(Assessment assessment, String wording, String about) {
    var filled =
        assessment
            .knowledge()
            .wording()
            .fill(wording, assessment.knowledge().figures(), assessment.factsOfChosen(), about);
    String title = filled.title().isEmpty() ? filled.text() : filled.title();
    return about.isEmpty() || title.contains(about) ? title : title + " (" + about + ")";
  }

  private List<String> differences(Digest now, Assessment other) {
    Digest then = Digest.of(other);
    List<String> found = new ArrayList<>();
    for (Map.Entry<String, String> stopFinding : then.stopFindings().entrySet()) {
      if (!now.stopFindings().containsKey(stopFinding.getKey())) {
        found.add(
            phrases.say(
                then.verdict() == Verdict.STOP ? "otherwise-stops" : "otherwise-outside",
                "why",
                stopFinding.getValue()));
      }
    }
    if (now.verdict() != then.verdict() && found.isEmpty()) {
      found.add(phrases.say("otherwise-verdict-" + then.verdict().word()));
    }
    if (then.verdict() == Verdict.STOP) {
      return found;
    }
    if (!now.way().equals(then.way())) {
      found.add(
          phrases.say(
              "otherwise-way", "way", phrases.way(then.way()), "why", whyNot(now.way(), other)));
    } else {
      compareLayers(now, then, found);
    }
    compare(now.remedies(), then.remedies(), "otherwise-also-first", "otherwise-not-first", found);
    compare(now.dangers(), then.dangers(), "otherwise-danger", "otherwise-no-danger", found);
    return found;
  }

  /** Why a way would no longer stand, ready to follow the words; empty if it still stands. */
  private String whyNot(String way, Assessment other) {
    for (BuildUp buildUp : other.buildUps()) {
      if (buildUp.way().equals(way)) {
        List<Conclusion> against = new ArrayList<>(buildUp.of(RuledOut.class));
        against.addAll(buildUp.of(StopFinding.class).stream().filter(StopFinding::isStop).toList());
        if (!against.isEmpty()) {
          Conclusion first = against.get(0);
          String wording =
              first instanceof RuledOut out ? out.wording() : ((StopFinding) first).wording();
          return phrases.say("otherwise-since", "why", title(other, wording, ""));
        }
      }
    }
    return "";
  }

  private void compareLayers(Digest now, Digest then, List<String> found) {
    List<String> more = new ArrayList<>();
    List<String> fewer = new ArrayList<>();
    List<String> changed = new ArrayList<>();
    then.layers()
        .forEach(
            (id, name) -> {
              if (!now.layers().containsKey(id)) {
                more.add(lower(name));
                return;
              }
              String was = now.thicknesses().get(id);
              String is = then.thicknesses().get(id);
              if (!was.equals(is)) {
                changed.add(
                    phrases.say("otherwise-thick", "layer", lower(name), "is", is, "was", was));
              }
              String grade = then.classes().get(id);
              if (!grade.equals(now.classes().get(id)) && !grade.isEmpty()) {
                changed.add(phrases.say("otherwise-class", "layer", lower(name), "class", grade));
              }
            });
    now.layers()
        .forEach(
            (id, name) -> {
              if (!then.layers().containsKey(id)) {
                fewer.add(lower(name));
              }
            });
    if (!more.isEmpty()) {
      found.add(phrases.say("otherwise-more-layers", "layers", String.join(", ", more)));
    }
    if (!fewer.isEmpty()) {
      found.add(phrases.say("otherwise-fewer-layers", "layers", String.join(", ", fewer)));
    }
    found.addAll(changed);
  }

  private void compare(
      Map<String, String> now,
      Map<String, String> then,
      String more,
      String fewer,
      List<String> found) {
    then.forEach(
        (id, words) -> {
          if (!now.containsKey(id)) {
            found.add(phrases.say(more, "what", lower(words)));
          }
        });
    now.forEach(
        (id, words) -> {
          if (!then.containsKey(id)) {
            found.add(phrases.say(fewer, "what", lower(words)));
          }
        });
  }

  /** With a small first letter, unless the first word is an abbreviation; without its full stop. */
  private static String lower(String words) {
    String cut = words.endsWith(".") ? words.substring(0, words.length() - 1) : words;
    return Texts.lower(cut);
  }
}
