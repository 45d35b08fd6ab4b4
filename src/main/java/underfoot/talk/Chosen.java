package underfoot.talk;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import underfoot.scenario.FactBook;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Kind;

/** Answers that are no words of the rule base: by number, a day, names. */
final class Chosen {
  private static final List<String> ORDINALS =
      List.of("first", "second", "third", "fourth", "fifth", "sixth");
  private static final int MONTH_LETTERS = 3;
  private static final int MOST_COUNTED = 12;

  private Chosen() {}

  /**
   * Choices by their numbers: {@code 3}, {@code number 3}, {@code 2, 5}, {@code the second one}.
   */
  static Optional<String> byNumber(FactDefinition fact, String text, List<String> tokens) {
    boolean several = fact.kind() == Kind.CHOICES;
    if (fact.kind() != Kind.CHOICE && !several) {
      return Optional.empty();
    }
    String plain =
        text.strip()
            .toLowerCase(Locale.ROOT)
            .replaceFirst("^(?:the )?(?:number|no\\.?|option|choice|answer)\\s+", "");
    int ordinal = ORDINALS.indexOf(plain.replaceFirst("^the ", "").replaceFirst(" one$", ""));
    if (ordinal >= 0 && ordinal < fact.of().size()) {
      return Optional.of(fact.of().get(ordinal));
    }
    if (!plain.matches(several ? "[0-9]{1,2}(?:(?:[ ,;]|and)+[0-9]{1,2})*" : "[0-9]{1,2}")) {
      return Optional.empty();
    }
    List<String> named = new ArrayList<>();
    for (String number : plain.split("[^0-9]+")) {
      int n = Integer.parseInt(number);
      if (n < 1 || n > fact.of().size()) {
        return Optional.empty();
      }
      named.add(fact.of().get(n - 1));
    }
    return Optional.of(String.join(", ", named));
  }

  /** A day said as {@code 1 March 2027} or {@code 1/3/2027}, as a scenario writes it. */
  static Optional<String> date(List<String> tokens) {
    List<Integer> numbers = new ArrayList<>();
    int month = 0;
    for (String token : tokens) {
      for (String number : token.split("[/ ]")) {
        if (number.matches("[0-9]{1,4}")) {
          numbers.add(Integer.valueOf(number));
        }
      }
      for (Month one : Month.values()) {
        String begin = one.name().toLowerCase(Locale.ROOT).substring(0, MONTH_LETTERS);
        month =
            token.startsWith(begin) && one.name().toLowerCase(Locale.ROOT).startsWith(token)
                ? one.getValue()
                : month;
      }
    }
    if (month > 0 && numbers.size() == 2) {
      numbers.add(1, month);
    }
    if (numbers.size() != MONTH_LETTERS) {
      return Optional.empty();
    }
    boolean yearFirst = numbers.get(0) > 31;
    try {
      int day = numbers.get(yearFirst ? 2 : 0);
      return Optional.of(
          LocalDate.of(numbers.get(yearFirst ? 0 : 2), numbers.get(1), day).toString());
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }

  /** Names with commas or "and" between; a bare count gives names of its own. */
  static String names(
      FactDefinition list,
      String text,
      List<String> tokens,
      Predicate<String> filler,
      FactBook facts) {
    String noun = facts.find(list.key() + "[].name").map(FactDefinition::called).orElse("one");
    List<String> plain =
        tokens.stream()
            .filter(token -> !filler.test(token) && !noun.startsWith(token.replaceAll("s$", "")))
            .toList();
    if (plain.size() == 1 && plain.get(0).matches("[0-9]{1,2}")) {
      int count = Math.min(MOST_COUNTED, Integer.parseInt(plain.get(0)));
      return count == 0
          ? "none"
          : IntStream.rangeClosed(1, count)
              .mapToObj(n -> noun + ' ' + n)
              .collect(Collectors.joining(", "));
    }
    List<String> names = new ArrayList<>();
    for (String name : text.split("(?i)[,;\n]|\\band\\b|&")) {
      String bare =
          name.strip()
              .replaceFirst("(?i)^(?:there's|there is|we have|i have|yes)\\s+", "")
              .replaceFirst("(?i)^(?:an?|the|my|our|just|maybe)\\s+", "")
              .replaceFirst("[.!]+$", "");
      if (!bare.isBlank() && !names.contains(bare)) {
        names.add(bare);
      }
    }
    return String.join(", ", names);
  }

  /** How a question may be answered. */
  static String how(FactDefinition fact, String hint) {
    return switch (fact.kind()) {
      case YES_NO -> "Say yes or no, or that you do not know.";
      case CHOICE -> "Say one of the choices, by its name or number, or that you do not know.";
      case CHOICES -> "Say one or more of the choices, with commas between.";
      default -> hint.isEmpty() ? "For example: " + fact.example() + "." : hint + ".";
    };
  }
}
