package org.griplore.ingest.recognise;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.griplore.ingest.grid.GridCell;
import org.griplore.store.tyre.TyreSize;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.HeaderKey;
import org.griplore.store.vocabulary.SeasonClass;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TestDate;
import org.griplore.store.vocabulary.Unit;
import org.griplore.store.vocabulary.UnitWords;

/** Turns the texts of details into what they mean; what is not understood becomes a finding. */
public final class DetailsReader {
  private static final Pattern MASS =
      Pattern.compile(
          "(?<digits>\\d[\\d.,\u00a0\u202f ]{2,6}\\d)\\s*kg\\b", Pattern.CASE_INSENSITIVE);

  private static final Map<String, SourceKind> KINDS = new HashMap<>();

  static {
    kinds(
        SourceKind.OWN,
        "own",
        "ours",
        "own test",
        "eigen",
        "eigener Test",
        "propre",
        "egen",
        "eget");
    kinds(
        SourceKind.INDEPENDENT,
        "independent",
        "published",
        "unabhängig",
        "indépendant",
        "oberoende");
    kinds(
        SourceKind.MAKER,
        "maker",
        "manufacturer",
        "supplier",
        "Hersteller",
        "fabricant",
        "tillverkare");
  }

  private static void kinds(SourceKind kind, String... words) {
    for (String word : words) {
      KINDS.put(HeaderKey.of(word), kind);
    }
  }

  private final String sheet;
  private final Boolean monthFirst;
  private final Consumer<Finding> findings;
  private final Map<String, Cell> cells = new HashMap<>();

  private DetailsReader(String sheet, Boolean monthFirst, Consumer<Finding> findings) {
    this.sheet = sheet;
    this.monthFirst = monthFirst;
    this.findings = findings;
  }

  /**
   * The details that lines state, filled from what was given beside the content.
   *
   * @param given texts by topic
   */
  public static Details read(
      DetailLines lines, Map<String, String> given, String sheet, Consumer<Finding> findings) {
    return read(lines, given, sheet, null, findings);
  }

  /**
   * The same, where somebody says how dates are written.
   *
   * @param monthFirst whether the month stands first in 6/7/2021; null when nobody says so
   */
  public static Details read(
      DetailLines lines,
      Map<String, String> given,
      String sheet,
      Boolean monthFirst,
      Consumer<Finding> findings) {
    DetailsReader reader = new DetailsReader(sheet, monthFirst, findings);
    lines
        .repeated()
        .forEach(
            cell ->
                reader.finding(
                    Finding.Kind.CONFLICT,
                    new Text(cell.text(), cell),
                    "each detail of a test once; what was told first was taken",
                    "leave out the line that is wrong"));
    Function<String, Text> text =
        topic -> {
          GridCell cell = lines.byTopic().get(topic);
          return cell != null
              ? new Text(cell.text(), cell)
              : given.containsKey(topic) ? new Text(given.get(topic), null) : null;
        };
    Text title =
        lines.title() != null ? new Text(lines.title().text(), lines.title()) : text.apply("title");
    Double mass = reader.number("vehicle_mass_kg", text.apply("vehicle_mass_kg"), Unit.KILOGRAM);
    Text vehicle = text.apply("vehicle");
    List<Text> beside = beside(title, lines);
    TestDate date = reader.date(text.apply("date"));
    String size = reader.size(text.apply("size"));
    SeasonClass season = reader.season(text.apply("season"));
    return new Details(
        reader.plain("title", title),
        date != null ? date : reader.dateBeside(beside),
        reader.kind(text.apply("source_kind")),
        reader.plain("source", text.apply("source")),
        size != null ? size : reader.sizeBeside(beside),
        season != null ? season : reader.seasonBeside(beside),
        reader.vehicle(vehicle),
        mass != null ? mass : reader.massIn(vehicle),
        reader.plain("venue", text.apply("venue")),
        reader.number("surface_c", text.apply("surface_c"), Unit.CELSIUS),
        reader.number("air_c", text.apply("air_c"), Unit.CELSIUS),
        reader.cells);
  }

  /** The title and short lines without a label, where size, season and year may stand too. */
  private static List<Text> beside(Text title, DetailLines lines) {
    List<Text> beside = new ArrayList<>();
    if (title != null) {
      beside.add(title);
    }
    for (GridCell cell : lines.others()) {
      if (cell.text().length() < 120) {
        beside.add(new Text(cell.text(), cell));
      }
    }
    return beside;
  }

  /** Car tyres of a stated aspect ratio are radial, where a dash stands in place of the R. */
  private static String radial(String size) {
    return size.replaceAll("(\\d{3}/\\d{2})\\s?-\\s?(1[3-9]|2[0-4])(?!\\d)", "$1 R$2");
  }

  private TestDate dateBeside(List<Text> beside) {
    for (Text text : beside) {
      Optional<DateReader.Reading> date = DateReader.within(text.words());
      if (date.isPresent()) {
        keep("date", text);
        return date.get().date();
      }
    }
    return null;
  }

  private String sizeBeside(List<Text> beside) {
    for (Text text : beside) {
      Optional<TyreSize> size = TyreSize.find(radial(text.words()));
      if (size.isPresent()) {
        keep("size", text);
        return size.get().toString();
      }
    }
    return null;
  }

  private SeasonClass seasonBeside(List<Text> beside) {
    if (beside.isEmpty()) {
      return null;
    }
    SeasonClass season = seasonOf(beside.get(0).words());
    if (season != null) {
      keep("season", beside.get(0));
    }
    return season;
  }

  /** A text, and its cell where it has one. */
  private record Text(String words, GridCell cell) {}

  private String plain(String topic, Text text) {
    if (text == null) {
      return null;
    }
    keep(topic, text);
    return text.words().strip();
  }

  private void keep(String topic, Text text) {
    if (text.cell() != null) {
      cells.put(topic, cell(text.cell(), text.words()));
    }
  }

  private Cell cell(GridCell cell, String found) {
    return new Cell(sheet, cell.row(), cell.column(), found);
  }

  private TestDate date(Text text) {
    if (text == null) {
      return null;
    }
    if (text.cell() != null && text.cell().date() != null) {
      keep("date", text);
      return new TestDate(text.cell().date().toString());
    }
    Optional<DateReader.Reading> date = DateReader.read(text.words(), monthFirst);
    if (date.isEmpty()) {
      notRead(text, "a date that exists, like 14.06.2021, 14 June 2021, June 2021 or 2021");
      return null;
    }
    keep("date", text);
    if (date.get().range()) {
      finding(
          Finding.Kind.ASSUMED,
          text,
          "one day; taken as the first: " + date.get().date(),
          "write the day that counts");
    }
    if (date.get().assumed()) {
      finding(
          Finding.Kind.ASSUMED,
          text,
          "taken as day before month: " + date.get().date(),
          "write the date as "
              + date.get().date()
              + " if this is right, or the other way round, or say how dates are written in a map:"
              + " `griplore add FILE --map MAP`");
    }
    return date.get().date();
  }

  private String size(Text text) {
    if (text == null) {
      return null;
    }
    Optional<TyreSize> size = TyreSize.find(radial(text.words()));
    if (size.isEmpty()) {
      notRead(text, "a size like 205/55 R16 91V");
      return null;
    }
    keep("size", text);
    return size.get().toString();
  }

  private SeasonClass season(Text text) {
    if (text == null) {
      return null;
    }
    SeasonClass season = seasonOf(text.words());
    if (season == null) {
      notRead(text, "summer, winter or all-season");
      return null;
    }
    keep("season", text);
    return season;
  }

  /** The season class that a word means, in many languages; null when it is none. */
  public static SeasonClass seasonOf(String text) {
    return SeasonWords.in(text);
  }

  private SourceKind kind(Text text) {
    if (text == null) {
      return null;
    }
    SourceKind kind = kindOf(text.words());
    if (kind == null) {
      notRead(text, "own, independent or maker");
      return null;
    }
    keep("source_kind", text);
    return kind;
  }

  /** The kind of source that a word means, in four languages; null when it is none. */
  public static SourceKind kindOf(String text) {
    return KINDS.get(HeaderKey.of(text));
  }

  private String vehicle(Text text) {
    if (text == null) {
      return null;
    }
    keep("vehicle", text);
    return MASS.matcher(text.words()).replaceAll("").replaceAll("[,;(\\s]+[)]?$", "").strip();
  }

  private Double massIn(Text vehicle) {
    if (vehicle == null) {
      return null;
    }
    Matcher mass = MASS.matcher(vehicle.words());
    if (!mass.find()) {
      return null;
    }
    if (vehicle.cell() != null) {
      cells.put("vehicle_mass_kg", cell(vehicle.cell(), vehicle.words()));
    }
    return Double.valueOf(mass.group("digits").replaceAll("\\D", ""));
  }

  private Double number(String topic, Text text, Unit wanted) {
    if (text == null) {
      return null;
    }
    if (text.cell() != null && text.cell().number() != null) {
      keep(topic, text);
      return text.cell().number();
    }
    NumberReader.Reading read = new NumberReader(DecimalMark.OPEN).read(text.words());
    if (read instanceof NumberReader.Reading.Number number) {
      Unit unit = number.unit().map(UnitWords.Recognised::unit).orElse(wanted);
      if (unit.convertsTo(wanted)) {
        keep(topic, text);
        return unit.convert(number.value(), wanted);
      }
    }
    if (!(read instanceof NumberReader.Reading.Missing)) {
      notRead(text, "a number in " + wanted.symbol());
    }
    return null;
  }

  private void notRead(Text text, String expected) {
    finding(Finding.Kind.NOT_READ, text, expected, "correct it in the source and add it again");
  }

  private void finding(Finding.Kind kind, Text text, String expected, String remedy) {
    findings.accept(
        new Finding(
            kind,
            text.cell() == null ? null : cell(text.cell(), text.words()),
            text.words(),
            expected,
            remedy));
  }
}
