package org.griplore.store.tyre;

/** The class a tyre is approved in. Approved in two, it is graded on the scale of the higher. */
public enum TyreClass {
  /** Car tyres. */
  C1,
  /** Light commercial tyres. */
  C2,
  /** Heavy commercial tyres. */
  C3
}
