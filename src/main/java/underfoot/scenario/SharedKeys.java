package underfoot.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import underfoot.quantity.Words;

/** Keys that may be written in more than one place, while the facts files are read. */
final class SharedKeys {
  private final KeyNode root;

  /** Groups under which what stands under another may be written too, by the former's path. */
  private final Map<String, Node.Scalar> joined = new LinkedHashMap<>();

  /** Facts with another place where they may be written. */
  private final List<Also> also = new ArrayList<>();

  private record Also(String key, Node.Scalar place) {}

  SharedKeys(KeyNode root) {
    this.root = root;
  }

  /** Notes where else a fact, or what is grouped with it, may be written. */
  void of(FactDefinition fact, Node.Keys properties) {
    if (properties.get("joined by") instanceof Node.Scalar other) {
      joined.put(fact.key().substring(0, fact.key().lastIndexOf('.')), other);
    }
    if (properties.get("also at") instanceof Node.Scalar place) {
      also.add(new Also(fact.key(), place));
    }
  }

  /** Lets them be written there, once all facts of a file stand at their own places. */
  void share(String file, List<Fault> faults) {
    joined.forEach(
        (to, from) -> {
          KeyNode source = root.beneath(from.text());
          if (source == null) {
            noGroup(file, from, faults);
          } else {
            source.children.forEach(root.beneath(to).children::putIfAbsent);
          }
        });
    // What lies deepest first, so that a list takes the second names of its entries along.
    for (int i = also.size() - 1; i >= 0; i--) {
      share(file, also.get(i), faults);
    }
    joined.clear();
    also.clear();
  }

  private void share(String file, Also one, List<Fault> faults) {
    String place = one.place().text();
    int dot = place.lastIndexOf('.');
    KeyNode group = dot < 0 ? root : root.beneath(place.substring(0, dot));
    if (group == null) {
      noGroup(file, one.place(), faults);
      return;
    }
    KeyNode own = root.beneath(one.key());
    KeyNode other = new KeyNode(Words.last(place), own.path);
    other.fact = own.fact;
    other.children.putAll(own.children);
    group.children.putIfAbsent(Words.alike(other.name), other);
  }

  private static void noGroup(String file, Node.Scalar at, List<Fault> faults) {
    faults.add(Fault.at(file, at, Words.quote(at.text()) + " is no key that groups facts", ""));
  }
}
