package org.griplore.store.archive;

import java.time.Instant;

/**
 * An answer that was kept under a name, as it was then.
 *
 * @param name its name
 * @param question the question's kind
 * @param options its options, as JSON
 * @param sentence the answer in a sentence
 * @param answer the whole answer, as JSON
 * @param stamp the archive's stamp then
 * @param delivery number of the newest delivery then; 0 when there was none
 * @param keptAt when
 */
public record KeptAnswer(
    String name,
    String question,
    String options,
    String sentence,
    String answer,
    long stamp,
    int delivery,
    Instant keptAt) {}
