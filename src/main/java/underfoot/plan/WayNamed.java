package underfoot.plan;

import java.util.ArrayList;
import java.util.List;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Phrases;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.FoundLayers;

/**
 * What a way of building is called beside the recommended one. The same way may begin from another
 * layer of the floor as it is today, and then it says what is taken up or left for it.
 *
 * @param id the way, with what sets it apart
 * @param title the same in plain words
 */
record WayNamed(String id, String title) {
  /**
   * Names a way.
   *
   * @param way the way
   * @param floor what is held of the floor where the recommended way begins
   */
  static WayNamed of(BuildUp way, Facts floor, Phrases phrases) {
    List<String> up = new ArrayList<>();
    List<String> left = new ArrayList<>();
    for (String layer : FoundLayers.names(floor)) {
      boolean stays = FoundLayers.stays(way.facts(), layer);
      if (stays != FoundLayers.stays(floor, layer)) {
        (stays ? left : up).add(layer);
      }
    }
    String said = said("way-takes-up", up, phrases) + said("way-leaves", left, phrases);
    return new WayNamed(way.way() + said, phrases.way(way.way()) + said);
  }

  private static String said(String id, List<String> layers, Phrases phrases) {
    return layers.isEmpty() ? "" : ", " + phrases.say(id, "layers", String.join(" and ", layers));
  }
}
