package underfoot.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import underfoot.reasoning.Floors;

/** Runs the program within the test, without a process of its own. */
final class Console {
  private Console() {}

  /** What came of a run. */
  record Ran(int exit, String out, String err) {}

  static Ran run(String... arguments) {
    return run(new byte[0], Map.of(), false, arguments);
  }

  static Ran run(
      byte[] input, Map<String, String> environment, boolean terminal, String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int exit =
        Main.run(
            arguments,
            new Environment(
                new ByteArrayInputStream(input),
                environment,
                terminal,
                () -> Floors.advisor().rules()),
            out,
            err);
    return new Ran(
        exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
