package org.griplore.ingest.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.source.DocumentReader;
import org.junit.jupiter.api.Test;

class BrakeTraceTest {
  /** A stop at a constant deceleration: v = v1 - a t, s = v1 t - a t2/2, in steps of 0.05 s. */
  private static String stop(double fromKmh, double a, String before, String line) {
    StringBuilder rows = new StringBuilder();
    double v1 = fromKmh / 3.6;
    for (int i = 0; i * 0.05 <= v1 / a; i++) {
      double t = i * 0.05;
      rows.append(before)
          .append(String.format(Locale.ROOT, line, t, (v1 - a * t) * 3.6, v1 * t - a * t * t / 2));
    }
    return rows.toString();
  }

  private static List<List<GridCell>> runs(String text) {
    Content read = DocumentReader.readText("nass Kelt 2.csv", text);
    Content log = BrakeTrace.runLog(read, "nass Kelt 2.csv").orElseThrow();
    Grid grid = ((Content.Tables) log).grids().get(0);
    assertThat(grid.draft()).isNotNull();
    return grid.rows().subList(1, grid.rows().size());
  }

  private static String field(List<GridCell> row, int column) {
    return row.stream()
        .filter(cell -> cell.column() == column)
        .map(GridCell::text)
        .findFirst()
        .orElse("");
  }

  private static double mfdd(List<GridCell> row) {
    return Double.parseDouble(field(row, 11).split(" ")[1]);
  }

  /** At a constant deceleration the mean fully developed one is the same (R13-H's formula). */
  @Test
  void germanHeadingsAndSeveralStopsInOneFile() {
    String text =
        "Reifen: Kelt 2\nZeit [s];Geschwindigkeit [km/h];Weg [m]\n"
            + stop(100, 8, "", "%.2f;%.4f;%.4f\n").replace('.', ',')
            + stop(80, 7, "", "%.2f;%.4f;%.4f\n").replace('.', ',');

    List<List<GridCell>> runs = runs(text);

    assertThat(runs).hasSize(2);
    assertThat(mfdd(runs.get(0))).isCloseTo(8, org.assertj.core.api.Assertions.within(0.005));
    assertThat(mfdd(runs.get(1))).isCloseTo(7, org.assertj.core.api.Assertions.within(0.005));
    assertThat(field(runs.get(0), 2)).isEqualTo("wet-braking");
    assertThat(field(runs.get(0), 4)).isEqualTo("Kelt 2");
    assertThat(field(runs.get(1), 6)).isEqualTo("2");
    double to = Double.parseDouble(field(runs.get(0), 8)) / 3.6;
    double expected = (Math.pow(100 / 3.6, 2) - to * to) / 16;
    assertThat(Double.parseDouble(field(runs.get(0), 9)))
        .isCloseTo(expected, org.assertj.core.api.Assertions.within(0.01));
  }

  /** Without a column of distance it is the integral of speed over time. */
  @Test
  void englishHeadingsMetresASecondAndNoDistance() {
    String text =
        "Run,Tyre,Time (ms),Speed (m/s)\n"
            + stop(100, 8, "1,Kelt 2,", "%.2f %.4f %.4f\n")
                .replaceAll("(\\d+\\.\\d+) (\\d+\\.\\d+) \\S+", "$1,$2")
            + stop(100, 6, "2,Kelt 3,", "%.2f %.4f %.4f\n")
                .replaceAll("(\\d+\\.\\d+) (\\d+\\.\\d+) \\S+", "$1,$2");
    String inUnits = text.replace("(ms)", "(s)").replace("(m/s)", "(km/h)");

    List<List<GridCell>> runs = runs(inUnits);

    assertThat(runs).extracting(row -> field(row, 4)).containsExactly("Kelt 2", "Kelt 3");
    assertThat(mfdd(runs.get(0))).isCloseTo(8, org.assertj.core.api.Assertions.within(0.02));
    assertThat(mfdd(runs.get(1))).isCloseTo(6, org.assertj.core.api.Assertions.within(0.02));
    assertThat(Double.parseDouble(field(runs(text).get(0), 7)))
        .as("metres a second are converted")
        .isCloseTo(360, org.assertj.core.api.Assertions.within(0.01));
  }

  /**
   * The worked vector: from 100 km/h, 14.0 m until 80 and 47.0 m until 10 km/h give (80^2 - 10^2) /
   * (25.92 x 33) = 7.365 m/s2.
   */
  @Test
  void theWorkedVectorOfTheFormula() {
    String text =
        "t (s),v (km/h),s (m)\n0,100,0\n0.5,80,14.0\n1,70,22\n1.5,60,29\n2,50,35\n2.5,40,39.5\n3,30,43\n3.5,20,45.5\n4,10,47.0\n4.4,0,47.6\n";

    assertThat(field(runs(text).get(0), 4)).as("no tyre is named").isEmpty();
    assertThat(mfdd(runs(text).get(0)))
        .isCloseTo(7.365, org.assertj.core.api.Assertions.within(0.0005));
  }

  @Test
  void aTableOfTyresIsNoTrace() {
    String table = "Tyre;Wet braking (m);Speed (km/h)\nKelt 2;31,2;80\nKelt 3;30,1;80\n";
    assertThat(BrakeTrace.runLog(DocumentReader.readText("a.csv", table), "a.csv")).isEmpty();
  }
}
