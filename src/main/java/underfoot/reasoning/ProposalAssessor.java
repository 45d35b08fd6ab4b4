package underfoot.reasoning;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underfoot.buildup.Finding;
import underfoot.buildup.Laid;
import underfoot.buildup.LayerThickness;
import underfoot.buildup.RuledOut;
import underfoot.buildup.Stack;
import underfoot.buildup.StackLayer;
import underfoot.buildup.StopFinding;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.From;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.LayerKind;
import underfoot.knowledge.ProposedKinds;
import underfoot.knowledge.ProposedKinds.Kind;
import underfoot.knowledge.Unknown;
import underfoot.language.Pass;
import underfoot.scenario.Scenario;
import underfoot.scenario.State;
import underfoot.scenario.StatedFact;
import underfoot.scenario.Value;

/**
 * Judges a build-up that somebody proposes. It is held against the way of building that it most
 * resembles, whether that is the recommended one or not: the proposal's own layers are worked out
 * and judged as a build-up of that way, and what rules ask of that way is set beside what the
 * proposal says, for the rules of the pass CHECK to compare. Safe to share between threads.
 */
public final class ProposalAssessor {
  /** The list of layers in a proposal. */
  static final String LAYERS = "layers[]";

  private static final String KIND = LAYERS + ".kind";
  private static final String THICKNESS = LAYERS + ".thickness";

  private final Advisor advisor;
  private final ProposedKinds kinds;
  private final LayersBeside beside;

  /**
   * @param advisor thinks the floor through
   * @param kinds what people call layers
   */
  public ProposalAssessor(Advisor advisor, ProposedKinds kinds) {
    this.advisor = advisor;
    this.kinds = kinds;
    this.beside = new LayersBeside(advisor.rules(), advisor.knowledge());
  }

  /**
   * Judges a proposal.
   *
   * @param floor the floor
   * @param proposal the proposal, read by the book of proposals
   */
  public ProposalAssessment examine(Scenario floor, Scenario proposal) {
    Assessment assessment = advisor.advise(floor);
    List<String> layers = proposal.entries(LAYERS);
    List<Object> known = new ArrayList<>();
    Optional<ProposalMatch> fit = Optional.empty();
    Optional<BuildUp> built = Optional.empty();
    if (assessment.buildUps().isEmpty()) {
      known.addAll(assessment.facts().all());
      known.addAll(assessment.general());
      known.addAll(stated(proposal));
    } else {
      StackKinds byClass = new StackKinds(advisor.knowledge());
      fit =
          Optional.of(
              ProposalMatch.best(kindsOf(proposal, layers), assessment.buildUps(), byClass));
      BuildUp one = built(assessment, proposal, layers, fit.get());
      built = Optional.of(one);
      known.addAll(one.facts().all());
      known.addAll(assessment.general());
      known.addAll(one.concluded());
      known.addAll(stated(proposal));
      known.addAll(
          new ProposalComparison(advisor.knowledge(), kinds, proposal, layers, fit.get(), one)
              .facts());
      ruledOut(layers, fit.get(), one, known);
    }
    stopped(assessment, known);
    ProposalNeighbours neighbours =
        new ProposalNeighbours(
            beside,
            advisor.knowledge(),
            proposal,
            kindsOf(proposal, layers),
            fit,
            assessment.facts());
    known.addAll(neighbours.facts());
    List<Object> found = advisor.rules().think(Pass.CHECK, advisor.knowledge(), known);
    List<Finding> findings = new ArrayList<>();
    for (Object each : found) {
      if (each instanceof Finding finding) {
        findings.add(finding);
      }
    }
    findings.addAll(neighbours.wrong());
    return new ProposalAssessment(
        assessment, proposal, layers, fit, built, new Facts().addAll(known), findings);
  }

  private List<Kind> kindsOf(Scenario proposal, List<String> layers) {
    return layers.stream().map(layer -> kindOf(proposal, layer)).toList();
  }

  private Kind kindOf(Scenario proposal, String layer) {
    return kinds.get(proposal.find(KIND, layer).orElseThrow().text());
  }

  private static List<Object> stated(Scenario proposal) {
    List<Object> stated = new ArrayList<>();
    for (StatedFact given : proposal.givens()) {
      if (given.state() == State.UNKNOWN) {
        stated.add(new Unknown(given.key(), given.called(), given.about()));
      } else if (given.value() instanceof Value.Choices choices) {
        for (String chosen : choices.chosen()) {
          stated.add(said(given, chosen));
        }
      } else {
        stated.add(said(given, given.text()));
      }
    }
    return stated;
  }

  private static Fact said(StatedFact given, String text) {
    return new Fact(
        given.key(),
        given.called(),
        given.about(),
        text,
        given.number(),
        From.PROPOSAL,
        "",
        List.of(),
        null);
  }

  /** The proposal's own layers as a build-up of the way it resembles. */
  private BuildUp built(
      Assessment floor, Scenario proposal, List<String> layers, ProposalMatch fit) {
    Facts facts = fit.buildUp().facts();
    List<StackLayer> stack = new ArrayList<>();
    List<Laid> laid = new ArrayList<>();
    for (int i = 0; i < layers.size(); i++) {
      ProposalMatch.Place place = fit.places().get(i);
      LayerKind own =
          place.how() == ProposalMatch.How.IS
              ? place.part().kind()
              : advisor.knowledge().layers().get(kindOf(proposal, layers.get(i)).is().get(0));
      LayerThickness usual =
          place.part() != null
                  && (place.how() == ProposalMatch.How.IS
                      || own.thickness().equals(place.part().kind().thickness()))
              ? place.part().thickness()
              : LayerThickness.usual(own, advisor.knowledge().figures(), facts);
      double said =
          proposal.find(THICKNESS, layers.get(i)).map(StatedFact::number).orElse(Double.NaN);
      boolean asItIs = Double.isNaN(said);
      List<Laid> asked = place.part() == null ? List.of() : place.part().laid();
      if (place.how() == ProposalMatch.How.IS) {
        laid.addAll(asked);
      } else if (place.part() != null) {
        laid.add(new Laid(asked.get(0).because(), own, ""));
      }
      stack.add(
          new StackLayer(
              own,
              asItIs ? usual : said(said, usual),
              asItIs && place.how() == ProposalMatch.How.IS ? asked : List.of()));
    }
    return advisor.instead(floor, fit.buildUp(), new Stack(stack), laid);
  }

  /** A layer as thick as said; one that fills hollows is at least as thick as they are deep. */
  private static LayerThickness said(double mm, LayerThickness usual) {
    if (usual.min() == usual.max()) {
      return LayerThickness.even(mm);
    }
    double more = Math.max(0, mm - usual.mean());
    return new LayerThickness(usual.min() + more, usual.mean() + more, usual.max() + more);
  }

  /**
   * What rules the proposal out. What rules its way of building out is told of the layer that makes
   * it go that way; what only the proposal's own layers bring about, of the whole.
   */
  private void ruledOut(List<String> layers, ProposalMatch fit, BuildUp built, List<Object> known) {
    Knowledge knowledge = advisor.knowledge();
    Map<String, Derivation> rulings = new LinkedHashMap<>();
    built.of(RuledOut.class).forEach(one -> rulings.putIfAbsent(one.wording(), one.because()));
    built.of(StopFinding.class).stream()
        .filter(StopFinding::isStop)
        .forEach(one -> rulings.putIfAbsent(one.wording(), one.because()));
    Set<String> ofTheWay = new HashSet<>();
    fit.buildUp().of(RuledOut.class).forEach(one -> ofTheWay.add(one.wording()));
    fit.buildUp().of(StopFinding.class).forEach(one -> ofTheWay.add(one.wording()));
    rulings.forEach(
        (wording, because) -> {
          boolean way = ofTheWay.contains(wording);
          known.add(
              because(
                  way ? "way ruled out" : "proposal ruled out",
                  way ? fit.mark(layers) : "",
                  knowledge.wording().fill(wording, knowledge.figures(), built.facts(), "").text(),
                  because));
        });
  }

  private void stopped(Assessment assessment, List<Object> known) {
    Set<String> told = new HashSet<>();
    Knowledge knowledge = advisor.knowledge();
    for (Object one : assessment.general()) {
      if (one instanceof StopFinding stopFinding
          && stopFinding.isStop()
          && told.add(stopFinding.wording())) {
        known.add(
            because(
                "floor stopped", "", text(stopFinding, assessment.facts()), stopFinding.because()));
      }
    }
  }

  private String text(StopFinding stopFinding, Facts facts) {
    Knowledge knowledge = advisor.knowledge();
    return knowledge.wording().fill(stopFinding.wording(), knowledge.figures(), facts, "").text();
  }

  /** A fact for comparing that rests on a rule of an earlier pass. */
  static Fact because(String name, String about, String text, Derivation because) {
    return new Fact(name, name, about, text, Double.NaN, From.CONCLUDED, "", List.of(), because);
  }
}
