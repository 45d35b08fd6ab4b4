package underfoot.measure;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Kinds;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.KnowledgeFault;
import underfoot.scenario.FactBook;
import underfoot.scenario.RuleFiles;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.ScenarioReader;
import underfoot.scenario.StatedFact;

/** Scenarios for tests, and what the measures make of them. */
public final class Measured {
  private static final Knowledge KNOWLEDGE = load();

  private Measured() {}

  private static Knowledge load() {
    try {
      RuleFiles files = RuleFiles.shipped();
      return Knowledge.load(files, FactBook.load(files), "uk");
    } catch (ScenarioFaults | KnowledgeFault e) {
      throw new IllegalStateException(e);
    }
  }

  /** The knowledge base as shipped. */
  public static Knowledge knowledge() {
    return KNOWLEDGE;
  }

  /** A scenario from lines that are added to the three it must have. */
  public static Scenario scenario(String... lines) {
    String text = String.join("\n", lines) + "\n";
    StringBuilder whole = new StringBuilder("scenario: A test\npractice: uk\n");
    if (!text.contains("\nroom:") && !text.startsWith("room:")) {
      whole.append("room: {use: living area}\n");
    }
    if (!text.contains("subfloor:")) {
      whole.append("subfloor: {deck: concrete slab}\n");
    }
    if (!text.contains("\ntile:") && !text.startsWith("tile:")) {
      whole.append("tile: {material: porcelain, length: 300 mm, width: 300 mm, thickness: 9 mm}\n");
    }
    whole.append(text);
    try {
      return new ScenarioReader(KNOWLEDGE.facts())
          .read("test.yaml", whole.toString().getBytes(StandardCharsets.UTF_8));
    } catch (ScenarioFaults e) {
      throw new IllegalArgumentException(e.getMessage() + "\n" + whole, e);
    }
  }

  /** The facts that a scenario states. */
  public static Facts stated(Scenario scenario) {
    Facts facts = new Facts();
    for (StatedFact given : scenario.givens()) {
      if (given.known() && !given.called().isEmpty()) {
        facts.add(
            Fact.stated(given.key(), given.called(), given.about(), given.text(), given.number()));
      }
    }
    return facts;
  }

  /**
   * What is held of a scenario once everything is measured.
   *
   * @param scenario the floor
   * @param concluded further facts in words, each as {@code name: value}
   */
  public static Facts of(Scenario scenario, String... concluded) {
    Facts facts = stated(scenario);
    List<Fact> more = new ArrayList<>();
    for (String one : concluded) {
      String[] parts = one.split(": ", 2);
      more.add(Fact.stated(parts[0], parts[0], "", parts[1], Double.NaN));
    }
    Measures.of(scenario, new Surveys(), KNOWLEDGE.figures(), facts);
    facts.addAll(more);
    addWhatRowsSay(facts);
    Measures.of(scenario, new Surveys(), KNOWLEDGE.figures(), facts);
    return facts;
  }

  /** Adds what the rows of kinds say of the facts held, as the rules do. */
  public static void addWhatRowsSay(Facts facts) {
    List.copyOf(facts.all()).forEach(fact -> addWhatItsRowSays(fact, facts));
  }

  /** What the row of a fact's kind says of it, and what the rows of that say, as rules would. */
  private static void addWhatItsRowSays(Fact kind, Facts facts) {
    for (Kinds.Said said : KNOWLEDGE.kinds().of(kind.name(), kind.text())) {
      if (facts.find(said.called(), kind.about()) == null) {
        boolean isFigure = said.sort() == Kinds.Sort.FIGURE;
        Figure figure = isFigure ? KNOWLEDGE.figures().get(said.value()) : null;
        String text = isFigure ? figure.text() : said.value();
        double number = isFigure ? figure.number() : Double.NaN;
        Fact fact = Fact.stated(said.called(), said.called(), kind.about(), text, number);
        facts.add(fact);
        addWhatItsRowSays(fact, facts);
      }
    }
  }
}
