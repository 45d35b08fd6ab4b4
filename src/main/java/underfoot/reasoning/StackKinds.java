package underfoot.reasoning;

import java.util.ArrayList;
import java.util.List;
import underfoot.buildup.LayerClass;
import underfoot.buildup.StackLayer;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Kinds;
import underfoot.knowledge.Knowledge;

/** Of what kinds of material a stack is, from the base up, as its passports have it. */
final class StackKinds {
  private static final String LIES_ON = "what the build-up lies on";
  private static final String OF_CLASS = "passport of class";

  private final Knowledge knowledge;

  /**
   * @param knowledge the rows of materials
   */
  StackKinds(Knowledge knowledge) {
    this.knowledge = knowledge;
  }

  /** What a build-up lies on; empty where nothing known is left of the floor. */
  static String beneath(Facts facts) {
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
      String id = layer.kind().id();
      List<String> classes =
          buildUp.of(LayerClass.class).stream()
              .filter(one -> one.layer().equals(id))
              .map(LayerClass::grade)
              .toList();
      kinds.addAll(of(id, MaterialClasses.strictest(knowledge, classes)));
    }
    return kinds;
  }

  /**
   * What a layer is by its class, such as a bed of resin; and what is filled into it, such as grout
   * into the joints of tiles.
   *
   * @param layer the kind of layer
   * @param classes the classes of its materials
   */
  List<String> of(String layer, List<String> classes) {
    String itself = layer;
    List<String> above = new ArrayList<>();
    for (String kind : knowledge.kinds().kinds(LayersBeside.MATERIAL)) {
      List<String> own = List.of(said(LayersBeside.MATERIAL, kind, OF_CLASS).split(", "));
      if (classes.stream().anyMatch(own::contains)) {
        if (said(LayersBeside.UPPER, kind, "upper family")
            .equals(said(LayersBeside.UPPER, layer, "upper family"))) {
          itself = kind;
        } else {
          above.add(kind);
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
