package underfoot.talk;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underfoot.knowledge.InterviewBook.Taken;
import underfoot.measure.Texts;
import underfoot.scenario.Answers;
import underfoot.scenario.FactBook;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Place;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.ScenarioReader;
import underfoot.scenario.StatedFact;
import underfoot.scenario.Zone;

/**
 * The scenario file of an interview: with the questions, and what is not known, as comments. A
 * value that was only taken for want of knowing better is marked by its comment, so that it is not
 * known either when the file is taken up again.
 */
public final class AnswerFile {
  private static final String TAKEN = "Not certain; taken so:";
  private static final String ONCE = "Once you know, delete this note.";
  private static final Pattern MARK = Pattern.compile(TAKEN + " (.*?)\\.? ?(?:" + ONCE + "|$)");

  private AnswerFile() {}

  /** The text of the file. */
  static String text(Answers answers, Map<String, Taken> taken) {
    List<String> head = new ArrayList<>();
    head.add("Written by the interview: underfoot ask. Change it as you find out more.");
    head.add(
        answers.complete()
            ? "To be advised: underfoot advise FILE. To go on asking: underfoot ask --from FILE."
            : "Not finished: required facts are missing. Go on with: underfoot ask --from FILE.");
    return answers.file(
        head,
        place -> {
          Taken one = taken.get(place.id());
          FactDefinition fact = place.fact();
          if (one != null && !one.certain()) {
            return TAKEN + ' ' + one.since() + ". " + ONCE;
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
   * What a file says, which may be unfinished, and what of it was only taken.
   *
   * @param facts what may be said
   * @param name the file's name, for messages
   * @param content its bytes
   * @throws ScenarioFaults if anything is wrong with what it does say
   */
  public static Known read(FactBook facts, String name, byte[] content) throws ScenarioFaults {
    Map<Integer, String> marked = marked(new String(content, StandardCharsets.UTF_8));
    Map<String, Taken> taken = new LinkedHashMap<>();
    Scenario floor = new ScenarioReader(facts).readUnfinished(name, content);
    floor.givens().forEach(given -> take(given, "", marked, taken));
    for (Zone zone : floor.zones()) {
      Answers.ownOf(zone, floor).forEach(given -> take(given, zone.name(), marked, taken));
    }
    return new Known(unnamed(Answers.of(facts, name, content)), taken);
  }

  private static void take(
      StatedFact given, String zone, Map<Integer, String> marked, Map<String, Taken> taken) {
    if (given.known() && marked.containsKey(given.line())) {
      String id = new Place(given.definition(), given.about(), zone).id();
      taken.put(id, new Taken(given.text(), false, marked.get(given.line())));
    }
  }

  /** The lines that stand under such a mark, with why it was taken; the first line is 1. */
  private static Map<Integer, String> marked(String text) {
    Map<Integer, String> marked = new LinkedHashMap<>();
    StringBuilder comment = new StringBuilder();
    int number = 0;
    for (String line : text.split("\\R", -1)) {
      number++;
      String words = line.strip();
      if (words.startsWith("#")) {
        comment.append(words.substring(1).strip()).append(' ');
      } else if (!words.isEmpty()) {
        Matcher mark = MARK.matcher(comment);
        if (mark.find()) {
          marked.put(number, mark.group(1));
        }
        comment.setLength(0);
      }
    }
    return marked;
  }

  /** A name for a floor nobody named. */
  public static String name(Answers answers) {
    String use = known(answers, "room.use").orElse("room");
    String deck = known(answers, "subfloor.deck").orElse("old floor");
    return Texts.capital(use) + " on " + deck;
  }

  /** The same without a name that an earlier talk gave; what is said now may call for another. */
  private static Answers unnamed(Answers answers) {
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
