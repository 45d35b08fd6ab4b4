package underfoot.plan.setout;

import java.util.List;
import java.util.function.Supplier;

/**
 * Where every tile of a floor lies. Places are mm in the room.
 *
 * @param kind the way of laying
 * @param length the length of a tile, mm
 * @param width the width of a tile, mm
 * @param joint between tiles, mm
 * @param gap left at every wall, mm
 * @param direction the direction in which the tiles' length runs, degrees from the room's x
 * @param laid lays every tile and piece of one, each time it is asked
 * @param whole tiles that stay whole
 * @param cut tiles that are cut
 * @param boxed tiles taken from boxes for the cut ones; fewer, since offcuts serve again
 * @param walls how tiles are cut along each wall
 * @param movement movement joints within the floor
 * @param field the floor less the gap at every wall: rings, the gap being outside
 * @param start where the first tile goes
 * @param options the ways of starting that were compared, the chosen one first
 * @param tried how many starts were weighed
 * @param every whether no other start can be better; otherwise these are the best of those tried
 */
public record TileSetOut(
    Pattern.Kind kind,
    double length,
    double width,
    double joint,
    double gap,
    double direction,
    Supplier<List<Piece>> laid,
    long whole,
    int cut,
    int boxed,
    List<WallCuts> walls,
    List<Strip> movement,
    List<Ring> field,
    Start start,
    List<Option> options,
    long tried,
    boolean every) {
  /** Copies the lists. */
  public TileSetOut {
    walls = List.copyOf(walls);
    movement = List.copyOf(movement);
    field = List.copyOf(field);
    options = List.copyOf(options);
  }

  /** Every tile and piece of one; they are laid anew each time, since only drawings ask. */
  public List<Piece> pieces() {
    return laid.get();
  }

  /** Tiles taken from boxes in all. */
  public long tiles() {
    return whole + boxed;
  }

  /** The way of starting that was chosen. */
  public Option chosen() {
    return options.get(0);
  }

  /** The ways of starting, the chosen one first. */
  public List<Compared> compared() {
    return options.stream().map(one -> new Compared(one, one == chosen())).toList();
  }

  /** One way of starting, and whether it was chosen. */
  public record Compared(Option option, boolean chosen) {}

  /**
   * A closed line of places.
   *
   * @param xy places by turns x and y, mm; the first is not repeated
   */
  public record Ring(double[] xy) {
    /** Copies the places. */
    public Ring {
      xy = xy.clone();
    }
  }

  /**
   * A tile or what is left of one.
   *
   * @param whole whether it is uncut
   * @param rings its outlines, mm; more than one where a wall cuts it apart or stands within it
   * @param area mm2
   */
  public record Piece(boolean whole, List<Ring> rings, double area) {
    /** Copies the list. */
    public Piece {
      rings = List.copyOf(rings);
    }
  }

  /**
   * How tiles are cut along a wall: from the gap to the far edge of the piece.
   *
   * @param wall which wall of the outline
   * @param sizes the widths, mm, each with how many pieces have it, the most frequent first
   * @param least the narrowest, mm
   * @param most the widest, mm
   */
  public record WallCuts(int wall, List<Size> sizes, double least, double most) {
    /** Copies the list. */
    public WallCuts {
      sizes = List.copyOf(sizes);
    }
  }

  /**
   * A size and how many have it.
   *
   * @param mm the size to the nearest mm
   * @param count how many
   */
  public record Size(long mm, int count) {}

  /**
   * A movement joint: its middle line.
   *
   * @param x1 mm
   * @param y1 mm
   * @param x2 mm
   * @param y2 mm
   * @param width mm
   */
  public record Strip(double x1, double y1, double x2, double y2, double width) {}

  /**
   * Where the two lines cross that the first tile's corner is laid to.
   *
   * @param x mm
   * @param y mm
   * @param first the first tile, which has a corner there; a whole one where there is any near by
   * @param reaches what is measured to find the place, in the four directions of the lines
   */
  public record Start(double x, double y, Ring first, List<Reach> reaches) {
    /** Copies the list. */
    public Start {
      reaches = List.copyOf(reaches);
    }
  }

  /**
   * From the start along a line to a wall.
   *
   * @param wall which wall of the outline; -1 for a column
   * @param x where the wall is met, mm
   * @param y where the wall is met, mm
   * @param distance mm
   */
  public record Reach(int wall, double x, double y, double distance) {}

  /** Ways of starting. */
  public enum StartedFrom {
    /** Centred on the doorway, the first row whole at the door. */
    DOOR_WHOLE,
    /** Centred on the doorway, equal cuts at both ends of the view. */
    DOOR_EVEN,
    /** Centred on the room both ways. */
    ROOM,
    /** The best that was found. */
    FOUND
  }

  /**
   * A way of starting and what it comes to.
   *
   * @param way which
   * @param door which doorway; empty for none
   * @param turned whether the tiles' length runs across the room's longer side
   * @param whole tiles that stay whole
   * @param cut tiles that are cut
   * @param boxed tiles taken from boxes for them
   * @param narrow cuts narrower than wanted
   * @param narrowAtDoor those of them in a doorway
   * @param slivers cuts so narrow that they are hard to make
   * @param least the narrowest cut, mm; infinite where nothing is cut
   * @param offCentre directions that are not centred as wanted
   * @param points all of it weighed; fewer is better
   */
  public record Option(
      StartedFrom way,
      String door,
      boolean turned,
      long whole,
      int cut,
      int boxed,
      int narrow,
      int narrowAtDoor,
      int slivers,
      double least,
      int offCentre,
      double points) {
    /** The tiles it takes, with those that cuts are made of. */
    public long tiles() {
      return whole + boxed;
    }
  }
}
