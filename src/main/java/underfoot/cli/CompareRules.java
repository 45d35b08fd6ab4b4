package underfoot.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import underfoot.knowledge.Phrases;
import underfoot.plan.Planner;
import underfoot.reasoning.Advisor;
import underfoot.reasoning.RulesCompared;
import underfoot.report.JsonReport;
import underfoot.report.TextPage;
import underfoot.report.TextPage.Tone;
import underfoot.scenario.Scenario;

/** {@code compare-rules RULES FLOORS}: what two rule bases decide otherwise. */
@Command(
    name = "compare-rules",
    mixinStandardHelpOptions = true,
    description = {
      "Two rule bases side by side: which rules and figures differ, and which decision on which",
      "floor that moves. The second is your own copy; the first the one in use: the shipped one, or"
          + " --rules."
    })
final class CompareRules extends RuleCommand {
  @Parameters(index = "0", paramLabel = "RULES", description = "Your own copy of the rules folder.")
  private Path changed;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "FLOORS",
      description = "Scenario files, and folders of them.")
  private List<String> floors;

  @Mixin private Options.Json json;

  CompareRules(Environment around) {
    super(around);
  }

  @Override
  public Integer call() throws UserError {
    TextPage page = page();
    CommandContext before = context();
    CommandContext after = new CommandContext(changed, null, around());
    List<Scenario> read = new ArrayList<>();
    for (String name : floors) {
      for (String file : files(name)) {
        read.add(before.scenario(file));
      }
    }
    Advisor first = before.advisor(new Planner(before.knowledge().prices()));
    Advisor second = after.advisor(new Planner(after.knowledge().prices()));
    RulesCompared compared = after.byRules(() -> RulesCompared.of(first, second, read));
    if (json.wanted) {
      JsonReport.write(compared, out());
      out().println();
    } else {
      write(compared, before.phrases(), page);
      out().page(page);
    }
    return Exit.FINE;
  }

  private static List<String> files(String name) throws UserError {
    try {
      Path path = Path.of(name);
      if (!Files.isDirectory(path)) {
        return List.of(name);
      }
      try (Stream<Path> all = Files.list(path)) {
        return all.map(Path::toString).filter(one -> one.endsWith(".yaml")).sorted().toList();
      }
    } catch (IOException | InvalidPathException e) {
      throw UserError.usage(Main.cut(name) + " cannot be read");
    }
  }

  private static void write(RulesCompared compared, Phrases phrases, TextPage page) {
    page.heading(phrases.say("compare-rules-differ"));
    List<RulesCompared.Changed> all = new ArrayList<>(compared.rules());
    all.addAll(compared.figures());
    for (RulesCompared.Changed one : all) {
      String phrase =
          one.was().isEmpty()
              ? "compare-rules-added"
              : one.is().isEmpty() ? "compare-rules-gone" : "compare-rules-changed";
      page.item(phrases.say(phrase, "id", one.id(), "was", one.was(), "is", one.is()));
    }
    if (all.isEmpty()) {
      page.para(phrases.say("compare-rules-same"));
    }
    for (RulesCompared.OfFloor floor : compared.floors()) {
      page.heading(floor.floor());
      for (RulesCompared.Decided one : floor.decisions()) {
        page.para(" - ", "   ", one.what(), Tone.BOLD);
        one.noLonger().forEach((id, why) -> told("lesson-no-longer", id, why, phrases, page));
        one.newly().forEach((id, why) -> told("lesson-newly", id, why, phrases, page));
        if (!one.figures().isEmpty()) {
          String names = String.join(", ", one.figures());
          page.para("   ", "   ", phrases.say("compare-rules-figures", "names", names), Tone.PLAIN);
        }
      }
    }
    page.blank();
    page.para(
        phrases.say(
            "compare-rules-alike",
            "alike",
            Integer.toString(compared.alike()),
            "otherwise",
            Integer.toString(compared.floors().size())));
  }

  private static void told(String phrase, String id, String why, Phrases phrases, TextPage page) {
    page.para("   ", "   ", phrases.say(phrase, "reason", why, "rule", id), Tone.PLAIN);
  }
}
