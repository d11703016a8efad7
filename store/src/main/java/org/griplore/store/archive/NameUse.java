package org.griplore.store.archive;

import org.griplore.store.vocabulary.Cell;

/**
 * Where current reports use a name.
 *
 * @param name the name
 * @param entries how many entries stand under it
 * @param tests in how many tests
 * @param notes how many notes are headed by it
 * @param file the first file that uses it
 * @param cell where in that file; null when it is not known
 */
public record NameUse(String name, int entries, int tests, int notes, String file, Cell cell) {}
