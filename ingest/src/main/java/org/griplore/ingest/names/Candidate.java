package org.griplore.ingest.names;

/**
 * A model that a written name could mean.
 *
 * @param model the model's full name
 * @param score from 0 to 1: how alike the words are
 * @param reason why it is a candidate, in words
 */
public record Candidate(String model, double score, String reason) {}
