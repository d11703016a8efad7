package org.griplore.ingest.reduce.sample;

/**
 * The two tails of Student's t for whole degrees of freedom, by the finite trigonometric series of
 * Abramowitz and Stegun (1964), Handbook of Mathematical Functions, 26.7.3 and 26.7.4. Absolute
 * error about 1e-15.
 */
public final class StudentTail {
  private StudentTail() {}

  /** P(|T| > |t|) with {@code freedom} >= 1 degrees of freedom; 0 for an infinite t. */
  public static double twoSided(double t, int freedom) {
    if (freedom < 1 || Double.isNaN(t)) {
      throw new IllegalArgumentException("t " + t + " with " + freedom + " degrees of freedom");
    }
    double angle = Math.atan(Math.abs(t) / Math.sqrt(freedom));
    double cosine = Math.cos(angle);
    double square = cosine * cosine;
    boolean odd = freedom % 2 == 1;
    double term = odd ? cosine : 1;
    double sum = freedom == 1 ? 0 : term;
    // the factors are 2/3, 4/5 ... for odd and 1/2, 3/4 ... for even degrees of freedom
    for (int k = odd ? 3 : 2; k <= freedom - 2; k += 2) {
      term *= square * (k - 1) / k;
      sum += term;
    }
    double inside = Math.sin(angle) * sum;
    double central = odd ? 2 / Math.PI * (angle + inside) : inside;
    return Math.min(1, Math.max(0, 1 - central));
  }
}
