package org.griplore.store.tyre;

/** Tyre classes of UN Regulation No. 117: C1 for cars, C2 for vans, C3 for trucks and buses. */
public enum TyreClass {
  C1,
  C2,
  C3;

  /** The class on whose scale a tyre approved in two classes is graded: the higher one. */
  public static TyreClass grading(TyreClass one, TyreClass other) {
    return one.compareTo(other) >= 0 ? one : other;
  }
}
