package underfoot.cli;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.json.JsonFactory;
import underfoot.knowledge.InterviewBook;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.RuleNote;
import underfoot.measure.Texts;
import underfoot.plan.Advice;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.Interview;
import underfoot.reasoning.WhatIf;
import underfoot.report.MadeBy;
import underfoot.report.RecordWriter;
import underfoot.report.html.Drawings;
import underfoot.report.html.HtmlReport;
import underfoot.scenario.Answers;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Fault;
import underfoot.scenario.Kind;
import underfoot.scenario.Place;
import underfoot.scenario.ScenarioFaults;

/**
 * What the page asks for: the advice so far, the questions that matter, the whole advice, why
 * something is asked, the scenario file of the answers, and the answers of a scenario file. It
 * keeps nothing between two requests.
 */
final class PageApi {
  /** What may be asked for, by the last part of the address. */
  static final Set<String> ASKED =
      Set.of("begin", "advice", "questions", "report", "why", "file", "open");

  /** What of it takes long. */
  static final Set<String> HEAVY = Set.of("questions", "report");

  private static final int FIRST_THINGS = 3;
  private static final int CHANGES_TOLD = 4;
  private static final int RULES_TOLD = 5;
  private static final String NAME = "scenario";
  private static final String PRICES = "budget.prices";
  private static final String YOURS = "your answers";
  private static final JsonFactory JSON =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder().maxNestingDepth(4).maxStringLength(1_100_000).build())
          .build();

  private final Desk desk;
  private final Desk thorough;
  private final MadeBy madeBy;
  private final Interview interview;
  private final Phrases phrases;
  private final Answers begun;

  PageApi(CommandContext context, Answers begun) throws UserError {
    this.desk = context.desk(false);
    this.thorough = context.desk(true);
    this.madeBy = context.madeBy();
    this.begun = begun;
    this.interview = context.interview();
    this.phrases = context.phrases();
  }

  /** What a request said: texts by name; {@code answers} by place. */
  private record Request(Map<String, String> texts, Map<String, String> answers) {
    String text(String name) {
      return texts.getOrDefault(name, "");
    }
  }

  /**
   * What was understood.
   *
   * @param answers the answers that could be taken; a floor that nobody named has a name
   * @param wrong what is wrong with the others, by place
   * @param taken what was taken for want of knowing better, by place
   */
  private record Heard(
      Answers answers, Map<String, String> wrong, Map<String, InterviewBook.Taken> taken) {}

  /**
   * Answers one request.
   *
   * @param what one of {@link #ASKED}
   * @param body the request, JSON
   * @param out where the answer is written, JSON
   * @throws Complaint if the rule base is at fault
   */
  void answer(String what, byte[] body, StringWriter out) throws UserError {
    Request request;
    try {
      request = read(body);
    } catch (JacksonException e) {
      request = new Request(Map.of(), Map.of());
    }
    Heard heard = hear(request);
    Object answer =
        switch (what) {
          case "begin" -> Map.of("answers", begun.said());
          case "open" -> open(request);
          case "file" -> new File(AnswerFile.text(heard.answers(), heard.taken()), heard.wrong());
          case "why" -> Map.of("because", why(heard, request));
          case "questions" -> questions(heard);
          case "report" -> report(heard.answers());
          default -> advice(heard);
        };
    RecordWriter.write(answer, true, Map.of(), out);
  }

  private record File(String file, Map<String, String> wrong) {}

  private static Request read(byte[] body) {
    Map<String, String> texts = new LinkedHashMap<>();
    Map<String, String> answers = new LinkedHashMap<>();
    try (JsonParser json = JSON.createParser(ObjectReadContext.empty(), body)) {
      Map<String, String> at = texts;
      String name = "";
      JsonToken token = json.nextToken();
      while (token != null) {
        if (token == JsonToken.PROPERTY_NAME) {
          name = json.currentName();
        } else if (token == JsonToken.START_OBJECT && name.equals("answers")) {
          at = answers;
        } else if (token == JsonToken.END_OBJECT) {
          at = texts;
        } else if (token == JsonToken.VALUE_STRING) {
          at.put(name, json.getString());
        }
        token = json.nextToken();
      }
    }
    return new Request(texts, answers);
  }

  private Optional<Place> place(Answers answers, String id) {
    int at = id.indexOf('@');
    String key = at < 0 ? id : id.substring(0, at);
    String about = at < 0 ? "" : id.substring(at + 1);
    return answers
        .book()
        .find(key)
        .filter(fact -> fact.key().equals(key) && fact.ofEntries() != about.isEmpty())
        .map(fact -> new Place(fact, about));
  }

  private Heard hear(Request request) {
    Answers answers = Interview.begun(Answers.none(begun.book()));
    Map<String, String> wrong = new LinkedHashMap<>();
    Map<String, InterviewBook.Taken> taken = new LinkedHashMap<>();
    // Lists come before their entries, whatever order they were sent in.
    List<String> ids = new ArrayList<>(request.answers().keySet());
    ids.sort((a, b) -> Boolean.compare(a.contains("@"), b.contains("@")));
    for (String id : ids) {
      Optional<Place> place = place(answers, id);
      String said = request.answers().get(id);
      if (place.isEmpty() || said.isBlank()) {
        continue;
      }
      FactDefinition fact = place.get().fact();
      Optional<InterviewBook.Taken> instead = interview.book().taken(fact, said);
      try {
        answers = answers.with(place.get(), instead.map(InterviewBook.Taken::value).orElse(said));
        instead.ifPresent(one -> taken.put(id, one));
      } catch (ScenarioFaults e) {
        wrong.put(id, plain(fact, e.faults().get(0)));
      }
    }
    return new Heard(named(answers), wrong, taken);
  }

  /** Nobody need think of a name before there is advice. */
  private static Answers named(Answers answers) {
    List<Place> missing = answers.missing();
    if (missing.size() != 1 || !missing.get(0).fact().key().equals(NAME)) {
      return answers;
    }
    try {
      return answers.with(missing.get(0), AnswerFile.name(answers));
    } catch (ScenarioFaults e) {
      throw new IllegalStateException("the name of a floor is refused", e);
    }
  }

  /** A fault beside its field, which needs no key before it. */
  private static String plain(FactDefinition fact, Fault fault) {
    String key = fact.word() + ": ";
    String what =
        fault.what().startsWith(key) ? fault.what().substring(key.length()) : fault.what();
    String how = fault.how().replace(": " + key, ": ").replace('\n', ' ').strip();
    return Texts.capital(what) + "." + (how.isEmpty() ? "" : " " + Texts.capital(how) + ".");
  }

  private Map<String, Object> open(Request request) {
    try {
      byte[] yaml = request.text("file").getBytes(StandardCharsets.UTF_8);
      Answers answers = Interview.begun(Answers.of(begun.book(), "your file", yaml));
      return Map.of("answers", answers.said());
    } catch (ScenarioFaults e) {
      return Map.of("wrong", e.text());
    }
  }

  private List<String> why(Heard heard, Request request) {
    Optional<Place> place = place(heard.answers(), request.text("place"));
    if (place.isEmpty() || !heard.answers().complete()) {
      return List.of("No advice can be given before this is known.");
    }
    Interview.Why why = interview.why(heard.answers(), place.get());
    List<String> because = new ArrayList<>();
    why.changes().stream().limit(CHANGES_TOLD).map(this::otherwise).forEach(because::add);
    for (RuleNote rule : why.rules().subList(0, Math.min(RULES_TOLD, why.rules().size()))) {
      because.add(rule.reason() + ". ‹" + rule.id() + "›");
    }
    if (why.rules().size() > RULES_TOLD) {
      because.add("Further rules that read it: " + (why.rules().size() - RULES_TOLD) + ".");
    }
    return because;
  }

  private String otherwise(WhatIf.Otherwise one) {
    String words = phrases.say("if-it-is", "value", one.value(), "changes", one.clause());
    return Texts.capital(words) + ".";
  }

  /** The advice so far, and what became of each answer. */
  private Map<String, Object> advice(Heard heard) throws UserError {
    Answers answers = heard.answers();
    Map<String, String> taken = new LinkedHashMap<>();
    heard
        .taken()
        .forEach((id, one) -> taken.put(id, "Taken as " + one.value() + ": " + one.since() + "."));
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("taken", taken);
    told.put("drawn", drawn(answers));
    Map<String, String> wrong = new LinkedHashMap<>(heard.wrong());
    Optional<Assessment> assessment = interview.assessment(answers);
    if (assessment.isPresent()) {
      try {
        advice(told, desk.advise(answers.scenario()), assessment.get());
      } catch (UserError userError) {
        if (userError.exit() != Exit.SCENARIO_INVALID) {
          throw userError;
        }
        // Only the price book is read from outside.
        wrong.put(PRICES, userError.getMessage().replaceFirst("^" + YOURS + "[:0-9]* ", ""));
      }
    }
    told.put(
        "missing",
        answers.missing().stream()
            .filter(place -> !place.fact().key().equals(NAME))
            .map(Place::id)
            .toList());
    told.put("wrong", wrong);
    return told;
  }

  private void advice(Map<String, Object> told, Advice advice, Assessment assessment) {
    told.put("name", advice.scenario());
    told.put("preview", InterviewScreen.preview(assessment, phrases));
    told.put("verdict", advice.verdict().word());
    told.put("verdictWords", phrases.say("verdict-" + advice.verdict().word()));
    told.put("summary", advice.summary());
    told.put("section", Drawings.section(advice, phrases));
    told.put("levels", Drawings.levels(advice, phrases));
    List<Note> before = new ArrayList<>();
    advice.stopFindings().forEach(one -> before.add(new Note(one.title(), one.text())));
    advice.remedies().forEach(one -> before.add(new Note(one.title(), one.text())));
    told.put("before", before);
  }

  private record Note(String title, String text) {}

  /** The room and its spot levels in millimetres, however they were written. */
  private static Map<String, Object> drawn(Answers answers) {
    Map<String, Object> drawn = new LinkedHashMap<>();
    drawn.put(
        "room.outline",
        answers.scenario().outline().stream().map(one -> List.of(one.x(), one.y())).toList());
    drawn.put(
        "levels.readings",
        answers.scenario().readings().stream()
            .map(one -> List.of(one.x(), one.y(), one.z()))
            .toList());
    return drawn;
  }

  /** The whole advice with its reasons, worked out as {@code advise} does. */
  private Map<String, Object> report(Answers answers) throws UserError {
    if (!answers.complete()) {
      return Map.of();
    }
    Advice advice = thorough.advise(answers.scenario());
    return Map.of("report", HtmlReport.body(advice, phrases, madeBy));
  }

  private record Questions(boolean complete, List<First> first, List<Question> questions) {}

  private record First(String id, String words) {}

  /**
   * What to find out first, and every question that matters or was answered, in the order of the
   * parts.
   */
  private Questions questions(Heard heard) {
    Answers answers = heard.answers();
    List<Place> likely = interview.likely(answers);
    List<Place> open = likely.isEmpty() ? interview.open(answers) : likely;
    List<Question> questions = new ArrayList<>();
    for (Place place : interview.inOrder(answers)) {
      boolean matters = open.contains(place);
      // Drawn rather than asked: a plan also tells amounts, whatever hangs on it.
      boolean drawn =
          answers.complete()
              && (place.fact().kind() == Kind.POINTS || place.fact().kind() == Kind.READINGS);
      boolean alone = place.fact().kind() == Kind.CHOICE && place.fact().of().size() == 1;
      boolean name = place.fact().key().equals(NAME);
      if (!alone && (matters || drawn || name || answers.has(place))) {
        questions.add(question(place, matters));
      }
    }
    List<First> first =
        OpenPoint.of(interview, phrases, answers, heard.taken(), FIRST_THINGS).stream()
            .map(one -> new First(one.place().id(), one.words()))
            .toList();
    return new Questions(answers.complete(), first, questions);
  }

  private record Question(
      String id,
      String part,
      String ask,
      String means,
      String look,
      String picture,
      String kind,
      String example,
      boolean mayBeUnknown,
      boolean required,
      boolean matters,
      List<Choice> choices,
      List<String> loosely) {}

  private record Choice(String value, String looks) {}

  private Question question(Place place, boolean matters) {
    FactDefinition fact = place.fact();
    boolean guessed = interview.book().taken(fact, Answers.UNKNOWN).isPresent();
    boolean name = fact.key().equals(NAME);
    List<String> choices = fact.kind() == Kind.YES_NO ? List.of("yes", "no") : fact.of();
    return new Question(
        place.id(),
        interview.book().part(fact),
        InterviewScreen.question(place),
        fact.means(),
        fact.look(),
        interview.book().picture(fact),
        fact.kind().name().toLowerCase(Locale.ROOT),
        fact.example(),
        guessed || !fact.required(),
        fact.required() && !name,
        matters && !name,
        choices.stream()
            .map(choice -> new Choice(choice, interview.book().choice(fact, choice)))
            .toList(),
        List.copyOf(interview.book().loosely(fact)));
  }
}
