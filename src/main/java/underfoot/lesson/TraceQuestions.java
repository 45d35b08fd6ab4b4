package underfoot.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.buildup.LayerClass;
import underfoot.buildup.Severity;
import underfoot.buildup.StopFinding;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Figure;
import underfoot.knowledge.LessonBook;
import underfoot.measure.Texts;
import underfoot.plan.Advice;
import underfoot.plan.Advice.Decision;
import underfoot.plan.Advice.Layer;
import underfoot.plan.FindOut;
import underfoot.plan.Justification;
import underfoot.plan.ProgrammeStep;
import underfoot.reasoning.Advisor;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.MaterialClasses;

/** Questions whose answers stand in the trace of the advice. */
final class TraceQuestions {
  private static final int OPTIONS = 4;

  /** Values nearer to one another than this share are no choice. */
  private static final double ALIKE = 0.15;

  private static final int STEPS = 6;

  private final LessonSheet sheet;
  private final Advice advice;
  private final Assessment assessment;
  private final List<Question> questions = new ArrayList<>();

  private TraceQuestions(LessonSheet sheet) {
    this.sheet = sheet;
    this.advice = sheet.advice();
    this.assessment = sheet.assessment();
  }

  static List<Question> of(LessonSheet sheet, Advisor advisor) {
    TraceQuestions all = new TraceQuestions(sheet);
    all.verdict();
    all.stopFindings("halt", false);
    all.stopFindings("whom", true);
    all.danger();
    all.classes();
    all.figures();
    all.layers();
    all.way();
    all.steps();
    all.survey();
    all.questions.addAll(WhatIfQuestions.of(sheet, advisor));
    return all.questions;
  }

  private LessonBook.Item kind(String id) {
    return sheet.book().question(id);
  }

  private void verdict() {
    LessonBook.Item kind = kind("verdict");
    List<String> all = new ArrayList<>();
    for (Verdict verdict : Verdict.values()) {
      all.add(sheet.say("verdict-" + verdict.word()));
    }
    String right = sheet.say("verdict-" + advice.verdict().word());
    List<Justification> because = new ArrayList<>();
    advice.stopFindings().forEach(stopFinding -> because.addAll(stopFinding.because()));
    advice.remedies().forEach(remedy -> because.addAll(remedy.because()));
    if (because.isEmpty()) {
      advice.layers().forEach(layer -> because.addAll(layer.reasons()));
    }
    questions.add(sheet.draft(kind).choice(all, Set.of(right), false).because(because).made());
  }

  /** What stands against a floor, or what its text says is to be done, among other such. */
  private void stopFindings(String id, boolean told) {
    LessonBook.Item kind = kind(id);
    if (advice.stopFindings().isEmpty()) {
      return;
    }
    Set<String> right = new LinkedHashSet<>();
    List<Justification> because = new ArrayList<>();
    Set<String> here = new LinkedHashSet<>();
    advice.remedies().forEach(remedy -> here.add(remedy.id()));
    for (BuildUp buildUp : assessment.buildUps()) {
      buildUp.of(StopFinding.class).forEach(stopFinding -> here.add(stopFinding.wording()));
    }
    List<Advice.HaltNote> stopFindings = new ArrayList<>(advice.stopFindings());
    stopFindings.sort(
        Comparator.comparing(stopFinding -> stopFinding.id().equals(kind.field("last"))));
    for (Advice.HaltNote stopFinding : stopFindings) {
      here.add(stopFinding.id());
      if (right.isEmpty() || !told) {
        right.add(told ? stopFinding.text() : stopFinding.title());
        because.addAll(stopFinding.because());
      }
    }
    List<String> others = new ArrayList<>();
    for (String other : kind.list("others")) {
      if (!here.contains(other) && sheet.phrases().has(other)) {
        var filled =
            sheet
                .knowledge()
                .wording()
                .fill(other, sheet.knowledge().figures(), assessment.factsOfChosen(), "");
        others.add(told ? filled.text() : filled.title());
      }
    }
    List<String> options = new ArrayList<>(right);
    options.addAll(sheet.drawn(others, OPTIONS - 1));
    questions.add(
        sheet.draft(kind).choice(options, right, right.size() > 1).because(because).made());
  }

  private void danger() {
    LessonBook.Item kind = kind("danger");
    Map<String, List<Justification>> dangers = new LinkedHashMap<>();
    List<String> others = new ArrayList<>();
    for (Advice.CautionNote caution : advice.cautions()) {
      if (caution.severity() == Severity.DANGER) {
        dangers.put(caution.title(), caution.because());
      }
    }
    for (String other : kind.list("others")) {
      others.add(sheet.knowledge().wording().get(other).title());
    }
    if (dangers.isEmpty() || others.isEmpty()) {
      return;
    }
    Set<String> right = new LinkedHashSet<>(sheet.drawn(List.copyOf(dangers.keySet()), 3));
    List<String> options = new ArrayList<>(right);
    options.addAll(sheet.drawn(others, 3));
    List<Justification> because = new ArrayList<>();
    right.forEach(title -> because.addAll(dangers.get(title)));
    questions.add(sheet.draft(kind).choice(options, right, true).because(because).made());
  }

  private void classes() {
    LessonBook.Item kind = kind("class");
    List<Question> all = new ArrayList<>();
    for (Layer layer : advice.layers()) {
      Map<String, List<String>> asked = new LinkedHashMap<>();
      for (LayerClass one : assessment.of(LayerClass.class)) {
        if (one.layer().equals(layer.id())) {
          asked
              .computeIfAbsent(
                  MaterialClasses.scaleOf(sheet.knowledge(), one.grade()),
                  scale -> new ArrayList<>())
              .add(one.grade());
        }
      }
      asked.forEach(
          (scale, grades) -> {
            List<String> steps = sheet.knowledge().scales().getOrDefault(scale, List.of());
            String right = MaterialClasses.strictest(sheet.knowledge(), grades).get(0);
            if (steps.size() > 1) {
              List<Justification> because = new ArrayList<>();
              layer.spec().stream()
                  .filter(say -> say.text().contains(right))
                  .forEach(say -> because.addAll(say.because()));
              String ask =
                  LessonSheet.fill(kind.field("ask"), "layer", layer.name(), "scale", scale);
              all.add(
                  sheet
                      .draft(kind)
                      .ask(ask)
                      .choice(steps, Set.of(right), false)
                      .because(because)
                      .made());
            }
          });
    }
    questions.addAll(sheet.drawn(all, kind.whole("count", 1)));
  }

  private void figures() {
    LessonBook.Item kind = kind("figure");
    Map<Figure, Justification> cited = new LinkedHashMap<>();
    for (Decision one : advice.decisions()) {
      boolean told =
          one instanceof Layer
              || one instanceof Advice.CautionNote
              || one instanceof Advice.RemedyNote
              || one instanceof Advice.HaltNote;
      if (told) {
        for (Justification why : one.because()) {
          why.figures().forEach(figure -> cited.putIfAbsent(figure, why));
        }
      }
    }
    List<Figure> fit = new ArrayList<>();
    for (Figure figure : cited.keySet()) {
      if (!figure.unit().isEmpty() && others(figure).size() >= OPTIONS - 1) {
        fit.add(figure);
      }
    }
    for (Figure figure : sheet.drawn(fit, kind.whole("count", 1))) {
      List<String> options = new ArrayList<>(others(figure).subList(0, OPTIONS - 1));
      options.add(figure.text());
      Justification why = cited.get(figure);
      String ask = LessonSheet.fill(kind.field("ask"), "figure", Texts.lower(figure.description()));
      questions.add(
          sheet
              .draft(kind)
              .ask(ask)
              .choice(options, Set.of(figure.text()), false)
              .because(List.of(why))
              .figures(List.of(figure))
              .made());
    }
  }

  /** Values of other figures of the same unit, the most alike first. */
  private List<String> others(Figure figure) {
    if (!(figure.value() > 0)) {
      return List.of();
    }
    List<Figure> alike =
        sheet.knowledge().figures().all().stream()
            .filter(one -> one.unit().equals(figure.unit()) && one.value() > 0)
            .filter(one -> Math.abs(Math.log(one.value() / figure.value())) > ALIKE)
            .sorted(
                Comparator.comparingDouble(
                    (Figure one) -> Math.abs(Math.log(one.value() / figure.value()))))
            .toList();
    List<Figure> apart = new ArrayList<>();
    for (Figure one : alike) {
      if (apart.stream()
          .allMatch(other -> Math.abs(Math.log(one.value() / other.value())) > ALIKE)) {
        apart.add(one);
      }
    }
    return apart.stream().map(Figure::text).toList();
  }

  private void layers() {
    LessonBook.Item kind = kind("layer");
    List<Layer> layers = advice.layers();
    List<Question> all = new ArrayList<>();
    for (int i = 0; i < layers.size(); i++) {
      Layer layer = layers.get(i);
      List<String> options = new ArrayList<>();
      for (Layer other : sheet.drawn(layers, layers.size())) {
        if (other != layer && options.size() < 2) {
          options.add(other.name());
        }
      }
      sheet.knowledge().layers().all().stream()
          .filter(one -> layers.stream().noneMatch(l -> l.id().equals(one.id())))
          .sorted(Comparator.comparing(one -> !one.family().equals(layer.family())))
          .limit(OPTIONS - 1L - options.size())
          .forEach(one -> options.add(one.name()));
      options.add(layer.name());
      String below =
          i == 0 ? sheet.say("lesson-base", "base", advice.base()) : layers.get(i - 1).name();
      String ask =
          LessonSheet.fill(kind.field("ask"), "way", advice.title(), "below", Texts.lower(below));
      all.add(
          sheet
              .draft(kind)
              .ask(ask)
              .choice(options, Set.of(layer.name()), false)
              .because(layer.reasons())
              .figures(LessonSheet.figures(layer.reasons()))
              .made());
    }
    questions.addAll(sheet.drawn(all, kind.whole("count", 1)));
  }

  private void way() {
    LessonBook.Item kind = kind("way");
    if (!advice.builds() || assessment.buildUps().size() < 2) {
      return;
    }
    List<String> options = new ArrayList<>();
    for (BuildUp buildUp : assessment.buildUps()) {
      options.add(sheet.phrases().way(buildUp.way()));
    }
    List<Justification> because = new ArrayList<>();
    StringBuilder answer = new StringBuilder(advice.title());
    for (Advice.Alternative other : advice.alternatives()) {
      if (other.standing() != Advice.Standing.SUGGESTION) {
        String standing =
            other.standing() == Advice.Standing.RULED_OUT
                ? "standing-ruled-out"
                : "standing-second-choice";
        answer.append(". ").append(sheet.say(standing, "way", other.title()));
        because.addAll(other.because());
      }
    }
    questions.add(
        sheet
            .draft(kind)
            .choice(options, Set.of(advice.title()), false)
            .answer(answer.toString())
            .because(because)
            .made());
  }

  private void steps() {
    LessonBook.Item kind = kind("steps");
    List<ProgrammeStep> fit = new ArrayList<>();
    double last = -1;
    for (ProgrammeStep step : advice.consequences().programme()) {
      // What runs beside other steps has no one place in the order.
      boolean aside = !sheet.knowledge().steps().get(step.id()).from().isEmpty();
      if (!aside && step.startHour() > last) {
        fit.add(step);
        last = step.startHour();
      }
    }
    Set<ProgrammeStep> drawn = new LinkedHashSet<>(sheet.drawn(fit, STEPS));
    List<ProgrammeStep> inOrder = fit.stream().filter(drawn::contains).toList();
    if (inOrder.size() < 3) {
      return;
    }
    List<Justification> because = new ArrayList<>();
    inOrder.forEach(step -> because.addAll(step.because()));
    List<String> texts = inOrder.stream().map(ProgrammeStep::step).toList();
    questions.add(sheet.draft(kind).order(texts).because(because).made());
  }

  private void survey() {
    LessonBook.Item kind = kind("survey");
    Map<String, FindOut> byStage = new LinkedHashMap<>();
    for (FindOut one : advice.findOutFirst()) {
      if (!one.pass().isEmpty()) {
        byStage.merge(one.pass(), one, (a, b) -> a.rank() <= b.rank() ? a : b);
      }
    }
    List<FindOut> all = new ArrayList<>(byStage.values());
    Set<FindOut> drawn = new LinkedHashSet<>(sheet.drawn(all, OPTIONS));
    List<FindOut> inOrder = all.stream().filter(drawn::contains).toList();
    if (inOrder.size() < 3) {
      return;
    }
    List<Justification> because = new ArrayList<>();
    inOrder.forEach(one -> because.addAll(sheet.citing(one.called())));
    List<String> how = new ArrayList<>();
    for (FindOut one : inOrder) {
      how.add(
          Texts.capital(one.called())
              + " ("
              + Texts.lower(one.pass())
              + "): "
              + one.look()
              + ". "
              + Texts.capital(one.decisions().get(0))
              + ".");
    }
    List<String> texts = inOrder.stream().map(one -> Texts.capital(one.called())).toList();
    questions.add(sheet.draft(kind).order(texts).worked(how).because(because).made());
  }
}
