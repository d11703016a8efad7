package org.griplore.ingest.forms;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.recognise.DetailLines;
import org.griplore.ingest.recognise.DetailsReader;
import org.griplore.store.tyre.TyreSize;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.Finding;

/** The tests that a long table's rows tell of: the first row of each tells its details. */
final class LongTests {
  private static final List<String> OF_THE_TEST =
      List.of(
          "date",
          "source",
          "source_kind",
          "title",
          "season",
          "vehicle",
          "vehicle_mass_kg",
          "venue",
          "surface_c",
          "air_c");

  private final LongRows rows;
  private final String sheet;
  private final DetailLines beside;
  private final SourceContext context;
  private final int[] columns;
  private final Map<String, Told> tests = new HashMap<>();

  /** What later rows of a test are compared with; the details are the first rows' to tell. */
  static final class Told {
    final String key;
    private Details details;
    private final String size;
    private final String sizeText;
    private final int said;
    private boolean contradicted;

    private Told(String key, Details details, String sizeText, int said) {
      this.key = key;
      this.details = details;
      this.size = details.size();
      this.sizeText = sizeText;
      this.said = said;
    }

    /** The details, the first time; none later, for they are told already. */
    Details takeDetails() {
      Details taken = details;
      details = Details.NONE;
      return taken;
    }
  }

  /**
   * Tests of a table.
   *
   * @param beside the details that stand beside the table and hold for all its rows
   */
  LongTests(LongRows rows, String sheet, DetailLines beside, SourceContext context) {
    this.rows = rows;
    this.sheet = sheet;
    this.beside = beside;
    this.context = context;
    this.columns = OF_THE_TEST.stream().filter(rows::has).mapToInt(rows::column).toArray();
  }

  /** The test of the row read just now; null when it names none. */
  Told ofRow(Told before) {
    String key = rows.text("test").strip();
    if (key.isEmpty() && !rows.has("test")) {
      key = before == null ? keyBeside() : before.key;
    }
    if (key.isEmpty()) {
      rows.finding(Finding.Kind.NOT_READ, "test", "", "the key of a test");
      return null;
    }
    Told test = before != null && before.key.equals(key) ? before : tests.get(key);
    if (test == null) {
      test = new Told(key, details(), rows.text("size"), rows.hash(columns));
      tests.put(key, test);
    } else if (!test.contradicted && rows.hash(columns) != test.said) {
      test.contradicted = true;
      rows.finding(
          Finding.Kind.CONFLICT,
          "test",
          key,
          "the same date, source, title, season, vehicle and venue in all rows of a test; what its"
              + " first row says was taken");
    }
    return test;
  }

  private String keyBeside() {
    Details told = DetailsReader.read(beside, context.given(), sheet, finding -> {});
    return TestKey.of(beside, told, context);
  }

  /** The details as the row's own columns tell them, else as told beside the table. */
  private Details details() {
    Map<String, GridCell> byTopic = new LinkedHashMap<>(beside.byTopic());
    GridCell title = beside.title();
    for (String topic : OF_THE_TEST) {
      Cell cell = rows.cell(topic);
      if (cell != null && !cell.found().isBlank()) {
        GridCell text = GridCell.of(cell.row(), cell.column(), cell.found().strip());
        if (topic.equals("title")) {
          title = text;
        } else {
          byTopic.put(topic, text);
        }
      }
    }
    Cell size = rows.cell("size");
    if (size != null) {
      byTopic.put("size", GridCell.of(size.row(), size.column(), size.found()));
    }
    return DetailsReader.read(
        new DetailLines(byTopic, title, List.of(), beside.repeated()),
        context.given(),
        sheet,
        context.receiver()::finding);
  }

  /** The row's size where it is another than its test's; null where it is not. */
  String ownSize(Told test) {
    String size = rows.text("size");
    if (size.isBlank() || size.equals(test.sizeText)) {
      return null;
    }
    String read = TyreSize.find(size).map(TyreSize::toString).orElse(null);
    if (read == null) {
      rows.finding(Finding.Kind.NOT_READ, "size", size, "a size like 205/55 R16 91V");
    }
    return read == null || read.equals(test.size) ? null : read;
  }
}
