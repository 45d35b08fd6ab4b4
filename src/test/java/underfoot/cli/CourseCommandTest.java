package underfoot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underfoot.lesson.ClassBook;
import underfoot.lesson.Marking;
import underfoot.lesson.Question;
import underfoot.reasoning.Floors;
import underfoot.report.LessonReport;

/** A course for a class: sheets out, answers in, results told. */
class CourseCommandTest {
  @TempDir private static Path shared;
  private static Path course;
  private static Path term;

  @BeforeAll
  static void write() throws Exception {
    for (String floor : List.of("hall-on-a-slab", "pantry-with-rot", "wet-room-on-joists")) {
      Files.copy(
          Path.of("rules/lessons/floors/" + floor + ".yaml"), shared.resolve(floor + ".yaml"));
    }
    course = shared.resolve("course.yaml");
    Files.writeString(
        course,
        """
        course: A short one
        sheets:
          - {sheet: The bed, topics: [bed, joints], floors: [hall-on-a-slab.yaml], questions: 8}
          - sheet: The answer
            topics: [answer, danger]
            floors: [hall-on-a-slab.yaml, pantry-with-rot.yaml, wet-room-on-joists.yaml]
            questions: 6
        """);
    term = shared.resolve("term");
    Console.Ran ran =
        Console.run(
            "lesson",
            "--course",
            course.toString(),
            "--pupils",
            "Ann, Ben",
            "--out",
            term.toString());
    assertThat(ran.exit()).as(ran.err()).isZero();
    assertThat(ran.out()).contains("Sheet 1: The bed", "equal between pupils");
  }

  private static ClassBook book(Path folder) throws Exception {
    return ClassBook.read(Files.readString(folder.resolve("class.jsonl")));
  }

  private static Path copied(Path into) throws Exception {
    Files.createDirectories(into);
    Files.copy(term.resolve("class.jsonl"), into.resolve("class.jsonl"));
    return into;
  }

  private static String right(Question question) {
    if (question.reply() == Question.Reply.NUMBER) {
      return Double.toString(question.number());
    }
    StringBuilder letters = new StringBuilder();
    question.right().forEach(group -> letters.append(group.iterator().next()).append(' '));
    return letters.toString().strip();
  }

  @Test
  void every_pupil_gets_equal_marks_and_other_numbers_and_all_verdicts_are_asked_for()
      throws Exception {
    ClassBook book = book(term);
    assertThat(book.pupils()).containsExactly("Ann", "Ben");
    Set<String> verdicts = new TreeSet<>();
    for (int sheet = 1; sheet <= 2; sheet++) {
      List<Question> ann = book.sheet("Ann", sheet).orElseThrow().questions();
      List<Question> ben = book.sheet("Ben", sheet).orElseThrow().questions();
      assertThat(ann)
          .extracting(Question::kind)
          .isEqualTo(ben.stream().map(Question::kind).toList());
      assertThat(ann)
          .extracting(one -> one.options().size() + " " + one.right().size() + " " + one.level())
          .isEqualTo(
              ben.stream()
                  .map(o -> o.options().size() + " " + o.right().size() + " " + o.level())
                  .toList());
      assertThat(ann).isNotEqualTo(ben);
      ann.stream()
          .filter(one -> one.kind().equals("verdict"))
          .forEach(one -> verdicts.add(one.answer().split(":")[0]));
    }
    assertThat(verdicts).containsExactly("Outside guidance", "Sound", "Stop");
  }

  @Test
  void no_sheet_holds_an_answer_and_the_answer_pages_hold_all() throws Exception {
    String sheets = Files.readString(term.resolve("sheet-01.html"));
    String answers = Files.readString(term.resolve("answers-01.html"));
    for (ClassBook.Handed handed : book(term).sheets()) {
      if (handed.sheet() == 1) {
        for (Question question : handed.questions()) {
          question.options().stream()
              .filter(option -> !option.shows().isEmpty())
              .forEach(option -> assertThat(sheets).doesNotContain(option.shows()));
        }
      }
    }
    assertThat(sheets).contains("<svg", "Name: Ann", "Name: Ben").doesNotContain("Answer:");
    assertThat(answers).contains("Answer:", "Aim:", "variant");
  }

  @Test
  void a_table_of_answers_is_taken_in_and_a_slip_costs_no_mark(@TempDir Path folder)
      throws Exception {
    Path kept = copied(folder.resolve("kept"));
    ClassBook book = book(kept);
    StringBuilder table = new StringBuilder("pupil;sheet;question;answer\n");
    for (String pupil : book.pupils()) {
      List<Question> questions = book.sheet(pupil, 1).orElseThrow().questions();
      for (int i = 0; i < questions.size(); i++) {
        boolean slip = pupil.equals("Ann") && i == 0;
        table.append(pupil).append(";1;").append(i + 1).append(';');
        table.append(slip ? "x!" : right(questions.get(i))).append('\n');
      }
    }
    Path file = folder.resolve("answers.csv");
    Files.writeString(file, table);
    Console.Ran ran = Console.run("mark", kept.toString(), "--answers", file.toString());
    assertThat(ran.exit()).as(ran.err()).isZero();
    assertThat(ran.out().replaceAll("\\s+", " "))
        .contains("100 %", "To be written again (costs no mark)", "Sheet 1, question 1: 'x!'");
    JsonNode json =
        JsonMapper.shared().readTree(Console.run("mark", kept.toString(), "--json").out());
    for (JsonNode one : json.get("pupils")) {
      assertThat(one.get("total").get("got").asDouble())
          .isEqualTo(one.get("total").get("of").asDouble());
    }
    // The slip is mended, and nothing that was there is lost.
    Files.writeString(
        file,
        "pupil,sheet,question,answer\nann,1,1,"
            + right(book.sheet("Ann", 1).orElseThrow().questions().get(0))
            + "\n");
    assertThat(Console.run("mark", kept.toString(), "--answers", file.toString()).out())
        .doesNotContain("To be written again");
  }

  @Test
  void a_table_that_names_nobody_we_know_is_refused_whole(@TempDir Path folder) throws Exception {
    Path kept = copied(folder.resolve("kept"));
    String before = Files.readString(kept.resolve("class.jsonl"));
    Path file = folder.resolve("answers.csv");
    Files.writeString(
        file, "pupil,sheet,question,answer\nAnn,1,1,a\nAnne,1,2,a\nBen,7,1,a\nBen,1,99,a\n");
    Console.Ran ran = Console.run("mark", kept.toString(), "--answers", file.toString());
    assertThat(ran.exit()).isEqualTo(3);
    assertThat(ran.err())
        .contains(":3: there is no pupil 'Anne'; write: Ann", ":4: Ben has no sheet '7'", ":5:");
    assertThat(Files.readString(kept.resolve("class.jsonl"))).isEqualTo(before);
  }

  @Test
  void what_is_misunderstood_and_what_to_practise_is_told(@TempDir Path folder) throws Exception {
    Path kept = copied(folder.resolve("kept"));
    Question question = null;
    int number = 0;
    String wrong = "";
    List<Question> questions = book(kept).sheet("Ann", 1).orElseThrow().questions();
    for (int i = 0; i < questions.size() && question == null; i++) {
      for (Question.Option option : questions.get(i).options()) {
        if (questions.get(i).reply() == Question.Reply.ONE && !option.shows().isEmpty()) {
          question = questions.get(i);
          number = i + 1;
          wrong = option.label();
        }
      }
    }
    Path file = folder.resolve("answers.csv");
    Files.writeString(file, "pupil,sheet,question,answer\nAnn,1," + number + "," + wrong + "\n");
    String out =
        Console.run("mark", kept.toString(), "--answers", file.toString())
            .out()
            .replaceAll("\\s+", " ");
    assertThat(out).contains(Marking.of(question, wrong).shows().get(0)).contains("practise next");
    Path page = folder.resolve("results.html");
    Console.run("mark", kept.toString(), "--html", page.toString());
    assertThat(Files.readString(page)).contains("Ann", "Ben", "<table", question.aim());
  }

  @Test
  void answers_typed_on_the_terminal_are_kept_one_by_one_and_gone_on_with(@TempDir Path folder)
      throws Exception {
    Path kept = copied(folder.resolve("kept"));
    List<Question> questions = book(kept).sheet("Ben", 2).orElseThrow().questions();
    String typed = "zz\n" + right(questions.get(0)) + "\n" + right(questions.get(1)) + "\n";
    Console.Ran ran =
        Console.run(
            typed.getBytes(StandardCharsets.UTF_8),
            Map.of(),
            false,
            "mark",
            kept.toString(),
            "--pupil",
            "ben",
            "--sheet",
            "2");
    assertThat(ran.exit()).as(ran.err()).isZero();
    assertThat(ran.out()).contains("Kept: 2 answers").doesNotContain("Right.");
    assertThat(book(kept).reply("Ben", 2, 1)).isEqualTo(right(questions.get(0)));
    Files.writeString(kept.resolve("class.jsonl"), "{\"pupil\":\"torn", StandardOpenOption.APPEND);
    String rest = "\n\n" + right(questions.get(2)) + "\n";
    Console.run(
        rest.getBytes(StandardCharsets.UTF_8),
        Map.of(),
        false,
        "mark",
        kept.toString(),
        "--pupil",
        "Ben",
        "--sheet",
        "2");
    assertThat(book(kept).reply("Ben", 2, 2)).isEqualTo(right(questions.get(1)));
    assertThat(book(kept).reply("Ben", 2, 3)).isEqualTo(right(questions.get(2)));
  }

  @Test
  void answers_are_taken_in_on_a_page_that_holds_none(@TempDir Path folder) throws Exception {
    Path kept = copied(folder.resolve("kept"));
    CommandContext context =
        new CommandContext(
            null, null, new Environment(System.in, Map.of(), false, Floors.advisor()::rules));
    ClassFile file = ClassFile.open(context, kept.toString());
    ClassPage pages = new ClassPage(file, new LessonReport(context.knowledge()), context.phrases());
    HttpClient client = HttpClient.newHttpClient();
    try (PageServer server = new PageServer(pages, 0, context.facts())) {
      URI list = URI.create(server.address());
      HttpResponse<String> all =
          client.send(HttpRequest.newBuilder(list).build(), HttpResponse.BodyHandlers.ofString());
      assertThat(all.body()).contains("Ann", "href=\"0\"");
      List<Question> questions = book(kept).sheets().get(0).questions();
      String form = "q1=" + URLEncoder.encode(right(questions.get(0)), StandardCharsets.UTF_8);
      String origin = "http://" + list.getAuthority();
      HttpRequest post =
          HttpRequest.newBuilder(list.resolve("0"))
              .header("Origin", origin)
              .header("Content-Type", "application/x-www-form-urlencoded")
              .POST(HttpRequest.BodyPublishers.ofString(form + "&q2=%3F%3F&q99=a"))
              .build();
      HttpResponse<String> sent = client.send(post, HttpResponse.BodyHandlers.ofString());
      assertThat(sent.statusCode()).isEqualTo(200);
      assertThat(sent.body()).contains("role=\"alert\"");
      for (Question question : questions) {
        question.options().stream()
            .filter(option -> !option.shows().isEmpty())
            .forEach(option -> assertThat(sent.body()).doesNotContain(option.shows()));
      }
      HttpRequest foreign =
          HttpRequest.newBuilder(list.resolve("0"))
              .header("Origin", "http://elsewhere.example")
              .header("Content-Type", "application/x-www-form-urlencoded")
              .POST(HttpRequest.BodyPublishers.ofString("q1=b"))
              .build();
      assertThat(client.send(foreign, HttpResponse.BodyHandlers.ofString()).statusCode())
          .isEqualTo(403);
    }
    ClassBook after = book(kept);
    String whose = after.sheets().get(0).pupil();
    assertThat(after.reply(whose, 1, 1)).isEqualTo(right(after.sheets().get(0).questions().get(0)));
    assertThat(after.reply(whose, 1, 2)).isEqualTo("??");
  }

  @Test
  void a_pupil_who_comes_later_gets_sheets_and_the_others_keep_theirs(@TempDir Path folder)
      throws Exception {
    Path kept = copied(folder.resolve("kept"));
    List<ClassBook.Handed> before = book(kept).sheets();
    String[] again = {
      "lesson",
      "--course",
      course.toString(),
      "--pupils",
      "Ann, Ben, Zoe",
      "--out",
      kept.toString(),
      "--resume"
    };
    assertThat(Console.run(again).exit()).isZero();
    ClassBook after = book(kept);
    assertThat(after.pupils()).containsExactly("Ann", "Ben", "Zoe");
    assertThat(after.sheets().subList(0, before.size())).isEqualTo(before);
    assertThat(Files.readString(kept.resolve("sheet-01-from-3.html"))).contains("Name: Zoe");
  }

  @Test
  void a_course_that_is_none_is_told_with_every_fault_and_nothing_is_written(@TempDir Path folder)
      throws Exception {
    Path wrong = folder.resolve("wrong.yaml");
    Files.writeString(
        wrong, "sheets:\n  - {sheet: A, topics: [beds], floors: [x.yaml], questions: 0}\n");
    Path out = folder.resolve("out");
    Console.Ran ran = Console.run("lesson", "--course", wrong.toString(), "--out", out.toString());
    assertThat(ran.exit()).isEqualTo(3);
    assertThat(ran.err())
        .contains("the course has no name", "there is no topic 'beds'", "write: bed", "from 1 to");
    assertThat(out).doesNotExist();
    List<String[]> usages = new ArrayList<>();
    usages.add(new String[] {"lesson", "--course", course.toString()});
    usages.add(new String[] {"lesson"});
    usages.add(new String[] {"mark", folder.toString()});
    usages.add(new String[] {"mark", term.toString(), "--pupil", "Ann"});
    usages.add(
        new String[] {
          "lesson", "--course", course.toString(), "--out", out.toString(), "--pupils", "Ann,,Ben"
        });
    for (String[] usage : usages) {
      assertThat(Console.run(usage).exit()).as(String.join(" ", usage)).isEqualTo(2);
    }
    assertThat(
            Console.run(
                    "lesson",
                    "--course",
                    course.toString(),
                    "--pupils",
                    "Ann",
                    "--out",
                    term.toString())
                .err())
        .contains("is there already");
  }

  @Test
  void a_changed_figure_is_shown_by_what_it_moves(@TempDir Path folder) throws Exception {
    Path rules = folder.resolve("rules");
    try (var all = Files.walk(Path.of("rules"))) {
      for (Path one : all.toList()) {
        Path to = rules.resolve(Path.of("rules").relativize(one));
        if (Files.isDirectory(one)) {
          Files.createDirectories(to);
        } else {
          Files.copy(one, to);
        }
      }
    }
    Path figures = rules.resolve("figures/solid.yaml");
    String text = Files.readString(figures);
    Files.writeString(
        figures, text.replaceFirst("(floor-humidity-limit:\\R.*\\R {2}value: )75 %", "$160 %"));
    Console.Ran ran =
        Console.run(
            "compare-rules", rules.toString(), shared.resolve("hall-on-a-slab.yaml").toString());
    assertThat(ran.exit()).as(ran.err()).isZero();
    assertThat(ran.out().replaceAll("\\s+", " "))
        .contains("floor-humidity-limit: 60 % (was: 75 %)")
        .contains("also to do first: find the moisture")
        .contains("newly holds:", "‹DAMP-33›", "rests on: floor-humidity-limit");
  }

  @Test
  void a_course_has_no_more_sheets_than_a_year_has_room_for(@TempDir Path folder) throws Exception {
    Path much = folder.resolve("long.yaml");
    String sheet = "  - {sheet: One, topics: [bed], floors: [hall-on-a-slab.yaml]}\n";
    Files.writeString(much, "course: A long one\nsheets:\n" + sheet.repeat(3000));
    Console.Ran ran =
        Console.run("lesson", "--course=" + much, "--out", folder.resolve("out").toString());
    assertThat(ran.exit()).isEqualTo(Exit.SCENARIO_INVALID);
    assertThat(ran.err()).contains("long.yaml:63:", "a course has at most 60 sheets");
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void a_class_that_is_too_large_is_not_read(@TempDir Path folder) throws Exception {
    Path large = folder.resolve("class.jsonl");
    try (java.io.RandomAccessFile file = new java.io.RandomAccessFile(large.toFile(), "rw")) {
      file.setLength(60_000_000);
    }
    Console.Ran ran = Console.run("mark", large.toString());
    assertThat(ran.exit()).isEqualTo(Exit.WRONG_USAGE);
    assertThat(ran.err()).contains("is larger than 50 MB");
  }
}
