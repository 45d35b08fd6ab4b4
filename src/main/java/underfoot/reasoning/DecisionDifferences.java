package underfoot.reasoning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
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
import underfoot.knowledge.Facts;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.reasoning.Difference.Kind;
import underfoot.scenario.Named;

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

  /**
   * The differences, that which reaches farthest first; empty if nothing that matters is decided
   * otherwise.
   */
  public List<Difference> of(Assessment now, Assessment then) {
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
      Titles titles = Titles.in(assessment);
      for (StopFinding stopFinding : assessment.of(StopFinding.class)) {
        digest.stopFindings.put(stopFinding.wording(), titles.of(stopFinding.wording(), ""));
      }
      assessment
          .chosen()
          .ifPresent(
              chosen -> {
                List<LayerClass> classes = assessment.of(LayerClass.class);
                for (StackLayer layer : chosen.stack().layers()) {
                  String id = layer.kind().id();
                  digest.layers.put(id, layer.kind().name());
                  digest.thicknesses.put(id, thickness(layer));
                  digest.classes.put(id, grades(assessment.knowledge(), classes, id));
                }
              });
      for (ClientLimit limit : assessment.of(ClientLimit.class)) {
        digest.remedies.put(limit.wording(), titles.of(limit.wording(), ""));
      }
      for (Remedy remedy : assessment.of(Remedy.class)) {
        digest.remedies.put(
            new Named(remedy.wording(), remedy.about()).id(),
            titles.of(remedy.wording(), remedy.about()));
      }
      for (Caution caution : assessment.of(Caution.class)) {
        if (caution.severity() == Severity.DANGER) {
          digest.dangers.put(
              new Named(caution.wording(), caution.about()).id(),
              titles.of(caution.wording(), caution.about()));
        }
      }
      return digest;
    }

    private static String thickness(StackLayer layer) {
      double mean = Math.round(layer.thickness().mean() * 10) / 10.0;
      return Texts.of(mean, "mm");
    }

    private static String grades(Knowledge knowledge, List<LayerClass> classes, String layer) {
      List<String> grades = new ArrayList<>();
      for (LayerClass asked : classes) {
        if (asked.layer().equals(layer)) {
          grades.add(asked.grade());
        }
      }
      return String.join(", ", MaterialClasses.strictest(knowledge, grades));
    }
  }

  /** What wordings are called on a floor. */
  private record Titles(Knowledge knowledge, Facts facts) {
    static Titles in(Assessment assessment) {
      return new Titles(assessment.knowledge(), assessment.factsOfChosen());
    }

    String of(String wording, String about) {
      return knowledge.wording().fill(wording, knowledge.figures(), facts, about).title(about);
    }
  }

  private List<Difference> differences(Digest now, Assessment other) {
    Digest then = Digest.of(other);
    List<Difference> found = new ArrayList<>();
    String was = now.verdict().word();
    String is = then.verdict().word();
    then.stopFindings()
        .forEach(
            (id, why) -> {
              if (!now.stopFindings().containsKey(id)) {
                String phrase =
                    then.verdict() == Verdict.STOP ? "otherwise-stops" : "otherwise-outside";
                found.add(
                    new Difference(
                        Kind.VERDICT, List.of(id), was, is, phrases.say(phrase, "why", why)));
              }
            });
    if (!was.equals(is) && found.isEmpty()) {
      found.add(
          new Difference(Kind.VERDICT, List.of(), was, is, phrases.say("otherwise-verdict-" + is)));
    }
    if (then.verdict() == Verdict.STOP) {
      return found;
    }
    if (!now.way().equals(then.way())) {
      String text =
          phrases.say(
              "otherwise-way", "way", phrases.way(then.way()), "why", whyNot(now.way(), other));
      found.add(new Difference(Kind.WAY, List.of(), now.way(), then.way(), text));
    } else {
      compareLayers(now, then, found);
    }
    apart(now.remedies(), then.remedies(), Kind.FIRST_ADDED, "otherwise-also-first", found);
    apart(then.remedies(), now.remedies(), Kind.FIRST_LEFT_OUT, "otherwise-not-first", found);
    apart(now.dangers(), then.dangers(), Kind.DANGER_ADDED, "otherwise-danger", found);
    apart(then.dangers(), now.dangers(), Kind.DANGER_LEFT_OUT, "otherwise-no-danger", found);
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
          return phrases.say("otherwise-since", "why", Titles.in(other).of(wording, ""));
        }
      }
    }
    return "";
  }

  private void compareLayers(Digest now, Digest then, List<Difference> found) {
    layers(now.layers(), then.layers(), Kind.LAYERS_ADDED, "otherwise-more-layers", found);
    layers(then.layers(), now.layers(), Kind.LAYERS_LEFT_OUT, "otherwise-fewer-layers", found);
    then.layers()
        .forEach(
            (id, name) -> {
              if (now.layers().containsKey(id)) {
                String layer = Texts.lower(name);
                String was = now.thicknesses().get(id);
                String is = then.thicknesses().get(id);
                if (!was.equals(is)) {
                  String text =
                      phrases.say("otherwise-thick", "layer", layer, "is", is, "was", was);
                  found.add(new Difference(Kind.THICKNESS, List.of(id), was, is, text));
                }
                String had = now.classes().get(id);
                String grade = then.classes().get(id);
                if (!grade.equals(had) && !grade.isEmpty()) {
                  String text = phrases.say("otherwise-class", "layer", layer, "class", grade);
                  found.add(new Difference(Kind.CLASS, List.of(id), had, grade, text));
                }
              }
            });
  }

  /** The layers that stand in one and not in the other, told together. */
  private void layers(
      Map<String, String> here,
      Map<String, String> there,
      Kind kind,
      String phrase,
      List<Difference> found) {
    Map<String, String> only = new LinkedHashMap<>(there);
    only.keySet().removeAll(here.keySet());
    if (!only.isEmpty()) {
      String names = only.values().stream().map(Texts::lower).collect(Collectors.joining(", "));
      found.add(
          difference(
              kind, List.copyOf(only.keySet()), names, phrases.say(phrase, "layers", names)));
    }
  }

  /** What stands in one and not in the other, each told alone. */
  private void apart(
      Map<String, String> here,
      Map<String, String> there,
      Kind kind,
      String phrase,
      List<Difference> found) {
    there.forEach(
        (id, title) -> {
          if (!here.containsKey(id)) {
            String text = phrases.say(phrase, "what", Texts.lower(title));
            found.add(difference(kind, List.of(id), title, text));
          }
        });
  }

  private static Difference difference(Kind kind, List<String> ids, String what, String text) {
    return kind.isLeftOut()
        ? new Difference(kind, ids, what, "", text)
        : new Difference(kind, ids, "", what, text);
  }
}
