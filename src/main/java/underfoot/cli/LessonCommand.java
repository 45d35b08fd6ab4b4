package underfoot.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import underfoot.knowledge.Phrases;
import underfoot.lesson.Lesson;
import underfoot.lesson.Marking;
import underfoot.lesson.Question;
import underfoot.report.JsonReport;
import underfoot.report.LessonReport;
import underfoot.report.TextPage;
import underfoot.report.TextPage.Tone;

/** {@code lesson SCENARIO}: a worksheet made from the trace of the advice. */
@Command(
    name = "lesson",
    mixinStandardHelpOptions = true,
    description = {
      "A worksheet on a floor, made from the trace of the advice, with its answer sheet.",
      "A seed gives a variant with other numbers; the same seed gives the same sheet."
    })
final class LessonCommand implements Callable<Integer> {
  private final Environment around;
  @Spec private CommandSpec spec;
  @Mixin private RuleBaseOption rules;

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

  @Option(names = "--html", paramLabel = "FILE", description = "Write a page to print.")
  private Path html;

  @Option(names = "--json", description = "Print JSON, answers included.")
  private boolean json;

  @Option(names = "--mark", description = "Ask each question on the terminal and mark the answers.")
  private boolean mark;

  @Option(names = "--width", paramLabel = "N", description = "Columns of the text.")
  private Integer width;

  LessonCommand(Environment around) {
    this.around = around;
  }

  @Override
  public Integer call() throws UserError {
    if ((mark ? 1 : 0) + (json ? 1 : 0) + (html == null ? 0 : 1) > 1) {
      throw UserError.usage("lesson takes one of --mark, --json and --html");
    }
    if (mark && scenario.equals("-")) {
      throw UserError.usage(
          "--mark reads answers from standard input, so the scenario must be a file");
    }
    around.page(width);
    PrintWriter out = spec.commandLine().getOut();
    CommandContext bench = new CommandContext(rules.folder(), around, spec.commandLine().getErr());
    OptionalLong variant = seed == null ? OptionalLong.empty() : OptionalLong.of(seed);
    Lesson lesson = bench.lesson(scenario, around.in(), variant);
    LessonReport report = new LessonReport(lesson, bench.knowledge());
    if (mark) {
      mark(lesson, report, new Phrases(bench.knowledge().wording()), out);
    } else if (json) {
      JsonReport.write(lesson, out);
      out.println();
    } else if (html != null) {
      AtomicFile.write(html, report.html(answers));
    } else {
      TextPage page = around.page(width);
      report.text(answers, page);
      out.print(page.text());
    }
    return Exit.FINE;
  }

  /** Asks and marks. Where standard input ends, the rest counts as not answered. */
  private void mark(Lesson lesson, LessonReport report, Phrases phrases, PrintWriter out)
      throws UserError {
    BufferedReader replies =
        new BufferedReader(new InputStreamReader(around.in(), StandardCharsets.UTF_8));
    TextPage first = around.page(width);
    first.para("", "", lesson.scenario().name(), Tone.BOLD);
    report.floor(first);
    out.print(first.text());
    double got = 0;
    int answered = 0;
    int number = 0;
    for (Question question : lesson.questions()) {
      TextPage ask = around.page(width);
      report.question(++number, question, ask);
      out.print("\n" + ask.text() + "> ");
      out.flush();
      String reply = line(replies);
      if (!around.terminal()) {
        out.println(reply == null ? "" : reply.replaceAll("\\p{Cntrl}", " "));
      }
      TextPage told = around.page(width);
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
      out.print(told.text());
    }
    TextPage score = around.page(width);
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
    out.print(score.text());
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
