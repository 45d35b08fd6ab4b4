package underfoot.scenario;

/** A place in a file. */
interface Spot {
  /** The line, from 1; 0 if there is none. */
  int line();

  /** The column in characters, from 1; 0 if there is none. */
  int column();
}
