package underfoot.knowledge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import underfoot.scenario.FactBook;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.RuleFiles;

/**
 * How people are asked: in what order, with which pictures, and what is taken where somebody knows
 * a thing only by and large. It is read from {@code rules/interview.yaml}; a fact that stands in
 * none of its parts is asked after the others.
 */
public final class InterviewBook {
  private static final String FILE = "interview.yaml";
  private static final String IS = " = ";

  private final List<Part> parts;
  private final Map<String, Help> helps;

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

  /** What helps with one question. */
  private record Help(
      String hint,
      String picture,
      String sides,
      Map<String, String> choices,
      Map<String, String> means,
      Map<String, String> taken,
      String since) {}

  private static final Help NO_HELP = new Help("", "", "", Map.of(), Map.of(), Map.of(), "");

  private InterviewBook(List<Part> parts, Map<String, Help> helps) {
    this.parts = List.copyOf(parts);
    this.helps = Map.copyOf(helps);
  }

  /**
   * Reads how people are asked.
   *
   * @param files the rule base
   * @param book the facts there are
   * @throws KnowledgeFault if it names a fact or a choice there is not, with its place
   */
  public static InterviewBook load(RuleFiles files, FactBook book) throws KnowledgeFault {
    List<Part> parts = new ArrayList<>();
    Map<String, Help> helps = new LinkedHashMap<>();
    if (!files.list("", ".yaml").contains(FILE)) {
      return new InterviewBook(List.of(), Map.of()); // then in the order of the facts files
    }
    for (Entries.Entry entry : Entries.readFile(files, FILE)) {
      if (entry.lists().containsKey("facts")) {
        for (String key : entry.lists().get("facts")) {
          fact(book, key, entry);
        }
        parts.add(
            new Part(
                entry.required("title"),
                entry.field("where"),
                entry.lists().getOrDefault("is", List.of()),
                entry.lists().get("facts")));
      } else {
        FactDefinition fact = fact(book, entry.name(), entry);
        Map<String, String> choices = pairs(entry, "choices");
        for (String choice : choices.keySet()) {
          if (!fact.of().contains(choice)) {
            throw new KnowledgeFault(
                FILE, entry.line(), "'" + choice + "' is no choice of " + fact.key());
          }
        }
        String sides = entry.field("sides");
        if (!sides.isEmpty()) {
          fact(book, sides, entry);
        }
        helps.put(
            fact.key(),
            new Help(
                entry.field("hint"),
                entry.field("picture").stripTrailing(),
                sides,
                choices,
                pairs(entry, "means"),
                pairs(entry, "taken"),
                entry.field("since")));
      }
    }
    return new InterviewBook(parts, helps);
  }

  private static FactDefinition fact(FactBook book, String key, Entries.Entry entry)
      throws KnowledgeFault {
    Optional<FactDefinition> fact = book.find(key).filter(found -> found.key().equals(key));
    if (fact.isEmpty()) {
      throw new KnowledgeFault(FILE, entry.line(), "'" + key + "' is no fact of a scenario");
    }
    return fact.get();
  }

  private static Map<String, String> pairs(Entries.Entry entry, String list) throws KnowledgeFault {
    Map<String, String> pairs = new LinkedHashMap<>();
    for (String pair : entry.lists().getOrDefault(list, List.of())) {
      int is = pair.indexOf(IS);
      if (is < 0) {
        throw new KnowledgeFault(FILE, entry.line(), "'" + pair + "' needs ' = ' in it");
      }
      pairs.put(pair.substring(0, is).strip(), pair.substring(is + IS.length()).strip());
    }
    return pairs;
  }

  /** The parts in the order they are asked. */
  public List<Part> parts() {
    return parts;
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

  private Help help(FactDefinition fact) {
    return helps.getOrDefault(fact.key(), NO_HELP);
  }

  /** How a question may be answered, in a sentence; empty if its choices or example say it. */
  public String hint(FactDefinition fact) {
    return help(fact).hint();
  }

  /** A picture in text that helps to tell; empty if there is none. */
  public String picture(FactDefinition fact) {
    return help(fact).picture();
  }

  /** What a choice looks like, in a few words; empty if nothing more is said of it. */
  public String choice(FactDefinition fact, String choice) {
    return help(fact).choices().getOrDefault(choice, "");
  }

  /**
   * The key of the shorter side, if this fact is the longer one and both may be said at once; empty
   * if it is none.
   */
  public String shorterSide(FactDefinition fact) {
    return help(fact).sides();
  }

  /**
   * What a person's own words come to, such as {@code wood}.
   *
   * @param fact the fact asked for
   * @param words what was said; {@code unknown} for nothing
   * @return the value to go on with; empty if the words are none of those the rule base knows
   */
  public Optional<Taken> taken(FactDefinition fact, String words) {
    Help help = help(fact);
    Optional<String> meant = find(help.means(), words);
    if (meant.isPresent()) {
      return Optional.of(new Taken(meant.get(), true, ""));
    }
    return find(help.taken(), words).map(value -> new Taken(value, false, help.since()));
  }

  private static Optional<String> find(Map<String, String> all, String words) {
    String plain = plain(words);
    return all.entrySet().stream()
        .filter(one -> plain(one.getKey()).equals(plain))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  /** Why a value that was not certain was taken. */
  public String since(FactDefinition fact) {
    return help(fact).since();
  }

  /** The words by which a fact may be known by and large, {@code unknown} left out. */
  public List<String> loosely(FactDefinition fact) {
    List<String> words = new ArrayList<>(help(fact).means().keySet());
    words.addAll(help(fact).taken().keySet());
    words.remove("unknown");
    return words;
  }

  private static String plain(String words) {
    return words.strip().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9&]+", " ").strip();
  }
}
