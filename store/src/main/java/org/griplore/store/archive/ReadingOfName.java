package org.griplore.store.archive;

/** How a reading came to take a name for a model that is written otherwise. */
public enum ReadingOfName {
  /** A lineage table says so of a name that was met before. */
  TOLD,
  /** It is an alias, or the name without its maker. */
  KNOWN,
  /** It looks like a misspelling. */
  ASSUMED
}
