package org.griplore.store.text;

import java.util.SortedMap;

/**
 * How the notes that match a query are spread. Notes without the detail are in {@code total} only.
 *
 * @param total all notes that match
 * @param models by full name
 * @param disciplines by catalogue key
 * @param years by year of the test
 */
public record NoteCounts(
    long total,
    SortedMap<String, Integer> models,
    SortedMap<String, Integer> disciplines,
    SortedMap<Integer, Integer> years) {}
