package org.griplore.store.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.griplore.store.check.ArchiveCheck;
import org.griplore.store.check.CheckLine;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.ReducedSet;
import org.griplore.store.vocabulary.ReducedSet.ReducedRun;
import org.griplore.store.vocabulary.Reduction;
import org.griplore.store.vocabulary.TestReport;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReductionsTest {
  private static final LoggedRun RUN =
      new LoggedRun(
          "wet-braking",
          1,
          "Control set",
          LoggedRun.Role.REFERENCE,
          1,
          80.0,
          20.0,
          34.6,
          null,
          null,
          null,
          null,
          18.5,
          null,
          "gust",
          new Cell("", 2, 4, "Control set"));

  @TempDir Path folder;

  private static Reduction reduction(double mean) {
    return new Reduction(
        "wet-braking",
        "mean deceleration",
        Unit.METRE_PER_SECOND_SQUARED,
        true,
        Direction.HIGH,
        null,
        80.0,
        20.0,
        new Reduction.Trace("not tested", null, null, null, null, null),
        mean,
        "as on the first reference measurement",
        List.of(),
        List.of("one limit", "another"),
        List.of(
            new ReducedSet(
                1,
                "Control set",
                LoggedRun.Role.REFERENCE,
                null,
                mean,
                null,
                1,
                null,
                "",
                null,
                null,
                false,
                "void",
                List.of("CV too wide"),
                List.of(new ReducedRun(RUN, mean, null, "straggler")))));
  }

  private static void add(Archive archive, String content, double mean) {
    try (Addition addition =
        archive.begin(Figures.original("log.csv", content), "run log", Figures.NOON)) {
      addition.put(
          new TestReport(
              "log-1", Details.NONE, List.of(), List.of(), List.of(RUN), List.of(reduction(mean))));
      addition.commit();
    }
  }

  @Test
  void whatWasKeptComesBackAndANewReadingTakesItsPlace() {
    try (Archive archive = Archive.openOrCreate(folder)) {
      add(archive, "first", 6.69);
      int test = archive.snapshot().tests().get(0).id();
      assertThat(archive.reductions(test))
          .extracting(ReductionRecord::reduction)
          .containsExactly(reduction(6.69));
      add(archive, "second", 6.71);
      assertThat(archive.reductions(test))
          .extracting(ReductionRecord::reduction)
          .containsExactly(reduction(6.71));
      archive.undo().orElseThrow();
      assertThat(archive.reductions(test))
          .extracting(ReductionRecord::reduction)
          .containsExactly(reduction(6.69));
      archive.undo().orElseThrow();
      assertThat(archive.snapshot().tests()).isEmpty();
      assertThat(ArchiveCheck.run(archive, (part, done, total) -> {})).allMatch(CheckLine::good);
    }
  }
}
