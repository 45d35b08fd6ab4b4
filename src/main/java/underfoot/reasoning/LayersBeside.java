package underfoot.reasoning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import underfoot.buildup.Finding;
import underfoot.buildup.Judgement;
import underfoot.knowledge.Derivation;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Kinds;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.RuleNote;
import underfoot.language.Pass;
import underfoot.measure.Texts;
import underfoot.reasoning.Beside.Answer;
import underfoot.reasoning.Beside.Reach;
import underfoot.reasoning.Beside.Ruling;

/**
 * What may lie on what. The rules of the pass NEXT are asked of two kinds of material at a time;
 * whoever has a stack, be it laid, found or proposed, has all its pairs judged here, and so alike.
 * What was asked once is remembered. Safe to share between threads.
 */
public final class LayersBeside {
  /** The facts whose values are the kinds above and beneath. */
  static final String UPPER = "upper";

  static final String LOWER = "lower";

  /** The fact whose value is a kind of material on its own. */
  static final String MATERIAL = "material";

  /** What rules conclude of two kinds. */
  private static final String ONLY_WITH = "only with";

  private static final String NEVER = "never lies";
  private static final String NO_PLACE = "no place";
  private static final String AT_FAULT = "at fault";

  private static final int AT_A_TIME = 8;

  private final RuleBase rules;
  private final Knowledge knowledge;
  private final Map<String, Beside> answers = new ConcurrentHashMap<>();

  /**
   * @param rules the rules
   * @param knowledge what they refer to, with the rows of all materials
   */
  public LayersBeside(RuleBase rules, Knowledge knowledge) {
    this.rules = rules;
    this.knowledge = knowledge;
  }

  /**
   * Two layers of a stack that must not lie so.
   *
   * @param lower the place of the lower one, from 0 at the bottom
   * @param upper the place of the upper one
   * @param pair their kinds, and what is said of them
   * @param ruling what the stack goes against
   */
  public record Wrong(int lower, int upper, Beside pair, Ruling ruling) {
    /** The place of the one that is at fault. */
    public int place() {
      return ruling.ofLower() ? lower : upper;
    }
  }

  /** Every kind of material that has a row, in the order of the files. */
  public List<String> kinds() {
    return knowledge.kinds().kinds(UPPER);
  }

  /** Whether there is a row for a kind. */
  public boolean knows(String kind) {
    return !knowledge.kinds().of(UPPER, kind).isEmpty();
  }

  /** What rules say of two kinds. */
  public Beside of(String lower, String upper) {
    String key = lower + '\n' + upper;
    Beside known = answers.get(key);
    if (known == null) { // not computeIfAbsent: thinking holds no lock
      known = think(lower, upper);
      answers.putIfAbsent(key, known);
    }
    return known;
  }

  /**
   * What rules say of every two kinds, by the upper and then by the lower one.
   *
   * @param only the kinds that one of the two must be; empty for all
   */
  public List<Beside> all(List<String> only) {
    List<String> kinds = kinds();
    return kinds.parallelStream()
        .flatMap(upper -> inParts(only.isEmpty() || only.contains(upper) ? kinds : only, upper))
        .toList();
  }

  /** A few pairs at a time: each pair more is held beside every other in one session. */
  private Stream<Beside> inParts(List<String> lowers, String upper) {
    List<Beside> answers = new ArrayList<>();
    for (int from = 0; from < lowers.size(); from += AT_A_TIME) {
      int to = Math.min(from + AT_A_TIME, lowers.size());
      answers.addAll(think(lowers.subList(from, to), upper));
    }
    return answers.stream();
  }

  /** What the passport of a kind says besides what it may lie on. */
  public List<Kinds.Said> passport(String kind) {
    return knowledge.kinds().of(MATERIAL, kind);
  }

  /** What a kind is called: by the name of its layer, or by its own. */
  public String name(String kind) {
    String name = knowledge.layers().has(kind) ? knowledge.layers().get(kind).name() : kind;
    int comma = name.indexOf(',');
    return Texts.lower(comma < 0 ? name : name.substring(0, comma)).replace('-', ' ');
  }

  private Beside think(String lower, String upper) {
    return think(List.of(lower), upper).get(0);
  }

  /** Asks the rules of one kind above several others, each pair being a thing of its own. */
  private List<Beside> think(List<String> lowers, String upper) {
    List<Object> given = new ArrayList<>();
    for (String lower : lowers) {
      given.addAll(said(knowledge, UPPER, upper, lower));
      given.addAll(said(knowledge, LOWER, lower, lower));
    }
    Map<String, Map<RuleNote, List<Object>>> byLower = new HashMap<>();
    for (Object one : rules.think(Pass.NEXT, knowledge, given)) {
      String about =
          one instanceof Finding finding ? finding.about() : one instanceof Fact f ? f.about() : "";
      Derivation because =
          one instanceof Finding finding
              ? finding.because()
              : one instanceof Fact fact ? fact.because() : null;
      if (because != null) {
        byLower
            .computeIfAbsent(about, any -> new LinkedHashMap<>())
            .computeIfAbsent(because.rule(), any -> new ArrayList<>())
            .add(one);
      }
    }
    List<Beside> answers = new ArrayList<>();
    for (String lower : lowers) {
      List<Ruling> rulings = new ArrayList<>();
      byLower.getOrDefault(lower, Map.of()).values().forEach(all -> rulings.add(ruling(all)));
      answers.add(new Beside(lower, upper, rulings));
    }
    return answers;
  }

  /**
   * A kind, and all that its row says of it, as facts.
   *
   * @param knowledge where the rows stand
   * @param fact what the kind is a value of
   * @param kind the kind
   * @param about what the facts are about
   */
  static List<Fact> said(Knowledge knowledge, String fact, String kind, String about) {
    List<Fact> facts = new ArrayList<>();
    Fact itself =
        Fact.measured(fact, about, kind, Double.NaN, "one layer beside another", List.of());
    facts.add(itself);
    for (Kinds.Said said : knowledge.kinds().of(fact, kind)) {
      boolean number = said.sort() == Kinds.Sort.FIGURE;
      facts.add(
          Fact.measured(
              said.called(),
              about,
              number ? knowledge.figures().get(said.value()).text() : said.value(),
              number ? knowledge.figures().get(said.value()).number() : Double.NaN,
              said.reason(),
              List.of(itself)));
    }
    return facts;
  }

  private static Ruling ruling(List<Object> concluded) {
    Answer answer = Answer.ALLOWED;
    String between = "";
    Reach reach = Reach.TOUCHING;
    String wording = "";
    Judgement judgement = Judgement.AGREES;
    boolean ofLower = false;
    Derivation because = null;
    for (Object one : concluded) {
      if (one instanceof Finding finding) {
        wording = finding.wording();
        judgement = finding.judgement();
        because = finding.because();
      } else if (one instanceof Fact fact) {
        because = because == null ? fact.because() : because;
        if (fact.name().equals(ONLY_WITH)) {
          answer = Answer.ONLY_WITH;
          between = fact.text();
          reach = Reach.THROUGH_COATS;
        } else if (fact.name().equals(NEVER)) {
          answer = Answer.NEVER;
          reach = Reach.valueOf(fact.text().toUpperCase(Locale.ROOT).replace(' ', '_'));
        } else if (fact.name().equals(NO_PLACE)) {
          answer = Answer.NEVER;
        } else if (fact.name().equals(AT_FAULT)) {
          ofLower = fact.text().equals(LOWER);
        }
      }
    }
    return new Ruling(answer, between, reach, judgement, wording, ofLower, because);
  }

  /** Whether a kind parts nothing, so that what lies beneath it still acts on what lies above. */
  boolean letsThrough(String kind) {
    return said(kind, "upper lets through").equals("yes");
  }

  /** What a kind does between others, and the family it is of. */
  public Set<String> works(String kind) {
    return new TreeSet<>(List.of(said(kind, "upper work"), said(kind, "upper family")));
  }

  private String said(String kind, String called) {
    return knowledge.kinds().of(UPPER, kind).stream()
        .filter(one -> one.called().equals(called))
        .map(Kinds.Said::value)
        .findFirst()
        .orElse("");
  }

  /**
   * What is wrong with a stack.
   *
   * @param stack the kinds from the bottom up; those without a row are passed over
   */
  public List<Wrong> wrong(List<String> stack) {
    List<Wrong> wrong = new ArrayList<>();
    for (int upper = 1; upper < stack.size(); upper++) {
      boolean through = true;
      for (int lower = upper - 1; lower >= 0; lower--) {
        if (knows(stack.get(lower)) && knows(stack.get(upper))) {
          wrong(stack, lower, upper, through, wrong);
        }
        through &= letsThrough(stack.get(lower));
      }
    }
    return wrong;
  }

  private void wrong(List<String> stack, int lower, int upper, boolean through, List<Wrong> wrong) {
    Beside pair = of(stack.get(lower), stack.get(upper));
    for (Ruling ruling : pair.rulings()) {
      boolean reached =
          switch (ruling.reach()) {
            case TOUCHING -> lower == upper - 1;
            case THROUGH_COATS -> through;
            case ANYWHERE -> true;
          };
      boolean kept =
          ruling.answer() == Answer.ALLOWED
              || ruling.answer() == Answer.ONLY_WITH
                  && stack.subList(lower + 1, upper).stream()
                      .anyMatch(one -> works(one).contains(ruling.between()));
      if (reached && !kept) {
        wrong.add(new Wrong(lower, upper, pair, ruling));
      }
    }
  }
}
