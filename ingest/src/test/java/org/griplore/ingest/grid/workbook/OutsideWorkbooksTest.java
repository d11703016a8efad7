package org.griplore.ingest.grid.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.VisibleText;
import org.griplore.ingest.grid.source.DocumentReader;
import org.griplore.store.OutsideData;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.Test;

/**
 * Files of other projects' tests: no exception but a refusal, no hang, and in workbooks the cells
 * that Apache POI's usermodel and DataFormatter find, an independent reader for XLSX and an
 * independent way through the same library for XLS.
 */
class OutsideWorkbooksTest {
  /**
   * A formula without a stored value, which stands here as itself; and two texts that hold letters
   * beside their runs, which the schema does not allow: they are kept, so that nothing is lost.
   */
  private static final List<String> KNOWN =
      List.of(
          "missing-v-node-xlsx.xlsx Sheet1 2/3: =A2 + B2, there ",
          "inlineStr2.xlsx Requirements 1/2: BeforeHierarchy, there Hierarchy",
          "richtext-coloured.xlsx Sheet1 2/1: tvalrval1rval2, there rval1rval2");

  private final List<String> differences = new ArrayList<>();
  private int compared;

  private static List<Path> files() throws IOException {
    Optional<Path> folder = OutsideData.folder("messy-public");
    assumeTrue(folder.isPresent(), "the folder messy-public of others' odd files is not at hand");
    try (Stream<Path> walk = Files.walk(folder.get())) {
      return walk.filter(Files::isRegularFile).sorted().toList();
    }
  }

  @Test
  void everyFileIsReadOrRefusedInASentence() throws IOException {
    for (Path file : files()) {
      assertTimeoutPreemptively(
          Duration.ofSeconds(20),
          () -> {
            try {
              DocumentReader.read(file);
            } catch (Refusal refusal) {
              assertThat(refusal.sentence()).endsWith(".").hasSizeLessThan(400);
            }
          },
          file.toString());
    }
  }

  @Test
  void workbooksHoldTheCellsThatAnotherReaderFinds() throws IOException {
    List<String> refused = new ArrayList<>();
    for (Path file : files()) {
      if (file.toString().matches(".*\\.xlsx?")) {
        try (Workbook workbook = WorkbookFactory.create(file.toFile(), null, true)) {
          compare(file.getFileName().toString(), workbook, DocumentReader.read(file));
        } catch (Refusal refusal) {
          refused.add(refusal.sentence());
        } catch (IOException | RuntimeException e) {
          // the other reader cannot open it: nothing to compare with
        }
      }
    }
    assertThat(differences).containsExactlyInAnyOrderElementsOf(KNOWN);
    assertThat(compared).isGreaterThan(1000);
    assertThat(refused).as("workbooks that the other reader opens").isEmpty();
  }

  private void compare(String file, Workbook workbook, Content content) {
    List<Grid> grids = ((Content.Tables) content).grids();
    List<Sheet> sheets = new ArrayList<>();
    workbook.forEach(sheets::add);
    sheets.removeIf(sheet -> sheet.getClass().getSimpleName().contains("ChartSheet"));
    assertThat(grids).as(file).hasSameSizeAs(sheets);
    for (int i = 0; i < sheets.size(); i++) {
      Map<String, GridCell> own = new HashMap<>();
      grids
          .get(i)
          .rows()
          .forEach(row -> row.forEach(cell -> own.put(place(cell.row(), cell.column()), cell)));
      for (Row row : sheets.get(i)) {
        for (Cell cell : row) {
          String at = place(cell.getRowIndex() + 1, cell.getColumnIndex() + 1);
          compare(file + " " + sheets.get(i).getSheetName() + " " + at, cell, own.remove(at));
        }
      }
      own.forEach((at, cell) -> differences.add(file + " " + at + ": only here: " + cell.text()));
    }
  }

  private static String place(int row, int column) {
    return row + "/" + column;
  }

  private void compare(String at, Cell theirs, GridCell own) {
    CellType type =
        theirs.getCellType() == CellType.FORMULA
            ? theirs.getCachedFormulaResultType()
            : theirs.getCellType();
    DataFormatter formatter = new DataFormatter();
    formatter.setUseCachedValuesForFormulaCells(true);
    String shown = VisibleText.of(formatter.formatCellValue(theirs));
    if (own == null) {
      if (!shown.isEmpty() && type != CellType.BLANK) {
        differences.add(at + ": only there: " + shown);
      }
      return;
    }
    compared++;
    if (type == CellType.NUMERIC) {
      if (own.number() != null) {
        String format = own.look().format() == null ? "General" : own.look().format().code();
        String ours = formatter.formatRawCellContents(own.number(), -1, format);
        boolean same =
            own.number() == theirs.getNumericCellValue()
                && (format.equals("General") || VisibleText.of(ours).equals(shown));
        if (!same) {
          differences.add(at + ": " + own + " as " + ours + ", there " + shown);
        }
      } else if (own.date() != null
          && !own.date().equals(theirs.getLocalDateTimeCellValue().toLocalDate())) {
        differences.add(at + ": " + own.date() + ", there " + theirs.getLocalDateTimeCellValue());
      }
    } else if (!own.text().equalsIgnoreCase(shown)) {
      differences.add(at + ": " + own.text() + ", there " + shown);
    }
  }
}
