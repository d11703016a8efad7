package org.griplore.ingest.forms;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.recognise.DetailLines;
import org.griplore.ingest.recognise.TableArea;
import org.griplore.ingest.tables.ReadingReason;
import org.griplore.ingest.tables.TableReading;
import org.griplore.ingest.tables.TableReadings;
import org.griplore.store.archive.NameTaken;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.DraftTable;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.ProposedReading;
import org.griplore.store.vocabulary.TestReport;

/** A table that cannot be decided on is told as a draft, with the best reading and the second. */
final class DraftedTable {
  private static final int PROPOSED = 2;

  private DraftedTable() {}

  static void tell(Grid grid, TableReadings.Found found, SourceContext context) {
    TableReading best = found.best();
    Cell cell =
        cells(best)
            .findFirst()
            .map(c -> new Cell(grid.name(), c.row(), c.column(), c.text()))
            .orElse(null);
    if (cell == null) {
      return;
    }
    List<ProposedReading> proposals = new ArrayList<>();
    for (TableReading reading : found.different()) {
      if (proposals.size() < PROPOSED) {
        proposals.add(proposal(reading));
      }
    }
    context
        .receiver()
        .draft(
            new DraftTable(
                grid.name(),
                cells(best).mapToInt(GridCell::row).min().orElseThrow(),
                cells(best).mapToInt(GridCell::row).max().orElseThrow(),
                cells(best).mapToInt(GridCell::column).min().orElseThrow(),
                cells(best).mapToInt(GridCell::column).max().orElseThrow(),
                ProposedReading.text(proposals)));
    context.receiver().finding(finding(best, cell));
    new TableReader(grid.name(), best, DetailLines.NONE, columnsOnly(context), null, null);
  }

  private static ProposedReading proposal(TableReading reading) {
    List<String> reasons = new ArrayList<>();
    if (reading.doubt() != null) {
      reasons.add(reading.doubt());
    }
    reading.evidence().stream().map(ReadingReason::toString).forEach(reasons::add);
    return new ProposedReading(reading.words(), reading.score(), reasons);
  }

  private static Finding finding(TableReading best, Cell cell) {
    return new Finding(
        Finding.Kind.NOT_READ,
        cell,
        cell == null ? "" : cell.found(),
        best.doubt() == null
            ? "a table that is read in one way; it is kept as a draft"
            : "a table that is read in one way; it is kept as a draft: " + best.doubt(),
        "`griplore drafts` shows the readings, and `griplore drafts --take N` decides; or say what"
            + " the columns hold in a map: `griplore add FILE --map MAP`");
  }

  private static Stream<GridCell> cells(TableReading reading) {
    return Stream.concat(
            reading.area().heads().stream().map(TableArea.Head::cell),
            reading.area().rows().stream().flatMap(List::stream))
        .filter(Objects::nonNull);
  }

  /** The draft's columns are shown; nothing else of it is told. */
  private static SourceContext columnsOnly(SourceContext context) {
    Receiver receiver = context.receiver();
    return new SourceContext(
        context.file(),
        context.catalogue(),
        context.names(),
        context.given(),
        context.givenFirst(),
        context.map(),
        new Receiver() {
          @Override
          public void report(TestReport report) {
            // a draft tells no results
          }

          @Override
          public void lineage(LineageRow row, List<String> means) {
            // nor descent
          }

          @Override
          public void name(String written, String model, NameTaken how) {
            // nor names
          }

          @Override
          public void finding(Finding finding) {
            // what is open of a draft is its readings
          }

          @Override
          public void column(UnderstoodColumn column) {
            receiver.column(column);
          }
        });
  }
}
