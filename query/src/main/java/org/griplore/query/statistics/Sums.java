package org.griplore.query.statistics;

/**
 * A running sum that keeps what rounding would lose (Neumaier 1974, Zeitschrift für Angewandte
 * Mathematik und Mechanik 54:39).
 */
final class Sums {
  private double sum;
  private double lost;

  void add(double value) {
    double next = sum + value;
    lost += Math.abs(sum) >= Math.abs(value) ? (sum - next) + value : (value - next) + sum;
    sum = next;
  }

  double total() {
    return sum + lost;
  }

  static double of(double[] values) {
    Sums sums = new Sums();
    for (double value : values) {
      sums.add(value);
    }
    return sums.total();
  }
}
