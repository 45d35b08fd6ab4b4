package underfoot.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.IntSupplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
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
import underfoot.talk.AnswerFile;
import underfoot.talk.Conversation;
import underfoot.talk.Known;

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
final class Ask extends FloorCommand {
  private static final int MOST_PORT = 65_535;
  private static final String NOTHING_WRITTEN = "Nothing was written.";

  @Option(
      names = "--from",
      paramLabel = "FILE",
      description = "Go on with what this scenario file already says; it may be unfinished.")
  private String from;

  @Option(names = "--to", paramLabel = "FILE", description = "Where the scenario is written.")
  private String to;

  @Mixin private Options.Replace replace;

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

  @Mixin private Options.HowMuch detail;

  private String written = "";
  private String keptAs = "";

  Ask(Environment around) {
    super(around);
  }

  @Override
  public Integer call() throws UserError {
    TextPage layout = page();
    CommandContext context = context();
    if (port < 0 || port > MOST_PORT) {
      throw UserError.usage(
          "--port must be from 1 to " + MOST_PORT + "; leave it out for any free one");
    }
    Known begun = begin(context);
    if (page) {
      return serve(context, begun);
    }
    if (to != null) {
      context.output(to, replace.wanted); // so that nobody answers in vain
    }
    try (Prompt prompt = prompt()) {
      return talk(context, begun, prompt, layout);
    }
  }

  private Integer talk(CommandContext context, Known begun, Prompt prompt, TextPage layout)
      throws UserError {
    SafeOutput out = out();
    Conversation conversation = context.conversation();
    Phrases phrases = context.phrases();
    boolean told = widthIsSaid() || prompt.columns() <= 0;
    IntSupplier columns = told ? layout::width : prompt::columns;
    TerminalInterview talk =
        new TerminalInterview(
            conversation,
            new InterviewScreen(conversation, out, columns, around().colour()),
            prompt,
            begun);
    if (around().terminal()) {
      warm(conversation.interview(), context.facts());
    }
    String before = talk.known().file();
    TerminalInterview.Outside outside =
        new TerminalInterview.Outside() {
          @Override
          public String save(String name) throws UserError {
            return Ask.this.save(context, talk, name);
          }

          @Override
          public TextPage advice() throws UserError {
            return report(context.advise(talk.answers().scenario()), phrases, columns);
          }
        };
    TerminalInterview.End end = talk.hold(outside);
    if (end == TerminalInterview.End.LEFT || !talk.answers().complete()) {
      if (!talk.known().file().equals(before) && !talk.known().file().equals(keptAs)) {
        keep(context, talk, prompt);
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
      TextPage still = new TextPage(columns.getAsInt(), around().colour());
      still.para("There is no advice yet. Still to be answered: " + String.join(" ", missing));
      out.page(still);
      return Exit.SCENARIO_INVALID;
    }
    Advice advice = context.advise(talk.answers().scenario());
    out.page(report(advice, phrases, columns));
    out.println();
    talk.tellFirst();
    keep(context, talk, prompt);
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
    TextPage report = new TextPage(columns.getAsInt(), around().colour());
    TextReport.writeWithoutFindOut(advice, phrases, detail.or(Detail.SHORT), report);
    return report;
  }

  /** What was said before: in a file, or nothing. */
  private Known begin(CommandContext context) throws UserError {
    if (from == null) {
      return context.conversation().begun();
    }
    byte[] file = context.inputs().read(from);
    try {
      return context.conversation().begun(AnswerFile.read(context.facts(), from, file));
    } catch (ScenarioFaults e) {
      throw UserError.in(e);
    }
  }

  private Prompt prompt() {
    if (around().terminal() && around().in() == System.in) {
      try {
        return new TerminalPrompt();
      } catch (IOException e) {
        return Prompt.piped(around().in(), out());
      }
    }
    return Prompt.piped(around().in(), out());
  }

  /** Writes the file in the middle of the talk, or at its end. */
  private String save(CommandContext context, TerminalInterview talk, String named)
      throws UserError {
    String name = named.isEmpty() ? target(talk) : atHome(named);
    boolean over = name.equals(written) || replace.wanted && name.equals(to);
    context.output(name, over).write(talk.known().file(), out());
    written = name;
    keptAs = talk.known().file();
    return "Written: " + name + ". Go on later with: underfoot ask --from " + name;
  }

  private static String atHome(String name) {
    return name.startsWith("~/") ? System.getProperty("user.home") + name.substring(1) : name;
  }

  private String target(TerminalInterview talk) {
    if (!written.isEmpty()) {
      return written;
    }
    return to != null ? to : free(AnswerFile.name(talk.answers()));
  }

  /** A name for a file that is not there yet. */
  private static String free(String words) {
    String plain = words.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    plain = plain.replaceAll("^-+|-+$", "");
    String name = plain + ".yaml";
    for (int n = 2; Files.exists(Path.of(name), LinkOption.NOFOLLOW_LINKS); n++) {
      name = plain + "-" + n + ".yaml";
    }
    return name;
  }

  /** Keeps the answers where they were to go, or asks where. */
  private void keep(CommandContext context, TerminalInterview talk, Prompt prompt)
      throws UserError {
    SafeOutput out = out();
    if (to != null || !written.isEmpty()) {
      out.println(save(context, talk, ""));
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
        out.println(save(context, talk, yes ? offered : said.strip()));
        return;
      } catch (UserError userError) {
        out.println(userError.getMessage());
      }
    }
  }

  private Integer serve(CommandContext context, Known begun) throws UserError {
    SafeOutput out = out();
    try (PageServer server = new PageServer(new PageApi(context, begun), port, context.facts())) {
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
