/**
 * Setting out as pure geometry: tiles in a room of any shape, and boards over a deck. Nothing here
 * knows rules or scenarios; every limit and weight is handed in. Lengths are mm.
 */
package underfoot.plan.setout;
