package org.griplore.store.text;

/** Names of the index's fields. */
final class IndexField {
  /** The note's words, analysed, with offsets for the snippets. */
  static final String WORDS = "words";

  /** Names and titles the note is about, analysed: they count, but less. */
  static final String ABOUT = "about";

  /** The words as spelt, folded but not stemmed: for prefixes and misspelt words. */
  static final String SPELT = "spelt";

  static final String NOTE = "note";
  static final String REPORT = "report";
  static final String FILE = "file";
  static final String TEST = "test";
  static final String TITLE = "title";
  static final String MODEL = "model";
  static final String DISCIPLINE = "discipline";
  static final String SOURCE = "source";

  /** The size as stated. */
  static final String SIZE = "size";

  /** The size as stated and without load index and speed symbol, for filtering. */
  static final String SIZE_KEY = "size-key";

  static final String RIM = "rim";
  static final String WIDTH = "width";
  static final String DATE = "date";
  static final String YEAR = "year";

  /** Where the note stands: {@code row:column:sheet}. */
  static final String PLACE = "place";

  /** The text as found, where it differs from the note's words. */
  static final String FOUND = "found";

  private IndexField() {}
}
