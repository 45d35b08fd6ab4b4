package underfoot.reasoning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import underfoot.buildup.Caution;
import underfoot.buildup.ClientLimit;
import underfoot.buildup.Conclusion;
import underfoot.buildup.Halt;
import underfoot.buildup.LayerClass;
import underfoot.buildup.Remedy;
import underfoot.buildup.RuledOut;
import underfoot.buildup.Severity;
import underfoot.buildup.StackLayer;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;

/**
 * Tells in plain words how what is decided of one floor differs from what is decided of another.
 */
public final class Differences {
  private final Phrases phrases;

  /**
   * @param knowledge where the phrases are
   */
  public Differences(Knowledge knowledge) {
    this.phrases = new Phrases(knowledge.wording());
  }

  /** The differences, each as a clause; empty if nothing that matters is decided otherwise. */
  public List<String> of(Counsel now, Counsel then) {
    return differences(Digest.of(now), then);
  }

  /** What is compared of two counsels. Maps are from an id to its words. */
  private record Digest(
      Verdict verdict,
      String route,
      Map<String, String> halts,
      Map<String, String> layers,
      Map<String, String> thicknesses,
      Map<String, String> classes,
      Map<String, String> remedies,
      Map<String, String> dangers) {

    static Digest of(Counsel counsel) {
      Digest digest =
          new Digest(
              counsel.verdict(),
              counsel.chosen().map(Candidate::route).orElse(""),
              new LinkedHashMap<>(),
              new LinkedHashMap<>(),
              new LinkedHashMap<>(),
              new LinkedHashMap<>(),
              new LinkedHashMap<>(),
              new LinkedHashMap<>());
      for (Halt halt : counsel.of(Halt.class)) {
        digest.halts.put(halt.wording(), title(counsel, halt.wording(), ""));
      }
      counsel
          .chosen()
          .ifPresent(
              chosen -> {
                for (StackLayer layer : chosen.stack().layers()) {
                  String id = layer.kind().id();
                  digest.layers.put(id, layer.kind().name());
                  digest.thicknesses.put(id, thickness(layer));
                  digest.classes.put(id, grades(counsel, id));
                }
              });
      for (ClientLimit limit : counsel.of(ClientLimit.class)) {
        digest.remedies.put(limit.wording() + '@', title(counsel, limit.wording(), ""));
      }
      for (Remedy remedy : counsel.of(Remedy.class)) {
        digest.remedies.put(
            remedy.wording() + '@' + remedy.about(),
            title(counsel, remedy.wording(), remedy.about()));
      }
      for (Caution caution : counsel.of(Caution.class)) {
        if (caution.severity() == Severity.DANGER) {
          digest.dangers.put(
              caution.wording() + '@' + caution.about(),
              title(counsel, caution.wording(), caution.about()));
        }
      }
      return digest;
    }

    private static String thickness(StackLayer layer) {
      double mean = Math.round(layer.thickness().mean() * 10) / 10.0;
      return Texts.of(mean, "mm");
    }

    private static String grades(Counsel counsel, String layer) {
      List<String> grades = new ArrayList<>();
      for (LayerClass asked : counsel.of(LayerClass.class)) {
        if (asked.layer().equals(layer)) {
          grades.add(asked.grade());
        }
      }
      return String.join(", ", Grades.strictest(counsel.knowledge(), grades));
    }
  }

  private static String title(Counsel counsel, String wording, String about) {
    var filled =
        counsel
            .knowledge()
            .wording()
            .fill(wording, counsel.knowledge().figures(), counsel.factsOfChosen(), about);
    String title = filled.title().isEmpty() ? filled.text() : filled.title();
    return about.isEmpty() || title.contains(about) ? title : title + " (" + about + ")";
  }

  private List<String> differences(Digest now, Counsel other) {
    Digest then = Digest.of(other);
    List<String> found = new ArrayList<>();
    for (Map.Entry<String, String> halt : then.halts().entrySet()) {
      if (!now.halts().containsKey(halt.getKey())) {
        found.add(
            phrases.say(
                then.verdict() == Verdict.STOP ? "otherwise-stops" : "otherwise-outside",
                "why",
                halt.getValue()));
      }
    }
    if (now.verdict() != then.verdict() && found.isEmpty()) {
      found.add(phrases.say("otherwise-verdict-" + then.verdict().word()));
    }
    if (then.verdict() == Verdict.STOP) {
      return found;
    }
    if (!now.route().equals(then.route())) {
      found.add(
          phrases.say(
              "otherwise-way",
              "way",
              phrases.way(then.route()),
              "why",
              whyNot(now.route(), other)));
    } else {
      compareLayers(now, then, found);
    }
    compare(now.remedies(), then.remedies(), "otherwise-also-first", "otherwise-not-first", found);
    compare(now.dangers(), then.dangers(), "otherwise-danger", "otherwise-no-danger", found);
    return found;
  }

  /** Why a way would no longer stand, ready to follow the words; empty if it still stands. */
  private String whyNot(String route, Counsel other) {
    for (Candidate candidate : other.candidates()) {
      if (candidate.route().equals(route)) {
        List<Conclusion> against = new ArrayList<>(candidate.of(RuledOut.class));
        against.addAll(candidate.of(Halt.class).stream().filter(Halt::isStop).toList());
        if (!against.isEmpty()) {
          Conclusion first = against.get(0);
          String wording = first instanceof RuledOut out ? out.wording() : ((Halt) first).wording();
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
