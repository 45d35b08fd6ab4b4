package underfoot.reasoning;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underfoot.buildup.CoverageTarget;
import underfoot.buildup.LayerClass;
import underfoot.buildup.LayerCover;
import underfoot.buildup.StackLayer;
import underfoot.buildup.StepTime;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Figure;
import underfoot.knowledge.From;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.ProposedKinds;
import underfoot.knowledge.Step;
import underfoot.measure.Texts;
import underfoot.scenario.Scenario;
import underfoot.scenario.StatedFact;
import underfoot.scenario.Value;

/**
 * What is asked of each layer, beside what a proposal says of it, as facts for the rules of the
 * pass CHECK. It compares nothing but the places of layers and of classes on their scales: what
 * follows from a difference is the rules' to say.
 */
final class ProposalComparison {
  /** Families of layers too thin to part what is above them from what is below. */
  private static final Set<String> THIN = Set.of("primer", "bed", "sealing");

  private static final String TILE_BED = "tile-bed";
  private static final String TILE = "tile";

  private final Knowledge knowledge;
  private final ProposedKinds kinds;
  private final Scenario proposal;
  private final List<String> layers;
  private final ProposalMatch fit;
  private final BuildUp built;
  private final List<StackLayer> asked;
  private final List<Fact> facts = new ArrayList<>();

  /**
   * @param knowledge figures, scales and steps
   * @param kinds what people call layers
   * @param proposal the proposal
   * @param layers the names of its layers
   * @param fit the build-up it is held against
   * @param built the proposal itself, worked out
   */
  ProposalComparison(
      Knowledge knowledge,
      ProposedKinds kinds,
      Scenario proposal,
      List<String> layers,
      ProposalMatch fit,
      BuildUp built) {
    this.knowledge = knowledge;
    this.kinds = kinds;
    this.proposal = proposal;
    this.layers = layers;
    this.fit = fit;
    this.built = built;
    this.asked = fit.buildUp().stack().layers();
  }

  List<Fact> facts() {
    for (int i = 0; i < layers.size(); i++) {
      layer(i);
    }
    fit.missing().forEach(this::missing);
    grout();
    work();
    return facts;
  }

  private void layer(int i) {
    String label = layers.get(i);
    ProposalMatch.Place place = fit.places().get(i);
    worked("fit", label, place.how().word());
    liesOn(i);
    screw(i);
    StackLayer part = place.part();
    if (part == null) {
      worked("layer family", label, built.stack().layers().get(i).kind().family());
      return;
    }
    Derivation because = part.laid().get(0).because();
    told("part", label, part.kind().id(), because);
    told("part name", label, Texts.lower(part.kind().name()), because);
    told("part material", label, part.kind().material(), because);
    told("why asked", label, Texts.lower(because.rule().reason()), because);
    told("layer family", label, part.kind().family(), because);
    told("in its turn", label, place.inOrder() ? "yes" : "no", because);
    if (!place.inOrder()) {
      told("its turn", label, turn(part), because);
    }
    thickness(label, part);
    classes(label, part);
    contact(label, part);
    notch(label, part);
    waits(label, part);
  }

  private void thickness(String label, StackLayer part) {
    // How deep a pour is on average is known only of a floor that was surveyed.
    boolean surveyed = built.facts().find("readings") != null;
    double mm = surveyed ? part.thickness().mean() : part.thickness().min();
    if (mm > 0) {
      // A pour is never known to better than a tenth.
      double tenth = Math.floor(mm * 10 + 1e-6) / 10;
      number("thickness asked", label, tenth, "mm", part.laid().get(0).because());
    }
  }

  /** Above and below which layers it belongs. */
  private String turn(StackLayer part) {
    int at = asked.indexOf(part);
    String below = at > 0 ? "above the " + plain(asked.get(at - 1)) : "on the base";
    return at + 1 < asked.size() ? below + " and below the " + plain(asked.get(at + 1)) : below;
  }

  private void liesOn(int i) {
    String on = "the base";
    for (int j = i - 1; j >= 0 && on.equals("the base"); j--) {
      StackLayer below = built.stack().layers().get(j);
      if (!THIN.contains(below.kind().family()) && below.thickness().max() > 0) {
        on = below.kind().family();
      }
    }
    worked("lies on", layers.get(i), on);
  }

  private void screw(int i) {
    Optional<StatedFact> length =
        proposal.find(ProposalAssessor.LAYERS + ".screw length", layers.get(i));
    Fact overlay = built.facts().find("overlay thickness");
    if (length.isEmpty() || !length.get().known() || overlay == null) {
      return;
    }
    Figure washer = knowledge.figures().get("board-screw-washer");
    double grip = length.get().number() - washer.number() - overlay.number();
    facts.add(
        Fact.measured(
            "screw grip",
            layers.get(i),
            Texts.of(Math.max(0, grip), "mm"),
            grip,
            "length − washer − overlay: "
                + length.get().text()
                + " − "
                + washer.text()
                + " − "
                + overlay.text(),
            List.of(overlay, washer)));
  }

  // --- classes

  private void classes(String label, StackLayer part) {
    List<String> offered = new ArrayList<>();
    proposal
        .find(ProposalAssessor.LAYERS + ".class", label)
        .filter(given -> given.value() instanceof Value.Choices)
        .ifPresent(given -> offered.addAll(((Value.Choices) given.value()).chosen()));
    if (!part.kind().id().equals(TILE)) {
      classes(label, part.kind().id(), offered);
    }
  }

  private void classes(String label, String layer, List<String> offered) {
    Map<String, LayerClass> strictest = new LinkedHashMap<>();
    for (LayerClass one : fit.buildUp().of(LayerClass.class)) {
      if (one.layer().equals(layer)) {
        strictest.merge(
            MaterialClasses.scaleOf(knowledge, one.grade()),
            one,
            (a, b) ->
                MaterialClasses.strictest(knowledge, List.of(a.grade(), b.grade()))
                        .get(0)
                        .equals(a.grade())
                    ? a
                    : b);
      }
    }
    strictest.forEach(
        (scale, one) -> {
          told(scale + " asked", label, one.grade(), one.because());
          List<String> order = knowledge.scales().getOrDefault(scale, List.of());
          int best = offered.stream().mapToInt(order::indexOf).max().orElse(-1);
          int needed = order.indexOf(one.grade());
          String standing = best < 0 ? "not said" : best < needed ? "short" : "met";
          told(scale + " offered", label, best > needed ? "more" : standing, one.because());
          if (best >= 0) {
            worked(scale + " proposed", label, order.get(best));
          }
        });
  }

  private void grout() {
    List<String> offered =
        proposal
            .find("grout")
            .filter(StatedFact::known)
            .map(given -> List.of(given.text()))
            .orElse(List.of());
    classes("", TILE, offered);
  }

  // --- contact, notch, waits

  private void contact(String label, StackLayer part) {
    String id = part.kind().id();
    if (id.equals(TILE_BED) || id.equals(TILE)) {
      CoverageTarget greatest = null;
      for (CoverageTarget one : built.of(CoverageTarget.class)) {
        greatest =
            greatest == null || one.figure().number() > greatest.figure().number() ? one : greatest;
      }
      if (greatest != null) {
        number("contact asked", label, greatest.figure().number(), "%", greatest.because());
      }
      return;
    }
    int at = asked.indexOf(part);
    String over = at + 1 < asked.size() ? asked.get(at + 1).kind().id() : "";
    boolean bed = part.kind().family().equals("bed");
    for (LayerCover one : fit.buildUp().of(LayerCover.class)) {
      if (one.layer().equals(bed ? over : id)) {
        number("contact asked", label, one.figure().number(), "%", one.because());
      }
    }
  }

  private void notch(String label, StackLayer part) {
    Fact notch = built.facts().find("trowel notch");
    if (part.kind().id().equals(TILE_BED) && notch != null) {
      facts.add(
          new Fact(
              "notch asked",
              "notch asked",
              label,
              notch.text(),
              notch.number(),
              From.CONCLUDED,
              "",
              List.of(),
              notch.because()));
    }
  }

  private void waits(String label, StackLayer part) {
    String step = kind(label).waitAs(part.kind().id()).orElse("");
    StepTime longest = null;
    for (StepTime wait : fit.buildUp().of(StepTime.class)) {
      if (wait.step().equals(step)
          && (longest == null || wait.hours(built.facts()) > longest.hours(built.facts()))) {
        longest = wait;
      }
    }
    if (longest != null) {
      double hours = Math.floor(longest.hours(built.facts()) * 2) / 2;
      number("wait asked", label, hours, "h", longest.because());
    }
  }

  // --- what is missing, and the order of the work

  private void missing(StackLayer part) {
    String name = part.kind().name();
    Derivation because = part.laid().get(0).because();
    told("missing layer", name, part.kind().id(), because);
    told("missing family", name, part.kind().family(), because);
    told("missing material", name, part.kind().material(), because);
    told("why asked", name, Texts.lower(because.rule().reason()), because);
    told("its turn", name, turn(part), because);
    worked("missing with what it carries", name, fit.missingWithWhatItCarries(part) ? "yes" : "no");
    worked("missing beside its like", name, besideItsLike(part) ? "yes" : "no");
    List<StackLayer> above = fit.carried(part);
    StackLayer carried = above.isEmpty() ? part : above.get(above.size() - 1);
    boolean bonded = false;
    for (int i = 0; i < layers.size(); i++) {
      StackLayer here = fit.places().get(i).part();
      Optional<StatedFact> fixing =
          proposal.find(ProposalAssessor.LAYERS + ".fixing", layers.get(i));
      if (carried.equals(here)
          && part.kind().family().equals("bed")
          && fixing.isPresent()
          && fixing.get().text().contains("bonded")) {
        bonded = true;
      }
    }
    worked("missing but for its fixing", name, bonded ? "yes" : "no");
  }

  /** Whether the layer next to it in the build-up is there and called by the same name. */
  private boolean besideItsLike(StackLayer part) {
    int at = asked.indexOf(part);
    for (int i = 0; i < layers.size(); i++) {
      StackLayer laid = fit.places().get(i).part();
      int here = laid == null ? -1 : asked.indexOf(laid);
      if (here >= 0
          && Math.abs(here - at) == 1
          && part.kind().family().equals(asked.get(here).kind().family())
          && kind(layers.get(i)).is().contains(part.kind().id())) {
        return true;
      }
    }
    return false;
  }

  private ProposedKinds.Kind kind(String label) {
    return kinds.get(proposal.find(ProposalAssessor.LAYERS + ".kind", label).orElseThrow().text());
  }

  private void work() {
    Optional<StatedFact> order = proposal.find("order of work");
    if (order.isEmpty() || !(order.get().value() instanceof Value.Choices choices)) {
      return;
    }
    String before = null;
    for (String now : choices.chosen()) {
      if (before != null && !steps(now).isEmpty() && first(now) < first(before)) {
        worked("work out of turn", now, before);
      }
      before = steps(now).isEmpty() ? before : now;
    }
  }

  private int first(String work) {
    return steps(work).stream()
        .map(step -> knowledge.steps().get(step))
        .mapToInt(Step::place)
        .min()
        .orElse(0);
  }

  /** The steps that a piece of work stands for in this build-up; any of them if it has none. */
  private List<String> steps(String work) {
    Set<String> timed = new HashSet<>();
    fit.buildUp().of(StepTime.class).forEach(one -> timed.add(one.step()));
    List<String> all = kinds.work().get(work);
    List<String> here = all.stream().filter(timed::contains).toList();
    return here.isEmpty() ? all : here;
  }

  // --- facts

  private void told(String name, String about, String text, Derivation because) {
    facts.add(ProposalAssessor.because(name, about, text, because));
  }

  private void number(String name, String about, double number, String unit, Derivation because) {
    facts.add(
        new Fact(
            name,
            name,
            about,
            Texts.of(number, unit),
            number,
            From.CONCLUDED,
            "",
            List.of(),
            because));
  }

  private void worked(String name, String about, String text) {
    facts.add(
        Fact.measured(name, about, text, Double.NaN, "proposal beside what is asked", List.of()));
  }

  /** The name of a layer without what is said of its fixing. */
  private static String plain(StackLayer layer) {
    String name = layer.kind().name();
    int comma = name.indexOf(',');
    return Texts.lower(comma < 0 ? name : name.substring(0, comma));
  }
}
