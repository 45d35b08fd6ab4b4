package underfoot.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import underfoot.plan.Advice;
import underfoot.plan.Advice.Decision;
import underfoot.report.Detail;
import underfoot.report.TextPage;
import underfoot.report.WhyPage;
import underfoot.report.WhyReport;
import underfoot.scenario.Scenario;

/** {@code why SCENARIO [ID]}: the chain from a decision down to facts and figures. */
@Command(
    name = "why",
    mixinStandardHelpOptions = true,
    description = {
      "The full chain from facts and figures to a decision.",
      "Without an id, of every decision."
    })
final class Why extends FloorCommand {
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

  @Mixin private Options.HowMuch detail;
  @Mixin private Options.Page html;

  Why(Environment around) {
    super(around);
  }

  @Override
  public Integer call() throws UserError {
    TextPage page = page();
    CommandContext context = context();
    Scenario read = context.scenario(scenario);
    OutputFile drawn = html.output(context);
    Advice advice = context.advise(read);
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
    if (drawn != null) {
      drawn.write(WhyPage.html(advice, decisions, context.knowledge()), out());
      return Exit.FINE;
    }
    Detail told = detail.or(id == null ? Detail.SHORT : Detail.NORMAL);
    WhyReport.write(decisions, context.knowledge(), told, page);
    out().page(page);
    return Exit.FINE;
  }
}
