package underfoot.talk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import underfoot.knowledge.InterviewBook;
import underfoot.knowledge.InterviewBook.Phrase;
import underfoot.knowledge.KnowledgeFault;
import underfoot.quantity.Nearest;
import underfoot.scenario.FactBook;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Kind;

/** Every phrase the rule base knows an answer by, cut to words, and how words are compared. */
final class Lexicon {
  /** Words this long may hold a slip of the pen; words twice as long, two. */
  private static final int LONG = 4;

  private static final String OVER = "over";

  private final Map<String, List<Entry>> byFact = new LinkedHashMap<>();
  private final Map<String, Set<List<String>>> sorts = new ConcurrentHashMap<>();
  private final Set<String> known = new HashSet<>();
  private final Set<String> fillers;
  private final Tokens tokens;
  private final InterviewBook book;

  /**
   * A phrase of one fact.
   *
   * @param words its words, fillers left out
   * @param phrase what it comes to
   * @param refused why no advice is given for it; empty if it is
   */
  record Entry(List<String> words, Phrase phrase, String refused) {}

  Lexicon(InterviewBook book, FactBook facts) throws KnowledgeFault {
    this.book = book;
    this.tokens = new Tokens(book.sayings());
    this.fillers = Set.copyOf(book.sayings().words("fillers"));
    for (FactDefinition fact : facts.definitions()) {
      List<Entry> entries = new ArrayList<>();
      for (Phrase phrase : book.phrases(fact)) {
        add(entries, phrase, "");
      }
      for (String same : book.help(fact).list("same")) {
        add(entries, new Phrase(same, "", true, false), "");
      }
      fact.refused().forEach((word, why) -> add(entries, new Phrase(word, word, true, true), why));
      byFact.put(fact.key(), entries);
      for (String text : List.of(fact.ask(), fact.means(), fact.look(), fact.key())) {
        known.addAll(tokens.of(text));
      }
      book.help(fact).list("beside").forEach(word -> known.addAll(tokens.of(word)));
    }
    // What lies on top may also lie beneath, by the same words.
    List<String> over = book.sayings().words("first over second");
    if (over.size() == 2) {
      List<String> below = facts.find(over.get(1)).map(FactDefinition::of).orElse(List.of());
      for (Phrase one : book.phrases(facts.find(over.get(0)).orElseThrow())) {
        if (below.contains(one.value())) {
          Phrase here = new Phrase(one.words(), one.value(), one.certain(), false);
          add(byFact.get(over.get(1)), here, "");
        }
      }
    }
    known.addAll(fillers);
    book.sayings().pairs("in a decade").keySet().forEach(word -> known.addAll(tokens.of(word)));
    for (String sort : SORTS) {
      book.sayings().words(sort).forEach(words -> known.addAll(tokens.of(words)));
    }
  }

  private static final List<String> SORTS =
      List.of("yes", "no", "unknown", "perhaps", "about", "not", "put right", OVER, "square");

  private void add(List<Entry> entries, Phrase phrase, String refused) {
    List<String> words = content(tokens.of(phrase.words()));
    words = words.isEmpty() ? tokens.of(phrase.words()) : words;
    known.addAll(words);
    // A bare yes or none answers what was asked and nothing else.
    boolean bare = is("yes", words) || is("no", words);
    boolean anywhere = phrase.anywhere() && !bare;
    Phrase told = new Phrase(phrase.words(), phrase.value(), phrase.certain(), anywhere);
    entries.add(new Entry(words, told, refused));
  }

  Tokens tokens() {
    return tokens;
  }

  List<Entry> entries(FactDefinition fact) {
    return byFact.getOrDefault(fact.key(), List.of());
  }

  boolean isFiller(String token) {
    return fillers.contains(token);
  }

  /** The words that say something of themselves. */
  List<String> content(List<String> all) {
    return all.stream().filter(token -> !fillers.contains(token)).toList();
  }

  /** Whether tokens begin, at some place, with words of one sort; how many tokens these are. */
  int begins(String sort, List<String> all, int at) {
    Set<List<String>> words = sorts.computeIfAbsent(sort, this::cut);
    int longest = 0;
    for (List<String> one : words) {
      int end = at + one.size();
      if (one.size() > longest && end <= all.size() && all.subList(at, end).equals(one)) {
        longest = one.size();
      }
    }
    return longest;
  }

  private Set<List<String>> cut(String sort) {
    Set<List<String>> cut = new HashSet<>();
    for (String words : book.sayings().words(sort)) {
      List<String> all = tokens.of(words);
      List<String> content = content(all);
      cut.add(sort.equals(OVER) && !content.isEmpty() ? content : all);
    }
    return cut;
  }

  /** Whether tokens hold words of one sort anywhere. */
  boolean holds(String sort, List<String> all) {
    for (int i = 0; i < all.size(); i++) {
      if (begins(sort, all, i) > 0) {
        return true;
      }
    }
    return false;
  }

  /** Whether tokens are words of one sort and no more. */
  boolean is(String sort, List<String> all) {
    List<String> plain = all.stream().filter(token -> !token.equals(",")).toList();
    return !plain.isEmpty() && begins(sort, plain, 0) == plain.size();
  }

  /** How far a word said is from one that is known: 0 for the same, -1 if it is another. */
  int apart(String said, String word) {
    if (said.equals(word) || stem(said).equals(stem(word))) {
      return 0;
    }
    if (said.length() < LONG || word.length() < LONG || known.contains(said)) {
      return -1;
    }
    int distance = Nearest.distance(said, word);
    boolean longer = Math.min(said.length(), word.length()) >= 2 * LONG;
    return distance <= (longer ? 2 : 1) ? distance : -1;
  }

  private static String stem(String word) {
    return word.length() > LONG - 1 && word.endsWith("s") && !word.endsWith("ss")
        ? word.substring(0, word.length() - 1)
        : word;
  }

  /** Whether a fact is of those that are answered by words of their own. */
  static boolean isWorded(FactDefinition fact) {
    return fact.kind() != Kind.TEXT && fact.kind() != Kind.READINGS;
  }
}
