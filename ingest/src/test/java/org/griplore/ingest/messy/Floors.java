package org.griplore.ingest.messy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What was reached once, by family: at least so many files whole and figures right, at most so many
 * figures wrong, false tyres, silent losses and failures. It is only ever raised.
 */
final class Floors {
  private static final Path FILE =
      Path.of("src/test/resources/org/griplore/ingest/messy/floors.csv");
  private static final String HEADER = "family,files,whole,right,wrong,false tyres,silent,failed";
  private final Map<String, int[]> reached = new TreeMap<>();

  static Floors read() throws IOException {
    Floors floors = new Floors();
    for (String line : Files.readAllLines(FILE)) {
      String[] parts = line.split(",");
      if (!line.equals(HEADER)) {
        int[] figures = new int[parts.length - 1];
        for (int i = 0; i < figures.length; i++) {
          figures[i] = Integer.parseInt(parts[i + 1]);
        }
        floors.reached.put(parts[0], figures);
      }
    }
    return floors;
  }

  private static int[] figures(FamilyFigures f) {
    return new int[] {
      f.files(), f.whole(), f.right(), f.wrong(), f.falseTyres(), f.silent(), f.failures()
    };
  }

  /** Where less was reached than once, in words. A family whose files changed is not compared. */
  List<String> below(List<FamilyFigures> measured) {
    String[] names = HEADER.split(",");
    List<String> below = new ArrayList<>();
    for (FamilyFigures family : measured) {
      int[] now = figures(family);
      int[] once = reached.get(family.family());
      if (once == null || once[0] != now[0]) {
        below.add(family.family() + " has other files than the floors know: record them");
        continue;
      }
      for (int i = 1; i < now.length; i++) {
        if (i < 3 ? now[i] < once[i] : now[i] > once[i]) {
          below.add(family.family() + ", " + names[i + 1] + ": " + now[i] + ", once " + once[i]);
        }
      }
    }
    return below;
  }

  /** Writes what is measured; where the files are the same and not anew, a floor is only raised. */
  void record(List<FamilyFigures> measured, boolean anew) throws IOException {
    List<String> lines = new ArrayList<>(List.of(HEADER));
    for (FamilyFigures family : measured) {
      int[] now = figures(family);
      int[] once = reached.getOrDefault(family.family(), now);
      StringBuilder line = new StringBuilder(family.family()).append(',').append(now[0]);
      for (int i = 1; i < now.length; i++) {
        boolean same = once[0] == now[0] && !anew;
        int best = i < 3 ? Math.max(now[i], once[i]) : Math.min(now[i], once[i]);
        line.append(',').append(same ? best : now[i]);
      }
      lines.add(line.toString());
    }
    Files.writeString(FILE, String.join("\n", lines) + "\n");
  }
}
