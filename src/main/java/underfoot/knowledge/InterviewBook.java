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
   * @param facts the keys of what is asked, in order
   */
  public record Part(String title, List<String> facts) {
    /** Copies the list. */
    public Part {
      facts = List.copyOf(facts);
    }
  }

  /**
   * What is taken for a value that is known only by and large.
   *
   * @param value the value taken
   * @param since why it is that one
   */
  public record Taken(String value, String since) {}

  /** What helps with one question. */
  private record Help(
      String picture, Map<String, String> choices, Map<String, String> taken, String since) {}

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
        parts.add(new Part(entry.required("title"), entry.lists().get("facts")));
      } else {
        FactDefinition fact = fact(book, entry.name(), entry);
        Map<String, String> choices = pairs(entry, "choices");
        for (String choice : choices.keySet()) {
          if (!fact.of().contains(choice)) {
            throw new KnowledgeFault(
                FILE, entry.line(), "'" + choice + "' is no choice of " + fact.key());
          }
        }
        helps.put(
            fact.key(),
            new Help(
                entry.field("picture").stripTrailing(),
                choices,
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

  /** A picture in text that helps to tell; empty if there is none. */
  public String picture(FactDefinition fact) {
    Help help = helps.get(fact.key());
    return help == null ? "" : help.picture();
  }

  /** What a choice looks like, in a few words; empty if nothing more is said of it. */
  public String choice(FactDefinition fact, String choice) {
    Help help = helps.get(fact.key());
    return help == null ? "" : help.choices().getOrDefault(choice, "");
  }

  /**
   * What is taken if somebody knows a thing only by and large.
   *
   * @param fact the fact asked for
   * @param words what was said, such as {@code wood}; {@code unknown} for nothing
   * @return the value to go on with; empty if the words mean no such thing
   */
  public Optional<Taken> taken(FactDefinition fact, String words) {
    Help help = helps.get(fact.key());
    if (help == null) {
      return Optional.empty();
    }
    String plain = plain(words);
    for (Map.Entry<String, String> one : help.taken().entrySet()) {
      if (plain(one.getKey()).equals(plain)) {
        return Optional.of(new Taken(one.getValue(), help.since()));
      }
    }
    return Optional.empty();
  }

  /** The words by which a fact may be known by and large, {@code unknown} left out. */
  public List<String> loosely(FactDefinition fact) {
    Help help = helps.get(fact.key());
    List<String> words = new ArrayList<>(help == null ? List.of() : help.taken().keySet());
    words.remove("unknown");
    return words;
  }

  private static String plain(String words) {
    return words.strip().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9&]+", " ").strip();
  }
}
