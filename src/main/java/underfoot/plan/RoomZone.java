package underfoot.plan;

/**
 * A part of the room where the floor is otherwise.
 *
 * @param name what it is called
 * @param areaM2 its area, m2
 * @param surfaceMm how much higher its surface stands today than the rest of the floor, mm
 * @param levelMm where its finished floor comes to lie above the rest of the floor as it is today,
 *     mm; NaN if nothing is built there
 * @param stepMm how much higher it ends than the rest of the finished floor, mm; NaN if nothing is
 *     built
 * @param advice the advice on that part alone
 */
public record RoomZone(
    String name, double areaM2, double surfaceMm, double levelMm, double stepMm, Advice advice) {}
