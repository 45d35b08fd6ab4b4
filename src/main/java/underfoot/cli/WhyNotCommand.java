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
import underfoot.plan.Refusal;
import underfoot.report.JsonReport;
import underfoot.report.TextPage;
import underfoot.report.WhyNotReport;

/** {@code why-not SCENARIO MATERIAL}: why something else is not what is recommended. */
@Command(
    name = "why-not",
    mixinStandardHelpOptions = true,
    description = {
      "Why something else is not recommended.",
      "Of a material or a way of building it tells the nearest build-up with it, the rule that",
      "refused it, the fact it failed on, and the smallest change that would let it in."
    })
final class WhyNotCommand implements Callable<Integer> {
  private final Environment around;
  @Spec private CommandSpec spec;
  @Mixin private RuleBaseOption rules;

  @Parameters(
      index = "0",
      paramLabel = "SCENARIO",
      description = "The scenario file, or - for standard input.")
  private String scenario;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "MATERIAL",
      description = "A material, a layer or a way of building, in the words of the trade.")
  private String[] material;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  @Option(names = "--width", paramLabel = "N", description = "Columns of the text.")
  private Integer width;

  WhyNotCommand(Environment around) {
    this.around = around;
  }

  @Override
  public Integer call() throws UserError {
    PrintWriter out = spec.commandLine().getOut();
    TextPage page = around.page(width);
    CommandContext bench = new CommandContext(rules.folder(), around, spec.commandLine().getErr());
    Refusal refusal = bench.whyNot(scenario, around.in(), String.join(" ", material));
    if (json) {
      JsonReport.write(refusal, out);
      out.println();
    } else {
      WhyNotReport.write(refusal, new Phrases(bench.knowledge().wording()), page);
      out.print(page.text());
    }
    return Exit.FINE;
  }
}
