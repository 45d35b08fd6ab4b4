package underfoot.working;

import java.util.List;

/**
 * One of several ways to give a working its keys: {@code modulus} or {@code grade}.
 *
 * @param needed keys that must all be given when this way is taken; the first one marks the way
 * @param also keys of another way that may still be given
 */
public record Alternative(List<String> needed, List<String> also) {
  static Alternative of(String... needed) {
    return new Alternative(List.of(needed), List.of());
  }

  Alternative with(String... others) {
    return new Alternative(needed, List.of(others));
  }

  /** Its keys in words: {@code grid with dx and dy}. */
  public String words() {
    String first = needed.get(0);
    return needed.size() == 1
        ? first
        : first + " with " + String.join(" and ", needed.subList(1, needed.size()));
  }

  String mark() {
    return needed.get(0);
  }

  boolean takes(String name) {
    return needed.contains(name) || also.contains(name);
  }
}
