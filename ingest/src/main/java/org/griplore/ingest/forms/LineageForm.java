package org.griplore.ingest.forms;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.names.NameReconciler;
import org.griplore.ingest.recognise.DateReader;
import org.griplore.ingest.recognise.DetailsReader;
import org.griplore.store.archive.NameTaken;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.NameKey;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.SeasonClass;
import org.griplore.store.vocabulary.TestDate;

/**
 * Our lineage table, a row a model: {@code maker, line, model, generation, launched, season,
 * segment, follows, aliases}, aliases set apart by {@code |}. A model's full name is its maker and
 * its name.
 */
public final class LineageForm {
  private final Grid grid;
  private final SourceContext context;
  private final Map<String, Integer> columns = new HashMap<>();
  private final Map<String, String> fullNames = new HashMap<>();

  private LineageForm(Grid grid, SourceContext context) {
    this.grid = grid;
    this.context = context;
    Map<String, Integer> positions =
        OwnForm.columns(grid.rows().get(0).stream().map(GridCell::text).toList());
    positions.forEach(
        (topic, position) -> columns.put(topic, grid.rows().get(0).get(position).column()));
    OwnForm.understand(grid, OwnForm.LINEAGE.words(), context);
  }

  /**
   * Reads the table.
   *
   * @throws Refusal when a model would follow itself over others
   */
  public static void read(Grid grid, SourceContext context) {
    new LineageForm(grid, context).read();
  }

  private void read() {
    List<List<GridCell>> rows = grid.rows().subList(1, grid.rows().size());
    for (List<GridCell> row : rows) {
      String name = text(row, "model");
      if (name != null) {
        String full = fullName(text(row, "maker"), name);
        fullNames.put(NameKey.of(full), full);
        fullNames.putIfAbsent(NameKey.of(name), full);
      }
    }
    Map<String, String> followed = new HashMap<>(context.names().followed());
    List<LineageRow> told = new ArrayList<>();
    for (List<GridCell> row : rows) {
      LineageRow lineage = row(row);
      if (lineage != null) {
        told.add(lineage);
        followed.remove(lineage.name());
        if (lineage.follows() != null) {
          followed.put(lineage.name(), lineage.follows());
        }
      }
    }
    told.forEach(lineage -> refuseCycle(lineage, followed));
    Map<String, List<String>> means = absorbed(told);
    told.forEach(
        lineage -> {
          context.names().learn(lineage.name(), lineage.maker(), lineage.aliases());
          context.names().confirm(lineage.name());
          List<String> names = means.getOrDefault(lineage.name(), List.of());
          names.forEach(context.names()::confirm);
          context.receiver().lineage(lineage, names);
        });
  }

  /** Names met in tests before that turn out to mean models of this table, by the model's name. */
  private Map<String, List<String>> absorbed(List<LineageRow> told) {
    NameReconciler table = new NameReconciler(List.of());
    Map<String, LineageRow> rows = new HashMap<>();
    for (LineageRow lineage : told) {
      table.learn(lineage.name(), lineage.maker(), lineage.aliases());
      rows.put(lineage.name(), lineage);
    }
    Map<String, List<String>> means = new HashMap<>();
    for (String name : new TreeSet<>(context.names().provisional())) {
      NameReconciler.Settled settled = table.look(name);
      boolean other = !rows.containsKey(name) && rows.containsKey(settled.model());
      if (other && settled instanceof NameReconciler.Settled.Assumed assumed) {
        assume(name, assumed, rows.get(settled.model()));
      } else if (other && !(settled instanceof NameReconciler.Settled.New)) {
        means.computeIfAbsent(settled.model(), model -> new ArrayList<>()).add(name);
      }
    }
    return means;
  }

  /** A name that looks like a misspelling of a model's, unless both stood in one test. */
  private void assume(String name, NameReconciler.Settled.Assumed assumed, LineageRow row) {
    String test = context.names().testOfBoth(name, assumed.model());
    if (test != null) {
      context
          .receiver()
          .finding(SettledName.parted(name, assumed.model(), assumed.model(), test, row.cell()));
      return;
    }
    context.receiver().name(name, assumed.model(), NameTaken.ASSUMED);
    if (!context.names().isDecided(name)) {
      assumed(name, assumed, row);
    }
  }

  private void assumed(String name, NameReconciler.Settled.Assumed assumed, LineageRow row) {
    context
        .receiver()
        .finding(
            new Finding(
                Finding.Kind.ASSUMED,
                row.cell(),
                name,
                "a name met before, taken as "
                    + assumed.model()
                    + " ("
                    + assumed.by().reason()
                    + ")",
                "decide it once: `griplore settle \""
                    + name
                    + "\" --same-as \""
                    + assumed.model()
                    + "\"`, or `--new` for a model of its own; or give it as an alias in the lineage"
                    + " table"));
  }

  private LineageRow row(List<GridCell> row) {
    GridCell cell = cell(row, "model");
    if (cell == null) {
      context
          .receiver()
          .finding(
              new Finding(
                  Finding.Kind.NOT_READ,
                  at(row.get(0)),
                  row.get(0).text(),
                  "a model's name in its row",
                  "fill the column `model`"));
      return null;
    }
    String maker = text(row, "maker");
    String follows = text(row, "follows");
    String aliases = text(row, "aliases");
    List<String> spellings = new ArrayList<>();
    if (aliases != null) {
      for (String alias : aliases.split("\\|")) {
        if (!alias.isBlank()) {
          spellings.add(alias.strip());
        }
      }
    }
    return new LineageRow(
        fullName(maker, cell.text()),
        maker,
        text(row, "line"),
        text(row, "generation"),
        launched(row),
        season(row),
        text(row, "segment"),
        follows == null ? null : followed(maker, follows),
        spellings,
        at(cell));
  }

  private TestDate launched(List<GridCell> row) {
    GridCell cell = cell(row, "launched");
    if (cell == null) {
      return null;
    }
    Optional<DateReader.Reading> date = DateReader.read(cell.text().replaceAll("\\.0$", ""));
    if (date.isEmpty()) {
      notRead(cell, "a year or a date");
    }
    return date.map(DateReader.Reading::date).orElse(null);
  }

  private SeasonClass season(List<GridCell> row) {
    GridCell cell = cell(row, "season");
    if (cell == null) {
      return null;
    }
    SeasonClass season = DetailsReader.seasonOf(cell.text());
    if (season == null) {
      notRead(cell, "summer, winter or all-season");
    }
    return season;
  }

  private void notRead(GridCell cell, String expected) {
    context
        .receiver()
        .finding(
            new Finding(
                Finding.Kind.NOT_READ,
                at(cell),
                cell.text(),
                expected,
                "correct it in the source and add it again"));
  }

  private static String fullName(String maker, String model) {
    boolean whole = maker == null || (NameKey.of(model) + " ").startsWith(NameKey.of(maker) + " ");
    return whole ? model : maker + " " + model;
  }

  private String followed(String maker, String name) {
    String full = fullNames.get(NameKey.of(fullName(maker, name)));
    if (full == null) {
      full = fullNames.get(NameKey.of(name));
    }
    return full == null ? context.names().known(name).orElse(fullName(maker, name)) : full;
  }

  private void refuseCycle(LineageRow start, Map<String, String> followed) {
    Set<String> seen = new LinkedHashSet<>();
    String model = start.name();
    while (model != null) {
      if (!seen.add(model)) {
        throw new Refusal(
            "%s, row %d: %s would follow itself (%s)."
                .formatted(
                    context.file(),
                    start.cell().row(),
                    start.name(),
                    String.join(" follows ", seen) + " follows " + model),
            new Problem(
                context.file() + ", " + start.cell().place(),
                start.name(),
                "a predecessor that does not lead back to the model"));
      }
      model = followed.get(model);
    }
  }

  private GridCell cell(List<GridCell> row, String topic) {
    Integer column = columns.get(topic);
    return column == null
        ? null
        : row.stream().filter(cell -> cell.column() == column).findFirst().orElse(null);
  }

  private String text(List<GridCell> row, String topic) {
    GridCell cell = cell(row, topic);
    return cell == null ? null : cell.text().strip();
  }

  private Cell at(GridCell cell) {
    return new Cell(grid.name(), cell.row(), cell.column(), cell.text());
  }
}
