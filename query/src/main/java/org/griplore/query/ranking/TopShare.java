package org.griplore.query.ranking;

/**
 * Whether a place counts as one of the first k where entries tie, and what chance alone gives.
 *
 * <p>Each policy is shown on the places 1, 2, 3, 3, 5 and the first three.
 */
public enum TopShare {
  /** The shared place counts: 1, 1, 1, 1, 0. More than k entries may count. */
  WHOLE {
    @Override
    double credit(int place, int sharers, int top) {
      return place <= top ? 1 : 0;
    }
  },
  /** Those who share the last places share the credit: 1, 1, ½, ½, 0. A field gives k in all. */
  SHARED {
    @Override
    double credit(int place, int sharers, int top) {
      return Math.max(0, Math.min(1, (top - place + 1.0) / sharers));
    }
  },
  /** All who share must fit among the first k: 1, 1, 0, 0, 0. */
  STRICT {
    @Override
    double credit(int place, int sharers, int top) {
      return place + sharers - 1 <= top ? 1 : 0;
    }
  },
  /** The mean of the places taken must be within k: 1, 1, 0, 0, 0 (3.5 is not within 3). */
  MIDDLE {
    @Override
    double credit(int place, int sharers, int top) {
      return place + (sharers - 1) / 2.0 <= top ? 1 : 0;
    }
  };

  abstract double credit(int place, int sharers, int top);

  /**
   * The credit of one entry, from 0 to 1.
   *
   * @param place its place by standard competition ranking, from 1
   * @param sharers how many entries have this place, itself included
   * @param top how many places count, from 1
   * @throws IllegalArgumentException when one of them is below 1
   */
  public double of(int place, int sharers, int top) {
    if (place < 1 || sharers < 1 || top < 1) {
      throw new IllegalArgumentException(
          "place %d, shared by %d, first %d: each is from 1".formatted(place, sharers, top));
    }
    return credit(place, sharers, top);
  }

  /**
   * The chance of one of the first {@code top} places when all entries are alike: min(top, field) /
   * field. It is the mean of the SHARED credit whatever ties there are.
   *
   * @throws IllegalArgumentException when one of them is below 1
   */
  public static double chance(int field, int top) {
    if (field < 1 || top < 1) {
      throw new IllegalArgumentException(
          "field %d, first %d: each is from 1".formatted(field, top));
    }
    return (double) Math.min(top, field) / field;
  }

  /**
   * Where an entry stands in its field from 0 (last) to 1 (first): (field - middle place) / (field
   * - 1). Makes places in fields of different size comparable.
   *
   * @throws IllegalArgumentException for a field of one, which has no standing
   */
  public static double standing(int place, int sharers, int field) {
    if (field < 2 || place < 1 || sharers < 1 || place + sharers - 1 > field) {
      throw new IllegalArgumentException(
          "place %d, shared by %d, in a field of %d".formatted(place, sharers, field));
    }
    return (field - (place + (sharers - 1) / 2.0)) / (field - 1);
  }
}
