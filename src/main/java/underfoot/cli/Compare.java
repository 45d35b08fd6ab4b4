package underfoot.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import underfoot.knowledge.Phrases;
import underfoot.plan.Advice;
import underfoot.plan.FloorsCompared;
import underfoot.plan.Planner;
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
final class Compare implements Callable<Integer> {
  private static final Pattern CHANGE =
      Pattern.compile("([^=\\[]+)(?:\\[([^\\]]*)])?([^=\\[]*)=(.*)", Pattern.DOTALL);

  private final Environment around;
  @Spec private CommandSpec spec;
  @Mixin private RuleBaseOption rules;

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

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  @Option(names = "--width", paramLabel = "N", description = "Columns of the text.")
  private Integer width;

  Compare(Environment around) {
    this.around = around;
  }

  @Override
  public Integer call() throws UserError {
    PrintWriter out = spec.commandLine().getOut();
    TextPage page = around.page(width);
    CommandContext bench = new CommandContext(rules.folder(), around, spec.commandLine().getErr());
    if (second == null && with.isEmpty()) {
      ways(bench, page, out);
    } else {
      floors(bench, page, out);
    }
    return Exit.FINE;
  }

  private void ways(CommandContext bench, TextPage page, PrintWriter out) throws UserError {
    Advice advice = bench.advise(first, around.in());
    if (json) {
      JsonReport.ways(advice, out);
      out.println();
    } else {
      CompareReport.write(advice, new Phrases(bench.knowledge().wording()), page);
      out.print(page.text());
    }
  }

  private void floors(CommandContext bench, TextPage page, PrintWriter out) throws UserError {
    if ("-".equals(first) && "-".equals(second)) {
      throw UserError.usage("Only one of the two can come from standard input");
    }
    Scenario one = bench.scenario(first, CommandContext.content(first, around.in()));
    String name = second == null ? first : second;
    Scenario other =
        second == null ? one : bench.scenario(second, CommandContext.content(second, around.in()));
    for (String change : with) {
      other = changed(other, change);
    }
    Planner ofOne = bench.planner(first, one);
    FloorsCompared compared = bench.compare(one, ofOne, other, bench.planner(name, other));
    if (json) {
      JsonReport.write(compared, out);
      out.println();
    } else {
      CompareReport.write(compared, new Phrases(bench.knowledge().wording()), page);
      out.print(page.text());
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
