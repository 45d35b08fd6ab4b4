package underfoot.cli;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import underfoot.plan.Advice;
import underfoot.report.JsonReport;
import underfoot.report.JsonReport.Origin;
import underfoot.report.MadeBy;
import underfoot.scenario.InputFile;

/** {@code batch FILES…}: many scenarios, one line of JSON each. */
@Command(
    name = "batch",
    mixinStandardHelpOptions = true,
    description = {
      "Many scenarios, one line of JSON each, in the order given, on all cores.",
      "A folder means every .yaml in it, sorted; - means scenarios on standard input, one on each",
      "line, as JSON or YAML in braces. What cannot be used gets a line that says why, and does",
      "not stop the rest. Progress is told on standard error."
    },
    footer = {"", "Exit codes: 0 all were advised on, 3 some could not be used, 2 wrong usage."})
final class Batch extends FloorCommand {
  private static final int AHEAD_OF_EACH_CORE = 8;

  /** So many bytes of a scenario count as one more floor ahead: its answer is as much longer. */
  private static final int BYTES_OF_ONE = 20_000;

  private static final long TOLD_EVERY = 2_000_000_000L;
  private static final String STANDARD_INPUT = "-";
  private static final String YAML = ".yaml";

  @Parameters(
      arity = "1..*",
      paramLabel = "FILES",
      description = "Scenario files, folders of them, or - for standard input.")
  private List<String> files;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write the lines to a file instead of standard output.")
  private String outFile;

  @Mixin private Options.Replace replace;

  @Option(
      names = "--resume",
      description = {
        "Go on with the file of --out: scenarios that have a line there are skipped, and one that",
        "has changed since gets a new line, which says which it supersedes."
      })
  private boolean resume;

  @Option(
      names = "--without-trials",
      description =
          "Do not try assumed facts otherwise, nor search for least changes: several times faster.")
  private boolean withoutTrials;

  /** Links in folders that lead out of them. */
  private final Set<String> leadOut = new HashSet<>();

  Batch(Environment around) {
    super(around);
  }

  /** Who advises on a scenario, given its name and its text. */
  interface Adviser {
    Advice advise(String name, byte[] content) throws UserError;
  }

  /** A scenario to advise on; what is wrong with it before it could be read, else null. */
  private record Job(Origin origin, byte[] content, UserError unread) {}

  /** A scenario that is being thought about. */
  private record Pending(Origin origin, int weight, Future<Line> line) {}

  /** A line of the answer, and whether it tells of advice. */
  record Line(String text, boolean advised) {}

  @Override
  public Integer call() throws UserError {
    if (resume && (outFile == null || replace.wanted)) {
      throw UserError.usage("--resume goes on with a file: it needs --out, and no --replace");
    }
    CommandContext context = context();
    Desk desk = context.deskForMany(!withoutTrials);
    List<String> names = new ArrayList<>();
    for (String file : files) {
      names.addAll(scenarios(file));
    }
    names.stream()
        .filter(name -> !name.equals(STANDARD_INPUT))
        .forEach(name -> context.inputs().add(Path.of(name)));
    int cores = Runtime.getRuntime().availableProcessors();
    ExecutorService pool = Executors.newFixedThreadPool(cores);
    try (Journal journal = journal(context)) {
      return new Run(context, desk::advise, journal, pool, cores).of(names);
    } catch (IOException | UncheckedIOException e) {
      throw new UserError(Exit.INTERNAL, "The lines could not be written: " + e.getMessage());
    } finally {
      pool.shutdownNow();
    }
  }

  private Journal journal(CommandContext context) throws UserError {
    return outFile == null || outFile.equals("-")
        ? Journal.printed(out())
        : Journal.in(context.output(outFile, replace.wanted || resume), resume);
  }

  /**
   * Whether a file of a folder is a link that leads out of it: of a folder that somebody else made,
   * nothing is read that does not lie in it.
   */
  private static boolean leadsOut(Path folder, Path file) {
    try {
      return !file.toRealPath().startsWith(folder.toRealPath());
    } catch (IOException e) {
      return false; // told when it is read
    }
  }

  /** The name of a file of a folder, noted if it leads out of it. */
  private String noted(Path folder, Path file) {
    if (leadsOut(folder, file)) {
      leadOut.add(file.toString());
    }
    return file.toString();
  }

  /** The files that a name means; it itself if it is standard input. */
  private List<String> scenarios(String name) throws UserError {
    try {
      Path path = Path.of(name);
      if (name.equals(STANDARD_INPUT) || !Files.isDirectory(path)) {
        return List.of(name);
      }
      try (Stream<Path> found = Files.list(path)) {
        return found
            .filter(one -> one.getFileName().toString().endsWith(YAML) && Files.isRegularFile(one))
            .sorted()
            .map(one -> noted(path, one))
            .toList();
      }
    } catch (InvalidPathException e) {
      throw UserError.usage("There is no file " + name);
    } catch (IOException e) {
      throw UserError.usage(name + " cannot be read");
    }
  }

  /** The line for one scenario; whatever goes wrong with it, memory included, becomes its line. */
  static Line line(Adviser adviser, Origin origin, byte[] content, MadeBy madeBy) {
    StringWriter text = new StringWriter();
    try {
      Advice advice = adviser.advise(origin.file(), content);
      JsonReport.line(origin, advice, madeBy, text);
      return new Line(text.toString(), true);
    } catch (UserError e) {
      return failure(origin, e.exit(), e.getMessage());
    } catch (StackOverflowError | OutOfMemoryError e) {
      String of = e instanceof OutOfMemoryError ? "memory" : "stack";
      return failure(origin, Exit.INTERNAL, "Internal error: out of " + of);
    } catch (RuntimeException e) {
      String why = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
      return failure(origin, Exit.INTERNAL, "Internal error: " + why);
    }
  }

  private static Line failure(Origin origin, int exit, String why) {
    StringWriter text = new StringWriter();
    JsonReport.failure(origin, exit, List.of(why.split("\n(?=\\S)")), text);
    return new Line(text.toString(), false);
  }

  /** One run: scenarios are read one after another, and thought through by several threads. */
  private final class Run {
    private final CommandContext context;
    private final Adviser adviser;
    private final MadeBy madeBy;
    private final Journal journal;
    private final ExecutorService pool;
    private final int most;
    private final int longest;
    private final Deque<Pending> ahead = new ArrayDeque<>();
    private int weightAhead;
    private final Progress progress = new Progress(err());

    Run(CommandContext context, Adviser adviser, Journal journal, ExecutorService pool, int cores)
        throws UserError {
      this.context = context;
      this.adviser = adviser;
      this.madeBy = context.madeBy();
      this.longest = (int) context.facts().limit("longest-line");
      this.journal = journal;
      this.pool = pool;
      this.most = cores * AHEAD_OF_EACH_CORE;
    }

    int of(List<String> names) throws IOException {
      for (String name : names) {
        if (name.equals(STANDARD_INPUT)) {
          lines(new BufferedInputStream(around().in()));
        } else {
          file(name);
        }
      }
      while (!ahead.isEmpty()) {
        write(ahead.removeFirst());
      }
      progress.done();
      return progress.failed == 0 ? Exit.FINE : Exit.SCENARIO_INVALID;
    }

    private void file(String name) throws IOException {
      byte[] content = new byte[0];
      UserError unread = null;
      String digest = "";
      try {
        if (leadOut.contains(name)) {
          throw UserError.usage(name + " leads out of its folder; name the file itself");
        }
        content = context.inputs().read(name);
        digest = digest(content);
      } catch (UserError e) {
        unread = e;
      }
      String before = journal.answered(name);
      if (!digest.equals(before)) {
        Origin origin = new Origin(name, digest, before == null ? "" : before);
        add(new Job(origin, content, unread));
      }
    }

    /** The scenarios of standard input, a line each; empty lines are passed over. */
    private void lines(InputStream in) throws IOException {
      int number = 0;
      for (byte[] line = line(in); line != null; line = line(in)) {
        number++;
        String digest = digest(line);
        if (!new String(line, StandardCharsets.UTF_8).isBlank() && !journal.hasAnswered(digest)) {
          add(new Job(new Origin("line " + number, digest, ""), line, null));
        }
      }
    }

    /** One line, of one that is too long only so much as is refused by its length. */
    private byte[] line(InputStream in) throws IOException {
      ByteArrayOutputStream line = new ByteArrayOutputStream(2_000);
      int one = in.read();
      if (one < 0) {
        return null;
      }
      while (one >= 0 && one != '\n') {
        if (line.size() <= longest) {
          line.write(one);
        }
        one = in.read();
      }
      return line.toByteArray();
    }

    private void add(Job job) throws IOException {
      // What waits to be written takes memory: of floors that hold very much few are begun ahead.
      int weight = 1 + job.content().length / BYTES_OF_ONE;
      while (!ahead.isEmpty() && weightAhead + weight > most) {
        write(ahead.removeFirst());
      }
      Origin origin = job.origin();
      weightAhead += weight;
      Future<Line> line =
          pool.submit(
              () ->
                  job.unread() == null
                      ? Batch.line(adviser, origin, job.content(), madeBy)
                      : failure(origin, job.unread().exit(), job.unread().getMessage()));
      ahead.addLast(new Pending(origin, weight, line));
    }

    private void write(Pending pending) throws IOException {
      weightAhead -= pending.weight();
      Line line;
      try {
        line = pending.line().get();
      } catch (ExecutionException e) { // even its failure could not be put into words there
        line = failure(pending.origin(), Exit.INTERNAL, "Internal error: " + e.getCause());
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new IOException("interrupted", e);
      }
      journal.add(line.text());
      progress.one(line.advised());
    }
  }

  private static String digest(byte[] content) {
    return HexFormat.of().formatHex(InputFile.digest().digest(content));
  }

  /** Tells how far it has come. */
  private static final class Progress {
    private final PrintWriter err;
    private final long start = System.nanoTime();
    private long told = start;
    private long done;
    private long failed;

    Progress(PrintWriter err) {
      this.err = err;
    }

    void one(boolean advised) {
      done++;
      failed += advised ? 0 : 1;
      long now = System.nanoTime();
      if (now - told > TOLD_EVERY) {
        told = now;
        tell(now);
      }
    }

    void done() {
      tell(System.nanoTime());
    }

    private void tell(long now) {
      double seconds = Math.max(1e-9, (now - start) / 1e9);
      err.println(
          String.format(
              Locale.ROOT,
              "%d done, %d of them could not be used, %.0f a second",
              done,
              failed,
              done / seconds));
      err.flush();
    }
  }
}
