package underfoot.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Supplier;
import java.util.stream.Stream;
import underfoot.knowledge.InterviewBook;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.KnowledgeFault;
import underfoot.knowledge.LessonBook;
import underfoot.knowledge.MissingKnowledge;
import underfoot.knowledge.PriceBook;
import underfoot.knowledge.ProposedKinds;
import underfoot.language.Rule;
import underfoot.language.RuleFaults;
import underfoot.language.RuleSet;
import underfoot.lesson.Lesson;
import underfoot.lesson.LessonMaker;
import underfoot.plan.Advice;
import underfoot.plan.AdviceMaker;
import underfoot.plan.ChangeNotes;
import underfoot.plan.Consequences;
import underfoot.plan.FloorsCompared;
import underfoot.plan.Justifier;
import underfoot.plan.Opinion;
import underfoot.plan.OpinionMaker;
import underfoot.plan.Planner;
import underfoot.plan.Refusal;
import underfoot.plan.Refusals;
import underfoot.reasoning.Advisor;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.CoverageGaps;
import underfoot.reasoning.FiredRules;
import underfoot.reasoning.FloorComparison;
import underfoot.reasoning.Interview;
import underfoot.reasoning.LeastChange;
import underfoot.reasoning.Lint;
import underfoot.reasoning.MaterialLookup;
import underfoot.reasoning.ProposalAssessor;
import underfoot.reasoning.RuleBase;
import underfoot.reasoning.RuleCheck;
import underfoot.reasoning.WhatIf;
import underfoot.reasoning.WhyNot;
import underfoot.report.RuleUses;
import underfoot.scenario.FactBook;
import underfoot.scenario.RuleFiles;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.ScenarioReader;
import underfoot.scenario.StatedFact;

/** What commands share: reading files, loading the rule base, and making the advice. */
final class CommandContext {
  /** A scenario read from standard input goes by this name in messages. */
  static final String STANDARD_INPUT = "standard input";

  private static final String PRACTICE = "uk";
  private static final String KIND_OF_LAYER = "layers[].kind";

  /** Largest input that is read before it is refused, in bytes; the reader refuses less. */
  private static final int MOST_READ = 4_000_000;

  private final RuleFiles files;
  private final boolean own;
  private final PrintWriter err;
  private final Supplier<RuleBase> shipped;
  private FactBook facts;
  private Knowledge knowledge;
  private RuleBase compiled;

  /** The rule base that came with the program, or a person's own copy if a folder is given. */
  CommandContext(Path folder, Environment around, PrintWriter err) throws UserError {
    this.own = folder != null;
    this.shipped = around.shipped();
    this.err = err;
    if (own && !Files.isDirectory(folder)) {
      throw UserError.usage(
          Files.exists(folder)
              ? "--rules needs a folder, but " + folder + " is a file"
              : "--rules needs a folder, but there is no " + folder);
    }
    this.files = own ? RuleFiles.of(folder) : RuleFiles.shipped();
  }

  /** The facts that scenarios may state. */
  FactBook facts() throws UserError {
    if (facts == null) {
      try {
        facts = FactBook.load(files);
      } catch (ScenarioFaults e) {
        throw ruleBaseFault(e.text().stripTrailing());
      }
    }
    return facts;
  }

  /** The figures, wordings and so on. */
  Knowledge knowledge() throws UserError {
    if (knowledge == null) {
      FactBook book = facts();
      try {
        knowledge = Knowledge.load(files, book, PRACTICE);
      } catch (KnowledgeFault e) {
        throw ruleBaseFault(e.getMessage());
      }
    }
    return knowledge;
  }

  /** The rules as they stand in their files. */
  List<Rule> ruleTexts() throws UserError {
    return rules().set().rules();
  }

  /**
   * What is wrong with the rule base though it can be used, and which floors it has no answer to.
   */
  List<RuleFaults.Fault> lint() throws UserError {
    Knowledge loaded = knowledge();
    try {
      List<RuleFaults.Fault> faults = new ArrayList<>(Lint.faults(files, loaded));
      if (faults.isEmpty()) {
        faults.addAll(CoverageGaps.faults(advisor(new Planner(loaded.prices()))));
      }
      return faults;
    } catch (KnowledgeFault e) {
      throw ruleBaseFault(e.getMessage());
    }
  }

  /** What tells this rule base from others: the beginning of a digest of its files. */
  String ruleBaseId() {
    return idOf(files);
  }

  /** The same for any rule base. */
  static String idOf(RuleFiles files) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      for (String path : files.all()) {
        digest.update(path.getBytes(StandardCharsets.UTF_8));
        digest.update(files.read(path));
      }
      return HexFormat.of().formatHex(digest.digest(), 0, 6);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Reads a scenario and thinks it through. */
  Advice advise(String name, InputStream in) throws UserError {
    Scenario scenario = scenario(name, content(name, in)); // its faults come before the rules'
    return desk(true).advise(name, scenario);
  }

  /** A place at which one scenario after another is thought through, by several at once. */
  Desk desk(boolean trials) throws UserError {
    return new Desk(knowledge(), rules(), trials, false);
  }

  /** The same for very many: each stays with the thread that asks. */
  Desk deskForMany(boolean trials) throws UserError {
    return new Desk(knowledge(), rules(), trials, true);
  }

  /** What is needed for each scenario, loaded once. Safe to share between threads. */
  final class Desk {
    private final Knowledge loaded;
    private final RuleBase compiled;
    private final boolean trials;
    private final boolean forMany;
    private final Planner planner;

    private Desk(Knowledge loaded, RuleBase compiled, boolean trials, boolean forMany) {
      this.loaded = loaded;
      this.compiled = compiled;
      this.trials = trials;
      this.forMany = forMany;
      this.planner = new Planner(loaded.prices());
    }

    /** Reads a scenario that was already fetched, and advises on it. */
    Advice advise(String name, byte[] content) throws UserError {
      return advise(name, scenario(name, content));
    }

    /** Advises on a scenario that was already read. */
    Advice advise(String name, Scenario scenario) throws UserError {
      Planner here = planner.by(prices(name, scenario, loaded));
      Advisor spread = new Advisor(compiled, loaded, here);
      Advisor once = forMany ? spread.onOneCore() : spread;
      Advisor advisor = trials ? once.remembering() : once;
      return thinking(() -> advice(scenario, here, advisor));
    }

    private Advice advice(Scenario scenario, Planner here, Advisor advisor) {
      Assessment assessment = advisor.advise(scenario);
      Consequences consequences = here.of(assessment, new Justifier(scenario, loaded));
      WhatIf whatIf = new WhatIf(advisor);
      return trials
          ? AdviceMaker.make(
              assessment,
              whatIf.of(assessment),
              whatIf.unsaid(assessment),
              consequences.with(ChangeNotes.of(LeastChange.of(advisor, assessment), here)))
          : AdviceMaker.make(assessment, WhatIf.assumed(assessment), consequences);
    }
  }

  /** What asks about a floor. */
  Interview interview() throws UserError {
    Knowledge loaded = knowledge();
    try {
      InterviewBook order = InterviewBook.load(files, facts());
      return new Interview(advisor(new Planner(loaded.prices())), order);
    } catch (KnowledgeFault e) {
      throw ruleBaseFault(e.getMessage());
    }
  }

  /** The advice on a floor that was asked about. */
  Advice advise(Scenario scenario) throws UserError {
    return desk(true).advise(scenario.file(), scenario);
  }

  /** Compares two floors. */
  FloorsCompared compare(Scenario first, Planner ofFirst, Scenario second, Planner ofSecond)
      throws UserError {
    Advisor advisor = advisor(ofFirst);
    return thinking(
        () -> FloorsCompared.of(FloorComparison.of(advisor, first, second), ofFirst, ofSecond));
  }

  /** Why a material is not what is recommended. */
  Refusal whyNot(String name, InputStream in, String material) throws UserError {
    Scenario scenario = scenario(name, content(name, in));
    Planner planner = planner(name, scenario);
    ProposedKinds kinds = kinds();
    FactBook proposals = proposalBook();
    MaterialLookup words =
        new MaterialLookup(
            knowledge(), ruleTexts(), kinds, proposals.find(KIND_OF_LAYER).orElseThrow());
    MaterialLookup.Meant meant = words.find(material);
    if (meant.isNothing()) {
      throw UserError.usage(
          "No layer and no way of building is called '"
              + Main.cut(material)
              + "'; nearest: "
              + String.join(", ", words.nearest(material)));
    }
    Advisor advisor = advisor(planner);
    WhyNot found = thinking(() -> WhyNot.of(advisor, scenario, meant::isIn));
    Optional<String> called =
        found.standing() == WhyNot.Standing.NOT_ASKED_FOR ? words.called(meant) : Optional.empty();
    Optional<Opinion> opinion = Optional.empty();
    if (called.isPresent()) {
      // No rule lays it on this floor; what rules say against it is found by proposing it.
      String proposal = "proposal: x\nlayers:\n  - {kind: " + called.get() + "}\n";
      Scenario proposed = read(proposals, "", proposal.getBytes(StandardCharsets.UTF_8));
      opinion =
          Optional.of(
              thinking(
                  () ->
                      OpinionMaker.make(
                          new ProposalAssessor(advisor, kinds).examine(scenario, proposed))));
    }
    Optional<Opinion> said = opinion;
    return thinking(() -> Refusals.of(found, material, meant.askedFor(), said, planner));
  }

  private ProposedKinds kinds() throws UserError {
    try {
      return ProposedKinds.load(files, knowledge().layers(), knowledge().steps());
    } catch (KnowledgeFault e) {
      throw ruleBaseFault(e.getMessage());
    }
  }

  /** What works out a scenario's amounts, times and cost by the price book it names. */
  Planner planner(String name, Scenario scenario) throws UserError {
    return new Planner(prices(name, scenario, knowledge()));
  }

  private Advisor advisor(Planner planner) throws UserError {
    Knowledge loaded = knowledge();
    return new Advisor(rules(), loaded, planner);
  }

  private <T> T thinking(Supplier<T> thought) throws UserError {
    try {
      return thought.get();
    } catch (MissingKnowledge e) {
      throw ruleBaseFault(e.getMessage());
    }
  }

  /** Reads a scenario and makes a lesson of it; with a seed, a variant with other numbers. */
  Lesson lesson(String name, InputStream in, OptionalLong seed) throws UserError {
    Scenario scenario = scenario(name, content(name, in));
    Knowledge loaded = knowledge();
    PriceBook prices = prices(name, scenario, loaded);
    Advisor advisor = new Advisor(rules(), loaded, new Planner(prices));
    try {
      return new LessonMaker(advisor, LessonBook.load(files), prices).make(scenario, seed);
    } catch (KnowledgeFault | MissingKnowledge e) {
      throw ruleBaseFault(e.getMessage());
    }
  }

  /** Which scenarios of a folder, and which lessons on them, use which rules. */
  RuleUses uses(Path folder) throws UserError {
    if (!Files.isDirectory(folder)) {
      throw UserError.usage("--scenarios needs a folder, but " + folder + " is none");
    }
    List<Path> found;
    try (Stream<Path> all = Files.list(folder)) {
      found = all.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    } catch (IOException e) {
      throw UserError.usage(folder + " cannot be read");
    }
    Knowledge loaded = knowledge();
    RuleBase base = rules();
    RuleUses uses = new RuleUses();
    try {
      LessonBook book = LessonBook.load(files);
      for (Path file : found) {
        Scenario scenario =
            scenario(file.toString(), content(file.toString(), InputStream.nullInputStream()));
        PriceBook prices = prices(file.toString(), scenario, loaded);
        Advisor advisor = new Advisor(base, loaded, new Planner(prices));
        Lesson lesson = new LessonMaker(advisor, book, prices).make(scenario, OptionalLong.empty());
        uses.add(scenario.name(), FiredRules.of(advisor.advise(scenario)), lesson.rules());
      }
    } catch (KnowledgeFault | MissingKnowledge e) {
      throw ruleBaseFault(e.getMessage());
    }
    return uses;
  }

  /**
   * Reads a scenario and a proposal and judges the proposal. What is wrong with either file is told
   * at once.
   */
  Opinion check(String name, String proposalName, InputStream in) throws UserError {
    byte[] content = content(name, in);
    byte[] proposed = content(proposalName, in);
    FactBook book = proposalBook();
    Scenario scenario = null;
    Scenario proposal = null;
    StringBuilder wrong = new StringBuilder();
    try {
      scenario = scenario(name, content);
    } catch (UserError userError) {
      if (userError.exit() != Exit.SCENARIO_INVALID) {
        throw userError;
      }
      wrong.append(userError.getMessage()).append('\n');
    }
    try {
      proposal = read(book, proposalName, proposed);
    } catch (UserError userError) {
      wrong.append(userError.getMessage());
    }
    if (!wrong.isEmpty()) {
      throw new UserError(Exit.SCENARIO_INVALID, wrong.toString().stripTrailing());
    }
    ProposedKinds kinds = kinds();
    Advisor advisor = advisor(planner(name, scenario));
    Scenario floor = scenario;
    Scenario meant = proposal;
    return thinking(
        () -> OpinionMaker.make(new ProposalAssessor(advisor, kinds).examine(floor, meant)));
  }

  /** What proposals may say. */
  FactBook proposalBook() throws UserError {
    try {
      return FactBook.ofProposals(files);
    } catch (ScenarioFaults e) {
      throw ruleBaseFault(e.text().stripTrailing());
    }
  }

  /**
   * The price book that the scenario names: the demonstration one, or a file beside the scenario.
   */
  private static PriceBook prices(String name, Scenario scenario, Knowledge loaded)
      throws UserError {
    StatedFact named = scenario.find("budget.prices").orElse(null);
    if (named == null || !named.known() || named.text().equals("price-book")) {
      return loaded.prices();
    }
    String place = name + ":" + named.line() + ":" + named.column() + ": ";
    try {
      Path beside = name.equals("-") ? null : Path.of(name).toAbsolutePath().getParent();
      Path file = beside == null ? Path.of(named.text()) : beside.resolve(named.text());
      if (!Files.isRegularFile(file) || Files.size(file) > MOST_READ) {
        throw new NoSuchFileException(named.text());
      }
      return PriceBook.own(named.text(), Files.readAllBytes(file));
    } catch (IOException | InvalidPathException e) {
      throw new UserError(
          Exit.SCENARIO_INVALID,
          place
              + "there is no price book '"
              + named.text()
              + "' beside the scenario\n  write: prices: price-book, for the demonstration one");
    } catch (KnowledgeFault e) {
      throw new UserError(
          Exit.SCENARIO_INVALID, place + "this price book cannot be used\n  " + e.getMessage());
    }
  }

  /** The rules; one's own are looked through first, so that none is off without a word. */
  private RuleBase rules() throws UserError {
    if (!own) {
      return shipped.get();
    }
    if (compiled == null) {
      List<RuleFaults.Fault> faults = new ArrayList<>();
      RuleSet read = RuleSet.read(files, faults);
      faults.addAll(RuleCheck.faults(read, knowledge()));
      if (!faults.isEmpty()) {
        throw ruleBaseFault(new RuleFaults(faults).getMessage());
      }
      compiled = RuleBase.of(read);
    }
    return compiled;
  }

  /** Reads a scenario that was already fetched. */
  Scenario scenario(String name, byte[] content) throws UserError {
    return read(facts(), name, content);
  }

  private static Scenario read(FactBook book, String name, byte[] content) throws UserError {
    try {
      return new ScenarioReader(book).read(name.equals("-") ? STANDARD_INPUT : name, content);
    } catch (ScenarioFaults e) {
      throw new UserError(Exit.SCENARIO_INVALID, e.text().stripTrailing());
    }
  }

  /** A fault of a person's own rules is theirs to mend; one of ours is an internal error. */
  private UserError ruleBaseFault(String what) {
    return own
        ? new UserError(Exit.SCENARIO_INVALID, "The rules cannot be used as they stand.\n" + what)
        : new UserError(Exit.INTERNAL, "The rule base of this program is at fault.\n" + what);
  }

  /** The bytes of a file, or of standard input if the name is {@code -}. */
  static byte[] content(String name, InputStream in) throws UserError {
    try {
      if (name.equals("-")) {
        return in.readNBytes(MOST_READ);
      }
      Path path = Path.of(name);
      if (Files.isDirectory(path)) {
        throw UserError.usage(name + " is a folder; give a scenario file");
      }
      try (InputStream file = Files.newInputStream(path)) {
        return file.readNBytes(MOST_READ);
      }
    } catch (NoSuchFileException | InvalidPathException e) {
      throw UserError.usage("There is no file " + name);
    } catch (AccessDeniedException e) {
      throw UserError.usage(name + " may not be read; look at who owns it");
    } catch (IOException | UncheckedIOException e) {
      throw UserError.usage(name + " cannot be read");
    }
  }
}
