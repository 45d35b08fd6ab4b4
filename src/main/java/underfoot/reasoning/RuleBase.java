package underfoot.reasoning;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.kie.api.KieBase;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.RuleNote;
import underfoot.language.Pass;
import underfoot.language.Rule;
import underfoot.language.RuleFaults;
import underfoot.language.RuleSet;
import underfoot.scenario.RuleFiles;

/**
 * The rules, ready to think with. It is safe to share between threads; each question gets a session
 * of its own.
 */
public final class RuleBase {
  private final FutureTask<RuleSet> set;
  private final Map<Pass, FutureTask<Network>> networks;
  private final PassCache cache;
  private final boolean recalls;

  private RuleBase(
      FutureTask<RuleSet> set,
      Map<Pass, FutureTask<Network>> networks,
      PassCache cache,
      boolean recalls) {
    this.set = set;
    this.networks = networks;
    this.cache = cache;
    this.recalls = recalls;
  }

  /**
   * The rules of one pass.
   *
   * @param rules the engine's network of them
   * @param filter what they can match at all
   * @param live which of them could fire on what is shown
   */
  record Network(KieBase rules, FactFilter filter, LiveRules live) {
    static Network of(List<Rule> rules) {
      FactFilter filter = new FactFilter(rules);
      return new Network(RuleCompiler.compile(rules), filter, new LiveRules(rules, filter));
    }
  }

  private static RuleBase of(FutureTask<RuleSet> set) {
    Map<Pass, FutureTask<Network>> networks = new EnumMap<>(Pass.class);
    for (Pass pass : Pass.values()) {
      networks.put(pass, new FutureTask<>(() -> Network.of(get(set).of(pass))));
    }
    return new RuleBase(set, networks, null, false);
  }

  /** Makes a rule base of rules already read. */
  public static RuleBase of(RuleSet rules) {
    FutureTask<RuleSet> set = new FutureTask<>(() -> rules);
    return of(set);
  }

  /**
   * Loads the rules that came with the program. Loading goes on in the background, the first pass
   * first, and whoever needs a pass waits for it.
   */
  public static RuleBase shipped() {
    RuleBase base = of(new FutureTask<>(() -> RuleSet.read(RuleFiles.shipped())));
    background(() -> List.of(Pass.UNDERSTAND, Pass.PROPOSE).forEach(base::network));
    background(() -> List.of(Pass.LAY, Pass.JUDGE, Pass.ACT, Pass.SETTLE).forEach(base::network));
    return base; // CHECK is seldom wanted: loaded when somebody asks for it
  }

  private static void background(Runnable work) {
    Thread loader = new Thread(work, "rule loader");
    loader.setDaemon(true);
    loader.start();
  }

  /** The rules as they are written, in the order of passes, files and lines. */
  public RuleSet set() {
    return get(set);
  }

  /** What every rule says of itself, in the order of passes, files and lines. */
  public List<RuleNote> notes() {
    return set().rules().stream().map(Rule::note).toList();
  }

  private Network network(Pass pass) {
    return get(networks.get(pass));
  }

  private static <T> T get(FutureTask<T> task) {
    task.run(); // does nothing if it runs or has run
    try {
      return task.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while the rules were loading", e);
    } catch (ExecutionException e) {
      String faults = e.getCause() instanceof RuleFaults told ? ": " + told.getMessage() : "";
      throw new IllegalStateException("the rules cannot be loaded" + faults, e.getCause());
    }
  }

  /** The same rules but for one pass. */
  RuleBase with(Pass pass, List<Rule> changed) {
    Map<Pass, FutureTask<Network>> others = new EnumMap<>(networks);
    others.put(pass, new FutureTask<>(() -> Network.of(changed)));
    return new RuleBase(set, others, null, false);
  }

  /**
   * The same rules with a memory, for comparing one floor with its variants: a pass that can tell
   * no difference is not run again. What it remembers is right in its values, but its reasons may
   * be those of another variant.
   */
  RuleBase remembering() {
    return new RuleBase(set, networks, cache == null ? new PassCache() : cache, true);
  }

  /**
   * The same rules, noting what they conclude of a floor for its variants to remember. Nothing is
   * recalled here, so what is said of the floor has its own reasons, in whichever order its ways
   * are worked out.
   */
  RuleBase noting() {
    return new RuleBase(set, networks, new PassCache(), false);
  }

  /** Whether it has a memory. */
  boolean remembers() {
    return cache != null;
  }

  /** Whether it recalls what it has in its memory. */
  boolean recalls() {
    return recalls;
  }

  /** All that its passes concluded; empty if it has no memory. */
  List<Object> concluded() {
    return cache == null ? List.of() : cache.all();
  }

  /**
   * Lets the rules of one pass conclude all they can.
   *
   * @param pass the pass
   * @param knowledge the figures, wordings and layer kinds they refer to
   * @param given what is known so far: facts, unknowns and earlier conclusions
   * @return what was newly held, facts and conclusions, in the order of conclusion
   */
  public List<Object> think(Pass pass, Knowledge knowledge, Iterable<?> given) {
    return think(pass, knowledge, shown(pass, given));
  }

  /** What a pass is shown of what is held. */
  PassInput shown(Pass pass, Iterable<?> held) {
    return PassInput.of(network(pass).filter(), held);
  }

  /** The same, and more. */
  PassInput shown(Pass pass, PassInput before, Iterable<?> more) {
    return before.and(network(pass).filter(), more);
  }

  /** The same for what was looked through before. */
  List<Object> think(Pass pass, Knowledge knowledge, PassInput shown) {
    Network network = network(pass);
    if (cache == null) {
      return RuleSession.conclude(pass, network, knowledge, shown.things());
    }
    PassInput matched = shown.matchedBy(network.live(), knowledge.kinds());
    return cache.find(
        pass,
        matched.digest(),
        recalls,
        () -> RuleSession.conclude(pass, network, knowledge, matched.things()));
  }

  /** Whether rules of a pass might match it. */
  boolean sees(Pass pass, Object one) {
    return network(pass).filter().sees(one);
  }
}
