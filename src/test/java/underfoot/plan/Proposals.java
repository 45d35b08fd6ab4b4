package underfoot.plan;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import underfoot.buildup.Judgement;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.KnowledgeFault;
import underfoot.knowledge.ProposedKinds;
import underfoot.reasoning.Advisor;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.Floors;
import underfoot.reasoning.ProposalAssessment;
import underfoot.reasoning.ProposalAssessor;
import underfoot.scenario.FactBook;
import underfoot.scenario.RuleFiles;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.ScenarioReader;

/** Proposals for tests: read, judged, and made of build-ups that the rules laid. */
public final class Proposals {
  /** The example proposals. */
  static final Path FOLDER = Path.of("scenarios/proposals");

  private static final FactBook BOOK;
  private static final ProposedKinds KINDS;
  private static final ProposalAssessor EXAMINER;

  static {
    try {
      RuleFiles files = RuleFiles.shipped();
      Knowledge knowledge = Floors.advisor().knowledge();
      BOOK = FactBook.ofProposals(files);
      KINDS = ProposedKinds.load(files, knowledge.layers(), knowledge.steps());
      EXAMINER = new ProposalAssessor(Floors.advisor(), KINDS);
    } catch (ScenarioFaults | KnowledgeFault e) {
      throw new IllegalStateException(e);
    }
  }

  private Proposals() {}

  /** What proposals may say. */
  public static FactBook book() {
    return BOOK;
  }

  /** What people call layers. */
  public static ProposedKinds kinds() {
    return KINDS;
  }

  /** Reads a proposal. */
  public static Scenario read(String name, String yaml) throws ScenarioFaults {
    return new ScenarioReader(BOOK).read(name, yaml.getBytes(StandardCharsets.UTF_8));
  }

  /** Reads a proposal of {@code scenarios/proposals}, or of another folder. */
  public static Scenario read(Path file) throws IOException, ScenarioFaults {
    return new ScenarioReader(BOOK).read(file.toString(), Files.readAllBytes(file));
  }

  /** The example proposals in the order of their names. */
  static List<Path> examples() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  /** What the rules make of a proposal. */
  public static ProposalAssessment examine(Scenario floor, Scenario proposal) {
    return EXAMINER.examine(floor, proposal);
  }

  /** What other rules make of a proposal. */
  public static ProposalAssessment examine(Advisor advisor, Scenario floor, Scenario proposal) {
    return advisor == Floors.advisor()
        ? examine(floor, proposal)
        : new ProposalAssessor(advisor, KINDS).examine(floor, proposal);
  }

  /** What is to be said of a proposal. */
  public static Opinion judge(Scenario floor, Scenario proposal) {
    return OpinionMaker.make(examine(floor, proposal));
  }

  /** The faults, each as {@code layer: rule, rule}. */
  static Set<String> faults(Opinion opinion) {
    return found(opinion, Judgement::isFault);
  }

  /** The same, with what only a limit borrowed from elsewhere speaks against. */
  static Set<String> faultsOrAdvised(Opinion opinion) {
    return found(opinion, one -> one.isFault() || one == Judgement.ADVISED);
  }

  private static Set<String> found(Opinion opinion, Predicate<Judgement> which) {
    Set<String> faults = new TreeSet<>();
    Stream.concat(
            opinion.whole().stream(),
            opinion.layers().stream().flatMap(layer -> layer.items().stream()))
        .filter(item -> which.test(item.judgement()))
        .forEach(
            item ->
                faults.add(
                    (item.layer().isEmpty() ? "whole" : item.layer())
                        + ": "
                        + item.because().get(0).rule().id()));
    return faults;
  }

  /** A build-up as a proposal, as somebody would write it who says everything. */
  static ProposalDraft of(Knowledge knowledge, BuildUp buildUp) {
    ProposalDraft draft = ProposalDraft.of(knowledge, KINDS, buildUp);
    draft.whole().put("pour temperature", "18 C");
    draft.whole().put("laying temperature", "18 C");
    return draft;
  }
}
