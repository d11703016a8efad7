package org.griplore.ingest.messy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Lays a drawn test out as its look says, and says what the file then holds. */
final class DrawnLayout {
  private final DrawnTest test;
  private final DrawnLook look;
  private final Random random;
  private final DrawnHeads heads;
  private final DrawnTruth truth;
  private final DrawnScores scores;
  private final DrawnDetails details;

  DrawnLayout(DrawnTest test, DrawnLook look, Random random) {
    this.test = test;
    this.look = look;
    this.random = random;
    heads = new DrawnHeads(look, test.measures(), random);
    truth = new DrawnTruth(test);
    scores = new DrawnScores(test);
    details = new DrawnDetails(test, look, random);
  }

  /** What the file holds; known once the sheets are laid out. */
  Truth truth(String about) {
    return truth.truth(about, look, details.stated());
  }

  List<Sketch> sketches() {
    return switch (look.shape()) {
      case WIDE -> List.of(look.across() ? sketch(turned(wide()), 1) : wide());
      case RESULT_A_ROW -> List.of(sketch(results(), 1));
      case RUN_COLUMNS ->
          List.of(
              new DrawnRuns(test, look, heads, truth, random).sketch(details, names(), this::name));
      case SHEET_A_DISCIPLINE -> sheets();
    };
  }

  private Sketch sketch(List<List<String>> table, int headers) {
    return new Sketch("Sheet1", details.above(), table, headers, below());
  }

  private List<List<String>> below() {
    List<List<String>> below = new ArrayList<>(details.below());
    if (look.legend()) {
      below.add(List.of());
      below.add(List.of(look.words().say("note", random)));
    }
    if (look.footnotes()) {
      below.add(List.of("* 2"));
    }
    return below;
  }

  private Sketch wide() {
    List<List<String>> heading = heading();
    List<List<String>> body = body();
    List<List<String>> table = new ArrayList<>(heading);
    int half = body.size() / 2;
    for (int i = 0; i < body.size(); i++) {
      switch (look.breaks()) {
        case BLANK_ROW -> addIf(i == half, table, List.of());
        case SUBHEADS -> addIf(i == 0 || i == half, table, List.of(i == 0 ? "Premium" : "Budget"));
        case HEADER_AGAIN -> {
          if (i == half) {
            table.addAll(heading);
          }
        }
        default -> {}
      }
      table.add(body.get(i));
    }
    int first = heading.size();
    table.addAll(look.summariesFirst() ? first : table.size(), summaries());
    return sketch(table, heading.size());
  }

  private static void addIf(boolean holds, List<List<String>> table, List<String> row) {
    if (holds) {
      table.add(row);
    }
  }

  /** Disciplines down and tyres across: rows for columns. */
  private List<List<String>> turned(Sketch wide) {
    List<List<String>> rows = wide.table().stream().filter(row -> row.size() > 1).toList();
    List<List<String>> turned = new ArrayList<>();
    for (int c = 0; c < wide.width(); c++) {
      List<String> row = new ArrayList<>();
      for (List<String> from : rows) {
        String cell = from.get(c);
        row.add(cell.equals(Sketch.LEFT) ? Sketch.UP : cell.equals(Sketch.UP) ? Sketch.LEFT : cell);
      }
      turned.add(row);
    }
    return turned;
  }

  private List<String> names() {
    if (look.blankCorner()) {
      return List.of("");
    }
    return switch (look.names()) {
      case ONE -> List.of(look.words().say("tyre", random));
      case MAKER_MODEL ->
          List.of(look.words().say("maker", random), look.words().say("model", random));
      case MAKER_LINE_GENERATION ->
          List.of(look.words().say("maker", random), look.words().say("model", random), "");
    };
  }

  /** A tyre's name in its columns; {@code above} is the tyre in the row above or null. */
  private List<String> name(DrawnTest.Tyre tyre, DrawnTest.Tyre above) {
    boolean same = look.mergedMakers() && above != null && above.maker().equals(tyre.maker());
    String maker = same ? Sketch.UP : tyre.maker();
    return switch (look.names()) {
      case ONE -> List.of(tyre.name());
      case MAKER_MODEL -> List.of(maker, tyre.model());
      case MAKER_LINE_GENERATION -> List.of(maker, tyre.line(), tyre.generation());
    };
  }

  private List<List<String>> heading() {
    List<String> top = new ArrayList<>();
    List<String> second = new ArrayList<>();
    List<String> units = new ArrayList<>();
    for (String name : names()) {
      add(top, second, units, name, "", "");
    }
    if (look.rank()) {
      add(top, second, units, look.words().say("place", random), "", "");
    }
    String group = "";
    for (int c = 0; c < test.measures().size(); c++) {
      String surface = look.grouped() ? heads.surface(c, random) : "";
      if (surface.isEmpty()) {
        add(top, second, units, heads.full(c), "", heads.unit(c));
      } else {
        boolean again = surface.equals(group);
        add(
            top,
            second,
            units,
            again ? Sketch.LEFT : surface,
            heads.manoeuvre(c, random),
            heads.unit(c));
      }
      group = surface;
    }
    if (look.total() != DrawnLook.Total.NONE) {
      add(top, second, units, look.words().say("overall", random), "", "");
    }
    List<List<String>> heading = new ArrayList<>(List.of(top));
    if (second.stream().anyMatch(cell -> !cell.equals(Sketch.UP))) {
      heading.add(second);
    }
    if (look.units() == DrawnLook.Units.ROW) {
      heading.add(units);
    }
    return heading;
  }

  private static void add(
      List<String> top,
      List<String> second,
      List<String> units,
      String head,
      String below,
      String unit) {
    top.add(head);
    second.add(below.isEmpty() ? Sketch.UP : below);
    units.add(unit);
  }

  private List<List<String>> body() {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < test.tyres().size(); i++) {
      order.add(i);
    }
    if (random.nextBoolean()) {
      order.sort((a, b) -> Integer.compare(scores.place(a), scores.place(b)));
    } else {
      order.sort((a, b) -> test.tyres().get(a).name().compareTo(test.tyres().get(b).name()));
    }
    int marked = look.footnotes() ? random.nextInt(order.size()) : -1;
    int gap = look.gaps() ? random.nextInt(order.size()) : -1;
    List<List<String>> body = new ArrayList<>();
    DrawnTest.Tyre above = null;
    for (int i : order) {
      DrawnTest.Tyre tyre = test.tyres().get(i);
      List<String> row = new ArrayList<>(name(tyre, above));
      above = tyre;
      if (i == marked) {
        row.set(row.size() - 1, row.get(row.size() - 1) + "*");
      }
      if (look.rank()) {
        row.add(Integer.toString(scores.place(i)));
        truth.place(tyre, scores.place(i));
      }
      for (int c = 0; c < test.measures().size(); c++) {
        if (i == gap && c == 0) {
          row.add(List.of("–", "n/a", "-", "").get(random.nextInt(4)));
        } else {
          row.add(DrawnFigures.cell(test.measures().get(c), i, heads.unit(c), look));
          truth.value(tyre, test.measures().get(c), i);
        }
      }
      if (look.total() != DrawnLook.Total.NONE) {
        boolean hundred = look.total() == DrawnLook.Total.POINTS_OF_100;
        row.add(DrawnFigures.number(scores.points(i) * (hundred ? 10 : 1), hundred ? 0 : 1, look));
        truth.total(tyre, scores.points(i), hundred);
      }
      body.add(row);
    }
    return body;
  }

  private List<List<String>> summaries() {
    List<List<String>> rows = new ArrayList<>();
    for (String role : look.summaries()) {
      List<String> row = new ArrayList<>(List.of(look.words().say(role, random)));
      int before = name(test.tyres().get(0), null).size() + (look.rank() ? 1 : 0);
      row.addAll(Collections.nCopies(before - 1, ""));
      for (DrawnTest.Measure measure : test.measures()) {
        row.add(DrawnFigures.number(DrawnFigures.summary(role, measure), measure, look));
      }
      if (look.total() != DrawnLook.Total.NONE) {
        row.add("");
      }
      rows.add(row);
    }
    return rows;
  }

  private List<List<String>> results() {
    List<List<String>> rows = new ArrayList<>();
    boolean unitColumn = look.units() != DrawnLook.Units.CELLS;
    List<String> head = new ArrayList<>(names());
    if (look.blankCorner()) {
      head.set(0, look.words().say("tyre", random));
    }
    head.add(look.words().say("discipline", random));
    head.add(look.words().say("value", random));
    if (unitColumn) {
      head.add(look.words().say("unit", random));
    }
    rows.add(head);
    for (int c = 0; c < test.measures().size(); c++) {
      for (int i = 0; i < test.tyres().size(); i++) {
        List<String> row = new ArrayList<>(name(test.tyres().get(i), null));
        row.add(heads.bare(c));
        row.add(DrawnFigures.cell(test.measures().get(c), i, heads.unit(c), look));
        if (unitColumn) {
          row.add(heads.unit(c));
        }
        truth.value(test.tyres().get(i), test.measures().get(c), i);
        rows.add(row);
      }
    }
    return rows;
  }

  private List<Sketch> sheets() {
    List<Sketch> sheets = new ArrayList<>();
    for (int c = 0; c < test.measures().size(); c++) {
      List<List<String>> table = new ArrayList<>();
      List<String> head = new ArrayList<>(names());
      head.add(
          look.words().say("value", random)
              + (look.units() == DrawnLook.Units.CELLS || heads.unit(c).isEmpty()
                  ? ""
                  : " [" + heads.unit(c) + "]"));
      table.add(head);
      for (int i = 0; i < test.tyres().size(); i++) {
        List<String> row = new ArrayList<>(name(test.tyres().get(i), null));
        row.add(DrawnFigures.cell(test.measures().get(c), i, heads.unit(c), look));
        table.add(row);
        truth.value(test.tyres().get(i), test.measures().get(c), i);
      }
      String name = heads.bare(c).replaceAll("[\\[\\]:*?/\\\\]", " ");
      sheets.add(
          new Sketch(
              name.substring(0, Math.min(31, name.length())),
              c == 0 ? details.above() : List.of(),
              table,
              1,
              c == 0 ? below() : List.of()));
    }
    return sheets;
  }
}
