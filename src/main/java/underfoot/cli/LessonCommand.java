package underfoot.cli;

import java.util.List;
import java.util.OptionalLong;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import underfoot.knowledge.LessonBook;
import underfoot.lesson.Lesson;
import underfoot.lesson.LessonMaker;
import underfoot.lesson.Sheet;
import underfoot.report.JsonReport;
import underfoot.report.LessonReport;
import underfoot.report.TextPage;
import underfoot.scenario.Scenario;

/** {@code lesson SCENARIO}: a sheet of questions on a floor; {@code --course}: a whole course. */
@Command(
    name = "lesson",
    mixinStandardHelpOptions = true,
    description = {
      "A sheet of questions on a floor, with its answer sheet; or a course for a class.",
      "A seed gives a variant with other numbers; the same seed gives the same sheet.",
      "A course writes every pupil's sheets, the answer sheets and the file of the class,",
      "which 'mark' goes on with."
    })
final class LessonCommand extends FloorCommand {
  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "SCENARIO",
      description = "The scenario file, or - for standard input.")
  private String scenario;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Which variant, any whole number; without it the floor as it is stated.")
  private Long seed;

  @Option(names = "--topic", paramLabel = "TOPIC", description = "Ask about this topic alone.")
  private String topic;

  @Option(
      names = "--questions",
      paramLabel = "N",
      defaultValue = "20",
      description = "How many questions at the most; 20 without it.")
  private int questions;

  @Option(names = "--answers", description = "With the answer sheet.")
  private boolean answers;

  @Mixin private Options.Page html;
  @Mixin private Options.Json json;

  @Option(names = "--mark", description = "Ask each question on the terminal and mark the answers.")
  private boolean mark;

  @Option(
      names = "--course",
      arity = "0..1",
      fallbackValue = CourseFiles.SHIPPED,
      paramLabel = "FILE",
      description = "A course instead of one floor; without a file the one that comes along.")
  private String course;

  @Option(
      names = "--pupils",
      paramLabel = "HOW MANY|NAMES",
      description = "For how many pupils, or their names with commas between; 1 without it.")
  private String pupils = "1";

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "The folder a course is written to; it is made if it is not there.")
  private String out;

  @Option(
      names = "--resume",
      description = "Go on with the class in the folder: only pupils who are new get sheets.")
  private boolean resume;

  LessonCommand(Environment around) {
    super(around);
  }

  @Override
  public Integer call() throws UserError {
    if ((mark ? 1 : 0) + (json.wanted ? 1 : 0) + (html.wanted() ? 1 : 0) > 1) {
      throw UserError.usage("lesson takes one of --mark, --json and --html");
    }
    if ((course == null) == (scenario == null)) {
      throw UserError.usage("lesson takes a scenario, or --course with the file of a course");
    }
    if (course != null) {
      return course();
    }
    if (mark && scenario.equals("-")) {
      throw UserError.usage(
          "--mark reads answers from standard input, so the scenario must be a file");
    }
    if (out != null || resume) {
      throw UserError.usage("--out and --resume are for a course (--course)");
    }
    TextPage page = page();
    CommandContext context = context();
    Scenario read = context.scenario(scenario);
    OutputFile file = html.output(context);
    LessonMaker maker = context.lessonMaker(read);
    List<LessonBook.Item> kinds = kinds(maker.book());
    OptionalLong variant = seed == null ? OptionalLong.empty() : OptionalLong.of(seed);
    Lesson lesson = context.byRules(() -> maker.make(read, variant, kinds, Math.max(1, questions)));
    String title = context.phrases().say("lesson-title", "scenario", lesson.scenario().name());
    Sheet sheet = new Sheet(title, "", List.of(lesson));
    LessonReport report = new LessonReport(context.knowledge());
    if (mark) {
      new AnswerTalk(around(), out(), report, context.phrases(), this::page).ask(sheet);
    } else if (json.wanted) {
      JsonReport.write(lesson, out());
      out().println();
    } else if (file != null) {
      LessonReport.Pages pages = answers ? LessonReport.Pages.BOTH : LessonReport.Pages.SHEETS;
      file.write(report.html(title, List.of(sheet), pages), out());
    } else {
      report.text(sheet, answers, page);
      out().page(page);
    }
    return Exit.FINE;
  }

  private List<LessonBook.Item> kinds(LessonBook book) throws UserError {
    if (topic == null) {
      return book.kinds();
    }
    List<String> topics = book.topics().stream().map(LessonBook.Item::id).toList();
    if (!topics.contains(topic)) {
      throw UserError.usage(
          "There is no topic '" + Main.cut(topic) + "'; there are: " + String.join(", ", topics));
    }
    return book.kinds().stream().filter(one -> one.field("topic").equals(topic)).toList();
  }

  private Integer course() throws UserError {
    if (mark || json.wanted || html.wanted() || seed != null || topic != null) {
      throw UserError.usage("--course takes --pupils, --out and --resume");
    }
    if (out == null) {
      throw UserError.usage("--course needs a folder to write to: --out FOLDER");
    }
    CommandContext context = context();
    TextPage page = page();
    new CourseFiles(context, out, resume, html.replaces()).write(course, pupils, page);
    out().page(page);
    return Exit.FINE;
  }
}
