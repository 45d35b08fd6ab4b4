package underfoot.language;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What a rule concludes.
 *
 * @param verb what is done
 * @param words what stands in its places; {@link #ABOUT} for what the thing named is about
 */
public record Effect(Verb verb, List<String> words) {
  /** Stands for what the thing is about that the conditions named {@code $thing}. */
  public static final String ABOUT = "$thing.about";

  /**
   * Whether a word only says where to look: {@code [usual wetness]} stands for the value of that
   * fact, {@code [board]} for the layer of that family, among what the rule matched.
   */
  public static boolean isLookedUp(String word) {
    return word.startsWith("[") && word.endsWith("]");
  }

  /** What is looked up by such a word. */
  public static String lookedUp(String word) {
    return word.substring(1, word.length() - 1);
  }

  /** Copies the list. */
  public Effect {
    words = List.copyOf(words);
  }

  /** What stands in a place of a verb. */
  public enum Place {
    /** The name of a fact. */
    FACT,
    /** What it is about; empty for the whole. */
    ABOUT,
    /** A word that is nobody's name. */
    WORD,
    /** A figure's name. */
    FIGURE,
    /** A kind of layer. */
    LAYER,
    /** The id of a text. */
    WORDING,
    /** A step of the work. */
    STEP,
    /** A way of building. */
    WAY,
    /** Something a person may be asked to do. */
    ACT
  }

  /** All that a rule can do: conclude something. */
  public enum Verb {
    ASSUME(Place.FACT, Place.ABOUT, Place.WORD),
    ASSUME_AS(Place.FACT, Place.ABOUT, Place.FIGURE),
    CONCLUDE(Place.FACT, Place.ABOUT, Place.WORD),
    CONCLUDE_AS(Place.FACT, Place.ABOUT, Place.FIGURE),
    ROWS(Place.FACT),
    OFFER(Place.WAY, Place.WORD),
    RULE_OUT(Place.WORDING),
    LAY(Place.LAYER),
    LAY_AS(Place.LAYER, Place.FIGURE),
    LAY_MORE(Place.LAYER, Place.FIGURE),
    GRADE(Place.LAYER, Place.WORD),
    SAY(Place.LAYER, Place.WORDING),
    FIX(Place.LAYER, Place.WORDING),
    COVER(Place.LAYER, Place.FIGURE),
    REMEDY(Place.WORDING, Place.ABOUT),
    HOLD(Place.WORDING, Place.ABOUT),
    DANGER(Place.WORDING, Place.ABOUT),
    CARE(Place.WORDING, Place.ABOUT),
    NOTE(Place.WORDING, Place.ABOUT),
    STOP(Place.WORDING),
    OUTSIDE(Place.WORDING),
    TARGET(Place.FIGURE),
    ALLOW(Place.STEP, Place.FIGURE),
    ALLOW_FOR_CURE(Place.STEP, Place.FIGURE),
    ALLOW_BY_AREA(Place.STEP, Place.FIGURE),
    ALLOW_AS_FACT(Place.STEP, Place.FACT),
    BEYOND(Place.WORDING),
    RANK(Place.WORD, Place.FACT),
    SUGGEST(Place.WORDING),
    FIND(Place.WORD, Place.WORDING, Place.ABOUT),
    FORBID(Place.ACT, Place.ABOUT),
    GATE(Place.ACT, Place.WORDING, Place.ABOUT),
    GUARD(Place.ACT, Place.WORDING, Place.ABOUT);

    private static final Map<String, Verb> BY_WORD =
        Arrays.stream(values()).collect(Collectors.toMap(Verb::word, Function.identity()));
    private final List<Place> places;
    private final String word;

    Verb(Place... places) {
      this.places = List.of(places);
      StringBuilder camel = new StringBuilder();
      for (String part : name().toLowerCase(Locale.ROOT).split("_")) {
        camel.append(
            camel.isEmpty() ? part : Character.toUpperCase(part.charAt(0)) + part.substring(1));
      }
      word = camel.toString();
    }

    /** What stands in its places. */
    public List<Place> places() {
      return places;
    }

    /** How a vocabulary file writes it, such as {@code layAs}. */
    public String word() {
      return word;
    }

    static Optional<Verb> of(String word) {
      return Optional.ofNullable(BY_WORD.get(word));
    }

    static String words() {
      return Arrays.stream(values()).map(Verb::word).collect(Collectors.joining(", "));
    }
  }

  /** What stands in the first place of a sort; empty if there is none. */
  public String word(Place place) {
    int at = verb.places().indexOf(place);
    return at < 0 ? "" : words.get(at);
  }

  /** Whether it concludes or assumes a fact. */
  public boolean isFact() {
    return switch (verb) {
      case ASSUME, ASSUME_AS, CONCLUDE, CONCLUDE_AS -> true;
      default -> false;
    };
  }

  /** Whether it needs something that the conditions named. */
  public boolean leans() {
    return words.contains(ABOUT);
  }

  @Override
  public String toString() {
    return verb.word() + words.stream().collect(Collectors.joining(", ", "( ", " )"));
  }
}
