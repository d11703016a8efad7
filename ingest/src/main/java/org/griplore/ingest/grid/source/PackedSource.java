package org.griplore.ingest.grid.source;

import java.io.IOException;
import java.util.Map;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.markup.DocxReader;
import org.griplore.ingest.grid.packed.PackedFile;
import org.griplore.ingest.grid.packed.PackedFolder;
import org.griplore.ingest.grid.workbook.OpenDocumentReader;
import org.griplore.ingest.grid.workbook.XlsxReader;
import org.griplore.store.archive.Original;

/** A packed source: which reader takes it, by a part that only its kind has. */
final class PackedSource {
  /** Kinds that are not read. */
  private static final Map<String, String> NOT_READ =
      Map.of(
          "xl/workbook.bin", "a binary workbook (XLSB): save it as XLSX",
          "ppt/presentation.xml", "a presentation: copy its tables into a workbook");

  private PackedSource() {}

  static Content read(Original original) throws IOException {
    try (PackedFile file = PackedFile.open(original)) {
      for (Map.Entry<String, String> kind : NOT_READ.entrySet()) {
        if (file.has(kind.getKey())) {
          throw ForeignContent.refusal(original.name(), kind.getValue());
        }
      }
      if (file.has("xl/workbook.xml")) {
        return XlsxReader.read(file);
      }
      if (file.has("content.xml")) {
        return TextSource.lines(original, OpenDocumentReader.read(file));
      }
      if (file.has("word/document.xml")) {
        return TextSource.lines(original, DocxReader.read(file));
      }
      return PackedFolder.members(original, file);
    }
  }
}
