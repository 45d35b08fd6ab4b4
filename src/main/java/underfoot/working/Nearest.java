package underfoot.working;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** The known word nearest to one that is not known. */
final class Nearest {
  private static final int LONGEST = 40;

  private Nearest() {}

  /** The nearest known word, if any is near enough to be worth suggesting. */
  static Optional<String> to(String word, Collection<String> known) {
    String asked = word.strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    if (asked.isEmpty() || asked.length() > LONGEST) {
      return Optional.empty();
    }
    return known.stream()
        .min(Comparator.comparingInt(name -> distance(asked, name)))
        .filter(
            name ->
                distance(asked, name) <= Math.max(1, Math.max(asked.length(), name.length()) / 3));
  }

  private static int distance(String one, String other) {
    int[] above = new int[other.length() + 1];
    for (int j = 0; j <= other.length(); j++) {
      above[j] = j;
    }
    for (int i = 1; i <= one.length(); i++) {
      int[] row = new int[other.length() + 1];
      row[0] = i;
      for (int j = 1; j <= other.length(); j++) {
        int swap = above[j - 1] + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(swap, 1 + Math.min(row[j - 1], above[j]));
      }
      above = row;
    }
    return above[other.length()];
  }
}
