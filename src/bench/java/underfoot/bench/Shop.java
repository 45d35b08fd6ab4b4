package underfoot.bench;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.KnowledgeFault;
import underfoot.plan.Advice;
import underfoot.plan.AdviceMaker;
import underfoot.plan.ChangeNotes;
import underfoot.plan.Consequences;
import underfoot.plan.Justifier;
import underfoot.plan.Planner;
import underfoot.reasoning.Advisor;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.LeastChange;
import underfoot.reasoning.RuleBase;
import underfoot.reasoning.WhatIf;
import underfoot.report.JsonReport;
import underfoot.scenario.FactBook;
import underfoot.scenario.RuleFiles;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.ScenarioReader;

/** All that the benchmarks need of the program, loaded once. */
final class Shop {
  private static final Path SCENARIOS = Path.of("scenarios");

  final FactBook facts;
  final Knowledge knowledge;
  final RuleBase rules;

  Shop() {
    try {
      facts = FactBook.load(RuleFiles.shipped());
      knowledge = Knowledge.load(RuleFiles.shipped(), facts, "uk");
      rules = RuleBase.shipped();
    } catch (ScenarioFaults | KnowledgeFault e) {
      throw new IllegalStateException(e);
    }
  }

  /** The texts of the example scenarios, in the order of their names. */
  static List<String> examples() {
    try (Stream<Path> files = Files.list(SCENARIOS)) {
      return files
          .filter(file -> file.toString().endsWith(".yaml"))
          .sorted()
          .map(Shop::text)
          .filter(text -> !text.contains("price book:")) // price books are named by path
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Scenario read(String text) {
    try {
      return new ScenarioReader(facts).read("benchmark", text.getBytes(StandardCharsets.UTF_8));
    } catch (ScenarioFaults e) {
      throw new IllegalStateException(e.text(), e);
    }
  }

  /** A planner that has set nothing out yet. */
  Planner planner() {
    return new Planner(knowledge.prices());
  }

  /** An advisor for one floor of many, as {@code batch} has it. */
  Advisor advisor(Planner planner) {
    return new Advisor(rules, knowledge, planner).onOneCore();
  }

  /** A floor with all its ways, workings, costs and reasons; nothing is tried otherwise. */
  Advice advice(Scenario scenario, Planner planner) {
    Assessment assessment = advisor(planner).advise(scenario);
    Consequences consequences = planner.of(assessment, new Justifier(scenario, knowledge));
    return AdviceMaker.make(assessment, WhatIf.assumed(assessment), consequences);
  }

  /** The same with what to find out first and the least change. */
  Advice adviceWithTrials(Scenario scenario, Planner planner) {
    Advisor advisor = advisor(planner).remembering();
    Assessment assessment = advisor.advise(scenario);
    WhatIf whatIf = new WhatIf(advisor);
    Consequences consequences = planner.of(assessment, new Justifier(scenario, knowledge));
    Advice advice =
        AdviceMaker.make(
            assessment,
            whatIf.of(assessment),
            whatIf.unsaid(assessment),
            ChangeNotes.add(consequences, knowledge, LeastChange.of(advisor, assessment), planner));
    return advice;
  }

  /** The advice as the line that {@code batch} writes. */
  static String line(Advice advice) {
    StringWriter out = new StringWriter();
    JsonReport.line("benchmark", advice, "benchmark", "benchmark", out);
    return out.toString();
  }
}
