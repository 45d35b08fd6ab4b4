package underfoot.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Figure;
import underfoot.knowledge.LessonBook.Item;

/** A question in the making. What is not said of it is empty. */
final class Draft {
  private final Item kind;
  private final Floor floor;
  private final Values values;
  private List<String> given;
  private String ask;
  private List<Question.Option> options = List.of();
  private Question.Reply reply = Question.Reply.NUMBER;
  private List<Set<String>> right = List.of();
  private double number = Double.NaN;
  private double within;
  private List<Question.Slip> slips = List.of();
  private String answer = "";
  private final List<String> worked = new ArrayList<>();
  private List<Question.Cite> cites;

  Draft(Item kind, Floor floor, Values values) {
    this.kind = kind;
    this.floor = floor;
    this.values = values;
    this.given = kind.list("given").stream().map(values::fill).toList();
    this.ask = values.fill(kind.field("ask"));
    kind.list("why").forEach(line -> worked.add(values.fill(line)));
    List<Derivation> because = new ArrayList<>();
    kind.list("because").forEach(one -> because.addAll(floor.because(one)));
    this.cites = floor.cites(because);
  }

  Draft ask(String... filling) {
    for (int i = 0; i + 1 < filling.length; i += 2) {
      ask = ask.replace('<' + filling[i] + '>', filling[i + 1]);
    }
    return this;
  }

  /** Options under letters; those that show no misunderstanding are right. */
  Draft choice(List<Question.Option> texts, boolean several) {
    List<Question.Option> named = new ArrayList<>();
    List<Set<String>> rightOnes = new ArrayList<>();
    List<String> says = new ArrayList<>();
    for (Question.Option one : texts) {
      String letter = Floor.letter(named.size());
      named.add(new Question.Option(letter, one.text(), one.shows()));
      if (one.shows().isEmpty()) {
        rightOnes.add(Set.of(letter));
        says.add(one.text());
      }
    }
    options = named;
    right = rightOnes;
    reply = several ? Question.Reply.SOME : Question.Reply.ONE;
    answer = String.join("; ", says);
    return this;
  }

  /** Texts to put in order, the first one first. */
  Draft order(List<String> inOrder) {
    Map<String, String> letters = new LinkedHashMap<>();
    List<Question.Option> named = new ArrayList<>();
    for (String text : floor.drawn(inOrder, inOrder.size())) {
      letters.put(text, Floor.letter(named.size()));
      named.add(new Question.Option(letters.get(text), text, ""));
    }
    options = named;
    right = inOrder.stream().map(text -> Set.of(letters.get(text))).toList();
    reply = Question.Reply.ORDER;
    answer = String.join("; then ", inOrder);
    return this;
  }

  /** Numbered lines, of each group of which one is to be found. */
  Draft lines(List<Question.Option> numbered, List<Set<String>> groups) {
    options = numbered;
    right = groups;
    reply = Question.Reply.LINES;
    return this;
  }

  /** A number in the unit of the kind of question. */
  Draft number(double value, double share, List<Question.Slip> others) {
    number = value;
    within = share;
    slips = others;
    return this;
  }

  Draft answer(String words) {
    answer = words;
    return this;
  }

  Draft worked(List<String> lines) {
    worked.addAll(lines);
    return this;
  }

  Draft cites(List<Question.Cite> rules) {
    if (!rules.isEmpty()) {
      cites = rules;
    }
    return this;
  }

  Question made() {
    List<Figure> figures = new ArrayList<>(values.figures());
    kind.list("figures").forEach(name -> figures.add(floor.knowledge().figures().get(name)));
    return new Question(
        kind.id(),
        kind.field("topic"),
        kind.whole("level", 1),
        kind.field("aim"),
        given,
        ask,
        options,
        reply,
        right,
        number,
        within,
        reply == Question.Reply.NUMBER ? kind.field("unit") : "",
        slips,
        answer,
        worked,
        cites,
        figures);
  }
}
