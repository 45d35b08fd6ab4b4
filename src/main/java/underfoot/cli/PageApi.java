package underfoot.cli;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.json.JsonFactory;
import underfoot.buildup.Severity;
import underfoot.knowledge.InterviewBook.Taken;
import underfoot.knowledge.Phrases;
import underfoot.plan.Advice;
import underfoot.plan.FirstThings;
import underfoot.reasoning.Assessment;
import underfoot.report.FirstText;
import underfoot.report.MadeBy;
import underfoot.report.RecordWriter;
import underfoot.report.html.Drawings;
import underfoot.report.html.HtmlReport;
import underfoot.scenario.Answers;
import underfoot.scenario.Place;
import underfoot.scenario.ScenarioFaults;
import underfoot.talk.AnswerFile;
import underfoot.talk.Asked;
import underfoot.talk.Conversation;
import underfoot.talk.Known;
import underfoot.talk.Known.Units;
import underfoot.talk.OpenPoint;
import underfoot.talk.Reply;

/**
 * What the page asks for: the next question, what a saying is understood to be, the advice so far,
 * the whole advice, why something is asked, the scenario file of the answers, and the answers of a
 * scenario file. All that is known is handed in and out; nothing is kept between two requests.
 */
final class PageApi {
  /** What may be asked for, by the last part of the address. */
  static final Set<String> ASKED =
      Set.of(
          "begin",
          "say",
          "next",
          "question",
          "left",
          "first",
          "advice",
          "report",
          "why",
          "cost",
          "file",
          "sheet",
          "list",
          "share",
          "open");

  /** What of it takes long. */
  static final Set<String> HEAVY = Set.of("left", "first", "report");

  private static final int FIRST_THINGS = 3;
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
  private final Conversation conversation;
  private final Phrases phrases;
  private final Known begun;

  PageApi(CommandContext context, Known begun) throws UserError {
    this.desk = context.desk(false);
    this.thorough = context.desk(true);
    this.madeBy = context.madeBy();
    this.begun = begun;
    this.conversation = context.conversation();
    this.phrases = context.phrases();
  }

  /** What a request said: texts by name; what is known, by place. */
  private record Request(
      Map<String, String> texts, Map<String, String> answers, Map<String, String> taken) {
    String text(String name) {
      return texts.getOrDefault(name, "");
    }
  }

  /**
   * Answers one request.
   *
   * @param what one of {@link #ASKED}
   * @param body the request, JSON
   * @param late whether nobody waits for the answer any more
   * @param out where the answer is written, JSON
   * @throws UserError if the rule base is at fault
   */
  void answer(String what, byte[] body, BooleanSupplier late, StringWriter out) throws UserError {
    Request request;
    try {
      request = read(body);
    } catch (JacksonException e) {
      request = new Request(Map.of(), Map.of(), Map.of());
    }
    Known known = known(request);
    Known named = conversation.named(known);
    Object answer =
        switch (what) {
          case "begin" -> state(begun);
          case "open" -> open(request);
          case "say" -> say(known, request);
          case "next" -> next(known);
          case "question" -> question(known, request);
          case "left" -> left(named, late);
          case "first" -> first(named, late);
          case "file" -> Map.of("file", named.file());
          case "why" -> lines(known, request, conversation::why);
          case "cost" -> lines(known, request, conversation::cost);
          case "report" -> report(named.answers());
          case "sheet", "list", "share" -> papers(what, named.answers());
          default -> advice(named);
        };
    RecordWriter.write(answer, true, Map.of(), out);
  }

  private static Request read(byte[] body) {
    Map<String, String> texts = new LinkedHashMap<>();
    Map<String, String> answers = new LinkedHashMap<>();
    Map<String, String> taken = new LinkedHashMap<>();
    try (JsonParser json = JSON.createParser(ObjectReadContext.empty(), body)) {
      Map<String, String> at = texts;
      String name = "";
      JsonToken token = json.nextToken();
      while (token != null) {
        if (token == JsonToken.PROPERTY_NAME) {
          name = json.currentName();
        } else if (token == JsonToken.START_OBJECT && name.equals("answers")) {
          at = answers;
        } else if (token == JsonToken.START_OBJECT && name.equals("taken")) {
          at = taken;
        } else if (token == JsonToken.END_OBJECT) {
          at = texts;
        } else if (token == JsonToken.VALUE_STRING) {
          at.put(name, json.getString());
        }
        token = json.nextToken();
      }
    }
    return new Request(texts, answers, taken);
  }

  /** What the page says is known; what cannot be is left out. */
  private Known known(Request request) {
    Known known = conversation.begun();
    Answers answers = known.answers();
    Map<String, Taken> taken = new LinkedHashMap<>();
    List<String> ids = new ArrayList<>(request.answers().keySet());
    ids.sort(Comparator.comparingInt(Place::hangsOn)); // whatever order they were sent in
    for (String id : ids) {
      Optional<Place> place = conversation.place(new Known(answers, Map.of()), id);
      String said = request.answers().get(id);
      if (said.isBlank() || place.isEmpty()) {
        continue;
      }
      try {
        answers = answers.with(place.get(), said);
        String since = request.taken().getOrDefault(id, "");
        if (!since.isEmpty()) {
          taken.put(id, new Taken(said, false, since));
        }
      } catch (ScenarioFaults contradiction) {
        continue; // then it is asked
      }
    }
    Units units =
        switch (request.text("units")) {
          case "metric" -> Units.METRIC;
          case "imperial" -> Units.IMPERIAL;
          default -> Units.AS_SAID;
        };
    return new Known(answers, taken, units);
  }

  /** What is known, as the page hands it back. */
  private static Map<String, Object> state(Known known) {
    Map<String, String> taken = new LinkedHashMap<>();
    known.taken().forEach((id, one) -> taken.put(id, one.since()));
    Map<String, Object> state = new LinkedHashMap<>();
    state.put("answers", known.answers().said());
    state.put("taken", taken);
    return state;
  }

  private Map<String, Object> open(Request request) {
    try {
      byte[] yaml = request.text("file").getBytes(StandardCharsets.UTF_8);
      return state(conversation.begun(AnswerFile.read(begun.answers().book(), "your file", yaml)));
    } catch (ScenarioFaults e) {
      return Map.of("wrong", e.text());
    }
  }

  private Map<String, Object> say(Known known, Request request) {
    Optional<Place> place = conversation.place(known, request.text("place"));
    String words = request.text("words");
    String command = conversation.command(words);
    if (place.isEmpty() || !command.isEmpty()) {
      return Map.of("command", command);
    }
    Reply reply = conversation.say(known, place.get(), words, request.text("meant"));
    Map<String, Object> told = state(reply.known());
    told.put("command", "");
    told.put("told", reply.told());
    told.put("answered", reply.answered());
    told.put("objection", reply.objection());
    told.put("meant", reply.meant());
    return told;
  }

  private record Said(
      String id, String part, String called, String ask, String value, boolean guess) {}

  /** The next question, and all that was said. */
  private Map<String, Object> next(Known known) {
    Map<String, Object> told = new LinkedHashMap<>();
    Optional<Asked> next = conversation.next(known);
    next.ifPresent(one -> told.put("question", PageQuestion.of(one, conversation)));
    Known named = conversation.named(known);
    boolean finer =
        next.isPresent() && !conversation.interview().decides(named.answers(), next.get().place());
    told.put("finer", finer);
    told.put("offer", finer ? conversation.offer(named) : "");
    told.put("said", said(known));
    return told;
  }

  private List<Said> said(Known known) {
    List<Said> said = new ArrayList<>();
    for (Place place : conversation.interview().inOrder(known.answers())) {
      boolean alone = place.fact().of().size() == 1;
      if (known.answers().has(place) && !alone) {
        Asked asked = conversation.asked(known, place);
        String called =
            place.whose().isEmpty()
                ? place.fact().called()
                : place.fact().called() + ", " + place.whose();
        boolean guess = known.isGuess(place);
        said.add(new Said(place.id(), asked.part(), called, asked.ask(), asked.said(), guess));
      }
    }
    return said;
  }

  private Map<String, Object> question(Known known, Request request) {
    Map<String, Object> told = new LinkedHashMap<>();
    conversation
        .place(known, request.text("place"))
        .ifPresent(
            place ->
                told.put(
                    "question", PageQuestion.of(conversation.asked(known, place), conversation)));
    return told;
  }

  private record Left(String id, String part, String ask) {}

  /** What is still open: the questions that matter as things stand. */
  private Map<String, Object> left(Known known, BooleanSupplier late) {
    List<Left> left =
        conversation.interview().likely(known.answers(), late).stream()
            .filter(place -> !place.fact().key().equals(NAME))
            .map(place -> conversation.asked(known, place))
            .map(one -> new Left(one.place().id(), one.part(), one.ask()))
            .toList();
    return late.getAsBoolean() ? Map.of("late", true) : Map.of("left", left);
  }

  private record First(String id, String words) {}

  private Map<String, Object> first(Known known, BooleanSupplier late) {
    List<OpenPoint> first = conversation.first(known, FIRST_THINGS, late);
    if (late.getAsBoolean()) {
      return Map.of("late", true);
    }
    return Map.of(
        "first", first.stream().map(one -> new First(one.place().id(), one.words())).toList());
  }

  /** What tells lines of a place. */
  private interface Lines {
    List<String> of(Known known, Place place);
  }

  private Map<String, Object> lines(Known known, Request request, Lines lines) {
    return Map.of(
        "lines",
        conversation
            .place(known, request.text("place"))
            .map(place -> lines.of(known, place))
            .orElse(List.of()));
  }

  /** The advice so far. */
  private Map<String, Object> advice(Known known) throws UserError {
    Answers answers = known.answers();
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("drawn", PageDrawn.of(answers));
    told.put("doors", PageDrawn.doors(answers));
    Optional<Assessment> assessment = conversation.interview().assessment(answers);
    if (assessment.isPresent()) {
      try {
        advice(told, desk.advise(answers.scenario()), assessment.get());
      } catch (UserError userError) {
        if (userError.exit() != Exit.SCENARIO_INVALID) {
          throw userError;
        }
        // Only the price book is read from outside.
        String words = userError.getMessage().replaceFirst("^" + YOURS + "[:0-9]* ", "");
        told.put("wrong", Map.of(PRICES, words));
      }
    }
    List<Place> missing =
        answers.missing().stream().filter(place -> !place.fact().key().equals(NAME)).toList();
    told.put("missing", missing.stream().map(Place::id).toList());
    return told;
  }

  private void advice(Map<String, Object> told, Advice advice, Assessment assessment) {
    told.put("name", advice.scenario());
    told.put("preview", conversation.preview(assessment));
    told.put("verdict", advice.verdict().word());
    told.put("headline", advice.first().headline());
    told.put("now", advice.first().doNow().stream().map(FirstThings.DoNow::text));
    String gates = FirstText.gates(advice);
    told.put("gates", gates.isEmpty() ? "" : phrases.say("also-gates", "titles", gates));
    String dangers = FirstText.dangers(advice);
    told.put("hurts", dangers.isEmpty() ? "" : phrases.say("dangers-here", "titles", dangers));
    told.put("verdictWords", phrases.say("verdict-" + advice.verdict().word()));
    told.put("summary", advice.summary());
    told.put("section", Drawings.section(advice, phrases));
    told.put("levels", Drawings.levels(advice, phrases));
    told.put("halts", advice.stopFindings().stream().map(one -> new Note(one.title(), one.text())));
    told.put(
        "dangers",
        advice.cautions().stream()
            .filter(one -> one.severity() == Severity.DANGER)
            .map(one -> new Note(one.title(), one.text())));
    told.put("before", advice.remedies().stream().map(one -> new Note(one.title(), one.text())));
    told.replaceAll((name, value) -> value instanceof Stream<?> all ? all.toList() : value);
  }

  private record Note(String title, String text) {}

  /** A page to take along. */
  private Map<String, Object> papers(String what, Answers answers) throws UserError {
    return answers.complete()
        ? PagePapers.of(what, thorough.advise(answers.scenario()), phrases, madeBy)
        : Map.of();
  }

  /** The whole advice with its reasons, worked out as {@code advise} does. */
  private Map<String, Object> report(Answers answers) throws UserError {
    if (!answers.complete()) {
      return Map.of();
    }
    Advice advice = thorough.advise(answers.scenario());
    return Map.of("report", HtmlReport.body(advice, phrases, madeBy));
  }
}
