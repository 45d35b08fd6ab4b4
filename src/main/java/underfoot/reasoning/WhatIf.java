package underfoot.reasoning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underfoot.buildup.Caution;
import underfoot.buildup.Conclusion;
import underfoot.buildup.Halt;
import underfoot.buildup.LayerClass;
import underfoot.buildup.Remedy;
import underfoot.buildup.RuledOut;
import underfoot.buildup.Severity;
import underfoot.buildup.StackLayer;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Fact;
import underfoot.knowledge.From;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.Unknown;
import underfoot.measure.Texts;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Given;
import underfoot.scenario.Kind;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.State;

/** What would be decided if what was assumed were otherwise: the floor is thought through again. */
public final class WhatIf {
  private final Advisor advisor;
  private final Knowledge knowledge;
  private final Phrases phrases;

  /**
   * @param advisor who thinks the floor through again
   */
  public WhatIf(Advisor advisor) {
    this.advisor = advisor;
    this.knowledge = advisor.knowledge();
    this.phrases = new Phrases(knowledge.wording());
  }

  /**
   * Another value of an assumed fact.
   *
   * @param value the other value
   * @param reach how far the change reaches
   * @param differences what would be decided otherwise, in plain words; at least one
   */
  public record Otherwise(String value, Reach reach, List<String> differences) {
    /** Copies the list. */
    public Otherwise {
      differences = List.copyOf(differences);
    }
  }

  /**
   * An assumed fact.
   *
   * @param fact what was assumed
   * @param key the scenario key that would settle it
   * @param about which of several things it is about; empty for the room
   * @param definition what may be said of it; empty if no scenario can state it
   * @param otherwise the other values that would change something
   */
  public record Assumed(
      Fact fact,
      String key,
      String about,
      Optional<FactDefinition> definition,
      List<Otherwise> otherwise) {
    /** Copies the list. */
    public Assumed {
      otherwise = List.copyOf(otherwise);
    }
  }

  /**
   * A fact that the scenario does not state and nothing was assumed of, though something hangs on
   * it.
   *
   * @param definition what may be said of it
   * @param about which of several things it is about; empty for the room
   * @param otherwise the values that would change something
   */
  public record Unsaid(FactDefinition definition, String about, List<Otherwise> otherwise) {
    /** Copies the list. */
    public Unsaid {
      otherwise = List.copyOf(otherwise);
    }
  }

  /** How far a change reaches, the least first. */
  public enum Reach {
    /** A layer, a remedy, a danger. */
    PART,
    /** Another way of building comes first. */
    WAY,
    /** The verdict is another. */
    VERDICT
  }

  /** One floor to think through again. */
  private record Trial(int assumed, String value, Scenario scenario) {}

  /** The facts that were assumed, without asking what hangs on them. */
  public static List<Assumed> assumed(Counsel counsel) {
    Map<String, Assumed> found = new LinkedHashMap<>();
    for (Fact fact : counsel.factsOfChosen().all()) {
      if (fact.from() == From.ASSUMED) {
        Assumed assumed = settledBy(counsel.scenario(), fact);
        found.putIfAbsent(assumed.key() + '\n' + assumed.about(), assumed);
      }
    }
    return List.copyOf(found.values());
  }

  /** The key that would settle an assumption: its own, or the unknown one the rule matched. */
  private static Assumed settledBy(Scenario scenario, Fact fact) {
    Optional<FactDefinition> own = scenario.book().find(fact.key());
    if (own.isEmpty() && fact.because() != null) {
      for (Object premise : fact.because().premises()) {
        if (premise instanceof Unknown unknown) {
          return new Assumed(
              fact, unknown.key(), unknown.about(), scenario.book().find(unknown.key()), List.of());
        }
      }
    }
    return new Assumed(fact, fact.key(), fact.about(), own, List.of());
  }

  /**
   * Thinks the floor through again with each other value of each assumed fact.
   *
   * @param counsel what was decided
   * @return the assumed facts, each with what would change
   */
  public List<Assumed> of(Counsel counsel) {
    List<Assumed> assumed = assumed(counsel);
    List<Trial> trials = new ArrayList<>();
    for (int i = 0; i < assumed.size(); i++) {
      Assumed one = assumed.get(i);
      if (one.definition().isPresent()) {
        for (String value : one.definition().get().otherwise()) {
          trial(counsel.scenario(), one, i, value).ifPresent(trials::add);
        }
      }
    }
    List<List<Otherwise>> changes = tried(counsel, trials, assumed.size());
    List<Assumed> all = new ArrayList<>();
    for (int i = 0; i < assumed.size(); i++) {
      Assumed one = assumed.get(i);
      all.add(new Assumed(one.fact(), one.key(), one.about(), one.definition(), changes.get(i)));
    }
    return List.copyOf(all);
  }

  /**
   * Thinks the floor through again with other values of each fact that is unknown and was not
   * assumed, such as whether there is asbestos. Rules need not cite it: some ask whether anything
   * is known of it at all.
   *
   * @param counsel what was decided
   * @return the facts on which something hangs
   */
  public List<Unsaid> unsaid(Counsel counsel) {
    List<Assumed> assumed = assumed(counsel);
    List<Given> unknown = new ArrayList<>();
    for (Given one : counsel.scenario().givens()) {
      if (one.state() == State.UNKNOWN
          && knowledge.survey().asks(one.key(), counsel.factsOfChosen())
          && assumed.stream()
              .noneMatch(a -> a.key().equals(one.key()) && a.about().equals(one.about()))) {
        unknown.add(one);
      }
    }
    List<Trial> trials = new ArrayList<>();
    for (int i = 0; i < unknown.size(); i++) {
      Given one = unknown.get(i);
      for (String value : values(one.definition())) {
        trial(counsel.scenario(), one.key(), one.about(), "", Double.NaN, i, value)
            .ifPresent(trials::add);
      }
    }
    List<List<Otherwise>> changes = tried(counsel, trials, unknown.size());
    List<Unsaid> all = new ArrayList<>();
    for (int i = 0; i < unknown.size(); i++) {
      if (!changes.get(i).isEmpty()) {
        Given one = unknown.get(i);
        all.add(new Unsaid(one.definition(), one.about(), changes.get(i)));
      }
    }
    return List.copyOf(all);
  }

  /** The values worth trying of a fact of which nothing is assumed. */
  private static List<String> values(FactDefinition definition) {
    boolean none = definition.otherwise().isEmpty();
    return none && definition.kind() == Kind.YES_NO ? List.of("yes", "no") : definition.otherwise();
  }

  /**
   * What would be decided otherwise on another floor, in plain words.
   *
   * @param now what was decided
   * @param then what was decided on the other floor
   * @return one sentence for each difference; empty if there is none
   */
  public List<String> differences(Counsel now, Counsel then) {
    return differences(Digest.of(now), then);
  }

  /** The changes of each fact tried; only values that change something. */
  private List<List<Otherwise>> tried(Counsel counsel, List<Trial> trials, int facts) {
    Digest now = Digest.of(counsel);
    Advisor quick = advisor.remembering();
    List<Otherwise> tried =
        trials.parallelStream()
            .map(
                trial -> {
                  Counsel then = quick.advise(trial.scenario());
                  return new Otherwise(trial.value(), reach(counsel, then), differences(now, then));
                })
            .toList();
    List<List<Otherwise>> changes = new ArrayList<>();
    for (int i = 0; i < facts; i++) {
      List<Otherwise> ofOne = new ArrayList<>();
      for (int j = 0; j < trials.size(); j++) {
        if (trials.get(j).assumed() == i && !tried.get(j).differences().isEmpty()) {
          ofOne.add(tried.get(j));
        }
      }
      changes.add(ofOne);
    }
    return changes;
  }

  private static Reach reach(Counsel now, Counsel then) {
    if (now.verdict() != then.verdict()) {
      return Reach.VERDICT;
    }
    String was = now.chosen().map(Candidate::route).orElse("");
    return was.equals(then.chosen().map(Candidate::route).orElse("")) ? Reach.PART : Reach.WAY;
  }

  private static Optional<Trial> trial(Scenario scenario, Assumed one, int place, String value) {
    return trial(
        scenario, one.key(), one.about(), one.fact().text(), one.fact().number(), place, value);
  }

  private static Optional<Trial> trial(
      Scenario scenario,
      String key,
      String about,
      String text,
      double now,
      int place,
      String value) {
    if (value.equals(text)) {
      return Optional.empty();
    }
    try {
      Scenario other = scenario.with(key, about, value);
      double number = other.find(key, about).map(g -> g.number()).orElse(Double.NaN);
      return number == now ? Optional.empty() : Optional.of(new Trial(place, value, other));
    } catch (ScenarioFaults impossibleHere) {
      // Another value may contradict what the scenario states; then it is not a case to think of.
      return Optional.empty();
    }
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
    boolean plain = cut.length() > 1 && !Character.isUpperCase(cut.charAt(1));
    return plain ? Character.toLowerCase(cut.charAt(0)) + cut.substring(1) : cut;
  }
}
