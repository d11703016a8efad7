package org.griplore.query;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.griplore.query.answer.Answer;
import org.griplore.query.question.QueryContext;
import org.griplore.store.archive.Addition;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Circumstance;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Entry;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.Note;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.ResultCells;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TestDate;
import org.griplore.store.vocabulary.TestReport;
import org.griplore.store.vocabulary.TyreState;
import org.griplore.store.vocabulary.Unit;

/** A small archive written in a test, and the context that answers from it. */
public final class TestArchive implements AutoCloseable {
  private final Archive archive;
  private final QueryContext context;
  private int sources;

  /** An empty archive in a folder. */
  public TestArchive(Path folder) {
    this.archive = Archive.openOrCreate(folder);
    this.context = new QueryContext(archive, DisciplineCatalogue.standard());
  }

  /** A test in the making. */
  public static final class Told {
    private final String key;
    private final String date;
    private final SourceKind kind;
    private final String size;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Note> notes = new ArrayList<>();
    private Double massKg;
    private Double surfaceC;
    private Double airC;
    private String publication;
    private String vehicle;
    private String venue;

    private Told(String key, String date, SourceKind kind, String size) {
      this.key = key;
      this.date = date;
      this.kind = kind;
      this.size = size;
    }

    /** A model with one figure; value or place may be null. */
    public Told with(String model, String discipline, Double value, Unit unit, Integer place) {
      Cell cell = new Cell("", entries.size() + 2, 2, String.valueOf(value));
      entries.add(
          new Entry(
              model,
              null,
              null,
              List.of(
                  new Result(
                      discipline,
                      value,
                      value == null ? null : unit,
                      null,
                      null,
                      place,
                      new ResultCells(
                          value == null ? null : cell, null, null, place == null ? null : cell),
                      ""))));
      return this;
    }

    /** The entry told last, on a tyre in this state. */
    public Told in(TyreState state) {
      Entry last = entries.remove(entries.size() - 1);
      entries.add(
          new Entry(
              last.model(),
              last.name(),
              last.size(),
              state,
              last.variant(),
              last.results(),
              last.prices()));
      return this;
    }

    /** The entry told last, its figure having come about like this. */
    public Told under(Circumstance circumstance) {
      Entry last = entries.remove(entries.size() - 1);
      List<Result> results = last.results().stream().map(r -> r.under(circumstance)).toList();
      entries.add(
          new Entry(
              last.model(),
              last.name(),
              last.size(),
              last.state(),
              last.variant(),
              results,
              last.prices()));
      return this;
    }

    /** Temperatures of the surface and the air, degrees Celsius. */
    public Told warm(Double surface, Double air) {
      surfaceC = surface;
      airC = air;
      return this;
    }

    /** The mass of the car, kg. */
    public Told on(double vehicleMassKg) {
      massKg = vehicleMassKg;
      return this;
    }

    /** Who published it, the car and the ground. */
    public Told at(String publication, String vehicle, String venue) {
      this.publication = publication;
      this.vehicle = vehicle;
      this.venue = venue;
      return this;
    }

    /** A note. */
    public Told noted(String model, String discipline, String text) {
      notes.add(new Note(model, discipline, text, new Cell("", notes.size() + 1, 1, text)));
      return this;
    }
  }

  /** Starts telling of a test. */
  public static Told told(String key, String date, SourceKind kind, String size) {
    return new Told(key, date, kind, size);
  }

  /** Adds tests as one source. */
  public TestArchive add(Told... tests) {
    String name = "source-" + ++sources;
    Clock clock = Clock.fixed(Instant.parse("2024-01-01T00:00:00Z"), ZoneOffset.UTC);
    try (Addition addition =
        archive.begin(Original.of(name, name.getBytes(StandardCharsets.UTF_8)), "table", clock)) {
      for (Told test : tests) {
        addition.put(
            new TestReport(
                test.key,
                new Details(
                    null,
                    test.date == null ? null : new TestDate(test.date),
                    test.kind,
                    test.publication,
                    test.size,
                    null,
                    test.vehicle,
                    test.massKg,
                    test.venue,
                    test.surfaceC,
                    test.airC,
                    Map.of()),
                test.entries,
                test.notes,
                List.of()));
      }
      addition.commit();
    }
    return this;
  }

  /** A model of a line and what it follows. */
  public static LineageRow lineage(String maker, String line, String model, String follows) {
    return new LineageRow(model, maker, line, null, null, null, null, follows, List.of(), null);
  }

  /** Adds lineage rows as one source. */
  public TestArchive add(LineageRow... rows) {
    String name = "source-" + ++sources;
    try (Addition addition =
        archive.begin(
            Original.of(name, name.getBytes(StandardCharsets.UTF_8)),
            "lineage",
            Clock.systemUTC())) {
      for (LineageRow row : rows) {
        addition.put(row);
      }
      addition.commit();
    }
    return this;
  }

  /** Asks a question as a command line or an address would. */
  public Answer<?> ask(String kind, Map<String, List<String>> options) {
    return Questions.ask(Questions.of(kind).orElseThrow(), context, options);
  }

  /** The context. */
  public QueryContext context() {
    return context;
  }

  @Override
  public void close() {
    context.close();
    archive.close();
  }
}
