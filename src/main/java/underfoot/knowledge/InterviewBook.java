package underfoot.knowledge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underfoot.scenario.FactBook;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.RuleFiles;

/**
 * How people are asked: in what order, with which pictures, what their words mean, and what is
 * taken where somebody knows a thing only by and large. It is read from {@code rules/questions}; a
 * fact that stands in none of its parts is asked after the others.
 */
public final class InterviewBook {
  private static final String FOLDER = "questions";
  private static final String ORDER = FOLDER + "/order.yaml";
  private static final String QUESTIONS = FOLDER + "/questions.yaml";
  private static final String IS = " = ";
  private static final String EVERY = "yes";
  private static final String NOTHING = "unknown";

  private final List<Part> parts = new ArrayList<>();
  private final List<List<String>> together = new ArrayList<>();
  private final Set<String> early = new LinkedHashSet<>();
  private final Map<String, Help> helps = new LinkedHashMap<>();
  private final Sayings sayings;
  private final Sketches sketches;

  /**
   * Questions that belong together.
   *
   * @param title what they are about
   * @param where the fact that says on which floors they can be asked; empty if on all
   * @param is what that fact is on those floors
   * @param facts the keys of what is asked, in order
   */
  public record Part(String title, String where, List<String> is, List<String> facts) {
    /** Copies the lists. */
    public Part {
      is = List.copyOf(is);
      facts = List.copyOf(facts);
    }
  }

  /**
   * What a person's own words come to.
   *
   * @param value the value gone on with
   * @param certain whether the words mean that and nothing else; if not, it is to be found out
   * @param since why it is that one; empty if it is certain
   */
  public record Taken(String value, boolean certain, String since) {}

  /**
   * Words that answer a question.
   *
   * @param words the words, as the rule base writes them
   * @param value what they come to
   * @param certain whether they mean that and nothing else
   * @param anywhere whether they are understood where something else was asked, too
   */
  public record Phrase(String words, String value, boolean certain, boolean anywhere) {}

  /** What helps with one question: the row of a fact. */
  public static final class Help {
    private final Entries.Entry row;
    private final Map<String, String> choices;
    private final Map<String, String> shows;
    private final Map<String, String> means;
    private final Map<String, String> taken;

    private Help(Entries.Entry row) throws KnowledgeFault {
      this.row = row;
      this.choices = pairs(row, "choices");
      this.shows = pairs(row, "shows");
      this.means = pairs(row, "means");
      this.taken = pairs(row, "taken");
    }

    /** A text of the row, such as {@code hint}; empty if it has none. */
    public String text(String name) {
      return row.field(name).stripTrailing();
    }

    /** A list of the row, such as {@code beside}; empty if it has none. */
    public List<String> list(String name) {
      return row.named(name);
    }

    /** What a choice looks like, in a few words; empty if nothing more is said of it. */
    public String looks(String choice) {
      return choices.getOrDefault(choice, "");
    }

    /** The name of the drawing of a choice; empty if there is none. */
    public String drawing(String choice) {
      return shows.getOrDefault(choice, "");
    }

    private boolean anywhere(String words) {
      return text("anywhere").equals(EVERY) || row.named("anywhere").contains(words);
    }
  }

  private static final Help NO_HELP;

  static {
    try {
      NO_HELP = new Help(new Entries.Entry("", QUESTIONS, 0, Map.of(), Map.of(), Map.of()));
    } catch (KnowledgeFault e) {
      throw new IllegalStateException(e);
    }
  }

  private InterviewBook(Sayings sayings, Sketches sketches) {
    this.sayings = sayings;
    this.sketches = sketches;
  }

  /**
   * Reads how people are asked.
   *
   * @param files the rule base
   * @param book the facts there are
   * @throws KnowledgeFault if it names a fact, a choice or a drawing there is not, with its place
   */
  public static InterviewBook load(RuleFiles files, FactBook book) throws KnowledgeFault {
    InterviewBook all = new InterviewBook(Sayings.load(files), Sketches.load(files));
    List<String> there = files.list(FOLDER, ".yaml");
    if (there.contains(ORDER)) { // else in the order of the facts files
      for (Entries.Entry entry : Entries.readFile(files, ORDER)) {
        all.order(entry, book);
      }
    }
    if (there.contains(QUESTIONS)) {
      for (Entries.Entry entry : Entries.readFile(files, QUESTIONS)) {
        all.help(entry, book);
      }
    }
    return all;
  }

  private void order(Entries.Entry entry, FactBook book) throws KnowledgeFault {
    List<String> facts = entry.named("facts");
    List<String> joined = entry.named("together");
    for (String key : facts) {
      fact(book, key, entry);
    }
    for (String key : joined) {
      fact(book, key, entry);
    }
    for (String key : entry.named("early")) {
      early.add(fact(book, key, entry).key());
    }
    if (!joined.isEmpty()) {
      together.add(joined);
    }
    if (!facts.isEmpty()) {
      List<String> is = entry.named("is");
      parts.add(new Part(entry.required("title"), entry.field("where"), is, facts));
    }
  }

  private void help(Entries.Entry entry, FactBook book) throws KnowledgeFault {
    FactDefinition fact = fact(book, entry.name(), entry);
    Help help = new Help(entry);
    Set<String> choices = new LinkedHashSet<>(help.choices.keySet());
    choices.addAll(help.shows.keySet());
    for (String choice : choices) {
      if (!fact.of().contains(choice)) {
        String what = "'" + choice + "' is no choice of " + fact.key();
        throw new KnowledgeFault(entry.file(), entry.line(), what);
      }
    }
    for (String other : List.of("sides", "or", "same as", "after")) {
      if (!help.text(other).isEmpty()) {
        fact(book, help.text(other), entry);
      }
    }
    List<String> drawings = new ArrayList<>(help.shows.values());
    drawings.add(help.text("drawing"));
    for (String drawing : drawings) {
      if (!drawing.isEmpty() && !sketches.has(drawing)) {
        String what = "'" + drawing + "' is no drawing of " + Sketches.FILE;
        throw new KnowledgeFault(entry.file(), entry.line(), what);
      }
    }
    helps.put(fact.key(), help);
  }

  private static FactDefinition fact(FactBook book, String key, Entries.Entry entry)
      throws KnowledgeFault {
    Optional<FactDefinition> fact = book.find(key).filter(found -> found.key().equals(key));
    if (fact.isEmpty()) {
      String what = "'" + key + "' is no fact of a scenario";
      throw new KnowledgeFault(entry.file(), entry.line(), what);
    }
    return fact.get();
  }

  private static Map<String, String> pairs(Entries.Entry entry, String list) throws KnowledgeFault {
    return pairs(entry.file(), entry.line(), entry.named(list));
  }

  static Map<String, String> pairs(String file, int line, List<String> list) throws KnowledgeFault {
    Map<String, String> pairs = new LinkedHashMap<>();
    for (String pair : list) {
      int is = pair.indexOf(IS);
      if (is < 0) {
        throw new KnowledgeFault(file, line, "'" + pair + "' needs ' = ' in it");
      }
      pairs.put(pair.substring(0, is).strip(), pair.substring(is + IS.length()).strip());
    }
    return pairs;
  }

  /** The parts in the order they are asked. */
  public List<Part> parts() {
    return List.copyOf(parts);
  }

  /** The keys of facts that only tell something with each other, group by group. */
  public List<List<String>> together() {
    return List.copyOf(together);
  }

  /** Whether a fact that matters is asked before all that only makes the advice finer. */
  public boolean isEarly(FactDefinition fact) {
    return early.contains(fact.key());
  }

  /** How free sayings are understood, whatever they are about. */
  public Sayings sayings() {
    return sayings;
  }

  /** The drawings that questions and choices name. */
  public Sketches sketches() {
    return sketches;
  }

  /** The title of the first part that asks for a fact. */
  public String part(FactDefinition fact) {
    return parts.stream()
        .filter(part -> part.facts().contains(fact.key()))
        .map(Part::title)
        .findFirst()
        .orElse("Further");
  }

  /**
   * Whether a fact can be asked on a floor: not if all parts that name it are for other floors.
   *
   * @param fact the fact
   * @param held what is held of the floor
   */
  public boolean fits(FactDefinition fact, Facts held) {
    boolean named = false;
    for (Part part : parts) {
      if (part.facts().contains(fact.key())) {
        named = true;
        if (part.where().isEmpty() || part.is().contains(held.text(part.where()))) {
          return true;
        }
      }
    }
    return !named;
  }

  /** What helps with a question; nothing if it has no row. */
  public Help help(FactDefinition fact) {
    return helps.getOrDefault(fact.key(), NO_HELP);
  }

  /** Every way the rule base knows to answer a question in words, {@code unknown} left out. */
  public List<Phrase> phrases(FactDefinition fact) {
    Help help = help(fact);
    List<Phrase> all = new ArrayList<>();
    for (String choice : fact.of()) {
      all.add(new Phrase(choice, choice, true, help.anywhere(choice)));
    }
    fact.also().forEach((words, is) -> all.add(new Phrase(words, is, true, help.anywhere(words))));
    help.means.forEach((words, is) -> all.add(new Phrase(words, is, true, help.anywhere(words))));
    boolean loosely = !help.text("loosely").isEmpty();
    help.taken.forEach(
        (words, is) -> {
          boolean told = loosely || words.strip().contains(" ");
          all.add(new Phrase(words, is, false, told && help.anywhere(words)));
        });
    all.removeIf(one -> one.words().equals(NOTHING));
    return all;
  }

  /** What is gone on with where a person knows nothing at all; empty if then nothing is. */
  public Optional<Taken> guess(FactDefinition fact) {
    return Optional.ofNullable(help(fact).taken.get(NOTHING))
        .map(value -> new Taken(value, false, since(fact)));
  }

  /** Why a value that was not certain was taken. */
  public String since(FactDefinition fact) {
    return help(fact).text("since");
  }

  /** The words by which a fact may be known by and large. */
  public List<String> loosely(FactDefinition fact) {
    List<String> words = new ArrayList<>(help(fact).taken.keySet());
    words.remove(NOTHING);
    return words;
  }
}
