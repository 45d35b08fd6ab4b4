package underfoot.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import underfoot.buildup.LayerThickness;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.Advice;
import underfoot.plan.Advice.Door;
import underfoot.plan.Advice.RemedyNote;
import underfoot.plan.ProgrammeStep;
import underfoot.plan.QuantityLine;
import underfoot.plan.SetOut;
import underfoot.plan.setout.BoardPlan;
import underfoot.plan.setout.TileSetOut;
import underfoot.quantity.Spoken;

/** Sentences that the text and the page both say. */
public final class Sentences {
  private static final double WHOLE_FROM = 10;
  private static final double TENTHS = 10;
  private static final double NEARLY = 1e-9;

  /** Units of which a tenth is bought where there is little of it. */
  private static final List<String> FINE = List.of("kg", "L", "m2");

  private Sentences() {}

  /** A thickness; a coat has none to speak of. */
  public static String thickness(LayerThickness thickness, Phrases phrases) {
    if (thickness.max() == 0) {
      return phrases.say("a-coat");
    }
    return thickness.min() == thickness.max()
        ? Spoken.of(Texts.mm(thickness.mean()))
        : Texts.tenths(Math.rint(thickness.min())) + "–" + Texts.whole(thickness.max());
  }

  /** A thickness in millimetres without their name, for a column headed by it. */
  static String bareThickness(LayerThickness thickness, Phrases phrases) {
    if (thickness.max() == 0) {
      return phrases.say("a-coat");
    }
    return Texts.wholes(thickness.min(), thickness.max());
  }

  /** How high the floor comes, and what it weighs. */
  public static String rise(Advice.Heights heights, double massKgPerM2, Phrases phrases) {
    LayerThickness above = heights.aboveOldFloor();
    boolean below = above.max() < 0;
    LayerThickness rise =
        below ? new LayerThickness(-above.max(), -above.mean(), -above.min()) : above;
    return phrases.say(
        (rise.min() == rise.max() ? "rise-even" : "rise") + (below ? "-below" : ""),
        "mean",
        Texts.whole(rise.mean()),
        "least",
        Texts.whole(rise.min()),
        "most",
        Texts.whole(rise.max()),
        "mass",
        Texts.of(Math.round(massKgPerM2), "kg/m2"));
  }

  /** What becomes of a door. */
  public static String door(Door door, Phrases phrases) {
    double gap = door.gapInTheEndMm();
    String id = Double.isNaN(door.besideThePourMm()) ? state(door) : "door-beside-the-pour";
    return phrases.say(id, "door", Texts.capital(door.name()), "gap", Texts.whole(Math.abs(gap)));
  }

  private static String state(Door door) {
    if (door.endsShort()) {
      return "door-ended-short";
    }
    if (door.fits().isEmpty()) {
      return "door-unknown";
    } else if (door.fits().get()) {
      return door.tight() ? "door-tight" : "door-fits";
    }
    return door.gapLeftMm() < 0 ? "door-in-the-way" : "door-does-not-fit";
  }

  /** What becomes of a door, and the step in it. */
  public static String doorAndStep(Door door, Phrases phrases) {
    double above = Math.rint(door.aboveBeyondMm());
    if (Double.isNaN(above)) {
      return door(door, phrases);
    }
    String id = above == 0 ? "door-no-step" : above > 0 ? "door-step-down" : "door-step-up";
    return door(door, phrases) + ' ' + phrases.say(id, "step", Texts.whole(Math.abs(above)));
  }

  /** An amount as it is bought: whole pieces and metres, whole kilogrammes of what is heavy. */
  public static String amount(QuantityLine line, Phrases phrases) {
    if (Double.isNaN(line.amount())) {
      return phrases.say("amount-not-known");
    }
    return amount(line.amount(), line.unit());
  }

  /** An amount with its unit, rounded up as it is asked for. */
  static String amount(double amount, String unit) {
    boolean fine = amount < WHOLE_FROM && FINE.stream().anyMatch(unit::startsWith);
    double parts = fine ? TENTHS : 1;
    return Texts.of(Math.ceil(amount * parts - NEARLY) / parts, unit);
  }

  /** From when the programme counts, what is marked in it, and what comes before. */
  public static String programme(
      ProgrammeStep first, boolean remedies, String marked, Phrases phrases) {
    String from =
        first
            .begins()
            .map(start -> phrases.say("programme-dated", "start", TimeText.day(start)))
            .orElseGet(() -> phrases.say("programme-monday"));
    String before = first.begins().isPresent() ? "programme-by-then" : "programme-from";
    return from + ' ' + phrases.say(marked) + (remedies ? ' ' + phrases.say(before) : "");
  }

  /** What the days count from that nobody can date; empty if there is none. */
  public static Optional<String> undated(Advice advice, Phrases phrases) {
    List<String> titles =
        advice.remedies().stream().filter(RemedyNote::undated).map(RemedyNote::title).toList();
    return titles.isEmpty()
        ? Optional.empty()
        : Optional.of(phrases.say("programme-undated", "what", String.join("; ", titles)));
  }

  /** The tiles: their pattern, size and gaps. */
  public static String tiles(SetOut.Tiles tiles, Phrases phrases) {
    TileSetOut out = tiles.layout();
    String closed =
        tiles.closedBy() == 0
            ? ""
            : ' '
                + phrases.say(
                    "joints-closed",
                    "by",
                    Texts.mm(Math.round(tiles.closedBy() * 10) / 10.0),
                    "joint",
                    Texts.mm(out.joint() + tiles.closedBy()));
    return phrases.say(
            "tiles-intro",
            "pattern",
            phrases.say("pattern-" + out.kind().words().replace(' ', '-')),
            "length",
            Texts.tenths(out.length()),
            "width",
            Texts.mm(out.width()),
            "joint",
            Texts.mm(Math.round((out.joint() + tiles.closedBy()) * 10) / 10.0),
            "gap",
            Texts.mm(out.gap()))
        + closed;
  }

  /** How far the lines to start from lie from the walls. */
  public static String startLines(TileSetOut out, Phrases phrases) {
    StringBuilder reaches = new StringBuilder();
    for (TileSetOut.Reach reach : out.start().reaches()) {
      String wall = reach.wall() < 0 ? phrases.say("a-column") : "W" + reach.wall();
      reaches.append(reaches.isEmpty() ? "" : "; ");
      reaches.append(phrases.say("reach", "distance", Texts.whole(reach.distance()), "wall", wall));
    }
    return phrases.say("start-lines", "reaches", reaches.toString());
  }

  /** Where a way of setting out starts. */
  public static String start(TileSetOut.Option option, Phrases phrases) {
    String way = option.way().name().toLowerCase(Locale.ROOT).replace('_', '-');
    return phrases.say("option-" + way, "door", option.door());
  }

  /** How many tiles are whole, cut and to be ordered. */
  public static String count(SetOut.Tiles tiles, Phrases phrases) {
    TileSetOut out = tiles.layout();
    return phrases.say(
        "tiles-count",
        "whole",
        Long.toString(out.whole()),
        "cut",
        Integer.toString(out.cut()),
        "boxed",
        Integer.toString(out.boxed()),
        "all",
        Long.toString(out.tiles()),
        "breakage",
        Texts.of(tiles.breakagePercent(), "%"),
        "order",
        Long.toString(tiles.toOrder()));
  }

  /** The boards: their size, direction, joints and gaps. */
  public static String boards(BoardPlan plan, Phrases phrases) {
    return phrases.say(
        "boards-intro",
        "length",
        Texts.tenths(plan.length()),
        "width",
        Texts.mm(plan.width()),
        "axis",
        plan.axis(),
        "joint",
        plan.joint() > 0
            ? phrases.say("board-joint", "joint", Texts.mm(plan.joint()))
            : phrases.say("board-butted"),
        "gap",
        Texts.mm(plan.gap()));
  }

  /** How many boards, and pieces of them. */
  public static String count(BoardPlan plan, Phrases phrases) {
    return phrases.say(
        "boards-count",
        "boards",
        Integer.toString(plan.boards()),
        "pieces",
        Integer.toString(plan.pieces().size()));
  }
}
