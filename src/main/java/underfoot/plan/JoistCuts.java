package underfoot.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figures;
import underfoot.plan.Advice.RemedyNote;

/**
 * The notches and holes of one joist, as they are drawn.
 *
 * @param joist which joist it is; empty where nobody has said
 * @param spanMm from support to support, mm
 * @param depthMm how deep the joist is, mm
 * @param zones where guidance lets notches and holes lie; empty where no such zones hold
 * @param cuts along the joist, from the nearer support
 */
public record JoistCuts(
    String joist, double spanMm, double depthMm, List<Zone> zones, List<Cut> cuts) {
  private static final double HUNDRED = 100;

  /** Copies the lists. */
  public JoistCuts {
    zones = List.copyOf(zones);
    cuts = List.copyOf(cuts);
  }

  /**
   * Where cuts of one sort may lie.
   *
   * @param hole whether it is for holes on the middle line; else for notches in the top
   * @param fromMm where it begins, from the support, mm
   * @param toMm where it ends, mm
   * @param mostMm how deep or wide a cut may be there, mm
   */
  public record Zone(boolean hole, double fromMm, double toMm, double mostMm) {}

  /**
   * A notch or a hole.
   *
   * @param name what it is called
   * @param hole whether it is a hole; else a notch
   * @param fromSupportMm from the nearer support, mm
   * @param sizeMm how deep or wide it is, mm
   * @param gated whether something must be cleared about it before any work
   */
  public record Cut(
      String name, boolean hole, double fromSupportMm, double sizeMm, boolean gated) {}

  /**
   * The joists with cuts whose place and size are known, by what they are called; none where the
   * joists were not measured.
   *
   * @param facts what is held of the floor
   * @param figures where cuts may lie
   * @param remedies what must be cleared
   */
  static List<JoistCuts> of(Facts facts, Figures figures, List<RemedyNote> remedies) {
    double span = facts.number("joist span");
    double depth = facts.number("joist depth");
    if (Double.isNaN(span) || Double.isNaN(depth)) {
      return List.of();
    }
    List<String> gated = remedies.stream().filter(RemedyNote::hold).map(RemedyNote::about).toList();
    Map<String, List<Cut>> byJoist = new TreeMap<>();
    gather("notch from support", "notch depth", "notched joist", false, facts, gated, byJoist);
    gather("hole from support", "hole diameter", "bored joist", true, facts, gated, byJoist);
    List<Zone> zones = zones(span, depth, facts, figures);
    List<JoistCuts> all = new ArrayList<>();
    byJoist.forEach(
        (joist, cuts) -> {
          cuts.sort(Comparator.comparingDouble(Cut::fromSupportMm));
          all.add(new JoistCuts(joist, span, depth, zones, cuts));
        });
    return List.copyOf(all);
  }

  private static void gather(
      String place,
      String size,
      String joist,
      boolean hole,
      Facts facts,
      List<String> gated,
      Map<String, List<Cut>> byJoist) {
    for (String name : facts.abouts(size)) {
      double from = facts.number(place, name);
      double large = facts.number(size, name);
      if (Double.isNaN(from) || Double.isNaN(large)) {
        continue;
      }
      Fact in = facts.find(joist, name);
      byJoist
          .computeIfAbsent(in == null ? "" : in.text(), none -> new ArrayList<>())
          .add(new Cut(name, hole, from, large, gated.contains(name)));
    }
  }

  /** The published zones; none where the carrier is judged by others or deeper than they hold. */
  private static List<Zone> zones(double span, double depth, Facts facts, Figures figures) {
    if (facts.find("carrier judged by") != null || depth > figures.get("cut-joist-most").number()) {
      return List.of();
    }
    return List.of(
        new Zone(
            false,
            share("notch-zone-from", span, figures),
            share("notch-zone-to", span, figures),
            share("notch-depth-most", depth, figures)),
        new Zone(
            true,
            share("hole-zone-from", span, figures),
            share("hole-zone-to", span, figures),
            share("hole-size-most", depth, figures)));
  }

  private static double share(String figure, double whole, Figures figures) {
    return figures.get(figure).number() / HUNDRED * whole;
  }
}
