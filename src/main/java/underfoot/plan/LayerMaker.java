package underfoot.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underfoot.buildup.CoverageTarget;
import underfoot.buildup.LayerClass;
import underfoot.buildup.LayerCover;
import underfoot.buildup.LayerNote;
import underfoot.buildup.StackLayer;
import underfoot.knowledge.LayerKind;
import underfoot.knowledge.TextParts;
import underfoot.knowledge.Wording;
import underfoot.measure.Texts;
import underfoot.plan.Advice.Coverage;
import underfoot.plan.Advice.Layer;
import underfoot.plan.Advice.Say;
import underfoot.plan.Sayings.Same;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.MaterialClasses;
import underfoot.reasoning.StackKinds;

/** Makes the layers of the advice: what is asked of each, the strictest demand of several. */
final class LayerMaker {
  /** Texts whose ids begin so say how full contact is got and checked on site. */
  private static final String CHECK = "contact-";

  /** The families of layers that such texts are said of. */
  private static final Set<String> CHECKED = Set.of("tile-bed", "tile");

  private static final String TILE_BED = "tile-bed";

  private final Assessment assessment;
  private final Sayings sayings;
  private final List<CoverageTarget> targets;
  private final StackKinds stackKinds;

  LayerMaker(Assessment assessment, Sayings sayings) {
    this.assessment = assessment;
    this.sayings = sayings;
    this.stackKinds = new StackKinds(sayings.knowledge());
    this.targets =
        assessment.of(CoverageTarget.class).stream()
            .sorted(
                Comparator.comparingDouble((CoverageTarget one) -> -one.figure().number())
                    .thenComparing(one -> one.because().rule().key()))
            .toList();
  }

  /** The layers of a build-up, from the base up. */
  List<Layer> layers(BuildUp buildUp) {
    List<Layer> layers = new ArrayList<>();
    double level = 0;
    for (StackLayer layer : buildUp.stack().layers()) {
      level += layer.thickness().mean();
      layers.add(layer(layer, layers.size() + 1, level));
    }
    return layers;
  }

  private Layer layer(StackLayer layer, int order, double level) {
    String id = layer.kind().id();
    LayerKind made =
        stackKinds.made(
            layer.kind(),
            assessment.of(LayerClass.class).stream()
                .filter(one -> one.layer().equals(id))
                .map(LayerClass::grade)
                .toList());
    List<Justification> reasons = sayings.justifier().of(layer.because());
    List<Say> spec = new ArrayList<>(classes(id));
    List<Say> fixing = new ArrayList<>();
    List<LayerNote> notes =
        assessment.of(LayerNote.class).stream()
            .filter(note -> note.layer().equals(id))
            .filter(note -> targets.isEmpty() || !isCheck(note)) // told with the coverage target
            .toList();
    Set<String> waited = new HashSet<>(); // said once of a layer, before the first that waits
    for (Same<LayerNote> same : sayings.once(notes, LayerNote::wording)) {
      (same.all().stream().anyMatch(LayerNote::fixing) ? fixing : spec).add(say(same, id, waited));
    }
    List<LayerCover> covers =
        assessment.of(LayerCover.class).stream()
            .filter(cover -> cover.layer().equals(id))
            .sorted(
                Comparator.comparingDouble((LayerCover cover) -> -cover.figure().number())
                    .thenComparing(cover -> cover.because().rule().key()))
            .toList();
    Optional<Double> contact = covers.stream().findFirst().map(one -> one.figure().number());
    if (contact.isPresent()) {
      String percent = Texts.of(contact.get(), "%");
      spec.add(
          new Say(
              TextParts.of(sayings.phrases().say("layer-contact", "percent", percent)),
              true,
              sayings.justifier().of(covers.stream().map(LayerCover::because).toList())));
    }
    Set<Justification> because = new LinkedHashSet<>(reasons);
    spec.forEach(say -> because.addAll(say.because()));
    fixing.forEach(say -> because.addAll(say.because()));
    return new Layer(
        id,
        order,
        made.name(),
        made.material(),
        layer.kind().family(),
        layer.thickness(),
        level,
        reasons,
        spec,
        fixing,
        id.equals(TILE_BED)
            ? targets.stream().findFirst().map(target -> target.figure().number())
            : contact,
        reasons.isEmpty()
            || !sayings.knowledge().generalReasons().contains(reasons.get(0).rule().id()),
        key(id),
        sayings.knowledge().site().drawn(id, sayings.knowledge().figures(), sayings.facts()),
        Justification.once(because));
  }

  private Say say(Same<LayerNote> same, String layer, Set<String> waited) {
    List<String> acts = sayings.knowledge().wording().work(same.wording()).asked();
    boolean again = !waited.addAll(sayings.acts().gates(acts, "", same.wording()));
    Wording.Filled filled =
        again ? sayings.alone(same.wording(), layer) : sayings.fillOfLayer(same.wording(), layer);
    boolean general = sayings.knowledge().generalities().contains(same.wording());
    return new Say(filled.parts(), general, sayings.because(same, filled));
  }

  private static boolean isCheck(LayerNote note) {
    return note.wording().startsWith(CHECK) && CHECKED.contains(note.layer());
  }

  /** What is set, cut or combed by a layer, each in a few words, its classes first. */
  private List<String> key(String layer) {
    List<String> grades =
        assessment.of(LayerClass.class).stream()
            .filter(one -> one.layer().equals(layer))
            .map(LayerClass::grade)
            .sorted()
            .toList();
    List<String> key = new ArrayList<>();
    List<String> classes = new ArrayList<>();
    for (String grade : MaterialClasses.strictest(sayings.knowledge(), grades)) {
      String scale = MaterialClasses.scaleOf(sayings.knowledge(), grade);
      String own = "key-" + scale.replace(' ', '-');
      String id = sayings.phrases().has(own) ? own : "key-class-of";
      classes.add(sayings.phrases().say(id, "scale", scale, "class", grade));
    }
    if (!classes.isEmpty()) {
      key.add(sayings.phrases().say("key-class", "classes", String.join(", ", classes)));
    }
    key.addAll(
        sayings.knowledge().site().of(layer, sayings.knowledge().figures(), sayings.facts()));
    return key;
  }

  /** The strictest class on each scale, with the reasons of all that ask for it or for less. */
  private List<Say> classes(String layer) {
    Map<String, List<LayerClass>> byScale = new LinkedHashMap<>();
    for (LayerClass asked : assessment.of(LayerClass.class)) {
      if (asked.layer().equals(layer)) {
        String scale = MaterialClasses.scaleOf(sayings.knowledge(), asked.grade());
        byScale.computeIfAbsent(scale, key -> new ArrayList<>()).add(asked);
      }
    }
    List<Say> said = new ArrayList<>();
    byScale.forEach(
        (scale, asked) -> {
          List<String> grades = asked.stream().map(LayerClass::grade).toList();
          String grade = MaterialClasses.strictest(sayings.knowledge(), grades).get(0);
          // The rules that ask for the strictest come first; the others are met by it.
          asked.sort(
              Comparator.comparing((LayerClass one) -> !one.grade().equals(grade))
                  .thenComparing(one -> one.because().rule().key()));
          String own = "at-least-" + scale.replace(' ', '-');
          String id = sayings.phrases().has(own) ? own : "at-least-class";
          String text = sayings.phrases().say(id, "scale", Texts.capital(scale), "class", grade);
          said.add(
              new Say(
                  TextParts.of(text),
                  true,
                  sayings.justifier().of(asked.stream().map(LayerClass::because).toList())));
        });
    return said;
  }

  /** The contact aimed for under the tiles; empty if none was set. */
  Optional<Coverage> coverage() {
    if (targets.isEmpty()) {
      return Optional.empty();
    }
    double percent = targets.get(0).figure().number();
    List<Justification> because =
        sayings.justifier().of(targets.stream().map(CoverageTarget::because).toList());
    List<LayerNote> notes =
        assessment.of(LayerNote.class).stream().filter(LayerMaker::isCheck).toList();
    List<Say> check =
        new ArrayList<>(
            sayings.once(notes, LayerNote::wording).stream()
                .map(one -> say(one, "", new HashSet<>()))
                .toList());
    if (check.isEmpty()) {
      String text = sayings.phrases().say("check-contact", "target", Texts.of(percent, "%"));
      check.add(new Say(TextParts.of(text), List.of(because.get(0))));
    }
    Set<Justification> all = new LinkedHashSet<>(because);
    check.forEach(say -> all.addAll(say.because()));
    return Optional.of(new Coverage(percent, check, Justification.once(all)));
  }
}
