package org.griplore.ui.bench;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

/** Writes a long table of invented results with a fixed seed: 20,000 tests a million rows. */
final class LongTableFile {
  static final String HEADER =
      "test,date,source,source_kind,title,size,season,vehicle,vehicle_mass_kg,venue,model,"
          + "discipline,value,unit,spread,runs,place,note";
  private static final String[][] DISCIPLINES = {
    {"wet-braking", "m", "30", "2"},
    {"dry-braking", "m", "38", "1.5"},
    {"wet-handling", "s", "75", "2"},
    {"straight-aquaplaning", "km/h", "82", "3"},
    {"exterior-noise", "dB(A)", "71", "1"},
    {"rolling-resistance", "N/kN", "8.5", "0.6"}
  };
  private static final int TYRES = 8;

  private LongTableFile() {}

  /** Writes so many rows, in tests of 8 tyres and 6 disciplines. */
  static void write(Path file, int rows, int models, long seed) throws IOException {
    Random random = new Random(seed);
    try (Writer out = Files.newBufferedWriter(file)) {
      out.write(HEADER + "\n");
      int written = 0;
      for (int test = 0; written < rows; test++) {
        int year = 2005 + test % 20;
        String head =
            String.format(
                Locale.ROOT,
                "T%05d,%d-%02d-%02d,Bench tests,%s,Test %d,205/55 R16 91V,summer,compact hatchback,1350,North track,",
                test,
                year,
                1 + test % 12,
                1 + test % 28,
                test % 3 == 0 ? "own" : "independent",
                test);
        int first = random.nextInt(models);
        for (int tyre = 0; tyre < TYRES && written < rows; tyre++) {
          String model =
              "Maker " + (first + 7 * tyre) % models % 40 + " Model " + (first + 7 * tyre) % models;
          for (int d = 0; d < DISCIPLINES.length && written < rows; d++) {
            String[] discipline = DISCIPLINES[d];
            double value =
                Double.parseDouble(discipline[2])
                    + Double.parseDouble(discipline[3]) * random.nextGaussian();
            out.write(
                head
                    + model
                    + ","
                    + discipline[0]
                    + ","
                    + String.format(Locale.ROOT, "%.2f", value)
                    + ","
                    + discipline[1]
                    + ","
                    + String.format(Locale.ROOT, "%.2f", 0.2 + 0.2 * random.nextDouble())
                    + ",6,,\n");
            written++;
          }
        }
      }
    }
  }
}
