package org.griplore.query.profile;

/**
 * One result of a model.
 *
 * @param test the test's key
 * @param date as exactly as known; null when not stated
 * @param size the size tested; null when not stated
 * @param value as the archive keeps it; null when there is a place only
 * @param unit symbol of its unit; null without a value
 * @param place standard competition rank; null when there is none
 * @param field how many were ranked
 * @param basis {@code published}, {@code computed} or {@code none}
 * @param source number of the report in the answer's sources
 * @param result number of the stored result
 */
public record ProfileResult(
    String test,
    String date,
    String size,
    Double value,
    String unit,
    Integer place,
    int field,
    String basis,
    int source,
    long result) {}
