package underfoot.cli;

/** The exit codes of the program. */
final class Exit {
  static final int FINE = 0;
  static final int INTERNAL = 1;
  static final int WRONG_USAGE = 2;
  static final int SCENARIO_INVALID = 3;
  static final int NOT_TO_BE_BUILT = 4;
  static final int FAULTS_FOUND = 5;

  private Exit() {}
}
