package underfoot.lesson;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.LessonBook;
import underfoot.knowledge.Phrases;
import underfoot.plan.Advice;
import underfoot.plan.Advice.Decision;
import underfoot.plan.Justification;
import underfoot.reasoning.Assessment;

/**
 * What the makers of questions share: the floor, what was decided on it, and the draw of chance.
 */
final class LessonSheet {
  private static final int CITED = 4;
  private static final int LETTERS = 26;

  private final Assessment assessment;
  private final Advice advice;
  private final LessonBook book;
  private final Phrases phrases;
  private final Random random;

  LessonSheet(Assessment assessment, Advice advice, LessonBook book, Random random) {
    this.assessment = assessment;
    this.advice = advice;
    this.book = book;
    this.phrases = new Phrases(assessment.knowledge().wording());
    this.random = random;
  }

  Assessment assessment() {
    return assessment;
  }

  Advice advice() {
    return advice;
  }

  Knowledge knowledge() {
    return assessment.knowledge();
  }

  LessonBook book() {
    return book;
  }

  Random random() {
    return random;
  }

  /** A question of a kind, in the making. */
  Question.Draft draft(LessonBook.Item kind) {
    return new Question.Draft(this, kind);
  }

  String say(String id, String... filling) {
    return phrases.say(id, filling);
  }

  Phrases phrases() {
    return phrases;
  }

  /** A text of a lesson file with its places filled, names and words by turns. */
  static String fill(String text, String... filling) {
    String said = text;
    for (int i = 0; i + 1 < filling.length; i += 2) {
      said = said.replace('<' + filling[i] + '>', filling[i + 1]);
    }
    return said;
  }

  /** Some of a list, drawn by chance, in the order of chance. */
  <T> List<T> drawn(List<T> from, int most) {
    List<T> shuffled = new ArrayList<>(from);
    Collections.shuffle(shuffled, random);
    return shuffled.subList(0, Math.min(most, shuffled.size()));
  }

  /** Options in the order of chance, named by letters. */
  List<Question.Option> lettered(List<String> texts) {
    List<Question.Option> options = new ArrayList<>();
    for (String text : drawn(List.copyOf(new LinkedHashSet<>(texts)), LETTERS)) {
      options.add(new Question.Option(String.valueOf((char) ('a' + options.size())), text));
    }
    return options;
  }

  /** The rules at the root of some justifications, each once; the first few. */
  static List<Question.Cite> cites(List<Justification> because) {
    Map<String, Question.Cite> found = new LinkedHashMap<>();
    for (Justification one : because) {
      if (found.size() < CITED) {
        found.putIfAbsent(
            one.rule().id(),
            new Question.Cite(
                one.rule().id(), one.rule().reason(), one.source().title(), one.source().status()));
      }
    }
    return List.copyOf(found.values());
  }

  /** The figures that some justifications name, each once; the first few. */
  static List<Figure> figures(List<Justification> because) {
    Set<Figure> found = new LinkedHashSet<>();
    for (Justification one : because) {
      for (Figure figure : one.figures()) {
        if (found.size() < CITED) {
          found.add(figure);
        }
      }
    }
    return List.copyOf(found);
  }

  /** Justifications whose own facts name a fact, however deep in the chains; the first few. */
  List<Justification> citing(String name) {
    String key = knowledge().keyOf(name);
    Set<Justification> seen = new LinkedHashSet<>();
    List<Justification> found = new ArrayList<>();
    for (Decision one : advice.decisions()) {
      one.because().forEach(why -> collect(why, name, key, seen, found));
    }
    return List.copyOf(found.subList(0, Math.min(CITED, found.size())));
  }

  private static void collect(
      Justification one, String name, String key, Set<Justification> seen, List<Justification> in) {
    if (!seen.add(one)) {
      return;
    }
    boolean cites =
        one.facts().stream().anyMatch(fact -> fact.fact().equals(name) || fact.fact().equals(key));
    if (cites && in.stream().noneMatch(known -> known.rule().id().equals(one.rule().id()))) {
      in.add(one);
    }
    one.restsOn().forEach(deeper -> collect(deeper, name, key, seen, in));
  }
}
