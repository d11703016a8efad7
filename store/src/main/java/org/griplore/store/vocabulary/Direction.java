package org.griplore.store.vocabulary;

/** Which way is better. */
public enum Direction {
  LOW,
  HIGH;

  /** +1 where more is better, -1 where less is: multiplies a difference so that plus is better. */
  public int sign() {
    return this == HIGH ? 1 : -1;
  }
}
