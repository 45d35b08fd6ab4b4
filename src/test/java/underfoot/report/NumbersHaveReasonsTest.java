package underfoot.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Wording;
import underfoot.plan.Advice;
import underfoot.plan.AdviceMaker;
import underfoot.plan.Consequences;
import underfoot.plan.Justification;
import underfoot.plan.Premise;
import underfoot.quantity.Spoken;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.Floors;
import underfoot.reasoning.WhatIf;

/**
 * Every number that an advice tells stands among the facts, figures and workings of its own
 * reasons, so that {@code why} shows where it comes from.
 */
class NumbersHaveReasonsTest {
  private static final Pattern NUMBER = Pattern.compile("(?<![\\w.-])-?\\d+(?:\\.\\d+)?");

  /** What looks like a number and is a name: of a standard, a class, a mask; and the 1 of 1:80. */
  private static final Pattern NAMES =
      Pattern.compile(
          "\\b(?:(?:BS|EN|ISO|DIN|ANSI|PD|CIS)[ /]?)+[A-Z]?\\d+(?:[-.]\\d+)*(?::\\d{4})?"
              + "|\\b[A-Z]+\\d+(?:-[A-Z]+\\d+)*\\b|\\b1:(?=[\\d\\s])");

  private record Told(String where, String text, List<Justification> because) {}

  @TestFactory
  Stream<DynamicTest> every_number_of_an_advice_comes_from_its_reasons() throws Exception {
    return files().stream()
        .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> check(file)));
  }

  private static List<Path> files() throws Exception {
    try (Stream<Path> own = Files.list(Path.of("scenarios"));
        Stream<Path> floors = Files.list(Path.of("src/test/resources/floors"))) {
      return Stream.concat(own, floors)
          .filter(file -> file.toString().endsWith(".yaml"))
          .sorted()
          .toList();
    }
  }

  private static void check(Path file) throws Exception {
    Assessment assessment =
        Floors.advisor().advise(Floors.reader().read(file.toString(), Files.readAllBytes(file)));
    Advice advice = AdviceMaker.make(assessment, WhatIf.assumed(assessment), Consequences.none());
    Set<String> without = new TreeSet<>();
    List<Told> all = told(advice);
    assertThat(all).isNotEmpty();
    for (Told one : all) {
      Set<Double> known = new HashSet<>();
      one.because().forEach(because -> gather(because, known, new HashSet<>()));
      for (double number : numbers(one.text())) {
        if (!known.contains(number)) {
          without.add(one.where() + ": " + number + " in: " + one.text());
        }
      }
      assertThat(one.text()).as(one.where()).doesNotContain("an unknown ");
    }
    assertThat(without).as("numbers without a reason").isEmpty();
  }

  private static List<Told> told(Advice advice) {
    List<Told> all = new ArrayList<>();
    advice
        .stopFindings()
        .forEach(one -> all.add(new Told(one.id(), one.title() + ' ' + one.text(), one.because())));
    advice
        .remedies()
        .forEach(one -> all.add(new Told(one.id(), one.title() + ' ' + one.text(), one.because())));
    advice
        .cautions()
        .forEach(one -> all.add(new Told(one.id(), one.title() + ' ' + one.text(), one.because())));
    for (Advice.Layer layer : advice.layers()) {
      layer.spec().forEach(say -> all.add(new Told(layer.id(), say.text(), say.because())));
      layer.fixing().forEach(say -> all.add(new Told(layer.id(), say.text(), say.because())));
    }
    advice.alternatives().forEach(one -> all.add(new Told(one.id(), one.text(), one.because())));
    return all;
  }

  private static List<Double> numbers(String text) {
    List<Double> found = new ArrayList<>();
    Matcher number = NUMBER.matcher(NAMES.matcher(text).replaceAll(" "));
    while (number.find()) {
      found.add(Math.abs(Double.parseDouble(number.group())));
    }
    return found;
  }

  private static void gather(Justification because, Set<Double> known, Set<Object> seen) {
    if (!seen.add(because)) {
      return;
    }
    because.facts().forEach(fact -> gather(fact, known, seen));
    because.figures().forEach(figure -> add(figure, known));
    because.restsOn().forEach(one -> gather(one, known, seen));
  }

  private static void gather(Premise fact, Set<Double> known, Set<Object> seen) {
    if (!seen.add(fact)) {
      return;
    }
    known.addAll(numbers(fact.value()));
    known.addAll(numbers(Spoken.of(fact.value()))); // a text tells it as people say it
    known.addAll(numbers(fact.how()));
    fact.figures().forEach(figure -> add(figure, known));
    fact.uses().forEach(one -> gather(one, known, seen));
    if (fact.because() != null) {
      gather(fact.because(), known, seen);
    }
  }

  private static void add(Figure figure, Set<Double> known) {
    known.addAll(numbers(figure.text()));
  }

  /** Phrases that number themselves, the scale of a drawing, an axis, and a triangle of old. */
  private static final Set<String> NO_FIGURES =
      Set.of("datum-flat", "lesson-mark", "lesson-reply-lines", "section-caption", "start-square");

  @Test
  void no_wording_holds_a_number_of_its_own() {
    Wording wording = Floors.advisor().knowledge().wording();
    Set<String> own = new TreeSet<>();
    Set<String> ids = new TreeSet<>(wording.ids());
    assertThat(ids).containsAll(NO_FIGURES);
    ids.removeAll(NO_FIGURES);
    for (String id : ids) {
      List<String> parts = new ArrayList<>(wording.get(id).parts().values());
      parts.add(wording.get(id).title());
      for (String part : parts) {
        String said = part.replaceAll("\\{[^}]*}|\\[[^]]*]", " ");
        if (!numbers(said).isEmpty()) {
          own.add(id + ": " + numbers(said) + " in: " + part);
        }
      }
    }
    assertThat(own).as("numbers that should be figures").isEmpty();
  }
}
