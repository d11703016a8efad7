package org.griplore.store.archive;

import java.util.List;
import org.griplore.store.vocabulary.SeasonClass;
import org.griplore.store.vocabulary.TestDate;

/**
 * A model the archive knows. All but {@code id}, {@code name} and the lists may be null.
 *
 * @param id its number
 * @param name its full name
 * @param follows number of its predecessor
 * @param aliases other spellings, from lineage tables and settled names
 */
public record ModelRecord(
    int id,
    String name,
    String maker,
    String line,
    String generation,
    TestDate launched,
    SeasonClass season,
    String segment,
    Integer follows,
    List<String> aliases) {}
