package underfoot.knowledge;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import underfoot.scenario.RuleFiles;

/**
 * How free sayings are understood, whatever they are about: which words say yes, no or that nobody
 * knows, which make a thing only likely, what stands for what. It is read from {@code
 * rules/questions/sayings.yaml}.
 */
public final class Sayings {
  private static final String FILE = "questions/sayings.yaml";

  private final Map<String, List<String>> lists = new LinkedHashMap<>();
  private final Map<String, String> texts = new LinkedHashMap<>();

  private Sayings() {}

  /** Reads them; there are none if the rule base has no such file. */
  static Sayings load(RuleFiles files) throws KnowledgeFault {
    Sayings sayings = new Sayings();
    if (files.list("questions", ".yaml").contains(FILE)) {
      for (Entries.Entry entry : Entries.readFile(files, FILE)) {
        sayings.lists.put(entry.name(), entry.named("list"));
        sayings.texts.put(entry.name(), entry.field("text"));
      }
    }
    return sayings;
  }

  /**
   * The words of one sort.
   *
   * @param sort its name, such as {@code perhaps}
   * @return the words; none if the file has no such sort
   */
  public List<String> words(String sort) {
    return lists.getOrDefault(sort, List.of());
  }

  /** The text of one sort, such as {@code since range}; empty if the file has none. */
  public String text(String sort) {
    return texts.getOrDefault(sort, "");
  }

  /** The words of one sort that are written as {@code this = that}. */
  public Map<String, String> pairs(String sort) throws KnowledgeFault {
    return InterviewBook.pairs(FILE, 1, words(sort));
  }
}
