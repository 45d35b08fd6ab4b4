package underfoot.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;
import underfoot.plan.Advice;
import underfoot.plan.Planner;
import underfoot.reasoning.Assessment;
import underfoot.scenario.Scenario;

/** One advice after another on the example floors, warm, on two threads. */
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 6, time = 10)
@Measurement(iterations = 4, time = 5)
@Fork(value = 1, jvmArgsAppend = "-XX:+UseParallelGC") // as the launcher runs batch
@Threads(2)
public class WarmAdvice {

  /** What both threads share. */
  @State(Scope.Benchmark)
  public static class Shared {
    Shop shop;
    List<String> texts;
    List<Scenario> scenarios;
    Planner planner;

    /** Loads the rules and reads the floors. */
    @Setup
    public void load() {
      shop = new Shop();
      planner = shop.planner();
      texts = Shop.examples();
      scenarios = texts.stream().map(shop::read).toList();
    }
  }

  /** Which floor is next. */
  @State(Scope.Thread)
  public static class Turn {
    private int at;

    int next(int of) {
      at = (at + 1) % of;
      return at;
    }
  }

  /** Reading a scenario file. */
  @Benchmark
  public Scenario read(Shared shared, Turn turn) {
    return shared.shop.read(shared.texts.get(turn.next(shared.texts.size())));
  }

  /** What the rules conclude of it, all ways worked out with cost and time. */
  @Benchmark
  public Assessment think(Shared shared, Turn turn) {
    Scenario scenario = shared.scenarios.get(turn.next(shared.scenarios.size()));
    return shared.shop.advisor(shared.shop.planner()).advise(scenario);
  }

  /** From the file's text to the advice with all its reasons, tiles and boards set out afresh. */
  @Benchmark
  public Advice adviseOnNewRooms(Shared shared, Turn turn) {
    return shared.shop.advice(
        shared.shop.read(shared.texts.get(turn.next(shared.texts.size()))), shared.shop.planner());
  }

  /** The same where rooms were set out before, as in a batch of variants. */
  @Benchmark
  public Advice advise(Shared shared, Turn turn) {
    return shared.shop.advice(
        shared.shop.read(shared.texts.get(turn.next(shared.texts.size()))), shared.planner);
  }

  /** The same, and written as JSON: what {@code batch --without-trials} does. */
  @Benchmark
  public String adviseAndWrite(Shared shared, Turn turn) {
    return Shop.line(advise(shared, turn));
  }

  /** With what to find out first and the least change: what {@code batch} does. */
  @Benchmark
  public Advice adviseWithTrials(Shared shared, Turn turn) {
    return shared.shop.adviceWithTrials(
        shared.shop.read(shared.texts.get(turn.next(shared.texts.size()))), shared.planner);
  }
}
