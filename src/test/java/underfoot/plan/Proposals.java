package underfoot.plan;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import underfoot.buildup.CoverageTarget;
import underfoot.buildup.LayerClass;
import underfoot.buildup.LayerCover;
import underfoot.buildup.StackLayer;
import underfoot.buildup.StepTime;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.KnowledgeFault;
import underfoot.knowledge.ProposedKinds;
import underfoot.reasoning.Advisor;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.Floors;
import underfoot.reasoning.MaterialClasses;
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
    Set<String> faults = new TreeSet<>();
    Stream.concat(
            opinion.whole().stream(),
            opinion.layers().stream().flatMap(layer -> layer.items().stream()))
        .filter(item -> item.judgement().isFault())
        .forEach(
            item ->
                faults.add(
                    (item.layer().isEmpty() ? "whole" : item.layer())
                        + ": "
                        + item.because().get(0).rule().id()));
    return faults;
  }

  // --- a proposal made of a build-up that the rules laid, with everything said

  /**
   * A layer as a proposal writes it: keys and values in order.
   *
   * @param id the kind of layer it is made of
   * @param keys its keys
   */
  record Line(String id, Map<String, String> keys) {
    Line copy() {
      return new Line(id, new LinkedHashMap<>(keys));
    }
  }

  /**
   * A proposal that can still be changed.
   *
   * @param layers its layers
   * @param whole its other keys
   */
  record Draft(List<Line> layers, Map<String, String> whole) {
    Draft copy() {
      List<Line> copied = new ArrayList<>();
      layers.forEach(line -> copied.add(line.copy()));
      return new Draft(copied, new LinkedHashMap<>(whole));
    }

    String yaml() {
      StringBuilder yaml = new StringBuilder("proposal: made of what the rules laid\nlayers:\n");
      for (Line line : layers) {
        String first = "  - ";
        for (Map.Entry<String, String> key : line.keys().entrySet()) {
          yaml.append(first).append(key.getKey()).append(": ").append(key.getValue()).append('\n');
          first = "    ";
        }
      }
      whole.forEach((key, value) -> yaml.append(key).append(": ").append(value).append('\n'));
      return yaml.toString();
    }
  }

  /** A build-up as a proposal, as somebody would write it who says everything. */
  static Draft of(Knowledge knowledge, BuildUp buildUp) {
    List<Line> lines = new ArrayList<>();
    List<StackLayer> layers = buildUp.stack().layers();
    for (int i = 0; i < layers.size(); i++) {
      StackLayer layer = layers.get(i);
      String above = i + 1 < layers.size() ? layers.get(i + 1).kind().id() : "";
      lines.add(line(knowledge, buildUp, layer, above));
    }
    Map<String, String> whole = new LinkedHashMap<>();
    whole.put("perimeter gap", "8 mm");
    whole.put("pour temperature", "18 C");
    whole.put("laying temperature", "18 C");
    Fact joint = buildUp.facts().find("least joint");
    double widest =
        buildUp.facts().all().stream()
            .filter(fact -> fact.name().equals("least joint"))
            .mapToDouble(Fact::number)
            .max()
            .orElse(0);
    if (joint != null) {
      whole.put("tile joint", number(Math.max(10, widest)) + " mm");
    }
    List<String> grout = classes(knowledge, buildUp, "tile");
    if (!grout.isEmpty()) {
      whole.put("grout", grout.get(0));
    }
    return new Draft(lines, whole);
  }

  private static Line line(Knowledge knowledge, BuildUp buildUp, StackLayer layer, String above) {
    String id = layer.kind().id();
    Map<String, String> keys = new LinkedHashMap<>();
    String kind =
        KINDS.names().stream()
            .filter(name -> KINDS.get(name).is().contains(id))
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("nobody can propose " + id));
    keys.put("kind", kind);
    if (layer.thickness().mean() > 0) {
      keys.put("thickness", number(Math.ceil(layer.thickness().mean() * 10 - 1e-6) / 10) + " mm");
    }
    List<String> classes = id.equals("tile") ? List.of() : classes(knowledge, buildUp, id);
    if (!classes.isEmpty()) {
      keys.put("class", "[" + String.join(", ", classes) + "]");
    }
    String family = layer.kind().family();
    if (family.equals("board") || family.equals("deck")) {
      keys.put("fixing", family.equals("board") ? "bonded and screwed" : "screwed only");
      keys.put("joints", "[staggered, clear of deck joints]");
      keys.put("screw centres", "300 mm");
      Fact screw = buildUp.facts().find("board screw");
      if (id.equals("new-deck")) {
        keys.put("screw length", "60 mm");
      } else if (screw != null) {
        keys.put("screw length", screw.text());
      }
    }
    coverage(buildUp, id, above).ifPresent(share -> keys.put("coverage", number(share) + " %"));
    Fact notch = buildUp.facts().find("notch");
    if (id.equals("tile-bed") && notch != null) {
      keys.put("notch", notch.text());
    }
    String step = KINDS.get(kind).waits().get(id);
    buildUp.of(StepTime.class).stream()
        .filter(wait -> wait.step().equals(step))
        .mapToDouble(wait -> wait.hours(buildUp.facts()))
        .max()
        .ifPresent(hours -> keys.put("wait after", number(Math.ceil(hours)) + " h"));
    return new Line(id, keys);
  }

  private static java.util.OptionalDouble coverage(BuildUp buildUp, String id, String above) {
    if (id.equals("tile-bed")) {
      return buildUp.of(CoverageTarget.class).stream()
          .mapToDouble(one -> one.figure().number())
          .max();
    }
    return buildUp.of(LayerCover.class).stream()
        .filter(one -> one.layer().equals(id) || (id.endsWith("-bed") && one.layer().equals(above)))
        .mapToDouble(one -> one.figure().number())
        .max();
  }

  private static List<String> classes(Knowledge knowledge, BuildUp buildUp, String layer) {
    List<String> grades = new ArrayList<>();
    for (LayerClass one : buildUp.of(LayerClass.class)) {
      if (one.layer().equals(layer)) {
        grades.add(one.grade());
      }
    }
    return MaterialClasses.strictest(knowledge, grades);
  }

  private static String number(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }
}
