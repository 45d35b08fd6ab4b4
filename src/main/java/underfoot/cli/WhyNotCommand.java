package underfoot.cli;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import underfoot.knowledge.Derivation;
import underfoot.plan.ChosenOtherwise;
import underfoot.plan.Opinion;
import underfoot.plan.Planner;
import underfoot.plan.Refusal;
import underfoot.plan.Refusals;
import underfoot.plan.TriedInPlace;
import underfoot.reasoning.Advisor;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.LayersBeside;
import underfoot.reasoning.MaterialLookup;
import underfoot.reasoning.WhyNot;
import underfoot.report.JsonReport;
import underfoot.report.TextPage;
import underfoot.report.WhyNotReport;
import underfoot.scenario.FactBook;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;

/** {@code why-not SCENARIO MATERIAL}: why something else is not what is recommended. */
@Command(
    name = "why-not",
    mixinStandardHelpOptions = true,
    description = {
      "Why something else is not recommended.",
      "Of a material or a way of building it tells the nearest build-up with it, the rule that",
      "refused it, the fact it failed on, and the smallest change that would let it in."
    })
final class WhyNotCommand extends FloorCommand {
  @Parameters(
      index = "0",
      paramLabel = "SCENARIO",
      description = "The scenario file, or - for standard input.")
  private String scenario;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "MATERIAL",
      description = "A material, a layer or a way of building, in the words of the trade.")
  private String[] material;

  @Mixin private Options.Json json;

  WhyNotCommand(Environment around) {
    super(around);
  }

  @Override
  public Integer call() throws UserError {
    TextPage page = page();
    CommandContext context = context();
    Refusal refusal = refusal(context, context.scenario(scenario), String.join(" ", material));
    if (json.wanted) {
      JsonReport.write(refusal, out());
      out().println();
    } else {
      WhyNotReport.write(refusal, context.phrases(), page);
      out().page(page);
    }
    return Exit.FINE;
  }

  private static Refusal refusal(CommandContext context, Scenario floor, String material)
      throws UserError {
    Planner planner = context.planner(floor);
    FactBook proposals = context.proposalFacts();
    MaterialLookup words =
        new MaterialLookup(
            context.knowledge(), context.rules().set().rules(), context.kinds(), proposals);
    MaterialLookup.Meant meant = words.find(material);
    if (meant.isNothing()) {
      throw UserError.usage(
          "No layer and no way of building is called '"
              + Main.cut(material)
              + "'; nearest: "
              + String.join(", ", words.nearest(material))
              + ". Another value of something else is tried by compare --with KEY=VALUE.");
    }
    if (!meant.mayBe().isEmpty()) {
      throw UserError.usage(
          "'"
              + Main.cut(material)
              + "' may mean several things: "
              + String.join(", ", meant.mayBe())
              + "; ask for one of them");
    }
    Advisor advisor = context.advisor(planner);
    if (meant.fact().isPresent()) {
      return otherwise(context, floor, advisor, material, meant.fact().get());
    }
    WhyNot whole = context.byRules(() -> WhyNot.of(advisor, floor, words.in(meant)));
    WhyNot found =
        meant.grade().isPresent()
            ? context.byRules(
                () ->
                    WhyNot.ofClass(
                        advisor, whole, List.copyOf(meant.layers()), meant.grade().get().grade()))
            : whole;
    boolean tried =
        found.standing() == WhyNot.Standing.NOT_ASKED_FOR || found.standing().isOtherClass();
    Optional<String> called = tried ? words.called(meant) : Optional.empty();
    Optional<BuildUp> chosen = found.assessment().chosen();
    Optional<Opinion> said = Optional.empty();
    if (called.isPresent() && chosen.isPresent()) {
      // No rule lays it so on this floor; what rules say of it there is found by proposing it.
      LayersBeside beside = new LayersBeside(advisor.rules(), advisor.knowledge());
      Optional<String> grade = meant.grade().map(MaterialLookup.OfClass::grade);
      TriedInPlace inPlace =
          context.byRules(
              () ->
                  TriedInPlace.of(
                      advisor.knowledge(),
                      context.kinds(),
                      beside,
                      chosen.get(),
                      called.get(),
                      grade));
      byte[] proposal = inPlace.yaml().getBytes(StandardCharsets.UTF_8);
      Scenario proposed = CommandContext.read(proposals, "", proposal);
      said = Optional.of(inPlace.ofIt(Check.judged(context, advisor, floor, proposed)));
    }
    Optional<Opinion> opinion = said;
    List<Derivation> laid = found.nearest().map(one -> words.because(one, meant)).orElse(List.of());
    return context.byRules(
        () ->
            Refusals.of(
                found,
                material,
                found.standing().isOfClass() ? List.of() : meant.askedFor(),
                laid,
                opinion,
                planner));
  }

  /** What comes of another value of what is chosen like a material. */
  private static Refusal otherwise(
      CommandContext context,
      Scenario floor,
      Advisor advisor,
      String material,
      MaterialLookup.OfFact asked)
      throws UserError {
    try {
      Scenario changed = floor.with(asked.fact().key(), "", asked.value());
      return context.byRules(
          () -> ChosenOtherwise.of(advisor.remembering(), floor, changed, material, asked));
    } catch (ScenarioFaults faults) {
      throw UserError.usage(faults.text().stripTrailing());
    }
  }
}
