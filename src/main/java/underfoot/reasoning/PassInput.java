package underfoot.reasoning;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.List;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Unknown;
import underfoot.scenario.InputFile;

/**
 * What a pass is shown: all that its rules can match. What is held of a floor is looked through
 * once, and each way of building adds its own. Safe to share between threads.
 */
final class PassInput {
  private final List<Object> things;

  /** Of all things; never fed again once it stands here. Null until it is asked for. */
  private volatile MessageDigest told;

  private PassInput(List<Object> things, MessageDigest told) {
    this.things = things;
    this.told = told;
  }

  /** What a pass can match of what is held. */
  static PassInput of(FactFilter interest, Iterable<?> held) {
    List<Object> things = new ArrayList<>();
    add(interest, held, things);
    return new PassInput(things, null);
  }

  /** The same, and what the pass can match of more. */
  PassInput and(FactFilter interest, Iterable<?> more) {
    List<Object> own = new ArrayList<>();
    add(interest, more, own);
    List<Object> all = new ArrayList<>(things);
    all.addAll(own);
    return new PassInput(all, told == null ? null : tell(copy(told), own));
  }

  private static void add(FactFilter interest, Iterable<?> held, List<Object> things) {
    for (Object one : held) {
      if (interest.sees(one)) {
        things.add(one);
      }
    }
  }

  /** All of it, in the order it came. */
  List<Object> things() {
    return things;
  }

  /** What rules can tell of all of it, in short: the same for two that they cannot tell apart. */
  ByteBuffer digest() {
    if (told == null) {
      told = tell(InputFile.digest(), things);
    }
    return ByteBuffer.wrap(copy(told).digest());
  }

  private static MessageDigest copy(MessageDigest digest) {
    try {
      return (MessageDigest) digest.clone();
    } catch (CloneNotSupportedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static MessageDigest tell(MessageDigest digest, List<Object> things) {
    for (Object one : things) {
      String line = line(one);
      digest.update((line.length() + ":" + line).getBytes(StandardCharsets.UTF_8));
    }
    return digest;
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
