package underfoot.talk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underfoot.knowledge.InterviewBook;
import underfoot.knowledge.InterviewBook.Taken;
import underfoot.knowledge.KnowledgeFault;
import underfoot.quantity.Dimension;
import underfoot.quantity.NotAQuantity;
import underfoot.quantity.Quantity;
import underfoot.scenario.FactBook;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Kind;
import underfoot.scenario.Place;
import underfoot.talk.Measured.Amount;
import underfoot.talk.Measured.Form;

/** What the numbers of a saying are of: what was asked, or what the words beside them name. */
final class Numbers {
  private static final Pattern BARE = Pattern.compile("(-?[0-9.]+) to ([0-9.]+)");
  private static final Pattern USUAL = Pattern.compile("(.+) to (.+)");
  private static final Pattern YEAR = Pattern.compile("'?([0-9]{2}|[0-9]{4})(s?)");
  private static final int FAR = 4;
  private static final int CENTURY = 1900;

  private final InterviewBook book;
  private final FactBook facts;
  private final Lexicon lexicon;
  private final Map<String, Map<String, String>> bare = new LinkedHashMap<>();
  private final Map<String, String> withinTen;

  Numbers(InterviewBook book, FactBook facts, Lexicon lexicon) throws KnowledgeFault {
    this.book = book;
    this.facts = facts;
    this.lexicon = lexicon;
    this.withinTen = book.sayings().pairs("in a decade");
    for (FactDefinition fact : facts.definitions()) {
      Map<String, String> units = new LinkedHashMap<>();
      for (String row : book.help(fact).list("bare")) {
        units.put(row.replaceFirst(" = .*$", ""), row.replaceFirst("^.* = ", ""));
      }
      bare.put(fact.key(), units);
    }
  }

  /** Puts what the numbers tell to what was heard. */
  void of(
      Place asked,
      List<String> tokens,
      boolean[] claimed,
      Known said,
      Map<String, Heard.One> heard) {
    years(asked, tokens, claimed, heard);
    List<Measured> open = new ArrayList<>();
    for (Measured one : new Measured.Finder(book.sayings(), tokens).all()) {
      boolean taken = false;
      for (int i = one.from(); i < one.to(); i++) {
        taken |= claimed[i];
      }
      if (!taken) {
        open.add(one);
      }
    }
    for (Measured one : open) {
      FactDefinition beside = beside(asked, one, tokens);
      boolean counted = asked.fact().kind() == Kind.COUNT && one.first().unit().isEmpty();
      boolean mine = counted || beside == null || beside.equals(asked.fact()) || open.size() == 1;
      if (mine && isFree(asked, heard) && put(asked, true, one, said, heard)) {
        continue;
      }
      for (FactDefinition other : Arrays.asList(beside, usual(one))) {
        if (other != null && isFree(asked.beside(other), heard)) {
          put(asked.beside(other), false, one, said, heard);
          break;
        }
      }
    }
  }

  private static boolean isFree(Place place, Map<String, Heard.One> heard) {
    return !heard.containsKey(place.id()) || !heard.get(place.id()).taken().certain();
  }

  // --- years

  private void years(
      Place asked, List<String> tokens, boolean[] claimed, Map<String, Heard.One> heard) {
    List<Integer> years = new ArrayList<>();
    boolean rough = false;
    for (int i = 0; i < tokens.size(); i++) {
      Matcher year = YEAR.matcher(tokens.get(i));
      boolean apostrophe = i > 0 && tokens.get(i - 1).equals("'");
      if (claimed[i] || !year.matches()) {
        continue;
      }
      boolean decade = !year.group(2).isEmpty();
      boolean two = year.group(1).length() == 2;
      boolean isAsked = asked.fact().kind() == Kind.YEAR;
      if (!decade
          && (two
              ? !isAsked && !apostrophe
              : !isAsked && !isYear(tokens, i) && !standsAlone(asked, tokens, i))) {
        continue;
      }
      int number = Integer.parseInt(year.group(1)) + (two ? CENTURY : 0);
      if (decade) {
        rough = true;
        String before = i > 0 ? tokens.get(i - 1) : "";
        number += Integer.parseInt(withinTen.getOrDefault(before, "0"));
      }
      if (decade || isAsked || inUsual(number)) {
        years.add(number);
        claimed[i] = true;
      }
    }
    Optional<Place> place = yearPlace(asked);
    if (years.isEmpty() || place.isEmpty() || heard.containsKey(place.get().id())) {
      return;
    }
    FactDefinition fact = place.get().fact();
    boolean least = book.help(fact).text("careful").equals("least");
    int value =
        years.stream().mapToInt(Integer::intValue).reduce(least ? Math::min : Math::max).orElse(0);
    boolean certain = years.size() == 1 && !rough;
    String since = certain ? "" : book.sayings().text(rough ? "since rough" : "since range");
    Taken taken = new Taken(Integer.toString(value), certain, since);
    heard.put(place.get().id(), new Heard.One(place.get(), taken));
  }

  private Optional<Place> yearPlace(Place asked) {
    if (asked.fact().kind() == Kind.YEAR) {
      return Optional.of(asked);
    }
    return facts.definitions().stream()
        .filter(fact -> fact.kind() == Kind.YEAR && isAnywhere(fact))
        .map(fact -> new Place(fact, ""))
        .findFirst();
  }

  /** Whether the word before says that it is a year: built 1962. */
  private boolean isYear(List<String> tokens, int i) {
    int before = i - 1;
    while (before >= 0 && lexicon.isFiller(tokens.get(before))) {
      before--;
    }
    String word = before < 0 ? "" : tokens.get(before);
    return facts.definitions().stream()
        .anyMatch(
            fact -> fact.kind() == Kind.YEAR && book.help(fact).list("beside").contains(word));
  }

  /** Whether a number stands for itself: no unit, no other side and no tile beside it. */
  private boolean standsAlone(Place asked, List<String> tokens, int i) {
    List<Measured> all = new Measured.Finder(book.sayings(), tokens).all();
    return all.stream()
        .filter(one -> one.from() <= i && i < one.to())
        .allMatch(
            one ->
                one.form() == Form.ONE
                    && one.first().unit().isEmpty()
                    && beside(asked, one, tokens) == null);
  }

  private boolean inUsual(int year) {
    return facts.definitions().stream()
        .filter(fact -> fact.kind() == Kind.YEAR && isAnywhere(fact))
        .map(fact -> USUAL.matcher(book.help(fact).text("usual")))
        .anyMatch(
            usual ->
                usual.matches()
                    && year >= Integer.parseInt(usual.group(1))
                    && year <= Integer.parseInt(usual.group(2)));
  }

  // --- what a number is of

  private boolean isAnywhere(FactDefinition fact) {
    return book.help(fact).text("anywhere").equals("yes");
  }

  private boolean fits(FactDefinition fact, Measured one) {
    boolean points = fact.kind() == Kind.POINTS;
    boolean two = one.form() == Form.PAIR || one.form() == Form.SQUARE;
    Dimension dimension = points ? Dimension.LENGTH : fact.dimension();
    boolean sides = !book.help(fact).text("sides").isEmpty();
    return (fact.kind() == Kind.QUANTITY || points)
        && (points ? two : !two || sides)
        && one.measures(dimension);
  }

  /** The fact of which words stand nearest to a number; null if none do. */
  private FactDefinition beside(Place asked, Measured one, List<String> tokens) {
    FactDefinition best = null;
    int least = FAR;
    for (FactDefinition fact : facts.definitions()) {
      boolean other = fact.ofEntries() && !asked.isOfEntry(fact);
      if (other || !isAnywhere(fact) || !fits(fact, one)) {
        continue;
      }
      for (String words : book.help(fact).list("beside")) {
        int distance = distance(one, tokens, lexicon.tokens().of(words));
        if (distance < least) {
          least = distance;
          best = fact;
        }
      }
    }
    return best;
  }

  /** How many words lie between; words after the number count as a little nearer. */
  private int distance(Measured one, List<String> tokens, List<String> words) {
    int between = 0;
    for (int i = one.to(); i + words.size() <= tokens.size() && between < FAR; i++) {
      if (same(tokens, i, words)) {
        return 2 * between;
      }
      between += step(tokens.get(i));
    }
    between = 0;
    for (int i = one.from() - words.size(); i >= 0 && between < FAR; i--) {
      if (same(tokens, i, words)) {
        return 2 * between + 1;
      }
      between += step(tokens.get(i + words.size() - 1));
    }
    return FAR;
  }

  private int step(String token) {
    return lexicon.isFiller(token) ? 0 : 1;
  }

  private boolean same(List<String> tokens, int at, List<String> words) {
    for (int i = 0; i < words.size(); i++) {
      if (lexicon.apart(tokens.get(at + i), words.get(i)) < 0) {
        return false;
      }
    }
    return true;
  }

  /** The first fact for which a pair is usual. */
  private FactDefinition usual(Measured one) {
    for (FactDefinition fact : facts.definitions()) {
      Matcher usual = USUAL.matcher(book.help(fact).text("usual"));
      boolean two = one.form() == Form.PAIR || one.form() == Form.SQUARE;
      boolean own = fact.dimension() != null && fact.dimension() != Dimension.LENGTH;
      if (isAnywhere(fact)
          && !fact.ofEntries()
          && fits(fact, one)
          && (two && usual.matches() || own && unit(one))) {
        Optional<Amount> first = withUnit(fact, one.first());
        Optional<Amount> second = two ? withUnit(fact, one.second()) : first;
        if (own || first.isPresent() && second.isPresent() && within(usual, first, second)) {
          return fact;
        }
      }
    }
    return null;
  }

  private static boolean unit(Measured one) {
    return !one.first().unit().isEmpty();
  }

  private static boolean within(Matcher usual, Optional<Amount> first, Optional<Amount> second) {
    double a = length(first.orElseThrow().text());
    double b = length(second.orElseThrow().text());
    double least = length(usual.group(1));
    double most = length(usual.group(2));
    return Math.min(a, b) >= least && Math.max(a, b) <= most;
  }

  private static double length(String text) {
    try {
      return Quantity.parse(text, Dimension.LENGTH).value();
    } catch (NotAQuantity e) {
      return Double.NaN;
    }
  }

  // --- its value

  private boolean put(
      Place place, boolean asked, Measured one, Known said, Map<String, Heard.One> heard) {
    FactDefinition fact = place.fact();
    if (fact.kind() == Kind.COUNT && one.form() == Form.ONE) {
      heard.put(place.id(), Heard.One.sure(place, one.first().number()));
      return true;
    }
    if (!fits(fact, one)) {
      return false;
    }
    boolean imperial = said.isImperial();
    Optional<Amount> first = withUnit(fact, one.first(), imperial);
    if (first.isEmpty()) {
      return false;
    }
    Amount second = one.second().in(first.get().unit());
    if (one.form() == Form.PAIR && !one.second().unit().isEmpty()) {
      second = one.second();
    }
    if (fact.kind() == Kind.POINTS) {
      heard.put(place.id(), Heard.One.sure(place, first.get().text() + " x " + second.text()));
      return true;
    }
    String a = first.get().text();
    String b = second.text();
    switch (one.form()) {
      case RANGE -> {
        boolean least = book.help(fact).text("careful").equals("least");
        boolean smaller = value(fact, a) <= value(fact, b);
        String since = book.sayings().text("since range");
        Taken taken = new Taken(smaller == least ? a : b, false, since);
        heard.put(place.id(), new Heard.One(place, taken));
      }
      case ONE -> {
        heard.put(place.id(), Heard.One.sure(place, a));
        Place shorter = shorter(place);
        // "600 tiles" are as broad as they are long; who is asked for one side tells one.
        if (shorter != null && !asked && !book.help(fact).text("square").isEmpty()) {
          heard.put(shorter.id(), Heard.One.sure(shorter, a));
        }
      }
      default -> {
        boolean smaller = value(fact, a) < value(fact, b);
        heard.put(place.id(), Heard.One.sure(place, smaller ? b : a));
        Place shorter = shorter(place);
        if (shorter != null) {
          heard.put(shorter.id(), Heard.One.sure(shorter, smaller ? a : b));
        }
      }
    }
    return true;
  }

  private Place shorter(Place longer) {
    return facts.find(book.help(longer.fact()).text("sides")).map(longer::beside).orElse(null);
  }

  private static double value(FactDefinition fact, String text) {
    try {
      return Quantity.parse(text, fact.dimension()).value();
    } catch (NotAQuantity e) {
      return Double.NaN;
    }
  }

  private Optional<Amount> withUnit(FactDefinition fact, Amount amount) {
    return withUnit(fact, amount, false);
  }

  /** A number with the unit that such a number has of this fact, if it was said without. */
  private Optional<Amount> withUnit(FactDefinition fact, Amount amount, boolean imperial) {
    if (!amount.unit().isEmpty() || fact.dimension() == Dimension.NUMBER) {
      return Optional.of(amount);
    }
    double number;
    try {
      number = Quantity.parse(amount.number(), Dimension.NUMBER).value();
    } catch (NotAQuantity e) {
      return Optional.empty();
    }
    Map<String, String> units = bare.get(fact.key());
    for (Map.Entry<String, String> row : units.entrySet()) {
      Matcher range = BARE.matcher(row.getKey());
      if (range.matches()
          && number >= Double.parseDouble(range.group(1))
          && number <= Double.parseDouble(range.group(2))) {
        return Optional.of(amount.in(row.getValue()));
      }
    }
    if (!units.isEmpty() || fact.dimension() == null) {
      return Optional.empty();
    }
    String unit = fact.example().replaceFirst("^[-0-9./ ]+", "");
    return Optional.of(amount.in(imperial && fact.dimension() == Dimension.LENGTH ? "in" : unit));
  }
}
