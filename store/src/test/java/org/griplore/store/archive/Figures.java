package org.griplore.store.archive;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.Entry;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.ResultCells;
import org.griplore.store.vocabulary.Step;
import org.griplore.store.vocabulary.TestReport;
import org.griplore.store.vocabulary.Unit;

/** Files of made-up figures for tests of the archive. */
public final class Figures {
  /** A fixed time of adding. */
  public static final Clock NOON =
      Clock.fixed(Instant.parse("2024-05-01T12:00:00Z"), ZoneOffset.UTC);

  private Figures() {}

  /** An original whose content is its text. */
  public static Original original(String name, String text) {
    return Original.of(name, text.getBytes(StandardCharsets.UTF_8));
  }

  /** A test of ten models in ten disciplines; the shift changes every figure. */
  public static TestReport report(int test, double shift) {
    List<Entry> entries = new ArrayList<>();
    for (int model = 0; model < 10; model++) {
      List<Result> results = new ArrayList<>();
      for (int discipline = 0; discipline < 10; discipline++) {
        double value = 30 + model + discipline / 10.0 + shift;
        Cell cell = new Cell("Sheet", model + 2, discipline + 2, Double.toString(value));
        results.add(
            new Result(
                "discipline-" + discipline,
                value,
                Unit.METRE,
                null,
                6,
                null,
                ResultCells.ofValue(cell),
                "",
                discipline > 0
                    ? List.of()
                    : List.of(
                        Step.to("number as written", value * 1000, Unit.MILLIMETRE).at(cell),
                        Step.of("from mm to m", value * 1000, Unit.MILLIMETRE, value, Unit.METRE)
                            .labelled("exact"))));
      }
      entries.add(new Entry("Velmar Ostra " + model, null, null, results));
    }
    return new TestReport("T" + test, Details.NONE, entries, List.of(), List.of());
  }

  /** Adds so many tests as one file. */
  public static AdditionOutcome add(Archive archive, String file, int tests, double shift) {
    try (Addition addition = archive.begin(original(file, file + tests + shift), "table", NOON)) {
      for (int test = 0; test < tests; test++) {
        addition.put(report(test, shift));
      }
      return addition.commit();
    }
  }
}
