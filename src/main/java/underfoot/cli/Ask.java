package underfoot.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Phrases;
import underfoot.plan.Advice;
import underfoot.reasoning.Interview;
import underfoot.report.Page;
import underfoot.report.TextReport;
import underfoot.scenario.Answers;
import underfoot.scenario.ScenarioFaults;

/** {@code ask}: an interview that asks only what still matters, and writes the scenario. */
@Command(
    name = "ask",
    mixinStandardHelpOptions = true,
    description = {
      "Asks about your floor in plain words, only what still matters, and tells what not knowing",
      "costs. It writes the scenario file and gives the advice."
    },
    footer = {
      "",
      "At any question: help (how to find out), why (what hangs on it), back, save, enough, quit;",
      "Enter or \"don't know\" where you do not know.",
      "Exit codes: as for advise."
    })
final class Ask implements Callable<Integer> {
  private final Surroundings around;
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
      description = "The port of the page; a free one if it is not said.")
  private int port;

  @Option(names = "--width", paramLabel = "N", description = "Columns of the text.")
  private Integer width;

  private String written = "";

  Ask(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() throws Complaint {
    PrintWriter out = spec.commandLine().getOut();
    Page layout = around.page(width);
    Workbench bench = new Workbench(rules.folder(), around, spec.commandLine().getErr());
    if (to != null && !page && !replace && SavedFile.exists(to)) {
      throw Complaint.usage(to + " is there already; add --replace to write over it");
    }
    Answers begun = Interview.begun(begin(bench));
    if (page) {
      return serve(bench, begun, out);
    }
    Interview interview = bench.interview();
    Phrases phrases = new Phrases(bench.knowledge().wording());
    try (Prompt prompt = prompt(out)) {
      Talk talk = new Talk(interview, phrases, prompt, out, layout, around.colour(), begun);
      Talk.End end = talk.hold((answers, name) -> save(talk, name));
      if (end == Talk.End.LEFT) {
        out.println(written.isEmpty() ? "Nothing was written." : written + " has your answers.");
        return Exit.FINE;
      }
      if (!talk.answers().complete()) {
        finish(talk, prompt, out);
        out.println("There is no advice yet: required facts are missing.");
        return Exit.SCENARIO_INVALID;
      }
      Advice advice = bench.advise(talk.answers().scenario());
      TextReport.write(advice, phrases, layout);
      out.print(layout.text());
      out.println();
      talk.tellFirst();
      finish(talk, prompt, out);
      return advice.verdict() == Verdict.SOUND || advice.verdict() == Verdict.SOUND_ONCE_PUT_RIGHT
          ? Exit.FINE
          : Exit.NOT_TO_BE_BUILT;
    }
  }

  private Answers begin(Workbench bench) throws Complaint {
    if (from == null) {
      return Answers.none(bench.facts());
    }
    try {
      return Answers.of(bench.facts(), from, Workbench.content(from, around.in()));
    } catch (ScenarioFaults e) {
      throw new Complaint(Exit.SCENARIO_INVALID, e.text().stripTrailing());
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
  private String save(Talk talk, String named) throws Complaint {
    String name = named.isEmpty() ? target(talk) : named;
    boolean own = name.equals(written) || name.equals(to) && replace;
    SavedFile.write(name, talk.file(), own);
    written = name;
    return "Written: " + name + ". Go on later with: underfoot ask --from " + name;
  }

  private String target(Talk talk) {
    if (!written.isEmpty()) {
      return written;
    }
    return to != null ? to : fileName(Talk.name(talk.answers()));
  }

  private static String fileName(String words) {
    String plain = words.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    return plain.replaceAll("^-+|-+$", "") + ".yaml";
  }

  private void finish(Talk talk, Prompt prompt, PrintWriter out) throws Complaint {
    if (to != null || !written.isEmpty()) {
      out.println(save(talk, ""));
      return;
    }
    while (true) {
      String offered = target(talk);
      String said =
          prompt.line("Save your answers as [" + offered + "] (no: do not)? ", java.util.List.of());
      if (said == null || said.strip().matches("(?i)no?")) {
        out.println("Nothing was written.");
        return;
      }
      try {
        String name = said.isBlank() ? offered : said.strip();
        out.println(save(talk, name));
        return;
      } catch (Complaint complaint) {
        out.println(complaint.getMessage());
      }
    }
  }

  private Integer serve(Workbench bench, Answers begun, PrintWriter out) throws Complaint {
    try (PageServer server = new PageServer(new PageDesk(bench, begun), port)) {
      out.println("Open this address in a browser on this machine; Ctrl-C stops it:");
      out.println(server.address());
      out.flush();
      server.untilStopped();
      return Exit.FINE;
    } catch (IOException e) {
      throw Complaint.usage("The page cannot be served on port " + port + "; leave --port out");
    }
  }
}
