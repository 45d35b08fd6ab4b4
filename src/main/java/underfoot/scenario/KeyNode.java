package underfoot.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import underfoot.quantity.Words;

/** A key a scenario may hold, with the keys that may stand under it. */
final class KeyNode {
  /** The key as the facts files write it; for the whole file what it is called. */
  final String name;

  /** Where it stands, such as {@code room.doors}; empty for the whole file. */
  final String path;

  /** The fact this key gives; null if it only groups other keys. */
  FactDefinition fact;

  /** The fact this key may give in short, instead of keys of its own; null if there is none. */
  FactDefinition shorthand;

  /** The keys under it (for a list: of each entry), by their spelling made alike. */
  final Map<String, KeyNode> children = new LinkedHashMap<>();

  KeyNode(String name, String path) {
    this.name = name;
    this.path = path;
  }

  boolean isList() {
    return fact != null && fact.kind() == Kind.LIST;
  }

  /** Whether another key gives the same fact, so that either may be written. */
  boolean isWrittenLike(KeyNode other) {
    return other != this && fact != null && other.fact == fact;
  }

  KeyNode child(String written) {
    return children.get(Words.alike(written));
  }

  /** The key at a path below this one, such as {@code room.doors[]}; null if there is none. */
  KeyNode beneath(String path) {
    KeyNode node = this;
    for (String name : path.replace("[]", "").split("\\.")) {
      node = node == null ? null : node.child(name);
    }
    return node;
  }

  List<String> childNames() {
    List<String> names = new ArrayList<>(children.size());
    for (KeyNode child : children.values()) {
      names.add(child.name);
    }
    return names;
  }

  /** What it is in a message: its path without list marks, or "the scenario". */
  String inWords() {
    return path.isEmpty() ? name : path.replace("[]", "");
  }
}
