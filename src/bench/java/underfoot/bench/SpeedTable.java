package underfoot.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Measures how fast the program is and prints it as a table: whole processes, batches that grow,
 * and the benchmarks of this package. {@code -Dspeed.only=start}, {@code batch}, or the name of a
 * benchmark class measures that alone; {@code -Dspeed.batch=100,1000} says how large batches are.
 */
public final class SpeedTable {
  private static final Path JAR = Path.of(System.getProperty("speed.jar", "target/underfoot.jar"));
  private static final String ONLY = System.getProperty("speed.only", "");
  private static final Path EXAMPLE = Path.of("scenarios/kitchen-on-tongue-and-groove-boards.yaml");
  private static final int RUNS = 7;

  private SpeedTable() {}

  /** Measures and prints. */
  public static void main(String[] arguments)
      throws IOException, InterruptedException, RunnerException {
    List<String> lines = new ArrayList<>();
    lines.add("| what | figure |");
    lines.add("|---|---|");
    if (wanted("start")) {
      starts(lines);
    }
    if (wanted("batch")) {
      batches(lines);
    }
    for (Class<?> benchmark : List.of(WarmAdvice.class, Growing.class, AgainstPlainJava.class)) {
      if (wanted(benchmark.getSimpleName())) {
        benchmark(benchmark, lines);
      }
    }
    System.out.println();
    lines.forEach(System.out::println);
  }

  private static boolean wanted(String part) {
    return ONLY.isEmpty() || ONLY.equals(part);
  }

  private static void add(List<String> lines, String what, String figure, Object... values) {
    lines.add("| " + what + " | " + String.format(Locale.ROOT, figure, values) + " |");
    System.err.println(lines.get(lines.size() - 1));
  }

  // --- whole processes

  private static void starts(List<String> lines) throws IOException, InterruptedException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String jar = JAR.toString();
    String launcher = JAR.resolveSibling("underfoot").toString();
    String example = EXAMPLE.toString();
    double withLauncher = median(List.of(launcher, "advise", example));
    double withJar = median(List.of(java, "-jar", jar, "advise", example));
    double bare =
        median(List.of(java, "-Dunderfoot.handed.over=true", "-jar", jar, "advise", example));
    double help = median(List.of(launcher, "--help"));
    double compiling = seconds(List.of(launcher, "advise", example, "--rules", "rules"));
    add(lines, "`advise`, launcher, whole process", "%.2f s", withLauncher);
    add(lines, "`advise`, `java -jar`, archive beside the jar", "%.2f s", withJar);
    add(lines, "`advise`, `java -jar`, the jar alone", "%.2f s", bare);
    add(lines, "`--help`, launcher", "%.2f s", help);
    add(lines, "`advise --rules rules`, compiling at the start", "%.2f s", compiling);
    add(lines, "launcher to compiling at the start", "1 to %.1f", compiling / withLauncher);
    double empty = median(List.of(java, "-version"));
    add(lines, "for comparison: `java -version`", "%.2f s", empty);
  }

  private static double median(List<String> command) throws IOException, InterruptedException {
    double[] times = new double[RUNS];
    seconds(command); // the first fills the disk's cache
    for (int i = 0; i < RUNS; i++) {
      times[i] = seconds(command);
    }
    Arrays.sort(times);
    return times[RUNS / 2];
  }

  private static double seconds(List<String> command) throws IOException, InterruptedException {
    long start = System.nanoTime();
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    int exit = process.waitFor();
    if (exit > 2) {
      throw new IllegalStateException(command + " ended with " + exit);
    }
    return (System.nanoTime() - start) / 1e9;
  }

  // --- batches that grow

  private static void batches(List<String> lines) throws IOException, InterruptedException {
    String[] sizes = System.getProperty("speed.batch", "100,1000,10000").split(",");
    List<String> floors = Variants.of(Shop.examples());
    TreeMap<Double, Double> times = new TreeMap<>();
    for (String size : sizes) {
      int count = Integer.parseInt(size.strip());
      Path out = Files.createTempFile("batch", ".jsonl");
      Process process =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-Xmx700m",
                  "-XX:+UseParallelGC", // as the launcher runs it
                  "-jar",
                  JAR.toString(),
                  "batch",
                  "-",
                  "--without-trials",
                  "--out",
                  out.toString())
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      long start = System.nanoTime();
      long half = 0;
      try (var in = process.getOutputStream()) {
        for (int i = 0; i < count; i++) {
          in.write(Variants.line(floors, i).getBytes(StandardCharsets.UTF_8));
          if (i == count / 2) {
            half = resident(process.pid());
          }
        }
      }
      long full = resident(process.pid());
      process.waitFor();
      double seconds = (System.nanoTime() - start) / 1e9;
      times.put((double) count, seconds);
      add(
          lines,
          "`batch --without-trials`, " + count + " floors, whole process, 700 MB of heap",
          "%.1f s, %.0f a second; resident %d MB half way, %d MB at the end",
          seconds,
          count / seconds,
          half / 1024,
          full / 1024);
      Files.delete(out);
    }
    if (times.size() > 1) {
      add(lines, "batches: time grows with the floors to the power of", "%.2f", exponent(times));
    }
  }

  /** Memory a process has now, kB, where the system tells; else 0. */
  private static long resident(long pid) throws IOException {
    Path status = Path.of("/proc/" + pid + "/status");
    if (!Files.isReadable(status)) {
      return 0;
    }
    return Files.readAllLines(status).stream()
        .filter(line -> line.startsWith("VmRSS:"))
        .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
        .findFirst()
        .orElse(0);
  }

  /** The slope between the two largest, both scales logarithmic. */
  private static double exponent(TreeMap<Double, Double> times) {
    Map.Entry<Double, Double> last = times.lastEntry();
    Map.Entry<Double, Double> before = times.lowerEntry(last.getKey());
    return Math.log(last.getValue() / before.getValue())
        / Math.log(last.getKey() / before.getKey());
  }

  // --- benchmarks of this package

  private static void benchmark(Class<?> benchmark, List<String> lines) throws RunnerException {
    Options options =
        new OptionsBuilder()
            .include("\\." + benchmark.getSimpleName() + "\\.")
            .shouldFailOnError(true)
            .build();
    Collection<RunResult> results = new Runner(options).run();
    Map<String, TreeMap<Double, Double>> grows = new LinkedHashMap<>();
    Map<String, Double> plain = new LinkedHashMap<>();
    for (RunResult result : results) {
      String name = result.getPrimaryResult().getLabel();
      String size = Optional.ofNullable(result.getParams().getParam("size")).orElse("");
      double score = result.getPrimaryResult().getScore();
      String unit = result.getPrimaryResult().getScoreUnit();
      plain.put(name, score);
      add(
          lines,
          "`" + benchmark.getSimpleName() + "." + name + "`" + (size.isEmpty() ? "" : " " + size),
          score < 100 ? "%.2f %s" : "%.0f %s",
          score,
          unit);
      if (!size.isEmpty()) {
        grows.computeIfAbsent(name, n -> new TreeMap<>()).put(Double.parseDouble(size), score);
      }
    }
    grows.forEach(
        (name, times) ->
            add(lines, name + ": time grows to the power of", "%.2f", exponent(times)));
    if (benchmark == AgainstPlainJava.class) {
      add(
          lines,
          "twenty rules: engine to plain Java",
          "%.0f to 1",
          plain.get("engine") / plain.get("plain"));
    }
  }
}
