package underfoot.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import underfoot.buildup.CoverageTarget;
import underfoot.buildup.LayerClass;
import underfoot.buildup.LayerCover;
import underfoot.buildup.StackLayer;
import underfoot.buildup.StepTime;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.ProposedKinds;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.MaterialClasses;
import underfoot.reasoning.StackKinds;

/**
 * A proposal that can still be changed: a build-up that the rules laid, as somebody would write it
 * who says everything.
 *
 * @param layers its layers from the bottom
 * @param whole its other keys
 */
public record ProposalDraft(List<Line> layers, Map<String, String> whole) {
  private static final double TENTHS = 10;
  private static final double HAIR = 1e-6;

  /**
   * A layer as a proposal writes it: keys and values in order.
   *
   * @param id the kind of layer it is made of
   * @param keys its keys
   */
  public record Line(String id, Map<String, String> keys) {
    Line copy() {
      return new Line(id, new LinkedHashMap<>(keys));
    }
  }

  /** Another that can be changed without this one. */
  public ProposalDraft copy() {
    List<Line> copied = new ArrayList<>();
    layers.forEach(line -> copied.add(line.copy()));
    return new ProposalDraft(copied, new LinkedHashMap<>(whole));
  }

  /** The proposal as a file says it. */
  public String yaml() {
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

  /**
   * A build-up as a proposal.
   *
   * @param knowledge where classes are compared
   * @param kinds what people call layers
   * @param buildUp the build-up
   */
  public static ProposalDraft of(Knowledge knowledge, ProposedKinds kinds, BuildUp buildUp) {
    List<Line> lines = new ArrayList<>();
    List<StackLayer> layers = buildUp.stack().layers();
    for (int i = 0; i < layers.size(); i++) {
      String above = i + 1 < layers.size() ? layers.get(i + 1).kind().id() : "";
      lines.add(line(knowledge, kinds, buildUp, layers.get(i), above));
    }
    Map<String, String> whole = new LinkedHashMap<>();
    whole.put("perimeter gap", knowledge.figures().get("movement-joint-width").text());
    buildUp.facts().all().stream()
        .filter(fact -> fact.name().equals("least joint"))
        .mapToDouble(Fact::number)
        .max()
        .ifPresent(widest -> whole.put("tile joint", number(widest) + " mm"));
    List<String> grout = classes(knowledge, buildUp, "tile");
    if (!grout.isEmpty()) {
      whole.put("grout", grout.get(0));
    }
    return new ProposalDraft(lines, whole);
  }

  private static Line line(
      Knowledge knowledge, ProposedKinds kinds, BuildUp buildUp, StackLayer layer, String above) {
    String id = layer.kind().id();
    Map<String, String> keys = new LinkedHashMap<>();
    List<String> asked = id.equals("tile") ? List.of() : classes(knowledge, buildUp, id);
    StackKinds stackKinds = new StackKinds(knowledge);
    // A class that is all its own is said by the name, as a bed that may be thick.
    String made = stackKinds.made(layer.kind(), asked).id();
    List<String> own = stackKinds.classes(made);
    boolean named = own.size() == 1 && asked.contains(own.get(0));
    List<String> classes = asked.stream().filter(one -> !named || !own.contains(one)).toList();
    String kind =
        kinds.names().stream()
            .filter(name -> kinds.get(name).is().contains(named ? made : id))
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("nobody can propose " + id));
    keys.put("kind", kind);
    if (layer.thickness().mean() > 0) {
      double tenths = Math.ceil(layer.thickness().mean() * TENTHS - HAIR) / TENTHS;
      keys.put("thickness", number(tenths) + " mm");
    }
    if (!classes.isEmpty()) {
      keys.put("class", "[" + String.join(", ", classes) + "]");
    }
    String family = layer.kind().family();
    if (family.equals("board") || family.equals("deck")) {
      keys.put("fixing", family.equals("board") ? "bonded and screwed" : "screwed only");
      keys.put("joints", "[staggered, clear of deck joints]");
      keys.put("screw centres", knowledge.figures().get("screw-spacing-most").text());
      Fact screw = buildUp.facts().find("board screw");
      if (id.equals("new-deck")) {
        keys.put("screw length", knowledge.figures().get("deck-screw-least").text());
      } else if (screw != null) {
        keys.put("screw length", screw.text());
      }
    }
    coverage(buildUp, id, above).ifPresent(share -> keys.put("coverage", number(share) + " %"));
    Fact notch = buildUp.facts().find("notch");
    if (id.equals("tile-bed") && notch != null) {
      keys.put("notch", notch.text());
    }
    String step = kinds.get(kind).waits().get(named ? made : id);
    buildUp.of(StepTime.class).stream()
        .filter(wait -> wait.step().equals(step))
        .mapToDouble(wait -> wait.hours(buildUp.facts()))
        .max()
        .ifPresent(hours -> keys.put("wait after", number(Math.ceil(hours)) + " h"));
    return new Line(id, keys);
  }

  private static OptionalDouble coverage(BuildUp buildUp, String id, String above) {
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
