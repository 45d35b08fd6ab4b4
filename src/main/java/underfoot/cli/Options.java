package underfoot.cli;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import underfoot.report.Detail;

/** The options that several commands share, each declared once. */
final class Options {
  private Options() {}

  /** Whether JSON is printed. */
  static final class Json {
    @Option(names = "--json", description = "Print JSON.")
    boolean wanted;
  }

  /** How much is told. */
  static final class HowMuch {
    @Option(
        names = "--detail",
        paramLabel = "HOW MUCH",
        description = "How much is told: short, site (one page to build from), normal or full; dangers are in each.")
    private Detail detail;

    Detail or(Detail usual) {
      return detail == null ? usual : detail;
    }
  }

  /** Whether files are replaced. */
  static final class Replace {
    @Option(names = "--replace", description = "Write over a file that is there already.")
    boolean wanted;
  }

  /** A page to write. */
  static final class Page {
    @Option(
        names = "--html",
        paramLabel = "FILE",
        description = "Write a page for browsers and paper; - for standard output.")
    private String file;

    @Mixin private Replace replace;

    boolean wanted() {
      return file != null;
    }

    /** Whether a file that is there is written over. */
    boolean replaces() {
      return replace.wanted;
    }

    /** Where it goes; null if it is not asked for. */
    OutputFile output(CommandContext context) throws UserError {
      return wanted() ? context.output(file, replaces()) : null;
    }
  }
}
