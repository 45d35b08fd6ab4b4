package underfoot.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.OptionalLong;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.PriceBook;
import underfoot.lesson.Lesson;
import underfoot.lesson.LessonMaker;
import underfoot.lesson.Marking;
import underfoot.lesson.Question;
import underfoot.plan.Planner;
import underfoot.report.JsonReport;
import underfoot.report.LessonReport;
import underfoot.report.TextPage;
import underfoot.report.TextPage.Tone;
import underfoot.scenario.Scenario;

/** {@code lesson SCENARIO}: a worksheet made from the trace of the advice. */
@Command(
    name = "lesson",
    mixinStandardHelpOptions = true,
    description = {
      "A worksheet on a floor, made from the trace of the advice, with its answer sheet.",
      "A seed gives a variant with other numbers; the same seed gives the same sheet."
    })
final class LessonCommand extends FloorCommand {
  @Parameters(
      index = "0",
      paramLabel = "SCENARIO",
      description = "The scenario file, or - for standard input.")
  private String scenario;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Which variant, any whole number; without it the floor as it is stated.")
  private Long seed;

  @Option(names = "--answers", description = "With the answer sheet.")
  private boolean answers;

  @Mixin private Options.Page html;
  @Mixin private Options.Json json;

  @Option(names = "--mark", description = "Ask each question on the terminal and mark the answers.")
  private boolean mark;

  LessonCommand(Environment around) {
    super(around);
  }

  @Override
  public Integer call() throws UserError {
    if ((mark ? 1 : 0) + (json.wanted ? 1 : 0) + (html.wanted() ? 1 : 0) > 1) {
      throw UserError.usage("lesson takes one of --mark, --json and --html");
    }
    if (mark && scenario.equals("-")) {
      throw UserError.usage(
          "--mark reads answers from standard input, so the scenario must be a file");
    }
    TextPage page = page();
    CommandContext context = context();
    Scenario read = context.scenario(scenario);
    OutputFile sheet = html.output(context);
    PriceBook prices = context.prices(read);
    LessonMaker maker =
        new LessonMaker(context.advisor(new Planner(prices)), context.lessons(), prices);
    OptionalLong variant = seed == null ? OptionalLong.empty() : OptionalLong.of(seed);
    Lesson lesson = context.byRules(() -> maker.make(read, variant));
    LessonReport report = new LessonReport(lesson, context.knowledge());
    if (mark) {
      mark(lesson, report, context.phrases());
    } else if (json.wanted) {
      JsonReport.write(lesson, out());
      out().println();
    } else if (sheet != null) {
      sheet.write(report.html(answers), out());
    } else {
      report.text(answers, page);
      out().page(page);
    }
    return Exit.FINE;
  }

  /** Asks and marks. Where standard input ends, the rest counts as not answered. */
  private void mark(Lesson lesson, LessonReport report, Phrases phrases) throws UserError {
    BufferedReader replies =
        new BufferedReader(new InputStreamReader(around().in(), StandardCharsets.UTF_8));
    TextPage first = page();
    first.para("", "", lesson.scenario().name(), Tone.BOLD);
    report.floor(first);
    out().page(first);
    double got = 0;
    int answered = 0;
    int number = 0;
    for (Question question : lesson.questions()) {
      TextPage ask = page();
      report.question(++number, question, ask);
      out().println();
      out().page(ask);
      out().print("> ");
      out().flush();
      String reply = line(replies);
      if (!around().terminal()) {
        out().println(reply == null ? "" : reply);
      }
      TextPage told = page();
      String said = "lesson-no-answer";
      if (reply != null && !reply.isBlank()) {
        Marking.Marked marked = Marking.of(question, reply);
        got += marked.got();
        answered += marked.read() ? 1 : 0;
        said = verdict(question, marked);
        told.para(
            phrases.say(
                said, "got", half(marked.got()), "marks", Integer.toString(question.level())));
      } else {
        told.para(phrases.say(said));
      }
      told.para(report.answer(question));
      report.because(question, told);
      out().page(told);
    }
    TextPage score = page();
    score.blank();
    score.para(
        "",
        "",
        phrases.say(
            "lesson-score",
            "got",
            half(got),
            "marks",
            Integer.toString(lesson.marks()),
            "answered",
            Integer.toString(answered),
            "count",
            Integer.toString(lesson.questions().size())),
        Tone.BOLD);
    out().page(score);
  }

  private static String verdict(Question question, Marking.Marked marked) {
    if (!marked.read()) {
      return "lesson-not-read";
    }
    return marked.got() >= question.level()
        ? "lesson-right"
        : marked.got() > 0 ? "lesson-partly" : "lesson-wrong";
  }

  private static String half(double marks) {
    return marks == Math.rint(marks)
        ? Integer.toString((int) marks)
        : String.format(Locale.ROOT, "%.1f", marks);
  }

  private static String line(BufferedReader replies) throws UserError {
    try {
      return replies.readLine();
    } catch (IOException e) {
      throw UserError.usage("Standard input cannot be read");
    }
  }
}
