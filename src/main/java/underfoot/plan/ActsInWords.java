package underfoot.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.buildup.ActRuling;
import underfoot.buildup.ActRuling.Sort;
import underfoot.buildup.ByAct;
import underfoot.knowledge.Derivation;
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
  private final ByAct<ActRuling> rulings;

  /**
   * @param sayings fills texts in
   * @param rulings what rules say of acts on this floor
   */
  ActsInWords(Sayings sayings, ByAct<ActRuling> rulings) {
    this.sayings = sayings;
    this.rulings = rulings;
  }

  /** The remedies that acts wait for, by their wordings; none that waits for itself. */
  Set<String> gates(List<String> acts, String about, String told) {
    return named(Sort.AFTER, acts, about, told);
  }

  private Set<String> named(Sort sort, List<String> acts, String about, String told) {
    Set<String> named = new LinkedHashSet<>();
    for (ActRuling ruling : rulings.holdingFor(acts, about)) {
      if (ruling.sort() == sort) {
        named.add(ruling.wording());
      }
    }
    named.remove(told);
    return named;
  }

  /** Why a text waits for something, and needs care. */
  List<Derivation> because(String wording, String about) {
    List<Derivation> because = new ArrayList<>();
    for (String act : sayings.knowledge().wording().work(wording).asked()) {
      for (ActRuling ruling : rulings.holdingFor(List.of(act), about)) {
        if (ruling.sort() != Sort.NEVER && !ruling.wording().equals(wording)) {
          because.add(ruling.because());
        }
      }
    }
    return because;
  }

  /** Whether any of some acts is forbidden here. */
  boolean forbids(List<String> acts, String about) {
    return rulings.holdingFor(acts, about).stream().anyMatch(one -> one.sort() == Sort.NEVER);
  }

  /**
   * A sentence that asks for acts, with what it waits for and the care it is done with; without its
   * last full stop if it came without one.
   */
  String told(List<String> acts, String about, String sentence) {
    String told =
        with(named(Sort.SO, acts, about, ""), about, once(gates(acts, about, ""), sentence));
    return Wording.isSentence(told) && !Wording.isSentence(sentence)
        ? told.substring(0, told.length() - 1)
        : told;
  }

  private String with(Set<String> cares, String about, String sentence) {
    StringBuilder text = new StringBuilder(sentence);
    for (String care : cares) {
      text.append(Wording.isSentence(text.toString()) ? " " : ". ");
      text.append(sayings.alone(care, about).parts().must());
    }
    return text.toString();
  }

  /**
   * A text by its wording, filled in, with all that is said of the acts it asks for. The title of
   * what is put right begins with what it waits for, so that it does so in the shortest form too;
   * of all else the sentence that asks for the act does.
   */
  Wording.Filled told(String wording, String about, Wording.Filled filled, boolean inTitle) {
    List<String> acts = sayings.knowledge().wording().work(wording).asked();
    if (acts.isEmpty() || rulings.isEmpty()) {
      return filled;
    }
    Set<String> gates = gates(acts, about, wording);
    boolean titled = inTitle && !filled.title().isEmpty();
    Map<String, String> parts = new LinkedHashMap<>(filled.parts().parts());
    String asking = parts.containsKey(TextParts.INSTEAD) ? TextParts.INSTEAD : TextParts.TEXT;
    String said = titled ? parts.get(asking) : once(gates, parts.get(asking));
    parts.put(asking, with(named(Sort.SO, acts, about, wording), about, said));
    return new Wording.Filled(
        titled ? once(gates, filled.title()) : filled.title(), new TextParts(parts), filled.used());
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
