package underfoot.reasoning;

import java.util.List;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.KnowledgeFault;
import underfoot.language.RuleFaults;
import underfoot.scenario.RuleFiles;

public final class Lint {
  private Lint() {}

  public static List<RuleFaults.Fault> faults(RuleFiles files, Knowledge knowledge)
      throws RuleFaults, KnowledgeFault {
    return List.of();
  }
}
