package underfoot.reasoning;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import underfoot.buildup.Finding;
import underfoot.buildup.StackLayer;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.ProposedKinds.Kind;
import underfoot.reasoning.Beside.Answer;
import underfoot.scenario.Scenario;
import underfoot.scenario.StatedFact;
import underfoot.scenario.Value;

/**
 * The layers of a proposal held beside each other, as {@link LayersBeside} has it, and what the
 * floor is beneath them. What the build-up it is held against asks for and the proposal lacks is
 * told as missing, and not once more here.
 */
final class ProposalNeighbours {
  /** The family of what has joints that are grouted. */
  private static final String TILE = "tile";

  private final LayersBeside beside;
  private final Knowledge knowledge;
  private final StackKinds byClass;
  private final Scenario proposal;
  private final List<String> layers;
  private final List<Kind> names;
  private final Optional<ProposalMatch> fit;
  private final Places stack;

  /**
   * @param beside who is asked
   * @param knowledge the rows of materials
   * @param proposal the proposal
   * @param names what each of its layers is called, from the bottom
   * @param fit the build-up it is held against; empty if nothing may be built
   * @param facts what is held of the floor
   */
  ProposalNeighbours(
      LayersBeside beside,
      Knowledge knowledge,
      Scenario proposal,
      List<Kind> names,
      Optional<ProposalMatch> fit,
      Facts facts) {
    this.beside = beside;
    this.knowledge = knowledge;
    this.byClass = new StackKinds(knowledge);
    this.proposal = proposal;
    this.layers = proposal.entries(ProposalAssessor.LAYERS);
    this.names = names;
    this.fit = fit;
    String beneath = StackKinds.beneath(fit.map(one -> one.buildUp().facts()).orElse(facts));
    this.stack = stack(beneath, kinds(beneath));
  }

  /** A stack, and which layer of the proposal each of its places is of; -1 for the floor. */
  private record Places(List<String> kinds, List<Integer> layers) {}

  /**
   * What the rules of the pass CHECK are told: what each layer's passport says, what lies over it,
   * and which layers are at fault for what they lie beside.
   */
  List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    for (int at = 0; at < stack.kinds().size(); at++) {
      if (stack.layers().get(at) >= 0) {
        String label = layers.get(stack.layers().get(at));
        String kind = stack.kinds().get(at);
        facts.addAll(LayersBeside.said(knowledge, LayersBeside.MATERIAL, kind, label));
        for (String above : stack.kinds().subList(at + 1, stack.kinds().size())) {
          beside.works(above).forEach(work -> facts.add(told("lies under", label, work)));
        }
      }
    }
    wrong().forEach(one -> facts.add(told("beside its neighbours", one.about(), "wrong")));
    work(facts);
    return facts;
  }

  /** In which place each piece of work stands in the order of work, and which are left out. */
  private void work(List<Fact> facts) {
    Optional<StatedFact> order = proposal.find("order of work");
    if (order.isEmpty() || !(order.get().value() instanceof Value.Choices choices)) {
      return;
    }
    List<String> chosen = choices.chosen();
    for (String work : order.get().definition().of()) {
      int place = chosen.indexOf(work);
      facts.add(
          Fact.measured(
              place < 0 ? "left out of the work" : "place in the work",
              work,
              place < 0 ? "yes" : Integer.toString(place + 1),
              place < 0 ? Double.NaN : place + 1,
              "the order of work that is proposed",
              List.of()));
    }
  }

  private static Fact told(String name, String label, String text) {
    return Fact.measured(name, label, text, Double.NaN, "one layer beside another", List.of());
  }

  /** What is wrong. */
  List<Finding> wrong() {
    List<StackLayer> missing =
        fit.stream()
            .flatMap(
                one -> one.missing().stream().filter(part -> !one.missingWithWhatItCarries(part)))
            .toList();
    Set<String> told = new HashSet<>();
    List<Finding> findings = new ArrayList<>();
    for (LayersBeside.Wrong one : beside.wrong(stack.kinds())) {
      boolean asMissing =
          one.ruling().answer() == Answer.ONLY_WITH
              && missing.stream()
                  .anyMatch(
                      layer -> beside.works(layer.kind().id()).contains(one.ruling().between()));
      // What lacks the same beneath it is told of the layer it touches, and not of the next as
      // well.
      String lack = one.upper() + one.ruling().wording();
      boolean again = one.ruling().answer() == Answer.ONLY_WITH && !told.add(lack);
      if (!asMissing && !again) {
        int at = stack.layers().get(one.place());
        findings.add(finding(one, layers.get(at < 0 ? stack.layers().get(one.upper()) : at)));
      }
    }
    return findings;
  }

  private Finding finding(LayersBeside.Wrong wrong, String label) {
    Derivation because = wrong.ruling().because();
    List<Object> premises = new ArrayList<>(because.premises());
    premises.add(called("upper layer", label, wrong.pair().upper()));
    premises.add(called("lower layer", label, wrong.pair().lower()));
    return new Finding(
        new Derivation(because.rule(), premises),
        wrong.ruling().judgement(),
        wrong.ruling().wording(),
        label);
  }

  private Fact called(String name, String label, String kind) {
    return told(name, label, beside.name(kind));
  }

  /** What each layer is: what it is matched with, or of all that it may be what fits in best. */
  private List<String> kinds(String beneath) {
    List<String> kinds = new ArrayList<>();
    Set<Integer> open = new HashSet<>();
    for (int i = 0; i < layers.size(); i++) {
      StackLayer part = fit.isEmpty() ? null : fit.get().places().get(i).part();
      boolean itself = part != null && fit.get().places().get(i).how() == ProposalMatch.How.IS;
      kinds.add(itself ? part.kind().id() : names.get(i).is().get(0));
      if (!itself && names.get(i).is().size() > 1) {
        open.add(i);
      }
    }
    for (int i : open) {
      int least = Integer.MAX_VALUE;
      String best = kinds.get(i);
      for (String one : names.get(i).is()) {
        kinds.set(i, one);
        int faults = beside.wrong(stack(beneath, kinds).kinds()).size();
        if (faults < least) {
          least = faults;
          best = one;
        }
      }
      kinds.set(i, best);
    }
    return kinds;
  }

  private Places stack(String beneath, List<String> kinds) {
    Places stack = new Places(new ArrayList<>(), new ArrayList<>());
    if (!beneath.isEmpty()) {
      stack.kinds().add(beneath);
      stack.layers().add(-1);
    }
    for (int i = 0; i < kinds.size(); i++) {
      for (String one : byClass.of(kinds.get(i), classes(i))) {
        stack.kinds().add(one);
        stack.layers().add(i);
      }
    }
    return stack;
  }

  /** The tiles, whose joints the grout fills; the uppermost layer where none are listed. */
  private int tiles() {
    for (int i = layers.size() - 1; i >= 0; i--) {
      if (names.get(i).is().stream().anyMatch(id -> beside.works(id).contains(TILE))) {
        return i;
      }
    }
    return layers.size() - 1;
  }

  /** The classes said of a layer; the class of the grout is said of the tiles. */
  private List<String> classes(int i) {
    List<String> classes = new ArrayList<>();
    proposal
        .find(ProposalAssessor.LAYERS + ".class", layers.get(i))
        .filter(StatedFact::known)
        .ifPresent(
            given ->
                classes.addAll(
                    given.value() instanceof Value.Choices choices
                        ? choices.chosen()
                        : List.of(given.text())));
    if (i == tiles()) {
      proposal.find("grout").filter(StatedFact::known).ifPresent(one -> classes.add(one.text()));
    }
    return MaterialClasses.strictest(knowledge, classes);
  }
}
