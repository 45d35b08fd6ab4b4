package underfoot.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Figures;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.KnowledgeFault;
import underfoot.knowledge.LayerKind;
import underfoot.knowledge.Listed;
import underfoot.knowledge.Source;
import underfoot.knowledge.TextParts;
import underfoot.knowledge.Wording;
import underfoot.language.Effect;
import underfoot.language.Pattern;
import underfoot.language.Rule;
import underfoot.language.RuleFaults;
import underfoot.language.RuleSet;
import underfoot.language.Said;
import underfoot.quantity.Dimension;
import underfoot.quantity.Nearest;
import underfoot.scenario.RuleFiles;

/**
 * Checks that whatever rules, figures and wordings refer to is there. A misspelt figure would
 * otherwise never fire, and nobody would hear of it.
 */
public final class RuleCheck {
  private final Knowledge knowledge;
  private final List<RuleFaults.Fault> faults = new ArrayList<>();
  private final Map<String, List<Rule>> ids;
  private final Set<String> figures;
  private final Set<String> layers;

  private RuleCheck(RuleSet rules, Knowledge knowledge) {
    this.knowledge = knowledge;
    this.ids =
        rules.rules().stream()
            .collect(Collectors.groupingBy(Rule::id, TreeMap::new, Collectors.toList()));
    this.figures =
        knowledge.figures().all().stream()
            .map(Figure::name)
            .collect(Collectors.toCollection(TreeSet::new));
    this.layers =
        knowledge.layers().all().stream()
            .map(LayerKind::id)
            .collect(Collectors.toCollection(TreeSet::new));
  }

  /**
   * All that is missing or misspelt.
   *
   * @param rules the rules
   * @param knowledge the figures and wordings read from the same place
   */
  public static List<RuleFaults.Fault> faults(RuleSet rules, Knowledge knowledge) {
    RuleCheck check = new RuleCheck(rules, knowledge);
    rules.rules().forEach(check::rule);
    check.figures();
    knowledge.layers().all().forEach(check::layer);
    knowledge.wording().ids().forEach(check::wording);
    return List.copyOf(check.faults);
  }

  /**
   * Figures that measure something else than the shipped figure of their name: a length of {@code 2
   * kg}, or a bare {@code 2}.
   *
   * @param files the rule base
   * @param figures its figures
   * @param shipped the figures that came with the program
   */
  public static List<RuleFaults.Fault> unitFaults(RuleFiles files, Figures figures, Figures shipped)
      throws KnowledgeFault {
    List<RuleFaults.Fault> faults = new ArrayList<>();
    for (Listed listed : Listed.in(files, "figures")) {
      String name = listed.name();
      if (!figures.has(name) || !shipped.has(name)) {
        continue;
      }
      Figure own = figures.get(name);
      Figure wanted = shipped.get(name);
      if (!measured(own).equals(measured(wanted))) {
        String what =
            "the figure '%s' is %s, which is no %s; write it as in %s"
                .formatted(name, own.text(), measured(wanted), wanted.text());
        faults.add(new RuleFaults.Fault(listed.file(), listed.line(), what));
      }
    }
    return faults;
  }

  /** What a figure measures: a dimension, or its unit where that is in no table. */
  private static String measured(Figure figure) {
    String unit = figure.unit();
    return Dimension.ofUnit(unit)
        .or(() -> Dimension.ofUnit(unit.split(" ")[0]))
        .map(Dimension::word)
        .orElse(unit.isEmpty() ? "bare number" : unit);
  }

  private void rule(Rule rule) {
    String citation = rule.note().source();
    need(rule, rule.line(), "source", Source.key(citation), knowledge.sources().keySet());
    Source source = knowledge.sources().get(Source.key(citation));
    if (source != null && rank(source.cited(citation).status()) < rank(source.status())) {
      String what =
          " cites '%s' from memory, but %s is known no better than %s anyway; leave 'from memory'"
              + " out";
      faults.add(
          new RuleFaults.Fault(
              rule.file(),
              rule.line(),
              rule.key() + what.formatted(citation, source.id(), source.status())));
    }
    for (Said said : rule.conditions()) {
      for (Pattern pattern : said.patterns()) {
        pattern(rule, said, pattern);
      }
    }
    for (Said said : rule.consequences()) {
      told(rule, said);
      List<Effect.Place> places = said.effect().verb().places();
      for (int i = 0; i < places.size(); i++) {
        String word = said.effect().words().get(i);
        if (word.equals(Effect.ABOUT)) {
          continue;
        }
        if (Effect.isLookedUp(word)) {
          lookedUp(rule, said, Effect.lookedUp(word));
          continue;
        }
        switch (places.get(i)) {
          case FIGURE -> need(rule, said.number(), "figure", word, figures);
          case LAYER -> need(rule, said.number(), "layer", word, layers);
          case WORDING -> need(rule, said.number(), "wording", word, knowledge.wording().ids());
          case STEP -> need(rule, said.number(), "step", word, knowledge.steps().ids());
          case ACT -> need(rule, said.number(), "act", word, knowledge.acts().ids());
          case FACT, ABOUT, WORD, WAY -> {
            // free words
          }
        }
      }
    }
  }

  /** What stands in the advice as an item of its own has a title; a danger says what to do. */
  private void told(Rule rule, Said said) {
    Effect.Verb verb = said.effect().verb();
    String wording = said.effect().word(Effect.Place.WORDING);
    if (verb.places().get(0) != Effect.Place.WORDING
        || !knowledge.wording().ids().contains(wording)) {
      return;
    }
    Wording.Text text = knowledge.wording().get(wording);
    String told = rule.key() + " tells the text '" + wording + "', which has no ";
    if (text.title().isEmpty()) {
      faults.add(new RuleFaults.Fault(rule.file(), said.number(), told + "title; give it one"));
    }
    if (verb == Effect.Verb.DANGER && !text.parts().containsKey(TextParts.DANGER)) {
      faults.add(
          new RuleFaults.Fault(
              rule.file(), said.number(), told + "danger; write danger: … and instead: …"));
    }
  }

  private void lookedUp(Rule rule, Said said, String name) {
    Set<String> asked = new TreeSet<>();
    for (Pattern pattern : rule.patterns()) {
      if (pattern.quantity() == Pattern.Quantity.EACH) {
        asked.add(pattern.type() == Pattern.Type.FACT ? pattern.name() : pattern.word("family"));
      }
    }
    need(rule, said.number(), "fact or family of layers", name, asked);
  }

  private void pattern(Rule rule, Said said, Pattern pattern) {
    String named = pattern.word("name");
    if (pattern.type() == Pattern.Type.FIGURE && !named.isEmpty()) {
      need(rule, said.number(), "figure", named, figures);
    }
    for (String field : List.of("rule", "layer", "wording")) {
      String word = pattern.word(field);
      if (!word.isEmpty()) {
        Set<String> known =
            switch (field) {
              case "rule" -> ids.keySet();
              case "layer" -> layers;
              default -> knowledge.wording().ids();
            };
        need(rule, said.number(), field, word, known);
        if (field.equals("rule") && ids.containsKey(word)) {
          exception(rule, said, ids.get(word));
        }
      }
    }
  }

  /** An exception sees what a rule says, lays or asks for: no facts, and nothing said later. */
  private void exception(Rule rule, Said said, List<Rule> named) {
    Rule other = named.get(0);
    if (other.then().isEmpty()) {
      return; // nothing it says was understood, which is told of it already
    }
    String what = "%s says '%s', which has no effect: %s (%s:%d) ";
    String start = what.formatted(rule.key(), said.text(), other.id(), other.file(), other.line());
    if (named.stream().flatMap(one -> one.effects().stream()).allMatch(RuleCheck::onlyFacts)) {
      String concluded = other.then().get(0);
      String how =
          "only tells a fact (%s); ask for that fact instead: No … is …, or The … is not known";
      faults.add(
          new RuleFaults.Fault(rule.file(), said.number(), start + how.formatted(concluded)));
    } else if (other.pass().compareTo(rule.pass()) > 0) {
      String how = "is thought through after it; name a rule of %s or of a pass before it";
      faults.add(
          new RuleFaults.Fault(
              rule.file(), said.number(), start + how.formatted(rule.pass().folder())));
    }
  }

  private static boolean onlyFacts(Effect effect) {
    return effect.isFact() || effect.verb() == Effect.Verb.ROWS;
  }

  private void figures() {
    for (Figure figure : knowledge.figures().all()) {
      Source source = knowledge.sources().get(Source.key(figure.source()));
      if (source != null && rank(figure.status()) < rank(source.status())) {
        String what = "figure '%s' has the status '%s', but its source %s has '%s'; ";
        String how = "a figure is known no better than its source";
        faults.add(
            new RuleFaults.Fault(
                "figures",
                0,
                what.formatted(figure.name(), figure.status(), source.id(), source.status())
                    + how));
      }
      if (source == null) {
        miss(
            "figures",
            0,
            "figure '"
                + figure.name()
                + "' cites '"
                + figure.source()
                + "', which is not in sources.yaml",
            figure.source(),
            knowledge.sources().keySet());
      }
    }
  }

  /** How far from the best a status is; one that is none is better than any, so that it is told. */
  private int rank(String status) {
    return List.copyOf(knowledge.statuses().keySet()).indexOf(status);
  }

  private void layer(LayerKind kind) {
    List<String> named = new ArrayList<>(List.of(kind.mass(), kind.conductivity(), kind.modulus()));
    if (!kind.thickness().startsWith("the ") && !kind.thickness().equals("none")) {
      named.add(kind.thickness());
    }
    for (String name : named) {
      if (!name.isEmpty() && !figures.contains(name)) {
        noFigure("layers", "layer '" + kind.id() + "'", name);
      }
    }
  }

  private void wording(String id) {
    for (String part : knowledge.wording().get(id).parts().values()) {
      int at = part.indexOf('{');
      while (at >= 0) {
        int end = part.indexOf('}', at);
        String name = end < 0 ? part.substring(at) : part.substring(at + 1, end);
        if (!figures.contains(name)) {
          noFigure("wording", "'" + id + "'", name);
        }
        at = part.indexOf('{', at + 1);
      }
    }
  }

  private void noFigure(String where, String who, String name) {
    miss(where, 0, who + " names the figure '" + name + "', which is not there", name, figures);
  }

  private void need(Rule rule, int line, String sort, String name, Set<String> known) {
    if (!known.contains(name)) {
      String what = rule.key() + " names the " + sort + " '" + name + "', which is not there";
      miss(rule.file(), line, what, name, known);
    }
  }

  private void miss(String file, int line, String what, String name, Set<String> known) {
    String near =
        Optional.of(Nearest.to(name, known))
            .filter(one -> !one.isEmpty())
            .map(one -> "; did you mean " + one + "?")
            .orElse("");
    faults.add(new RuleFaults.Fault(file, line, what + near));
  }
}
