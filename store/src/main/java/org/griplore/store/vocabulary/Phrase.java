package org.griplore.store.vocabulary;

import java.util.List;
import java.util.Objects;

/**
 * What is to be said, as a code with its parameters: the form in which it is kept. Words for people
 * are made of it when it is read ({@code PhraseBook}).
 *
 * @param code what is said, in lower case with hyphens; {@link #TOLD} when the words themselves are
 *     the only parameter
 * @param parameters what fills the gaps, in order
 */
public record Phrase(String code, List<String> parameters) {
  /** The code of words that have no code of their own. */
  public static final String TOLD = "told";

  /** Keeps the list from changing. */
  public Phrase {
    Objects.requireNonNull(code);
    parameters = List.copyOf(parameters);
  }

  /** A phrase with what fills its gaps. */
  public static Phrase of(String code, String... parameters) {
    return new Phrase(code, List.of(parameters));
  }

  /** Words as they are. */
  public static Phrase told(String words) {
    return of(TOLD, words);
  }
}
