package org.griplore.ingest.tables;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.griplore.ingest.recognise.ColumnRole;
import org.griplore.ingest.recognise.TableArea;

/** Weighs what speaks for and against a reading. */
final class ReadingEvidence {
  private final CellBlock block;
  private final HeaderBand band;
  private final List<TableArea.Head> columns;
  private final List<ColumnRole> roles;
  private final List<RowKind> kinds;
  private final ColumnFigures figures;
  private final List<ReadingReason> found = new ArrayList<>();

  ReadingEvidence(
      CellBlock block,
      HeaderBand band,
      List<TableArea.Head> columns,
      List<ColumnRole> roles,
      List<RowKind> kinds,
      ColumnFigures figures) {
    this.block = block;
    this.band = band;
    this.columns = columns;
    this.roles = roles;
    this.kinds = kinds;
    this.figures = figures;
    columns();
    heads();
    names();
    cells();
    above();
  }

  List<ReadingReason> list() {
    return found;
  }

  private void add(double points, String words) {
    if (Math.abs(points) >= 0.5) {
      found.add(new ReadingReason(points, words));
    }
  }

  private static boolean isFigures(ColumnRole role) {
    return role instanceof ColumnRole.Value
        || role instanceof ColumnRole.Place
        || role instanceof ColumnRole.Run;
  }

  private void columns() {
    int numeric = 0;
    int known = 0;
    int kept = 0;
    for (int c = 0; c < roles.size(); c++) {
      ColumnRole role = roles.get(c);
      kept += isFigures(role) ? 1 : 0;
      if (!NameColumns.isName(role) && figures.share(c) > 0.5) {
        numeric++;
        known += role instanceof ColumnRole.Unknown ? 0 : 1;
      }
    }
    if (kept == 0) {
      add(-60, "no column of figures is understood");
    } else {
      add(
          40.0 * known / Math.max(1, numeric),
          known + " of " + numeric + " columns of figures understood");
    }
  }

  private void heads() {
    for (int c = 0; c < roles.size(); c++) {
      if (NameColumns.isName(roles.get(c))) {
        String head = columns.get(c).text();
        boolean said = org.griplore.ingest.recognise.ColumnWords.topic(head).isPresent();
        add(
            said ? 15 : head.isEmpty() ? 10 : 6,
            said
                ? "\"" + head + "\" heads tyres"
                : head.isEmpty()
                    ? "texts on the left, without a header"
                    : "texts below \"" + head + "\"");
        return;
      }
    }
    add(-60, "no column of tyres' names");
  }

  private void names() {
    int tyres = 0;
    int bad = 0;
    for (int i = 0; i < kinds.size(); i++) {
      boolean none = kinds.get(i) == RowKind.NO_TYRE;
      tyres += none || kinds.get(i) == RowKind.TYRE ? 1 : 0;
      bad += none ? 1 : 0;
    }
    if (tyres == 0) {
      add(-60, "no row of a tyre");
      return;
    }
    add(20.0 * (tyres - bad) / tyres, (tyres - bad) + " of " + tyres + " names may be tyres");
    add(-60.0 * bad / tyres, bad + " names are measures, sizes or numbers");
  }

  private void cells() {
    int numbers = 0;
    int texts = 0;
    for (int i = 0; i < kinds.size(); i++) {
      for (int c = 0; c < roles.size() && kinds.get(i) == RowKind.TYRE; c++) {
        if (isFigures(roles.get(c))) {
          CellSort sort = block.sort(band.body() + i, c);
          numbers += sort == CellSort.NUMBER || sort == CellSort.MISSING ? 1 : 0;
          texts += sort == CellSort.TEXT ? 1 : 0;
        }
      }
    }
    int all = numbers + texts;
    if (all > 0) {
      add(25.0 * numbers / all, numbers + " of " + all + " cells in those columns are figures");
      add(-40.0 * texts / all, texts + " of them are texts");
    }
  }

  /** Rows of several texts above the header that the reading does not use. */
  private void above() {
    int top = band.rows().isEmpty() ? band.body() : band.rows().get(0);
    int left = 0;
    for (int r = 0; r < top; r++) {
      left += block.filled(r) > 1 && r != band.weight() && r != band.unit() ? 1 : 0;
    }
    add(-6.0 * left, left + " rows above the header are left");
  }

  /** Why the reading must not be taken without somebody looking at it; null when nothing is. */
  String doubt() {
    Map<String, Integer> rows = new HashMap<>();
    int tyres = 0;
    boolean sized =
        roles.stream()
            .anyMatch(role -> role instanceof ColumnRole.Size || role instanceof ColumnRole.State);
    for (int i = 0; i < kinds.size(); i++) {
      if (kinds.get(i) == RowKind.TYRE) {
        tyres++;
        StringBuilder name = new StringBuilder();
        for (int c = 0; c < roles.size(); c++) {
          if (NameColumns.isName(roles.get(c))) {
            name.append(block.text(band.body() + i, c)).append('\n');
          }
        }
        rows.merge(name.toString(), 1, Integer::sum);
      }
    }
    int repeated = tyres - rows.size();
    return !sized && repeated > 2 && 3 * repeated > tyres
        ? "most tyres stand in several rows, and nothing says what sets the rows apart"
        : null;
  }
}
