package underfoot.lesson;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import underfoot.plan.Advice.CautionNote;
import underfoot.plan.BaseBelow;
import underfoot.plan.RoomPlan;
import underfoot.scenario.Scenario;

/**
 * Questions on one floor.
 *
 * @param scenario the floor, with its numbers varied if there is a seed
 * @param seed what the variant was drawn with; empty for the floor as stated
 * @param changes what was varied, such as {@code joist span: 2.6 m (was 2.4 m)}
 * @param floor what is told of the floor, a line for each part
 * @param assumed what is taken of facts that the floor does not state
 * @param room the room seen from above; empty if its outline is not known
 * @param below what is there, as it is drawn
 * @param know what is to be known first, by topic
 * @param questions from easy to hard
 * @param dangers what can hurt whoever does the work on this floor
 */
public record Lesson(
    Scenario scenario,
    OptionalLong seed,
    List<String> changes,
    List<String> floor,
    List<String> assumed,
    Optional<RoomPlan> room,
    BaseBelow below,
    List<Know> know,
    List<Question> questions,
    List<CautionNote> dangers) {
  /** Copies the lists. */
  public Lesson {
    changes = List.copyOf(changes);
    floor = List.copyOf(floor);
    assumed = List.copyOf(assumed);
    know = List.copyOf(know);
    questions = List.copyOf(questions);
    dangers = List.copyOf(dangers);
  }

  /**
   * What a topic teaches.
   *
   * @param topic its id
   * @param title its title
   * @param lines sentences that its questions rest on
   */
  public record Know(String topic, String title, List<String> lines) {
    /** Copies the list. */
    public Know {
      lines = List.copyOf(lines);
    }
  }

  /** The ids of the rules that answers cite, each once. */
  public Set<String> rules() {
    Set<String> ids = new TreeSet<>();
    questions.forEach(question -> question.cites().forEach(cite -> ids.add(cite.rule())));
    return ids;
  }

  /** The marks of all questions together. */
  public int marks() {
    return questions.stream().mapToInt(Question::level).sum();
  }
}
