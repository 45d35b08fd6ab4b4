package underfoot.reasoning;

import java.util.List;
import org.kie.api.event.rule.BeforeMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.runtime.KieSession;
import underfoot.knowledge.Knowledge;
import underfoot.language.Pass;

/** One question put to the rules of a pass. */
final class RuleSession {
  // A rule base that concludes without end is a mistake of its rules; no floor needs this many,
  // and so many more for each thing that the pass is shown: two hundred doors are each asked about.
  private static final int MOST_FIRINGS = 3_000;
  private static final int MOST_OF_EACH = 4;

  private RuleSession() {}

  /**
   * Lets the rules of a pass conclude all they can.
   *
   * @param pass the pass
   * @param network its rules
   * @param knowledge what they refer to
   * @param shown what they are shown
   * @return what they hold, in the order of conclusion
   */
  static List<Object> conclude(
      Pass pass, RuleBase.Network network, Knowledge knowledge, Iterable<?> shown) {
    Draft draft = new Draft(knowledge);
    ConclusionLog log = new ConclusionLog();
    KieSession session = network.rules().newKieSession();
    try {
      session.setGlobal(RuleCompiler.DRAFT, draft);
      session.addEventListener(
          new DefaultAgendaEventListener() {
            @Override
            public void beforeMatchFired(BeforeMatchFiredEvent event) {
              draft.firing(event.getMatch());
            }
          });
      network.filter().seenOf(knowledge.figures()).forEach(session::insert);
      int most = MOST_FIRINGS;
      for (Object one : shown) {
        session.insert(one);
        most += MOST_OF_EACH;
      }
      session.addEventListener(log);
      if (session.fireAllRules(most) >= most) {
        throw new IllegalStateException(
            "rules of the pass "
                + pass.folder()
                + " feed each other without end, the last being "
                + draft.rule());
      }
      return log.held();
    } finally {
      session.dispose();
    }
  }
}
