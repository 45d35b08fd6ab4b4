package underfoot.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import underfoot.quantity.Words;

/** Tells which required facts a file does not give. */
final class MissingFacts {
  private final Gatherer gatherer;
  private final FactBook book;

  /** Groups that are missing as a whole, and have been told. */
  private final Set<String> told = new HashSet<>();

  MissingFacts(Gatherer gatherer, FactBook book) {
    this.gatherer = gatherer;
    this.book = book;
  }

  /** Faults for each required fact that was not written. */
  void tell(Node root) {
    for (FactDefinition fact : book.definitions()) {
      if (!fact.required()) {
        continue;
      }
      if (!fact.ofEntries()) {
        missing(fact, "", root);
      } else {
        for (String name : gatherer.entries(fact.list())) {
          Node at = gatherer.placeOfEntry(fact.list(), name);
          missing(fact, name, at == null ? root : at);
        }
      }
    }
  }

  private void missing(FactDefinition fact, String about, Node parent) {
    String key = fact.key();
    if (gatherer.isWritten(key, about)
        || !fact.insteadOfIt().isEmpty() && gatherer.isWritten(fact.insteadOfIt(), about)) {
      return;
    }
    if (!about.isEmpty()) {
      isMissing(fact.word(), parent, Words.quote(about), Values.example(fact));
      return;
    }
    String group = above(key);
    Node place = gatherer.placeOfGroup(group);
    if (place != null) {
      isMissing(fact.word(), place, group.isEmpty() ? book.subject() : group, Values.example(fact));
      return;
    }
    for (String up = group; !up.isEmpty(); up = above(up)) {
      if (gatherer.isWritten(up, "")) {
        // The group is there, but at fault itself, and that has been told.
        return;
      }
    }
    if (told.add(group)) {
      String example = group + ": {" + requiredUnder(group) + "}";
      isMissing(group, parent, book.subject(), "for example: " + example);
    }
  }

  private void isMissing(String word, Spot place, String where, String how) {
    gatherer.fault(place, word + " is missing from " + where, how);
  }

  /** The key of the group a key stands in; empty at the left edge. */
  private static String above(String key) {
    return key.substring(0, Math.max(0, key.lastIndexOf('.')));
  }

  private String requiredUnder(String group) {
    List<String> parts = new ArrayList<>();
    for (FactDefinition fact : book.definitions()) {
      if (fact.required() && above(fact.key()).equals(group)) {
        parts.add(Words.last(fact.key()) + ": " + fact.example());
      }
    }
    return String.join(", ", parts);
  }
}
