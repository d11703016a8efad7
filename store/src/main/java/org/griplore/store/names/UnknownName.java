package org.griplore.store.names;

import java.util.List;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** Refuses a name that means no model for certain, and offers the nearest. */
public final class UnknownName {
  private UnknownName() {}

  /**
   * The refusal.
   *
   * @param option what the name was given for
   * @param name the name as given
   * @param what why it cannot be used: {@code is no model in the archive}
   * @param offered names that could be meant, best first; may be empty
   */
  public static Refusal refusal(String option, String name, String what, List<String> offered) {
    boolean none = offered.isEmpty();
    return new Refusal(
        "\""
            + name
            + "\" "
            + what
            + (none
                ? "; `griplore models` lists them all."
                : ": did you mean " + String.join(", or ", offered) + "?"),
        new Problem(option, name, none ? "a model's name" : String.join(" | ", offered)));
  }
}
