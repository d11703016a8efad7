package org.griplore.store.export;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.griplore.store.archive.Addition;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.Delivery;
import org.griplore.store.archive.Figures;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.Entry;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.Note;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.ResultCells;
import org.griplore.store.vocabulary.SeasonClass;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.Step;
import org.griplore.store.vocabulary.TestDate;
import org.griplore.store.vocabulary.TestReport;
import org.griplore.store.vocabulary.Unit;

/**
 * Adds made-up sources drawn at random from few names, so that files are read anew, tests are told
 * by several, names are settled more than once and contents come twice.
 */
final class RandomSources {
  private static final List<String> ODD =
      List.of(
          "plain",
          "parted\u001fhere",
          "with, comma",
          "\"quoted\"",
          "two\nlines",
          "a\\b\r\n=c",
          "Reifen \u00e4\u4e2d",
          " ");

  private final Random random;
  private int contents;

  RandomSources(long seed) {
    random = new Random(seed);
  }

  boolean oneIn(int n) {
    return random.nextInt(n) == 0;
  }

  private <T> T any(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  private <T> T maybe(T value) {
    return oneIn(3) ? null : value;
  }

  private String model() {
    return "Velmar Ostra " + random.nextInt(12);
  }

  private Cell cell() {
    return new Cell(any(List.of("", "Wet", "Notes")), 1 + random.nextInt(40), 1, any(ODD));
  }

  /** Adds one delivery of one to three sources. */
  void deliver(Archive archive) {
    Delivery delivery = archive.delivery(Figures.NOON);
    for (int source = random.nextInt(3); source >= 0; source--) {
      add(archive, delivery);
    }
  }

  private void add(Archive archive, Delivery delivery) {
    String content = oneIn(6) ? "the same" : "content " + contents++;
    Original original =
        Original.of("file-" + random.nextInt(4), content.getBytes(StandardCharsets.UTF_8));
    List<String> known = archive.models().stream().map(ModelRecord::name).toList();
    try (Addition addition = delivery.begin(original, "table", Map.of("title", any(ODD)))) {
      for (int i = random.nextInt(3); i >= 0; i--) {
        addition.put(report());
      }
      for (int i = random.nextInt(3); i > 0; i--) {
        addition.put(lineage());
      }
      if (!known.isEmpty() && oneIn(2)) {
        settle(addition, any(known));
      }
      addition.put(
          new Finding(any(List.of(Finding.Kind.values())), maybe(cell()), any(ODD), "", ""));
      if (!oneIn(8)) {
        addition.commit();
      }
    }
  }

  private void settle(Addition addition, String name) {
    String means = "Velmar Settled " + random.nextInt(3);
    if (!name.equals(means)) {
      addition.put(lineage(means));
      addition.settleAs(name, means);
    }
  }

  private LineageRow lineage() {
    return lineage(model());
  }

  private LineageRow lineage(String name) {
    return new LineageRow(
        name,
        maybe("Velmar"),
        maybe("Ostra"),
        maybe("2"),
        maybe(new TestDate("2019-03")),
        maybe(SeasonClass.ALL_SEASON),
        maybe("touring"),
        maybe(model()),
        List.of("alias one", "alias two").subList(0, random.nextInt(3)),
        maybe(cell()));
  }

  private TestReport report() {
    List<Entry> entries = new ArrayList<>();
    List<Note> notes = new ArrayList<>();
    List<LoggedRun> runs = new ArrayList<>();
    for (int i = random.nextInt(5); i >= 0; i--) {
      entries.add(new Entry(model(), maybe(cell()), maybe("205/55 R16 91V"), results()));
      notes.add(new Note(maybe(model()), maybe("wet-braking"), "n " + any(ODD), cell()));
      runs.add(run(i + 1));
    }
    return new TestReport("T" + random.nextInt(5), details(), entries, notes, runs);
  }

  private List<Result> results() {
    List<Result> results = new ArrayList<>();
    for (String discipline : List.of("wet-braking", "overall", "my-own")) {
      if (oneIn(2)) {
        results.add(
            new Result(
                discipline,
                25 + 10 * random.nextDouble(),
                Unit.METRE,
                maybe(random.nextDouble() / 1e5),
                maybe(6),
                maybe(1 + random.nextInt(9)),
                new ResultCells(maybe(cell()), maybe(cell()), maybe(cell()), maybe(cell())),
                oneIn(2) ? "" : any(ODD),
                oneIn(3) ? steps() : List.of()));
      }
    }
    return results;
  }

  private List<Step> steps() {
    return List.of(
        Step.to("read " + any(ODD), random.nextDouble(), Unit.METRE).at(maybe(cell())),
        Step.of("scaled", 2.0, Unit.METRE, random.nextDouble(), Unit.METRE).labelled(maybe("m")));
  }

  private LoggedRun run(int sequence) {
    return new LoggedRun(
        "wet-braking",
        sequence,
        model(),
        any(List.of(LoggedRun.Role.values())),
        maybe(2),
        maybe(80.1),
        maybe(5.0),
        maybe(random.nextDouble()),
        null,
        null,
        null,
        null,
        maybe(18.5),
        null,
        maybe(any(ODD)),
        cell());
  }

  private Details details() {
    return new Details(
        maybe(any(ODD)),
        maybe(new TestDate("2021")),
        maybe(any(List.of(SourceKind.values()))),
        maybe("Someone"),
        maybe("205/55 R16 91V"),
        maybe(SeasonClass.WINTER),
        maybe("hatchback"),
        maybe(1350.0),
        null,
        maybe(-2.5),
        null,
        oneIn(2) ? Map.of() : Map.of("date", cell(), "size", cell()));
  }
}
