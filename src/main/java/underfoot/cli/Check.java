package underfoot.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import underfoot.knowledge.Phrases;
import underfoot.plan.Opinion;
import underfoot.report.JsonReport;
import underfoot.report.OpinionText;
import underfoot.report.TextPage;

/** {@code check SCENARIO PROPOSAL}: a build-up somebody has in mind, judged layer by layer. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Judges a build-up you have in mind, layer by layer and as a whole.",
    footer = {
      "",
      "A proposal lists its layers from the bottom up; see scenarios/proposals.",
      "Exit codes: 0 no fault, 5 faults stand, 2 wrong usage, 3 a file has faults, 1 internal"
          + " error."
    })
final class Check implements Callable<Integer> {
  private final Environment around;
  @Spec private CommandSpec spec;
  @Mixin private RuleBaseOption rules;

  @Parameters(
      index = "0",
      paramLabel = "SCENARIO",
      description = "The scenario file, or - for standard input.")
  private String scenario;

  @Parameters(
      index = "1",
      paramLabel = "PROPOSAL",
      description = "The proposal file, or - for standard input.")
  private String proposal;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  @Option(names = "--width", paramLabel = "N", description = "Columns of the text.")
  private Integer width;

  Check(Environment around) {
    this.around = around;
  }

  @Override
  public Integer call() throws UserError {
    PrintWriter out = spec.commandLine().getOut();
    TextPage page = around.page(width);
    CommandContext bench = new CommandContext(rules.folder(), around, spec.commandLine().getErr());
    if (scenario.equals("-") && proposal.equals("-")) {
      throw UserError.usage("only one of scenario and proposal can come from standard input");
    }
    Opinion opinion = bench.check(scenario, proposal, around.in());
    if (json) {
      JsonReport.write(opinion, Version.of(), bench.ruleBaseId(), out);
      out.println();
    } else {
      OpinionText.write(opinion, new Phrases(bench.knowledge().wording()), page);
      out.print(page.text());
    }
    return opinion.faults() == 0 ? Exit.FINE : Exit.FAULTS_FOUND;
  }
}
