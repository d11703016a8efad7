package org.griplore.store.text;

/**
 * A piece of a query's text.
 *
 * @param kind how it is looked for
 * @param text as typed, without its marks
 * @param excluded whether notes that have it are left out
 */
record QueryPart(Kind kind, String text, boolean excluded) {
  enum Kind {
    WORD,
    /** Words side by side. */
    PHRASE,
    /** All words that begin so. */
    PREFIX
  }
}
