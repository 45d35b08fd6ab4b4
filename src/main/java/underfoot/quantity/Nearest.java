package underfoot.quantity;

/** Finds the word most like a misspelt one. */
public final class Nearest {
  private static final int LONGEST = 60;

  private Nearest() {}

  /**
   * The known word nearest to a written one.
   *
   * @param written the word as written
   * @param known the words to choose from
   * @return the nearest, or an empty text if none is near enough to be meant
   */
  public static String to(String written, Iterable<String> known) {
    String w = cut(Words.alike(written));
    String best = "";
    int least = Integer.MAX_VALUE;
    for (String word : known) {
      String k = cut(Words.alike(word));
      int allowed = Math.max(1, Math.max(w.length(), k.length()) / 3);
      if (Math.abs(w.length() - k.length()) > allowed) {
        continue;
      }
      int distance = distance(w, k);
      boolean better =
          distance < least || (distance == least && word.compareTo(best) < 0 && !best.isEmpty());
      if (distance <= allowed && distance < w.length() && better) {
        least = distance;
        best = word;
      }
    }
    return best;
  }

  /** Edits (insert, drop, replace, swap two neighbours) that turn one word into the other. */
  public static int distance(String a, String b) {
    int[] before = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] now = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      now[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int cost = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        now[j] = Math.min(Math.min(now[j - 1], last[j]) + 1, last[j - 1] + cost);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          now[j] = Math.min(now[j], before[j - 2] + 1);
        }
      }
      int[] spare = before;
      before = last;
      last = now;
      now = spare;
    }
    return last[b.length()];
  }

  private static String cut(String word) {
    return word.length() <= LONGEST ? word : word.substring(0, LONGEST);
  }
}
