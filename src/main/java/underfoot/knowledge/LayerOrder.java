package underfoot.knowledge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The order in which layers lie, worked out from what each row says it lies {@code over} and {@code
 * under}: other layers, or every other layer of a family. Where rows leave a choice, the family
 * that stands earlier in {@code order of families} comes first.
 */
final class LayerOrder {
  /** The list of families, from the base up. */
  static final String FAMILIES = "order of families";

  private final Map<String, Entries.Entry> rows = new LinkedHashMap<>();
  private final Map<String, Set<String>> below = new LinkedHashMap<>();
  private final List<String> families;
  private final List<String> sorted = new ArrayList<>();

  /**
   * Works the order out.
   *
   * @param rows the kinds of layer
   * @param families from the base up
   * @throws KnowledgeFault if a row names what there is not, or rows go round in a ring
   */
  LayerOrder(List<Entries.Entry> rows, List<String> families) throws KnowledgeFault {
    this.families = families;
    rows.forEach(row -> this.rows.put(row.name(), row));
    rows.forEach(row -> below.put(row.name(), new LinkedHashSet<>()));
    for (Entries.Entry row : rows) {
      if (!families.contains(row.required("family"))) {
        throw new KnowledgeFault(
            row.file(),
            row.line(),
            "the family '" + row.field("family") + "' does not stand in " + FAMILIES);
      }
      for (String other : named(row, "over")) {
        below.get(row.name()).add(other);
      }
      for (String other : named(row, "under")) {
        below.get(other).add(row.name());
      }
    }
    sort();
    for (String kind : sorted) { // those beneath come first, so theirs are whole already
      for (String other : List.copyOf(below.get(kind))) {
        below.get(kind).addAll(below.get(other));
      }
    }
  }

  private void sort() throws KnowledgeFault {
    List<String> left = new ArrayList<>(rows.keySet());
    left.sort(Comparator.comparingInt(this::family));
    while (!left.isEmpty()) {
      String next = null;
      for (String kind : left) {
        if (next == null && sorted.containsAll(below.get(kind))) {
          next = kind;
        }
      }
      if (next == null) {
        throw ring(left.get(0));
      }
      sorted.add(next);
      left.remove(next);
    }
  }

  /** Goes down from layer to layer until one comes again. */
  private KnowledgeFault ring(String from) {
    List<String> path = new ArrayList<>();
    String at = from;
    while (!path.contains(at)) {
      path.add(at);
      at = below.get(at).stream().filter(one -> !sorted.contains(one)).findFirst().orElseThrow();
    }
    List<String> round = new ArrayList<>(path.subList(path.indexOf(at), path.size()));
    round.add(at);
    return new KnowledgeFault(
        rows.get(at).file(),
        rows.get(at).line(),
        "no order is possible: "
            + String.join(" lies over ", round)
            + "; take one over: or under: out");
  }

  private int family(String kind) {
    return families.indexOf(rows.get(kind).field("family"));
  }

  /** The layers that a row names, by themselves or by their family. */
  private Set<String> named(Entries.Entry row, String relation) throws KnowledgeFault {
    Set<String> all = new LinkedHashSet<>();
    for (String name : row.named(relation)) {
      if (rows.containsKey(name)) {
        all.add(name);
      } else if (families.contains(name)) {
        rows.keySet().stream()
            .filter(one -> rows.get(one).field("family").equals(name))
            .forEach(all::add);
        all.remove(row.name());
      } else {
        throw new KnowledgeFault(
            row.file(),
            row.line(),
            "'"
                + row.name()
                + "' lies "
                + relation
                + " '"
                + name
                + "', which is neither a layer nor a family of layers");
      }
    }
    return all;
  }

  /** Every kind of layer from the base up. */
  List<String> sorted() {
    return sorted;
  }

  /**
   * What is wrong with the order of layers that may lie in one build-up: neither what they lie over
   * nor their families tell which of two comes first.
   *
   * @param laid the kinds that rules lay
   */
  List<KnowledgeFault> untold(Set<String> laid) throws KnowledgeFault {
    List<KnowledgeFault> faults = new ArrayList<>();
    Set<Set<String>> apart = new HashSet<>();
    for (Entries.Entry row : rows.values()) {
      named(row, "never with").forEach(other -> apart.add(Set.of(row.name(), other)));
    }
    for (int i = 0; i < sorted.size(); i++) {
      for (int k = i + 1; k < sorted.size(); k++) {
        String lower = sorted.get(i);
        String upper = sorted.get(k);
        if (laid.contains(lower)
            && laid.contains(upper)
            && !below.get(upper).contains(lower)
            && family(lower) >= family(upper)
            && !apart.contains(Set.of(lower, upper))) {
          Entries.Entry row = rows.get(upper);
          faults.add(
              new KnowledgeFault(
                  row.file(),
                  row.line(),
                  "nothing tells which of '"
                      + lower
                      + "' and '"
                      + upper
                      + "' lies over the other; write over:, under: or never with: in one of them"));
        }
      }
    }
    return faults;
  }
}
