package org.griplore.ingest.messy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What was reached once, by family, as kept beside the files and shown in DEVELOPERS.md. More files
 * whole, figures, details and drafts right, and fewer figures wrong, false tyres, silent losses,
 * refusals and failures are better; a floor is only ever raised.
 */
final class Floors {
  private static final Path FILE =
      Path.of("src/test/resources/org/griplore/ingest/messy/floors.csv");
  private static final Path DOCUMENT = Path.of("../DEVELOPERS.md");
  private static final String MARK = "<!-- messy files -->\n";
  private final Map<String, int[]> reached = new LinkedHashMap<>();

  static Floors read() throws IOException {
    Floors floors = new Floors();
    for (String line : Files.readAllLines(FILE).stream().skip(1).toList()) {
      String[] parts = line.split(",");
      floors.reached.put(
          parts[0], Arrays.stream(parts).skip(1).mapToInt(Integer::parseInt).toArray());
    }
    return floors;
  }

  /** Where less was reached than once, in words. */
  List<String> below(List<FamilyFigures> measured) {
    List<String> below = new ArrayList<>();
    for (FamilyFigures family : measured) {
      int[] now = family.counts();
      int[] once = reached.get(family.family());
      if (once == null || once[0] != now[0]) {
        below.add(family.family() + " has other files than the floors know: record them");
        continue;
      }
      for (int i = 0; i < now.length; i++) {
        if (FamilyFigures.BETTER[i] * now[i] < FamilyFigures.BETTER[i] * once[i]) {
          String what = FamilyFigures.COLUMNS.get(i);
          below.add(family.family() + ", " + what + ": " + now[i] + ", once " + once[i]);
        }
      }
    }
    return below;
  }

  /**
   * Writes what is measured, here and in DEVELOPERS.md; where the files are the same and not anew,
   * a floor is only raised.
   */
  void record(List<FamilyFigures> measured, boolean anew) throws IOException {
    Map<String, int[]> old = new LinkedHashMap<>(reached);
    reached.clear();
    for (FamilyFigures family : measured) {
      int[] now = family.counts();
      int[] once = old.get(family.family());
      if (once != null && once[0] == now[0] && !anew) {
        for (int i = 0; i < now.length; i++) {
          boolean better = FamilyFigures.BETTER[i] * once[i] > FamilyFigures.BETTER[i] * now[i];
          now[i] = better ? once[i] : now[i];
        }
      }
      reached.put(family.family(), now);
    }
    List<String> lines = new ArrayList<>();
    lines.add("family," + String.join(",", FamilyFigures.COLUMNS));
    reached.forEach((family, counts) -> lines.add(family + "," + joined(counts, ",")));
    Files.writeString(FILE, String.join("\n", lines) + "\n");
    String[] parts = Files.readString(DOCUMENT).split(MARK, 3);
    Files.writeString(DOCUMENT, parts[0] + MARK + table() + MARK + parts[2]);
  }

  /** The floors as DEVELOPERS.md shows them. */
  String table() {
    StringBuilder table = new StringBuilder();
    table
        .append("| family | ")
        .append(String.join(" | ", FamilyFigures.COLUMNS))
        .append(" |\n| ---");
    table.append(" | ---:".repeat(FamilyFigures.COLUMNS.size())).append(" |\n");
    reached.forEach(
        (family, counts) ->
            table
                .append("| ")
                .append(family)
                .append(" | ")
                .append(joined(counts, " | "))
                .append(" |\n"));
    return table.toString();
  }

  /** What DEVELOPERS.md shows. */
  static String documented() throws IOException {
    return Files.readString(DOCUMENT).split(MARK, 3)[1];
  }

  private static String joined(int[] counts, String between) {
    return Arrays.stream(counts).mapToObj(Integer::toString).collect(Collectors.joining(between));
  }
}
