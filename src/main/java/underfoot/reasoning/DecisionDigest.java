package underfoot.reasoning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import underfoot.buildup.Caution;
import underfoot.buildup.ClientLimit;
import underfoot.buildup.CoverageTarget;
import underfoot.buildup.LayerClass;
import underfoot.buildup.LayerThickness;
import underfoot.buildup.Remedy;
import underfoot.buildup.Severity;
import underfoot.buildup.StackLayer;
import underfoot.buildup.StopFinding;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Facts;

/**
 * What a person acts on of an advice: the answer, the way, its layers with thickness and class,
 * what is put right first, dangers, contact and heights. Two floors with one gist are built alike,
 * so a fact whose every value leaves the gist as it is need not be asked for.
 *
 * @param verdict the answer in one word
 * @param way the way of building; empty if nothing is to be built
 * @param decided everything else, by what it is about
 */
record DecisionDigest(Verdict verdict, String way, Map<String, String> decided) {
  private static final List<String> AT_DOORS =
      List.of("gap left", "step at the door", "trim needed");
  private static final String HALT = "halt ";
  private static final String DANGER = "danger ";
  private static final double TENTHS = 10;

  /** What a person acts on of a counsel. */
  static DecisionDigest of(Assessment assessment) {
    Map<String, String> decided = new TreeMap<>();
    for (StopFinding stopFinding : assessment.of(StopFinding.class)) {
      decided.put(HALT + stopFinding.wording(), stopFinding.verdict().word());
    }
    for (Remedy remedy : assessment.of(Remedy.class)) {
      decided.put("first " + remedy.wording() + '@' + remedy.about(), "");
    }
    for (ClientLimit limit : assessment.of(ClientLimit.class)) {
      decided.put("limit " + limit.wording(), "");
    }
    for (Caution caution : assessment.of(Caution.class)) {
      if (caution.severity() == Severity.DANGER) {
        decided.put(DANGER + caution.wording() + '@' + caution.about(), "");
      }
    }
    assessment.chosen().ifPresent(chosen -> build(assessment, chosen, decided));
    for (ZonePart zone : assessment.zones()) {
      DecisionDigest there = of(zone.assessment());
      decided.put("way at " + zone.name(), there.way);
      there.decided.forEach((what, how) -> decided.put(what + " at " + zone.name(), how));
    }
    return new DecisionDigest(
        assessment.verdict(), assessment.chosen().map(BuildUp::way).orElse(""), decided);
  }

  private static void build(Assessment assessment, BuildUp chosen, Map<String, String> decided) {
    List<LayerClass> classes = assessment.of(LayerClass.class);
    for (StackLayer layer : chosen.stack().layers()) {
      String id = layer.kind().id();
      List<String> grades = new ArrayList<>();
      for (LayerClass asked : classes) {
        if (asked.layer().equals(id)) {
          grades.add(asked.grade());
        }
      }
      decided.put(
          "layer " + id,
          tenths(layer.thickness().mean())
              + " "
              + MaterialClasses.strictest(assessment.knowledge(), grades));
    }
    double contact = 0;
    for (CoverageTarget target : assessment.of(CoverageTarget.class)) {
      contact = Math.max(contact, target.figure().value());
    }
    decided.put("contact", tenths(contact));
    LayerThickness rise = chosen.stack().rise();
    decided.put("rise", tenths(rise.min()) + " " + tenths(rise.mean()) + " " + tenths(rise.max()));
    Facts facts = chosen.facts();
    for (String measure : AT_DOORS) {
      for (String door : facts.abouts(measure)) {
        decided.put(measure + '@' + door, tenths(facts.find(measure, door).number()));
      }
    }
  }

  /**
   * Whether another advice is another in what can hurt, stop or turn the work: the answer in one
   * word, the way of building, what halts it, what is dangerous.
   */
  boolean turnsInto(DecisionDigest other) {
    return verdict != other.verdict || !way.equals(other.way) || !grave().equals(other.grave());
  }

  private Set<String> grave() {
    Set<String> grave = new TreeSet<>();
    for (String what : decided.keySet()) {
      if (what.startsWith(HALT) || what.startsWith(DANGER)) {
        grave.add(what);
      }
    }
    return grave;
  }

  private static String tenths(double number) {
    return Double.isNaN(number) ? "?" : Double.toString(Math.round(number * TENTHS) / TENTHS);
  }

  /** Never changed once made. */
  @Override
  public Map<String, String> decided() {
    return Collections.unmodifiableMap(decided);
  }
}
