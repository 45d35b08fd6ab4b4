package underfoot.reasoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.kie.api.event.rule.BeforeMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.FactHandle;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Knowledge;

/**
 * One session of the rules of a pass. It may stay open: a variant of the floor it began with
 * differs in a fact or two, and only those are then taken back and shown. Safe to share between
 * threads.
 */
final class RuleSession {
  // A rule base that concludes without end is a mistake of its rules; no floor needs this many.
  private static final int MOST_FIRINGS = 3_000;

  /** With more than one in so many shown anew, a session of its own is no slower. */
  private static final int FEW = 4;

  private static final Comparator<Placed> ORDER =
      Comparator.comparingInt(Placed::first)
          .thenComparingInt(Placed::rule)
          .thenComparing(Placed::words);

  private final Pass pass;
  private final KieSession session;
  private final Draft draft;
  private final ConclusionLog held = new ConclusionLog();
  private final Set<String> floor;
  private final Map<String, FactHandle> shown = new LinkedHashMap<>();
  private final Map<String, Integer> first = new HashMap<>();
  private final Map<Object, String> told = new IdentityHashMap<>();
  private boolean ended;

  private RuleSession(Pass pass, RuleBase.Loaded loaded, Knowledge knowledge, Set<String> floor) {
    this.pass = pass;
    this.floor = floor;
    this.draft = new Draft(knowledge, loaded.notes());
    this.session = loaded.rules().newKieSession();
    session.setGlobal("draft", draft);
    session.addEventListener(
        new DefaultAgendaEventListener() {
          @Override
          public void beforeMatchFired(BeforeMatchFiredEvent event) {
            draft.firing(event.getMatch());
          }
        });
    session.addEventListener(held);
    held.listen(false);
    for (Figure figure : loaded.interest().seenOf(knowledge.figures())) {
      session.insert(figure);
    }
  }

  /**
   * Lets the rules of a pass conclude all they can.
   *
   * @param pass the pass
   * @param loaded its rules
   * @param knowledge what they refer to
   * @param wanted what they are shown
   * @return what they hold, in the order of conclusion
   */
  static List<Object> of(
      Pass pass, RuleBase.Loaded loaded, Knowledge knowledge, Iterable<Object> wanted) {
    RuleSession sitting = new RuleSession(pass, loaded, knowledge, Set.of());
    try {
      wanted.forEach(sitting.session::insert);
      sitting.conclude();
      return sitting.held();
    } finally {
      sitting.session.dispose();
    }
  }

  /** The same, and the session stays open. Each thing is given by what rules can tell of it. */
  static RuleSession open(
      Pass pass, RuleBase.Loaded loaded, Knowledge knowledge, Map<String, Object> wanted) {
    RuleSession sitting = new RuleSession(pass, loaded, knowledge, Set.copyOf(wanted.keySet()));
    wanted.forEach((line, one) -> sitting.shown.put(line, sitting.session.insert(one)));
    sitting.conclude();
    for (Object one : sitting.held()) {
      sitting.first.put(words(one), sitting.first.size());
    }
    return sitting;
  }

  /** What is held, in the order of conclusion. */
  List<Object> held() {
    return held.inOrder();
  }

  /**
   * Whether so little is different from what was shown at first that this session is to be asked.
   */
  private boolean isNear(Map<String, Object> wanted) {
    int different = Math.abs(wanted.size() - floor.size());
    for (String line : wanted.keySet()) {
      different += floor.contains(line) ? 0 : 1;
    }
    return different * FEW <= wanted.size();
  }

  /**
   * What the rules hold of a variant: first what they held of the floor itself, in that order, then
   * what is new, in the order of the rules. It does not depend on the variants shown in between.
   * Empty if the variant is too different, the session has ended, or it finds no end: rules that
   * rest on what is missing may then answer each other for ever, which a session of its own, shown
   * all at once, does not.
   */
  synchronized Optional<List<Object>> with(Map<String, Object> wanted) {
    if (ended || !isNear(wanted)) {
      return Optional.empty();
    }
    held.listen(false);
    List<String> gone = new ArrayList<>(shown.keySet());
    gone.removeAll(wanted.keySet());
    gone.forEach(line -> session.delete(shown.remove(line)));
    wanted.forEach((line, one) -> shown.computeIfAbsent(line, any -> session.insert(one)));
    if (!settles()) {
      end();
      return Optional.empty();
    }
    List<Placed> all = new ArrayList<>();
    for (Object one : held.inOrder()) {
      String words = told.computeIfAbsent(one, RuleSession::words);
      all.add(
          new Placed(one, first.getOrDefault(words, Integer.MAX_VALUE), held.place(one), words));
    }
    all.sort(ORDER);
    return Optional.of(all.stream().map(Placed::one).toList());
  }

  /** What is held, with all that its place in the answer goes by. */
  private record Placed(Object one, int first, int rule, String words) {}

  /** Ends the session; the engine itself would keep it for ever. */
  synchronized void end() {
    if (!ended) {
      ended = true;
      session.dispose();
    }
  }

  /** What is concluded and by which rule; what the rule matched may be another variant's. */
  private static String words(Object one) {
    return one instanceof Fact fact
        ? fact.says() + '@' + fact.about() + fact.because()
        : one.toString();
  }

  private boolean settles() {
    held.listen(true);
    return session.fireAllRules(MOST_FIRINGS) < MOST_FIRINGS;
  }

  private void conclude() {
    if (!settles()) {
      throw new IllegalStateException(
          "rules of the pass "
              + pass.name().toLowerCase(Locale.ROOT)
              + " feed each other without end, the last being "
              + draft.rule());
    }
  }
}
