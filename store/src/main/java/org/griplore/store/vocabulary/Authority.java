package org.griplore.store.vocabulary;

/** How sure it is that a limit, coefficient or formula stands in the text it is quoted from. */
public enum Authority {
  READ("read in source"),
  MEMORY("from memory, check the official text"),
  ARITHMETIC("arithmetic"),
  USER("user setting");

  private final String words;

  Authority(String words) {
    this.words = words;
  }

  /** The words shown beside a figure. */
  public String words() {
    return words;
  }
}
