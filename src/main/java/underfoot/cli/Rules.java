package underfoot.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import underfoot.report.RuleUses;
import underfoot.report.RulesBook;
import underfoot.report.RulesReport;
import underfoot.report.TextPage;

/** {@code rules [ID]}: the rule base as pages. */
@Command(
    name = "rules",
    mixinStandardHelpOptions = true,
    description = {
      "The rule base: every rule by its file, or the page of one rule, figure, layer, text or source."
    })
final class Rules implements Callable<Integer> {
  private final Environment around;
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

  @Option(names = "--by", paramLabel = "WHAT", description = "List rules by theme or by source.")
  private Index by = Index.THEME;

  @Option(names = "--html", paramLabel = "FILE", description = "Write all rules as one book.")
  private Path html;

  @Option(
      names = "--scenarios",
      paramLabel = "DIR",
      description = "Tell which scenarios of a folder, and which lessons on them, use a rule.")
  private Path scenarios;

  /** What rules are listed by. */
  private enum Index {
    THEME,
    SOURCE
  }

  @Option(
      names = "--lint",
      description =
          "Tell what is wrong with the rule base, and how to mend it; exit code 5 if any.")
  private boolean lint;

  @Option(names = "--width", paramLabel = "N", description = "Columns of the text.")
  private Integer width;

  Rules(Environment around) {
    this.around = around;
  }

  @Override
  public Integer call() throws UserError {
    PrintWriter out = spec.commandLine().getOut();
    TextPage page = around.page(width);
    CommandContext bench = new CommandContext(rules.folder(), around, spec.commandLine().getErr());
    if (lint) {
      return Linting.run(bench, json, out);
    }
    RuleUses uses = scenarios == null ? new RuleUses() : bench.uses(scenarios);
    RulesReport report = new RulesReport(bench.ruleTexts(), bench.knowledge(), uses);
    if (html != null) {
      if (json || !ids.isEmpty()) {
        throw UserError.usage("rules --html writes all rules; it takes no id and no --json");
      }
      AtomicFile.write(html, RulesBook.html(bench.ruleTexts(), bench.knowledge(), uses));
      return Exit.FINE;
    }
    if (json) {
      if (ids.size() > 1) {
        throw UserError.usage("rules --json takes one id, or none for all rules");
      }
      StringWriter text = new StringWriter();
      if (report.json(ids.isEmpty() ? "" : ids.get(0), text) == 0 && !ids.isEmpty()) {
        throw unknown(report, ids.get(0));
      }
      out.println(text);
      return Exit.FINE;
    }
    if (ids.isEmpty() && by == Index.SOURCE) {
      report.bySource(page);
    } else if (ids.isEmpty()) {
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

  private static UserError unknown(RulesReport report, String id) {
    return UserError.usage(
        "The rule base has nothing called '"
            + Main.cut(id)
            + "'; nearest: "
            + String.join(", ", report.nearest(id)));
  }
}
