package org.griplore.store.tyre;

/**
 * Which tyre label a class letter is of. Letters of the two are not comparable: the old E of a car
 * tyre's rolling resistance is the new D, the old F and G are the new E.
 */
public enum LabelEra {
  /** Regulation (EC) 1222/2009, 1 November 2012 to 30 April 2021. */
  FROM_2012,
  /** Regulation (EU) 2020/740, since 1 May 2021. */
  FROM_2021
}
