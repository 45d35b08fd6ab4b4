package underfoot.reasoning;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.kie.api.event.rule.DefaultRuleRuntimeEventListener;
import org.kie.api.event.rule.ObjectDeletedEvent;
import org.kie.api.event.rule.ObjectInsertedEvent;

/** Keeps what a session concludes and has not withdrawn. */
final class ConclusionLog extends DefaultRuleRuntimeEventListener {
  private final Set<Object> held = new LinkedHashSet<>();

  @Override
  public void objectInserted(ObjectInsertedEvent event) {
    held.add(event.getObject());
  }

  @Override
  public void objectDeleted(ObjectDeletedEvent event) {
    held.remove(event.getOldObject());
  }

  /** What is held, in the order of conclusion. */
  List<Object> held() {
    return new ArrayList<>(held);
  }
}
