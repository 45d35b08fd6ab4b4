package underfoot.cli;

/** The command line's entry point. */
public final class Main {
  private Main() {}

  /**
   * Runs the program.
   *
   * @param arguments the command line
   */
  public static void main(String[] arguments) {}
}
