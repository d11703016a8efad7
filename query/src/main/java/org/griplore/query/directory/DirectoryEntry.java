package org.griplore.query.directory;

import java.util.List;

/**
 * Something with a name, and the question that tells of it.
 *
 * @param kind what it is
 * @param name what it is called
 * @param names other words it is found by
 * @param about what sets it apart, in a few words; may be empty
 * @param question the question's word
 * @param option the option that names it; null when the question needs none
 * @param value the option's value
 */
public record DirectoryEntry(
    Kind kind,
    String name,
    List<String> names,
    String about,
    String question,
    String option,
    String value) {
  /** What has names, the likelier to be meant first. */
  public enum Kind {
    MODEL("model"),
    LINE("line"),
    DISCIPLINE("discipline"),
    QUESTION("page"),
    TEST("test"),
    SIZE("size"),
    VENUE("venue"),
    VEHICLE("vehicle"),
    PUBLICATION("publication"),
    NOTE("note");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word used in answers. */
    public String word() {
      return word;
    }
  }

  /** Keeps the list from changing. */
  public DirectoryEntry {
    names = List.copyOf(names);
  }
}
