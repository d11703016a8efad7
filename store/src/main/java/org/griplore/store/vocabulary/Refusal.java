package org.griplore.store.vocabulary;

import java.util.List;

/**
 * An input or a request that cannot be served, told in one sentence a tester understands. Nothing
 * was changed when it is thrown. Every other exception is a defect of the program.
 */
public sealed class Refusal extends RuntimeException permits Busy {
  private final transient List<Problem> problems;

  /** A refusal with its sentence and the problems behind it (may be none). */
  public Refusal(String sentence, Problem... problems) {
    super(sentence);
    this.problems = List.of(problems);
  }

  /** A refusal that keeps the failure which led to it. */
  public Refusal(String sentence, Throwable cause, Problem... problems) {
    super(sentence, cause);
    this.problems = List.of(problems);
  }

  /** The sentence, with the place where there is one. */
  public String sentence() {
    return getMessage();
  }

  /** The problems behind it, in reading order. */
  public List<Problem> problems() {
    return problems == null ? List.of() : problems;
  }
}
