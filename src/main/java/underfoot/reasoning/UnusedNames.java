package underfoot.reasoning;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underfoot.knowledge.Disagreement;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.KnowledgeFault;
import underfoot.knowledge.Listed;
import underfoot.knowledge.MaterialItem;
import underfoot.knowledge.Source;
import underfoot.language.Effect;
import underfoot.language.Effect.Place;
import underfoot.language.Effect.Verb;
import underfoot.language.Rule;
import underfoot.language.RuleFaults;
import underfoot.scenario.RuleFiles;

/**
 * Figures, texts, layers, steps, sources and prices that nobody uses, things without a price, and
 * layers whose order nothing tells.
 */
final class UnusedNames {
  private static final Pattern WORD = Pattern.compile("[A-Za-z0-9]+(?:-[A-Za-z0-9]+)*");

  private final RuleFiles files;
  private final Knowledge knowledge;
  private final List<Rule> rules;
  private final Map<String, Set<String>> formulas;
  private final List<RuleFaults.Fault> faults = new ArrayList<>();

  /**
   * @param formulas what formulas read by name, by the sort of name
   */
  UnusedNames(
      RuleFiles files, Knowledge knowledge, List<Rule> rules, Map<String, Set<String>> formulas) {
    this.files = files;
    this.knowledge = knowledge;
    this.rules = rules;
    this.formulas = formulas;
  }

  List<RuleFaults.Fault> faults() throws KnowledgeFault {
    neverUsed();
    shopping();
    return faults;
  }

  private void add(String file, int line, String what) {
    faults.add(new RuleFaults.Fault(file, line, what));
  }

  private void neverUsed() throws KnowledgeFault {
    Set<String> used = new HashSet<>();
    rules.forEach(rule -> words(rule, used));
    files.list("kinds", ".yaml").forEach(path -> words(path, used));
    for (String folder : List.of("wording", "layers", "proposal")) {
      for (String path : files.list(folder, ".yaml")) {
        words(path, used);
      }
    }
    for (String path : files.list("", ".yaml")) {
      if (!path.equals("sources.yaml")) {
        words(path, used);
      }
    }
    for (Figure figure : knowledge.figures().all()) {
      Matcher rivals = WORD.matcher(figure.note()); // a rival value is kept where a note names it
      while (rivals.find()) {
        used.add(rivals.group());
      }
    }
    for (Listed figure : entries("figures")) {
      boolean price = figure.file().endsWith("price-book.yaml");
      if (!price && !read("figures", figure.name(), used)) {
        add(
            figure.file(),
            figure.line(),
            "no rule, wording or formula reads the figure '"
                + figure.name()
                + "'; use it or take it out");
      }
    }
    Set<String> named = new HashSet<>();
    rules.forEach(rule -> words(rule, named));
    files.list("kinds", ".yaml").forEach(path -> words(path, named));
    words("changes.yaml", named);
    unused("wording", "wordings", "no rule says the text '", named);
    if (files.list("", ".yaml").contains("kinds.yaml")) {
      words("kinds.yaml", named);
      unused("tables/steps.yaml", "steps", "no rule allows time for the step '", named);
    }
    Set<String> laid = new HashSet<>(named);
    words("kinds.yaml", laid);
    for (Listed layer : entries("layers")) {
      if (layer.list().isEmpty() && !read("layers", layer.name(), laid)) {
        add(
            layer.file(),
            layer.line(),
            "no rule lays the layer '" + layer.name() + "'; lay it or take it out");
      }
    }
    Set<String> together = new HashSet<>();
    for (Rule rule : rules) {
      for (Effect effect : rule.effects()) {
        if (Set.of(Verb.LAY, Verb.LAY_AS, Verb.LAY_MORE).contains(effect.verb())) {
          together.add(effect.word(Place.LAYER));
        }
      }
    }
    for (KnowledgeFault untold : knowledge.layers().untold(together)) {
      add(untold.file(), untold.line(), untold.what());
    }
    citations();
  }

  private void unused(String where, String sort, String told, Set<String> named)
      throws KnowledgeFault {
    for (Listed entry : entries(where)) {
      if (!read(sort, entry.name(), named)) {
        add(entry.file(), entry.line(), told + entry.name() + "'; use it or take it out");
      }
    }
  }

  private void citations() throws KnowledgeFault {
    Set<String> cited = new HashSet<>(formulas.getOrDefault("sources", Set.of()));
    rules.forEach(rule -> cited.add(Source.key(rule.note().source())));
    knowledge.kinds().citations().forEach(citation -> cited.add(Source.key(citation)));
    for (Disagreement one : knowledge.disagreements()) {
      one.voices().forEach(voice -> cited.add(Source.key(voice.source())));
    }
    for (Figure figure : knowledge.figures().all()) {
      cited.add(Source.key(figure.source()));
    }
    for (Listed source : entries("sources.yaml")) {
      if (!cited.contains(source.name())) {
        add(
            source.file(),
            source.line(),
            "no rule and no figure cites the source '"
                + source.name()
                + "'; cite it or take it out");
      }
    }
  }

  /** Things to buy without a price, and prices of nothing. */
  private void shopping() throws KnowledgeFault {
    Set<String> priced = new TreeSet<>();
    String book = "figures/price-book.yaml";
    if (!files.list("figures", ".yaml").contains(book)) {
      return;
    }
    Set<String> bought = new TreeSet<>(formulas.getOrDefault("prices", Set.of()));
    for (MaterialItem item : knowledge.materials().all()) {
      bought.add(item.item());
    }
    for (Listed price : entries(book)) {
      priced.add(price.name());
      if (!bought.contains(price.name())) {
        add(
            price.file(),
            price.line(),
            "nothing in quantities.yaml is called '"
                + price.name()
                + "'; give it the name it has there or take it out");
      }
    }
    for (Listed item : entries("quantities.yaml")) {
      if (!priced.contains(item.name())) {
        add(
            item.file(),
            item.line(),
            "'" + item.name() + "' has no price in " + book + "; add a line: pack and price");
      }
    }
  }

  private List<Listed> entries(String where) throws KnowledgeFault {
    return where.endsWith(".yaml") && !exists(where) ? List.of() : Listed.in(files, where);
  }

  private boolean exists(String path) {
    int slash = path.lastIndexOf('/');
    return files.list(slash < 0 ? "" : path.substring(0, slash), ".yaml").contains(path);
  }

  private static void words(Rule rule, Set<String> into) {
    for (List<String> lines : List.of(rule.when(), rule.then())) {
      for (String line : lines) {
        Matcher words = WORD.matcher(line);
        while (words.find()) {
          into.add(words.group());
        }
      }
    }
  }

  private void words(String path, Set<String> into) {
    if (path.endsWith(".yaml") && !exists(path)) {
      return;
    }
    Matcher words = WORD.matcher(new String(files.read(path), StandardCharsets.UTF_8));
    while (words.find()) {
      into.add(words.group());
    }
  }

  /** Whether a name stands among those used, or formulas read it by its name or its beginning. */
  private boolean read(String sort, String name, Set<String> used) {
    if (used.contains(name)) {
      return true;
    }
    for (String one : formulas.getOrDefault(sort, Set.of())) {
      if (one.endsWith("-") ? name.startsWith(one) : name.equals(one)) {
        return true;
      }
    }
    return false;
  }
}
