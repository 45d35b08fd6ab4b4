package underfoot.reasoning;

import java.util.ArrayList;
import java.util.List;
import underfoot.buildup.LayerClass;
import underfoot.buildup.StackLayer;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Kinds;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.LayerKind;

/** Of what kinds of material a stack is, from the base up, as its passports have it. */
public final class StackKinds {
  private static final String LIES_ON = "what the build-up lies on";
  private static final String OF_CLASS = "passport of class";

  private final Knowledge knowledge;
  private final List<Classed> classed = new ArrayList<>();

  /** A kind of material that a class makes of a layer. */
  private record Classed(String kind, List<String> classes, String family) {}

  /**
   * @param knowledge the rows of materials
   */
  public StackKinds(Knowledge knowledge) {
    this.knowledge = knowledge;
    for (String kind : knowledge.kinds().kinds(LayersBeside.MATERIAL)) {
      String own = said(LayersBeside.MATERIAL, kind, OF_CLASS);
      if (!own.isEmpty()) {
        classed.add(new Classed(kind, List.of(own.split(", ")), family(kind)));
      }
    }
  }

  private String family(String kind) {
    return said(LayersBeside.UPPER, kind, "upper family");
  }

  /**
   * The kind of layer that a layer is by the classes asked of it: a bed of class R2 is of resin.
   */
  public LayerKind made(LayerKind layer, List<String> classes) {
    String made = of(layer.id(), MaterialClasses.strictest(knowledge, classes)).get(0);
    return knowledge.layers().has(made) ? knowledge.layers().get(made) : layer;
  }

  /** The classes that make a layer of a kind; none if no class does. */
  public List<String> classes(String kind) {
    return classed.stream()
        .filter(one -> one.kind().equals(kind))
        .flatMap(one -> one.classes().stream())
        .toList();
  }

  /** What a build-up lies on; empty where nothing known is left of the floor. */
  public static String beneath(Facts facts) {
    String named = facts.text(LIES_ON);
    return named.isEmpty() ? facts.text("base") : facts.text(named);
  }

  /** The kinds of a build-up that rules laid, with what it lies on first, where that is known. */
  List<String> of(BuildUp buildUp) {
    List<String> kinds = new ArrayList<>();
    String beneath = beneath(buildUp.facts());
    if (!beneath.isEmpty()) {
      kinds.add(beneath);
    }
    for (StackLayer layer : buildUp.stack().layers()) {
      kinds.addAll(of(buildUp, layer));
    }
    return kinds;
  }

  /** What a layer of a build-up is by the strictest of the classes that are asked of it there. */
  List<String> of(BuildUp buildUp, StackLayer layer) {
    String id = layer.kind().id();
    List<String> classes =
        buildUp.of(LayerClass.class).stream()
            .filter(one -> one.layer().equals(id))
            .map(LayerClass::grade)
            .toList();
    return of(id, MaterialClasses.strictest(knowledge, classes));
  }

  /**
   * What a layer is by its class, such as a bed of resin; and what is filled into it, such as grout
   * into the joints of tiles.
   *
   * @param layer the kind of layer
   * @param classes the classes of its materials
   */
  public List<String> of(String layer, List<String> classes) {
    String itself = layer;
    List<String> above = new ArrayList<>();
    for (Classed one : classed) {
      if (classes.stream().anyMatch(one.classes()::contains)) {
        if (one.family().equals(family(layer))) {
          itself = one.kind();
        } else {
          above.add(one.kind());
        }
      }
    }
    above.add(0, itself);
    return above;
  }

  private String said(String fact, String kind, String called) {
    return knowledge.kinds().of(fact, kind).stream()
        .filter(one -> one.called().equals(called))
        .map(Kinds.Said::value)
        .findFirst()
        .orElse("");
  }
}
