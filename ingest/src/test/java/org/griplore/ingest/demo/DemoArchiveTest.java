package org.griplore.ingest.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The committed demo archive is what the generator makes. With {@code
 * -Dgriplore.demo.regenerate=true} the files are written in place first.
 */
class DemoArchiveTest {
  private static final Path FOLDER = Path.of("..", "demo-archive");
  private static final Path RESOURCES = Path.of("src", "test", "resources", "demo");
  private static final Path README = FOLDER.resolve("README.md");
  private static final String MARK = "<!-- truth -->";
  private static DemoArchive archive;

  @BeforeAll
  static void render() throws IOException {
    archive = DemoArchive.rendered();
    if (Boolean.getBoolean("griplore.demo.regenerate")) {
      for (Map.Entry<String, byte[]> file : archive.files().entrySet()) {
        write(FOLDER.resolve(file.getKey()), file.getValue());
      }
      for (Map.Entry<String, String> file : expected().entrySet()) {
        write(RESOURCES.resolve(file.getKey()), file.getValue().getBytes(StandardCharsets.UTF_8));
      }
      String readme = Files.readString(README);
      String[] parts = readme.split(MARK);
      write(
          README,
          (parts[0] + MARK + "\n" + TruthSection.markdown() + "\n" + MARK + parts[2])
              .getBytes(StandardCharsets.UTF_8));
    }
  }

  private static Map<String, String> expected() {
    return Map.of(
        "expected-tests.csv", archive.expectations().reportsCsv(),
        "expected-results.csv", archive.expectations().resultsCsv(),
        "expected-runs.csv", RunExpectation.csv(archive.runs()));
  }

  /** Workbooks carry the time of writing: those with the same cells are left as they are. */
  private static void write(Path path, byte[] bytes) throws IOException {
    if (Files.exists(path) && same(path.toString(), Files.readAllBytes(path), bytes)) {
      return;
    }
    Files.createDirectories(path.getParent());
    Files.write(path, bytes);
  }

  @Test
  void committedFilesAreWhatTheGeneratorMakes() throws IOException {
    Map<String, byte[]> committed = new TreeMap<>();
    try (Stream<Path> paths = Files.walk(FOLDER)) {
      for (Path path : paths.filter(Files::isRegularFile).toList()) {
        String name = FOLDER.relativize(path).toString().replace('\\', '/');
        if (!name.endsWith(".md")) {
          committed.put(name, Files.readAllBytes(path));
        }
      }
    }
    assertThat(committed.keySet()).isEqualTo(archive.files().keySet());
    for (Map.Entry<String, byte[]> file : archive.files().entrySet()) {
      assertThat(same(file.getKey(), committed.get(file.getKey()), file.getValue()))
          .as(file.getKey())
          .isTrue();
    }
  }

  @Test
  void committedExpectationsAreWhatTheGeneratorMakes() throws IOException {
    for (Map.Entry<String, String> file : expected().entrySet()) {
      assertThat(Files.readString(RESOURCES.resolve(file.getKey()))).isEqualTo(file.getValue());
    }
  }

  @Test
  void readmeStatesTheTruth() throws IOException {
    assertThat(Files.readString(README))
        .contains(MARK + "\n" + TruthSection.markdown() + "\n" + MARK);
  }

  @Test
  void readmeListsEveryFile() throws IOException {
    String readme = Files.readString(README);
    assertThat(archive.files().keySet()).allMatch(name -> readme.contains("`" + name + "`"));
  }

  @Test
  void everyReportIsInOneFileOnly() {
    List<String> keys =
        archive.expectations().reports.stream().map(e -> e.report().key()).sorted().toList();
    assertThat(keys).isEqualTo(archive.reports().keySet().stream().sorted().toList());
  }

  private static boolean same(String name, byte[] a, byte[] b) throws IOException {
    return name.endsWith(".xlsx") ? cells(a).equals(cells(b)) : java.util.Arrays.equals(a, b);
  }

  private static List<String> cells(byte[] workbook) throws IOException {
    List<String> cells = new ArrayList<>();
    try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(workbook))) {
      for (var sheet : book.getSheets().toList()) {
        cells.add(sheet.getName());
        try (Stream<Row> rows = sheet.openStream()) {
          rows.forEach(
              row ->
                  row.forEach(
                      cell -> {
                        if (cell != null) {
                          cells.add(cell.getAddress() + " " + cell.getType() + cell.getRawValue());
                        }
                      }));
        }
      }
    }
    return cells;
  }
}
