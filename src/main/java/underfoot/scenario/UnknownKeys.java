package underfoot.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import underfoot.quantity.Nearest;
import underfoot.quantity.Words;

/** Tells what is wrong with a key that is none, and where it may belong. */
final class UnknownKeys {
  /** Beyond this many faults no more suggestions are looked for: they are not printed. */
  private static final int WORTH_A_SUGGESTION = 60;

  private final FactBook book;

  /** Groups whose keys have been listed once already. */
  private final Set<String> listed = new HashSet<>();

  UnknownKeys(FactBook book) {
    this.book = book;
  }

  String what(Node.Entry entry, KeyNode node) {
    return Words.quote(entry.key()) + " is not a key of " + node.inWords();
  }

  /** How it may be meant, after so many faults. */
  String how(Node.Entry entry, KeyNode node, int faults) {
    if (faults > WORTH_A_SUGGESTION) {
      return "";
    }
    List<String> homes = new ArrayList<>();
    homes(book.root(), node, Words.alike(entry.key()), homes);
    if (!homes.isEmpty()) {
      return "it belongs under " + String.join(" or ", homes);
    }
    String near = Nearest.to(entry.key(), node.childNames());
    if (!near.isEmpty()) {
      return "write: " + near;
    }
    return listed.add(node.path) ? "keys here: " + String.join(", ", node.childNames()) : "";
  }

  /** The groups other than this one that hold a key of this spelling. */
  private static void homes(KeyNode at, KeyNode except, String alike, List<String> homes) {
    if (at != except && at.children.containsKey(alike)) {
      String home = at.path.isEmpty() ? "no other key: move it to the left edge" : at.inWords();
      if (!homes.contains(home)) { // what is shared stands under several
        homes.add(home);
      }
    }
    for (KeyNode child : at.children.values()) {
      homes(child, except, alike, homes);
    }
  }
}
