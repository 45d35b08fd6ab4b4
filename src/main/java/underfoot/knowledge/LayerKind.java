package underfoot.knowledge;

import java.util.List;

/**
 * A kind of layer that a build-up may have.
 *
 * @param id such as {@code rigid-board}
 * @param name its name in a drawing
 * @param material what it is made of, by kind and class
 * @param family the group rules speak of: primer, deck, bed, board, leveller, heating, membrane,
 *     sealing or tile
 * @param rank which it is of all kinds from the base up, as their rows' relations have it
 * @param thickness a figure's name, {@code none}, {@code the pour}, or {@code the} followed by a
 *     fact's name
 * @param mass the name of the figure for its mass per square metre and millimetre; empty if nothing
 *     worth counting
 * @param conductivity the name of the figure for its thermal conductivity; empty if too thin to
 *     count
 * @param modulus the name of the figure for its modulus of elasticity, where it stiffens the deck
 *     between joists; otherwise empty
 * @param sunk whether it lies below the tops of the joists, so that it raises nothing
 * @param acts what is done to lay it
 * @param step the step in which it is laid
 * @param sets the step in which it sets or dries; empty if it need not
 */
public record LayerKind(
    String id,
    String name,
    String material,
    String family,
    int rank,
    String thickness,
    String mass,
    String conductivity,
    String modulus,
    boolean sunk,
    List<String> acts,
    String step,
    String sets) {
  /** Copies the list. */
  public LayerKind {
    acts = List.copyOf(acts);
  }
}
