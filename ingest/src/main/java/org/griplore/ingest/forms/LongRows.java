package org.griplore.ingest.forms;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.ingest.grid.RowSource;
import org.griplore.ingest.recognise.DecimalMark;
import org.griplore.ingest.recognise.NumberReader;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Finding;

/** The row of a long table that is read just now, by topic, and the findings made in it. */
final class LongRows {
  /** Findings of one sort beyond this many are counted only. */
  private static final int LISTED = 1000;

  private static final String CORRECT = "correct it in the source and add it again";
  private static final NumberReader NUMBERS = new NumberReader(DecimalMark.OPEN);

  private final RowSource records;
  private final String sheet;
  private final SourceContext context;
  private final Map<String, Integer> columns;
  private final Map<String, Integer> findingsByWords = new HashMap<>();

  /** Stands on the header. */
  LongRows(RowSource records, String sheet, SourceContext context) {
    this.records = records;
    this.sheet = sheet;
    this.context = context;
    List<String> header = new ArrayList<>();
    for (int i = 0; i < records.count(); i++) {
      header.add(records.field(i));
    }
    this.columns = OwnForm.columns(header);
    for (int i = 0; i < header.size(); i++) {
      if (!header.get(i).isBlank() && !columns.containsValue(i)) {
        finding(Finding.Kind.NOT_READ, i, header.get(i), "a column of the long table");
      }
    }
    OwnForm.understood(header)
        .forEach(
            (position, topic) ->
                context
                    .receiver()
                    .column(
                        new UnderstoodColumn(
                            position + 1,
                            header.get(position),
                            new Cell(
                                sheet,
                                records.rowOf(position),
                                records.columnOf(position),
                                header.get(position)),
                            topic,
                            "",
                            "",
                            List.of())));
  }

  boolean has(String topic) {
    return columns.containsKey(topic);
  }

  Integer column(String topic) {
    return columns.get(topic);
  }

  String text(String topic) {
    Integer column = columns.get(topic);
    return column == null ? "" : records.field(column);
  }

  /** The topic's cell; null where nothing stands. */
  Cell cell(String topic) {
    Integer column = columns.get(topic);
    return column == null || records.field(column).isEmpty()
        ? null
        : new Cell(sheet, records.rowOf(column), records.columnOf(column), records.field(column));
  }

  /** A hash of the texts of some columns. */
  int hash(int[] of) {
    int hash = 0;
    for (int column : of) {
      hash = 31 * hash + records.field(column).hashCode();
    }
    return hash;
  }

  void finding(Finding.Kind kind, String topic, String found, String expected) {
    finding(kind, columns.get(topic), found, expected);
  }

  void finding(Finding.Kind kind, Integer column, String found, String expected) {
    finding(kind, column, found, expected, CORRECT);
  }

  void finding(Finding.Kind kind, Integer column, String found, String expected, String remedy) {
    if (findingsByWords.merge(expected, 1, Integer::sum) <= LISTED) {
      Cell cell =
          column == null
              ? null
              : new Cell(sheet, records.rowOf(column), records.columnOf(column), found);
      context.receiver().finding(new Finding(kind, cell, found, expected, remedy));
    }
  }

  /** Tells how many findings were counted only. */
  void tellRest() {
    findingsByWords.forEach(
        (words, count) -> {
          if (count > LISTED) {
            context
                .receiver()
                .finding(
                    new Finding(
                        Finding.Kind.NOT_READ,
                        null,
                        (count - LISTED) + " more like it",
                        words,
                        "correct them in the source and add it again"));
          }
        });
  }

  /** Plain numbers are the most; everything else goes the long way. */
  static NumberReader.Reading number(String text) {
    boolean plain = text.length() <= 17;
    boolean point = false;
    int digitsBehind = 0;
    for (int i = 0; i < text.length() && plain; i++) {
      char c = text.charAt(i);
      if (c == '.' && !point && i > 0) {
        point = true;
      } else if (c < '0' || c > '9') {
        plain = false;
      } else if (point) {
        digitsBehind++;
      }
    }
    boolean clear = plain && !text.isEmpty() && (!point || digitsBehind != 3);
    return clear
        ? new NumberReader.Reading.Number(Double.parseDouble(text), Optional.empty(), "", false)
        : machine(text);
  }

  /** In our own form a point is always the decimal mark; other marks are read as people write. */
  private static NumberReader.Reading machine(String text) {
    if (text.strip().matches("[-+]?\\d+\\.\\d+([eE][-+]?\\d+)?")) {
      return new NumberReader.Reading.Number(
          Double.parseDouble(text.strip()), Optional.empty(), "", false);
    }
    return NUMBERS.read(text);
  }

  /** A whole number from 1; null when nothing stands there or something else does. */
  Integer whole(String topic) {
    String text = text(topic).strip();
    if (text.isEmpty()) {
      return null;
    }
    int number = plainWhole(text);
    if (number > 0) {
      return number;
    }
    if (!(NUMBERS.read(text) instanceof NumberReader.Reading.Missing)) {
      finding(Finding.Kind.NOT_READ, topic, text, "a whole number from 1");
    }
    return null;
  }

  /** The number that up to six digits make; 0 when the text is anything else. */
  private static int plainWhole(String text) {
    int number = 0;
    for (int i = 0; i < text.length(); i++) {
      int digit = text.charAt(i) - '0';
      if (digit < 0 || digit > 9 || i == 6) {
        return 0;
      }
      number = 10 * number + digit;
    }
    return number;
  }
}
