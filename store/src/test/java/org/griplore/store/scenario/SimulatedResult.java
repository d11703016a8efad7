package org.griplore.store.scenario;

import java.util.OptionalDouble;

/**
 * One result of an entry in a discipline.
 *
 * @param value the mean of the runs in the canonical unit, unrounded
 * @param printed the same with the decimals that a tester prints
 * @param runs runs behind it; 0 where there are none (a price, a total)
 * @param spread standard deviation of those runs in the unit; empty below two runs
 * @param place standard competition ranking of the printed values within the test
 */
public record SimulatedResult(
    double value, double printed, int runs, OptionalDouble spread, int place) {}
