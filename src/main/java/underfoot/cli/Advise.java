package underfoot.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Phrases;
import underfoot.plan.Advice;
import underfoot.report.Detail;
import underfoot.report.JsonReport;
import underfoot.report.TextPage;
import underfoot.report.TextReport;
import underfoot.scenario.ScenarioSchema;

/** {@code advise SCENARIO}: what to put under the tiles, layer by layer, and why. */
@Command(
    name = "advise",
    mixinStandardHelpOptions = true,
    description = "What to put under the tiles on a floor, layer by layer, and why.",
    footer = {
      "",
      "Exit codes: 0 it can be built (or once put right), 2 wrong usage, 3 the scenario has faults,",
      "4 outside guidance or stop, 1 internal error."
    })
final class Advise implements Callable<Integer> {
  private final Environment around;
  @Spec private CommandSpec spec;
  @Mixin private RuleBaseOption rules;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "SCENARIO",
      description = "The scenario file, or - for standard input.")
  private String scenario;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  @Option(
      names = "--html",
      paramLabel = "FILE",
      description = "Write one page with drawings, for browsers and paper; - for standard output.")
  private String html;

  @Option(names = "--pdf", paramLabel = "FILE", description = "Write the same page as a PDF.")
  private String pdf;

  @Option(
      names = "--schema",
      description = "Print the JSON Schema of scenario files, and no advice.")
  private boolean schema;

  @Option(
      names = "--detail",
      paramLabel = "HOW MUCH",
      description = "short, normal (as without it) or full; dangers are in each.")
  private Detail detail = Detail.NORMAL;

  @Option(names = "--width", paramLabel = "N", description = "Columns of the text.")
  private Integer width;

  Advise(Environment around) {
    this.around = around;
  }

  @Override
  public Integer call() throws UserError {
    PrintWriter out = spec.commandLine().getOut();
    CommandContext bench = new CommandContext(rules.folder(), around, spec.commandLine().getErr());
    if (schema) {
      out.print(ScenarioSchema.of(bench.facts()));
      return Exit.FINE;
    }
    if (scenario == null) {
      throw UserError.usage("advise needs a scenario file, or - for standard input");
    }
    TextPage page = around.page(width);
    ReportFiles pages = new ReportFiles(html, pdf, json);
    Advice advice = bench.advise(scenario, around.in());
    if (pages.wanted()) {
      pages.write(advice, new Phrases(bench.knowledge().wording()), bench.ruleBaseId(), out);
    }
    if (pages.instead()) {
      return exit(advice.verdict());
    }
    if (json) {
      JsonReport.write(advice, Version.of(), bench.ruleBaseId(), out);
      out.println();
    } else {
      TextReport.write(advice, new Phrases(bench.knowledge().wording()), detail, page);
      out.print(page.text());
    }
    return exit(advice.verdict());
  }

  /** How a command ends that gave such an advice. */
  static int exit(Verdict verdict) {
    return switch (verdict) {
      case SOUND, SOUND_ONCE_PUT_RIGHT -> Exit.FINE;
      case OUTSIDE_GUIDANCE, STOP -> Exit.NOT_TO_BE_BUILT;
    };
  }
}
