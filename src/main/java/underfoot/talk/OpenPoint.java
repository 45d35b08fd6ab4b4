package underfoot.talk;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import underfoot.knowledge.InterviewBook.Taken;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.reasoning.Interview;
import underfoot.reasoning.WhatIf;
import underfoot.scenario.Place;

/**
 * Something to find out first.
 *
 * @param place what is not known, or known only by and large
 * @param words how to find it out, and what hangs on it
 */
public record OpenPoint(Place place, String words) {
  /**
   * What to find out first, the weightiest first.
   *
   * @param interview what knows how much hangs on each
   * @param phrases the phrase book
   * @param known all that was said, and what was only taken
   * @param most how many at most
   * @param late whether nobody waits for it any more
   */
  static List<OpenPoint> of(
      Interview interview, Phrases phrases, Known known, int most, BooleanSupplier late) {
    List<OpenPoint> first = new ArrayList<>();
    for (Place place : interview.inOrder(known.answers())) {
      if (known.isGuess(place)) { // what hangs on the others is less
        Taken one = known.taken().get(place.id());
        String since = Texts.sentence(one.since());
        String look = Texts.sentence(place.fact().look());
        String words =
            Asked.question(place) + " Taken as " + one.value() + ": " + since + " " + look;
        first.add(new OpenPoint(place, tidy(words)));
        break;
      }
    }
    for (Interview.Hanging one : interview.first(known.answers(), most, late)) {
      if (first.size() < most) {
        WhatIf.Otherwise change = one.changes().get(0);
        String changes =
            phrases.say("if-it-is", "value", change.value(), "changes", change.clause(1));
        String words =
            Asked.question(one.place())
                + " "
                + Texts.sentence(one.place().fact().look())
                + " "
                + Texts.capital(changes)
                + ".";
        first.add(new OpenPoint(one.place(), tidy(words)));
      }
    }
    return first;
  }

  private static String tidy(String words) {
    return words.replaceAll("\\s+", " ");
  }
}
