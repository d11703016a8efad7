package org.griplore.ui.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A log from file to label: a constructed cycle of stops from 80 to 20 km/h, reckoned by hand
 * (nothing published stands behind the figures).
 */
class LabelledLogTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String[] TYRES = {
    "SRTT16", "Velmora Aurelis 4", "Quillarn Tarvion 11", "Kirazumi Hayari 3", "SRTT16"
  };
  private static final double[][] METRES = {
    {34.60, 34.95, 34.72, 34.40, 34.88, 34.65},
    {30.10, 30.42, 30.25, 30.05, 30.33, 30.20},
    {32.90, 33.20, 33.05, 32.80, 33.10, 33.00},
    {36.40, 36.10, 36.60, 36.30, 36.50, 36.20},
    {33.90, 34.10, 33.75, 34.00, 33.85, 34.05}
  };
  private static final int[] SURFACE = {18, 18, 19, 21, 21};

  @TempDir Path folder;

  private JsonNode ask(String... words) throws IOException {
    String[] all = java.util.Arrays.copyOf(words, words.length + 4);
    all[words.length] = "--format";
    all[words.length + 1] = "json";
    all[words.length + 2] = "--archive";
    all[words.length + 3] = folder.resolve("archive").toString();
    return JSON.readTree(Run.of(all).out());
  }

  @Test
  void theCycleIsReducedShownAndClassed() throws IOException {
    StringBuilder log =
        new StringBuilder(
            "test,discipline,sequence,tyre,role,run,from_kmh,to_kmh,distance_m,surface_c\n");
    for (int set = 0; set < TYRES.length; set++) {
      for (int run = 0; run < 6; run++) {
        log.append(
            String.format(
                Locale.ROOT,
                "wet-1,wet-braking,%d,%s,%s,%d,80,20,%.2f,%d%n",
                set + 1,
                TYRES[set],
                set % 4 == 0 ? "reference" : "candidate",
                run + 1,
                METRES[set][run],
                SURFACE[set]));
      }
    }
    Path file = Files.writeString(folder.resolve("runs.csv"), log);
    Files.writeString(
        folder.resolve("runs.csv.details"),
        "date: 2015-06-14\nsize: 205/55 R16 91V\nseason: summer\nwindow: 80-20\nlevel: first\n");
    Run added = Run.of("add", file.toString(), "--archive", folder.resolve("archive").toString());
    assertThat(added.code()).as(added.err()).isZero();

    JsonNode rows = ask("log", "wet-1").get("rows");
    assertThat(rows).hasSize(5);
    assertThat(rows.get(0).get("mean").asDouble()).isCloseTo(6.6711, within(5e-5));
    assertThat(rows.get(1).get("reference").asDouble()).isCloseTo(6.7084, within(5e-5));
    assertThat(Math.exp(rows.get(1).get("logDifference").asDouble()))
        .isCloseTo(1.1417, within(5e-5));
    assertThat(rows.get(3).get("difference").asDouble()).isCloseTo(-6.11, within(0.005));

    JsonNode labels = ask("test", "wet-1").get("labels");
    assertThat(labels.findValuesAsText("model"))
        .containsExactly("Velmora Aurelis 4", "Quillarn Tarvion 11", "Kirazumi Hayari 3");
    assertThat(labels.findValuesAsText("figure")).containsExactly("1.41", "1.27", "1.14");
    assertThat(labels.findValuesAsText("letter")).containsExactly("B", "C", "D");
    assertThat(labels.findValuesAsText("letterBefore")).containsExactly("B", "C", "E");
  }
}
