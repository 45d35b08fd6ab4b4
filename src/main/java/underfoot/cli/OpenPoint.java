package underfoot.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import underfoot.knowledge.InterviewBook;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.reasoning.Interview;
import underfoot.reasoning.WhatIf;
import underfoot.scenario.Answers;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Place;

/**
 * Something to find out first.
 *
 * @param place what is not known, or known only by and large
 * @param words how to find it out, and what hangs on it
 */
record OpenPoint(Place place, String words) {
  /**
   * What to find out first, the weightiest first.
   *
   * @param interview what knows how much hangs on each
   * @param phrases the phrase book
   * @param answers all that was said
   * @param taken what was taken for want of knowing better, by place
   * @param most how many at most
   */
  static List<OpenPoint> of(
      Interview interview,
      Phrases phrases,
      Answers answers,
      Map<String, InterviewBook.Taken> taken,
      int most) {
    List<OpenPoint> first = new ArrayList<>();
    taken.forEach(
        (id, one) -> {
          FactDefinition fact = answers.book().find(id.replaceAll("@.*", "")).orElseThrow();
          if (!one.certain() && first.isEmpty()) { // what hangs on the others is less
            String words =
                fact.ask()
                    + " Taken as "
                    + one.value()
                    + ": "
                    + Texts.sentence(one.since())
                    + " "
                    + Texts.sentence(fact.look());
            first.add(new OpenPoint(new Place(fact, ""), tidy(words)));
          }
        });
    for (Interview.Hanging one : interview.first(answers, most)) {
      if (first.size() < most) {
        WhatIf.Otherwise change = one.changes().get(0);
        String changes =
            phrases.say("if-it-is", "value", change.value(), "changes", change.clause(1));
        String words =
            InterviewScreen.question(one.place())
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
