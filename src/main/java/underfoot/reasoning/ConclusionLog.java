package underfoot.reasoning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drools.base.definitions.rule.impl.RuleImpl;
import org.kie.api.event.rule.DefaultRuleRuntimeEventListener;
import org.kie.api.event.rule.ObjectDeletedEvent;
import org.kie.api.event.rule.ObjectInsertedEvent;

/** Keeps what a session concludes and has not withdrawn. */
final class ConclusionLog extends DefaultRuleRuntimeEventListener {
  /** Each with the place of its rule among the rules. */
  private final Map<Object, Integer> held = new LinkedHashMap<>();

  private boolean listening;

  /** Whether what comes and goes from now on is concluded; otherwise it is shown. */
  void listen(boolean concluded) {
    listening = concluded;
  }

  @Override
  public void objectInserted(ObjectInsertedEvent event) {
    if (listening) {
      int place = event.getRule() instanceof RuleImpl rule ? rule.getLoadOrder() : 0;
      held.putIfAbsent(event.getObject(), place);
    }
  }

  @Override
  public void objectDeleted(ObjectDeletedEvent event) {
    if (listening) {
      held.remove(event.getOldObject());
    }
  }

  /** What is held, in the order of conclusion. */
  List<Object> inOrder() {
    return new ArrayList<>(held.keySet());
  }

  /** The place of the rule that something was concluded by. */
  int place(Object one) {
    return held.getOrDefault(one, 0);
  }
}
