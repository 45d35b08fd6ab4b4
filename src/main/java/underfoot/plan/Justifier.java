package underfoot.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.buildup.Conclusion;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Figure;
import underfoot.knowledge.From;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Unknown;
import underfoot.scenario.Place;
import underfoot.scenario.Scenario;
import underfoot.scenario.StatedFact;

/**
 * Turns what rules matched into justifications. What two chains have in common is made once and
 * shared. One justifier serves one advice.
 */
public final class Justifier {
  private final Scenario scenario;
  private final Scenario proposal;
  private final Knowledge knowledge;
  private final Map<Derivation, Justification> made = new IdentityHashMap<>();
  private final Map<Fact, Premise> premises = new IdentityHashMap<>();

  /**
   * @param scenario the floor, whose lines are named
   * @param knowledge where sources are looked up
   */
  public Justifier(Scenario scenario, Knowledge knowledge) {
    this(scenario, null, knowledge);
  }

  /**
   * @param scenario the floor, whose lines are named
   * @param proposal the proposal, whose lines are named too; null if there is none
   * @param knowledge where sources are looked up
   */
  public Justifier(Scenario scenario, Scenario proposal, Knowledge knowledge) {
    this.scenario = scenario;
    this.proposal = proposal;
    this.knowledge = knowledge;
  }

  /** The whole chain of a decision. */
  public Justification of(Derivation because) {
    Justification known = made.get(because);
    if (known == null) {
      known = make(because, List.of());
      made.put(because, known);
    }
    return known;
  }

  /** The chains of several decisions, each once. */
  public List<Justification> of(Collection<Derivation> because) {
    return of(because, List.of());
  }

  /**
   * The chains of several decisions that are told in one text.
   *
   * @param because the decisions
   * @param used the facts and figures that the text names besides
   */
  public List<Justification> of(Collection<Derivation> because, List<Object> used) {
    Set<Justification> all = new LinkedHashSet<>();
    for (Derivation one : because) {
      all.add(one.premises().containsAll(used) ? of(one) : make(one, used));
    }
    return Justification.once(all);
  }

  private Justification make(Derivation because, List<Object> used) {
    Set<Premise> facts = new LinkedHashSet<>();
    Set<Figure> figures = new LinkedHashSet<>();
    Set<Justification> restsOn = new LinkedHashSet<>();
    List<Object> all = new ArrayList<>(because.premises());
    all.addAll(used);
    for (Object premise : all) {
      if (premise instanceof Fact fact) {
        Premise stated = premise(fact);
        facts.add(stated);
        gather(stated, figures, restsOn);
      } else if (premise instanceof Unknown unknown) {
        facts.add(premise(unknown));
      } else if (premise instanceof Figure figure) {
        figures.add(figure);
      } else if (premise instanceof Conclusion conclusion) {
        restsOn.add(of(conclusion.because()));
      }
    }
    return new Justification(
        because.rule(),
        knowledge.source(because.rule().source()),
        List.copyOf(facts),
        List.copyOf(figures),
        Justification.once(restsOn));
  }

  private static void gather(Premise premise, Set<Figure> figures, Set<Justification> restsOn) {
    if (premise.because() != null) {
      restsOn.add(premise.because());
    }
    figures.addAll(premise.figures());
    for (Premise used : premise.uses()) {
      gather(used, figures, restsOn);
    }
  }

  private Premise premise(Fact fact) {
    Premise known = premises.get(fact);
    if (known == null) {
      known = make(fact);
      premises.put(fact, known);
    }
    return known;
  }

  private Premise make(Fact fact) {
    List<Premise> uses = new ArrayList<>();
    List<Figure> figures = new ArrayList<>();
    for (Object used : fact.uses()) {
      if (used instanceof Fact other) {
        uses.add(premise(other));
      } else if (used instanceof Figure figure) {
        figures.add(figure);
      }
    }
    return new Premise(
        Place.named(fact.key(), fact.about()),
        fact.text(),
        fact.from(),
        line(fact),
        fact.how(),
        uses,
        figures,
        fact.because() == null ? null : of(fact.because()));
  }

  private Premise premise(Unknown unknown) {
    return new Premise(
        Place.named(unknown.key(), unknown.about()),
        Premise.UNKNOWN,
        From.SCENARIO,
        line(unknown.key(), unknown.about()),
        "",
        List.of(),
        List.of(),
        null);
  }

  private int line(Fact fact) {
    return switch (fact.from()) {
      case SCENARIO -> line(fact.key(), fact.about());
      case PROPOSAL -> proposal.find(fact.key(), fact.about()).map(StatedFact::line).orElse(0);
      default -> 0;
    };
  }

  private int line(String key, String about) {
    return scenario.find(key, about).map(StatedFact::line).orElse(0);
  }
}
