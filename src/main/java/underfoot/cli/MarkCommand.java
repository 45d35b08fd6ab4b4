package underfoot.cli;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import underfoot.knowledge.LessonBook;
import underfoot.lesson.ClassBook;
import underfoot.lesson.Marking;
import underfoot.lesson.Question;
import underfoot.lesson.Results;
import underfoot.quantity.Nearest;
import underfoot.report.JsonReport;
import underfoot.report.LessonReport;
import underfoot.report.ResultsReport;
import underfoot.report.TextPage;

/** {@code mark CLASS}: takes the answers of a class in, and tells what it knows. */
@Command(
    name = "mark",
    mixinStandardHelpOptions = true,
    description = {
      "What each pupil and the class knows by topic, what was misunderstood, and what to practise.",
      "Answers are taken in from a table (--answers), on the terminal (--pupil, --sheet) or on a",
      "page (--page). Each is kept as it is given; a later one mends an earlier one.",
      "What can only be a slip of the pen costs no mark: it is listed to be written again."
    })
final class MarkCommand extends RuleCommand {
  @Parameters(
      index = "0",
      paramLabel = "CLASS",
      description = "The file of the class, or the folder that 'lesson --course' wrote.")
  private String name;

  @Option(
      names = "--answers",
      paramLabel = "FILE",
      description = "Take in a table of pupil, sheet, question, answer (CSV); - is standard input.")
  private String answers;

  @Option(names = "--pupil", paramLabel = "NAME", description = "Whose answers are typed in.")
  private String pupil;

  @Option(names = "--sheet", paramLabel = "N", description = "Which sheet is answered.")
  private Integer sheet;

  @Option(
      names = "--page",
      description = "Take answers in on a page in the browser, on this machine only.")
  private boolean onPage;

  @Option(
      names = "--port",
      paramLabel = "N",
      description = "The port of the page; without it any that is free.")
  private int port;

  @Mixin private Options.Page html;
  @Mixin private Options.Json json;

  MarkCommand(Environment around) {
    super(around);
  }

  @Override
  public Integer call() throws UserError {
    boolean typed = pupil != null || sheet != null;
    if ((answers != null ? 1 : 0) + (typed ? 1 : 0) + (onPage ? 1 : 0) > 1) {
      throw UserError.usage("mark takes one of --answers, --page, and --pupil with --sheet");
    }
    if (typed && (pupil == null || sheet == null)) {
      throw UserError.usage("--pupil and --sheet go together");
    }
    if (json.wanted && html.wanted()) {
      throw UserError.usage("mark takes one of --json and --html");
    }
    TextPage page = page();
    CommandContext context = context();
    ClassFile kept = ClassFile.open(context, name);
    OutputFile file = html.output(context);
    LessonReport report = new LessonReport(context.knowledge());
    if (answers != null) {
      String text = new String(context.inputs().read(answers), StandardCharsets.UTF_8);
      kept.take(AnswerTable.read(answers, text, kept.book()));
    } else if (typed) {
      return type(kept, context, report);
    } else if (onPage) {
      return serve(kept, context, report);
    }
    LessonBook book = context.lessons();
    Results results =
        Results.of(kept.book(), book.topics().stream().map(LessonBook.Item::id).toList());
    ResultsReport told = new ResultsReport(results, book, context.phrases());
    if (json.wanted) {
      JsonReport.write(results, out());
      out().println();
    } else if (file != null) {
      file.write(told.html(), out());
    } else {
      told.text(page);
      out().page(page);
    }
    return Exit.FINE;
  }

  /** Asks on the terminal; every answer is kept as soon as it is given. */
  private Integer type(ClassFile kept, CommandContext context, LessonReport report)
      throws UserError {
    List<String> pupils = kept.book().pupils();
    String whose =
        pupils.stream()
            .filter(pupil::equalsIgnoreCase)
            .findFirst()
            .orElseThrow(
                () ->
                    UserError.usage(
                        "There is no pupil '"
                            + Main.cut(pupil)
                            + "'; nearest: "
                            + Nearest.to(pupil, pupils)));
    ClassBook.Handed handed =
        kept.book()
            .sheet(whose, sheet)
            .orElseThrow(() -> UserError.usage(whose + " has no sheet " + sheet));
    List<String> known = new ArrayList<>();
    for (int i = 1; i <= handed.questions().size(); i++) {
      known.add(kept.book().reply(whose, sheet, i));
    }
    new AnswerTalk(around(), out(), report, context.phrases(), this::page)
        .take(
            handed.questions(),
            known,
            (question, answer) ->
                kept.take(List.of(new ClassBook.Reply(whose, sheet, question, answer))));
    TextPage page = page();
    int open = 0;
    for (int i = 1; i <= handed.questions().size(); i++) {
      Question question = handed.questions().get(i - 1);
      open += Marking.of(question, kept.book().reply(whose, sheet, i)).read() ? 0 : 1;
    }
    page.blank();
    page.para(
        context
            .phrases()
            .say(
                "mark-taken",
                "answered",
                Integer.toString(handed.questions().size() - open),
                "open",
                Integer.toString(open)));
    out().page(page);
    return Exit.FINE;
  }

  private Integer serve(ClassFile kept, CommandContext context, LessonReport report)
      throws UserError {
    ClassPage pages = new ClassPage(kept, report, context.phrases());
    try (PageServer server = new PageServer(pages, port, context.facts())) {
      out().println(context.phrases().say("mark-open", "address", server.address()));
      out().flush();
      server.untilStopped();
    } catch (java.io.IOException e) {
      throw UserError.usage("The port " + port + " is taken; name another with --port");
    }
    return Exit.FINE;
  }
}
