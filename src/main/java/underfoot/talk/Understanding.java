package underfoot.talk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underfoot.knowledge.InterviewBook;
import underfoot.knowledge.InterviewBook.Taken;
import underfoot.knowledge.KnowledgeFault;
import underfoot.knowledge.Sayings;
import underfoot.quantity.Nearest;
import underfoot.quantity.NotAQuantity;
import underfoot.quantity.Quantity;
import underfoot.quantity.Words;
import underfoot.scenario.Answers;
import underfoot.scenario.Corners;
import underfoot.scenario.FactBook;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Kind;
import underfoot.scenario.Place;

/**
 * What people mean who answer in their own words: what was asked, and whatever else they said in
 * the same breath. All words it knows are data of the rule base. Safe to share between threads.
 */
public final class Understanding {
  private static final String NONE = "none";

  private final InterviewBook book;
  private final FactBook facts;
  private final Sayings sayings;
  private final Lexicon lexicon;
  private final Numbers numbers;
  private final Meanings meanings;

  /**
   * @param book how people are asked, and what their words mean
   * @param facts what may be said
   * @throws KnowledgeFault if the words of the rule base are at fault
   */
  public Understanding(InterviewBook book, FactBook facts) throws KnowledgeFault {
    this.book = book;
    this.facts = facts;
    this.sayings = book.sayings();
    this.lexicon = new Lexicon(book, facts);
    this.numbers = new Numbers(book, facts, lexicon);
    this.meanings = new Meanings(book, facts, lexicon);
  }

  /** The command a saying is, such as {@code back}; empty if it is none. */
  String command(String words) {
    if (words.strip().equals("?")) {
      return "help";
    }
    List<String> all = lexicon.tokens().of(words);
    return List.of("help", "why", "back", "so far", "enough", "quit").stream()
        .filter(sort -> lexicon.is(sort, all))
        .findFirst()
        .orElse("");
  }

  /** Whether a saying is a yes, a no, or that nobody knows, and nothing else. */
  boolean is(String sort, String words) {
    return lexicon.is(sort, lexicon.tokens().of(words));
  }

  /**
   * What a saying means.
   *
   * @param asked what was asked
   * @param words what was said
   * @param said what was said before
   */
  Heard of(Place asked, String words, Known said) {
    FactDefinition fact = asked.fact();
    String text = words.strip();
    if (text.isEmpty() || text.equals(Answers.UNKNOWN)) {
      return unknown(asked);
    }
    Optional<String> exact = exactly(fact, text);
    if (exact.isPresent()) {
      return new Heard(List.of(Heard.One.sure(asked, exact.get())), "", "");
    }
    if (fact.kind() == Kind.TEXT || fact.kind() == Kind.READINGS || text.startsWith("[")) {
      boolean none = is("unknown", text) || fact.kind() != Kind.TEXT && is("no", text);
      return none ? unknown(asked) : new Heard(List.of(Heard.One.sure(asked, text)), "", "");
    }
    List<String> tokens = lexicon.tokens().of(text);
    if (lexicon.is("unknown", tokens)) {
      return unknown(asked);
    }
    Optional<String> byNumber = Chosen.byNumber(fact, text, tokens);
    if (byNumber.isPresent()) {
      return new Heard(List.of(Heard.One.sure(asked, byNumber.get())), "", "");
    }
    if (fact.kind() == Kind.LIST) {
      return list(asked, text, tokens, said);
    }
    if (fact.kind() == Kind.DATE) {
      String date = Chosen.date(tokens).orElse(text);
      return new Heard(List.of(Heard.One.sure(asked, date)), "", "");
    }
    List<String> content = lexicon.content(tokens);
    if (fact.kind() == Kind.CHOICES) {
      return choices(asked, text, content);
    }
    List<Meanings.Found> found = meanings.meant(asked, tokens, content, said);
    for (Meanings.Found one : found) {
      if (!one.entry().refused().isEmpty()) {
        return Heard.no(one.entry().refused() + ".", "");
      }
    }
    Map<String, Heard.One> heard = new LinkedHashMap<>();
    for (Meanings.Found one : found) {
      Place place = one.fact().equals(fact) ? asked : asked.beside(one.fact());
      put(heard, place, one, perhaps(tokens, content, one.from()), said);
    }
    numbers.of(asked, tokens, claimed(found, tokens, content), said, heard);
    if (!heard.containsKey(asked.id())) {
      yesOrNo(asked, tokens).ifPresent(one -> heard.put(asked.id(), one));
    }
    if (heard.isEmpty() && lexicon.begins("unknown", tokens, 0) > 0) {
      return unknown(asked);
    }
    List<Heard.One> all = inOrder(asked, heard.values(), tokens, said);
    boolean answered = all.stream().anyMatch(one -> one.place().equals(asked));
    String or = book.help(fact).text("or");
    if (!answered && all.stream().anyMatch(one -> one.place().fact().key().equals(or))) {
      all.add(0, Heard.One.sure(asked, Answers.UNKNOWN));
      answered = true;
    }
    return answered ? new Heard(all, "", "") : objection(asked, text, content, all);
  }

  /** The value, if it is said just as a scenario writes it. */
  private static Optional<String> exactly(FactDefinition fact, String text) {
    if (fact.kind() == Kind.POINTS || fact.kind() == Kind.RECTANGLE) {
      return Corners.placed(fact.kind(), text);
    }
    if (fact.kind() == Kind.QUANTITY) {
      try {
        return Optional.of(Quantity.parse(text, fact.dimension()).text());
      } catch (NotAQuantity e) {
        return Optional.empty();
      }
    }
    String alike = Words.alike(text);
    return fact.kind() == Kind.CHOICE
        ? fact.of().stream().filter(word -> Words.alike(word).equals(alike)).findFirst()
        : Optional.empty();
  }

  private Heard unknown(Place asked) {
    Taken guess = book.guess(asked.fact()).orElse(new Taken(Answers.UNKNOWN, true, ""));
    return new Heard(List.of(new Heard.One(asked, guess)), "", "");
  }

  /** What was asked for first; an earlier answer stays, unless it was a guess or is put right. */
  private List<Heard.One> inOrder(
      Place asked, Iterable<Heard.One> heard, List<String> tokens, Known said) {
    boolean perhaps = !tokens.contains(",") && lexicon.holds("perhaps", tokens);
    boolean putRight = lexicon.holds("put right", tokens);
    List<Heard.One> all = new ArrayList<>();
    for (Heard.One one : heard) {
      boolean first = one.place().equals(asked);
      boolean known =
          said.answers().said(one.place()).filter(it -> !it.equals(Answers.UNKNOWN)).isPresent();
      boolean ofEntry = asked.isOfEntry(one.place().fact()); // who moves a door says all of it
      if (first || ofEntry || putRight || !known || said.isGuess(one.place())) {
        Taken taken = one.taken();
        String since = taken.certain() ? sayings.text("since perhaps") : taken.since();
        Taken now = perhaps ? new Taken(taken.value(), false, since) : taken;
        all.add(first ? 0 : all.size(), new Heard.One(one.place(), now));
      }
    }
    return all;
  }

  /** Whether the part of a saying, between commas, in which a word stands is only likely. */
  private boolean perhaps(List<String> tokens, List<String> content, int at) {
    long commas = content.subList(0, at).stream().filter(","::equals).count();
    int part = 0;
    List<String> words = new ArrayList<>();
    for (String token : tokens) {
      part += token.equals(",") ? 1 : 0;
      if (part == commas) {
        words.add(token);
      }
    }
    return lexicon.holds("perhaps", words);
  }

  private void put(
      Map<String, Heard.One> heard, Place place, Meanings.Found one, boolean perhaps, Known said) {
    String value = one.value();
    boolean certain = one.entry().phrase().certain() && !perhaps;
    if (value.isEmpty()) { // the same as the other side
      Place other = place.beside(facts.find(book.help(one.fact()).text("same as")).orElseThrow());
      value = said.answers().said(other).orElse(Answers.UNKNOWN);
    }
    String why = perhaps ? sayings.text("since perhaps") : book.since(one.fact());
    String since = certain ? "" : why;
    heard.putIfAbsent(place.id(), new Heard.One(place, new Taken(value, certain, since)));
  }

  private Optional<Heard.One> yesOrNo(Place asked, List<String> tokens) {
    int no = lexicon.begins("no", tokens, 0);
    int yes = lexicon.begins("yes", tokens, 0);
    if (asked.fact().of().contains(NONE) && no > yes) {
      return Optional.of(Heard.One.sure(asked, NONE));
    }
    if (no == 0 && yes == 0 || asked.fact().kind() != Kind.YES_NO) {
      return Optional.empty();
    }
    return Optional.of(Heard.One.sure(asked, yes > no ? "yes" : "no"));
  }

  /** Which tokens are phrases, so that a number in them is not taken again. */
  private boolean[] claimed(List<Meanings.Found> found, List<String> tokens, List<String> content) {
    boolean[] claimed = new boolean[tokens.size()];
    int n = 0;
    for (int i = 0; i < tokens.size(); i++) {
      if (!lexicon.isFiller(tokens.get(i)) && n < content.size()) {
        int at = n++;
        claimed[i] = found.stream().anyMatch(one -> one.from() <= at && at < one.to());
      }
    }
    return claimed;
  }

  private Heard list(Place asked, String text, List<String> tokens, Known said) {
    List<String> content = lexicon.content(tokens);
    List<Meanings.Found> none = new ArrayList<>();
    for (Lexicon.Entry entry : lexicon.entries(asked.fact())) {
      meanings.find(asked.fact(), entry, true, tokens, content, none::add);
    }
    Optional<Meanings.Found> whole =
        none.stream().filter(one -> one.length() == content.size()).findFirst();
    String names =
        whole.isPresent()
            ? whole.get().value()
            : Chosen.names(asked.fact(), text, tokens, lexicon::isFiller, facts);
    List<Heard.One> all = new ArrayList<>(List.of(Heard.One.sure(asked, names)));
    if (!book.help(asked.fact()).text("tells").isEmpty() && whole.isEmpty()) {
      for (Meanings.Found one : meanings.meant(asked, tokens, content, said)) {
        Place place = asked.beside(one.fact());
        if (one.fact().kind() == Kind.YES_NO && !said.answers().has(place)) {
          all.add(Heard.One.sure(place, one.value()));
        }
      }
    }
    return new Heard(all, "", "");
  }

  /** Several choices, in the order they were said. */
  private Heard choices(Place asked, String text, List<String> content) {
    List<Meanings.Found> all = new ArrayList<>();
    for (Lexicon.Entry entry : lexicon.entries(asked.fact())) {
      meanings.find(asked.fact(), entry, true, List.of(), content, all::add);
    }
    all.sort(Comparator.comparingInt(Meanings.Found::from).thenComparingInt(one -> -one.length()));
    List<String> named = all.stream().map(Meanings.Found::value).distinct().toList();
    return named.isEmpty()
        ? objection(asked, text, content, List.of())
        : new Heard(List.of(Heard.One.sure(asked, String.join(", ", named))), "", "");
  }

  // --- what is no answer

  private Heard objection(Place asked, String text, List<String> content, List<Heard.One> others) {
    FactDefinition fact = asked.fact();
    List<String> known = new ArrayList<>();
    book.phrases(fact).forEach(phrase -> known.add(phrase.words()));
    String near = Nearest.to(String.join(" ", content), known);
    String meant =
        book.phrases(fact).stream()
            .filter(phrase -> phrase.words().equals(near))
            .map(InterviewBook.Phrase::value)
            .findFirst()
            .orElse("");
    String quoted = '"' + Words.cut(text) + '"';
    String what =
        others.isEmpty()
            ? quoted + " is not understood as an answer to this."
            : "That does not answer this yet.";
    String how = meant.isEmpty() ? Chosen.how(fact, book.help(fact).text("hint")) : meantBy(meant);
    return new Heard(others, what + ' ' + how, meant);
  }

  private static String meantBy(String meant) {
    return "Did you mean " + meant + "? Say yes, or say it otherwise.";
  }
}
