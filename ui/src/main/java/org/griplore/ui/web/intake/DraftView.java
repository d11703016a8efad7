package org.griplore.ui.web.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.ingest.Preview;
import org.griplore.ingest.forms.UnderstoodColumn;
import org.griplore.ingest.recognise.ColumnMap;
import org.griplore.ingest.recognise.ColumnMeaning;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Entry;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.TestReport;
import org.griplore.ui.render.Shown;
import org.griplore.ui.web.page.Form;

/**
 * How a draft is understood, with what can be said otherwise.
 *
 * @param id the draft's
 * @param token what its forms must hold
 * @param refusal why nothing in it can be taken; null when something can
 * @param columns its columns; none where they are known by their form
 * @param details what can be said of the test
 * @param table what can be said of the table as a whole
 * @param tests what would be added
 * @param findings what was assumed or not understood
 * @param complete whether all of it is shown
 */
public record DraftView(
    String id,
    String token,
    String name,
    String form,
    String refusal,
    List<Column> columns,
    List<Field> details,
    List<Field> table,
    List<Told> tests,
    List<Finding> findings,
    boolean complete) {
  /** No meaning: what one looks through before adding. */
  private static final int MOST_TYRES = 60;

  /**
   * A column.
   *
   * @param meaning what was said that it holds; empty when nothing was
   * @param unit what was said of its unit; empty when nothing was
   * @param better {@code high}, {@code low} or empty
   * @param relative whether its figures are per cents, which may run either way
   * @param problem what is wrong with what was said; null when nothing is
   */
  public record Column(
      int index,
      UnderstoodColumn read,
      String meaning,
      String unit,
      String better,
      boolean relative,
      String problem) {}

  /**
   * A detail to fill in.
   *
   * @param given what was filled in
   * @param told what the source says; empty when it says nothing
   * @param choices what it can be; empty when it is free
   * @param problem what is wrong with it; null when nothing is
   */
  public record Field(
      String name,
      String label,
      String hint,
      String given,
      String told,
      List<Form.Choice> choices,
      String problem) {}

  /** A test as it would be added: a row a tyre. */
  public record Told(String key, List<String> heads, List<Row> rows, int more, int notes) {}

  /** A tyre's figures, in the order of the heads. */
  public record Row(String model, List<String> figures) {}

  public static DraftView of(
      Draft draft, String token, Preview preview, String refusal, DraftEntries said) {
    List<Column> columns = new ArrayList<>();
    if (preview != null && isTable(preview)) {
      for (int i = 0; i < preview.columns().size(); i++) {
        columns.add(column(i, preview, said));
      }
    }
    Details told =
        preview == null || preview.reports().isEmpty()
            ? Details.NONE
            : preview.reports().get(0).details();
    return new DraftView(
        draft.id(),
        token,
        draft.name(),
        preview == null ? "" : preview.form(),
        refusal,
        columns,
        DraftFields.details(said, told),
        DraftFields.table(said),
        preview == null
            ? List.of()
            : preview.reports().stream().limit(20).map(DraftView::told).toList(),
        preview == null ? List.of() : preview.findings(),
        preview == null || preview.complete() && preview.reports().size() <= 20);
  }

  /** Our own forms and notes have no columns to say anything of. */
  static boolean isTable(Preview preview) {
    return !List.of("long table", "lineage", "run log", "notes").contains(preview.form());
  }

  private static Column column(int index, Preview preview, DraftEntries said) {
    UnderstoodColumn read = preview.columns().get(index);
    ColumnMap.Rule target = preview.rule(read, null, null, null);
    Optional<ColumnMap.Rule> rule =
        said.map().columns().stream().filter(other -> isOf(target, other)).findFirst();
    return new Column(
        index,
        read,
        said.column(
            index, "meaning", rule.map(ColumnMap.Rule::role).map(ColumnMeaning::word).orElse("")),
        said.column(
            index, "unit", rule.map(ColumnMap.Rule::unit).map(unit -> unit.symbol()).orElse("")),
        said.column(
            index,
            "better",
            rule.map(ColumnMap.Rule::better)
                .map(way -> way == Direction.HIGH ? "high" : "low")
                .orElse("")),
        read.unit().startsWith("%"),
        said.problems().get("column-" + index));
  }

  private static boolean isOf(ColumnMap.Rule target, ColumnMap.Rule rule) {
    return java.util.Objects.equals(target.column(), rule.column())
        && java.util.Objects.equals(target.header(), rule.header());
  }

  private static Told told(TestReport report) {
    Map<String, Integer> heads = new LinkedHashMap<>();
    for (Entry entry : report.entries()) {
      for (Result result : entry.results()) {
        heads.putIfAbsent(head(result), heads.size());
      }
    }
    List<Row> rows = new ArrayList<>();
    for (Entry entry : report.entries().stream().limit(MOST_TYRES).toList()) {
      String[] figures = new String[heads.size()];
      java.util.Arrays.fill(figures, Shown.MISSING);
      for (Result result : entry.results()) {
        figures[heads.get(head(result))] = figure(result);
      }
      rows.add(new Row(entry.model(), List.of(figures)));
    }
    return new Told(
        report.key(),
        List.copyOf(heads.keySet()),
        rows,
        Math.max(0, report.entries().size() - MOST_TYRES),
        report.notes().size());
  }

  private static String head(Result result) {
    String unit = result.unit() == null ? "" : result.unit().symbol();
    return unit.isEmpty() ? result.discipline() : result.discipline() + ", " + unit;
  }

  private static String figure(Result result) {
    String place = result.place() == null ? "" : "place " + result.place();
    if (result.value() == null) {
      return place;
    }
    String value = Shown.plain(Math.round(result.value() * 1e4) / 1e4);
    return place.isEmpty() ? value : value + " (" + place + ")";
  }
}
