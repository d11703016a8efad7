package org.griplore.query.table;

import org.griplore.query.evidence.Names;
import org.griplore.query.option.Choices;

/** What the differences of a table are to. */
sealed interface Reference {
  /** The best tyre of each column. */
  record Best() implements Reference {}

  /** The mean of each column's tyres. */
  record Mean() implements Reference {}

  /** One tyre. */
  record Chosen(int model) implements Reference {}

  /**
   * Reads {@code reference}: {@code best}, {@code mean} or a model's name.
   *
   * @throws org.griplore.store.vocabulary.Refusal when no model has the name
   */
  static Reference of(Choices choices, Names names) {
    String text = choices.text("reference");
    return switch (text) {
      case "best" -> new Best();
      case "mean" -> new Mean();
      default -> new Chosen(names.model("reference", text));
    };
  }

  /** The tyre chosen; null when none was. */
  default Integer chosen() {
    return this instanceof Chosen model ? (Integer) model.model() : null;
  }
}
