package org.griplore.ingest.messy;

import java.util.List;
import java.util.Random;

/**
 * The oddities of a drawn file, each drawn for itself.
 *
 * @param blankCorner whether nothing heads the names
 * @param mergedMakers whether a maker stands once for the rows below it that share it
 * @param summaries roles of the summary rows: {@code mean}, {@code min}, {@code max}, {@code sd}
 * @param summariesFirst whether they stand above the tyres
 * @param lap whether times stand as minutes and seconds
 */
record DrawnLook(
    Format format,
    DrawnWords words,
    boolean comma,
    Shape shape,
    Names names,
    Units units,
    boolean across,
    boolean grouped,
    boolean blankCorner,
    boolean mergedMakers,
    List<String> summaries,
    boolean summariesFirst,
    Total total,
    boolean rank,
    Heading heading,
    boolean legend,
    boolean footnotes,
    boolean gaps,
    Breaks breaks,
    boolean lap) {

  /** How the file is written. */
  enum Format {
    SEMICOLONS,
    COMMAS,
    TABS,
    BARE_COMMAS,
    WORKBOOK,
    PAGE,
    MARKDOWN,
    FIXED,
    PASTED,
    JSON_FLAT,
    JSON_NESTED,
    OLD_WORKBOOK,
    OPEN_DOCUMENT,
    SPREADSHEET_XML,
    DOCUMENT,
    RICH_TEXT,
    LETTER,
    FOLDER;

    /** Whether it has sheets. */
    boolean book() {
      return this == WORKBOOK
          || this == OLD_WORKBOOK
          || this == OPEN_DOCUMENT
          || this == SPREADSHEET_XML;
    }

    boolean json() {
      return this == JSON_FLAT || this == JSON_NESTED;
    }
  }

  /** What a row is. */
  enum Shape {
    WIDE,
    RESULT_A_ROW,
    RUN_COLUMNS,
    SHEET_A_DISCIPLINE
  }

  /** In how many columns a name stands. */
  enum Names {
    ONE,
    MAKER_MODEL,
    MAKER_LINE_GENERATION
  }

  /** Where units stand. */
  enum Units {
    BRACKETS,
    PARENTHESES,
    COMMA,
    ROW,
    CELLS,
    NOWHERE
  }

  /** A column that sums up. */
  enum Total {
    NONE,
    POINTS,
    POINTS_OF_100
  }

  /** Where the details stand. */
  enum Heading {
    NONE,
    TITLE,
    ONE_CELL,
    TWO_CELLS,
    BELOW
  }

  /** What stands between the rows of tyres. */
  enum Breaks {
    NONE,
    BLANK_ROW,
    SUBHEADS,
    HEADER_AGAIN
  }

  static DrawnLook draw(Format format, List<DrawnWords> languages, Random random) {
    DrawnWords words =
        random.nextInt(3) == 0
            ? languages.get(random.nextInt(4))
            : languages.get(random.nextInt(languages.size()));
    boolean comma =
        switch (format) {
          case COMMAS, JSON_FLAT, JSON_NESTED -> false;
          case BARE_COMMAS -> true;
          default -> words.comma() ^ random.nextInt(8) == 0;
        };
    Shape shape =
        random.nextInt(3) > 0 || format.json() || format == Format.PASTED
            ? Shape.WIDE
            : Shape.values()[1 + random.nextInt(format.book() ? 3 : 2)];
    boolean across = shape == Shape.WIDE && random.nextInt(4) == 0;
    Names names =
        across || random.nextInt(2) == 0
            ? Names.ONE
            : Names.values()[random.nextInt(Names.values().length)];
    List<String> summaries =
        random.nextInt(3) > 0 || shape == Shape.RESULT_A_ROW
            ? List.of()
            : List.of("mean", "min", "max", "sd").subList(0, 1 + random.nextInt(4));
    Heading heading = pick(Heading.values(), random);
    return new DrawnLook(
        format,
        words,
        comma,
        shape,
        names,
        pick(Units.values(), random),
        across,
        shape == Shape.WIDE && random.nextInt(4) == 0,
        names == Names.ONE && random.nextInt(4) == 0,
        random.nextInt(2) == 0,
        summaries,
        random.nextInt(4) == 0,
        random.nextInt(3) > 0 ? Total.NONE : pick(Total.values(), random),
        random.nextInt(4) == 0,
        heading,
        random.nextInt(3) == 0,
        random.nextInt(5) == 0,
        random.nextInt(5) == 0,
        random.nextInt(2) == 0 || across ? Breaks.NONE : pick(Breaks.values(), random),
        random.nextInt(5) == 0);
  }

  private static <T> T pick(T[] all, Random random) {
    return all[random.nextInt(all.length)];
  }
}
