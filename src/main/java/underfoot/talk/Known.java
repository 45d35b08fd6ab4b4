package underfoot.talk;

import java.util.LinkedHashMap;
import java.util.Map;
import underfoot.knowledge.InterviewBook.Taken;
import underfoot.scenario.Answers;
import underfoot.scenario.Place;
import underfoot.scenario.ScenarioFaults;

/**
 * What was said of a floor so far, and which of it was only taken for want of knowing better. It is
 * never changed: saying more makes another.
 *
 * @param answers all that was said or taken
 * @param taken what was only taken, by place
 * @param units in which units a number without one is meant, and examples are given
 */
public record Known(Answers answers, Map<String, Taken> taken, Units units) {
  /** In which units a person likes to speak of lengths. */
  public enum Units {
    /** As they spoke so far. */
    AS_SAID,
    /** Millimetres and metres. */
    METRIC,
    /** Feet and inches. */
    IMPERIAL
  }

  /** Copies the map. */
  public Known {
    taken = Map.copyOf(taken);
  }

  /** What was said, in units as it was. */
  public Known(Answers answers, Map<String, Taken> taken) {
    this(answers, taken, Units.AS_SAID);
  }

  /** Whether feet and inches are liked: said so, or spoken in so far, and metres not. */
  boolean isImperial() {
    return units == Units.IMPERIAL
        || units == Units.AS_SAID
            && answers.said().values().stream()
                .anyMatch(text -> text.matches("[0-9 ./]+ (in|ft).*"))
            && answers.said().values().stream()
                .noneMatch(text -> text.matches("[0-9.]+ (mm|cm|m)"));
  }

  /** Whether a value was only taken. */
  public boolean isGuess(Place place) {
    return taken.containsKey(place.id());
  }

  /** This and one more, or one in another's place. */
  Known with(Heard.One one) throws ScenarioFaults {
    Answers more = answers.with(one.place(), one.value());
    Map<String, Taken> marks = new LinkedHashMap<>(taken);
    marks.remove(one.place().id());
    if (!one.taken().certain()) {
      marks.put(one.place().id(), one.taken());
    }
    return new Known(more, marks, units);
  }

  /** This without one, as if it had not been asked. */
  public Known without(Place place) {
    Map<String, Taken> marks = new LinkedHashMap<>(taken);
    marks.remove(place.id());
    Answers fewer = answers.without(place);
    marks.keySet().removeIf(id -> !fewer.said().containsKey(id));
    return new Known(fewer, marks, units);
  }

  /** The scenario file of all this, with the questions and what is not known as comments. */
  public String file() {
    return AnswerFile.text(answers, taken);
  }
}
