package underfoot.talk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import underfoot.knowledge.InterviewBook;
import underfoot.knowledge.Sayings;
import underfoot.scenario.FactBook;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Kind;
import underfoot.scenario.Place;

/** Which phrases of the rule base are meant by a saying, no two rivals by the same words. */
final class Meanings {
  /** Where something else was asked, only words this long may hold a slip of the pen. */
  private static final int LONG = 6;

  private static final String NONE = "none";

  private final InterviewBook book;
  private final FactBook facts;
  private final Sayings sayings;
  private final Lexicon lexicon;
  private final List<List<String>> rivals;

  Meanings(InterviewBook book, FactBook facts, Lexicon lexicon) {
    this.book = book;
    this.facts = facts;
    this.sayings = book.sayings();
    this.lexicon = lexicon;
    this.rivals = List.of(sayings.words("one of these"), sayings.words("or one of these"));
  }

  /** A phrase found in a saying, from one of its content words to before another. */
  record Found(
      FactDefinition fact, Lexicon.Entry entry, int from, int to, int slips, String value) {
    boolean overlaps(Found other) {
      return from < other.to && other.from < to;
    }

    boolean sameSpan(Found other) {
      return from == other.from && to == other.to;
    }

    int length() {
      return to - from;
    }
  }

  /** The phrases that are meant, no two rivals by the same words. */
  List<Found> meant(Place asked, List<String> tokens, List<String> content, Known said) {
    List<Found> all = new ArrayList<>();
    for (FactDefinition fact : facts.definitions()) {
      boolean other = fact.ofEntries() && !asked.isOfEntry(fact) && !fact.equals(asked.fact());
      if (other || !Lexicon.isWorded(fact)) {
        continue;
      }
      String sides = book.help(asked.fact()).text("sides");
      boolean isAsked = fact.equals(asked.fact()) || fact.key().equals(sides);
      for (Lexicon.Entry entry : lexicon.entries(fact)) {
        boolean same = entry.phrase().value().isEmpty(); // as the other side
        if (isAsked && (!same || fact.equals(asked.fact())) || entry.phrase().anywhere()) {
          find(fact, entry, isAsked, tokens, content, all::add);
        }
      }
    }
    all.sort(
        Comparator.<Found>comparingInt(one -> one.fact().equals(asked.fact()) ? 0 : 1)
            .thenComparingInt(one -> -one.length())
            .thenComparingInt(Found::slips)
            .thenComparingInt(one -> -likely(one, content, said))
            .thenComparingInt(Found::from));
    List<Found> lying = lyingOver(asked, tokens, content);
    List<Found> kept = new ArrayList<>(lying);
    for (Found one : all) {
      boolean sure = one.entry().phrase().certain();
      boolean better =
          kept.removeIf(
              other ->
                  sure
                      && other.fact().equals(one.fact())
                      && !other.entry().phrase().certain()
                      && !lying.contains(other)
                      && !other.overlaps(one));
      if (better || kept.stream().noneMatch(other -> excludes(asked, other, one))) {
        kept.add(one);
      }
    }
    return kept;
  }

  /** Whether one phrase that is meant leaves no room for another. */
  private boolean excludes(Place asked, Found kept, Found other) {
    if (kept.fact().equals(other.fact())) {
      return true;
    }
    if (!kept.overlaps(other)) {
      return false;
    }
    boolean says = other.from() < kept.from() || other.to() > kept.to();
    boolean more = kept.fact().equals(asked.fact()) && says;
    return rivals(kept.fact(), other.fact()) || !kept.sameSpan(other) && !more;
  }

  void find(
      FactDefinition fact,
      Lexicon.Entry entry,
      boolean isAsked,
      List<String> tokens,
      List<String> content,
      Consumer<Found> found) {
    List<String> words = entry.words();
    if (words.stream().allMatch(lexicon::isFiller)) {
      if (tokens.equals(words)) {
        found.accept(new Found(fact, entry, 0, 0, 0, entry.phrase().value()));
      }
      return;
    }
    for (int from = 0; from + words.size() <= content.size(); from++) {
      int slips = 0;
      for (int i = 0; i < words.size() && slips >= 0; i++) {
        int apart = lexicon.apart(content.get(from + i), words.get(i));
        apart = apart > 0 && !isAsked && words.get(i).length() < LONG ? -1 : apart;
        slips = apart < 0 ? -1 : slips + apart;
      }
      if (slips >= 0) {
        String value = entry.phrase().value();
        boolean turned = from > 0 && lexicon.begins("not", content, from - 1) > 0;
        if (turned) {
          value = turned(fact, value);
        }
        if (!turned || !value.isEmpty()) {
          found.accept(new Found(fact, entry, from, from + words.size(), slips, value));
        }
      }
    }
  }

  /** The other way round; empty if that leaves open what it is. */
  private static String turned(FactDefinition fact, String value) {
    if (fact.kind() == Kind.YES_NO) {
      return value.equals("yes") ? "no" : "yes";
    }
    return fact.of().contains(NONE) ? NONE : "";
  }

  private boolean rivals(FactDefinition a, FactDefinition b) {
    return rivals.stream().anyMatch(one -> one.contains(a.key()) && one.contains(b.key()));
  }

  /** Of what is told from each other by the words around: how likely this one is. */
  private int likely(Found one, List<String> content, Known said) {
    List<String> kinds = rivals.get(0);
    if (!kinds.contains(one.fact().key())) {
      return 0;
    }
    String before = one.from() > 0 ? content.get(one.from() - 1) : "";
    String begins = content.get(one.from());
    List<String> floor = sayings.words("of the floor");
    boolean lies = lexicon.begins("over", content, one.to()) > 0;
    boolean ofFloor = lies || floor.contains(before) || floor.contains(begins);
    boolean ofTile = sayings.words("of the tile").contains(before);
    boolean isTile = kinds.indexOf(one.fact().key()) == 1;
    int open = said.answers().has(new Place(one.fact(), "")) ? 0 : 2;
    return open + (isTile ? ofTile ? 4 : ofFloor ? 0 : 1 : ofFloor ? 4 : 0);
  }

  /** "Vinyl on concrete": the first lies on the second. */
  private List<Found> lyingOver(Place asked, List<String> tokens, List<String> content) {
    List<String> pair = sayings.words("first over second");
    String key = asked.fact().key();
    if (pair.size() != 2 || rivals.get(0).contains(key) && !pair.contains(key)) {
      return List.of();
    }
    FactDefinition top = facts.find(pair.get(0)).orElseThrow();
    FactDefinition below = facts.find(pair.get(1)).orElseThrow();
    List<Found> tops = new ArrayList<>();
    List<Found> belows = new ArrayList<>();
    lexicon.entries(top).forEach(entry -> find(top, entry, true, tokens, content, tops::add));
    lexicon.entries(below).forEach(entry -> find(below, entry, true, tokens, content, belows::add));
    Comparator<Found> longest = Comparator.comparingInt(one -> -one.length());
    tops.sort(longest);
    belows.sort(longest);
    List<String> between = sayings.words("of the floor");
    for (Found first : tops) {
      int at = first.to();
      int over = lexicon.begins("over", content, at);
      if (over == 0) {
        continue;
      }
      at += over;
      while (at < content.size() && between.contains(content.get(at))) {
        at++;
      }
      for (Found second : belows) {
        boolean begins = second.from() == at || second.from() == first.to() + over;
        if (begins && !second.value().equals(first.value())) {
          return List.of(first, second);
        }
      }
    }
    return List.of();
  }
}
