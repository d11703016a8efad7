package org.griplore.store.text;

import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TestDate;

/**
 * A note that was found. Title, date, model, discipline, size and source are null when not stated.
 *
 * @param noteId database number, as in the archive's notes
 * @param test the test's key
 * @param title the test's title
 * @param date the test's date
 * @param model full name of the model it is about; null for the test as a whole
 * @param discipline catalogue key
 * @param size the size tested
 * @param source who stands behind the report
 * @param file the file it stands in
 * @param report number of the report it stands in
 * @param text the whole note
 * @param cell where it stands
 * @param score how well it matches: only the order has a meaning
 * @param snippet the part that matches
 */
public record NoteHit(
    long noteId,
    String test,
    String title,
    TestDate date,
    String model,
    String discipline,
    String size,
    SourceKind source,
    String file,
    int report,
    String text,
    Cell cell,
    float score,
    Snippet snippet) {}
