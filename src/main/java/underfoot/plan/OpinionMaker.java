package underfoot.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underfoot.buildup.ActRuling;
import underfoot.buildup.ByAct;
import underfoot.buildup.Caution;
import underfoot.buildup.Finding;
import underfoot.buildup.Judgement;
import underfoot.buildup.LayerThickness;
import underfoot.buildup.Remedy;
import underfoot.buildup.StackLayer;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.TextParts;
import underfoot.knowledge.Wording;
import underfoot.plan.Advice.RemedyNote;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.ProposalAssessment;
import underfoot.reasoning.ProposalMatch;
import underfoot.scenario.StatedFact;

/** Makes flat data of what the rules found of a proposal, with its texts filled in. */
public final class OpinionMaker {
  /** What is told of a timber floor, by the names of the facts. */
  private static final List<String> STIFFNESS =
      List.of(
          "deck ratio after",
          "joist ratio after",
          "bending use",
          "shear use",
          "bearing use",
          "floor frequency");

  private final ProposalAssessment examined;
  private final Knowledge knowledge;
  private final Phrases phrases;
  private final Justifier justifier;
  private final Sayings sayings;

  private OpinionMaker(ProposalAssessment examined) {
    this.examined = examined;
    this.knowledge = examined.assessment().knowledge();
    this.phrases = new Phrases(knowledge.wording());
    this.justifier =
        new Justifier(examined.assessment().scenario(), examined.proposal(), knowledge);
    this.sayings =
        new Sayings(
            knowledge,
            phrases,
            examined.built().map(BuildUp::facts).orElse(examined.facts()),
            justifier,
            ByAct.of(examined.all(ActRuling.class)));
  }

  /** What is to be said of a proposal. */
  public static Opinion make(ProposalAssessment examined) {
    return new OpinionMaker(examined).opinion();
  }

  private Opinion opinion() {
    List<Opinion.Item> items = items();
    List<Opinion.Layer> layers = new ArrayList<>();
    for (int i = 0; i < examined.layers().size(); i++) {
      layers.add(layer(i, items));
    }
    List<Opinion.Item> whole = new ArrayList<>(items);
    whole.removeIf(item -> isOf(item, examined.layers()));
    Optional<BuildUp> built = examined.built();
    String way = built.map(BuildUp::way).orElse("");
    String best = examined.assessment().chosen().map(BuildUp::way).orElse("");
    return new Opinion(
        examined.assessment().scenario().name(),
        examined.proposal().find("proposal").map(StatedFact::text).orElse(""),
        examined.assessment().verdict(),
        way,
        way.isEmpty() ? "" : phrases.way(way),
        best.isEmpty() ? "" : phrases.way(best),
        !way.isEmpty() && way.equals(best),
        layers,
        whole,
        remedies(),
        DangersTold.of(sayings, examined.all(Caution.class)),
        built.map(one -> AdviceMaker.heights(one, one.facts())),
        built.map(one -> one.stack().mass(knowledge.figures())).orElse(0.0),
        built.map(OpinionMaker::stiffness).orElse(List.of()));
  }

  private Opinion.Layer layer(int i, List<Opinion.Item> items) {
    String label = examined.layers().get(i);
    List<Opinion.Item> own = new ArrayList<>(items);
    own.removeIf(item -> !isOf(item, List.of(label)));
    boolean faulty = own.stream().anyMatch(item -> item.judgement().isFault());
    if (faulty) {
      // A layer that is at fault does not agree as well.
      own.removeIf(item -> item.judgement() == Judgement.AGREES);
    }
    Optional<StackLayer> laid = examined.built().map(one -> one.stack().layers().get(i));
    Optional<StackLayer> asked =
        examined
            .fit()
            .map(ProposalMatch::places)
            .map(all -> all.get(i))
            .map(ProposalMatch.Place::part);
    return new Opinion.Layer(
        i + 1,
        label,
        examined.proposal().find("layers[].kind", label).map(StatedFact::text).orElse(""),
        laid.map(one -> one.kind().id()).orElse(""),
        asked.map(one -> one.kind().name()).orElse(""),
        laid.map(StackLayer::thickness).orElse(LayerThickness.even(0)),
        examined
            .proposal()
            .find("layers[].thickness", label)
            .filter(StatedFact::known)
            .map(StatedFact::text)
            .orElse(""),
        own);
  }

  /** Whether it is about one of these layers; what is missing is about none that is there. */
  private static boolean isOf(Opinion.Item item, List<String> labels) {
    return item.judgement() != Judgement.MISSING && labels.contains(item.layer());
  }

  /** What is found, once each, the worst first and then in the order of the wording file. */
  private List<Opinion.Item> items() {
    Map<String, List<Finding>> same = new LinkedHashMap<>();
    List<Finding> sorted = new ArrayList<>(examined.findings());
    sorted.sort(
        Comparator.comparing(Finding::judgement)
            .thenComparing(one -> knowledge.wording().place(one.wording()))
            .thenComparing(Finding::about)
            .thenComparing(one -> one.because().rule().key()));
    Map<String, Wording.Filled> filled = new LinkedHashMap<>();
    for (Finding one : sorted) {
      Wording.Filled words = fill(one);
      String key = one.about() + '\n' + words.text();
      filled.putIfAbsent(key, words);
      same.computeIfAbsent(key, all -> new ArrayList<>()).add(one);
    }
    List<Opinion.Item> items = new ArrayList<>();
    same.forEach(
        (key, all) -> {
          Finding first = all.get(0);
          TextParts parts = filled.get(key).parts();
          Set<Object> used = new LinkedHashSet<>(filled.get(key).used());
          List<Derivation> because = all.stream().map(Finding::because).toList();
          items.add(
              new Opinion.Item(
                  first.judgement(),
                  first.about(),
                  first.wording(),
                  parts.part(TextParts.TEXT),
                  parts.part("consequence"),
                  parts.part("remedy"),
                  justifier.of(because, List.copyOf(used))));
        });
    return items;
  }

  private Wording.Filled fill(Finding one) {
    Facts facts = Facts.over(examined.facts());
    // What the rule matched comes before what else is held of the same name.
    facts.addAll(one.because().premises());
    return knowledge.wording().fill(one.wording(), knowledge.figures(), facts, one.about());
  }

  /** What has to be put right first, for the floor and for the proposal as it is. */
  private List<RemedyNote> remedies() {
    List<Remedy> all = examined.all(Remedy.class);
    Map<String, RemedyNote> notes = new LinkedHashMap<>();
    for (Remedy one : all) {
      Wording.Filled words = sayings.fillRemedy(one.wording(), one.about());
      String id = Sayings.id(one.wording(), one.about());
      notes.putIfAbsent(
          id,
          new RemedyNote(
              id,
              one.hold(),
              RemedyOrder.undated(knowledge, one.wording(), one.hold()),
              words.title(),
              words.parts(),
              one.about(),
              justifier.of(List.of(one.because()), words.used())));
    }
    return new RemedyOrder(knowledge, sayings.acts()).sorted(List.copyOf(notes.values()));
  }

  private static List<Opinion.Stiffness> stiffness(BuildUp built) {
    List<Opinion.Stiffness> all = new ArrayList<>();
    for (String name : STIFFNESS) {
      Fact fact = built.facts().find(name);
      if (fact != null && fact.hasNumber()) {
        all.add(new Opinion.Stiffness(name, fact.number(), fact.text()));
      }
    }
    return all;
  }
}
