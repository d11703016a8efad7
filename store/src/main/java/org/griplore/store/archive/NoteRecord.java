package org.griplore.store.archive;

import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TestDate;

/**
 * A note with what it is about. Title, date, size, source, model and discipline may be null. Size
 * is that of the model's entry where it has one of its own, else the test's.
 *
 * @param id database number; grows in the order of adding
 * @param report number of the report it stands in
 * @param test the test's key
 * @param source who stands behind the report
 * @param model full name
 * @param discipline catalogue key
 */
public record NoteRecord(
    long id,
    int report,
    String file,
    String test,
    String title,
    TestDate date,
    String size,
    SourceKind source,
    String model,
    String discipline,
    String text,
    Cell cell) {}
