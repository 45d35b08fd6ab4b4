package underfoot.knowledge;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import underfoot.scenario.RuleFiles;

/** The kinds of layer a build-up may have, by id. */
public final class Layers {
  private final Map<String, LayerKind> byId;

  private Layers(Map<String, LayerKind> byId) {
    this.byId = byId;
  }

  static Layers load(RuleFiles files) throws KnowledgeFault {
    Map<String, LayerKind> byId = new LinkedHashMap<>();
    for (Entries.Entry entry : Entries.readFolder(files, "layers")) {
      if (!entry.fields().containsKey("family")) {
        continue; // a scale of classes
      }
      int place;
      try {
        place = Integer.parseInt(entry.required("place"));
      } catch (NumberFormatException e) {
        throw new KnowledgeFault(
            entry.file(), entry.line(), "'" + entry.name() + "' needs a whole number as place");
      }
      byId.put(
          entry.name(),
          new LayerKind(
              entry.name(),
              entry.required("name"),
              entry.required("material"),
              entry.required("family"),
              place,
              entry.required("thickness"),
              entry.field("mass"),
              entry.field("conductivity"),
              entry.field("modulus"),
              entry.field("sunk").equals("yes")));
    }
    return new Layers(byId);
  }

  /**
   * One kind of layer.
   *
   * @throws MissingKnowledge if there is none of that id
   */
  public LayerKind get(String id) {
    LayerKind kind = byId.get(id);
    if (kind == null) {
      throw new MissingKnowledge("layer", id);
    }
    return kind;
  }

  /** Whether there is a kind of that id. */
  public boolean has(String id) {
    return byId.containsKey(id);
  }

  /** All kinds. */
  public Collection<LayerKind> all() {
    return byId.values();
  }
}
