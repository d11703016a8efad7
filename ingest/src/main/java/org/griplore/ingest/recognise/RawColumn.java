package org.griplore.ingest.recognise;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.griplore.ingest.grid.GridCell;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.Unit;
import org.griplore.store.vocabulary.UnitWords;

/**
 * A column's numbers and the units that stand in its cells, before the column's own unit is
 * decided. Texts that are no numbers have become findings.
 */
final class RawColumn {
  static final String CORRECT = "correct it in the source and add it again";

  final Double[] values;
  final Unit[] units;
  final String[] rules;
  final GridCell[] cells;

  /** What stands in brackets behind each figure; null where nothing does. */
  final String[] asides;

  final List<FoundThing> findings = new ArrayList<>();
  private final DecimalMark said;
  private final DecimalMark tableMark;
  private final PlausibleRange range;

  /**
   * Reads a column.
   *
   * @param said the decimal mark that the user says; null when not said
   * @param tableMark the table's decimal mark, for columns that do not tell
   * @param range what figures of the discipline look like
   * @param tyres which rows are read
   */
  RawColumn(
      TableArea area,
      int column,
      DecimalMark said,
      DecimalMark tableMark,
      PlausibleRange range,
      boolean[] tyres) {
    int rows = area.rows().size();
    this.values = new Double[rows];
    this.units = new Unit[rows];
    this.rules = new String[rows];
    this.cells = new GridCell[rows];
    this.asides = new String[rows];
    this.said = said;
    this.tableMark = tableMark;
    this.range = range;
    for (int i = 0; i < rows; i++) {
      cells[i] = tyres[i] ? area.rows().get(i).get(column) : null;
    }
    read(area.heads().get(column).cell(), said);
  }

  private void read(GridCell head, DecimalMark said) {
    DecimalMark own =
        DecimalMark.of(
            java.util.Arrays.stream(cells)
                .filter(Objects::nonNull)
                .filter(cell -> cell.number() == null)
                .map(GridCell::text));
    if (own == DecimalMark.MIXED) {
      findings.add(
          new FoundThing(
              Finding.Kind.CONFLICT,
              head,
              head == null ? "" : head.text(),
              "one decimal mark in a column; some figures have a comma and others a point, and each"
                  + " was read by its own",
              "write all figures of the column alike"));
    }
    DecimalMark mark = said != null ? said : own == DecimalMark.OPEN ? tableMark : own;
    NumberReader numbers = new NumberReader(mark);
    leaveOutInvalid();
    boolean signs = isOfSigns();
    if (isOfTendencies()) {
      tendencies(head);
      return;
    }
    for (int i = 0; i < cells.length; i++) {
      if (cells[i] != null) {
        take(
            i,
            signs
                ? new NumberReader.Reading.NotNumber("a number; signs like + and - are no figures")
                : CellNumber.read(cells[i], numbers));
      }
    }
    asides();
  }

  /** What is struck out, or called invalid in a comment, is told and not taken. */
  private void leaveOutInvalid() {
    for (int i = 0; i < cells.length; i++) {
      GridCell cell = cells[i];
      if (cell == null) {
        continue;
      }
      String comment = cell.look().comment() == null ? "" : cell.look().comment();
      boolean invalid =
          comment
              .toLowerCase(java.util.Locale.ROOT)
              .matches(
                  "(?s).*(invalid|void|ung\u00fcltig|nicht gewertet|wrong|falsch|discard|not valid|non valable|ogiltig).*");
      if (cell.look().struck() || invalid) {
        findings.add(
            new FoundThing(
                Finding.Kind.NOT_READ,
                cell,
                cell.text(),
                cell.look().struck()
                    ? "a figure that is not struck out"
                    : "a figure that no comment calls invalid: " + comment,
                CORRECT));
        cells[i] = null;
      }
    }
  }

  /** School marks with a plus or minus behind: {@code 2+}. */
  private boolean isOfTendencies() {
    int signed = 0;
    int filled = 0;
    for (GridCell cell : cells) {
      if (cell != null) {
        filled++;
        boolean mark = cell.text().strip().matches("[1-6]\\s?[-+\u2212\u2013]?");
        signed += mark && cell.text().strip().matches(".*[-+\u2212\u2013]") ? 1 : 0;
        if (!mark) {
          return false;
        }
      }
    }
    return signed > 0 && filled > 1;
  }

  /** A plus is 0.3 less and a minus 0.3 more, as schools count (common practice, no source). */
  private void tendencies(GridCell head) {
    for (int i = 0; i < cells.length; i++) {
      if (cells[i] != null) {
        String text = cells[i].text().strip();
        char sign = text.charAt(text.length() - 1);
        int tenths =
            10 * (text.charAt(0) - '0') + (sign == '+' ? -3 : Character.isDigit(sign) ? 0 : 3);
        values[i] = tenths / 10.0;
        units[i] = org.griplore.store.vocabulary.Unit.SCHOOL_MARK;
        rules[i] = Character.isDigit(sign) ? "" : "plus and minus as 0.3 of a mark";
      }
    }
    findings.add(
        new FoundThing(
            Finding.Kind.ASSUMED,
            head,
            head == null ? "" : head.text(),
            "school marks with plus and minus, taken as 0.3 of a mark; 1 is best",
            "write the marks as numbers, like 1.7"));
  }

  /** Ratings like {@code ++}, {@code o} and {@code --}: there a dash is a rating, not a gap. */
  private boolean isOfSigns() {
    int signs = 0;
    int plus = 0;
    int filled = 0;
    for (GridCell cell : cells) {
      if (cell != null && cell.number() == null) {
        filled++;
        signs +=
            cell.text().strip().matches("[-+o0\u2013\u2212/\u25cb\u25cf\u2605\u2606*]{1,5}")
                ? 1
                : 0;
        plus += cell.text().matches("\\s*[+\u2605*]{1,5}[-\u2606+/]*\\s*") ? 1 : 0;
      }
    }
    return plus > 0 && signs == filled;
  }

  /** What stands in brackets behind the figures is the place where it ranks them; else left out. */
  private void asides() {
    for (int i = 0; i < cells.length; i++) {
      String aside = asides[i];
      if (aside != null && !aside.startsWith("\u00b1") && !ranks()) {
        findings.add(
            new FoundThing(
                Finding.Kind.ASSUMED,
                cells[i],
                cells[i].text(),
                "a figure alone; what stands in brackets behind it was left out",
                "give what stands in brackets a column of its own"));
        asides[i] = null;
      }
    }
  }

  /** Whether all brackets are whole numbers that rank the figures one way or the other. */
  private boolean ranks() {
    int rising = 0;
    int falling = 0;
    int pairs = 0;
    for (int i = 0; i < cells.length; i++) {
      if (values[i] != null && (asides[i] == null || !asides[i].matches("\\d{1,2}\\.?"))) {
        return false;
      }
      for (int j = 0; values[i] != null && j < i; j++) {
        if (values[j] != null) {
          int places = Integer.compare(place(i), place(j));
          int figures = Double.compare(values[i], values[j]);
          pairs++;
          rising += places == figures ? 1 : 0;
          falling += places == -figures ? 1 : 0;
        }
      }
    }
    return pairs >= 1 && (rising == pairs || falling == pairs) && isRanking(placesInBrackets());
  }

  private Double[] placesInBrackets() {
    Double[] places = new Double[cells.length];
    for (int i = 0; i < places.length; i++) {
      places[i] = asides[i] == null ? null : (Double) (double) place(i);
    }
    return places;
  }

  /** The place in brackets behind a figure. */
  int place(int row) {
    return Integer.parseInt(asides[row].replace(".", ""));
  }

  private void take(int i, NumberReader.Reading reading) {
    if (reading instanceof NumberReader.Reading.Number number) {
      if (number.doubtful()) {
        inDoubt(i);
      } else {
        keep(i, number);
      }
    } else if (reading instanceof NumberReader.Reading.NotFinished) {
      findings.add(
          new FoundThing(
              Finding.Kind.NOT_READ,
              cells[i],
              cells[i].text(),
              "a number; taken as broken off, without a result",
              "nothing, if the tyre did not finish"));
    } else if (reading instanceof NumberReader.Reading.NotNumber not) {
      findings.add(
          new FoundThing(
              Finding.Kind.NOT_READ, cells[i], cells[i].text(), not.expected(), CORRECT));
    }
  }

  private void keep(int i, NumberReader.Reading.Number number) {
    values[i] = number.value();
    units[i] = number.unit().map(UnitWords.Recognised::unit).orElse(null);
    rules[i] = number.rules();
    asides[i] = number.aside().isEmpty() ? null : number.aside();
  }

  /** "43,200" with nothing to tell: what fits the discipline counts, and is a finding. */
  private void inDoubt(int i) {
    NumberReader.Reading.Number fits = null;
    int fitting = 0;
    for (DecimalMark mark : EnumSet.of(DecimalMark.POINT, DecimalMark.COMMA)) {
      if (new NumberReader(mark).read(cells[i].text()) instanceof NumberReader.Reading.Number number
          && range.holds(number.value())) {
        fits = number;
        fitting++;
      }
    }
    if (fitting == 1) {
      keep(i, fits);
      findings.add(
          new FoundThing(
              Finding.Kind.ASSUMED,
              cells[i],
              cells[i].text(),
              "taken as " + plain(fits.value()) + ", what is usual in the discipline",
              "write it without a mark for thousands, or say what the mark is in a map: `griplore add"
                  + " FILE --map MAP`"));
    } else {
      findings.add(
          new FoundThing(
              Finding.Kind.CONFLICT,
              cells[i],
              cells[i].text(),
              "a number that can be read in one way only; it was not taken",
              "write it without a mark for thousands, or say what the mark is in a map: `griplore add"
                  + " FILE --map MAP`"));
    }
  }

  /** The units that stand in cells. */
  Set<Unit> unitsInCells() {
    Set<Unit> found = EnumSet.noneOf(Unit.class);
    for (int i = 0; i < values.length; i++) {
      if (values[i] != null && units[i] != null) {
        found.add(units[i]);
      }
    }
    return found;
  }

  int count() {
    return (int) java.util.Arrays.stream(values).filter(Objects::nonNull).count();
  }

  double max() {
    return java.util.Arrays.stream(values)
        .filter(Objects::nonNull)
        .mapToDouble(Double::doubleValue)
        .max()
        .orElse(Double.NaN);
  }

  /** Whether the user says what the decimal mark is: then figures are what they are. */
  boolean isMarkSaid() {
    return said != null;
  }

  /** The middle one of the figures above zero; NaN where there are fewer than three. */
  double median() {
    double[] sorted =
        java.util.Arrays.stream(values)
            .filter(Objects::nonNull)
            .mapToDouble(Double::doubleValue)
            .filter(value -> value > 0)
            .sorted()
            .toArray();
    return sorted.length < 3 ? Double.NaN : sorted[sorted.length / 2];
  }

  double min() {
    return java.util.Arrays.stream(values)
        .filter(Objects::nonNull)
        .mapToDouble(Double::doubleValue)
        .min()
        .orElse(Double.NaN);
  }

  /** Whether the values are 1, 2, 3 ... with ties as in competitions, at least two of them. */
  boolean isRanking() {
    return isRanking(values);
  }

  private static boolean isRanking(Double[] numbers) {
    double[] sorted =
        java.util.Arrays.stream(numbers)
            .filter(Objects::nonNull)
            .mapToDouble(Double::doubleValue)
            .sorted()
            .toArray();
    if (sorted.length < 2 || sorted[sorted.length - 1] < 2) {
      return false;
    }
    int first = 0;
    for (int i = 0; i < sorted.length; i++) {
      first = i > 0 && sorted[i] == sorted[i - 1] ? first : i;
      if (sorted[i] != first + 1) {
        return false;
      }
    }
    return true;
  }

  static String plain(double number) {
    return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
  }
}
