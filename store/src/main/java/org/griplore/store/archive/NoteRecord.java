package org.griplore.store.archive;

import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.TestDate;

/**
 * A note with what it is about. Model, discipline, date and size may be null.
 *
 * @param id database number; grows in the order of adding
 * @param revision number of the reading it stands in
 * @param test the test's key
 * @param model full name
 * @param discipline catalogue key
 */
public record NoteRecord(
    long id,
    int revision,
    String file,
    String test,
    String title,
    TestDate date,
    String size,
    String model,
    String discipline,
    String text,
    Cell cell) {}
