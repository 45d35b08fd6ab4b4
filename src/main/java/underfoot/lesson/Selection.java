package underfoot.lesson;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underfoot.knowledge.LessonBook;
import underfoot.knowledge.LessonBook.Item;

/** Chooses kinds of question so that each topic and each level has its share, none twice. */
final class Selection {
  private static final int OF_A_TOPIC = 3;
  private static final int OF_A_LEVEL = 2;

  private final LessonBook book;
  private final Map<String, Integer> weights = new HashMap<>();
  private final Set<String> used = new LinkedHashSet<>();

  Selection(LessonBook book) {
    this.book = book;
  }

  /** Whether a kind is asked of every floor, however many others are. */
  static boolean everywhere(Item kind) {
    return kind.field("everywhere").equals("yes");
  }

  /** The next of some kinds; empty if all were chosen before. */
  Optional<String> next(Collection<String> possible) {
    Optional<String> next =
        possible.stream()
            .filter(kind -> !used.contains(kind) && !everywhere(book.kind(kind)))
            .min(Comparator.comparingInt(this::weight));
    next.ifPresent(
        kind -> {
          used.add(kind);
          weights.merge(book.kind(kind).field("topic"), OF_A_TOPIC, Integer::sum);
          weights.merge(level(kind), OF_A_LEVEL, Integer::sum);
        });
    return next;
  }

  private String level(String kind) {
    return "level " + book.kind(kind).field("level");
  }

  private int weight(String kind) {
    return weights.getOrDefault(book.kind(kind).field("topic"), 0)
        + weights.getOrDefault(level(kind), 0);
  }

  /** So many of some questions, those asked everywhere among them, in their order. */
  List<Question> of(List<Question> questions, int many) {
    List<String> kinds = questions.stream().map(Question::kind).toList();
    Set<String> chosen = new LinkedHashSet<>();
    kinds.stream().filter(kind -> everywhere(book.kind(kind))).forEach(chosen::add);
    Optional<String> next = next(kinds);
    while (next.isPresent() && chosen.size() < many) {
      chosen.add(next.get());
      next = next(kinds);
    }
    List<Question> left = new ArrayList<>(questions);
    left.removeIf(one -> !chosen.contains(one.kind()));
    return left;
  }
}
