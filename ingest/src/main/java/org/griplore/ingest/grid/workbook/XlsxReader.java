package org.griplore.ingest.grid.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.xml.stream.XMLStreamException;
import org.griplore.ingest.grid.CellCount;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.packed.PackedFile;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.Refusal;

/**
 * Reads the sheets of a packed workbook (XLSX, XLSM: ECMA-376), hidden ones too. Formulas give
 * their stored values, and themselves ({@code =A1/B1}) with a finding where the workbook stores
 * none; macros and other workbooks that it refers to are left alone. A sheet has no name when it is
 * the only one. Our own reader, because one pass gives what libraries part with: rich text, what is
 * struck out, hidden or noted, and merged ranges.
 */
public final class XlsxReader {
  private final PackedFile file;
  private final Set<String> unread;

  private XlsxReader(PackedFile file) {
    this.file = file;
    this.unread = new HashSet<>(file.parts());
  }

  /**
   * Reads a packed file as a workbook.
   *
   * @throws Refusal when it is damaged or would unpack to too much
   */
  public static Content read(PackedFile file) {
    try {
      return new XlsxReader(file).tables();
    } catch (Refusal e) {
      throw e;
    } catch (IOException | XMLStreamException | RuntimeException e) {
      throw Damage.of(file.name(), e);
    }
  }

  private Content tables() throws IOException, XMLStreamException {
    XlsxParts parts = XlsxParts.of(file);
    XlsxStyles styles = styles(parts.shared("styles", "xl/styles.xml"));
    List<XlsxTexts.Text> texts = texts(parts.shared("sharedStrings", "xl/sharedStrings.xml"));
    CellCount count = new CellCount(file.name());
    List<Grid> grids = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (XlsxParts.Sheet sheet : parts.sheets()) {
      SheetCells cells = new SheetCells(parts.sheets().size() == 1 ? "" : sheet.name(), count);
      try (InputStream in = opened(sheet.part())) {
        new XlsxSheet(file.name(), sheet.part(), texts, styles, parts.from1904(), cells).read(in);
      }
      comments(parts.related(sheet.part(), "comments"), cells);
      grids.add(cells.grid(sheet.hidden()).from(sheet.name()));
      findings.addAll(cells.findings());
    }
    for (String part : unread) {
      file.unpack(part);
    }
    return new Content.Tables("workbook", grids, findings);
  }

  private InputStream opened(String part) throws IOException {
    unread.remove(part.toLowerCase(java.util.Locale.ROOT));
    return file.open(part);
  }

  private XlsxStyles styles(String part) throws IOException, XMLStreamException {
    if (part == null) {
      return XlsxStyles.none();
    }
    try (InputStream in = opened(part)) {
      return XlsxStyles.read(in);
    }
  }

  private List<XlsxTexts.Text> texts(String part) throws IOException, XMLStreamException {
    if (part == null) {
      return List.of();
    }
    try (InputStream in = opened(part)) {
      return XlsxTexts.shared(file.name(), in);
    }
  }

  private void comments(String part, SheetCells cells) throws IOException, XMLStreamException {
    if (part != null) {
      try (InputStream in = opened(part)) {
        for (Map.Entry<CellReference, String> comment :
            XlsxComments.read(file.name(), part, in).entrySet()) {
          cells.comment(comment.getKey(), comment.getValue());
        }
      }
    }
  }
}
