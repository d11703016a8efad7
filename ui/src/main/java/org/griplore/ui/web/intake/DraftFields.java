package org.griplore.ui.web.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.ingest.Preview;
import org.griplore.ingest.ReadOptions;
import org.griplore.ingest.recognise.ColumnMap;
import org.griplore.ingest.recognise.ColumnMeaning;
import org.griplore.ingest.recognise.ColumnRole;
import org.griplore.ingest.recognise.DateReader;
import org.griplore.ingest.recognise.DecimalMark;
import org.griplore.store.tyre.TyreSize;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.Dimension;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.SeasonClass;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.Unit;
import org.griplore.store.vocabulary.UnitWords;
import org.griplore.ui.web.intake.DraftView.Field;
import org.griplore.ui.web.page.Form;

/** The fields of a draft's page: how they are shown, and what they say when they are sent. */
public final class DraftFields {
  private static final List<Form.Choice> SEASONS =
      Arrays.stream(SeasonClass.values()).map(s -> new Form.Choice(s.key(), s.key())).toList();
  private static final List<Form.Choice> KINDS =
      List.of(
          new Form.Choice(SourceKind.OWN.key(), "my own test"),
          new Form.Choice(SourceKind.INDEPENDENT.key(), "published by others"),
          new Form.Choice(SourceKind.MAKER.key(), "supplied by a maker"));
  private static final List<Form.Choice> MARKS =
      List.of(new Form.Choice("comma", "comma: 31,2"), new Form.Choice("point", "point: 31.2"));
  private static final List<Form.Choice> DATES =
      List.of(
          new Form.Choice("day-first", "day first: 14/6/2021"),
          new Form.Choice("month-first", "month first: 6/14/2021"));

  private final Map<String, String> typed;
  private final Map<String, String> problems = new HashMap<>();

  private DraftFields(Map<String, String> typed) {
    this.typed = typed;
  }

  static List<Field> details(DraftEntries said, Details told) {
    List<Field> fields = new ArrayList<>();
    field(fields, said, "title", "Title", "", told.title(), List.of());
    field(
        fields,
        said,
        "source_kind",
        "Whose test",
        "",
        told.kind() == null ? null : told.kind().key(),
        KINDS);
    field(fields, said, "source", "Published by", "", told.publication(), List.of());
    field(
        fields,
        said,
        "date",
        "Date",
        "like 14.06.2021 or June 2021",
        told.date() == null ? null : told.date().text(),
        List.of());
    field(fields, said, "size", "Size", "like 205/55 R16 91V", told.size(), List.of());
    field(
        fields,
        said,
        "season",
        "Season",
        "",
        told.season() == null ? null : told.season().key(),
        SEASONS);
    field(fields, said, "vehicle", "Vehicle", "with its mass in kg", told.vehicle(), List.of());
    field(fields, said, "venue", "Place", "", told.venue(), List.of());
    field(
        fields,
        said,
        "test",
        "Test key",
        "to add to a test that is there already",
        null,
        List.of());
    return fields;
  }

  private static void field(
      List<Field> fields,
      DraftEntries said,
      String name,
      String label,
      String hint,
      String told,
      List<Form.Choice> choices) {
    String given = said.options().details().getOrDefault(name, "");
    fields.add(
        new Field(
            name,
            label,
            hint,
            said.field(name, given),
            told == null || !given.isEmpty() ? "" : told,
            choices,
            said.problems().get(name)));
  }

  static List<Field> table(DraftEntries said) {
    ColumnMap map = said.map();
    String row = map.headerRow() == null ? "" : String.valueOf(map.headerRow());
    String mark =
        map.decimal() == null ? "" : map.decimal() == DecimalMark.COMMA ? "comma" : "point";
    String dates = map.monthFirst() == null ? "" : map.monthFirst() ? "month-first" : "day-first";
    return List.of(
        said(said, "headerRow", "Row that heads the columns", "counted from 1", row, List.of()),
        said(said, "decimal", "Decimal mark", "", mark, MARKS),
        said(said, "dates", "Dates like 6/7/2021", "", dates, DATES));
  }

  private static Field said(
      DraftEntries said,
      String name,
      String label,
      String hint,
      String taken,
      List<Form.Choice> choices) {
    return new Field(
        name, label, hint, said.field(name, taken), "", choices, said.problems().get(name));
  }

  /**
   * Reads a form that was sent.
   *
   * @param preview the draft as its columns were shown; null when none were
   */
  static DraftEntries read(
      Map<String, String> typed, Preview preview, DisciplineCatalogue catalogue) {
    DraftFields fields = new DraftFields(typed);
    Map<String, String> details = new HashMap<>();
    for (Field field : details(DraftEntries.of(ReadOptions.NONE), Details.NONE)) {
      String value = fields.text(field.name());
      if (!value.isEmpty()) {
        details.put(field.name(), value);
        fields.check(field, value);
      }
    }
    ColumnMap map =
        new ColumnMap(
            fields.headerRow(),
            fields.mark(),
            fields.monthFirst(),
            preview == null ? List.of() : fields.rules(preview, catalogue));
    return new DraftEntries(
        new ReadOptions(details, true, map),
        fields.problems.isEmpty() ? Map.of() : typed,
        fields.problems);
  }

  private String text(String name) {
    return typed.getOrDefault(name, "").strip();
  }

  private void check(Field field, String value) {
    boolean wrong =
        switch (field.name()) {
          case "date" -> DateReader.read(value).isEmpty();
          case "size" -> TyreSize.find(value).isEmpty();
          case "season", "source_kind" ->
              field.choices().stream().noneMatch(choice -> choice.value().equals(value));
          default -> value.length() > 400;
        };
    if (wrong) {
      String expected =
          field.hint().isEmpty() ? "a shorter text, or a choice of the list" : field.hint();
      problems.put(field.name(), "“" + value + "” is not understood; expected " + expected + ".");
    }
  }

  private Integer headerRow() {
    String row = text("headerRow");
    if (row.isEmpty()) {
      return null;
    }
    if (!row.matches("[1-9]\\d{0,5}")) {
      problems.put("headerRow", "“" + row + "” is no row; expected a number from 1.");
      return null;
    }
    return Integer.valueOf(row);
  }

  private DecimalMark mark() {
    return switch (text("decimal")) {
      case "comma" -> DecimalMark.COMMA;
      case "point" -> DecimalMark.POINT;
      default -> null;
    };
  }

  private Boolean monthFirst() {
    return switch (text("dates")) {
      case "month-first" -> true;
      case "day-first" -> false;
      default -> null;
    };
  }

  private List<ColumnMap.Rule> rules(Preview preview, DisciplineCatalogue catalogue) {
    List<ColumnMap.Rule> rules = new ArrayList<>();
    for (int i = 0; i < preview.columns().size(); i++) {
      String meaning = text("meaning-" + i);
      String unit = text("unit-" + i);
      String better = text("better-" + i);
      if (!meaning.isEmpty() || !unit.isEmpty() || !better.isEmpty()) {
        Optional<ColumnRole> role = ColumnMeaning.of(meaning, catalogue);
        Optional<Unit> read = UnitWords.ofText(unit).map(UnitWords.Recognised::unit);
        String problem = problem(meaning, role, unit, read, better);
        if (problem == null) {
          Direction way =
              better.isEmpty() ? null : better.equals("low") ? Direction.LOW : Direction.HIGH;
          rules.add(
              preview.rule(preview.columns().get(i), role.orElse(null), read.orElse(null), way));
        } else {
          problems.put("column-" + i, problem);
        }
      }
    }
    return rules;
  }

  private static String problem(
      String meaning, Optional<ColumnRole> role, String unit, Optional<Unit> read, String better) {
    if (!meaning.isEmpty() && role.isEmpty()) {
      return "“" + meaning + "” is no meaning of a column.";
    }
    if (!unit.isEmpty() && read.isEmpty()) {
      return "“" + unit + "” is no unit; expected one like m, ft, km/h or % of best.";
    }
    boolean values = role.isEmpty() || role.get() instanceof ColumnRole.Value;
    if (!unit.isEmpty() && !values) {
      return "A unit goes with values of a discipline only.";
    }
    if (!unit.isEmpty()
        && role.isPresent()
        && role.get() instanceof ColumnRole.Value value
        && !value.discipline().accepts(read.get())) {
      return "“%s” is no unit of %s; expected one like %s."
          .formatted(unit, value.discipline().key(), value.discipline().unit().symbol());
    }
    boolean perCent = read.isPresent() && read.get().dimension() == Dimension.RELATIVE;
    return better.isEmpty() || perCent
        ? null
        : "Which way is better can be said of per cents only: fill in % of best or % of reference.";
  }
}
