package underfoot.talk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import underfoot.knowledge.InterviewBook;
import underfoot.knowledge.Phrases;
import underfoot.reasoning.Floors;
import underfoot.reasoning.Interview;
import underfoot.scenario.FactBook;
import underfoot.scenario.Place;
import underfoot.scenario.RuleFiles;

/** What people say is understood, and nothing that they did not say. */
class SayingsTest {
  private static final Path FOLDER = Path.of("src/test/resources/sayings");
  private static final FactBook BOOK = Floors.advisor().knowledge().facts();

  /** What was known when something else than the first question was asked. */
  private static final Map<String, String> BEFORE = Map.of("tile.width", "tile.length=600 mm");

  @ParameterizedTest
  @ValueSource(strings = {"newcomer.txt", "maker.txt"})
  void each_saying_comes_to_what_was_meant_and_to_no_more(String file) throws Exception {
    Conversation conversation = conversation();
    List<String> wrong = new ArrayList<>();
    int read = 0;
    for (String line : Files.readAllLines(FOLDER.resolve(file))) {
      if (line.startsWith("#") || line.isBlank()) {
        continue;
      }
      String[] parts = line.split(" \\| ");
      read++;
      String came = came(conversation, parts[0].strip(), parts[1].strip());
      String meant = String.join("; ", new TreeSet<>(List.of(parts[2].strip().split("; "))));
      if (!came.equals(meant)) {
        wrong.add(parts[0] + " | " + parts[1] + "\n    meant " + meant + "\n    came  " + came);
      }
    }
    assertThat(read).isGreaterThan(70);
    assertThat(wrong).as(String.join("\n", wrong)).isEmpty();
  }

  @Test
  void there_are_at_least_150_sayings_and_no_two_alike() throws Exception {
    List<String> all = new ArrayList<>();
    for (String file : List.of("newcomer.txt", "maker.txt")) {
      Files.readAllLines(FOLDER.resolve(file)).stream()
          .filter(line -> !line.startsWith("#") && !line.isBlank())
          .map(line -> line.replaceFirst(" \\| [^|]*$", ""))
          .forEach(all::add);
    }
    assertThat(all).hasSizeGreaterThanOrEqualTo(150).doesNotHaveDuplicates();
  }

  static String came(Conversation conversation, String asked, String words) throws Exception {
    Known known = conversation.begun();
    String before = BEFORE.getOrDefault(asked, "");
    if (!before.isEmpty()) {
      Place place = new Place(BOOK.find(before.split("=")[0]).orElseThrow(), "");
      known = known.with(Heard.One.sure(place, before.split("=")[1]));
    }
    Place place = new Place(BOOK.find(asked).orElseThrow(), "");
    Map<String, String> was = new LinkedHashMap<>(known.answers().said());
    Reply reply = conversation.say(known, place, words, "");
    Map<String, String> came = new TreeMap<>();
    for (Reply.Told one : reply.told()) {
      String value = one.value();
      if (value.equals("unknown") && one.asked() && reply.told().size() == 1) {
        return "unknown";
      }
      if (!value.equals("unknown") && !value.equals(was.get(one.id()))) {
        String kind = value.replace("\n", ", ");
        came.put(one.id(), one.id() + "=" + kind + (one.guess() ? "?" : ""));
      }
    }
    if (came.isEmpty() && !reply.answered()) {
      boolean unknown = reply.objection().startsWith("Without this");
      return unknown
          ? "unknown"
          : reply.objection().contains("out of scope") ? "refused" : "nothing";
    }
    return String.join("; ", new TreeSet<>(came.values()));
  }

  static Conversation conversation() throws Exception {
    InterviewBook order = InterviewBook.load(RuleFiles.shipped(), BOOK);
    Interview interview = new Interview(Floors.advisor(), order);
    return new Conversation(interview, new Phrases(Floors.advisor().knowledge().wording()));
  }
}
