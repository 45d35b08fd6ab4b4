package underfoot.cli;

import underfoot.plan.Advice;
import underfoot.plan.AdviceMaker;
import underfoot.plan.ChangeNotes;
import underfoot.plan.Consequences;
import underfoot.plan.Justifier;
import underfoot.plan.LastReading;
import underfoot.plan.Planner;
import underfoot.reasoning.Advisor;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.LeastChange;
import underfoot.reasoning.WhatIf;
import underfoot.scenario.Scenario;

/** Where one scenario after another is thought through. Safe to share between threads. */
final class Desk {
  private final CommandContext context;
  private final boolean trials;
  private final boolean forMany;
  private final Planner planner;

  /**
   * @param context the rules
   * @param trials whether assumed facts are tried otherwise, and least changes searched for
   * @param forMany whether each floor stays with the thread that asks
   */
  Desk(CommandContext context, boolean trials, boolean forMany) throws UserError {
    this.context = context;
    this.trials = trials;
    this.forMany = forMany;
    this.planner = new Planner(context.knowledge().prices());
    context.rules(); // whatever is at fault is told before the first floor
  }

  /** Reads a scenario that was already fetched, and advises on it. */
  Advice advise(String name, byte[] content) throws UserError {
    return advise(context.scenario(name, content));
  }

  /** Advises on a scenario. */
  Advice advise(Scenario scenario) throws UserError {
    Planner here = planner.by(context.prices(scenario));
    Advisor spread = context.advisor(here);
    Advisor once = forMany ? spread.onOneCore() : spread;
    Advisor advisor = trials ? once.noting() : once;
    return context.byRules(() -> advice(scenario, here, advisor));
  }

  private Advice advice(Scenario scenario, Planner here, Advisor advisor) {
    Assessment assessment = advisor.advise(scenario);
    Consequences consequences =
        here.of(assessment, new Justifier(scenario, assessment.knowledge()));
    WhatIf whatIf = new WhatIf(advisor);
    Advice advice =
        trials
            ? AdviceMaker.make(
                assessment,
                whatIf.of(assessment),
                whatIf.unsaid(assessment),
                ChangeNotes.add(
                    consequences,
                    assessment.knowledge(),
                    LeastChange.of(advisor, assessment),
                    here))
            : AdviceMaker.make(assessment, WhatIf.assumed(assessment), consequences);
    return LastReading.kept(advice, assessment);
  }
}
