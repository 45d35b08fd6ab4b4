package underfoot.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import underfoot.plan.Advice;
import underfoot.plan.Advice.Decision;
import underfoot.report.Detail;
import underfoot.report.TextPage;
import underfoot.report.WhyPage;
import underfoot.report.WhyReport;

/** {@code why SCENARIO [ID]}: the chain from a decision down to facts and figures. */
@Command(
    name = "why",
    mixinStandardHelpOptions = true,
    description = {
      "The full chain from facts and figures to a decision.",
      "Without an id, of every decision."
    })
final class Why implements Callable<Integer> {
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
      arity = "0..1",
      paramLabel = "ID",
      description = "The id of a layer, caution or other decision, or of a rule.")
  private String id;

  @Option(
      names = "--detail",
      paramLabel = "HOW MUCH",
      description = "short (as without an id), normal (as with one) or full.")
  private Detail detail;

  @Option(
      names = "--html",
      paramLabel = "FILE",
      description = "Write a page with a drawing of each chain, always in full.")
  private Path html;

  @Option(names = "--width", paramLabel = "N", description = "Columns of the text.")
  private Integer width;

  Why(Environment around) {
    this.around = around;
  }

  @Override
  public Integer call() throws UserError {
    TextPage page = around.page(width);
    CommandContext bench = new CommandContext(rules.folder(), around, spec.commandLine().getErr());
    Advice advice = bench.advise(scenario, around.in());
    List<Decision> decisions = advice.decisions();
    if (id != null) {
      decisions = WhyReport.find(advice, id);
      if (decisions.isEmpty()) {
        throw UserError.usage(
            "This advice decided nothing called '"
                + Main.cut(id)
                + "'; nearest: "
                + String.join(", ", WhyReport.nearest(advice, id)));
      }
    }
    if (html != null) {
      AtomicFile.write(html, WhyPage.html(advice, decisions, bench.knowledge()));
      return Exit.FINE;
    }
    Detail told = detail != null ? detail : id == null ? Detail.SHORT : Detail.NORMAL;
    WhyReport.write(decisions, bench.knowledge(), told, page);
    spec.commandLine().getOut().print(page.text());
    return Exit.FINE;
  }
}
