package underfoot.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import underfoot.buildup.Verdict;
import underfoot.plan.Advice;
import underfoot.report.Detail;
import underfoot.report.JsonReport;
import underfoot.report.TextPage;
import underfoot.report.TextReport;
import underfoot.report.html.HtmlReport;
import underfoot.report.html.HtmlReport.Medium;
import underfoot.report.pdf.PdfReport;
import underfoot.scenario.Scenario;
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
final class Advise extends FloorCommand {
  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "SCENARIO",
      description = "The scenario file, or - for standard input.")
  private String scenario;

  @Mixin private Options.Json json;
  @Mixin private Options.Page html;
  @Mixin private Options.HowMuch detail;

  @Option(names = "--pdf", paramLabel = "FILE", description = "Write the same page as a PDF.")
  private String pdf;

  @Option(
      names = "--sheet",
      paramLabel = "FILE",
      description = "Write one page of A4 to build from, .html or .pdf by its ending.")
  private String sheet;

  @Option(
      names = "--list",
      paramLabel = "FILE",
      description = "Write what to buy, .csv, .html or .pdf by its ending.")
  private String list;

  @Option(
      names = "--schema",
      description = "Print the JSON Schema of scenario files, and no advice.")
  private boolean schema;

  Advise(Environment around) {
    super(around);
  }

  @Override
  public Integer call() throws UserError {
    CommandContext context = context();
    if (schema) {
      out().print(ScenarioSchema.of(context.facts()));
      return Exit.FINE;
    }
    if (scenario == null) {
      throw UserError.usage("advise needs a scenario file, or - for standard input");
    }
    TextPage page = page();
    Scenario read = context.scenario(scenario);
    OutputFile web = html.output(context);
    OutputFile paper = pdf == null ? null : context.output(pdf, html.replaces());
    fit(web, paper);
    OnePages pages = new OnePages(context, sheet, list, html.replaces());
    Advice advice = context.advise(read);
    write(context, advice, web, paper);
    List<OutputFile> written = new ArrayList<>(pages.write(advice, out()));
    for (OutputFile one : new OutputFile[] {web, paper}) {
      if (one != null) {
        written.add(0, one);
      }
    }
    if (json.wanted) {
      JsonReport.write(advice, context.madeBy(), out());
      out().println();
    } else if (written.isEmpty()) {
      String notice = context.notice();
      if (!notice.isEmpty()) {
        page.bold(notice);
        page.blank();
      }
      TextReport.write(advice, context.phrases(), detail.or(Detail.NORMAL), page);
      out().page(page);
    } else if (web == null || !web.isStandard()) {
      out().println(context.phrases().say("verdict-" + advice.verdict().word()));
      written.forEach(one -> out().println("Written: " + one.name()));
    }
    return exit(advice.verdict());
  }

  /** Refuses places that cannot be written to, before anything is worked out. */
  private void fit(OutputFile web, OutputFile paper) throws UserError {
    if (web != null && web.isStandard() && json.wanted) {
      throw UserError.usage("--html - and --json would both go to standard output; name a file");
    }
    if (paper != null && paper.isStandard()) {
      throw UserError.usage("--pdf needs a file");
    }
    if (web != null && paper != null && !web.isStandard() && web.target().equals(paper.target())) {
      throw UserError.usage("--html and --pdf cannot go to one file");
    }
  }

  private void write(CommandContext context, Advice advice, OutputFile web, OutputFile paper)
      throws UserError {
    if (web != null) {
      web.write(page(context, advice, Medium.SCREEN), out());
    }
    if (paper != null) {
      String page = page(context, advice, Medium.PAPER);
      if (page.length() > context.facts().limit("longest-page")) {
        throw UserError.usage(
            "This floor holds so much that its page is too long for paper; write --html FILE, or"
                + " --sheet FILE for the page to build from");
      }
      try {
        paper.write(PdfReport.of(page, advice.scenario()));
      } catch (IOException e) {
        throw new UserError(Exit.INTERNAL, "The PDF could not be made. " + e.getMessage());
      }
    }
  }

  private static String page(CommandContext context, Advice advice, Medium medium)
      throws UserError {
    return HtmlReport.of(advice, context.phrases(), context.madeBy(), medium);
  }

  /** How a command ends that gave such an advice. */
  static int exit(Verdict verdict) {
    return switch (verdict) {
      case SOUND, SOUND_ONCE_PUT_RIGHT -> Exit.FINE;
      case OUTSIDE_GUIDANCE, STOP -> Exit.NOT_TO_BE_BUILT;
    };
  }
}
