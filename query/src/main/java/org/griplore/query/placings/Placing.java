package org.griplore.query.placings;

/**
 * One place of a model in a test.
 *
 * @param test the test's key
 * @param date as exactly as known; null when not stated
 * @param place standard competition rank
 * @param field how many were ranked
 * @param named how many of them the reports name with a result; fewer where a field is cut
 * @param tied whether another model shares the place
 * @param basis {@code published} or {@code computed}
 * @param source number of the report in the answer's sources
 * @param result number of the result the place rests on
 */
public record Placing(
    String test,
    String date,
    int place,
    int field,
    int named,
    boolean tied,
    String basis,
    int source,
    long result) {}
