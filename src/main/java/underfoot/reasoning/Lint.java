package underfoot.reasoning;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.KnowledgeFault;
import underfoot.knowledge.Listed;
import underfoot.knowledge.MaterialItem;
import underfoot.scenario.FactBook;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Kind;
import underfoot.scenario.RuleFiles;
import underfoot.scenario.ScenarioFaults;

/**
 * What is wrong with a rule base though it can be used: what is there and never used, what can
 * never happen, what is said twice, and what contradicts. What keeps it from being used is told by
 * {@link RuleCheck}, whose faults come first here.
 *
 * <p>It reads the files alone, without compiling them. What formulas read and give is no rule's to
 * say, and stands in {@code read-by-formulas.yaml}.
 */
public final class Lint {
  private static final String FORMULAS = "read-by-formulas.yaml";
  private static final Pattern WORD = Pattern.compile("[A-Za-z0-9]+(?:-[A-Za-z0-9]+)*");
  private static final Pattern ONE =
      Pattern.compile(
          "(not |exists )?(?:(\\$\\w+) : )?(\\w+)\\( ([^()]*(?:\\([^()]*\\)[^()]*)*)\\)");
  private static final Pattern SAYS = Pattern.compile("says == \"([^\":]+): ([^\"]*)\"");
  private static final Pattern NAME = Pattern.compile("\\bname == \"([^\"]*)\"");
  private static final Pattern TEXT = Pattern.compile("\\btext == \"([^\"]*)\"");
  private static final Pattern CONCLUDES =
      Pattern.compile(
          "draft\\.(assume|conclude|assumeAs|concludeAs)\\( \"([^\"]*)\", [^,]+, \"([^\"]*)\"");
  private static final Pattern OFFERS = Pattern.compile("draft\\.offer\\( \"([^\"]*)\"");
  private static final Pattern GRADES =
      Pattern.compile("draft\\.grade\\( \"([^\"]*)\", \"([^\"]*)\"");
  private static final Pattern UNLIKE = Pattern.compile("\\btext (?:!=|not in \\() (\"[^)]*\")");
  private static final Pattern AMONG = Pattern.compile("\\btext in \\( ([^)]*) \\)");
  private static final Pattern EXCEPT =
      Pattern.compile("not Conclusion\\( rule == \"([^\"]*)\" \\)");

  private final RuleFiles files;
  private final Knowledge knowledge;
  private final List<RuleFaults.Fault> faults = new ArrayList<>();
  private final List<RuleText> rules;
  private final Vocabulary vocabulary;
  private final Map<RuleText, List<String>> conditions = new LinkedHashMap<>();
  private final Map<RuleText, List<String>> conclusions = new LinkedHashMap<>();
  private final Map<String, Set<String>> formulas = new HashMap<>();
  private final Map<String, Map<String, Set<String>>> allowedBefore = new HashMap<>();

  private Lint(RuleFiles files, Knowledge knowledge) throws RuleFaults, KnowledgeFault {
    this.files = files;
    this.knowledge = knowledge;
    this.rules = RuleText.readAll(files);
    this.vocabulary = Vocabulary.read(files, new ArrayList<>());
    if (files.list("", ".yaml").contains(FORMULAS)) {
      for (Listed listed : Listed.in(files, FORMULAS)) {
        formulas.put(listed.name(), new TreeSet<>(listed.list()));
      }
    }
    for (RuleText rule : rules) {
      conditions.put(rule, rule.when().stream().map(line -> stands(line, true)).toList());
      conclusions.put(rule, rule.then().stream().map(line -> stands(line, false)).toList());
    }
  }

  /**
   * All that is wrong, each with file, line and how to mend it.
   *
   * @param files the rule base
   * @param knowledge what was read from the same place
   * @throws RuleFaults if the rule files cannot be read at all
   * @throws KnowledgeFault if a file of the knowledge cannot be read
   */
  public static List<RuleFaults.Fault> faults(RuleFiles files, Knowledge knowledge)
      throws RuleFaults, KnowledgeFault {
    Lint lint = new Lint(files, knowledge);
    lint.faults.addAll(RuleCheck.faults(files, knowledge));
    lint.sentences();
    lint.neverFiring();
    lint.insideAnother();
    lint.contradicting();
    lint.grades();
    lint.neverUsed();
    lint.shopping();
    return List.copyOf(lint.faults);
  }

  private String stands(String line, boolean condition) {
    return (condition ? vocabulary.condition(line) : vocabulary.consequence(line))
        .map(Vocabulary.Said::stands)
        .orElse(line);
  }

  private void add(String file, int line, String what) {
    faults.add(new RuleFaults.Fault(file, line, what));
  }

  // --- sentences

  private void sentences() {
    Set<Vocabulary.Sentence> said = new HashSet<>();
    for (RuleText rule : rules) {
      rule.when().forEach(l -> vocabulary.condition(l).ifPresent(s -> said.add(s.sentence())));
      rule.then().forEach(l -> vocabulary.consequence(l).ifPresent(s -> said.add(s.sentence())));
    }
    for (List<Vocabulary.Sentence> all :
        List.of(vocabulary.conditions(), vocabulary.consequences())) {
      Map<String, Vocabulary.Sentence> byWords = new HashMap<>();
      for (Vocabulary.Sentence sentence : all) {
        Vocabulary.Sentence other =
            byWords.putIfAbsent(sentence.pattern().pattern().replaceAll("<\\w+>", "<>"), sentence);
        if (other != null) {
          add(
              sentence.file(),
              sentence.line(),
              "the sentence '"
                  + sentence.said()
                  + "' is ambiguous: "
                  + other.file()
                  + ":"
                  + other.line()
                  + " says the same; word one of them otherwise");
        } else if (!said.contains(sentence)) {
          add(
              sentence.file(),
              sentence.line(),
              "no rule says '" + sentence.said() + "'; take the sentence out");
        }
      }
    }
  }

  // --- rules that never fire

  private void neverFiring() {
    Map<String, Set<String>> values = new HashMap<>(); // of facts whose values are all known
    Set<String> open = new HashSet<>(formulas.getOrDefault("facts", Set.of()));
    List<FactDefinition> stated = new ArrayList<>(knowledge.facts().definitions());
    try {
      stated.addAll(FactBook.ofProposals(files).definitions());
    } catch (ScenarioFaults noProposals) {
      add("proposal", 0, noProposals.text().strip());
    }
    for (FactDefinition fact : stated) {
      Set<String> of = values.computeIfAbsent(fact.called(), name -> new TreeSet<>());
      if (fact.kind() == Kind.YES_NO) {
        of.addAll(List.of("yes", "no"));
      } else if (fact.kind() == Kind.CHOICE || fact.kind() == Kind.CHOICES) {
        of.addAll(fact.of());
      } else {
        open.add(fact.called());
      }
    }
    for (RuleText rule : rules) {
      for (String line : conclusions.get(rule)) {
        Matcher concludes = CONCLUDES.matcher(line);
        Matcher offers = OFFERS.matcher(line);
        if (offers.find()) {
          values.computeIfAbsent("build-up", name -> new TreeSet<>()).add(offers.group(1));
        } else if (concludes.find()) {
          Set<String> of = values.computeIfAbsent(concludes.group(2), name -> new TreeSet<>());
          if (concludes.group(1).endsWith("As")) {
            open.add(concludes.group(2));
          } else {
            of.add(concludes.group(3));
          }
        }
      }
    }
    for (RuleText rule : rules) {
      for (int i = 0; i < rule.when().size(); i++) {
        Matcher one = ONE.matcher(conditions.get(rule).get(i));
        while (one.find()) {
          if (one.group(3).equals("Fact") && !"not ".equals(one.group(1))) {
            possible(rule, rule.when().get(i), one.group(4), values, open);
          }
        }
      }
    }
  }

  private void possible(
      RuleText rule,
      String line,
      String constraints,
      Map<String, Set<String>> values,
      Set<String> open) {
    Matcher says = SAYS.matcher(constraints);
    Matcher named = NAME.matcher(constraints);
    boolean whole = says.find();
    if (!whole && !named.find()) {
      return;
    }
    String name = whole ? says.group(1) : named.group(1);
    if (open.contains(name)) {
      return;
    }
    Set<String> of = values.get(name);
    String id = rule.note().id();
    if (of == null) {
      add(
          rule.file(),
          rule.line(),
          id
              + " never fires: nobody can state or conclude the "
              + name
              + " that '"
              + line
              + "' asks for; conclude it in a rule, define it in facts, or take the rule out");
      return;
    }
    Matcher text = TEXT.matcher(constraints);
    String value = whole ? says.group(2) : text.find() ? text.group(1) : null;
    if (value != null && !of.contains(value)) {
      add(
          rule.file(),
          rule.line(),
          id
              + " never fires: the "
              + name
              + " is never '"
              + value
              + "', only "
              + String.join(", ", of)
              + "; correct '"
              + line
              + "' or take the rule out");
    }
  }

  // --- rules that say what another says already

  private void insideAnother() {
    Map<String, List<RuleText>> byConclusion = new LinkedHashMap<>();
    for (RuleText rule : rules) {
      byConclusion
          .computeIfAbsent(rule.rulePackage() + conclusions.get(rule), key -> new ArrayList<>())
          .add(rule);
    }
    for (List<RuleText> same : byConclusion.values()) {
      for (RuleText inner : same) {
        for (RuleText outer : same) {
          Set<String> all = new HashSet<>(conditions.get(inner));
          Set<String> some = new HashSet<>(conditions.get(outer));
          boolean later = rules.indexOf(inner) > rules.indexOf(outer);
          if (inner != outer && all.containsAll(some) && (all.size() > some.size() || later)) {
            add(
                inner.file(),
                inner.line(),
                inner.note().id()
                    + " adds nothing: "
                    + outer.note().id()
                    + " ("
                    + outer.file()
                    + ":"
                    + outer.line()
                    + ") concludes the same wherever it fires; take one of them out");
          }
        }
      }
    }
  }

  // --- rules that demand different things

  private void contradicting() {
    Map<String, List<RuleText>> byDemand = new TreeMap<>();
    Map<RuleText, String> demanded = new HashMap<>();
    for (RuleText rule : rules) {
      for (String line : conclusions.get(rule)) {
        Matcher concludes = CONCLUDES.matcher(line);
        if (concludes.find() && concludes.group(1).startsWith("assume")) {
          demanded.put(rule, concludes.group(3));
          byDemand
              .computeIfAbsent("assumed " + concludes.group(2), k -> new ArrayList<>())
              .add(rule);
        }
      }
    }
    byDemand.forEach(
        (what, all) -> {
          for (int i = 0; i < all.size(); i++) {
            for (int j = i + 1; j < all.size(); j++) {
              if (!demanded.get(all.get(i)).equals(demanded.get(all.get(j)))
                  && !exclusive(all.get(i), all.get(j))) {
                contradiction(what, all.get(i), all.get(j), demanded);
              }
            }
          }
        });
  }

  private void contradiction(
      String what, RuleText one, RuleText other, Map<RuleText, String> demanded) {
    add(
        other.file(),
        other.line(),
        other.note().id()
            + " and "
            + one.note().id()
            + " ("
            + one.file()
            + ":"
            + one.line()
            + ") may both fire and demand different things, the "
            + what
            + " being "
            + demanded.get(other)
            + " and "
            + demanded.get(one)
            + "; name the exception in one of them: except when … holds");
  }

  /** Whether two rules cannot both hold, as far as their own conditions tell. */
  private boolean exclusive(RuleText one, RuleText other) {
    if (excepts(one, other) || excepts(other, one)) {
      return true;
    }
    Map<String, Set<String>> asked = allowed(one, 0);
    for (Map.Entry<String, Set<String>> far : allowed(other, 0).entrySet()) {
      Set<String> here = asked.get(far.getKey());
      if (here != null && here.stream().noneMatch(far.getValue()::contains)) {
        return true;
      }
    }
    return denies(one, other) || denies(other, one) || compared(one, other) || compared(other, one);
  }

  /** Whether one rule asks that not be, or not be known, which another needs. */
  private boolean denies(RuleText one, RuleText other) {
    Map<String, Set<String>> needs = allowed(other, 0);
    List<String> named = names(other);
    Map<String, Set<String>> denied = new HashMap<>();
    for (String line : conditions.get(one)) {
      Matcher says = SAYS.matcher(line);
      Matcher name = NAME.matcher(line);
      boolean not = line.startsWith("not Fact(");
      if (not && says.find()) {
        denied.computeIfAbsent(says.group(1), n -> new HashSet<>()).add(says.group(2));
      } else if (name.find()) {
        Matcher unlike = UNLIKE.matcher(line);
        if (unlike.find() && !not) {
          denied
              .computeIfAbsent(name.group(1), n -> new HashSet<>())
              .addAll(List.of(unlike.group(1).replace("\"", "").split(", ")));
        } else if (not && !line.contains("text") && named.contains(name.group(1))) {
          return true;
        } else if (line.startsWith("Unknown(")
            && named.contains(name.group(1))
            && !assumed(name.group(1))) {
          return true;
        }
      }
    }
    for (Map.Entry<String, Set<String>> no : denied.entrySet()) {
      Set<String> must = needs.get(no.getKey());
      if (must != null && no.getValue().containsAll(must)) {
        return true;
      }
    }
    return conditions.get(other).stream()
        .map(line -> line.startsWith("exists ") ? line.substring("exists ".length()) : line)
        .anyMatch(line -> conditions.get(one).contains("not " + line));
  }

  /** The names of the facts that a rule needs to be there. */
  private List<String> names(RuleText rule) {
    List<String> names = new ArrayList<>();
    for (String line : conditions.get(rule)) {
      Matcher one = ONE.matcher(line);
      while (one.find()) {
        if (one.group(3).equals("Fact") && !"not ".equals(one.group(1))) {
          Matcher says = SAYS.matcher(one.group(4));
          Matcher name = NAME.matcher(one.group(4));
          names.add(says.find() ? says.group(1) : name.find() ? name.group(1) : "");
        }
      }
    }
    return names;
  }

  private boolean assumed(String name) {
    return conclusions.values().stream()
        .flatMap(List::stream)
        .map(CONCLUDES::matcher)
        .anyMatch(concludes -> concludes.find() && concludes.group(2).equals(name));
  }

  /**
   * The values that facts may have where a rule fires, also those that follow from what it asks for
   * because only some rules conclude that.
   */
  private Map<String, Set<String>> allowed(RuleText rule, int depth) {
    String key = depth + rule.note().id();
    Map<String, Set<String>> known = allowedBefore.get(key);
    if (known == null) {
      known = workOutAllowed(rule, depth);
      allowedBefore.put(key, known);
    }
    return known;
  }

  private Map<String, Set<String>> workOutAllowed(RuleText rule, int depth) {
    Map<String, Set<String>> allowed = new HashMap<>();
    for (String line : conditions.get(rule)) {
      Matcher one = ONE.matcher(line);
      if (!line.startsWith("not ") && one.find() && one.group(3).equals("Fact")) {
        Matcher says = SAYS.matcher(line);
        Matcher named = NAME.matcher(line);
        Matcher among = AMONG.matcher(line);
        String name = null;
        Set<String> values = new HashSet<>();
        if (says.find()) {
          name = says.group(1);
          values.add(says.group(2));
        } else if (named.find() && among.find()) {
          name = named.group(1);
          values.addAll(List.of(among.group(1).replace("\"", "").split(", ")));
        }
        if (name != null) {
          narrow(allowed, name, values);
          if (depth < 3) {
            follow(allowed, name, values, depth);
          }
        }
      }
    }
    return allowed;
  }

  private static void narrow(Map<String, Set<String>> allowed, String name, Set<String> values) {
    allowed.merge(
        name,
        values,
        (had, more) -> {
          Set<String> both = new HashSet<>(had);
          both.retainAll(more);
          return both;
        });
  }

  private void follow(
      Map<String, Set<String>> allowed, String name, Set<String> values, int depth) {
    Map<String, Set<String>> any = null;
    if (knowledge.facts().definitions().stream().anyMatch(f -> f.called().equals(name))) {
      return; // it may be stated
    }
    for (RuleText rule : rules) {
      for (String line : conclusions.get(rule)) {
        Matcher concludes = CONCLUDES.matcher(line);
        if (concludes.find()
            && concludes.group(2).equals(name)
            && values.contains(concludes.group(3))) {
          Map<String, Set<String>> of = allowed(rule, depth + 1);
          if (any == null) {
            any = new HashMap<>(of);
          } else {
            any.keySet().retainAll(of.keySet());
            any.replaceAll(
                (fact, had) -> {
                  Set<String> either = new HashSet<>(had);
                  either.addAll(of.get(fact));
                  return either;
                });
          }
        }
      }
    }
    if (any != null) {
      any.forEach((fact, of) -> narrow(allowed, fact, of));
    }
  }

  /** Classes that stand on no scale cannot be told stricter from laxer where two rules ask. */
  private void grades() {
    Map<String, RuleText> first = new HashMap<>();
    for (RuleText rule : rules) {
      for (String line : conclusions.get(rule)) {
        Matcher asks = GRADES.matcher(line);
        if (asks.find()
            && knowledge.scales().values().stream().noneMatch(s -> s.contains(asks.group(2)))) {
          RuleText other = first.putIfAbsent(asks.group(1), rule);
          if (other != null) {
            contradiction(
                "class of " + asks.group(1),
                other,
                rule,
                Map.of(rule, asks.group(2), other, "another"));
          }
        }
      }
    }
  }

  private static final Pattern COMPARED =
      Pattern.compile("name == \"([^\"]*)\".*name == \"([^\"]*)\", number (<=?|>=?) ");

  private boolean compared(RuleText one, RuleText other) {
    for (String line : conditions.get(one)) {
      Matcher here = COMPARED.matcher(line);
      if (!here.find()) {
        continue;
      }
      for (String far : conditions.get(other)) {
        Matcher there = COMPARED.matcher(far);
        if (there.find()
            && here.group(1).equals(there.group(1))
            && here.group(2).equals(there.group(2))
            && here.group(3).charAt(0) != there.group(3).charAt(0)) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean excepts(RuleText one, RuleText other) {
    return conditions.get(one).stream()
        .map(EXCEPT::matcher)
        .anyMatch(except -> except.find() && except.group(1).equals(other.note().id()));
  }

  // --- what is never used

  private void neverUsed() throws KnowledgeFault {
    Set<String> used = new HashSet<>();
    for (String path : files.list("", ".dslr")) {
      words(path, used);
    }
    for (String folder : List.of("wording", "layers", "proposal")) {
      for (String path : files.list(folder, ".yaml")) {
        words(path, used);
      }
    }
    for (String path : files.list("", ".yaml")) {
      if (!path.equals("sources.yaml") && !path.equals("steps.yaml")) {
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
    for (String path : files.list("", ".dslr")) {
      words(path, named);
    }
    words("changes.yaml", named);
    unused("wording", "wordings", "no rule says the text '", named);
    if (files.list("", ".yaml").contains("steps.yaml")) {
      words("kinds.yaml", named);
      unused("steps.yaml", "steps", "no rule allows time for the step '", named);
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
    rules.forEach(rule -> cited.add(rule.note().source()));
    for (Figure figure : knowledge.figures().all()) {
      cited.add(figure.source());
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
