package underfoot.working;

/**
 * The first day a heated screed may be warmed.
 *
 * @param cementDay for a cement screed, days from laying
 * @param calciumSulfateDay for a calcium sulfate screed, days from laying
 */
public record HeatingStart(double cementDay, double calciumSulfateDay) {}
