package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.dataformat.yaml.YAMLMapper;
import underfoot.buildup.Conclusion;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.PriceBook;
import underfoot.knowledge.RuleNote;
import underfoot.language.Pass;
import underfoot.language.Rule;
import underfoot.plan.Planner;
import underfoot.plan.Proposals;
import underfoot.scenario.Scenario;

/**
 * Every rule has a floor on which it fires, and a near miss on which it does not. The cases are
 * data: {@code src/test/resources/rule-cases/*.yaml}. A case starts from a floor of {@code
 * src/test/resources/floors} and changes some facts; the near miss changes a few more. A case of a
 * rule that judges proposals also names one of {@code src/test/resources/proposals}.
 *
 * <p>What holds what: that a rule speaks at all, its case; that none of its conditions is missing
 * or wider, the near miss and {@link RuleStaysQuietTest}; what it concludes (layer, class, value,
 * wording, figure), {@code rule-conclusions.txt}, because the golden floors hear only half of the
 * rules; how its reason reads, {@link ReasonsTest}; that reasons reach the reader with their facts,
 * figures and sources, the one golden file that keeps its reasons whole. No list repeats the
 * reasons: one worded anew is read where it is written.
 *
 * <p>When a rule is changed on purpose, {@code -Dreset.rule-conclusions=true} writes the
 * conclusions anew; read the difference before committing it.
 */
class RuleCasesTest {
  private static final Path CASES = Path.of("src/test/resources/rule-cases");
  private static final Path CONCLUSIONS = Path.of("src/test/resources/rule-conclusions.txt");
  private static final Path BOOK = Path.of("rules/figures/price-book.yaml");
  private static final Path PROPOSALS = Path.of("src/test/resources/proposals");

  /** Changes that begin so change the proposal; the others change the floor. */
  static final String OF_PROPOSAL = "proposal ";

  /** The change that takes things out of the price book, such as {@code no-tiles}. */
  private static final String PRICES = "prices";

  /** Fires only where a rule base offers no way for a base: {@link OwnRulesTest} tries it. */
  static final Set<String> IN_OWN_RULES = Set.of("RANK-91");

  /** One case as it stands in its file. */
  record RuleCase(
      String rule,
      String says,
      String from,
      String proposal,
      Map<String, String> fires,
      Map<String, String> miss) {}

  @Test
  void each_rule_fires_on_its_floor_and_concludes_there_what_is_written_down() throws Exception {
    Map<String, String> concluded = new TreeMap<>();
    List<RuleCase> silent = new ArrayList<>();
    for (RuleCase one : cases()) {
      String says = says(Floors.advisor(), one);
      concluded.putIfAbsent(one.rule(), says);
      if (says.isEmpty()) {
        silent.add(one);
      }
    }
    assertThat(silent).as("cases on whose floor their rule does not fire").isEmpty();
    if (Boolean.getBoolean("reset.rule-conclusions")) {
      StringBuilder text = new StringBuilder();
      concluded.forEach((rule, says) -> text.append(rule + ": " + says + '\n'));
      Files.writeString(CONCLUSIONS, text);
    }
    Map<String, String> written = conclusions();
    Map<String, String> otherwise = new TreeMap<>();
    concluded.forEach(
        (rule, says) -> {
          String was = written.remove(rule);
          if (!says.equals(was)) {
            otherwise.put(rule, says + ", and written down is " + was);
          }
        });
    assertThat(otherwise).as("what is concluded otherwise than " + CONCLUSIONS).isEmpty();
    assertThat(written.keySet()).as("rules written down that have no case").isEmpty();
  }

  @TestFactory
  Stream<DynamicTest> no_rule_fires_on_its_near_miss() throws IOException {
    return cases().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.rule() + " does not fire " + one.miss(),
                    () ->
                        assertThat(
                                one.says().isEmpty()
                                    ? speak(Floors.advisor(), one, changes(one, true))
                                    : said(one, changes(one, true)))
                            .as("rules that speak, or what the rule says")
                            .doesNotContain(one.says().isEmpty() ? one.rule() : one.says())));
  }

  @TestFactory
  Stream<DynamicTest> a_rule_that_says_what_a_row_says_says_it_of_that_kind() throws IOException {
    return cases().stream()
        .filter(one -> !one.says().isEmpty())
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.rule() + " says " + one.says(),
                    () -> assertThat(said(one, one.fires())).contains(one.says())));
  }

  /** The facts a rule concludes on the floor of a case, changed, also where another's is held. */
  private static Set<String> said(RuleCase one, Map<String, String> changes) throws Exception {
    Advisor listening = priced(Floors.advisor(), changes).remembering();
    Assessment assessment = listening.advise(floor(one, changes));
    List<Object> all = new ArrayList<>(assessment.facts().all());
    assessment.buildUps().forEach(buildUp -> all.addAll(buildUp.facts().all()));
    all.addAll(listening.rules().concluded());
    Set<String> said = new TreeSet<>();
    for (Object each : all) {
      if (each instanceof Fact fact
          && fact.because() != null
          && fact.because().rule().key().equals(one.rule())) {
        said.add(fact.says());
      }
    }
    return said;
  }

  @Test
  void no_rule_is_without_a_case() throws IOException {
    Set<String> without = new TreeSet<>();
    for (RuleNote note : Floors.advisor().rules().notes()) {
      without.add(note.key());
    }
    for (RuleCase one : cases()) {
      without.remove(one.rule());
    }
    without.removeAll(IN_OWN_RULES);
    for (Rule rule : Floors.advisor().rules().set().of(Pass.NEXT)) {
      without.remove(rule.key()); // asked of two layers and no floor; LayersBesideTest has stacks
    }
    assertThat(without).as("rules without a case in " + CASES).isEmpty();
  }

  @Test
  void no_case_names_a_rule_that_is_not_there() throws IOException {
    Set<String> named = new TreeSet<>();
    for (RuleCase one : cases()) {
      named.add(one.rule());
    }
    for (RuleNote note : Floors.advisor().rules().notes()) {
      named.remove(note.key());
    }
    assertThat(named).as("cases of rules that do not exist").isEmpty();
  }

  /** What a rule concludes on the floor of its case; empty if it does not fire. */
  static String says(Advisor advisor, RuleCase one) throws Exception {
    return one.proposal().isEmpty()
        ? RuleSays.of(one.rule(), priced(advisor, one.fires()).advise(floor(one, one.fires())))
        : RuleSays.of(one.rule(), new ArrayDeque<>(ofProposal(advisor, one, one.fires())));
  }

  /** What each rule is to conclude on the floor of its first case. */
  static Map<String, String> conclusions() throws IOException {
    Map<String, String> written = new TreeMap<>();
    for (String line : Files.readAllLines(CONCLUSIONS)) {
      int colon = line.indexOf(": ");
      written.put(line.substring(0, colon), line.substring(colon + 2));
    }
    return written;
  }

  /** The changes that make a case fire, or miss. */
  static Map<String, String> changes(RuleCase one, boolean missed) {
    Map<String, String> changes = new LinkedHashMap<>(one.fires());
    if (missed) {
      changes.putAll(one.miss());
    }
    return changes;
  }

  /** The rules that have anything to say, be it heeded or not. */
  static Set<String> speak(Advisor advisor, RuleCase one, Map<String, String> changes)
      throws Exception {
    Set<String> rules = new TreeSet<>();
    heard(advisor, one, changes).forEach(voice -> rules.add(voice.rule()));
    return rules;
  }

  /** Who has something to say of a case's floor, or of its proposal. */
  static Set<Voice> heard(Advisor advisor, RuleCase one, Map<String, String> changes)
      throws Exception {
    return one.proposal().isEmpty()
        ? Voice.of(priced(advisor, changes), floor(one, changes))
        : Voice.of(ofProposal(advisor, one, changes));
  }

  /** The same advisor by the shipped prices, less what the changes take out of them. */
  private static Advisor priced(Advisor advisor, Map<String, String> changes) throws Exception {
    String prices = changes.getOrDefault(PRICES, "");
    if (!prices.startsWith("no-")) {
      return advisor;
    }
    String without = prices.substring("no-".length()) + ":";
    List<String> lines = new ArrayList<>(Files.readAllLines(BOOK));
    assertThat(lines.removeIf(line -> line.startsWith(without))).isTrue();
    byte[] book = String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
    Knowledge knowledge = advisor.knowledge();
    return new Advisor(
        advisor.rules(),
        knowledge,
        new Planner(PriceBook.own("prices.yaml", book, knowledge.materials())));
  }

  /** What is found in the proposal of a case, and what else is concluded of it as it is built. */
  private static List<Conclusion> ofProposal(
      Advisor advisor, RuleCase one, Map<String, String> changes) throws Exception {
    ProposalAssessment made =
        Proposals.examine(advisor, floor(one, changes), proposal(one, changes));
    List<Conclusion> all = new ArrayList<>(made.findings());
    made.built().ifPresent(built -> all.addAll(built.concluded()));
    return all;
  }

  /** The floor of a case, changed. */
  static Scenario floor(RuleCase one, Map<String, String> changes) throws Exception {
    Scenario scenario = Floors.read(one.from());
    for (Map.Entry<String, String> change : changes.entrySet()) {
      if (!change.getKey().startsWith(OF_PROPOSAL) && !change.getKey().equals(PRICES)) {
        scenario = Floors.change(scenario, change.getKey(), change.getValue());
      }
    }
    return scenario;
  }

  /** The proposal of a case that judges one, changed. */
  static Scenario proposal(RuleCase one, Map<String, String> changes) throws Exception {
    Scenario proposal = Proposals.read(PROPOSALS.resolve(one.proposal() + ".yaml"));
    for (Map.Entry<String, String> change : changes.entrySet()) {
      if (change.getKey().startsWith(OF_PROPOSAL)) {
        String key = change.getKey().substring(OF_PROPOSAL.length());
        proposal = Floors.change(proposal, key, change.getValue());
      }
    }
    return proposal;
  }

  /** Every case, in the order of files and lines. */
  @SuppressWarnings("unchecked")
  static List<RuleCase> cases() throws IOException {
    List<RuleCase> cases = new ArrayList<>();
    YAMLMapper mapper = new YAMLMapper();
    try (Stream<Path> files = Files.list(CASES)) {
      for (Path file : files.sorted().toList()) {
        Map<String, Map<String, Object>> all = mapper.readValue(file.toFile(), Map.class);
        all.forEach(
            (rule, body) ->
                cases.add(
                    new RuleCase(
                        String.valueOf(body.getOrDefault("rule", rule)),
                        String.valueOf(body.getOrDefault("says", "")),
                        String.valueOf(body.get("from")),
                        String.valueOf(body.getOrDefault("proposal", "")),
                        changes(body.get("fires")),
                        changes(body.get("miss")))));
      }
    }
    return cases;
  }

  private static Map<String, String> changes(Object body) {
    Map<String, String> changes = new LinkedHashMap<>();
    if (body instanceof Map<?, ?> map) {
      map.forEach((key, value) -> changes.put(String.valueOf(key), String.valueOf(value)));
    }
    return changes;
  }
}
