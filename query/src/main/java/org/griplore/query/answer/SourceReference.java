package org.griplore.query.answer;

/**
 * A test report that an answer rests on.
 *
 * @param id the report's number in the archive
 * @param title the report's title, or the test's key
 * @param kind {@code own}, {@code independent} or {@code maker}; null when not stated
 * @param date the test's date as exactly as known; null when not stated
 * @param test the test's key
 * @param file the file's name
 */
public record SourceReference(
    int id, String title, String kind, String date, String test, String file) {}
