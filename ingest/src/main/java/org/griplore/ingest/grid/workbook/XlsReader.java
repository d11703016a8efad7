package org.griplore.ingest.grid.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.EncryptedDocumentException;
import org.apache.poi.hssf.OldExcelFormatException;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFFont;
import org.apache.poi.hssf.usermodel.HSSFRichTextString;
import org.apache.poi.hssf.usermodel.HSSFRow;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.filesystem.DirectoryNode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.griplore.ingest.grid.CellCount;
import org.griplore.ingest.grid.CellLook;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.MarkedText;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.Refusal;

/**
 * Reads the sheets of a workbook of the binary form (XLS, Excel 97 to 2003), through Apache POI's
 * core. Formulas give their stored values; macros, links and what is embedded are left alone.
 */
public final class XlsReader {
  private final HSSFWorkbook workbook;
  private final CellCount count;
  private final boolean from1904;

  private XlsReader(HSSFWorkbook workbook, String name) {
    this.workbook = workbook;
    this.count = new CellCount(name);
    this.from1904 = workbook.getInternalWorkbook().isUsing1904DateWindowing();
  }

  /**
   * Reads a compound file as a workbook.
   *
   * @throws Refusal when it has a password, is damaged, or is no workbook of this form
   */
  public static Content read(Original original) {
    String name = original.name();
    CompoundFile.refuseLarge(original);
    byte[] bytes = original.readAll();
    try (POIFSFileSystem files = new POIFSFileSystem(new ByteArrayInputStream(bytes))) {
      DirectoryNode root = files.getRoot();
      CompoundFile.refuseOther(name, root);
      try (HSSFWorkbook workbook = new HSSFWorkbook(root, false)) {
        return new XlsReader(workbook, name).tables();
      }
    } catch (EncryptedDocumentException e) {
      throw CompoundFile.password(name);
    } catch (OldExcelFormatException e) {
      throw CompoundFile.old(name);
    } catch (Refusal e) {
      throw e;
    } catch (IOException | RuntimeException e) {
      throw CompoundFile.isEncrypted(bytes) ? CompoundFile.password(name) : Damage.of(name, e);
    }
  }

  private Content tables() {
    List<Grid> grids = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    int sheets = workbook.getNumberOfSheets();
    for (int i = 0; i < sheets; i++) {
      SheetCells cells = new SheetCells(sheets == 1 ? "" : workbook.getSheetName(i), count);
      sheet(workbook.getSheetAt(i), cells);
      boolean hidden = workbook.isSheetHidden(i) || workbook.isSheetVeryHidden(i);
      grids.add(cells.grid(hidden).from(workbook.getSheetName(i)));
      findings.addAll(cells.findings());
    }
    return new Content.Tables("workbook", grids, findings);
  }

  private void sheet(HSSFSheet sheet, SheetCells cells) {
    int width = 0;
    for (Row each : sheet) {
      HSSFRow row = (HSSFRow) each;
      width = Math.max(width, row.getLastCellNum());
      if (row.getZeroHeight()) {
        cells.hideRow(row.getRowNum() + 1);
      }
      for (Cell cell : row) {
        cells.add(cell((HSSFCell) cell));
      }
    }
    for (int column = 0; column < width; column++) {
      if (sheet.isColumnHidden(column)) {
        cells.hideColumns(column + 1, column + 1);
      }
    }
    for (CellRangeAddress range : sheet.getMergedRegions()) {
      cells.merge(
          new Grid.Merge(
              range.getFirstRow() + 1,
              range.getFirstColumn() + 1,
              range.getLastRow() + 1,
              range.getLastColumn() + 1));
    }
    sheet
        .getCellComments()
        .forEach(
            (at, comment) -> {
              String text = XlsxComments.oneLine(comment.getString().getString());
              if (!text.isEmpty()) {
                cells.comment(new CellReference(at.getRow() + 1, at.getColumn() + 1), text);
              }
            });
  }

  private GridCell cell(HSSFCell cell) {
    int row = cell.getRowIndex() + 1;
    int column = cell.getColumnIndex() + 1;
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    HSSFFont font = workbook.getFontAt(cell.getCellStyle().getFontIndex());
    GridCell read =
        switch (type) {
          case NUMERIC -> number(cell, row, column);
          case BOOLEAN -> GridCell.of(row, column, String.valueOf(cell.getBooleanCellValue()));
          case ERROR ->
              GridCell.of(row, column, FormulaError.forInt(cell.getErrorCellValue()).getString());
          case STRING -> text(cell, font).cell(row, column);
          default -> null;
        };
    boolean struck = read != null && font != null && font.getStrikeout() && type != CellType.STRING;
    return struck ? read.shown(read.look().strikingOut()) : read;
  }

  private GridCell number(HSSFCell cell, int row, int column) {
    double value = cell.getNumericCellValue();
    if (!Double.isFinite(value)) {
      return GridCell.of(row, column, Double.toString(value));
    }
    BigDecimal number = BigDecimal.valueOf(value);
    String format = cell.getCellStyle().getDataFormatString();
    return CellFormat.isMeasurable(number)
        ? CellFormat.cell(row, column, number, format, from1904)
        : new GridCell(row, column, number.toString(), null, null, CellLook.PLAIN);
  }

  /** A text by its runs; before the first run the cell's own font holds. */
  private MarkedText text(HSSFCell cell, HSSFFont own) {
    HSSFRichTextString rich = cell.getRichStringCellValue();
    String text = rich.getString();
    MarkedText marked = new MarkedText();
    int runs = rich.numFormattingRuns();
    int from = 0;
    HSSFFont font = own;
    for (int i = 0; i < runs; i++) {
      int at = Math.min(text.length(), Math.max(from, rich.getIndexOfFormattingRun(i)));
      add(marked, text.substring(from, at), font, runs > 0);
      from = at;
      font = workbook.getFontAt(rich.getFontOfFormattingRun(i));
    }
    add(marked, text.substring(from), font, runs > 0);
    return marked;
  }

  /** A text whose font is raised as a whole is no mark: there is nothing beside it. */
  private static void add(MarkedText text, String part, HSSFFont font, boolean inRuns) {
    boolean raised = inRuns && font != null && font.getTypeOffset() == HSSFFont.SS_SUPER;
    text.add(part, raised, font != null && font.getStrikeout());
  }
}
