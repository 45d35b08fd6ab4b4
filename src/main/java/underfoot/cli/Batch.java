package underfoot.cli;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.RandomAccessFile;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.NoSuchElementException;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import underfoot.report.JsonReport;

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
final class Batch implements Callable<Integer> {
  private static final int AHEAD_OF_EACH_CORE = 8;
  private static final int LONGEST_LINE = 1_000_000;
  private static final long TOLD_EVERY = 2_000_000_000L;
  private static final String YAML = ".yaml";

  private final Environment around;
  @Spec private CommandSpec spec;
  @Mixin private RuleBaseOption rules;

  @Parameters(
      arity = "1..*",
      paramLabel = "FILES",
      description = "Scenario files, folders of them, or - for standard input.")
  private List<String> files;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write the lines to a file instead of standard output.")
  private Path outFile;

  @Option(
      names = "--resume",
      description = "Go on with the file of --out: as many scenarios as it has lines are skipped.")
  private boolean resume;

  @Option(
      names = "--without-trials",
      description =
          "Do not try assumed facts otherwise, nor search for least changes: several times faster.")
  private boolean withoutTrials;

  Batch(Environment around) {
    this.around = around;
  }

  /** One scenario to advise on: its name, and where its text comes from. */
  private record Job(String name, Callable<byte[]> content) {}

  /** A line of the answer, and whether it tells of advice. */
  private record Line(String text, boolean advised) {}

  @Override
  public Integer call() throws UserError {
    if (resume && outFile == null) {
      throw UserError.usage("--resume goes on with a file, so it needs --out");
    }
    PrintWriter err = spec.commandLine().getErr();
    CommandContext bench = new CommandContext(rules.folder(), around, err);
    CommandContext.Desk desk = bench.deskForMany(!withoutTrials);
    String ruleBase = bench.ruleBaseId();
    List<Iterator<Job>> jobs = new ArrayList<>();
    for (String file : files) {
      jobs.add(jobs(file));
    }
    int cores = Runtime.getRuntime().availableProcessors();
    ExecutorService pool = Executors.newFixedThreadPool(cores);
    try (Out out = out()) {
      return run(job -> line(desk, ruleBase, job), jobs, pool, cores, out, err);
    } catch (IOException | UncheckedIOException e) {
      throw new UserError(Exit.INTERNAL, "The lines could not be written: " + e.getMessage());
    } finally {
      pool.shutdownNow();
    }
  }

  private int run(
      Function<Job, Line> lines,
      List<Iterator<Job>> sources,
      ExecutorService pool,
      int cores,
      Out out,
      PrintWriter err)
      throws IOException {
    Deque<Future<Line>> ahead = new ArrayDeque<>();
    Progress progress = new Progress(err);
    long skip = out.linesBefore();
    for (Iterator<Job> source : sources) {
      while (source.hasNext()) {
        Job job = source.next();
        if (skip > 0) {
          skip--;
          continue;
        }
        if (ahead.size() >= cores * AHEAD_OF_EACH_CORE) {
          write(ahead.removeFirst(), out, progress);
        }
        ahead.addLast(pool.submit(() -> lines.apply(job)));
      }
    }
    while (!ahead.isEmpty()) {
      write(ahead.removeFirst(), out, progress);
    }
    out.flush();
    progress.done();
    return progress.failed == 0 ? Exit.FINE : Exit.SCENARIO_INVALID;
  }

  private static void write(Future<Line> future, Out out, Progress progress) throws IOException {
    Line line;
    try {
      line = future.get();
    } catch (ExecutionException e) {
      throw new IOException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("interrupted", e);
    }
    out.line(line.text());
    progress.one(line.advised());
  }

  /** The line for one scenario; whatever goes wrong with it becomes its line. */
  private static Line line(CommandContext.Desk desk, String ruleBase, Job job) {
    StringWriter text = new StringWriter();
    try {
      byte[] content = job.content().call();
      JsonReport.line(job.name(), desk.advise(job.name(), content), Version.of(), ruleBase, text);
      return new Line(text.toString(), true);
    } catch (UserError e) {
      JsonReport.failure(job.name(), e.exit(), List.of(e.getMessage().split("\n(?=\\S)")), text);
    } catch (Exception | StackOverflowError e) {
      String why = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
      JsonReport.failure(job.name(), Exit.INTERNAL, List.of("Internal error: " + why), text);
    }
    return new Line(text.toString(), false);
  }

  // --- where scenarios come from

  private Iterator<Job> jobs(String name) throws UserError {
    if (name.equals("-")) {
      return new Lines(around.in());
    }
    Path path;
    try {
      path = Path.of(name);
    } catch (InvalidPathException e) {
      throw UserError.usage("There is no file " + name);
    }
    if (!Files.isDirectory(path)) {
      return List.of(job(name)).iterator();
    }
    try (Stream<Path> found = Files.list(path)) {
      return found
          .filter(file -> file.getFileName().toString().endsWith(YAML) && Files.isRegularFile(file))
          .sorted()
          .map(file -> job(file.toString()))
          .toList()
          .iterator();
    } catch (IOException e) {
      throw UserError.usage(name + " cannot be read");
    }
  }

  private static Job job(String name) {
    return new Job(name, () -> CommandContext.content(name, InputStream.nullInputStream()));
  }

  /** The scenarios of standard input, a line each; empty lines are passed over. */
  private static final class Lines implements Iterator<Job> {
    private final InputStream in;
    private int number;
    private Job next;
    private boolean ended;

    Lines(InputStream in) {
      this.in = new BufferedInputStream(in);
    }

    @Override
    public boolean hasNext() {
      while (next == null && !ended) {
        byte[] line = read();
        number++;
        if (line != null && !new String(line, StandardCharsets.UTF_8).isBlank()) {
          String name = "line " + number;
          next = new Job(name, () -> line);
        }
      }
      return next != null;
    }

    @Override
    public Job next() {
      if (!hasNext()) {
        throw new NoSuchElementException();
      }
      Job job = next;
      next = null;
      return job;
    }

    /** One line, of one that is too long only so much as is refused by its length. */
    private byte[] read() {
      ByteArrayOutputStream line = new ByteArrayOutputStream(2_000);
      try {
        int one = in.read();
        if (one < 0) {
          ended = true;
          return null;
        }
        while (one >= 0 && one != '\n') {
          if (line.size() <= LONGEST_LINE) {
            line.write(one);
          }
          one = in.read();
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      return line.toByteArray();
    }
  }

  // --- where lines go

  private Out out() throws UserError {
    if (outFile == null) {
      return new Out(spec.commandLine().getOut(), 0, false);
    }
    try {
      long before = 0;
      if (resume && Files.exists(outFile)) {
        before = completeLines(outFile);
      }
      PrintWriter writer =
          new PrintWriter(
              Files.newBufferedWriter(
                  outFile,
                  StandardOpenOption.CREATE,
                  StandardOpenOption.WRITE,
                  resume ? StandardOpenOption.APPEND : StandardOpenOption.TRUNCATE_EXISTING));
      return new Out(writer, before, true);
    } catch (IOException e) {
      throw UserError.usage(outFile + " cannot be written");
    }
  }

  /** How many whole lines a file has; a part of a line at its end is cut off. */
  private static long completeLines(Path file) throws IOException {
    long lines = 0;
    long end = 0;
    long at = 0;
    try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
      for (int one = in.read(); one >= 0; one = in.read()) {
        at++;
        if (one == '\n') {
          lines++;
          end = at;
        }
      }
    }
    if (end < at) {
      try (RandomAccessFile cut = new RandomAccessFile(file.toFile(), "rw")) {
        cut.setLength(end);
      }
    }
    return lines;
  }

  /** Where lines are written. */
  private static final class Out implements AutoCloseable {
    private final PrintWriter writer;
    private final long before;
    private final boolean own;

    Out(PrintWriter writer, long before, boolean own) {
      this.writer = writer;
      this.before = before;
      this.own = own;
    }

    long linesBefore() {
      return before;
    }

    void line(String text) throws IOException {
      writer.print(text);
      writer.print('\n');
      if (writer.checkError()) {
        throw new IOException("the reader has gone or the disk is full");
      }
    }

    void flush() {
      writer.flush();
    }

    @Override
    public void close() {
      if (own) {
        writer.close();
      }
    }
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
