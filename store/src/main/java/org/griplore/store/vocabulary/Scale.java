package org.griplore.store.vocabulary;

/** How two results of a discipline are compared. */
public enum Scale {
  /** By ratio: log ratios, shown as per cent (distance, lap time, deceleration ...). */
  RATIO,
  /** By difference in the unit itself, a logarithmic level (dB). */
  LEVEL,
  /** By difference in points of a rating scale. */
  POINTS
}
