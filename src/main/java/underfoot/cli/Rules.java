package underfoot.cli;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import underfoot.knowledge.Knowledge;
import underfoot.lesson.Lesson;
import underfoot.lesson.LessonMaker;
import underfoot.quantity.Nearest;
import underfoot.quantity.Words;
import underfoot.reasoning.Advisor;
import underfoot.reasoning.FiredRules;
import underfoot.reasoning.LayersBeside;
import underfoot.report.BesideReport;
import underfoot.report.PromisesText;
import underfoot.report.RuleUses;
import underfoot.report.RulesBook;
import underfoot.report.RulesReport;
import underfoot.report.TextPage;
import underfoot.scenario.Scenario;

/** {@code rules [ID]}: the rule base as pages. */
@Command(
    name = "rules",
    mixinStandardHelpOptions = true,
    description = {
      "The rule base: every rule by its file, or the page of one rule, figure, layer, text or source."
    })
final class Rules extends FloorCommand {
  @Parameters(
      index = "0..*",
      arity = "0..*",
      paramLabel = "ID",
      description = "The id of a rule, figure, layer, text or source.")
  private List<String> ids = List.of();

  @Mixin private Options.Json json;

  @Option(names = "--by", paramLabel = "WHAT", description = "List rules by theme or by source.")
  private Index by = Index.THEME;

  @Mixin private Options.Page html;

  @Option(
      names = "--scenarios",
      paramLabel = "DIR",
      description = "Tell which scenarios of a folder, and which lessons on them, use a rule.")
  private Path scenarios;

  @Option(
      names = "--beside",
      description =
          "Print what may lie on what: every two kinds of layer, or those that an ID has a part"
              + " in, each with its rule.")
  private boolean beside;

  @Option(
      names = "--find",
      paramLabel = "WORD",
      arity = "1..*",
      description =
          "List the rules in which all the words are found: in title, reason, sentences or what"
              + " they say.")
  private List<String> find = List.of();

  /** What rules are listed by. */
  private enum Index {
    THEME,
    SOURCE
  }

  @Option(
      names = "--lint",
      description =
          "Tell what is wrong with the rule base, and how to mend it; exit code 5 if any.")
  private boolean lint;

  @Option(
      names = "--promises",
      description = "List what every advice keeps, and is read against before it is printed.")
  private boolean promises;

  Rules(Environment around) {
    super(around);
  }

  @Override
  public Integer call() throws UserError {
    TextPage page = page();
    CommandContext context = context();
    if (lint) {
      return Linting.run(context, json.wanted, out());
    }
    if (beside) {
      return beside(page, context);
    }
    if (promises) {
      if (json.wanted || html.wanted() || !ids.isEmpty()) {
        throw UserError.usage("rules --promises takes no id, no --json and no --html");
      }
      PromisesText.write(context.knowledge(), page);
      out().page(page);
      return Exit.FINE;
    }
    if (html.wanted() && (json.wanted || !ids.isEmpty())) {
      throw UserError.usage("rules --html writes all rules; it takes no id and no --json");
    }
    RuleUses uses = scenarios == null ? new RuleUses() : uses(context);
    OutputFile book = html.output(context);
    if (book != null) {
      book.write(
          RulesBook.html(context.ruleTexts(), context.knowledge(), uses, besideReport(context)),
          out());
      return Exit.FINE;
    }
    RulesReport report = new RulesReport(context.ruleTexts(), context.knowledge(), uses);
    if (json.wanted) {
      if (ids.size() > 1) {
        throw UserError.usage("rules --json takes one id, or none for all rules");
      }
      StringWriter text = new StringWriter();
      if (report.json(ids.isEmpty() ? "" : ids.get(0), text) == 0 && !ids.isEmpty()) {
        throw unknown(report, ids.get(0));
      }
      out().println(text);
      return Exit.FINE;
    }
    if (!find.isEmpty()) {
      if (json.wanted || !ids.isEmpty()) {
        throw UserError.usage("rules --find takes words alone");
      }
      report.found(find, page);
    } else if (ids.isEmpty() && by == Index.SOURCE) {
      report.bySource(page);
    } else if (ids.isEmpty()) {
      report.index(page);
    }
    for (String id : ids) {
      if (!report.page(id, page)) {
        throw unknown(report, id);
      }
    }
    out().page(page);
    return Exit.FINE;
  }

  private static BesideReport besideReport(CommandContext context) throws UserError {
    Knowledge knowledge = context.knowledge();
    return new BesideReport(new LayersBeside(context.rules(), knowledge), knowledge);
  }

  private int beside(TextPage page, CommandContext context) throws UserError {
    LayersBeside kinds = new LayersBeside(context.rules(), context.knowledge());
    List<String> ids =
        this.ids.stream()
            .map(id -> kinds.knows(id) ? id : Words.alike(id).replace(' ', '-'))
            .toList();
    for (String id : ids) {
      if (!kinds.knows(id)) {
        throw UserError.usage(
            "There is no kind of layer called '"
                + Main.cut(id)
                + "'; nearest: "
                + Nearest.to(id, kinds.kinds()));
      }
    }
    BesideReport report = besideReport(context);
    if (json.wanted) {
      StringWriter text = new StringWriter();
      report.json(ids, text);
      out().println(text);
    } else {
      report.text(ids, page);
      out().page(page);
    }
    return Exit.FINE;
  }

  /** Which scenarios of the folder, and which lessons on them, use which rules. */
  private RuleUses uses(CommandContext context) throws UserError {
    if (!Files.isDirectory(scenarios)) {
      throw UserError.usage("--scenarios needs a folder, but " + scenarios + " is none");
    }
    List<Path> found;
    try (Stream<Path> all = Files.list(scenarios)) {
      found = all.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    } catch (IOException e) {
      throw UserError.usage(scenarios + " cannot be read");
    }
    RuleUses uses = new RuleUses();
    for (Path file : found) {
      Scenario scenario = context.scenario(file.toString());
      Advisor advisor = context.advisor(context.planner(scenario));
      LessonMaker maker = context.lessonMaker(scenario);
      context.byRules(
          () -> {
            Lesson lesson = maker.make(scenario, OptionalLong.empty(), maker.book().kinds());
            uses.add(scenario.name(), FiredRules.of(advisor.advise(scenario)), lesson.rules());
            return uses;
          });
    }
    return uses;
  }

  private static UserError unknown(RulesReport report, String id) {
    return UserError.usage(
        "The rule base has nothing called '"
            + Main.cut(id)
            + "'; nearest: "
            + String.join(", ", report.nearest(id)));
  }
}
