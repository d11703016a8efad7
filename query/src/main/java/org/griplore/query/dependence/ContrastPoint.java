package org.griplore.query.dependence;

/**
 * One test in a plot or list of contrasts.
 *
 * @param date null when not stated
 * @param at the moderator, in its unit
 * @param difference the contrast as it is shown, plus: the first side is better
 * @param first tyres of the first side
 * @param second tyres of the second
 * @param weight what it counts in the fit: tyres of the two sides, ab/(a + b)
 * @param source number of the report
 */
public record ContrastPoint(
    String test,
    String date,
    double at,
    double difference,
    int first,
    int second,
    double weight,
    int source) {}
