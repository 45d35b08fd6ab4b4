package underfoot.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import underfoot.report.Page;
import underfoot.report.RulesReport;

/** {@code rules [ID]}: the rule base as pages. */
@Command(
    name = "rules",
    mixinStandardHelpOptions = true,
    description = {
      "The rule base: every rule by its file, or the page of one rule, figure, layer, text or source."
    })
final class Rules implements Callable<Integer> {
  private final Surroundings around;
  @Spec private CommandSpec spec;
  @Mixin private RuleBaseOption rules;

  @Parameters(
      index = "0..*",
      arity = "0..*",
      paramLabel = "ID",
      description = "The id of a rule, figure, layer, text or source.")
  private List<String> ids = List.of();

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  @Option(
      names = "--lint",
      description =
          "Tell what is wrong with the rule base, and how to mend it; exit code 5 if any.")
  private boolean lint;

  @Option(names = "--width", paramLabel = "N", description = "Columns of the text.")
  private Integer width;

  Rules(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() throws Complaint {
    PrintWriter out = spec.commandLine().getOut();
    Page page = around.page(width);
    Workbench bench = new Workbench(rules.folder(), around, spec.commandLine().getErr());
    if (lint) {
      return Linting.run(bench, json, out);
    }
    RulesReport report = new RulesReport(bench.ruleTexts(), bench.knowledge());
    if (json) {
      if (ids.size() > 1) {
        throw Complaint.usage("rules --json takes one id, or none for all rules");
      }
      StringWriter text = new StringWriter();
      if (report.json(ids.isEmpty() ? "" : ids.get(0), text) == 0 && !ids.isEmpty()) {
        throw unknown(report, ids.get(0));
      }
      out.println(text);
      return Exit.FINE;
    }
    if (ids.isEmpty()) {
      report.index(page);
    }
    for (String id : ids) {
      if (!report.page(id, page)) {
        throw unknown(report, id);
      }
    }
    out.print(page.text());
    return Exit.FINE;
  }

  private static Complaint unknown(RulesReport report, String id) {
    return Complaint.usage(
        "The rule base has nothing called '"
            + Main.cut(id)
            + "'; nearest: "
            + String.join(", ", report.nearest(id)));
  }
}
