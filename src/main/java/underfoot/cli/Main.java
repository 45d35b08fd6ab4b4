package underfoot.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Supplier;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import underfoot.knowledge.MissingKnowledge;
import underfoot.reasoning.RuleBase;

/** The command line's entry point. */
@Command(
    name = "underfoot",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "What to put under floor tiles, layer by layer, and why.",
    footer = {"", "Begin with: underfoot ask, or underfoot advise SCENARIO"})
public final class Main implements Runnable {
  private static final int LONGEST_QUOTE = 60;

  private static final String INTERVIEW = "ask";

  /** The commands that run longest: they do without what starts quickest. */
  private static final Set<String> LASTING = Set.of("batch", INTERVIEW);

  /** The commands that think a floor through. */
  private static final Set<String> THINKING =
      Set.of("advise", "why", "why-not", "check", "compare", "lesson", "batch", INTERVIEW);

  @Spec private CommandSpec spec;

  private Main() {}

  /**
   * Runs the program.
   *
   * @param arguments the command line
   */
  public static void main(String[] arguments) {
    Supplier<RuleBase> shipped = RuleBase::shipped;
    if (arguments.length > 0
        && (arguments.length > 1 || arguments[0].equals(INTERVIEW))
        && THINKING.contains(arguments[0])) {
      if (!LASTING.contains(arguments[0])) { // what starts quickest is not what runs longest
        OptionalInt elsewhere = FastRelaunch.of(arguments);
        if (elsewhere.isPresent()) {
          System.exit(elsewhere.getAsInt());
        }
      }
      // Loading the rules takes longest: it begins before the command line is even read.
      RuleBase early = RuleBase.shipped();
      shipped = () -> early;
    }
    Environment around =
        new Environment(System.in, System.getenv(), System.console() != null, shipped);
    int exit =
        run(
            arguments,
            around,
            new FileOutputStream(FileDescriptor.out),
            new FileOutputStream(FileDescriptor.err));
    System.exit(exit);
  }

  /** Runs one command line; output is UTF-8. Gives the exit code. */
  static int run(
      String[] arguments, Environment around, OutputStream standard, OutputStream error) {
    SafeOutput out = new SafeOutput(standard);
    SafeOutput err = new SafeOutput(error);
    int exit;
    try {
      exit = commands(around, out, err, arguments).execute(arguments);
    } catch (StackOverflowError | OutOfMemoryError e) {
      err.println("Internal error: out of " + (e instanceof OutOfMemoryError ? "memory" : "stack"));
      exit = Exit.INTERNAL;
    }
    if (out.checkError() && exit == Exit.FINE) {
      exit = Exit.INTERNAL;
      if (!out.closedByReader()) {
        err.println("The answer could not be written out in full.");
      }
    }
    err.flush();
    return exit;
  }

  /** The commands, by name, made only when they are needed. */
  private static Map<String, Supplier<Object>> subcommands(Environment around) {
    Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
    commands.put("advise", () -> new Advise(around));
    commands.put(INTERVIEW, () -> new Ask(around));
    commands.put("why", () -> new Why(around));
    commands.put("why-not", () -> new WhyNotCommand(around));
    commands.put("compare", () -> new Compare(around));
    commands.put("compare-rules", () -> new CompareRules(around));
    commands.put("batch", () -> new Batch(around));
    commands.put("check", () -> new Check(around));
    commands.put("rules", () -> new Rules(around));
    commands.put("lesson", () -> new LessonCommand(around));
    commands.put("mark", () -> new MarkCommand(around));
    commands.put("work-out", WorkOut::new);
    commands.put("schema", () -> new Schema(around));
    commands.put("generate-completion", AutoComplete.GenerateCompletion::new);
    commands.put("manual", ManualPage::new);
    return commands;
  }

  private static CommandLine commands(
      Environment around, SafeOutput out, SafeOutput err, String[] arguments) {
    CommandLine line = new CommandLine(new Main());
    Map<String, Supplier<Object>> commands = subcommands(around);
    String first = arguments.length == 0 ? "" : arguments[0];
    if (THINKING.contains(
        first)) { // the others are not looked at then, and reading them takes time
      line.addSubcommand(first, commands.get(first).get());
    } else {
      commands.forEach((name, command) -> line.addSubcommand(name, command.get()));
    }
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setExpandAtFiles(false); // a file whose name begins with @ is a file, not more options
    line.setOut(out);
    line.setErr(err);
    line.setColorScheme(CommandLine.Help.defaultColorScheme(around.colour() ? Ansi.ON : Ansi.OFF));
    line.setExecutionStrategy(
        parsed -> {
          for (CommandLine one : parsed.asCommandLineList()) {
            if (one.isUsageHelpRequested()) { // nothing from outside is in it, but colours are
              out.trusted(one.getUsageMessage(one.getColorScheme()));
              return Exit.FINE;
            }
          }
          return new CommandLine.RunLast().execute(parsed);
        });
    line.setParameterExceptionHandler(Main::wrongUsage);
    line.setExecutionExceptionHandler(Main::failed);
    return line;
  }

  private static int wrongUsage(ParameterException e, String[] arguments) {
    PrintWriter err = e.getCommandLine().getErr();
    err.println(oneLine(e.getMessage()));
    err.println("Try: " + e.getCommandLine().getCommandSpec().qualifiedName() + " --help");
    return Exit.WRONG_USAGE;
  }

  private static int failed(Exception e, CommandLine line, CommandLine.ParseResult parsed) {
    if (e instanceof UserError userError) {
      line.getErr().println(userError.getMessage());
      return userError.exit();
    }
    // The rule engine wraps what a rule's consequence throws.
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      if (cause instanceof MissingKnowledge missing) {
        line.getErr().println("The rule base is at fault. " + missing.getMessage());
        return Exit.INTERNAL;
      }
    }
    String said = e.getMessage() == null ? e.getClass().getSimpleName() : oneLine(e.getMessage());
    line.getErr().println("Internal error: " + said);
    return Exit.INTERNAL;
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\p{Cntrl}+", " ").strip();
  }

  /** A person's own words, fit to be quoted in a message. */
  static String cut(String words) {
    String line = oneLine(words);
    return line.length() > LONGEST_QUOTE ? line.substring(0, LONGEST_QUOTE) + "…" : line;
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "Name a command: ask, advise, why, rules, …");
  }
}
