package underfoot.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import underfoot.knowledge.ProposedKinds;
import underfoot.plan.Opinion;
import underfoot.plan.OpinionMaker;
import underfoot.reasoning.Advisor;
import underfoot.reasoning.ProposalAssessor;
import underfoot.report.JsonReport;
import underfoot.report.OpinionText;
import underfoot.report.TextPage;
import underfoot.scenario.FactBook;
import underfoot.scenario.Scenario;

/** {@code check SCENARIO PROPOSAL}: a build-up somebody has in mind, judged layer by layer. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Judges a build-up you have in mind, layer by layer and as a whole.",
    footer = {
      "",
      "A proposal lists its layers from the bottom up; see scenarios/proposals.",
      "Exit codes: 0 no fault, 5 faults stand, 2 wrong usage, 3 a file has faults, 1 internal"
          + " error."
    })
final class Check extends FloorCommand {
  @Parameters(
      index = "0",
      paramLabel = "SCENARIO",
      description = "The scenario file, or - for standard input.")
  private String scenario;

  @Parameters(
      index = "1",
      paramLabel = "PROPOSAL",
      description = "The proposal file, or - for standard input.")
  private String proposal;

  @Mixin private Options.Json json;

  Check(Environment around) {
    super(around);
  }

  @Override
  public Integer call() throws UserError {
    TextPage page = page();
    CommandContext context = context();
    if (scenario.equals("-") && proposal.equals("-")) {
      throw UserError.usage("only one of scenario and proposal can come from standard input");
    }
    Opinion opinion = opinion(context);
    if (json.wanted) {
      JsonReport.write(opinion, context.madeBy(), out());
      out().println();
    } else {
      OpinionText.write(opinion, context.phrases(), page);
      out().page(page);
    }
    return opinion.faults() == 0 ? Exit.FINE : Exit.FAULTS_FOUND;
  }

  /** Reads both files and judges the proposal. What is wrong with either is told at once. */
  private Opinion opinion(CommandContext context) throws UserError {
    byte[] floor = context.inputs().read(scenario);
    byte[] meant = context.inputs().read(proposal);
    StringBuilder wrong = new StringBuilder();
    Scenario read = read(context.facts(), scenario, floor, wrong);
    Scenario proposed = read(context.proposalFacts(), proposal, meant, wrong);
    if (!wrong.isEmpty()) {
      throw new UserError(Exit.SCENARIO_INVALID, wrong.toString().stripTrailing());
    }
    Advisor advisor = context.advisor(context.planner(read));
    return judged(context, advisor, read, proposed);
  }

  private static Scenario read(FactBook book, String name, byte[] content, StringBuilder wrong) {
    try {
      return CommandContext.read(book, name, content);
    } catch (UserError userError) {
      wrong.append(userError.getMessage()).append('\n');
      return null;
    }
  }

  /** Judges a proposal for a floor. */
  static Opinion judged(CommandContext context, Advisor advisor, Scenario floor, Scenario proposed)
      throws UserError {
    ProposedKinds kinds = context.kinds();
    return context.byRules(
        () -> OpinionMaker.make(new ProposalAssessor(advisor, kinds).examine(floor, proposed)));
  }
}
