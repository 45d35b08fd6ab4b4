package underfoot.cli;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underfoot.knowledge.InterviewBook;
import underfoot.measure.Texts;
import underfoot.scenario.Answers;
import underfoot.scenario.FactBook;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Place;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.ScenarioReader;
import underfoot.scenario.StatedFact;

/**
 * The scenario file of an interview: with the questions, and what is not known, as comments. A
 * value that was only taken for want of knowing better is marked by its comment, so that it is not
 * known either when the file is taken up again.
 */
final class AnswerFile {
  private static final String TAKEN = "Not certain; taken so:";

  private AnswerFile() {}

  /** The text of the file. */
  static String text(Answers answers, Map<String, InterviewBook.Taken> taken) {
    List<String> head = new ArrayList<>();
    head.add("Written by the interview: underfoot ask. Change it as you find out more.");
    head.add(
        answers.complete()
            ? "To be advised: underfoot advise FILE. To go on asking: underfoot ask --from FILE."
            : "Not finished: required facts are missing. Go on with: underfoot ask --from FILE.");
    return answers.file(
        head,
        place -> {
          InterviewBook.Taken one = taken.get(place.id());
          FactDefinition fact = place.fact();
          if (one != null && !one.certain()) {
            return TAKEN + ' ' + one.since() + ". Once you know, delete this note.";
          }
          boolean unknown =
              answers.said(place).map(said -> said.equals(Answers.UNKNOWN)).orElse(false);
          String ask = fact.ask().isEmpty() ? fact.means() : fact.ask();
          return unknown && !fact.look().isEmpty()
              ? Texts.sentence(ask) + " To find out: " + fact.look()
              : ask;
        });
  }

  /**
   * What a file marks as taken for want of knowing better, by place.
   *
   * @param facts what may be said
   * @param name the file's name, for messages
   * @param content its bytes
   * @param book why such values are taken
   * @throws ScenarioFaults if anything is wrong with it
   */
  static Map<String, InterviewBook.Taken> taken(
      FactBook facts, String name, byte[] content, InterviewBook book) throws ScenarioFaults {
    Set<Integer> marked = marked(new String(content, StandardCharsets.UTF_8));
    Map<String, InterviewBook.Taken> taken = new LinkedHashMap<>();
    for (StatedFact given : new ScenarioReader(facts).readUnfinished(name, content).givens()) {
      if (given.known() && marked.contains(given.line())) {
        String id = new Place(given.definition(), given.about()).id();
        taken.put(id, new InterviewBook.Taken(given.text(), false, book.since(given.definition())));
      }
    }
    return taken;
  }

  /** The lines that stand under such a mark, the first line of the file being 1. */
  private static Set<Integer> marked(String text) {
    Set<Integer> marked = new HashSet<>();
    boolean mark = false;
    int number = 0;
    for (String line : text.split("\\R", -1)) {
      number++;
      String words = line.strip();
      if (words.startsWith("#")) {
        mark |= words.substring(1).strip().startsWith(TAKEN);
      } else if (!words.isEmpty()) {
        if (mark) {
          marked.add(number);
        }
        mark = false;
      }
    }
    return marked;
  }

  /** A name for a floor nobody named. */
  static String name(Answers answers) {
    String use = known(answers, "room.use").orElse("room");
    String deck = known(answers, "subfloor.deck").orElse("old floor");
    return Texts.capital(use) + " on " + deck;
  }

  /** The same without a name that an earlier talk gave; what is said now may call for another. */
  static Answers unnamed(Answers answers) {
    Optional<Place> named =
        answers.places().stream()
            .filter(place -> place.fact().key().equals("scenario"))
            .findFirst();
    return named.isPresent() && answers.said(named.get()).equals(Optional.of(name(answers)))
        ? answers.without(named.get())
        : answers;
  }

  private static Optional<String> known(Answers answers, String key) {
    return answers.scenario().find(key).filter(StatedFact::known).map(StatedFact::text);
  }
}
