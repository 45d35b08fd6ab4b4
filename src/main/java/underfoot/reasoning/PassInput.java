package underfoot.reasoning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Unknown;

/**
 * What a pass is shown: all that its rules can match. What is held of a floor is looked through
 * once, and each way of building adds its own. Safe to share between threads.
 */
final class PassInput {
  private final List<Object> things;
  private volatile Map<String, Object> lines;

  private PassInput(List<Object> things, Map<String, Object> lines) {
    this.things = things;
    this.lines = lines;
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
    Map<String, Object> known = lines;
    return new PassInput(all, known == null ? null : lines(known, own));
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

  /** Each thing by what rules can tell of it. */
  Map<String, Object> lines() {
    Map<String, Object> told = lines;
    if (told == null) {
      told = lines(Map.of(), things);
      lines = told;
    }
    return told;
  }

  private static Map<String, Object> lines(Map<String, Object> before, List<Object> more) {
    Map<String, Object> lines = new LinkedHashMap<>(before);
    for (Object one : more) {
      String line = line(one);
      String once = line;
      for (int i = 2; lines.putIfAbsent(line, one) != null; i++) {
        line = once + '\t' + i;
      }
    }
    return lines;
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
