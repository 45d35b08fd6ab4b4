/**
 * The workings: every formula the advice rests on, one class a working.
 *
 * <p>A working can be used in two ways: as a plain typed method ({@code of}) that takes numbers in
 * the units its parameter names say, and by name through {@link underfoot.working.Workings}, where
 * keys are text with units. Limits and material values are parameters; their defaults are figures.
 * This package imports no other package of the project.
 */
package underfoot.working;
