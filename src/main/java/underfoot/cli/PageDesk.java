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
import underfoot.reasoning.Counsel;
import underfoot.reasoning.Interview;
import underfoot.reasoning.WhatIf;
import underfoot.report.JsonReport;
import underfoot.report.Page;
import underfoot.report.SectionSketch;
import underfoot.report.TextReport;
import underfoot.scenario.Answers;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Fault;
import underfoot.scenario.Kind;
import underfoot.scenario.Place;
import underfoot.scenario.ScenarioFaults;

/**
 * What the page asks for: the questions that matter and the advice so far, why one is asked, the
 * scenario file of the answers, and the answers of a scenario file. It keeps nothing between two
 * requests.
 */
final class PageDesk {
  /** What may be asked for, by the last part of the address. */
  static final Set<String> ASKED = Set.of("begin", "think", "why", "file", "open");

  private static final int REPORT_WIDTH = 78;
  private static final int FIRST_THINGS = 3;
  private static final JsonFactory JSON =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder().maxNestingDepth(4).maxStringLength(1_100_000).build())
          .build();

  private final Workbench.Desk desk;
  private final Interview interview;
  private final Phrases phrases;
  private final Answers begun;

  PageDesk(Workbench bench, Answers begun) throws Complaint {
    this.desk = bench.desk(false);
    this.begun = begun;
    this.interview = bench.interview();
    this.phrases = new Phrases(bench.knowledge().wording());
  }

  /** What a request said: texts by name; {@code answers} by place. */
  private record Request(Map<String, String> texts, Map<String, String> answers) {
    String text(String name) {
      return texts.getOrDefault(name, "");
    }
  }

  /** The answers that could be taken, and what is wrong with the others. */
  private record Heard(Answers answers, Map<String, String> wrong, Map<String, String> taken) {}

  /**
   * Answers one request.
   *
   * @param what one of {@link #ASKED}
   * @param body the request, JSON
   * @param out where the answer is written, JSON
   * @throws Complaint if the rule base is at fault
   */
  void answer(String what, byte[] body, StringWriter out) throws Complaint {
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
          json.writeStringProperty("file", AnswerFile.text(heard.answers(), Map.of()));
        }
        case "why" -> why(json, request);
        default -> think(json, request);
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
    Map<String, String> taken = new LinkedHashMap<>();
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
      if (instead.isPresent()) {
        taken.put(id, "Taken as " + instead.get().value() + ": " + instead.get().since() + ".");
      }
      try {
        answers = answers.with(place.get(), instead.map(InterviewBook.Taken::value).orElse(said));
      } catch (ScenarioFaults e) {
        Fault fault = e.faults().get(0);
        wrong.put(id, (fault.what() + ". " + fault.how()).replace('\n', ' ').strip());
      }
    }
    return new Heard(answers, wrong, taken);
  }

  private void answers(JsonGenerator json, Answers answers) {
    json.writeObjectPropertyStart("answers");
    answers.said().forEach(json::writeStringProperty);
    json.writeEndObject();
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
      for (WhatIf.Otherwise one : why.changes()) {
        json.writeString(otherwise(one));
      }
      for (RuleNote rule : why.rules()) {
        json.writeString(rule.reason() + ". ‹" + rule.id() + "›");
      }
    } else {
      json.writeString("No advice can be given before this is known.");
    }
    json.writeEndArray();
  }

  private String otherwise(WhatIf.Otherwise one) {
    String words =
        phrases.say(
            "if-it-is", "value", one.value(), "changes", String.join("; ", one.differences()));
    return Texts.capital(words) + ".";
  }

  private void think(JsonGenerator json, Request request) throws Complaint {
    Heard heard = hear(request);
    Answers answers = heard.answers();
    texts(json, "wrong", heard.wrong());
    texts(json, "taken", heard.taken());
    boolean whole = request.text("how").equals("questions");
    List<Place> open = whole ? interview.likely(answers) : List.of();
    if (whole && open.isEmpty()) {
      open = interview.open(answers);
    }
    if (whole) {
      questions(json, answers, open);
      json.writeArrayPropertyStart("first");
      for (Interview.Hanging one : interview.first(answers, FIRST_THINGS)) {
        String look = one.place().fact().look();
        json.writeString(
            Talk.question(one.place())
                + (look.isEmpty() ? " " : " " + look + ". ")
                + otherwise(one.changes().get(0)));
      }
      json.writeEndArray();
    }
    Optional<Counsel> counsel = interview.counsel(answers);
    json.writeBooleanProperty("complete", counsel.isPresent());
    if (counsel.isPresent()) {
      json.writeStringProperty("preview", Talk.preview(counsel.get(), phrases));
      Advice advice = desk.advise("your answers", answers.scenario());
      advice(json, advice);
    }
  }

  private void advice(JsonGenerator json, Advice advice) {
    json.writeStringProperty("verdict", advice.verdict().word());
    json.writeStringProperty("verdictWords", phrases.say("verdict-" + advice.verdict().word()));
    json.writeStringProperty("summary", advice.summary());
    json.writeStringProperty("section", SectionSketch.of(advice));
    Page page = new Page(REPORT_WIDTH, false);
    TextReport.write(advice, phrases, page);
    json.writeStringProperty("report", page.text());
    json.writeArrayPropertyStart("before");
    advice.halts().forEach(one -> json.writeString(one.title() + ". " + one.text()));
    advice.remedies().forEach(one -> json.writeString(one.title() + ". " + one.text()));
    json.writeEndArray();
  }

  private static void texts(JsonGenerator json, String name, Map<String, String> texts) {
    json.writeObjectPropertyStart(name);
    texts.forEach(json::writeStringProperty);
    json.writeEndObject();
  }

  /** Every question that matters or was answered, by its part. */
  private void questions(JsonGenerator json, Answers answers, List<Place> open) {
    json.writeArrayPropertyStart("questions");
    for (Place place : interview.inOrder(answers)) {
      boolean matters = open.contains(place);
      // Drawn rather than asked: a plan also tells amounts, whatever hangs on it.
      boolean drawn =
          answers.complete()
              && (place.fact().kind() == Kind.POINTS || place.fact().kind() == Kind.READINGS);
      boolean alone = place.fact().kind() == Kind.CHOICE && place.fact().of().size() == 1;
      if (!alone && (matters || drawn || answers.has(place))) {
        question(json, place, matters);
      }
    }
    json.writeEndArray();
  }

  private void question(JsonGenerator json, Place place, boolean matters) {
    FactDefinition fact = place.fact();
    json.writeStartObject();
    json.writeStringProperty("id", place.id());
    json.writeStringProperty("part", part(fact));
    json.writeStringProperty("ask", Talk.question(place));
    json.writeStringProperty("means", fact.means());
    json.writeStringProperty("look", fact.look());
    json.writeStringProperty("picture", interview.book().picture(fact));
    json.writeStringProperty("kind", fact.kind().name().toLowerCase(Locale.ROOT));
    json.writeStringProperty("example", fact.example());
    json.writeBooleanProperty("required", fact.required());
    json.writeBooleanProperty("matters", matters);
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

  private String part(FactDefinition fact) {
    return interview.book().parts().stream()
        .filter(part -> part.facts().contains(fact.key()))
        .map(InterviewBook.Part::title)
        .findFirst()
        .orElse("Further");
  }
}
