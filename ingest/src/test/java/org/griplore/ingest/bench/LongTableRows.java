package org.griplore.ingest.bench;

import java.util.Locale;
import java.util.Random;

/**
 * The rows of a long table of any length, the same for the same seed: tests of ten models in five
 * disciplines, out of 600 models.
 */
final class LongTableRows {
  static final String HEADER =
      "test,date,source,source_kind,title,size,season,vehicle,vehicle_mass_kg,venue,model,"
          + "discipline,value,unit,spread,runs,place,note";

  private static final int MODELS = 600;
  private static final int FIELD = 10;
  private static final String[] DISCIPLINES = {
    "wet-braking", "dry-braking", "wet-handling", "rolling-resistance", "exterior-noise"
  };
  private static final String[] UNITS = {"m", "m", "s", "N/kN", "dB(A)"};
  private static final double[] LEVELS = {30, 38, 85, 8.5, 70};
  private static final String[] LINES = {
    "Baravel",
    "Corlunte",
    "Dismavar",
    "Ethrovane",
    "Fulmicor",
    "Gandrevel",
    "Hostivane",
    "Iskarune",
    "Jovantle",
    "Kelmivor"
  };

  private final Random random;
  private final Object[] row = new Object[18];
  private final int[] field = new int[FIELD];
  private int next;
  private int test = -1;

  LongTableRows(long seed) {
    this.random = new Random(seed);
  }

  /** The next row's fields in the header's order: texts, numbers, or null where nothing stands. */
  Object[] next() {
    int inTest = next % (FIELD * DISCIPLINES.length);
    if (inTest == 0) {
      begin();
    }
    int discipline = inTest % DISCIPLINES.length;
    int model = field[inTest / DISCIPLINES.length];
    row[10] = "Zavrenik " + LINES[model % LINES.length] + " " + (1 + model / LINES.length);
    row[11] = DISCIPLINES[discipline];
    row[12] = rounded(LEVELS[discipline] * (1 + 0.05 * random.nextGaussian()));
    row[13] = UNITS[discipline];
    row[14] = rounded(LEVELS[discipline] * 0.008 * (0.5 + random.nextDouble()));
    row[15] = 6.0;
    row[16] = (double) (1 + inTest / DISCIPLINES.length);
    row[17] = null;
    next++;
    return row;
  }

  private void begin() {
    test++;
    row[0] = "bench-" + test;
    row[1] =
        String.format(Locale.ROOT, "%d-%02d-%02d", 2010 + test % 15, 1 + test % 12, 1 + test % 28);
    row[2] = "The Bench Courier";
    row[3] = "independent";
    row[4] = "Summer tyres, series " + test;
    row[5] = "205/55 R16 91V";
    row[6] = "summer";
    row[7] = "compact hatchback";
    row[8] = 1350.0;
    row[9] = "Benchfield oval";
    int first = random.nextInt(MODELS);
    for (int i = 0; i < FIELD; i++) {
      field[i] = (first + i * 7) % MODELS;
    }
  }

  private static double rounded(double value) {
    return Math.rint(value * 100) / 100;
  }

  /** The row as a line of CSV. */
  static void write(Object[] row, StringBuilder line) {
    for (int i = 0; i < row.length; i++) {
      if (i > 0) {
        line.append(',');
      }
      if (row[i] instanceof Double number) {
        line.append(
            number == Math.rint(number)
                ? String.valueOf(number.longValue())
                : String.valueOf(number));
      } else if (row[i] != null) {
        String text = (String) row[i];
        boolean quoted = text.indexOf(',') >= 0;
        line.append(quoted ? "\"" : "").append(text).append(quoted ? "\"" : "");
      }
    }
    line.append('\n');
  }
}
