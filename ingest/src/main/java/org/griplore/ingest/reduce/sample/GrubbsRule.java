package org.griplore.ingest.reduce.sample;

import java.util.ArrayList;
import java.util.List;

/**
 * Flags figures of one set that lie far from the others: Grubbs' two-sided test G = max|x - mean| /
 * sd (Grubbs 1969, Technometrics 11:1), p = n P(|T| > t) with t^2 = n (n - 2) G^2 / ((n - 1)^2 - n
 * G^2) and n - 2 degrees of freedom. As in ISO 5725-2 a p of 1 % or less is an outlier and of 5 %
 * or less a straggler (from memory, check the official text). A flagged figure is put aside and the
 * rest tested again, for as long as four are left. Flags are shown; nothing is dropped by them.
 *
 * <p>Assumes roughly normal figures. With three figures or fewer nothing is tested.
 */
public final class GrubbsRule {
  private static final int FEWEST = 4;
  private static final double STRAGGLER = 0.05;
  private static final double OUTLIER = 0.01;

  private GrubbsRule() {}

  /** How far out a figure lies. */
  public enum Degree {
    STRAGGLER,
    OUTLIER
  }

  /**
   * A flagged figure.
   *
   * @param index its position in the list
   * @param g Grubbs' statistic
   * @param p two-sided probability
   * @param n how many figures it was tested among
   */
  public record Flag(int index, double g, double p, int n, Degree degree) {}

  /** The flagged figures, the farthest first. */
  public static List<Flag> flags(List<Double> figures) {
    List<Integer> left = new ArrayList<>();
    for (int i = 0; i < figures.size(); i++) {
      left.add(i);
    }
    List<Flag> flags = new ArrayList<>();
    while (left.size() >= FEWEST) {
      Flag farthest = farthest(figures, left);
      if (farthest == null || farthest.p() > STRAGGLER) {
        break;
      }
      flags.add(farthest);
      left.remove(Integer.valueOf(farthest.index()));
    }
    return flags;
  }

  /** p of Grubbs' statistic {@code g} among {@code n} >= 3 figures. */
  public static double probability(double g, int n) {
    double room = (n - 1.0) * (n - 1.0) - n * g * g;
    if (room <= 0) {
      return 0;
    }
    return Math.min(1, n * StudentTail.twoSided(g * Math.sqrt(n * (n - 2.0) / room), n - 2));
  }

  private static Flag farthest(List<Double> figures, List<Integer> left) {
    double[] values = left.stream().mapToDouble(figures::get).toArray();
    Moments moments = Moments.of(values);
    if (!(moments.deviation() > 1e-12 * Math.abs(moments.mean()))) {
      return null;
    }
    int farthest = 0;
    for (int i = 1; i < values.length; i++) {
      if (Math.abs(values[i] - moments.mean()) > Math.abs(values[farthest] - moments.mean())) {
        farthest = i;
      }
    }
    double g = Math.abs(values[farthest] - moments.mean()) / moments.deviation();
    double p = probability(g, values.length);
    Degree degree = p <= OUTLIER ? Degree.OUTLIER : Degree.STRAGGLER;
    return new Flag(left.get(farthest), g, p, values.length, degree);
  }
}
