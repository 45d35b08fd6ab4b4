/**
 * The scenario file: YAML in, checked facts out.
 *
 * <p>What may be said in a scenario is data ({@code rules/facts/*.yaml}, held by {@link
 * underfoot.scenario.FactBook}). {@link underfoot.scenario.ScenarioReader} reads a file into a
 * {@link underfoot.scenario.Scenario}, or reports every fault in it at once with line, column and
 * how to write it. This package knows no other package of the project but {@code quantity}.
 */
package underfoot.scenario;
