package underfoot.reasoning;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.function.Function;
import org.drools.model.Model;
import org.drools.model.codegen.ExecutableModelProject;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.definition.KiePackage;
import org.kie.api.definition.rule.Rule;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.RuleNote;
import underfoot.scenario.RuleFiles;

/**
 * The compiled rules. It is safe to share between threads; each question gets a session of its own.
 *
 * <p>The shipped rules were compiled when the program was built. Their model classes are loaded
 * straight by name, which is not documented by the engine but saves compiling them at every start;
 * if that fails, they are compiled afresh.
 */
public final class RuleBase {
  private static final String MODEL_LIST = "/META-INF/kie/underfoot/underfoot/drools-model";
  private final Map<Pass, Future<Loaded>> passes;
  private final PassCache recall;

  private RuleBase(Map<Pass, Future<Loaded>> passes, PassCache recall) {
    this.passes = passes;
    this.recall = recall;
  }

  /**
   * The rules of one pass.
   *
   * @param rules the compiled rules
   * @param interest what they can match at all
   * @param notes what those that fired so far say of themselves, by their names
   */
  record Loaded(KieBase rules, FactFilter interest, Map<String, RuleNote> notes) {
    static Loaded of(Pass pass, KieBase rules) {
      FactFilter interest = FactFilter.of(rules, pass.rulePackage());
      return new Loaded(rules, interest, new ConcurrentHashMap<>());
    }
  }

  /**
   * The same rules with a memory of their own, for comparing one floor with its variants: a pass
   * that can tell no difference is not run again. What it recalls is right in its values, but its
   * reasons may be those of another variant.
   */
  RuleBase remembering() {
    return new RuleBase(passes, new PassCache());
  }

  /**
   * Begins with the floor whose variants will be thought through: until {@link #begun} its sessions
   * are left open for them. One thread may do so, before others come.
   */
  void begin() {
    recall.begin();
  }

  /** The floor was thought through; variants follow. */
  void begun() {
    recall.begun();
  }

  /** What is worked out from facts; with a memory, once for all facts that look the same to it. */
  List<Fact> worked(Object task, Facts facts, Function<Facts, List<Fact>> work) {
    return recall == null ? work.apply(facts) : recall.worked(task, facts, work);
  }

  /** Ends the sessions left open, if any. */
  void end() {
    if (recall != null) {
      recall.end();
    }
  }

  /** All that its passes concluded; empty if it has no memory. */
  List<Object> concluded() {
    return recall == null ? List.of() : recall.all();
  }

  /** Whether it has a memory. */
  boolean remembers() {
    return recall != null;
  }

  /**
   * Loads the rules that came with the program. Loading goes on in the background, the first pass
   * first, and whoever needs a pass waits for it.
   */
  public static RuleBase shipped() {
    Map<Pass, Future<Loaded>> passes = new EnumMap<>(Pass.class);
    List<FutureTask<Loaded>> early = new ArrayList<>();
    List<FutureTask<Loaded>> late = new ArrayList<>();
    for (Pass pass : Pass.values()) {
      FutureTask<Loaded> task = new FutureTask<>(() -> load(pass));
      passes.put(pass, task);
      if (pass != Pass.CHECK) { // seldom wanted: loaded when somebody asks for it
        (pass.compareTo(Pass.LAY) < 0 ? early : late).add(task);
      }
    }
    for (List<FutureTask<Loaded>> tasks : List.of(early, late)) {
      Thread loader = new Thread(() -> tasks.forEach(FutureTask::run), "rule loader");
      loader.setDaemon(true);
      loader.start();
    }
    return new RuleBase(passes, null);
  }

  private static Loaded load(Pass pass) {
    try {
      return Loaded.of(pass, fresh(pass));
    } catch (IOException | ReflectiveOperationException | LinkageError cannotLoadFast) {
      return byTheDocumentedRoad().loaded(pass);
    }
  }

  /** The name of the class that the rules of a pass were compiled to. */
  private static String modelOf(Pass pass) throws IOException, ClassNotFoundException {
    try (InputStream in = RuleBase.class.getResourceAsStream(MODEL_LIST)) {
      if (in == null) {
        throw new IOException("no compiled rules beside the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .map(String::strip)
          .filter(name -> name.startsWith(pass.rulePackage() + "."))
          .findFirst()
          .orElseThrow(() -> new ClassNotFoundException(pass.rulePackage()));
    }
  }

  private Loaded loaded(Pass pass) {
    try {
      Future<Loaded> future = passes.get(pass);
      if (future instanceof FutureTask<Loaded> task && pass == Pass.CHECK) {
        task.run(); // does nothing if it has run
      }
      return future.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while the rules were loading", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("the rules cannot be loaded", e.getCause());
    }
  }

  /** Compiles the rules that came with the program afresh, as the engine's documentation tells. */
  static RuleBase byTheDocumentedRoad() {
    try {
      return compile(RuleFiles.shipped());
    } catch (RuleFaults e) {
      throw new IllegalStateException("the rules that came with the program do not compile", e);
    }
  }

  /**
   * Compiles a person's own copy of the rules.
   *
   * @param files where the rules are
   * @throws RuleFaults if they do not compile, with what is wrong by file and line
   */
  public static RuleBase compile(RuleFiles files) throws RuleFaults {
    Map<Pass, Future<Loaded>> bases = new EnumMap<>(Pass.class);
    List<String> rules = files.list("", ".dslr");
    List<RuleFaults.Fault> faults = new ArrayList<>(RuleText.faults(files, rules));
    if (!faults.isEmpty()) {
      throw new RuleFaults(faults);
    }
    // One file, since the engine reads several in no fixed order and the first sentence wins.
    StringBuilder joined = new StringBuilder();
    for (String path : files.list("vocabulary", ".dsl")) {
      joined.append(RuleText.text(files, path)).append('\n');
    }
    String vocabulary = joined.toString();
    KieServices services = KieServices.get();
    for (Pass pass : Pass.values()) {
      KieFileSystem staged = services.newKieFileSystem();
      staged.generateAndWritePomXML(
          services.newReleaseId("underfoot", "own-" + pass.name().toLowerCase(Locale.ROOT), "1"));
      staged.write("src/main/resources/rules/vocabulary/all.dsl", vocabulary);
      for (String path : rules) {
        String text = RuleText.text(files, path);
        if (RuleText.packageOf(text).equals(pass.rulePackage())) {
          staged.write("src/main/resources/rules/" + path, text);
        }
      }
      KieBuilder builder = services.newKieBuilder(staged).buildAll(ExecutableModelProject.class);
      for (Message message : builder.getResults().getMessages(Message.Level.ERROR)) {
        faults.add(
            new RuleFaults.Fault(
                String.valueOf(message.getPath()), message.getLine(), message.getText()));
      }
      if (faults.isEmpty()) {
        KieBase compiled =
            services.newKieContainer(builder.getKieModule().getReleaseId()).getKieBase();
        bases.put(pass, CompletableFuture.completedFuture(Loaded.of(pass, compiled)));
      }
    }
    if (!faults.isEmpty()) {
      throw new RuleFaults(faults);
    }
    return new RuleBase(bases, null);
  }

  /** What every rule says of itself, in the order of the passes. */
  public List<RuleNote> notes() {
    List<RuleNote> notes = new ArrayList<>();
    for (Pass pass : Pass.values()) {
      for (KiePackage found : loaded(pass).rules().getKiePackages()) {
        if (found.getName().equals(pass.rulePackage())) {
          for (Rule rule : found.getRules()) {
            notes.add(RuleNotes.of(rule));
          }
        }
      }
    }
    return notes;
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
    return PassInput.of(loaded(pass).interest(), held);
  }

  /** The same, and more. */
  PassInput shown(Pass pass, PassInput before, Iterable<?> more) {
    return before.and(loaded(pass).interest(), more);
  }

  /** The same for what was looked through before. */
  List<Object> think(Pass pass, Knowledge knowledge, PassInput shown) {
    if (recall == null) {
      return RuleSession.of(pass, loaded(pass), knowledge, shown.things());
    }
    Map<String, Object> lines = shown.lines();
    List<Object> key = List.of(pass, List.copyOf(lines.keySet()));
    List<Object> known = recall.find(key);
    if (known == null) {
      known = recall.work(pass, loaded(pass), knowledge, lines);
      recall.keep(key, known);
    }
    return known;
  }

  /** The compiled rules of one pass, afresh, for somebody who means to change them. */
  static KieBase fresh(Pass pass) throws IOException, ReflectiveOperationException {
    Model model = (Model) Class.forName(modelOf(pass)).getDeclaredConstructor().newInstance();
    return KieBaseBuilder.createKieBaseFromModel(model);
  }

  /** The same rules but for one pass; its rules may stand in packages beneath the pass's own. */
  RuleBase with(Pass pass, KieBase changed) {
    Map<Pass, Future<Loaded>> bases = new EnumMap<>(passes);
    bases.put(pass, CompletableFuture.completedFuture(Loaded.of(pass, changed)));
    return new RuleBase(bases, null);
  }

  /** Whether rules of a pass might match it. */
  boolean sees(Pass pass, Object one) {
    return loaded(pass).interest().sees(one);
  }
}
