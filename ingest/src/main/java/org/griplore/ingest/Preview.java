package org.griplore.ingest;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.griplore.ingest.forms.UnderstoodColumn;
import org.griplore.ingest.recognise.ColumnMap;
import org.griplore.ingest.recognise.ColumnMeaning;
import org.griplore.ingest.recognise.ColumnRole;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.DraftTable;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.TestReport;
import org.griplore.store.vocabulary.Unit;

/**
 * What a source would tell the archive; nothing has been written.
 *
 * @param form what it was read as
 * @param columns its tables' columns as they were understood, in the source's order; none for notes
 * @param drafts tables that cannot be decided on
 * @param complete whether all of it is here; of a long source only the beginning is kept
 */
public record Preview(
    String form,
    List<UnderstoodColumn> columns,
    List<TestReport> reports,
    List<LineageRow> lineage,
    List<Finding> findings,
    List<DraftTable> drafts,
    boolean complete) {
  /** So many reports, lineage rows and findings at most are kept of each. */
  public static final int KEPT = 2000;

  /** A map that says what was understood: a beginning for one that says otherwise. */
  public ColumnMap map(DisciplineCatalogue catalogue) {
    Set<ColumnMap.Rule> rules = new LinkedHashSet<>();
    for (UnderstoodColumn column : columns) {
      boolean places = column.unit().equals("places");
      ColumnRole role =
          ColumnMeaning.of((places ? "place " : "") + column.meaning(), catalogue)
              .orElseGet(() -> new ColumnRole.Ignored(""));
      Unit unit = places ? null : Unit.ofSymbol(column.unit()).orElse(null);
      rules.add(rule(column, role, unit == Unit.NUMBER ? null : unit, null));
    }
    return new ColumnMap(null, null, null, List.copyOf(rules));
  }

  /** What is said of one of the columns: by its header where no other column has the same. */
  public ColumnMap.Rule rule(
      UnderstoodColumn column, ColumnRole role, Unit unit, Direction better) {
    boolean headed =
        !column.header().isEmpty()
            && columns.stream()
                .filter(other -> other.header().equals(column.header()))
                .allMatch(other -> other.number() == column.number());
    return new ColumnMap.Rule(
        headed ? null : (Integer) column.number(),
        headed ? column.header() : null,
        role,
        unit,
        better);
  }
}
