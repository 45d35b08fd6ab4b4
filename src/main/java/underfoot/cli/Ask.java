package underfoot.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.IntSupplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import underfoot.knowledge.InterviewBook;
import underfoot.knowledge.Phrases;
import underfoot.plan.Advice;
import underfoot.reasoning.Interview;
import underfoot.report.Detail;
import underfoot.report.TextPage;
import underfoot.report.TextReport;
import underfoot.scenario.Answers;
import underfoot.scenario.FactBook;
import underfoot.scenario.Kind;
import underfoot.scenario.Place;
import underfoot.scenario.ScenarioFaults;

/** {@code ask}: an interview that asks only what still matters, and writes the scenario. */
@Command(
    name = "ask",
    mixinStandardHelpOptions = true,
    description =
        "Asks about your floor in plain words, only what still matters, and tells what not"
            + " knowing costs. It writes the scenario file and gives the advice.",
    footer = {
      "",
      "At any question you can say:",
      "  Enter, don't know  that you do not know; you are told what that costs",
      "  help               how to find out, with a picture where that helps",
      "  why                what hangs on the answer",
      "  back               to the question before",
      "  so far             the advice as it stands",
      "  save [FILE]        to write your answers and go on",
      "  enough             no more questions; the advice with what is known",
      "  quit               to leave; Ctrl-C on an empty line does the same",
      "",
      "Exit codes: as for advise."
    })
final class Ask implements Callable<Integer> {
  private static final String NOTHING_WRITTEN = "Nothing was written.";

  private final Environment around;
  @Spec private CommandSpec spec;
  @Mixin private RuleBaseOption rules;

  @Option(
      names = "--from",
      paramLabel = "FILE",
      description = "Go on with what this scenario file already says; it may be unfinished.")
  private String from;

  @Option(names = "--to", paramLabel = "FILE", description = "Where the scenario is written.")
  private String to;

  @Option(names = "--replace", description = "Write over a file that is there already.")
  private boolean replace;

  @Option(
      names = "--page",
      description = "Ask on a page in your browser instead; nothing leaves this machine.")
  private boolean page;

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "0",
      description = "The port of the page; any free one if it is not said.")
  private int port;

  @Option(names = "--width", paramLabel = "N", description = "Columns of the text.")
  private Integer width;

  @Option(
      names = "--detail",
      paramLabel = "HOW MUCH",
      description =
          "How much of the advice is shown: short (as without it), normal or full; dangers are in"
              + " each.")
  private Detail detail = Detail.SHORT;

  private String written = "";
  private String keptAs = "";

  Ask(Environment around) {
    this.around = around;
  }

  /** What was said before: in a file, or nothing. */
  private record Begun(Answers answers, byte[] file) {}

  @Override
  public Integer call() throws UserError {
    PrintWriter out = spec.commandLine().getOut();
    TextPage layout = around.page(width);
    CommandContext bench = new CommandContext(rules.folder(), around, spec.commandLine().getErr());
    if (to != null && !page && !replace && SavedFile.exists(to)) {
      throw UserError.usage(to + " is there already; add --replace to write over it");
    }
    Begun begun = begin(bench);
    if (page) {
      return serve(bench, begun.answers(), out);
    }
    try (Prompt prompt = prompt(out)) {
      return talk(bench, begun, prompt, layout, out);
    }
  }

  private Integer talk(
      CommandContext bench, Begun begun, Prompt prompt, TextPage layout, PrintWriter out)
      throws UserError {
    Interview interview = bench.interview();
    Phrases phrases = new Phrases(bench.knowledge().wording());
    boolean told = width != null || prompt.columns() <= 0;
    IntSupplier columns = told ? layout::width : prompt::columns;
    TerminalInterview talk =
        new TerminalInterview(
            interview,
            phrases,
            prompt,
            out,
            columns,
            around.colour(),
            begun.answers(),
            taken(bench, begun, interview));
    if (around.terminal()) {
      warm(interview, bench.facts());
    }
    String before = talk.file();
    TerminalInterview.Outside outside =
        new TerminalInterview.Outside() {
          @Override
          public String save(String name) throws UserError {
            return Ask.this.save(talk, name);
          }

          @Override
          public String advice() throws UserError {
            return report(bench.advise(talk.answers().scenario()), phrases, columns).text();
          }
        };
    TerminalInterview.End end = talk.hold(outside);
    if (end == TerminalInterview.End.LEFT || !talk.answers().complete()) {
      if (!talk.file().equals(before) && !talk.file().equals(keptAs)) {
        keep(talk, prompt, out);
      } else {
        out.println(written.isEmpty() ? NOTHING_WRITTEN : written + " has your answers.");
      }
      if (end == TerminalInterview.End.LEFT) {
        return Exit.FINE;
      }
      List<String> missing =
          talk.answers().missing().stream()
              .filter(place -> place.fact().kind() != Kind.TEXT)
              .map(place -> place.fact().ask())
              .toList();
      TextPage still = new TextPage(columns.getAsInt(), around.colour());
      still.para("There is no advice yet. Still to be answered: " + String.join(" ", missing));
      out.print(still.text());
      return Exit.SCENARIO_INVALID;
    }
    Advice advice = bench.advise(talk.answers().scenario());
    out.print(report(advice, phrases, columns).text());
    out.println();
    talk.tellFirst();
    keep(talk, prompt, out);
    return Advise.exit(advice.verdict());
  }

  /** Thinks some floor through while the first questions are read, so that the next come soon. */
  private static void warm(Interview interview, FactBook facts) {
    Thread thread =
        new Thread(
            () -> {
              Answers some = Interview.begun(Answers.none(facts));
              try {
                for (Place place : some.missing()) {
                  some = some.with(place, place.fact().example());
                }
                interview.next(some);
              } catch (ScenarioFaults e) {
                return; // then the first thinking takes longer
              }
            });
    thread.setDaemon(true);
    thread.start();
  }

  private TextPage report(Advice advice, Phrases phrases, IntSupplier columns) {
    TextPage report = new TextPage(columns.getAsInt(), around.colour());
    TextReport.write(advice.withoutFindOut(), phrases, detail, report);
    return report;
  }

  private Begun begin(CommandContext bench) throws UserError {
    if (from == null) {
      return new Begun(Interview.begun(Answers.none(bench.facts())), new byte[0]);
    }
    byte[] file = CommandContext.content(from, around.in());
    try {
      return new Begun(
          Interview.begun(TerminalInterview.unnamed(Answers.of(bench.facts(), from, file))), file);
    } catch (ScenarioFaults e) {
      throw new UserError(Exit.SCENARIO_INVALID, e.text().stripTrailing());
    }
  }

  /** What of the file was only taken for want of knowing better. */
  private Map<String, InterviewBook.Taken> taken(
      CommandContext bench, Begun begun, Interview interview) throws UserError {
    if (from == null) {
      return Map.of();
    }
    try {
      return AnswerFile.taken(bench.facts(), from, begun.file(), interview.book());
    } catch (ScenarioFaults e) {
      throw new UserError(Exit.SCENARIO_INVALID, e.text().stripTrailing());
    }
  }

  private Prompt prompt(PrintWriter out) {
    if (around.terminal() && around.in() == System.in) {
      try {
        return new TerminalPrompt();
      } catch (IOException e) {
        return Prompt.piped(around.in(), out);
      }
    }
    return Prompt.piped(around.in(), out);
  }

  /** Writes the file in the middle of the talk, or at its end. */
  private String save(TerminalInterview talk, String named) throws UserError {
    String name = named.isEmpty() ? target(talk) : atHome(named);
    boolean own = name.equals(written) || name.equals(to) && replace;
    SavedFile.write(name, talk.file(), own);
    written = name;
    keptAs = talk.file();
    return "Written: " + name + ". Go on later with: underfoot ask --from " + name;
  }

  private static String atHome(String name) {
    return name.startsWith("~/") ? System.getProperty("user.home") + name.substring(1) : name;
  }

  private String target(TerminalInterview talk) {
    if (!written.isEmpty()) {
      return written;
    }
    return to != null ? to : free(TerminalInterview.name(talk.answers()));
  }

  /** A name for a file that is not there yet. */
  private static String free(String words) {
    String plain = words.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    plain = plain.replaceAll("^-+|-+$", "");
    String name = plain + ".yaml";
    for (int n = 2; SavedFile.exists(name); n++) {
      name = plain + "-" + n + ".yaml";
    }
    return name;
  }

  /** Keeps the answers where they were to go, or asks where. */
  private void keep(TerminalInterview talk, Prompt prompt, PrintWriter out) throws UserError {
    if (to != null || !written.isEmpty()) {
      out.println(save(talk, ""));
      return;
    }
    while (true) {
      String offered = target(talk);
      out.println(
          "Keep your answers? Press Enter for " + offered + ", or say another name, or no.");
      out.flush();
      String said = prompt.line("> ", List.of(offered, "no"));
      if (said == null || said.strip().matches("(?i)no?|quit|exit")) {
        out.println(NOTHING_WRITTEN);
        return;
      }
      boolean yes = said.isBlank() || said.strip().matches("(?i)y(es)?");
      try {
        out.println(save(talk, yes ? offered : said.strip()));
        return;
      } catch (UserError userError) {
        out.println(userError.getMessage());
      }
    }
  }

  private Integer serve(CommandContext bench, Answers begun, PrintWriter out) throws UserError {
    try (PageServer server = new PageServer(new PageApi(bench, begun), port)) {
      out.println("Open this address in a browser on this machine; Ctrl-C stops it:");
      out.println(server.address());
      out.flush();
      server.untilStopped();
      return Exit.FINE;
    } catch (IOException e) {
      throw UserError.usage("The page cannot be served on port " + port + "; leave --port out");
    }
  }
}
