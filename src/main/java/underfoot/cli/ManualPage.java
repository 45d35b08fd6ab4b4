package underfoot.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code manual}: the manual page of the program and all its commands, for {@code man -l -}. */
@Command(
    name = "manual",
    mixinStandardHelpOptions = true,
    description = "Prints the manual page; read it with: underfoot manual | man -l -")
final class ManualPage implements Callable<Integer> {
  private static final int WIDTH = 72;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    CommandLine program = spec.parent().commandLine();
    PrintWriter out = spec.commandLine().getOut();
    out.println(".TH UNDERFOOT 1 \"\" \"underfoot " + Version.of() + "\" \"User Commands\"");
    out.println(".SH NAME");
    out.println("underfoot \\- what to put under floor tiles, layer by layer, and why");
    section(out, "SYNOPSIS", "underfoot COMMAND [OPTION]...");
    out.println(".SH DESCRIPTION");
    verbatim(out, program);
    program
        .getSubcommands()
        .forEach(
            (name, command) -> {
              if (!command.getCommandSpec().usageMessage().hidden()) {
                out.println(".SH " + plain(name.toUpperCase(Locale.ROOT)));
                verbatim(out, command);
              }
            });
    return Exit.FINE;
  }

  private static void section(PrintWriter out, String title, String text) {
    out.println(".SH " + title);
    out.println(plain(text));
  }

  private static void verbatim(PrintWriter out, CommandLine command) {
    command.getCommandSpec().usageMessage().width(WIDTH + 8);
    out.println(".nf");
    command.getUsageMessage(Ansi.OFF).lines().forEach(line -> out.println(plain(line)));
    out.println(".fi");
  }

  /** A line that the formatter takes for text, whatever it begins with. */
  private static String plain(String line) {
    String text = line.replace("\\", "\\e").replace("-", "\\-");
    return text.startsWith(".") || text.startsWith("'") ? "\\&" + text : text;
  }
}
