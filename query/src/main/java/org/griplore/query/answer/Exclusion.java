package org.griplore.query.answer;

/**
 * What was left out of an answer.
 *
 * @param reason why, in words
 * @param count how many results, tests or models
 */
public record Exclusion(String reason, int count) {}
