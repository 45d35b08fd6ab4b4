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
import tools.jackson.core.JsonGenerator;
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
import underfoot.report.JsonReport;
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
  private final String ruleBase;
  private final Interview interview;
  private final Phrases phrases;
  private final Answers begun;

  PageApi(CommandContext context, Answers begun) throws UserError {
    this.desk = context.desk(false);
    this.thorough = context.desk(true);
    this.ruleBase = context.ruleBaseId();
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
    try (JsonGenerator json = JsonReport.generator(out)) {
      json.writeStartObject();
      switch (what) {
        case "begin" -> answers(json, begun);
        case "open" -> open(json, request);
        case "file" -> {
          Heard heard = hear(request);
          json.writeStringProperty("file", AnswerFile.text(heard.answers(), heard.taken()));
          texts(json, "wrong", heard.wrong());
        }
        case "why" -> why(json, request);
        case "questions" -> questions(json, hear(request));
        case "report" -> report(json, hear(request).answers());
        default -> advice(json, hear(request));
      }
      json.writeEndObject();
    }
  }

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

  private static void answers(JsonGenerator json, Answers answers) {
    texts(json, "answers", answers.said());
  }

  private void open(JsonGenerator json, Request request) {
    try {
      byte[] yaml = request.text("file").getBytes(StandardCharsets.UTF_8);
      answers(json, Interview.begun(Answers.of(begun.book(), "your file", yaml)));
    } catch (ScenarioFaults e) {
      json.writeStringProperty("wrong", e.text());
    }
  }

  private void why(JsonGenerator json, Request request) {
    Heard heard = hear(request);
    Optional<Place> place = place(heard.answers(), request.text("place"));
    json.writeArrayPropertyStart("because");
    if (place.isPresent() && heard.answers().complete()) {
      Interview.Why why = interview.why(heard.answers(), place.get());
      why.changes().stream().limit(CHANGES_TOLD).map(this::otherwise).forEach(json::writeString);
      for (RuleNote rule : why.rules().subList(0, Math.min(RULES_TOLD, why.rules().size()))) {
        json.writeString(rule.reason() + ". ‹" + rule.id() + "›");
      }
      if (why.rules().size() > RULES_TOLD) {
        json.writeString("Further rules that read it: " + (why.rules().size() - RULES_TOLD) + ".");
      }
    } else {
      json.writeString("No advice can be given before this is known.");
    }
    json.writeEndArray();
  }

  private String otherwise(WhatIf.Otherwise one) {
    String words = phrases.say("if-it-is", "value", one.value(), "changes", one.clause());
    return Texts.capital(words) + ".";
  }

  /** The advice so far, and what became of each answer. */
  private void advice(JsonGenerator json, Heard heard) throws UserError {
    Answers answers = heard.answers();
    Map<String, String> taken = new LinkedHashMap<>();
    heard
        .taken()
        .forEach((id, one) -> taken.put(id, "Taken as " + one.value() + ": " + one.since() + "."));
    texts(json, "taken", taken);
    drawn(json, answers);
    Map<String, String> wrong = new LinkedHashMap<>(heard.wrong());
    Optional<Assessment> assessment = interview.assessment(answers);
    if (assessment.isPresent()) {
      try {
        advice(json, desk.advise(answers.scenario()), assessment.get());
      } catch (UserError userError) {
        if (userError.exit() != Exit.SCENARIO_INVALID) {
          throw userError;
        }
        // Only the price book is read from outside.
        wrong.put(PRICES, userError.getMessage().replaceFirst("^" + YOURS + "[:0-9]* ", ""));
      }
    }
    json.writeArrayPropertyStart("missing");
    answers.missing().stream()
        .filter(place -> !place.fact().key().equals(NAME))
        .forEach(place -> json.writeString(place.id()));
    json.writeEndArray();
    texts(json, "wrong", wrong);
  }

  private void advice(JsonGenerator json, Advice advice, Assessment assessment) {
    json.writeStringProperty("name", advice.scenario());
    json.writeStringProperty("preview", InterviewScreen.preview(assessment, phrases));
    json.writeStringProperty("verdict", advice.verdict().word());
    json.writeStringProperty("verdictWords", phrases.say("verdict-" + advice.verdict().word()));
    json.writeStringProperty("summary", advice.summary());
    json.writeStringProperty("section", Drawings.section(advice, phrases));
    json.writeStringProperty("levels", Drawings.levels(advice, phrases));
    json.writeArrayPropertyStart("before");
    advice.stopFindings().forEach(one -> note(json, one.title(), one.text()));
    advice.remedies().forEach(one -> note(json, one.title(), one.text()));
    json.writeEndArray();
  }

  private static void note(JsonGenerator json, String title, String text) {
    json.writeStartObject();
    json.writeStringProperty("title", title);
    json.writeStringProperty("text", text);
    json.writeEndObject();
  }

  /** The room and its spot levels in millimetres, however they were written. */
  private static void drawn(JsonGenerator json, Answers answers) {
    json.writeObjectPropertyStart("drawn");
    json.writeArrayPropertyStart("room.outline");
    answers.scenario().outline().forEach(one -> numbers(json, one.x(), one.y()));
    json.writeEndArray();
    json.writeArrayPropertyStart("levels.readings");
    answers.scenario().readings().forEach(one -> numbers(json, one.x(), one.y(), one.z()));
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void numbers(JsonGenerator json, double... numbers) {
    json.writeStartArray();
    for (double one : numbers) {
      json.writeNumber(one);
    }
    json.writeEndArray();
  }

  /** The whole advice with its reasons, worked out as {@code advise} does. */
  private void report(JsonGenerator json, Answers answers) throws UserError {
    if (answers.complete()) {
      Advice advice = thorough.advise(answers.scenario());
      json.writeStringProperty("report", HtmlReport.body(advice, phrases, Version.of(), ruleBase));
    }
  }

  private static void texts(JsonGenerator json, String name, Map<String, String> texts) {
    json.writeObjectPropertyStart(name);
    texts.forEach(json::writeStringProperty);
    json.writeEndObject();
  }

  /**
   * What to find out first, and every question that matters or was answered, in the order of the
   * parts.
   */
  private void questions(JsonGenerator json, Heard heard) {
    Answers answers = heard.answers();
    List<Place> open = interview.likely(answers);
    if (open.isEmpty()) {
      open = interview.open(answers);
    }
    json.writeBooleanProperty("complete", answers.complete());
    json.writeArrayPropertyStart("first");
    for (OpenPoint one : OpenPoint.of(interview, phrases, answers, heard.taken(), FIRST_THINGS)) {
      json.writeStartObject();
      json.writeStringProperty("id", one.place().id());
      json.writeStringProperty("words", one.words());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayPropertyStart("questions");
    for (Place place : interview.inOrder(answers)) {
      boolean matters = open.contains(place);
      // Drawn rather than asked: a plan also tells amounts, whatever hangs on it.
      boolean drawn =
          answers.complete()
              && (place.fact().kind() == Kind.POINTS || place.fact().kind() == Kind.READINGS);
      boolean alone = place.fact().kind() == Kind.CHOICE && place.fact().of().size() == 1;
      boolean name = place.fact().key().equals(NAME);
      if (!alone && (matters || drawn || name || answers.has(place))) {
        question(json, place, matters);
      }
    }
    json.writeEndArray();
  }

  private void question(JsonGenerator json, Place place, boolean matters) {
    FactDefinition fact = place.fact();
    json.writeStartObject();
    json.writeStringProperty("id", place.id());
    json.writeStringProperty("part", interview.book().part(fact));
    json.writeStringProperty("ask", InterviewScreen.question(place));
    json.writeStringProperty("means", fact.means());
    json.writeStringProperty("look", fact.look());
    json.writeStringProperty("picture", interview.book().picture(fact));
    json.writeStringProperty("kind", fact.kind().name().toLowerCase(Locale.ROOT));
    json.writeStringProperty("example", fact.example());
    boolean guessed = interview.book().taken(fact, Answers.UNKNOWN).isPresent();
    boolean name = fact.key().equals(NAME);
    json.writeBooleanProperty("mayBeUnknown", guessed || !fact.required());
    json.writeBooleanProperty("required", fact.required() && !name);
    json.writeBooleanProperty("matters", matters && !name);
    json.writeArrayPropertyStart("choices");
    List<String> choices = fact.kind() == Kind.YES_NO ? List.of("yes", "no") : fact.of();
    for (String choice : choices) {
      json.writeStartObject();
      json.writeStringProperty("value", choice);
      json.writeStringProperty("looks", interview.book().choice(fact, choice));
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayPropertyStart("loosely");
    interview.book().loosely(fact).forEach(json::writeString);
    json.writeEndArray();
    json.writeEndObject();
  }
}
