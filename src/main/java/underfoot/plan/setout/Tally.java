package underfoot.plan.setout;

/**
 * What a start comes to.
 *
 * @param whole tiles that stay whole
 * @param cut tiles that are cut
 * @param boxed tiles taken from boxes for the cut ones, offcuts being used again
 * @param narrow cuts narrower than wanted, slivers left out
 * @param narrowAtDoor those of them in a doorway
 * @param slivers cuts so narrow that they are hard to make
 * @param least the narrowest cut, mm; infinite where nothing is cut
 */
record Tally(
    long whole, int cut, int boxed, int narrow, int narrowAtDoor, int slivers, double least) {
  double points(Weights w) {
    return w.tile() * (whole + boxed)
        + w.cut() * cut
        + w.narrow() * narrow
        + w.narrowAtDoor() * narrowAtDoor
        + w.sliver() * slivers;
  }
}
