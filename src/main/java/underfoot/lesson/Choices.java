package underfoot.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.LessonBook.Item;
import underfoot.plan.ProposalDraft;

/**
 * Questions with options. Which are right is found on the floor itself: by what was decided on it,
 * by thinking it through with what the option changes, or by having the build-up judged with what
 * the option lays.
 */
final class Choices {
  private static final int OPTIONS = 4;

  private final Workshop shop;
  private final Floor floor;
  private final Item kind;
  private final Values values;
  private final List<Derivation> because = new ArrayList<>();

  private Choices(Workshop shop, Floor floor, Item kind, Values values) {
    this.shop = shop;
    this.floor = floor;
    this.kind = kind;
    this.values = values;
  }

  static Optional<Question> of(Workshop shop, Floor floor, Item kind, Values values) {
    return new Choices(shop, floor, kind, values).make();
  }

  /** An option, whether it is right, and where it stands in the file. */
  private record Tried(
      String text, boolean right, String shows, int place, List<Derivation> because) {}

  private Optional<Question> make() {
    List<Tried> tried = new ArrayList<>();
    Optional<ProposalDraft> sound = Optional.empty();
    if (kind.field("try").equals("proposal")) {
      sound = shop.proposal(floor);
      if (sound.isEmpty() || !shop.faults(floor.assessment(), sound.get()).isEmpty()) {
        return Optional.empty();
      }
    }
    boolean least = kind.field("right").equals("the least");
    boolean found = false;
    for (Item option : kind.table("options")) {
      List<String> only = option.list("only").stream().map(values::fill).toList();
      Optional<Boolean> right = floor.holds(only) ? right(option, sound) : Optional.empty();
      if (right.isPresent()) {
        boolean counts = right.get() && !(least && found);
        found |= right.get();
        tried.add(
            new Tried(
                values.fill(option.field("says")),
                counts,
                values.fill(option.field("shows")),
                tried.size(),
                counts ? reasons(option) : List.of()));
      }
    }
    return chosen(tried);
  }

  private List<Derivation> reasons(Item option) {
    List<Derivation> found = new ArrayList<>();
    for (String condition : option.list("right")) {
      if (!condition.startsWith("not ")
          && condition.matches("(layer|way|stop|first|caution|danger|class of) .*")) {
        found.addAll(floor.because(values.fill(condition)));
      }
    }
    return found;
  }

  /** Whether an option is right; empty if it cannot be tried on this floor. */
  private Optional<Boolean> right(Item option, Optional<ProposalDraft> sound) {
    switch (kind.field("try")) {
      case "floor" -> {
        List<String> with = option.list("with").stream().map(values::fill).toList();
        return shop.changed(floor, with)
            .map(changed -> changed.holds(kind.list("right").stream().map(values::fill).toList()));
      }
      case "proposal" -> {
        List<String> lay = option.list("lay").stream().map(values::fill).toList();
        return Workshop.edited(sound.get(), lay)
            .map(changed -> shop.faults(floor.assessment(), changed).isEmpty());
      }
      default -> {
        List<String> when = option.list("right").stream().map(values::fill).toList();
        return Optional.of(
            !when.isEmpty() && (when.equals(List.of("always")) || floor.holds(when)));
      }
    }
  }

  private Optional<Question> chosen(List<Tried> tried) {
    int many = kind.whole("show", OPTIONS);
    int wanted = kind.whole("rights", 1);
    Set<String> texts = new LinkedHashSet<>();
    List<Tried> right = new ArrayList<>();
    List<Tried> wrong = new ArrayList<>();
    for (Tried one : floor.drawn(tried, tried.size())) {
      if (texts.add(one.text())) {
        (one.right() ? right : wrong).add(one);
      }
    }
    wrong.removeIf(one -> one.shows().isEmpty());
    if (right.size() < wanted || wrong.size() < many - wanted) {
      return Optional.empty();
    }
    List<Tried> shown = new ArrayList<>(right.subList(0, wanted));
    shown.forEach(one -> because.addAll(one.because()));
    shown.addAll(wrong.subList(0, many - wanted));
    List<Tried> placed = floor.drawn(shown, many);
    if (kind.field("order").equals("as listed")) {
      placed.sort(Comparator.comparingInt(Tried::place));
    }
    List<Question.Option> options =
        placed.stream()
            .map(one -> new Question.Option("", one.text(), one.right() ? "" : one.shows()))
            .toList();
    return Optional.of(
        new Draft(kind, floor, values)
            .choice(options, wanted > 1)
            .cites(floor.cites(because))
            .made());
  }
}
