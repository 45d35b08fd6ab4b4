package underfoot.talk;

import java.util.List;
import underfoot.knowledge.InterviewBook.Taken;
import underfoot.scenario.Place;

/**
 * What a saying came to.
 *
 * @param facts what was understood, what was asked for first
 * @param objection why what was asked is not answered, and how to say it; empty if it is answered
 * @param meant what was perhaps meant instead; empty if there is no such guess
 */
record Heard(List<One> facts, String objection, String meant) {
  /** Copies the list. */
  Heard {
    facts = List.copyOf(facts);
  }

  /**
   * One fact of it.
   *
   * @param place what it is of
   * @param value what was understood, as a scenario writes it
   * @param taken whether it was only taken, and why; certain if it was said so
   */
  record One(Place place, Taken taken) {
    static One sure(Place place, String value) {
      return new One(place, new Taken(value, true, ""));
    }

    String value() {
      return taken.value();
    }
  }

  static Heard no(String objection, String meant) {
    return new Heard(List.of(), objection, meant);
  }
}
