package org.griplore.store.scenario;

import java.util.List;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Scale;
import org.griplore.store.vocabulary.Unit;

/**
 * The stated truth of each discipline, invented but of the order of size met in the trade. Standard
 * deviations, gains and offsets are natural-log ratios for ratio disciplines, dB or points for the
 * others, positive when better; the columns are those of {@link DisciplineTruth} in order.
 */
final class Catalogue {
  private static final String TABLE =
      """
      key                  unit       scale  better typical line  gain   gainSd inter run    test n digits all    winter allSlope winterSlope
      wet-braking          m          RATIO  LOW    31.0    0.030 0.022  0.018  0.012 0.010  0.10 6 1     -0.045 -0.085 -0.0035 -0.0065
      dry-braking          m          RATIO  LOW    37.6    0.015 0.006  0.008  0.006 0.006  0.03 6 1     -0.055 -0.105 -0.0015 -0.0025
      snow-braking         m          RATIO  LOW    44.0    0.030 0.018  0.015  0.015 0.020  0.10 8 1      0.450  0.530  0       0
      ice-braking          m          RATIO  LOW    18.5    0.040 0.015  0.020  0.020 0.030  0.12 8 1      0.260  0.340  0       0
      wet-handling         s          RATIO  LOW    88.0    0.012 0.008  0.007  0.005 0.004  0.12 4 2     -0.018 -0.036 -0.0012 -0.0022
      dry-handling         s          RATIO  LOW    72.0    0.008 0.002  0.004  0.003 0.0025 0.12 4 2     -0.020 -0.040 -0.0005 -0.0010
      snow-handling        s          RATIO  LOW    96.0    0.015 0.008  0.008  0.008 0.006  0.10 4 2      0.180  0.205  0       0
      wet-circle           m/s2       RATIO  HIGH   6.7     0.020 0.012  0.012  0.008 0.006  0.06 6 2     -0.030 -0.060 -0.0015 -0.0030
      straight-aquaplaning km/h       RATIO  HIGH   82.0    0.030 0.006  0.018  0.012 0.008  0.05 4 1      0.000 -0.010  0       0
      curved-aquaplaning   m/s2       RATIO  HIGH   3.1     0.070 0.010  0.040  0.030 0.020  0.15 3 2      0.000 -0.020  0       0
      exterior-noise       dB(A)      LEVEL  LOW    70.6    0.70  0.25   0.50   0.35  0.25   1.0  8 1     -0.20  -0.50   0       0
      interior-noise       dB(A)      LEVEL  LOW    66.5    0.60  0.20   0.40   0.30  0.30   1.5  4 1     -0.20  -0.60   0       0
      rolling-resistance   N/kN       RATIO  LOW    8.5     0.050 0.028  0.025  0.012 0.009  0.03 3 2     -0.030 -0.060  0       0
      snow-traction        N          RATIO  HIGH   1500    0.030 0.015  0.015  0.015 0.020  0.12 8 -1     0.440  0.500  0       0
      wear                 km         RATIO  HIGH   36000   0.120 0.030  0.060  0.050 0.030  0.15 1 -2     0.030 -0.050  0       0
      energy-use           kWh/100_km RATIO  LOW    17.8    0.011 0.006  0.006  0.004 0.006  0.04 3 1     -0.006 -0.013  0       0
      comfort              points     POINTS HIGH   7.2     0.35  0.10   0.25   0.25  0.20   0.2  2 1     -0.10  -0.10   0       0
      steering-response    points     POINTS HIGH   7.3     0.40  0.10   0.30   0.25  0.20   0.2  2 1     -0.40  -0.80   0       0
      wet-feel             points     POINTS HIGH   7.0     0.35  0.20   0.25   0.25  0.20   0.2  2 1     -0.30  -0.50   0       0
      dry-feel             points     POINTS HIGH   7.3     0.35  0.10   0.25   0.25  0.20   0.2  2 1     -0.50  -0.90   0       0
      mass                 kg         RATIO  LOW    9.3     0.040 0.005  0.020  0.010 0.002  0.02 1 2     -0.020 -0.030  0       0
      price                currency   RATIO  LOW    98.0    0.150 -0.050 0.040  0.040 0.0    0.05 0 0     -0.030 -0.060  0       0
      """;

  /** In the order in which reports list them. */
  static final List<DisciplineTruth> DISCIPLINES =
      TABLE.lines().skip(1).map(line -> read(line.split("\\s+"))).toList();

  private Catalogue() {}

  private static DisciplineTruth read(String[] cells) {
    double[] n = new double[cells.length];
    for (int i = 4; i < cells.length; i++) {
      n[i] = Double.parseDouble(cells[i]);
    }
    return new DisciplineTruth(
        cells[0],
        Unit.ofSymbol(cells[1].replace('_', ' ')).orElseThrow(),
        Scale.valueOf(cells[2]),
        Direction.valueOf(cells[3]),
        n[4],
        n[5],
        n[6],
        n[7],
        n[8],
        n[9],
        n[10],
        (int) n[11],
        (int) n[12],
        n[13],
        n[14],
        n[15],
        n[16]);
  }
}
