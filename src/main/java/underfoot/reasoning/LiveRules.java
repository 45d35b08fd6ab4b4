package underfoot.reasoning;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.knowledge.Kinds;
import underfoot.language.Effect;
import underfoot.language.Pattern;
import underfoot.language.Pattern.Type;
import underfoot.language.Rule;
import underfoot.reasoning.FactFilter.Key;

/**
 * Which rules of a pass could fire on what it is shown, and what of it those could match. A rule
 * could fire if each thing it asks to be there is shown, or could be concluded by a rule that could
 * fire; what it compares is not looked at. So no rule that fires is left out, and two floors of
 * which the live rules can match the same are concluded on alike. Safe to share between threads.
 */
final class LiveRules {
  private final List<Rule> rules;
  private final FactFilter filter;
  private final Map<Key, List<Integer>> waiting = new HashMap<>();
  private final int[] needs;
  private final Set<Type> concluded = EnumSet.noneOf(Type.class);

  /**
   * Reads the patterns of the rules of one pass.
   *
   * @param rules the rules
   * @param filter which of them ask for what
   */
  LiveRules(List<Rule> rules, FactFilter filter) {
    this.rules = rules;
    this.filter = filter;
    this.needs = new int[rules.size()];
    for (Rule rule : rules) {
      rule.effects().forEach(effect -> concluded.addAll(sorts(effect.verb())));
    }
    for (int i = 0; i < needs.length; i++) {
      Set<Key> asked = new HashSet<>();
      for (Pattern pattern : rules.get(i).patterns()) {
        List<Key> keys = FactFilter.asked(pattern);
        boolean must = pattern.quantity() != Pattern.Quantity.NONE && keys.size() == 1;
        if (must && !isAlwaysMet(keys.get(0)) && asked.add(keys.get(0))) {
          waiting.computeIfAbsent(keys.get(0), any -> new ArrayList<>()).add(i);
          needs[i]++;
        }
      }
    }
  }

  private static Set<Type> sorts(Effect.Verb verb) {
    return switch (verb) {
      case LAY, LAY_AS, LAY_MORE -> Set.of(Type.LAID);
      case REMEDY, HOLD -> Set.of(Type.REMEDY);
      case DANGER, CARE, NOTE -> Set.of(Type.CAUTION);
      case FIND -> Set.of(Type.FINDING);
      default -> Set.of();
    };
  }

  /** Whether it is taken to be there: figures are, and what the pass may itself come to. */
  private boolean isAlwaysMet(Key key) {
    return key.type() == Type.FIGURE
        || concluded.contains(key.type())
        || (key.name().isEmpty() && key.value().isEmpty());
  }

  /**
   * What the rules that could fire could match.
   *
   * @param kinds what rows say of facts
   * @param shown all that the pass is shown
   * @return those of it, in the same order
   */
  List<Object> matched(Kinds kinds, List<Object> shown) {
    BitSet live = new Search(kinds).from(shown);
    return shown.stream().filter(one -> filter.sees(one, live)).toList();
  }

  /** One search for the rules that could fire. */
  private final class Search {
    private final Kinds kinds;
    private final int[] left = needs.clone();
    private final BitSet live = new BitSet();
    private final Set<Key> met = new HashSet<>();
    private final Deque<Integer> added = new ArrayDeque<>();

    /** The facts of whose values rows are read, with the values they may have. */
    private final Map<String, Set<String>> told = new HashMap<>();

    private final Set<String> rowsRead = new HashSet<>();

    Search(Kinds kinds) {
      this.kinds = kinds;
    }

    BitSet from(List<Object> shown) {
      for (int i = 0; i < left.length; i++) {
        if (left[i] == 0) {
          add(i);
        }
      }
      for (Object one : shown) {
        FactFilter.answered(one).forEach(this::meet);
      }
      while (!added.isEmpty()) {
        int rule = added.pop();
        meet(new Key(Type.CONCLUSION, rules.get(rule).id(), ""));
        rules.get(rule).effects().forEach(this::follow);
      }
      return live;
    }

    private void add(int rule) {
      live.set(rule);
      added.push(rule);
    }

    private void meet(Key key) {
      if (!met.add(key)) {
        return;
      }
      for (int rule : waiting.getOrDefault(key, List.of())) {
        if (--left[rule] == 0) {
          add(rule);
        }
      }
      if (key.type() == Type.FACT && !key.value().isEmpty()) {
        told.computeIfAbsent(key.name(), any -> new HashSet<>()).add(key.value());
        if (rowsRead.contains(key.name())) {
          rows(key.name(), key.value());
        }
      }
    }

    private void meet(String name, String value) {
      meet(new Key(Type.FACT, name, value));
      meet(new Key(Type.FACT, name, ""));
    }

    private void follow(Effect effect) {
      String name = effect.word(Effect.Place.FACT);
      switch (effect.verb()) {
        case ASSUME, CONCLUDE -> {
          String value = effect.word(Effect.Place.WORD);
          if (Effect.isLookedUp(value)) {
            meetAny(name);
          } else {
            meet(name, value);
          }
        }
        case ASSUME_AS, CONCLUDE_AS -> meetAny(name);
        case ROWS -> {
          if (rowsRead.add(name)) {
            List.copyOf(told.getOrDefault(name, Set.of())).forEach(value -> rows(name, value));
          }
        }
        default -> {
          // Concludes nothing that other rules of the pass ask for by name.
        }
      }
    }

    /** A fact whose value is only known when the rule fires. */
    private void meetAny(String name) {
      meet(new Key(Type.FACT, name, ""));
      for (Key key : waiting.keySet()) {
        if (key.type() == Type.FACT && key.name().equals(name)) {
          meet(key);
        }
      }
      kinds.kinds(name).forEach(kind -> meet(name, kind));
    }

    private void rows(String name, String value) {
      for (Kinds.Said said : kinds.of(name, value)) {
        if (said.sort() == Kinds.Sort.FIGURE) {
          meetAny(said.called());
        } else {
          meet(said.called(), said.value());
        }
      }
    }
  }
}
