package underfoot.cli;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import underfoot.knowledge.LessonBook;
import underfoot.knowledge.Phrases;
import underfoot.lesson.ClassBook;
import underfoot.lesson.Course;
import underfoot.lesson.CourseMaker;
import underfoot.lesson.Question;
import underfoot.lesson.Sheet;
import underfoot.report.JsonReport;
import underfoot.report.LessonReport;
import underfoot.report.TextPage;
import underfoot.scenario.FactBook;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;

/** Writes a course into a folder: sheets, answer sheets, a table for answers, and the class. */
final class CourseFiles {
  /** What stands for the course that comes with the program. */
  static final String SHIPPED = "the course that comes along";

  /** The file of a class in its folder. */
  static final String CLASS = "class.jsonl";

  private static final String FOLDER = "lessons/";

  private final CommandContext context;
  private final String folder;
  private final boolean resume;
  private final boolean replace;

  CourseFiles(CommandContext context, String folder, boolean resume, boolean replace) {
    this.context = context;
    this.folder = folder;
    this.resume = resume;
    this.replace = replace;
  }

  /** Writes a course for some pupils, and tells what was written. */
  void write(String file, String pupils, TextPage page) throws UserError {
    LessonBook book = context.lessons();
    Course course = course(file, book);
    List<List<Scenario>> floors = new ArrayList<>();
    for (Course.Sheet sheet : course.sheets()) {
      List<Scenario> read = new ArrayList<>();
      for (String floor : sheet.floors()) {
        read.add(floor(file, floor));
      }
      floors.add(read);
    }
    Path into = folder();
    ClassFile kept = resume ? ClassFile.open(context, into.resolve(CLASS).toString()) : null;
    List<String> names = names(pupils);
    Set<String> known = kept == null ? Set.of() : new LinkedHashSet<>(kept.book().pupils());
    List<String> fresh = names.stream().filter(name -> !known.contains(name)).toList();
    if (kept != null && !kept.book().course().equals(course.name())) {
      throw UserError.usage(
          "The class in " + Main.cut(folder) + " has another course: " + kept.book().course());
    }
    String suffix = known.isEmpty() ? "" : "-from-" + (known.size() + 1);
    List<OutputFile> outputs = new ArrayList<>(); // all are looked at before any is written
    for (int i = 0; i < course.sheets().size(); i++) {
      outputs.add(output(into, String.format(Locale.ROOT, "sheet-%02d%s.html", i + 1, suffix)));
      outputs.add(output(into, String.format(Locale.ROOT, "answers-%02d%s.html", i + 1, suffix)));
    }
    OutputFile table = output(into, "answers" + suffix + ".csv");
    OutputFile whole = kept == null ? output(into, CLASS) : null;
    if (fresh.isEmpty()) {
      page.para(context.phrases().say("course-nobody-new"));
      return;
    }
    made(course, floors, fresh, known.size(), outputs, table, whole, kept, page);
  }

  private void made(
      Course course,
      List<List<Scenario>> floors,
      List<String> fresh,
      int before,
      List<OutputFile> outputs,
      OutputFile table,
      OutputFile whole,
      ClassFile kept,
      TextPage page)
      throws UserError {
    Phrases phrases = context.phrases();
    LessonReport report = new LessonReport(context.knowledge());
    List<Long> seeds = new ArrayList<>();
    for (int i = 0; i < fresh.size(); i++) {
      seeds.add((long) before + i + 1);
    }
    List<String> lines = new ArrayList<>();
    List<List<Sheet>> all = new ArrayList<>();
    for (int i = 0; i < course.sheets().size(); i++) {
      Course.Sheet said = course.sheets().get(i);
      List<Scenario> on = floors.get(i);
      CourseMaker.Made made =
          context.byRules(
              () -> new CourseMaker(context.lessonMaker(on.get(0))).make(said, on, seeds));
      List<Sheet> sheets = new ArrayList<>();
      String title = phrases.say("course-sheet", "number", "" + (i + 1), "title", said.title());
      for (int p = 0; p < fresh.size(); p++) {
        Sheet sheet = new Sheet(title, fresh.get(p), made.lessons().get(p));
        sheets.add(sheet);
        List<Question> asked = sheet.questions();
        lines.add(
            json(new ClassBook.Handed(fresh.get(p), seeds.get(p), i + 1, said.title(), asked)));
      }
      all.add(sheets);
      told(title, sheets, page);
    }
    Map<OutputFile, byte[]> files = new LinkedHashMap<>(); // all are written, or none
    for (int i = 0; i < all.size(); i++) {
      String title = all.get(i).get(0).title();
      files.put(
          outputs.get(2 * i), bytes(report.html(title, all.get(i), LessonReport.Pages.SHEETS)));
      files.put(
          outputs.get(2 * i + 1),
          bytes(report.html(title, all.get(i), LessonReport.Pages.ANSWERS)));
    }
    files.put(table, bytes(AnswerTable.empty(fresh, all)));
    if (kept == null) {
      String head =
          json(new ClassBook.Head(ClassBook.FORMAT, course.name(), context.madeBy().ruleBase()));
      files.put(whole, bytes(head + "\n" + String.join("\n", lines) + "\n"));
      OutputFile.write(files);
    } else {
      OutputFile.write(files);
      kept.add(lines);
    }
    page.para(phrases.say("course-written", "folder", folder, "pupils", "" + fresh.size()));
    page.para(phrases.say("course-equal"));
  }

  /** What a sheet asks, and that it is equal for all. */
  private void told(String title, List<Sheet> sheets, TextPage page) throws UserError {
    Sheet first = sheets.get(0);
    for (Sheet one : sheets) {
      boolean equal =
          one.marks() == first.marks()
              && Math.abs(one.byGuessing() - first.byGuessing()) < 1e-9
              && one.questions().stream()
                  .map(Question::kind)
                  .toList()
                  .equals(first.questions().stream().map(Question::kind).toList());
      if (!equal) {
        throw new IllegalStateException(title + " is not equal for " + one.pupil());
      }
    }
    page.item(
        context
            .phrases()
            .say(
                "course-told",
                "title",
                title,
                "questions",
                "" + first.questions().size(),
                "marks",
                "" + first.marks(),
                "guessing",
                underfoot.measure.Texts.tenths(first.byGuessing())));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(java.nio.charset.StandardCharsets.UTF_8);
  }

  /** A line of the class. */
  static String json(Object line) {
    StringWriter out = new StringWriter();
    JsonReport.line(line, out);
    return out.toString();
  }

  private OutputFile output(Path into, String name) throws UserError {
    return context.output(into.resolve(name).toString(), replace);
  }

  private Path folder() throws UserError {
    try {
      Path into = Path.of(folder);
      if (resume) {
        if (!Files.isRegularFile(into.resolve(CLASS))) {
          throw UserError.usage("There is no class in " + Main.cut(folder) + " to go on with");
        }
        return into;
      }
      return Files.createDirectories(into);
    } catch (InvalidPathException | IOException e) {
      throw UserError.usage(Main.cut(folder) + " is no folder that can be written to");
    }
  }

  private Course course(String file, LessonBook book) throws UserError {
    FactBook limits = context.facts();
    try {
      return file.equals(SHIPPED)
          ? Course.read(
              FOLDER + "course.yaml", context.ruleFile(FOLDER + "course.yaml"), book, limits)
          : Course.read(file, context.inputs().read(file), book, limits);
    } catch (ScenarioFaults e) {
      throw UserError.in(e);
    }
  }

  /** A floor of a course: it lies beside the course's file, or comes with the rules. */
  private Scenario floor(String file, String name) throws UserError {
    String shipped = FOLDER + name;
    if (file.equals(SHIPPED)) {
      return context.scenario(name, context.ruleFile(shipped));
    }
    byte[] content =
        context
            .inputs()
            .beside(file, name)
            .orElseThrow(
                () ->
                    new UserError(
                        Exit.SCENARIO_INVALID,
                        file + ": there is no floor '" + Main.cut(name) + "' beside the course"));
    return context.scenario(name, content);
  }

  /** The names of the pupils: as given, or numbered. */
  private List<String> names(String said) throws UserError {
    int most = (int) context.facts().limit("most-pupils");
    if (said.strip().matches("[0-9]{1,4}")) {
      int many = Integer.parseInt(said.strip());
      if (many < 1 || many > most) {
        throw UserError.usage("--pupils takes from 1 to " + most);
      }
      List<String> names = new ArrayList<>();
      for (int i = 1; i <= many; i++) {
        names.add(context.phrases().say("course-pupil", "number", Integer.toString(i)));
      }
      return names;
    }
    List<String> names = new ArrayList<>();
    for (String one : said.split(",")) {
      String name = one.strip();
      if (name.isEmpty() || names.contains(name) || name.length() > 60) {
        throw UserError.usage(
            "--pupils needs names that differ, with commas between, such as 'Ann, Ben'; found: "
                + Main.cut(said));
      }
      names.add(name);
    }
    if (names.size() > most) {
      throw UserError.usage("--pupils takes from 1 to " + most);
    }
    return names;
  }
}
