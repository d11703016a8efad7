package org.griplore.ingest.forms;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.names.FieldNames;
import org.griplore.ingest.recognise.ColumnWords;
import org.griplore.ingest.recognise.DetailLines;
import org.griplore.ingest.recognise.DetailsReader;
import org.griplore.ingest.recognise.TableArea;
import org.griplore.ingest.tables.TableReading;
import org.griplore.ingest.tables.TableReadings;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.Entry;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.Note;
import org.griplore.store.vocabulary.TestReport;

/**
 * Tables of tyres and disciplines, as testers and publications make them: several sheets of one
 * workbook or several tables of one page tell of the same test unless they name another.
 */
public final class TableForm {
  /**
   * Reads all tables of a source.
   *
   * @return whether there was a table at all
   */
  public static boolean read(List<Grid> grids, SourceContext context) {
    return new TableForm(context).read(grids);
  }

  private final SourceContext context;
  private final TableReadings readings;
  private final MapUse use;
  private final Map<String, FieldNames> fields = new LinkedHashMap<>();
  private final Map<String, Details> told = new HashMap<>();
  private DetailLines earlier = DetailLines.NONE;

  private TableForm(SourceContext context) {
    this.context = context;
    this.readings = new TableReadings(context.catalogue(), context.map());
    this.use = new MapUse(context);
  }

  private boolean read(List<Grid> grids) {
    boolean any = false;
    boolean shown = grids.stream().anyMatch(grid -> !grid.hidden());
    for (Grid each : grids) {
      if (each.hidden() && shown) {
        HiddenCells.tell(each, context);
        continue;
      }
      Grid grid = HiddenCells.without(each, context);
      any |= isResultList(grid) ? results(grid) : tables(grid);
    }
    use.refuseUnused();
    return any;
  }

  private boolean results(Grid grid) {
    List<List<GridCell>> lines = new ArrayList<>();
    grid.preamble().forEach(cell -> lines.add(List.of(cell)));
    LongTableForm.read(grid, context.details(lines).orElse(earlier), context);
    return true;
  }

  private boolean tables(Grid grid) {
    List<TableReading> taken = new ArrayList<>();
    boolean draft = false;
    for (TableReadings.Found found : readings.of(grid)) {
      if (found.isTaken()) {
        taken.add(found.best());
      } else {
        DraftedTable.tell(grid, found, context);
        draft = true;
      }
    }
    List<List<GridCell>> preamble = new ArrayList<>();
    grid.preamble().forEach(cell -> preamble.add(List.of(cell)));
    for (TableReading reading : taken) {
      use.table(reading.area());
      List<List<GridCell>> lines = new ArrayList<>(preamble);
      lines.addAll(reading.area().before());
      DetailLines below = context.details(reading.area().after());
      DetailLines own =
          context
              .details(lines)
              .orElse(new DetailLines(below.byTopic(), null, List.of(), below.repeated()));
      DetailLines details = namesAnotherTest(own, earlier) ? own : own.orElse(earlier);
      readArea(grid, reading, details);
      earlier = details;
      preamble.clear();
    }
    if (taken.isEmpty() && !draft) {
      earlier = remarksOnly(grid, earlier, context);
    }
    return !taken.isEmpty() || draft;
  }

  /** A list of results whose columns are headed as in our long table, the tyre in one of them. */
  private static boolean isResultList(Grid grid) {
    if (grid.rows().isEmpty() || grid.draft() != null) {
      return false;
    }
    List<String> header = grid.rows().get(0).stream().map(GridCell::text).toList();
    boolean parts =
        header.stream()
            .flatMap(text -> ColumnWords.topic(text).stream())
            .anyMatch(
                topic ->
                    topic.equals("maker")
                        || topic.equals("line")
                        || topic.equals("generation")
                        || topic.equals("state"));
    return !parts && OwnForm.isResultList(header) && grid.width() == header.size();
  }

  private static boolean namesAnotherTest(DetailLines own, DetailLines earlier) {
    return own.byTopic().containsKey("test") && earlier.byTopic().containsKey("test")
        || own.byTopic().containsKey("date") && earlier.byTopic().containsKey("date");
  }

  /** Tables under one title or file name that state another day, size or car are other tests. */
  private String keyOf(DetailLines lines, Details details) {
    String key = TestKey.of(lines, details, context);
    Details earlier = told.putIfAbsent(key, details);
    boolean given = lines.byTopic().containsKey("test") || context.given().containsKey("test");
    if (given || earlier == null) {
      return key;
    }
    return TestSigns.apart(details, earlier)
        .map(sign -> TestKey.apart(key, sign, context))
        .orElse(key);
  }

  private void readArea(Grid grid, TableReading reading, DetailLines lines) {
    TableArea area = reading.area();
    Details details =
        DetailsReader.read(
            lines,
            context.given(),
            grid.name(),
            context.map().monthFirst(),
            context.receiver()::finding);
    String publisher = details.publication() == null ? "" : details.publication() + ": ";
    context.receiver().layout(publisher + area.layout());
    String key = keyOf(lines, details);
    if (fields.containsKey(key)) {
      details = details.withoutCells();
    }
    FieldNames field = fields.computeIfAbsent(key, k -> new FieldNames(context.names()));
    TableReader reader =
        new TableReader(grid.name(), reading, lines, context, details.size(), field);
    List<Entry> entries = reader.entries();
    List<Note> notes = new ArrayList<>(reader.notes());
    lines.others().forEach(cell -> notes.add(note(grid.name(), cell)));
    below(grid, area, notes);
    context.receiver().report(new TestReport(key, details, entries, notes, List.of()));
  }

  /** Lines below a table are notes, but for details and what still looks like rows. */
  private void below(Grid grid, TableArea area, List<Note> notes) {
    DetailLines below = context.details(area.after());
    List<GridCell> texts = new ArrayList<>(below.others());
    if (below.title() != null) {
      texts.add(0, below.title());
    }
    for (List<GridCell> line : area.after()) {
      boolean row = line.size() > 1 && TableReadings.hasFigure(line);
      for (GridCell cell : line) {
        if (row && texts.contains(cell)) {
          context
              .receiver()
              .finding(
                  new Finding(
                      Finding.Kind.NOT_READ,
                      new Cell(grid.name(), cell.row(), cell.column(), cell.text()),
                      cell.text(),
                      "a row of the table above, or a table with a header",
                      "put the row into the table, or a header above it"));
        } else if (texts.contains(cell)) {
          notes.add(note(grid.name(), cell));
        }
      }
    }
  }

  private static Note note(String sheet, GridCell cell) {
    return new Note(
        null, null, cell.text(), new Cell(sheet, cell.row(), cell.column(), cell.text()));
  }

  /** A sheet or page part without a table: its details count, its texts are notes on the test. */
  private static DetailLines remarksOnly(Grid grid, DetailLines earlier, SourceContext context) {
    List<List<GridCell>> lines = new ArrayList<>();
    grid.preamble().forEach(cell -> lines.add(List.of(cell)));
    lines.addAll(grid.rows());
    DetailLines own = context.details(lines);
    boolean titled = own.title() != null && !own.byTopic().isEmpty();
    DetailLines details = own.orElse(earlier);
    List<Note> notes = new ArrayList<>();
    own.others().forEach(cell -> notes.add(note(grid.name(), cell)));
    if (!titled && own.title() != null && earlier.title() != null) {
      notes.add(0, note(grid.name(), own.title()));
      details = new DetailLines(details.byTopic(), earlier.title(), List.of(), List.of());
    }
    if (!notes.isEmpty() && !earlier.equals(DetailLines.NONE)) {
      Details told =
          DetailsReader.read(
              details, context.given(), grid.name(), context.map().monthFirst(), finding -> {});
      context
          .receiver()
          .report(
              new TestReport(
                  TestKey.of(details, told, context),
                  told.withoutCells(),
                  List.of(),
                  notes,
                  List.of()));
    } else if (!notes.isEmpty()) {
      GridCell first = grid.rows().isEmpty() ? grid.preamble().get(0) : grid.rows().get(0).get(0);
      context
          .receiver()
          .finding(
              new Finding(
                  Finding.Kind.NOT_READ,
                  new Cell(grid.name(), first.row(), first.column(), first.text()),
                  first.text(),
                  "a header row that names tyres and disciplines",
                  "head the column of tyres \"Tyre\" and the others with a discipline"));
    }
    return new DetailLines(details.byTopic(), details.title(), List.of(), List.of());
  }
}
