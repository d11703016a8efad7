package org.griplore.ingest.tables;

import java.util.ArrayList;
import java.util.List;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.recognise.ColumnRole;
import org.griplore.ingest.recognise.FoundThing;
import org.griplore.ingest.recognise.TableArea;

/**
 * One way to read a region: a hypothesis with what speaks for and against it.
 *
 * @param turned whether tyres stand across
 * @param area the table as it is read so, tyres down
 * @param roles what each column holds
 * @param kinds what each row of the area is
 * @param evidence what speaks for and against it
 * @param findings what was assumed or not understood while it was read so
 * @param doubt why it must not be taken without somebody looking at it, in a sentence; null when
 *     nothing speaks against that
 */
public record TableReading(
    boolean turned,
    TableArea area,
    List<ColumnRole> roles,
    List<RowKind> kinds,
    List<ReadingReason> evidence,
    List<FoundThing> findings,
    String doubt) {
  /** Keeps the lists from changing. */
  public TableReading {
    roles = List.copyOf(roles);
    kinds = List.copyOf(kinds);
    evidence = List.copyOf(evidence);
    findings = List.copyOf(findings);
  }

  /** The sum of the evidence, about 100 for a table of which everything is understood. */
  public double score() {
    return evidence.stream().mapToDouble(ReadingReason::points).sum();
  }

  /** The same with more evidence. */
  TableReading with(ReadingReason more) {
    List<ReadingReason> all = new ArrayList<>(evidence);
    all.add(more);
    return new TableReading(turned, area, roles, kinds, all, findings, doubt);
  }

  /** The same, which somebody has to look at for a reason. */
  TableReading doubted(String why) {
    return new TableReading(turned, area, roles, kinds, evidence, findings, why);
  }

  /** Which rows are tyres'. */
  public boolean[] tyres() {
    boolean[] tyres = new boolean[kinds.size()];
    for (int i = 0; i < tyres.length; i++) {
      tyres[i] = kinds.get(i) == RowKind.TYRE;
    }
    return tyres;
  }

  /** The same with more lines below the table. */
  TableReading followedBy(List<List<GridCell>> more) {
    List<List<GridCell>> after = new ArrayList<>(area.after());
    after.addAll(more);
    TableArea longer = new TableArea(area.heads(), area.rows(), area.before(), after);
    return new TableReading(turned, longer, roles, kinds, evidence, findings, doubt);
  }

  /** How it reads the table, in a few words. */
  public String words() {
    long tyres = kinds.stream().filter(kind -> kind == RowKind.TYRE).count();
    String columns =
        roles.stream()
            .filter(
                role ->
                    !(role instanceof ColumnRole.Ignored) && !(role instanceof ColumnRole.Unknown))
            .map(ColumnRole::words)
            .distinct()
            .collect(java.util.stream.Collectors.joining(", "));
    return tyres + (turned ? " tyres across; " : " tyres down; ") + columns;
  }
}
