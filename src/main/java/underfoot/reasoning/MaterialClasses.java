package underfoot.reasoning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import underfoot.knowledge.Knowledge;

/** Which of several classes of material holds. */
public final class MaterialClasses {
  private static final String STANDS_FOR = " stands for";

  private MaterialClasses() {}

  /**
   * The strictest of several classes on each scale.
   *
   * @param knowledge where the scales are
   * @param grades the classes asked for
   * @return one class for each scale, and those on no scale as they are
   */
  public static List<String> strictest(Knowledge knowledge, List<String> grades) {
    Map<String, String> best = new LinkedHashMap<>();
    for (String grade : grades) {
      String scale = scaleOf(knowledge, grade);
      best.merge(
          scale,
          grade,
          (a, b) -> {
            List<String> order = knowledge.scales().get(scale);
            return order == null || order.indexOf(a) >= order.indexOf(b) ? a : b;
          });
    }
    for (String scale : List.copyOf(best.keySet())) {
      // a class of one sort of material leaves nothing to say of another sort
      best.keySet().removeAll(knowledge.scales().getOrDefault(scale + STANDS_FOR, List.of()));
    }
    return new ArrayList<>(best.values());
  }

  /** The name of the scale a class stands on; the class itself if it stands on none. */
  public static String scaleOf(Knowledge knowledge, String grade) {
    for (Map.Entry<String, List<String>> scale : knowledge.scales().entrySet()) {
      if (scale.getValue().contains(grade)) {
        return scale.getKey();
      }
    }
    return grade;
  }
}
