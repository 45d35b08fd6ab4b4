package underfoot.reasoning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import underfoot.buildup.StackLayer;
import underfoot.knowledge.ProposedKinds.Kind;

/**
 * How the layers of a proposal match those of a build-up that the rules laid.
 *
 * @param buildUp the build-up
 * @param places where each layer of the proposal stands in it, in the order of the proposal
 * @param missing the layers of the build-up that the proposal lacks
 * @param likeness how much the two have in common, 0 to 1
 * @param mark the place in the proposal of the layer that fewest other ways have; -1 if it has none
 *     that is asked for
 */
public record ProposalMatch(
    BuildUp buildUp, List<Place> places, List<StackLayer> missing, double likeness, int mark) {
  /** What a match is worth, as a share of a full one. */
  private static final Map<How, Double> WORTH =
      Map.of(How.IS, 1.0, How.SERVES_AS, 0.75, How.STANDS_IN_FOR, 0.5, How.NOT_ASKED, 0.0);

  /** What a layer that no build-up has counts, beside one that every build-up has. */
  private static final double STRANGE = 0.25;

  /** What the match of a bed or primer is worth that carries another layer than it should. */
  private static final double CARRIES_ANOTHER = 0.3;

  /** Families of layers that only carry the layer above them. */
  static final Set<String> CARRIERS = Set.of("primer", "bed");

  /** How a proposed layer stands to what is asked. */
  public enum How {
    /** It is that layer. */
    IS,
    /** It does as well as that layer. */
    SERVES_AS,
    /** It takes the place of that layer and is none. */
    STANDS_IN_FOR,
    /** Nothing asks for it. */
    NOT_ASKED;

    /** The word rules use. */
    String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /**
   * The place of one proposed layer.
   *
   * @param how how it stands to what is asked
   * @param part the layer that is asked for in this place; null if none is
   * @param inOrder whether it comes in its turn
   */
  public record Place(How how, StackLayer part, boolean inOrder) {}

  /** Copies the lists. */
  public ProposalMatch {
    places = List.copyOf(places);
    missing = List.copyOf(missing);
  }

  /**
   * The build-up most like a proposal; of two equally like it the better ranked.
   *
   * @param proposed what each layer of the proposal is called, from the bottom
   * @param buildUps at least one build-up, the best first
   * @param byClass what a layer is by the classes asked of it
   */
  static ProposalMatch best(List<Kind> proposed, List<BuildUp> buildUps, StackKinds byClass) {
    Map<String, Double> weights = new HashMap<>();
    for (BuildUp buildUp : buildUps) {
      for (StackLayer layer : buildUp.stack().layers()) {
        weights.merge(layer.kind().id(), 1.0, Double::sum);
      }
    }
    // What sets one way apart from the others counts most.
    weights.replaceAll((id, count) -> 1 / count);
    ProposalMatch best = null;
    for (BuildUp buildUp : buildUps) {
      ProposalMatch fit = of(proposed, buildUp, weights, byClass);
      if (best == null || fit.likeness > best.likeness + 1e-9) {
        best = fit;
      }
    }
    return best;
  }

  private static ProposalMatch of(
      List<Kind> proposed, BuildUp buildUp, Map<String, Double> weights, StackKinds byClass) {
    List<StackLayer> parts = buildUp.stack().layers();
    Map<String, String> made = new HashMap<>();
    parts.forEach(part -> made.put(part.kind().id(), byClass.of(buildUp, part).get(0)));
    Place[] places = new Place[proposed.size()];
    boolean[] taken = new boolean[parts.size()];
    inTurn(proposed, parts, weights, made, places, taken);
    for (How how : List.of(How.IS, How.SERVES_AS, How.STANDS_IN_FOR)) {
      outOfTurn(proposed, parts, how, made, places, taken);
    }
    double matched = 0;
    double all = 0;
    List<StackLayer> missing = new ArrayList<>();
    for (int j = 0; j < parts.size(); j++) {
      all += weights.get(parts.get(j).kind().id());
      if (!taken[j]) {
        missing.add(parts.get(j));
      }
    }
    int mark = -1;
    double rarest = 0;
    for (int i = 0; i < places.length; i++) {
      if (places[i] == null) {
        places[i] = new Place(How.NOT_ASKED, null, true);
        all +=
            proposed.get(i).is().stream()
                .mapToDouble(id -> weights.getOrDefault(id, STRANGE))
                .max()
                .orElse(STRANGE);
      } else {
        double weight = weights.get(places[i].part().kind().id());
        matched += 2 * weight * WORTH.get(places[i].how()) * (places[i].inOrder() ? 1 : 0.5);
        all += weight;
        if (weight > rarest) {
          rarest = weight;
          mark = i;
        }
      }
    }
    return new ProposalMatch(buildUp, List.of(places), missing, all == 0 ? 0 : matched / all, mark);
  }

  /** The layers that a bed or primer is there to carry, from the next one up; none for others. */
  List<StackLayer> carried(StackLayer part) {
    List<StackLayer> asked = buildUp.stack().layers();
    List<StackLayer> carried = new ArrayList<>();
    StackLayer last = part;
    for (int j = asked.indexOf(part);
        j + 1 < asked.size() && CARRIERS.contains(last.kind().family());
        j++) {
      last = asked.get(j + 1);
      carried.add(last);
    }
    return carried;
  }

  /** Whether what a missing bed or primer carries is missing as well, so that it is not told. */
  boolean missingWithWhatItCarries(StackLayer part) {
    return carried(part).stream().anyMatch(missing::contains);
  }

  /** The name of the layer that sets the way apart; empty if no layer does. */
  String mark(List<String> layers) {
    return mark < 0 ? "" : layers.get(mark);
  }

  private static How how(Kind kind, StackLayer part, Map<String, String> made) {
    String id = part.kind().id();
    if (kind.is().contains(id) || kind.is().contains(made.get(id))) {
      return How.IS;
    }
    if (kind.serves().contains(id)) {
      return How.SERVES_AS;
    }
    return kind.instead().contains(id) ? How.STANDS_IN_FOR : How.NOT_ASKED;
  }

  /** The weightiest match that keeps both orders. */
  private static void inTurn(
      List<Kind> proposed,
      List<StackLayer> parts,
      Map<String, Double> weights,
      Map<String, String> made,
      Place[] places,
      boolean[] taken) {
    int n = proposed.size();
    int m = parts.size();
    double[][] best = new double[n + 1][m + 1];
    for (int i = n - 1; i >= 0; i--) {
      for (int j = m - 1; j >= 0; j--) {
        best[i][j] =
            Math.max(
                worth(proposed, i, parts, j, weights, made) + best[i + 1][j + 1],
                Math.max(best[i + 1][j], best[i][j + 1]));
      }
    }
    int i = 0;
    int j = 0;
    while (i < n && j < m) {
      double worth = worth(proposed, i, parts, j, weights, made);
      if (worth > 0 && best[i][j] == worth + best[i + 1][j + 1]) {
        places[i] = new Place(how(proposed.get(i), parts.get(j), made), parts.get(j), true);
        taken[j] = true;
        i++;
        j++;
      } else if (best[i][j] == best[i + 1][j]) {
        i++;
      } else {
        j++;
      }
    }
  }

  /** What a match is worth; a bed or primer that carries another layer than it should, little. */
  private static double worth(
      List<Kind> proposed,
      int i,
      List<StackLayer> parts,
      int j,
      Map<String, Double> weights,
      Map<String, String> made) {
    StackLayer part = parts.get(j);
    double worth = WORTH.get(how(proposed.get(i), part, made)) * weights.get(part.kind().id());
    boolean carries =
        !CARRIERS.contains(part.kind().family())
            || i + 1 == proposed.size()
            || j + 1 == parts.size()
            || how(proposed.get(i + 1), parts.get(j + 1), made) != How.NOT_ASKED;
    return carries ? worth : worth * CARRIES_ANOTHER;
  }

  private static void outOfTurn(
      List<Kind> proposed,
      List<StackLayer> parts,
      How how,
      Map<String, String> made,
      Place[] places,
      boolean[] taken) {
    for (int i = 0; i < places.length; i++) {
      for (int j = 0; j < parts.size() && places[i] == null; j++) {
        if (!taken[j] && how(proposed.get(i), parts.get(j), made) == how) {
          places[i] = new Place(how, parts.get(j), false);
          taken[j] = true;
        }
      }
    }
  }
}
