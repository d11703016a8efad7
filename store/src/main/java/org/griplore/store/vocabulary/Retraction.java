package org.griplore.store.vocabulary;

import java.time.Instant;
import java.util.Objects;

/**
 * A test, or one result of it, that was taken back with a reason: by what it is known by, so that
 * it stays retracted when its source is read anew. The newest word on the same thing stands.
 *
 * @param test the test's key
 * @param model the model's name as written; null for the whole test
 * @param size the entry's own size; null where it has none
 * @param discipline catalogue key; null for the whole test
 * @param circumstance how the figure came about; null for every figure of the discipline
 * @param repeat which repeat; null for every one
 * @param retracted false when an earlier retraction is taken back
 * @param reason why
 * @param at when
 */
public record Retraction(
    String test,
    String model,
    String size,
    String discipline,
    Circumstance circumstance,
    Integer repeat,
    boolean retracted,
    String reason,
    Instant at) {
  /** Checks that a result has a model and a discipline. */
  public Retraction {
    Objects.requireNonNull(test);
    Objects.requireNonNull(reason);
    Objects.requireNonNull(at);
    if ((model == null) != (discipline == null)) {
      throw new IllegalArgumentException("a result has a model and a discipline");
    }
  }

  /** Takes back a whole test. */
  public static Retraction ofTest(String test, String reason, Instant at) {
    return new Retraction(test, null, null, null, null, null, true, reason, at);
  }

  /** Whether both are about the same test or result. */
  public boolean sameSubject(Retraction other) {
    return test.equals(other.test)
        && Objects.equals(model, other.model)
        && Objects.equals(size, other.size)
        && Objects.equals(discipline, other.discipline)
        && Objects.equals(circumstance, other.circumstance)
        && Objects.equals(repeat, other.repeat);
  }

  /** The same with the retraction taken back. */
  public Retraction takenBack(String because, Instant when) {
    return new Retraction(
        test, model, size, discipline, circumstance, repeat, false, because, when);
  }
}
