package org.griplore.store.archive;

import java.util.Locale;

/** How a revision came to take a name for a model that is written otherwise. */
public enum NameTaken {
  /** A lineage table says so of a name that was met before. */
  TOLD,
  /** It is an alias, or the name without its maker. */
  KNOWN,
  /** It looks like a misspelling. */
  ASSUMED;

  /** The word stored and given away. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The one with this word. */
  public static NameTaken ofWord(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT));
  }
}
