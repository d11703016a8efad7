package org.griplore.store.archive;

import org.griplore.store.vocabulary.Decision;

/**
 * A name that sources or lineage tables use, and the model it means.
 *
 * @param name the name as first written
 * @param model name of the model it means; the name itself when it is a model
 * @param standing how that was settled
 * @param decision what the user decided on it; null when nothing
 */
public record NameRecord(String name, String model, Standing standing, Decision decision) {
  /** How a name was settled. */
  public enum Standing {
    /** A lineage table lists it as a model. */
    LISTED("a model of a lineage table"),
    /** It was met in sources, and taken for a model of its own until somebody says otherwise. */
    MET("taken for a model of its own"),
    /** A lineage table says that it means the model. */
    TOLD("the lineage table says so"),
    /** It is an alias of the model, or its name without the maker. */
    KNOWN("a shorter name or an alias"),
    /** It looks like a misspelling of the model's name. */
    ASSUMED("taken for a misspelling"),
    /** The user decided which model it means. */
    SAME("decided: the same as this model"),
    /** The user decided that it is a model of its own. */
    OWN("decided: a model of its own"),
    /** No entry, note or candidate's run of a current reading stands under it. */
    UNUSED("no tyre of a current test: a reference set, or of a reading that was replaced");

    private final String words;

    Standing(String words) {
      this.words = words;
    }

    /** As shown. */
    public String words() {
      return words;
    }
  }

  /** Whether nobody has said yet what it means. */
  public boolean open() {
    return isOpen(standing);
  }

  /** Whether a name that was settled so is open. */
  public static boolean isOpen(Standing standing) {
    return standing == Standing.MET || standing == Standing.ASSUMED;
  }
}
