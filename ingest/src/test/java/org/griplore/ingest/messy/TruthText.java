package org.griplore.ingest.messy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.griplore.store.vocabulary.Unit;

/**
 * Reads a truth from its text.
 *
 * <pre>
 * about: run columns with their mean
 * decision: taken
 * test: date=2021-06-14; size=205/55 R16 91V; season=summer
 * | tyre              | size            | wet-braking [m] 80-20 worn | overall # |
 * | Velmora Aurelis 5 | 205/55 R16 91V  | 28.4                       | 1         |
 * find: 37,7
 * allow: overall
 * </pre>
 *
 * A column is a discipline with its unit in brackets (the discipline's own sign is never assumed),
 * then perhaps a window, a state and a kind; {@code #} makes it places. Other columns hold details
 * of the row's own. In a cell {@code or} sets ways to say it apart, a unit in brackets is this
 * cell's own, brackets around a figure mean that it is read or told in a finding, {@code ?} before
 * it that it may stay unread, and {@code -} means nothing.
 */
final class TruthText {
  private static final Pattern COLUMN =
      Pattern.compile("([a-z-]+)(?: \\[(.*?)])?(?: (#))?((?: \\S+)*)");
  private static final Pattern FIGURE = Pattern.compile("(-?[0-9.]+)(?: \\[(.*?)])?");
  private static final Set<String> OWN =
      Set.of("size", "vehicle", "season", "date", "state", "kind", "venue", "surface", "air");

  private String about = "";
  private Truth.Decision decision = Truth.Decision.TAKEN;
  private final List<Truth.Test> tests = new ArrayList<>();
  private final List<String> finds = new ArrayList<>();
  private final Set<String> allowed = new LinkedHashSet<>();
  private int count;
  private List<String> columns;

  private TruthText() {}

  static Truth read(String text) {
    TruthText reader = new TruthText();
    for (String line : text.split("\\R")) {
      try {
        reader.line(line.strip());
      } catch (IllegalArgumentException e) {
        throw new IllegalArgumentException("in the line \"" + line + "\": " + e.getMessage(), e);
      }
    }
    return new Truth(
        reader.about, reader.decision, reader.tests, reader.finds, reader.allowed, reader.count);
  }

  private void line(String line) {
    if (line.isEmpty()) {
      return;
    }
    if (line.startsWith("|")) {
      row(Arrays.stream(line.substring(1).split("\\|")).map(String::strip).toList());
      return;
    }
    String[] parts = line.split(":", 2);
    String rest = parts.length == 2 ? parts[1].strip() : "";
    switch (parts[0]) {
      case "about" -> about = rest;
      case "decision" -> decision = Truth.Decision.valueOf(rest.toUpperCase(Locale.ROOT));
      case "test" -> {
        tests.add(new Truth.Test(details(rest), new ArrayList<>()));
        columns = null;
      }
      case "tests" -> count = Integer.parseInt(rest);
      case "find" -> finds.add(rest);
      case "allow" -> allowed.add(rest);
      default -> throw new IllegalArgumentException("no such part of a truth: " + parts[0]);
    }
  }

  private static Map<String, String> details(String text) {
    Map<String, String> details = new LinkedHashMap<>();
    for (String part : text.split(";")) {
      if (!part.isBlank()) {
        String[] pair = part.split("=", 2);
        details.put(pair[0].strip(), pair[1].strip());
      }
    }
    return details;
  }

  private void row(List<String> cells) {
    if (cells.get(0).equals("tyre")) {
      columns = cells;
      return;
    }
    Map<String, String> own = new LinkedHashMap<>();
    Map<String, String> marks = new LinkedHashMap<>();
    for (int c = 1; c < cells.size(); c++) {
      String column = columns.get(c);
      if (OWN.contains(column) && !cells.get(c).equals("-")) {
        (column.equals("state") || column.equals("kind") ? marks : own).put(column, cells.get(c));
      }
    }
    List<String> names = List.of(cells.get(0).split(" or "));
    for (int c = 1; c < cells.size(); c++) {
      if (!OWN.contains(columns.get(c)) && !cells.get(c).equals("-")) {
        tests
            .get(tests.size() - 1)
            .figures()
            .add(stated(names, columns.get(c), cells.get(c), marks, own));
      }
    }
  }

  private static Truth.Stated stated(
      List<String> names,
      String column,
      String cell,
      Map<String, String> rowMarks,
      Map<String, String> own) {
    Matcher head = COLUMN.matcher(column);
    if (!head.matches()) {
      throw new IllegalArgumentException("no column of a truth: " + column);
    }
    Unit unit = head.group(2) == null ? null : unit(head.group(2));
    boolean place = head.group(3) != null;
    Map<String, String> marks = new LinkedHashMap<>(rowMarks);
    for (String word : head.group(4).strip().split(" ")) {
      if (word.matches("\\d+-\\d+")) {
        marks.put("window", word);
      } else if (word.equals("new") || word.equals("worn")) {
        marks.put("state", word);
      } else if (word.equals("declared") || word.equals("claimed")) {
        marks.put("kind", word);
      } else if (!word.isEmpty()) {
        throw new IllegalArgumentException("no window, state or kind: " + word);
      }
    }
    Truth.Need need =
        cell.startsWith("(")
            ? Truth.Need.READ_OR_TOLD
            : cell.startsWith("?") ? Truth.Need.FREE : Truth.Need.READ;
    String figures =
        switch (need) {
          case READ -> cell;
          case READ_OR_TOLD -> cell.substring(1, cell.length() - 1);
          case FREE -> cell.substring(1);
        };
    List<Truth.Figure> ways = new ArrayList<>();
    for (String way : figures.split(" or ")) {
      Matcher figure = FIGURE.matcher(way.strip());
      if (!figure.matches()) {
        throw new IllegalArgumentException("no figure: " + way);
      }
      Unit own1 = figure.group(2) == null ? unit : unit(figure.group(2));
      if (own1 == null && !place) {
        throw new IllegalArgumentException("a value without a unit: " + way);
      }
      ways.add(new Truth.Figure(Double.parseDouble(figure.group(1)), own1));
    }
    return new Truth.Stated(names, head.group(1), place, ways, marks, own, need);
  }

  private static Unit unit(String symbol) {
    return Unit.ofSymbol(symbol)
        .orElseThrow(() -> new IllegalArgumentException("no unit: " + symbol));
  }
}
