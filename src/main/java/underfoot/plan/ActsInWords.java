package underfoot.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.buildup.ActRuling;
import underfoot.buildup.ActRuling.Sort;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.TextParts;
import underfoot.knowledge.Wording;
import underfoot.measure.Texts;

/**
 * What is said of acts, in words: what waits for something begins with it ("Once the sample is
 * clear: …"), and what is done only with care tells the care.
 */
final class ActsInWords {
  private final Sayings sayings;
  private final List<ActRuling> rulings;

  /**
   * @param sayings fills texts in
   * @param rulings what rules say of acts on this floor
   */
  ActsInWords(Sayings sayings, List<ActRuling> rulings) {
    this.sayings = sayings;
    this.rulings = rulings;
  }

  /** The remedies that acts wait for, by their wordings; none that waits for itself. */
  Set<String> gates(List<String> acts, String about, String told) {
    return named(Sort.AFTER, acts, about, told);
  }

  private Set<String> named(Sort sort, List<String> acts, String about, String told) {
    Set<String> named = new LinkedHashSet<>();
    for (ActRuling ruling : rulings) {
      for (String act : acts) {
        if (ruling.sort() == sort && ruling.holdsFor(act, about)) {
          named.add(ruling.wording());
        }
      }
    }
    named.remove(told);
    return named;
  }

  /** Whether any of some acts is forbidden here. */
  boolean forbids(List<String> acts, String about) {
    return acts.stream()
        .anyMatch(
            act ->
                rulings.stream()
                    .anyMatch(one -> one.sort() == Sort.NEVER && one.holdsFor(act, about)));
  }

  /** A sentence that asks for acts, with what it waits for and the care it is done with. */
  String told(List<String> acts, String about, String told, String sentence) {
    StringBuilder text = new StringBuilder(once(gates(acts, about, told), sentence));
    for (String care : named(Sort.SO, acts, about, told)) {
      String said = sayings.fill(care, about).parts().must();
      if (!sentence.endsWith(".")) {
        text.append('.');
      }
      text.append(' ').append(said);
    }
    return text.toString();
  }

  /** A text that asks for acts, with what it waits for and the care it is done with. */
  TextParts told(List<String> acts, String about, String told, TextParts parts) {
    String asking = parts.parts().containsKey(TextParts.INSTEAD) ? TextParts.INSTEAD : TextParts.TEXT;
    Map<String, String> changed = new LinkedHashMap<>(parts.parts());
    changed.computeIfPresent(asking, (part, text) -> told(acts, about, told, text));
    return new TextParts(changed);
  }

  /** A text by its wording, filled in, with all that is said of the acts it asks for. */
  Wording.Filled told(String wording, String about, Wording.Filled filled) {
    List<String> acts = sayings.knowledge().wording().work(wording).asked();
    if (acts.isEmpty() || rulings.isEmpty()) {
      return filled;
    }
    return new Wording.Filled(
        filled.title().isEmpty() ? "" : once(gates(acts, about, wording), filled.title()),
        told(acts, about, wording, filled.parts()),
        filled.used());
  }

  /** A sentence or a title after what it waits for. */
  String once(Set<String> gates, String sentence) {
    List<String> done = new ArrayList<>();
    Knowledge knowledge = sayings.knowledge();
    for (String gate : gates) {
      String once = knowledge.wording().work(gate).once();
      if (!once.isEmpty() && !done.contains(once)) {
        done.add(once);
      }
    }
    if (done.isEmpty()) {
      return sentence;
    }
    Phrases phrases = sayings.phrases();
    String all = done.get(0);
    for (String more : done.subList(1, done.size())) {
      all = phrases.say("once-both", "one", all, "other", more);
    }
    return phrases.say("once", "done", all, "then", Texts.lower(sentence));
  }
}
