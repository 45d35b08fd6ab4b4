package underfoot.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Promise;
import underfoot.reasoning.Assessment;

/** Reads a finished advice against what every advice promises, before anybody sees it. */
public final class LastReading {
  private static final Map<String, Function<Read, Optional<Broken>>> READINGS = readings();

  private LastReading() {}

  /**
   * What is read.
   *
   * @param advice the finished advice
   * @param assessment what it was made of
   * @param promise the promise it is read against
   */
  record Read(Advice advice, Assessment assessment, Promise promise) {
    Knowledge knowledge() {
      return assessment.knowledge();
    }
  }

  /**
   * A promise that is not kept.
   *
   * @param promise the promise
   * @param one the place that says one thing
   * @param other the place that says another, or says nothing
   */
  public record Broken(Promise promise, String one, String other) {}

  /** What is found where a promise is not kept. */
  static Optional<Broken> broken(Read read, String one, String other) {
    return Optional.of(new Broken(read.promise(), one, other));
  }

  private static Map<String, Function<Read, Optional<Broken>>> readings() {
    Map<String, Function<Read, Optional<Broken>>> all = new LinkedHashMap<>();
    all.put("layers-have-materials", WorkRead::materials);
    all.put("layers-have-steps", WorkRead::steps);
    all.put("use-waits-for-work", WorkRead::use);
    all.put("nothing-forbidden-is-asked", ActsRead::forbidden);
    all.put("gates-come-first", ActsRead::gates);
    all.put("dangers-follow-acts", ActsRead::dangers);
    all.put("answer-and-picture-agree", NumbersRead::answer);
    all.put("no-absurd-number", NumbersRead::absurd);
    all.put("sums-agree", NumbersRead::sums);
    all.put("wishes-are-answered", WishesRead::wishes);
    all.put("known-conditions-are-acted-on", WishesRead::conditions);
    all.put("remedies-can-be-met", WishesRead::met);
    all.put("changes-tell-what-they-leave", ActsRead::changes);
    return all;
  }

  /** The promises that can be read for. */
  public static Set<String> known() {
    return READINGS.keySet();
  }

  /** The promises that an advice does not keep, the first thing found for each. */
  public static List<Broken> read(Advice advice, Assessment assessment) {
    List<Broken> broken = new ArrayList<>();
    for (Promise promise : assessment.knowledge().promises()) {
      Function<Read, Optional<Broken>> reading = READINGS.get(promise.id());
      if (reading != null) {
        reading.apply(new Read(advice, assessment, promise)).ifPresent(broken::add);
      }
    }
    return broken;
  }

  /**
   * Gives an advice that keeps all promises.
   *
   * @throws BrokenPromise if it does not
   */
  public static Advice kept(Advice advice, Assessment assessment) {
    for (Broken one : read(advice, assessment)) {
      throw new BrokenPromise(one.promise().words(), one.one(), one.other());
    }
    return advice;
  }
}
