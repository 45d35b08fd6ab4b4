package underfoot.cli;

import underfoot.scenario.ScenarioFaults;

/** Something the person must be told instead of an answer, with the exit code that goes with it. */
final class UserError extends Exception {
  private final int exit;

  UserError(int exit, String what) {
    super(what, null, false, false);
    this.exit = exit;
  }

  /** Wrong usage of the command line. */
  static UserError usage(String what) {
    return new UserError(Exit.WRONG_USAGE, what);
  }

  /** A scenario or a proposal that cannot be used as it stands. */
  static UserError in(ScenarioFaults faults) {
    return new UserError(Exit.SCENARIO_INVALID, faults.text().stripTrailing());
  }

  int exit() {
    return exit;
  }
}
