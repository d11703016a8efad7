package org.griplore.store.vocabulary;

/** A refusal because somebody else changes the archive right now; the same may be tried again. */
public final class Busy extends Refusal {
  /** A refusal with its sentence. */
  public Busy(String sentence) {
    super(sentence);
  }
}
