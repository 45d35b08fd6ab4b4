package underfoot.cli;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import underfoot.plan.Advice;
import underfoot.plan.FloorsCompared;
import underfoot.plan.Planner;
import underfoot.reasoning.Advisor;
import underfoot.reasoning.FloorComparison;
import underfoot.report.CompareReport;
import underfoot.report.JsonReport;
import underfoot.report.TextPage;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;

/** {@code compare A [B]}: two floors, or the ways for one, side by side. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    description = {
      "Two floors side by side: what is decided otherwise, and because of which fact.",
      "The second is another scenario, or the first with something changed (--with).",
      "With one scenario alone, the ways for that floor side by side on one page."
    })
final class Compare extends FloorCommand {
  private static final Pattern CHANGE =
      Pattern.compile("([^=\\[]+)(?:\\[([^\\]]*)])?([^=\\[]*)=(.*)", Pattern.DOTALL);

  @Parameters(
      index = "0",
      paramLabel = "A",
      description = "The scenario file, or - for standard input.")
  private String first;

  @Parameters(index = "1", arity = "0..1", paramLabel = "B", description = "Another scenario file.")
  private String second;

  @Option(
      names = "--with",
      paramLabel = "KEY=VALUE",
      description =
          "A fact of A that is otherwise in B, such as 'joists.clear span=3.4 m' or"
              + " 'room.doors[kitchen door].opens=out of the room'. May be given several times.")
  private List<String> with = List.of();

  @Mixin private Options.Json json;

  Compare(Environment around) {
    super(around);
  }

  @Override
  public Integer call() throws UserError {
    TextPage page = page();
    CommandContext context = context();
    if ("-".equals(first) && "-".equals(second)) {
      throw UserError.usage("Only one of the two can come from standard input");
    }
    Scenario one = context.scenario(first);
    if (second == null && with.isEmpty()) {
      ways(context, one, page);
    } else {
      floors(context, one, page);
    }
    if (json.wanted) {
      out().println();
    } else {
      out().page(page);
    }
    return Exit.FINE;
  }

  private void ways(CommandContext context, Scenario floor, TextPage page) throws UserError {
    Advice advice = context.advise(floor);
    if (json.wanted) {
      JsonReport.ways(advice, out());
    } else {
      CompareReport.write(advice, context.phrases(), page);
    }
  }

  private void floors(CommandContext context, Scenario one, TextPage page) throws UserError {
    Scenario other = second == null ? one : context.scenario(second);
    for (String change : with) {
      other = changed(other, change);
    }
    Scenario changed = other;
    Planner ofOne = context.planner(one);
    Planner ofOther = context.planner(other);
    Advisor advisor = context.advisor(ofOne);
    FloorsCompared compared =
        context.byRules(
            () -> FloorsCompared.of(FloorComparison.of(advisor, one, changed), ofOne, ofOther));
    if (json.wanted) {
      JsonReport.write(compared, out());
    } else {
      CompareReport.write(compared, context.phrases(), page);
    }
  }

  private static Scenario changed(Scenario scenario, String change) throws UserError {
    Matcher parts = CHANGE.matcher(change);
    if (!parts.matches()) {
      throw UserError.usage(
          "--with needs a key and its value, such as --with 'joists.clear span=3.4 m'; found: "
              + Main.cut(change));
    }
    String about = parts.group(2) == null ? "" : parts.group(2).strip();
    String key =
        parts.group(2) == null
            ? parts.group(1).strip()
            : parts.group(1).strip() + "[]" + parts.group(3).strip();
    try {
      return scenario.with(key, about, parts.group(4).strip());
    } catch (ScenarioFaults e) {
      throw UserError.usage("--with '" + Main.cut(change) + "'\n" + e.text().stripTrailing());
    }
  }
}
