package underfoot.lesson;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import underfoot.knowledge.LessonBook;
import underfoot.measure.Texts;
import underfoot.reasoning.Advisor;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.DecisionDifferences;
import underfoot.reasoning.Difference;
import underfoot.scenario.Kind;
import underfoot.scenario.Scenario;
import underfoot.scenario.ScenarioFaults;
import underfoot.scenario.StatedFact;

/** What would become of the floor if one thing about it were otherwise. */
final class WhatIfQuestions {
  private static final int TRUE_CHANGES = 4;
  private static final int FALSE_CHANGES = 3;
  private static final int FACTS_TRIED = 7;

  private final LessonSheet sheet;
  private final Assessment assessment;
  private final List<Question> questions = new ArrayList<>();

  private WhatIfQuestions(LessonSheet sheet) {
    this.sheet = sheet;
    this.assessment = sheet.assessment();
  }

  static List<Question> of(LessonSheet sheet, Advisor advisor) {
    WhatIfQuestions all = new WhatIfQuestions(sheet);
    all.whatIf(advisor);
    return all.questions;
  }

  /** A fact told otherwise, and what becomes of it. */
  private record Trial(StatedFact given, String value, List<String> differences) {}

  private void whatIf(Advisor advisor) {
    LessonBook.Item kind = sheet.book().question("what-if");
    DecisionDifferences told = new DecisionDifferences(advisor.knowledge());
    List<StatedFact> cited = new ArrayList<>();
    List<StatedFact> chosen = new ArrayList<>();
    for (StatedFact given : assessment.scenario().givens()) {
      if (given.known() && given.said() && !values(given).isEmpty() && isCited(given)) {
        (given.definition().kind() == Kind.CHOICE ? chosen : cited).add(given);
      }
    }
    // Choices make the better questions: half of what is tried.
    List<StatedFact> tried = new ArrayList<>(sheet.drawn(chosen, FACTS_TRIED / 2));
    tried.addAll(sheet.drawn(cited, FACTS_TRIED - tried.size()));
    List<Trial> trials = new ArrayList<>();
    for (StatedFact given : tried) {
      String value = sheet.drawn(values(given), 1).get(0);
      try {
        Scenario other = assessment.scenario().with(given.key(), given.about(), value);
        List<String> differences = Difference.texts(told.of(assessment, advisor.advise(other)));
        trials.add(new Trial(given, value, differences));
      } catch (ScenarioFaults contradiction) {
        // This value contradicts what else is stated, so it is no question.
        continue;
      }
    }
    trials.stream()
        .filter(one -> !one.differences().isEmpty())
        .limit(kind.whole("count", 1))
        .forEach(
            one -> {
              Set<String> wrong = new LinkedHashSet<>();
              trials.forEach(other -> wrong.addAll(other.differences()));
              one.differences().forEach(wrong::remove);
              ask(kind, one, List.copyOf(wrong));
            });
  }

  private boolean isCited(StatedFact given) {
    return !sheet.citing(given.key().contains("[]") ? given.called() : given.key()).isEmpty();
  }

  private List<String> values(StatedFact given) {
    List<String> near = sheet.book().otherwise(given.key(), given.text());
    if (!near.isEmpty()) {
      return near;
    }
    List<String> values = new ArrayList<>(given.definition().otherwise());
    if (given.definition().kind() == Kind.CHOICE) {
      values = new ArrayList<>(given.definition().of());
    } else if (given.definition().kind() == Kind.YES_NO) {
      values = new ArrayList<>(List.of("yes", "no"));
    }
    values.remove(given.text());
    return values;
  }

  private void ask(LessonBook.Item kind, Trial trial, List<String> wrong) {
    Set<String> right =
        new LinkedHashSet<>(
            trial.differences().subList(0, Math.min(TRUE_CHANGES, trial.differences().size())));
    List<String> options = new ArrayList<>(right);
    options.addAll(sheet.drawn(wrong, FALSE_CHANGES));
    StatedFact given = trial.given();
    String fact =
        given.about().isEmpty()
            ? given.called()
            : sheet.say("lesson-fact-about", "fact", given.called(), "thing", given.about());
    boolean yesNo = given.definition().kind() == Kind.YES_NO;
    String ask =
        LessonSheet.fill(
            kind.field(yesNo ? "ask yes or no" : "ask"),
            "fact",
            fact,
            "value",
            trial.value(),
            "now",
            given.text(),
            "means",
            Texts.lower(given.definition().means())
                + (given.about().isEmpty() ? "" : " (" + given.about() + ")"));
    questions.add(
        sheet
            .draft(kind)
            .ask(ask)
            .choice(options, right, true)
            .answer(sheet.say("lesson-changes", "changes", String.join("; ", trial.differences())))
            .because(sheet.citing(given.called()))
            .made());
  }
}
