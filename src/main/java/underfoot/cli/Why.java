package underfoot.cli;

import java.util.List;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import underfoot.plan.Advice;
import underfoot.plan.Advice.Decision;
import underfoot.plan.Justification;
import underfoot.report.Detail;
import underfoot.report.JsonReport;
import underfoot.report.TextPage;
import underfoot.report.WhyPage;
import underfoot.report.WhyReport;
import underfoot.report.WhyTalk;
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
  private static final Pattern NOT =
      Pattern.compile("^No | is not | are not | does not | lays no |^except when ");

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

  @Mixin private Options.Json json;
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
    List<Justification> start = List.of();
    if (id != null) {
      decisions = WhyReport.find(advice, id);
      start = WhyTalk.of(advice.decisions(), id);
      if (decisions.isEmpty() && start.isEmpty()) {
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
    if (json.wanted) {
      JsonReport.why(advice.scenario(), decisions, start, out());
      out().println();
      return Exit.FINE;
    }
    Detail told = detail.or(id == null ? Detail.SHORT : null);
    if (told == null && !start.isEmpty()) {
      List<String> decided = decided(advice);
      WhyTalk.from(start, decided, context.knowledge(), one -> notSo(context, one), page);
    } else if (told == null) {
      WhyTalk.write(decisions, context.knowledge(), one -> notSo(context, one), page);
    } else {
      WhyReport.write(decisions, context.knowledge(), told, page);
    }
    out().page(page);
    return Exit.FINE;
  }

  /** What rests on the rule named. */
  private List<String> decided(Advice advice) {
    return advice.decisions().stream()
        .filter(one -> !WhyTalk.of(List.of(one), id).isEmpty())
        .map(Decision::heading)
        .distinct()
        .toList();
  }

  /** The conditions of a rule that say what must not be so, as they stand in its file. */
  private static List<String> notSo(CommandContext context, String rule) {
    try {
      return context.ruleTexts().stream()
          .filter(form -> form.note().id().equals(rule))
          .flatMap(form -> form.when().stream())
          .map(String::strip)
          .filter(line -> NOT.matcher(line).find())
          .toList();
    } catch (UserError alreadyRead) {
      return List.of();
    }
  }
}
