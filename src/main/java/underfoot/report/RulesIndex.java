package underfoot.report;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.TextParts;
import underfoot.language.RuleForm;

/** Finds rules by what they ask, by the base they are about, by the danger they tell, by a word. */
final class RulesIndex {
  private static final String BASE = "base";
  private static final String DANGER = "Warn of danger ";
  private static final Pattern WORD = Pattern.compile("[a-z][a-z-]{3,}");

  /** A word that more titles have than this leads nowhere. */
  private static final int MANY = 24;

  private final List<RuleForm> rules;
  private final Knowledge knowledge;

  RulesIndex(List<RuleForm> rules, Knowledge knowledge) {
    this.rules = rules;
    this.knowledge = knowledge;
  }

  /** Rules by the question that their file answers, in the order a floor is thought through. */
  Map<String, Set<RuleForm>> byQuestion() {
    return by(rule -> Stream.of(rule.asks().isEmpty() ? rule.file() : rule.asks()));
  }

  /** Rules by the kind of base that they name. */
  Map<String, Set<RuleForm>> byBase() {
    Map<String, Set<RuleForm>> found = new LinkedHashMap<>();
    for (String kind : knowledge.kinds().kinds(BASE)) {
      Pattern named = Pattern.compile("\\b" + Pattern.quote(kind) + "\\b");
      for (RuleForm rule : rules) {
        if (lines(rule).anyMatch(line -> named.matcher(line).find())) {
          found.computeIfAbsent(kind, any -> new LinkedHashSet<>()).add(rule);
        }
      }
    }
    return found;
  }

  /** Rules by the danger that they warn of, by its title. */
  Map<String, Set<RuleForm>> byDanger() {
    return new TreeMap<>(
        by(
            rule ->
                rule.each().stream()
                    .flatMap(one -> one.then().stream())
                    .filter(line -> line.startsWith(DANGER))
                    .flatMap(line -> Stream.of(line.split(" ")))
                    .filter(word -> knowledge.wording().ids().contains(word))
                    .map(id -> knowledge.wording().get(id))
                    .filter(text -> text.parts().containsKey(TextParts.DANGER))
                    .map(text -> text.title().replaceAll("\\s*\\[[^\\]]*\\]", "…"))
                    .distinct()));
  }

  /** Rules by the words of their titles, in the order of the alphabet; too common ones left out. */
  Map<String, Set<RuleForm>> byWord() {
    Map<String, Set<RuleForm>> found =
        new TreeMap<>(
            by(
                rule ->
                    WORD.matcher(rule.note().title().toLowerCase(Locale.ROOT))
                        .results()
                        .map(java.util.regex.MatchResult::group)
                        .distinct()));
    found.values().removeIf(all -> all.size() > MANY);
    return found;
  }

  /** Rules in which all words are found: in their titles, reasons, sentences and what they say. */
  List<RuleForm> with(List<String> words, Function<RuleForm, List<String>> wordings) {
    List<String> wanted = words.stream().map(word -> word.toLowerCase(Locale.ROOT)).toList();
    return rules.stream()
        .filter(
            rule -> {
              String all =
                  Stream.of(
                          Stream.of(rule.note().id(), rule.note().title(), rule.note().reason()),
                          lines(rule),
                          wordings.apply(rule).stream()
                              .flatMap(id -> knowledge.wording().get(id).parts().values().stream()))
                      .flatMap(one -> one)
                      .reduce("", (before, line) -> before + ' ' + line)
                      .toLowerCase(Locale.ROOT);
              return wanted.stream().allMatch(all::contains);
            })
        .toList();
  }

  private static Stream<String> lines(RuleForm rule) {
    return rule.each().stream()
        .flatMap(one -> Stream.concat(one.when().stream(), one.then().stream()));
  }

  private Map<String, Set<RuleForm>> by(Function<RuleForm, Stream<String>> keys) {
    Map<String, Set<RuleForm>> found = new LinkedHashMap<>();
    for (RuleForm rule : rules) {
      keys.apply(rule)
          .forEach(key -> found.computeIfAbsent(key, any -> new LinkedHashSet<>()).add(rule));
    }
    return found;
  }

  /** The first letter of a word. */
  static String letter(String word) {
    Matcher first = Pattern.compile("[a-z]").matcher(word);
    return first.find() ? first.group().toUpperCase(Locale.ROOT) : "";
  }
}
