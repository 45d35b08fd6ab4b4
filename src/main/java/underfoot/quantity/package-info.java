/**
 * Numbers with their units, and words as people write them: one table of units and one parser for
 * scenarios, figures, prices and {@code work-out}. This package knows no other package of the
 * project.
 */
package underfoot.quantity;
