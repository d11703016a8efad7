package org.griplore.query.answer;

/**
 * A figure about the rows of an answer as a whole.
 *
 * @param <T> what it is; JSON writes it by its fields
 * @param key its name in JSON
 * @param meaning what it tells, in one plain sentence
 */
public record WholeFigure<T>(String key, String meaning) {}
