package org.griplore.store.vocabulary;

/**
 * What sets a tyre apart from the plain version of its model.
 *
 * @param ev made or marked for electric vehicles
 * @param extraLoad extra load (XL, reinforced)
 * @param runFlat runs without air for a distance
 * @param seal seals punctures by itself
 */
public record Variant(boolean ev, boolean extraLoad, boolean runFlat, boolean seal) {
  /** The plain version, or one of which nothing is stated. */
  public static final Variant STANDARD = new Variant(false, false, false, false);
}
