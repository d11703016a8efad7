package org.griplore.store.export;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.views.ArchiveTable;
import org.griplore.store.archive.views.ArchiveTables;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Refusal;

/**
 * Writes a whole archive as a Frictionless Data Package v1 (specs.frictionlessdata.io): tables as
 * CSV, originals by their hash, {@code datapackage.json}. The same contents give the same bytes: it
 * holds no clock, and no number that tells what came and went. Rows are written as they are read.
 */
public final class DataPackage {
  private static final int ROWS_A_REPORT = 10_000;

  private final Archive archive;
  private final ArchiveTables tables;
  private final DisciplineCatalogue catalogue;
  private final Path folder;
  private final Progress progress;
  private final Descriptor descriptor = new Descriptor();
  private final long total;
  private long rows;

  private DataPackage(
      Archive archive,
      ArchiveTables tables,
      DisciplineCatalogue catalogue,
      Path folder,
      Progress progress) {
    this.archive = archive;
    this.tables = tables;
    this.catalogue = catalogue;
    this.folder = folder;
    this.progress = progress;
    this.total = tables.rowsAbout();
  }

  /** Told while a package is written. */
  public interface Progress {
    /** So many rows of about so many are written; the table is named. */
    void written(String table, long rows, long about);
  }

  /**
   * What was written.
   *
   * @param tables number of tables
   * @param rows rows in all of them
   * @param originals number of originals
   */
  public record Written(int tables, long rows, int originals) {}

  /**
   * Writes the package into a folder that is not there or is empty: whole, or not at all.
   *
   * @throws Refusal when something is in the folder, it cannot be written, or the archive is
   *     damaged
   */
  public static Written write(
      Archive archive, DisciplineCatalogue catalogue, Path folder, Progress progress) {
    try (NewFolder made = NewFolder.instead(folder);
        ArchiveTables tables = archive.tables()) {
      Written written = new DataPackage(archive, tables, catalogue, made.draft(), progress).write();
      made.finish();
      return written;
    } catch (IOException | UncheckedIOException e) {
      throw new Refusal(
          "The package cannot be written to "
              + folder
              + ": the disk is full or the folder cannot be written; nothing was left there.",
          e);
    }
  }

  private Written write() throws IOException {
    disciplines();
    for (ArchiveTable table : tables.all()) {
      write(table);
    }
    Map<String, String> originals = tables.originals();
    for (Map.Entry<String, String> original : originals.entrySet()) {
      copy(original.getKey(), original.getValue());
    }
    descriptor.write(folder.resolve("datapackage.json"));
    return new Written(tables.all().size() + 1, rows, originals.size());
  }

  private void disciplines() throws IOException {
    write(
        DisciplineTable.TABLE,
        csv -> tables.disciplines().forEach(key -> csv.take(DisciplineTable.row(key, catalogue))));
  }

  private void write(ArchiveTable table) throws IOException {
    write(table, csv -> tables.rows(table, csv));
  }

  private void write(ArchiveTable table, RowQueue.Reading filling) throws IOException {
    String path = table.name() + ".csv";
    HashedFile file = new HashedFile(folder.resolve(path));
    try (CsvRows csv = new CsvRows(file)) {
      csv.row(table.fields().stream().map(ArchiveTable.Field::name).toArray());
      RowQueue.between(
          filling,
          row -> {
            csv.row(row);
            if (++rows % ROWS_A_REPORT == 0) {
              progress.written(table.name(), Math.min(rows, total), total);
            }
          });
    }
    descriptor.add(table, path, file);
  }

  private void copy(String sha256, String name) throws IOException {
    String path = "originals/" + sha256.substring(0, 2) + "/" + sha256;
    Path from = archive.originals().path(sha256);
    if (!Files.isRegularFile(from)) {
      throw new Refusal("The original of " + name + " is missing: " + from + ".");
    }
    Files.createDirectories(folder.resolve(path).getParent());
    HashedFile file = new HashedFile(folder.resolve(path));
    try (file;
        InputStream in = Files.newInputStream(from)) {
      in.transferTo(file);
    }
    if (!file.sha256().equals(sha256)) {
      throw new Refusal("The original of " + name + " is not what was read: " + from + " changed.");
    }
    descriptor.add("original-" + sha256, path, name, file);
  }
}
