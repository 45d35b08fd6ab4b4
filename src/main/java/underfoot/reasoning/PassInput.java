package underfoot.reasoning;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Kinds;
import underfoot.knowledge.Unknown;
import underfoot.scenario.InputFile;

/**
 * What a pass is shown: all that its rules can match. What is held of a floor is looked through
 * once, and each way of building adds its own.
 *
 * @param things all of it, in the order it came
 */
record PassInput(List<Object> things) {

  /** What a pass can match of what is held. */
  static PassInput of(FactFilter interest, Iterable<?> held) {
    List<Object> things = new ArrayList<>();
    add(interest, held, things);
    return new PassInput(things);
  }

  /** The same, and what the pass can match of more. */
  PassInput and(FactFilter interest, Iterable<?> more) {
    List<Object> all = new ArrayList<>(things);
    add(interest, more, all);
    return new PassInput(all);
  }

  /** What of it the rules that could fire on it can match. */
  PassInput matchedBy(LiveRules live, Kinds kinds) {
    return new PassInput(live.matched(kinds, things));
  }

  private static void add(FactFilter interest, Iterable<?> held, List<Object> things) {
    for (Object one : held) {
      if (interest.sees(one)) {
        things.add(one);
      }
    }
  }

  /** What rules can tell of all of it, in short: the same for two that they cannot tell apart. */
  ByteBuffer digest() {
    MessageDigest digest = InputFile.digest();
    for (Object one : things) {
      String line = line(one);
      digest.update((line.length() + ":" + line).getBytes(StandardCharsets.UTF_8));
    }
    return ByteBuffer.wrap(digest.digest());
  }

  private static String line(Object one) {
    if (one instanceof Fact fact) {
      return fact.name()
          + '\t'
          + fact.about()
          + '\t'
          + fact.text()
          + '\t'
          + Double.doubleToLongBits(fact.number()) // its decimals would take much longer to tell
          + '\t'
          + fact.from();
    }
    if (one instanceof Unknown unknown) {
      return "?" + unknown.name() + '\t' + unknown.about();
    }
    return one.toString();
  }
}
