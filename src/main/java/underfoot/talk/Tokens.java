package underfoot.talk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underfoot.knowledge.KnowledgeFault;
import underfoot.knowledge.Sayings;
import underfoot.quantity.Dimension;

/** Cuts a saying into words, numbers and units that can be compared with each other. */
final class Tokens {
  /** Fractions, numbers (a decade as 1970s), words with their apostrophes, units in signs. */
  private static final Pattern TOKEN =
      Pattern.compile(
          "-?[0-9]+ [0-9]+/[0-9]+|-?[0-9]+/[0-9]+|-?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:s\\b)?"
              + "|c/c|(?:mm|cm|m|in|ft|yd)[2²]\\b|[\\p{L}&+]+(?:'\\p{L}+)*|[\"'%°,;~]");

  private static final String SIGNS = "\u2013|\u2014|\u2212";

  private final Map<List<String>, List<String>> spellings = new LinkedHashMap<>();
  private final Map<String, String> numbers;
  private final Map<List<String>, List<String>> parts = new LinkedHashMap<>();
  private final Set<String> units = new LinkedHashSet<>();

  Tokens(Sayings sayings) throws KnowledgeFault {
    numbers = sayings.pairs("numbers");
    Dimension.LENGTH.spellings().forEach(units::add);
    List<Map.Entry<String, String>> all = new ArrayList<>(sayings.pairs("spellings").entrySet());
    all.addAll(sayings.pairs("units").entrySet());
    all.sort((a, b) -> cut(b.getKey()).size() - cut(a.getKey()).size());
    all.forEach(one -> spellings.put(cut(one.getKey()), cut(one.getValue())));
    sayings.pairs("parts of one").forEach((words, is) -> parts.put(cut(words), List.of(is)));
  }

  /** The tokens of a text, spellings, units and numbers made uniform. */
  List<String> of(String text) {
    List<String> tokens = cut(text);
    List<String> said = new ArrayList<>();
    for (int i = 0; i < tokens.size(); i++) {
      String token = tokens.get(i);
      String next = i + 1 < tokens.size() ? tokens.get(i + 1) : "";
      boolean article = token.equals("a") || token.equals("an") || token.equals("one");
      said.add(article && next.length() > 2 && units.contains(next) ? "1" : token);
    }
    return counted(replaced(replaced(said, spellings), parts));
  }

  private static List<String> cut(String text) {
    String plain =
        text.toLowerCase(Locale.ROOT)
            .replaceAll(SIGNS, "-")
            .replaceAll("[\u2018\u2019\u2032\u00b4`]", "'")
            .replaceAll("[\u201c\u201d\u2033]|''", "\"")
            .replace("\u00d7", " x ")
            .replace("*", " x ")
            .replace("½", " 1/2")
            .replace("¼", " 1/4")
            .replace("¾", " 3/4")
            .replaceAll("([0-9])-([0-9]+/[0-9])", "$1 $2")
            .replaceAll("([0-9])\\s*-\\s*(?=[0-9])", "$1 to ")
            .replaceAll("([0-9]),([0-9]{3})(?![0-9])", "$1$2")
            .replaceAll("([0-9]),([0-9])", "$1.$2")
            .replaceAll("([0-9])\\s*(mm|cm|m|in|ft)\\s*-\\s*(?=[0-9])", "$1 $2 to ")
            .replaceAll("(?<=[\\p{L}])[-/_](?=[\\p{L}0-9])", " ")
            .replaceAll("\\bc c\\b", "c/c");
    List<String> tokens = new ArrayList<>();
    Matcher matcher = TOKEN.matcher(plain);
    while (matcher.find()) {
      String token = matcher.group();
      // "8x2s": the s of several; "1970s" and "60s" are decades.
      boolean several = token.matches("[0-9]s") || token.matches("[0-9]{3}s");
      tokens.add(several ? token.substring(0, token.length() - 1) : token);
    }
    return tokens;
  }

  private static List<String> replaced(List<String> tokens, Map<List<String>, List<String>> by) {
    List<String> all = new ArrayList<>(tokens);
    for (int i = 0; i < all.size(); i++) {
      for (Map.Entry<List<String>, List<String>> one : by.entrySet()) {
        int end = i + one.getKey().size();
        if (end <= all.size() && all.subList(i, end).equals(one.getKey())) {
          List<String> span = all.subList(i, end);
          span.clear();
          span.addAll(one.getValue());
          break;
        }
      }
    }
    return all;
  }

  /** Numbers in words as digits; "one" stays a word unless a number or a unit follows. */
  private List<String> counted(List<String> tokens) {
    List<String> all = new ArrayList<>();
    int i = 0;
    while (i < tokens.size()) {
      String token = tokens.get(i);
      String next = i + 1 < tokens.size() ? tokens.get(i + 1) : "";
      if (token.contains("/") && List.of("of", "a", "an").contains(next)) {
        all.add(token); // three quarters of an inch
        i++;
        while (i < tokens.size() && List.of("of", "a", "an", "1").contains(tokens.get(i))) {
          i++;
        }
        continue;
      }
      boolean counts = numbers.containsKey(token);
      boolean lone = token.equals("one") && !numbers.containsKey(next) && !units.contains(next);
      if (!counts || lone) {
        all.add(token);
        i++;
        continue;
      }
      int total = 0;
      int part = 0;
      while (i < tokens.size() && numbers.containsKey(tokens.get(i))) {
        int value = Integer.parseInt(numbers.get(tokens.get(i)));
        if (value >= 100) {
          part = Math.max(1, part) * value;
          total += value >= 1000 ? part : 0;
          part = value >= 1000 ? 0 : part;
        } else {
          part += value;
        }
        i++;
      }
      all.add(Integer.toString(total + part));
    }
    return all;
  }
}
