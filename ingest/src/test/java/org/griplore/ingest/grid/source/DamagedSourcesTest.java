package org.griplore.ingest.grid.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.trace.BrakeTrace;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever bytes come, a reader gives grids that keep their contract, or refuses in one sentence:
 * seeded damage to a small source of each kind, and texts made to be hard.
 */
class DamagedSourcesTest {
  private static final Duration LONG_ENOUGH = Duration.ofSeconds(10);

  private static void readOrRefused(String what, byte[] bytes) {
    assertTimeoutPreemptively(
        LONG_ENOUGH,
        () -> {
          try {
            Content content = DocumentReader.read(what, bytes);
            keepsItsContract(what, content, 0);
            BrakeTrace.runLog(content, what);
          } catch (Refusal refusal) {
            assertThat(refusal.sentence()).as(what).endsWith(".").doesNotContain("\n");
          }
        },
        what);
  }

  private static void keepsItsContract(String what, Content content, int depth) {
    if (content instanceof Content.Tables tables) {
      for (Grid grid : tables.grids()) {
        for (List<GridCell> row : grid.rows()) {
          assertThat(row).as(what).isNotEmpty();
          int before = 0;
          for (GridCell cell : row) {
            assertThat(cell.text()).as(what).isNotBlank();
            assertThat(cell.column()).as(what).isGreaterThan(before);
            assertThat(cell.row()).as(what).isPositive();
            before = cell.column();
          }
        }
      }
    } else if (content instanceof Content.Members members && depth < 3) {
      members
          .members()
          .forEach(
              member -> {
                try {
                  keepsItsContract(what, DocumentReader.read(member), depth + 1);
                } catch (Refusal refusal) {
                  assertThat(refusal.sentence()).endsWith(".");
                }
              });
    }
  }

  private static byte[] damaged(byte[] whole, Random random) {
    byte[] bytes = whole.clone();
    switch (random.nextInt(4)) {
      case 0 -> {
        for (int k = 1 + random.nextInt(8); k > 0; k--) {
          bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
      }
      case 1 -> bytes = java.util.Arrays.copyOf(bytes, 1 + random.nextInt(bytes.length));
      case 2 -> {
        int from = random.nextInt(bytes.length);
        int to = Math.min(bytes.length, from + 1 + random.nextInt(200));
        byte[] twice = new byte[bytes.length + to - from];
        System.arraycopy(bytes, 0, twice, 0, to);
        System.arraycopy(bytes, from, twice, to, bytes.length - from);
        bytes = twice;
      }
      default -> {
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        String digit = Integer.toString(random.nextInt(10));
        String big = List.of("2147483648", "-1", "999999999", "0", "1e999").get(random.nextInt(5));
        bytes = text.replaceFirst(digit, big).getBytes(StandardCharsets.ISO_8859_1);
      }
    }
    return bytes;
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void damageOfAnyKindIsReadOrRefused(long seed) throws Exception {
    Random random = new Random(seed);
    for (SourceSamples sample : SourceSamples.values()) {
      byte[] whole = sample.bytes();
      for (int i = 0; i < 40; i++) {
        readOrRefused(sample + " " + seed + "/" + i, damaged(whole, random));
      }
    }
  }

  private static List<String> hard() {
    List<String> texts = new ArrayList<>();
    texts.add("[".repeat(2000) + "]".repeat(2000));
    texts.add("{\"a\":".repeat(2000) + "1" + "}".repeat(2000));
    texts.add("{\"results\":[{}]}");
    texts.add("{\"results\":[{},{}],\"a\":[[],[]]}");
    texts.add("[[],[]]");
    texts.add(
        "[{\"v\": " + "9".repeat(400) + ", \"w\": 1e-400, \"x\": -" + "1".repeat(2000) + "}]");
    texts.add("|---|---|\n|---|---|\n|---|---|\n");
    texts.add("| - |\n| - |\n");
    texts.add("# a\n" + "|".repeat(5000) + "\n" + "|-".repeat(5000) + "|\n");
    texts.add("Model;Wet" + " ".repeat(20_000) + "x;Dry\nKelt;1;2\nKelt 2;2;3\n");
    texts.add("Model" + " ".repeat(20_000) + "Wet  Dry\nKelt  1  2\nKelt 2  2  3\nKelt 3  2  3\n");
    texts.add("[1".repeat(3000) + ": a\n");
    texts.add("- ".repeat(20_000));
    texts.add("> ".repeat(5_000) + "a\n\n|a|b|\n|-|-|\n|1|2|\n");
    texts.add("|a|b|\n|-|-|\n|" + "*".repeat(20_000) + "a|" + "[".repeat(20_000) + "|\n");
    texts.add("<table>".repeat(3000) + "<tr><td>1<td>2<tr><td>3<td>4");
    texts.add("<table><tr><td>" + "<b>".repeat(3000) + "1<td>2<tr><td>3<td>4</table>");
    texts.add("<table><tr><td>" + "<div>".repeat(5000) + "1<td>2<tr><td>3<td>4</table>");
    texts.add("<table><tr><td>" + "1<sup>2</sup>".repeat(5000) + "<td>2<tr><td>3<td>4</table>");
    texts.add("<?xml version='1.0'?>" + "<a>".repeat(20_000));
    texts.add("12:30 " + "a".repeat(9000) + "\n12:31 b: c\n12:32 d: e\n12:33 " + " ".repeat(9000));
    texts.add("a\n".repeat(20_000));
    texts.add("1\n".repeat(5_000) + "x\n");
    texts.add(
        "From: a\nMessage-ID: b\nContent-Type: text/plain; charset=\"\u0000\"; boundary=\n\nx");
    texts.add("{\\rtf1" + "\\trowd\\cellx1".repeat(5000) + "\\cell\\row".repeat(5000) + "}");
    texts.add("{\\rtf1 \\u99999999999? \\'zz \\bin-5 \\uc-1 \\f99 x\\cell\\cell\\row}");
    return texts;
  }

  @Test
  void textsMadeToBeHardAreReadOrRefused() {
    List<String> texts = hard();
    for (int i = 0; i < texts.size(); i++) {
      readOrRefused("hard text " + i, texts.get(i).getBytes(StandardCharsets.UTF_8));
    }
  }

  @Test
  void manyObjectsOfManyKeysAreReadInTheirTime() {
    StringBuilder json = new StringBuilder("[");
    for (int row = 0; row < 2000; row++) {
      json.append(row == 0 ? "{" : ",\n{");
      for (int key = 0; key < 500; key++) {
        json.append(key == 0 ? "" : ",")
            .append("\"k")
            .append(row % 7 * 500 + key)
            .append("\":")
            .append(key);
      }
      json.append('}');
    }
    readOrRefused("many keys", json.append(']').toString().getBytes(StandardCharsets.UTF_8));
  }
}
