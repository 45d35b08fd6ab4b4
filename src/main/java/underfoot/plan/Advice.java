package underfoot.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underfoot.buildup.LayerThickness;
import underfoot.buildup.Severity;
import underfoot.buildup.Verdict;
import underfoot.knowledge.TextParts;
import underfoot.reasoning.WhatIf.Otherwise;

/**
 * The advice on one floor, as flat data. Every report is a view of it.
 *
 * @param scenario the scenario's own name
 * @param file the file it was read from
 * @param practice whose guidance was followed
 * @param verdict the answer in one word
 * @param summary the answer in one or two sentences
 * @param base what the lowest layer lies on
 * @param way the way of building, as rules name it; empty if nothing is to be built
 * @param title the way of building in words; empty if nothing is to be built
 * @param layers from the stripped base to the tile
 * @param stopFindings what guidance says against it, or why the work must stop and whom to call
 * @param remedies what to put right first, hold points before the rest
 * @param cautions the worst first
 * @param coverage the contact aimed for under the tiles; empty if none was set
 * @param assumptions what the scenario does not say and was assumed
 * @param alternatives other ways: what comes next, what was ruled out, what else to think of
 * @param heights how far the floor rises and what that does to the doors
 * @param massKgPerM2 what the layers weigh, kg/m2
 * @param ranking what build-ups were ranked by, the weightiest first
 * @param consequences quantities, programme and cost
 * @param findOutFirst what is unknown and decisions hang on, in the order of a survey
 * @param first what a reader must know before all else
 * @param asFound the layers of the floor as it is today, from what carries it up; empty where the
 *     scenario tells it in short
 * @param zones parts of the room where the floor is otherwise; mostly none
 * @param joistCuts the joists with notches or holes, as they are drawn; mostly none
 */
public record Advice(
    String scenario,
    String file,
    String practice,
    Verdict verdict,
    String summary,
    String base,
    String way,
    String title,
    List<Layer> layers,
    List<HaltNote> stopFindings,
    List<RemedyNote> remedies,
    List<CautionNote> cautions,
    Optional<Coverage> coverage,
    List<Assumption> assumptions,
    List<Alternative> alternatives,
    Heights heights,
    double massKgPerM2,
    List<Ranking> ranking,
    Consequences consequences,
    List<FindOut> findOutFirst,
    FirstThings first,
    List<LayerFound> asFound,
    List<RoomZone> zones,
    List<JoistCuts> joistCuts) {

  /** Copies the lists. */
  public Advice {
    layers = List.copyOf(layers);
    stopFindings = List.copyOf(stopFindings);
    remedies = List.copyOf(remedies);
    cautions = List.copyOf(cautions);
    assumptions = List.copyOf(assumptions);
    alternatives = List.copyOf(alternatives);
    ranking = List.copyOf(ranking);
    findOutFirst = List.copyOf(findOutFirst);
    asFound = List.copyOf(asFound);
    zones = List.copyOf(zones);
    joistCuts = List.copyOf(joistCuts);
  }

  /** Whether anything is to be built. */
  public boolean builds() {
    return !layers.isEmpty();
  }

  /**
   * What would have to be put right first whichever of the changes is made, in a few words each,
   * besides what is told already.
   */
  public List<String> firstWithAnyChange() {
    List<ChangeNote> changes = consequences.changes();
    List<String> first =
        new ArrayList<>(changes.isEmpty() ? List.of() : changes.get(0).numbers().first());
    changes.forEach(change -> first.retainAll(change.numbers().first()));
    remedies.forEach(one -> first.remove(one.title()));
    return List.copyOf(first);
  }

  /** Every decision of this advice, in the order reports show them. */
  public List<Decision> decisions() {
    List<Decision> all = new ArrayList<>(stopFindings);
    all.addAll(layers);
    all.addAll(remedies);
    all.addAll(cautions);
    coverage.ifPresent(all::add);
    all.addAll(consequences.programme());
    all.addAll(assumptions);
    all.addAll(alternatives);
    all.addAll(ranking);
    return List.copyOf(all);
  }

  /** Anything that was decided: it has an id that {@code why} explains, and reasons. */
  public interface Decision {
    /** The id by which {@code why} explains it. */
    String id();

    /** The decision in a few words. */
    String heading();

    /** Why; at least one. */
    List<Justification> because();
  }

  /** What is told in a text whose parts are told apart. */
  public interface Told {
    /** The sentences by part. */
    TextParts parts();

    /** All of the text. */
    default String text() {
      return parts().whole();
    }
  }

  /**
   * A text of advice on something.
   *
   * @param parts the sentences
   * @param general whether it is said of every such layer, or told among what the layer is known by
   * @param because the rules that say so
   */
  public record Say(TextParts parts, boolean general, List<Justification> because) implements Told {
    /** Copies the list. */
    public Say {
      because = List.copyOf(because);
    }

    /** A text that is this floor's own. */
    public Say(TextParts parts, List<Justification> because) {
      this(parts, false, because);
    }
  }

  /**
   * One layer.
   *
   * @param id the kind of layer
   * @param order its place from the base, 1 being the lowest
   * @param name what it is called in a drawing
   * @param material what it is made of, by kind and class
   * @param family the group it belongs to, such as {@code board}
   * @param thickness how thick it comes out, mm
   * @param level how high its top stands above the base, mm, at the mean thickness of all below
   * @param reasons why it is laid
   * @param spec what is asked of it
   * @param fixing how it is fixed
   * @param coveragePercent the contact its bed must have; empty if none was set
   * @param ownReason whether it is laid for a reason that does not hold of every such layer
   * @param key what is set, cut or combed by it, each in a few words: classes, notch, screws, joint
   * @param drawn how large what is drawn of it is, mm: its notch, its screw
   * @param because why it is laid, and all that is asked of it
   */
  public record Layer(
      String id,
      int order,
      String name,
      String material,
      String family,
      LayerThickness thickness,
      double level,
      List<Justification> reasons,
      List<Say> spec,
      List<Say> fixing,
      Optional<Double> coveragePercent,
      boolean ownReason,
      List<String> key,
      Map<String, Double> drawn,
      List<Justification> because)
      implements Decision {
    /** Copies the lists. */
    public Layer {
      reasons = List.copyOf(reasons);
      spec = List.copyOf(spec);
      fixing = List.copyOf(fixing);
      key = List.copyOf(key);
      drawn = Map.copyOf(drawn);
      because = List.copyOf(because);
    }

    @Override
    public String heading() {
      return name;
    }

    /** How it is fixed, in one text. */
    public String fixingText() {
      return String.join(" ", fixing.stream().map(Say::text).toList());
    }
  }

  /**
   * What guidance says against the floor, or why the work must stop.
   *
   * @param id the wording, and what it is about
   * @param verdict what it makes of the answer
   * @param title a few words
   * @param parts what it says and whom to call
   * @param because why
   */
  public record HaltNote(
      String id, Verdict verdict, String title, TextParts parts, List<Justification> because)
      implements Decision, Told {
    @Override
    public String heading() {
      return title;
    }
  }

  /**
   * Something to be put right first.
   *
   * @param id the wording, and what it is about
   * @param hold whether it is a hold point: to be cleared before any work
   * @param undated whether nobody can say when it is done, so that the programme counts from then
   * @param title a few words
   * @param parts what to do
   * @param about which of several things it is about; empty for the room
   * @param because why
   */
  public record RemedyNote(
      String id,
      boolean hold,
      boolean undated,
      String title,
      TextParts parts,
      String about,
      List<Justification> because)
      implements Decision, Told {
    @Override
    public String heading() {
      return title;
    }
  }

  /**
   * A caution.
   *
   * @param id the wording, and what it is about
   * @param severity how bad it can be
   * @param title a few words
   * @param parts the danger, whom it hurts and what to do instead; or the text
   * @param about which of several things it is about; empty for the room
   * @param general whether it holds on nearly every floor
   * @param because why
   */
  public record CautionNote(
      String id,
      Severity severity,
      String title,
      TextParts parts,
      String about,
      boolean general,
      List<Justification> because)
      implements Decision, Told {
    @Override
    public String heading() {
      return title;
    }
  }

  /**
   * The contact aimed for under the tiles.
   *
   * @param targetPercent share of each tile's back
   * @param check how to check it on site
   * @param because why
   */
  public record Coverage(double targetPercent, List<Say> check, List<Justification> because)
      implements Decision {
    /** Its id. */
    public static final String ID = "coverage";

    @Override
    public String id() {
      return ID;
    }

    @Override
    public String heading() {
      return "Contact under the tiles";
    }
  }

  /**
   * A fact that was assumed.
   *
   * @param fact the scenario key
   * @param called its name in plain words
   * @param assumed the value taken
   * @param look how to find out
   * @param changes the other values tried that would change something, and what becomes of each
   * @param wouldChange the same in words, one sentence for each
   * @param because why it was assumed so
   */
  public record Assumption(
      String fact,
      String called,
      String assumed,
      String look,
      List<Otherwise> changes,
      List<String> wouldChange,
      List<Justification> because)
      implements Decision {
    /** Copies the lists. */
    public Assumption {
      changes = List.copyOf(changes);
      wouldChange = List.copyOf(wouldChange);
    }

    @Override
    public String id() {
      return fact;
    }

    @Override
    public String heading() {
      return called;
    }
  }

  /** How an alternative stands. */
  public enum Standing {
    /** It is the way recommended. */
    RECOMMENDED("recommended"),
    /** It may be built too, but another way comes first. */
    SECOND_CHOICE("second choice"),
    /** It must not be built here. */
    RULED_OUT("ruled out"),
    /** Another thing to think of, such as another finish. */
    SUGGESTION("second choice");

    private final String word;

    Standing(String word) {
      this.word = word;
    }

    /** The word used in JSON. */
    public String word() {
      return word;
    }
  }

  /**
   * Another way.
   *
   * @param id the way of building, or the wording of a suggestion
   * @param standing how it stands
   * @param title a few words
   * @param text why it comes second, or why it is ruled out
   * @param because why
   */
  public record Alternative(
      String id, Standing standing, String title, String text, List<Justification> because)
      implements Decision {
    @Override
    public String heading() {
      return title;
    }

    /** What it is: a way of building, or a suggestion. */
    public String kind() {
      return standing == Standing.SUGGESTION ? "suggestion" : "build-up";
    }
  }

  /**
   * What the build-up does to levels.
   *
   * @param rise how thick all layers are together, from the stripped base up, mm
   * @param aboveOldFloor how much higher than the old floor the tiles come, mm; less than the rise
   *     where the old deck is taken up
   * @param doors what is left under each door
   */
  public record Heights(LayerThickness rise, LayerThickness aboveOldFloor, List<Door> doors) {
    /** Copies the list. */
    public Heights {
      doors = List.copyOf(doors);
    }

    /** Where the surface that the layers lie on stands against the old floor, mm; never above. */
    public double ofBase() {
      return aboveOldFloor.mean() - rise.mean();
    }
  }

  /**
   * One door.
   *
   * @param name its name
   * @param gapLeftMm what is left under its leaf at the highest point, mm; negative if the leaf is
   *     in the way, NaN if it is not known
   * @param besideThePourMm what is left under it where the compound stops short of it, mm; NaN
   *     where none does
   * @param endsShort whether the leaf opens away and the floor ends short of it, so that it passes
   * @param fits whether the leaf passes; empty if it is not known
   * @param tight whether it passes with less beneath it than it should have
   * @param stepMm the step at the threshold, mm; NaN if it is not known
   * @param aboveBeyondMm how much higher the new floor ends than the floor beyond, mm; negative
   *     where that one is higher, NaN if it is not known
   */
  public record Door(
      String name,
      double gapLeftMm,
      double besideThePourMm,
      boolean endsShort,
      Optional<Boolean> fits,
      boolean tight,
      double stepMm,
      double aboveBeyondMm) {
    /**
     * What is left under the leaf as the floor is built, the pour stopped short where it is, mm;
     * NaN if it is not known or the floor ends short of the leaf.
     */
    public double gapInTheEndMm() {
      return endsShort ? Double.NaN : Double.isNaN(besideThePourMm) ? gapLeftMm : besideThePourMm;
    }
  }

  /**
   * What build-ups are ranked by.
   *
   * @param order its place, from 1
   * @param name the criterion
   * @param because why
   */
  public record Ranking(int order, String name, List<Justification> because) implements Decision {
    @Override
    public String id() {
      return "ranking-" + name.replace(' ', '-');
    }

    @Override
    public String heading() {
      return name;
    }
  }
}
