package underfoot.cli;

import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.function.Supplier;
import underfoot.knowledge.Figures;
import underfoot.knowledge.InterviewBook;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.KnowledgeFault;
import underfoot.knowledge.LessonBook;
import underfoot.knowledge.MissingKnowledge;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.PriceBook;
import underfoot.knowledge.ProposedKinds;
import underfoot.language.RuleFaults;
import underfoot.language.RuleForm;
import underfoot.language.RuleSet;
import underfoot.lesson.LessonMaker;
import underfoot.lesson.Workshop;
import underfoot.plan.Advice;
import underfoot.plan.Planner;
import underfoot.reasoning.Advisor;
import underfoot.reasoning.CoverageGaps;
import underfoot.reasoning.Interview;
import underfoot.reasoning.Lint;
import underfoot.reasoning.NeighbourGaps;
import underfoot.reasoning.RuleBase;
import underfoot.reasoning.RuleCheck;
import underfoot.report.MadeBy;
import underfoot.scenario.FactBook;
import underfoot.scenario.InputFile;
import underfoot.scenario.RuleFiles;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.ScenarioReader;
import underfoot.scenario.StatedFact;
import underfoot.talk.Conversation;

/** What commands share: the rule base, loaded as far as it is needed, and the files in and out. */
final class CommandContext {
  private static final String STANDARD_INPUT = "standard input";
  private static final String PRACTICE = "uk";

  private final RuleFiles files;
  private final boolean own;
  private final String pricesSaid;
  private final Supplier<RuleBase> shipped;
  private final Inputs inputs;
  private FactBook facts;
  private Knowledge knowledge;
  private RuleBase compiled;
  private PriceBook prices;
  private Conversation conversation;

  /**
   * @param folder a person's own copy of the rules; null for those that came with the program
   * @param prices the price book to reckon by; null for the one that a scenario names
   * @param around the outside
   * @throws UserError if there is no such folder
   */
  CommandContext(Path folder, String prices, Environment around) throws UserError {
    this.own = folder != null;
    this.pricesSaid = prices;
    this.shipped = around.shipped();
    this.inputs = new Inputs(around.in());
    if (own && !Files.isDirectory(folder)) {
      throw UserError.usage(
          Files.exists(folder)
              ? "--rules needs a folder, but " + folder + " is a file"
              : "--rules needs a folder, but there is no " + folder);
    }
    if (own) {
      inputs.add(folder);
    }
    this.files = own ? RuleFiles.of(folder) : RuleFiles.shipped();
  }

  /** What is read. */
  Inputs inputs() {
    return inputs;
  }

  /** A file to write; what is read is not written over. */
  OutputFile output(String name, boolean replace) throws UserError {
    return new OutputFile(name, replace, inputs);
  }

  /** Something that may find the rules at fault. */
  interface ByRules<T> {
    T get() throws ScenarioFaults, KnowledgeFault, RuleFaults, UserError;
  }

  /**
   * Does something with the rules. Where it finds them at fault, that is told: a person's own rules
   * are theirs to mend; a fault of ours is an internal error.
   */
  <T> T byRules(ByRules<T> what) throws UserError {
    String fault;
    try {
      return what.get();
    } catch (ScenarioFaults e) {
      fault = e.text().stripTrailing();
    } catch (KnowledgeFault | RuleFaults | MissingKnowledge | UncheckedIOException e) {
      fault = e.getMessage();
    }
    throw own
        ? new UserError(Exit.SCENARIO_INVALID, "The rules cannot be used as they stand.\n" + fault)
        : new UserError(Exit.INTERNAL, "The rule base of this program is at fault.\n" + fault);
  }

  /** The facts that scenarios may state. */
  FactBook facts() throws UserError {
    if (facts == null) {
      facts = byRules(() -> FactBook.load(files));
    }
    return facts;
  }

  /** What proposals may say. */
  FactBook proposalFacts() throws UserError {
    return byRules(() -> FactBook.ofProposals(files));
  }

  /** The figures, wordings and so on. */
  Knowledge knowledge() throws UserError {
    if (knowledge == null) {
      knowledge = byRules(() -> Knowledge.load(files, facts(), PRACTICE));
    }
    return knowledge;
  }

  /** The phrase book. */
  Phrases phrases() throws UserError {
    return new Phrases(knowledge().wording());
  }

  /** What people call layers. */
  ProposedKinds kinds() throws UserError {
    return byRules(() -> ProposedKinds.load(files, knowledge().layers(), knowledge().steps()));
  }

  /** What lessons are made of. */
  LessonBook lessons() throws UserError {
    return byRules(() -> LessonBook.load(files));
  }

  /** Who makes lessons on floors of one price book. */
  LessonMaker lessonMaker(Scenario scenario) throws UserError {
    PriceBook priced = prices(scenario);
    return new LessonMaker(
        new Workshop(advisor(new Planner(priced)), lessons(), priced, kinds(), proposalFacts()));
  }

  /** A file that comes with the rules. */
  byte[] ruleFile(String name) throws UserError {
    if (!files.all().contains(name)) {
      throw UserError.usage("The rules have no file " + name);
    }
    return files.read(name);
  }

  /** The rules as they stand in their files. */
  List<RuleForm> ruleTexts() throws UserError {
    return rules().set().forms();
  }

  /** What asks about a floor. */
  Conversation conversation() throws UserError {
    if (conversation == null) {
      InterviewBook order = byRules(() -> InterviewBook.load(files, facts()));
      Interview interview = new Interview(advisor(new Planner(knowledge().prices())), order);
      Phrases words = phrases();
      conversation = byRules(() -> new Conversation(interview, words));
    }
    return conversation;
  }

  private List<RuleFaults.Fault> unitFaults() throws KnowledgeFault, UserError {
    return RuleCheck.unitFaults(
        files, knowledge().figures(), Figures.load(RuleFiles.shipped(), PRACTICE));
  }

  /**
   * What is wrong with the rule base though it can be used, and which floors it has no answer to.
   */
  List<RuleFaults.Fault> lint() throws UserError {
    Knowledge loaded = knowledge();
    return byRules(
        () -> {
          List<RuleFaults.Fault> faults = new ArrayList<>(Lint.faults(files, loaded));
          faults.addAll(unitFaults());
          if (faults.isEmpty()) {
            faults.addAll(CoverageGaps.faults(advisor(new Planner(loaded.prices()))));
            faults.addAll(NeighbourGaps.faults(rules(), loaded));
          }
          return faults;
        });
  }

  /** The program and its rules, with a word of warning where these are somebody's own. */
  MadeBy madeBy() throws UserError {
    return new MadeBy(Version.of(), idOf(files), notice());
  }

  /** What a reader must be told first of rules that did not come with the program; else empty. */
  String notice() throws UserError {
    if (!own) {
      return "";
    }
    String id = idOf(files);
    String shipped = idOf(RuleFiles.shipped());
    return id.equals(shipped)
        ? ""
        : phrases().say("changed-rules", "rules", id, "shipped", shipped);
  }

  /** What tells a rule base from others: the beginning of a digest of its files. */
  static String idOf(RuleFiles files) {
    MessageDigest digest = InputFile.digest();
    for (String path : files.all()) {
      digest.update(path.getBytes(StandardCharsets.UTF_8));
      digest.update(files.read(path));
    }
    return HexFormat.of().formatHex(digest.digest(), 0, 6);
  }

  /** The rules; one's own are looked through first, so that none is off without a word. */
  RuleBase rules() throws UserError {
    if (!own) {
      return shipped.get();
    }
    if (compiled == null) {
      compiled =
          byRules(
              () -> {
                List<RuleFaults.Fault> faults = new ArrayList<>();
                RuleSet read = RuleSet.read(files, faults);
                faults.addAll(RuleCheck.faults(read, knowledge()));
                faults.addAll(unitFaults());
                if (!faults.isEmpty()) {
                  throw new RuleFaults(faults);
                }
                return RuleBase.of(read);
              });
    }
    return compiled;
  }

  /** Who thinks floors through. */
  Advisor advisor(Planner planner) throws UserError {
    return new Advisor(rules(), knowledge(), planner);
  }

  /** A place at which one scenario after another is thought through, by several at once. */
  Desk desk(boolean trials) throws UserError {
    return new Desk(this, trials, false);
  }

  /** The same for very many: each stays with the thread that asks. */
  Desk deskForMany(boolean trials) throws UserError {
    return new Desk(this, trials, true);
  }

  /** Thinks a floor through. */
  Advice advise(Scenario scenario) throws UserError {
    return desk(true).advise(scenario);
  }

  /** Reads a scenario. */
  Scenario scenario(String name) throws UserError {
    return scenario(name, inputs.read(name));
  }

  /** Reads a scenario that was already fetched. */
  Scenario scenario(String name, byte[] content) throws UserError {
    return read(facts(), name, content);
  }

  /** Reads a scenario or a proposal that was already fetched. */
  static Scenario read(FactBook book, String name, byte[] content) throws UserError {
    try {
      return new ScenarioReader(book).read(name.equals("-") ? STANDARD_INPUT : name, content);
    } catch (ScenarioFaults e) {
      throw UserError.in(e);
    }
  }

  /** What works out a scenario's amounts, times and cost. */
  Planner planner(Scenario scenario) throws UserError {
    return new Planner(prices(scenario));
  }

  /**
   * The price book to reckon by: the one the command line names, else the one the scenario names,
   * which lies beside it or below it, else the demonstration one.
   */
  PriceBook prices(Scenario scenario) throws UserError {
    if (pricesSaid != null) {
      return pricesSaid();
    }
    StatedFact named = scenario.find("budget.prices").orElse(null);
    if (named == null || !named.known() || named.text().equals("price-book")) {
      return knowledge().prices();
    }
    String name = named.text();
    String place = scenario.file() + ":" + named.line() + ":" + named.column() + ": ";
    byte[] content =
        inputs
            .beside(scenario.file(), name)
            .orElseThrow(
                () ->
                    new UserError(
                        Exit.SCENARIO_INVALID,
                        place
                            + ("there is no price book '" + name + "' beside the scenario or below")
                            + " it; another is named on the command line: --prices FILE\n"
                            + "  write: prices: price-book, for the demonstration one"));
    return prices(name, content, place);
  }

  private synchronized PriceBook pricesSaid() throws UserError {
    if (prices == null) {
      prices = prices(pricesSaid, inputs.read(pricesSaid), "--prices: ");
    }
    return prices;
  }

  private PriceBook prices(String name, byte[] content, String place) throws UserError {
    try {
      return PriceBook.own(name, content, knowledge().materials());
    } catch (KnowledgeFault e) {
      throw new UserError(
          Exit.SCENARIO_INVALID,
          place + "this price book cannot be used\n" + e.getMessage().indent(2).stripTrailing());
    }
  }
}
