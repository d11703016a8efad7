package org.griplore.ingest.forms;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.recognise.CellNumber;
import org.griplore.ingest.recognise.ColumnRole;
import org.griplore.ingest.recognise.DecimalMark;
import org.griplore.ingest.recognise.DetailLines;
import org.griplore.ingest.recognise.FigureColumn;
import org.griplore.ingest.recognise.FoundThing;
import org.griplore.ingest.recognise.NumberReader;
import org.griplore.ingest.recognise.TableArea;
import org.griplore.ingest.recognise.TableFigures;
import org.griplore.ingest.tables.TableReading;
import org.griplore.store.vocabulary.Dimension;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.HeaderKey;
import org.griplore.store.vocabulary.Unit;
import org.griplore.store.vocabulary.UnitWords;

/** What the columns of one table hold, and their figures; what is not understood is told. */
final class TableColumns {
  private final TableArea area;
  private final SourceContext context;
  private final NumberReader numbers;
  private final List<ColumnRole> roles = new ArrayList<>();
  private final List<FoundThing> findings = new ArrayList<>();
  private final TableFigures figures;

  TableColumns(TableReading reading, DetailLines lines, SourceContext context) {
    this.area = reading.area();
    this.context = context;
    this.numbers = new NumberReader(mark());
    List<ColumnRole> found = reading.roles();
    findings.addAll(reading.findings());
    for (int column = 0; column < found.size(); column++) {
      roles.add(isSaid(column) ? found.get(column) : settled(found.get(column), column));
    }
    reportUnknown();
    figures =
        new TableFigures(
            area,
            roles,
            units(),
            unitBeside(lines),
            marksExplained(lines),
            context.map(),
            reading.tyres());
    findings.addAll(figures.findings());
  }

  /** Whether the user says what the column holds. */
  boolean isSaid(int column) {
    return context.map().of(column + 1, area.heads().get(column)).isPresent();
  }

  private DecimalMark mark() {
    if (context.map().decimal() != null) {
      return context.map().decimal();
    }
    DecimalMark mark =
        DecimalMark.of(
            area.rows().stream()
                .flatMap(List::stream)
                .filter(Objects::nonNull)
                .filter(cell -> cell.number() == null && cell.text().length() < 30)
                .map(GridCell::text));
    return mark == DecimalMark.MIXED ? DecimalMark.OPEN : mark;
  }

  /** Units that were given beside the content: {@code unit wet-braking} is {@code ft}. */
  private Map<String, Unit> units() {
    Map<String, Unit> units = new HashMap<>();
    context
        .given()
        .forEach(
            (topic, text) -> {
              if (topic.startsWith("unit ")) {
                UnitWords.ofText(text)
                    .ifPresent(unit -> units.put(topic.substring(5).strip(), unit.unit()));
              }
            });
    return units;
  }

  private Unit unitBeside(DetailLines lines) {
    GridCell stated = lines.byTopic().get("unit");
    String text = stated != null ? stated.text() : context.given().get("unit");
    return text == null
        ? null
        : UnitWords.ofText(text).map(UnitWords.Recognised::unit).orElse(null);
  }

  private boolean marksExplained(DetailLines lines) {
    List<GridCell> texts = new ArrayList<>(lines.others());
    area.after().forEach(texts::addAll);
    return texts.stream()
        .map(cell -> HeaderKey.of(cell.text()))
        .anyMatch(
            key -> key.contains("1 sehr gut") || key.contains("1 best") || key.contains("1 bast"));
  }

  /** "Note" heads remarks in English and marks in German: the cells decide. */
  private ColumnRole settled(ColumnRole role, int column) {
    boolean mostlyNumbers = share(column) > 0.5;
    if (role instanceof ColumnRole.Remark && mostlyNumbers) {
      Optional<Unit> rating =
          UnitWords.ofText(area.heads().get(column).text())
              .map(UnitWords.Recognised::unit)
              .filter(
                  unit ->
                      unit.dimension() == Dimension.MARK || unit.dimension() == Dimension.POINTS);
      return new ColumnRole.Value(context.catalogue().get("overall"), rating.orElse(null));
    }
    if (role instanceof ColumnRole.Tyre && mostlyNumbers && column > 0) {
      return new ColumnRole.Unknown();
    }
    return role;
  }

  private double share(int column) {
    int filled = 0;
    int numeric = 0;
    for (List<GridCell> row : area.rows()) {
      GridCell cell = row.get(column);
      if (cell != null) {
        NumberReader.Reading read = read(cell);
        filled += read instanceof NumberReader.Reading.Missing ? 0 : 1;
        numeric += read instanceof NumberReader.Reading.Number ? 1 : 0;
      }
    }
    return filled == 0 ? 0 : (double) numeric / filled;
  }

  private void reportUnknown() {
    Map<ColumnRole, Integer> seen = new HashMap<>();
    for (int column = 0; column < roles.size(); column++) {
      GridCell head = area.heads().get(column).cell();
      ColumnRole role = roles.get(column);
      int at = column;
      Optional<GridCell> first =
          area.rows().stream().map(row -> row.get(at)).filter(Objects::nonNull).findFirst();
      if (role instanceof ColumnRole.Unknown && first.isPresent()) {
        findings.add(
            new FoundThing(
                Finding.Kind.NOT_READ,
                head == null ? first.get() : head,
                head == null ? "a column without a header" : head.text(),
                "a discipline, a place, a size or a remark",
                "head the column with a word for the discipline, or add the discipline"));
      }
      boolean mayRepeat =
          role instanceof ColumnRole.Unknown
              || role instanceof ColumnRole.Run
              || role instanceof ColumnRole.Ignored
              || role instanceof ColumnRole.Remark;
      if (!mayRepeat && seen.putIfAbsent(sameThing(role), column) != null) {
        findings.add(
            new FoundThing(
                Finding.Kind.CONFLICT,
                head,
                area.heads().get(column).text(),
                "one column for a discipline; the first was taken",
                "give the columns different headers, or leave one out"));
        roles.set(column, new ColumnRole.Ignored("a second column for the same thing"));
      }
    }
  }

  private static ColumnRole sameThing(ColumnRole role) {
    return role instanceof ColumnRole.Value value
        ? new ColumnRole.Value(value.discipline(), null, null, value.setting())
        : role;
  }

  /** What each column holds. */
  List<ColumnRole> roles() {
    return roles;
  }

  /** The figures of a column; null when it holds none. */
  FigureColumn figures(int column) {
    return figures.column(column);
  }

  /** The reading of a cell outside the columns of figures. */
  NumberReader.Reading read(GridCell cell) {
    return CellNumber.read(cell, numbers);
  }

  /** All that was assumed, contradicted or not understood. */
  List<FoundThing> findings() {
    return findings;
  }
}
