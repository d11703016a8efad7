package org.griplore.ingest.grid.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.workbook.WorkbookBytes;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HostileInputTest {
  private static final long LENGTH = 100L << 20;

  /** A hundred megabytes that never exist as a whole. */
  private static final class OneLine extends InputStream {
    private final byte[] beginning;
    private final byte[] filling;
    private long position;

    OneLine(String beginning, String filling) {
      this.beginning = beginning.getBytes(StandardCharsets.UTF_8);
      this.filling = filling.repeat(4096 / filling.length()).getBytes(StandardCharsets.UTF_8);
    }

    @Override
    public int read() {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] bytes, int offset, int length) {
      if (position >= LENGTH) {
        return -1;
      }
      boolean first = position < beginning.length;
      byte[] source = first ? beginning : filling;
      int from = (int) (first ? position : (position - beginning.length) % filling.length);
      int count = (int) Math.min(Math.min(length, source.length - from), LENGTH - position);
      System.arraycopy(source, from, bytes, offset, count);
      position += count;
      return count;
    }
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "prose, 'abc', 'x', 1, characters",
    "a row, 'Model,Wet\nKelt 2,30.1\n', 'x', 3, characters",
    "comma row, 'Model,Wet\nKelt 2,30.1\n', 'x,', 3, columns",
    "open quote, 'Model,Wet\nKelt 2,30.1\nKelt 3,\"', 'x', 3, characters",
    "only commas, '', ',', 1, characters"
  })
  void aHundredMegabytesOfOneLineAreRefusedInLittleMemory(
      String kind, String beginning, String filling, int line, String what) {
    Original original = Original.of(kind, kind + ".csv", () -> new OneLine(beginning, filling));
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = threads.getCurrentThreadAllocatedBytes();

    Throwable thrown = catchThrowable(() -> DocumentReader.read(original));

    long allocated = threads.getCurrentThreadAllocatedBytes() - before;
    assertThat(thrown).isInstanceOf(Refusal.class);
    assertThat(((Refusal) thrown).sentence())
        .contains("line " + line)
        .matches(".*(longer than 10 million|has more than 16384) " + what + ".*");
    assertThat(allocated).as("bytes allocated in all").isLessThan(64L << 20);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void binaryJunkIsRefusedInOneSentence(long seed) {
    Random random = new Random(seed);
    byte[] junk = new byte[1 + random.nextInt(20_000)];
    random.nextBytes(junk);

    assertThatThrownBy(() -> DocumentReader.read("junk.csv", junk))
        .isInstanceOfSatisfying(
            Refusal.class,
            refusal -> {
              assertThat(refusal.sentence()).startsWith("junk.csv").endsWith(".");
              assertThat(refusal.sentence().lines()).hasSize(1);
              assertThat(refusal.problems()).isNotEmpty();
            });
  }

  /** A file of any kind, damaged anywhere, is read or refused: nothing else is thrown. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void damageIsReadOrRefused(long seed) throws IOException {
    Random random = new Random(seed);
    for (String name : GridCasesTest.cases()) {
      Path folder = Path.of("src", "test", "resources", "grid-cases", name);
      byte[] bytes;
      try (var files = Files.list(folder)) {
        bytes =
            Files.readAllBytes(
                files.filter(f -> !f.endsWith("expected.json")).findFirst().orElseThrow());
      }
      for (int i = 0; i < 6 && bytes.length > 0; i++) {
        byte[] damaged = bytes.clone();
        for (int k = 1 + random.nextInt(4); k > 0; k--) {
          damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
        }
        Throwable thrown = catchThrowable(() -> DocumentReader.read(name, damaged));
        assertThat(thrown == null || thrown instanceof Refusal).as(name + ": " + thrown).isTrue();
      }
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void aDamagedWorkbookIsReadOrRefused(long seed) {
    Random random = new Random(seed);
    byte[] book =
        WorkbookBytes.of(
                "<row r=\"1\"><c r=\"A1\" s=\"1\"><v>44361</v></c><c r=\"B1\"><v>1.5</v></c></row>",
                "<mergeCells><mergeCell ref=\"A1:B1\"/></mergeCells>",
                "14")
            .zipped();
    for (int i = 0; i < 100; i++) {
      byte[] damaged = book.clone();
      damaged[4 + random.nextInt(damaged.length - 4)] = (byte) random.nextInt(256);
      Throwable thrown = catchThrowable(() -> DocumentReader.read("book.xlsx", damaged));
      assertThat(thrown == null || thrown instanceof Refusal).as("" + thrown).isTrue();
    }
  }

  @Test
  void whatIsNoFileIsSaidPlainly(@TempDir Path folder) {
    assertThatThrownBy(() -> DocumentReader.read(folder))
        .isInstanceOf(Refusal.class)
        .hasMessage(folder + " is a folder: name a file in it.");
    Path missing = folder.resolve("missing.csv");
    assertThatThrownBy(() -> DocumentReader.read(missing))
        .isInstanceOf(Refusal.class)
        .hasMessage(missing + " does not exist: check its path.");
  }

  @Test
  void aFileThatCannotBeOpenedIsSaidPlainly() {
    Original.Content closed =
        () -> {
          throw new java.nio.file.AccessDeniedException("a.csv");
        };

    assertThatThrownBy(() -> Original.of("a.csv", "a.csv", closed))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("missing or access is denied");
  }

  @Test
  void spansThatClaimMillionsOfPlacesAreClippedOrRefused() {
    String row = "<tr>" + "<td rowspan=999999 colspan=999999>x</td>".repeat(30) + "</tr>";
    String page = "<table>" + row.repeat(400) + "</table>";

    assertThatThrownBy(() -> DocumentReader.readText("page.html", page))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("500000 places");
  }

  @Test
  void aPageOfManyCellsIsReadOnce() {
    String row = "<tr><td>Kelt 2</td>" + "<td>30.1</td>".repeat(19) + "</tr>";
    String page = "<h1>Raw</h1><table>" + row.repeat(3000) + "</table>";

    Content read =
        org.junit.jupiter.api.Assertions.assertTimeoutPreemptively(
            java.time.Duration.ofSeconds(60), () -> DocumentReader.readText("page.html", page));

    assertThat(((Content.Tables) read).grids().get(0).rows()).hasSize(3000);
  }

  @Test
  void deeplyNestedJsonIsRefused() {
    assertThatThrownBy(() -> DocumentReader.readText("deep.json", "[".repeat(100_000)))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("deep.json, line 1");
  }

  @Test
  void theEncodingIsReported() {
    assertThat(encoding("a;b\n\u00e9;1\n", "UTF-8")).isEqualTo("UTF-8");
    assertThat(encoding("a;b\n\u00e9;1\n", "windows-1252")).isEqualTo("windows-1252");
    assertThat(encoding("a;b;c\n\u00e9;1;2\n", "UTF-16BE")).isEqualTo("UTF-16BE");
    assertThat(DocumentReader.encoding(Original.of("b", WorkbookBytes.of("", "").zipped())))
        .isEmpty();
  }

  private static String encoding(String text, String charset) {
    byte[] bytes = text.getBytes(java.nio.charset.Charset.forName(charset));
    return DocumentReader.encoding(Original.of("a.csv", bytes)).orElseThrow().name();
  }
}
