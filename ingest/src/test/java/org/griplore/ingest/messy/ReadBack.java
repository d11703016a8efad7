package org.griplore.ingest.messy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.griplore.ingest.Intake;
import org.griplore.ingest.Preview;
import org.griplore.ingest.ReadOptions;
import org.griplore.store.vocabulary.Circumstance;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.Entry;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.Price;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.TestReport;
import org.griplore.store.vocabulary.Unit;

/**
 * What was read of a file.
 *
 * @param figures every value and every place
 * @param tests the details of its tests
 * @param refusal the sentence it was refused with; null when it was not
 * @param failure what was thrown beside a refusal, or a hang; null when nothing was
 * @param draft whether it is kept as a draft, its figures being those of the best reading
 */
record ReadBack(
    List<Read> figures,
    List<Details> tests,
    List<Finding> findings,
    String refusal,
    String failure,
    boolean draft,
    double seconds) {
  private static final int LONGEST_SECONDS = 20;

  /**
   * A value or a place.
   *
   * @param unit null for places
   * @param marks {@code state}, {@code kind} and, where one is told, {@code window} in km/h
   * @param size the entry's own size; null where it is the test's
   */
  record Read(
      String model,
      String discipline,
      boolean place,
      double value,
      Unit unit,
      Map<String, String> marks,
      String size,
      Details test) {
    String words() {
      return model
          + ", "
          + discipline
          + (place ? " place" : "")
          + " "
          + (float) value
          + (unit == null ? "" : " " + unit.symbol());
    }
  }

  /** Reads a file in an archive that knows nothing yet; a hang is cut short. */
  static ReadBack of(Intake intake, Path file) {
    ExecutorService alone =
        Executors.newSingleThreadExecutor(
            work -> {
              Thread thread = new Thread(work, "reading " + file.getFileName());
              thread.setDaemon(true);
              return thread;
            });
    long begin = System.nanoTime();
    try {
      Preview shown =
          alone
              .submit(() -> intake.preview(file, ReadOptions.NONE))
              .get(LONGEST_SECONDS, TimeUnit.SECONDS);
      return of(shown, secondsSince(begin));
    } catch (ExecutionException e) {
      return e.getCause() instanceof Refusal refusal
          ? nothing(refusal.sentence(), null, secondsSince(begin))
          : nothing(null, words(e.getCause()), secondsSince(begin));
    } catch (TimeoutException e) {
      return nothing(null, "not read in " + LONGEST_SECONDS + " s", secondsSince(begin));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    } finally {
      alone.shutdownNow();
    }
  }

  /** A failure with where it was thrown; the machine leaves that out of frequent ones. */
  private static String words(Throwable failure) {
    StackTraceElement[] trace = failure.getStackTrace();
    return failure + (trace.length == 0 ? "" : " at " + trace[0]);
  }

  private static double secondsSince(long begin) {
    return (System.nanoTime() - begin) / 1e9;
  }

  private static ReadBack nothing(String refusal, String failure, double seconds) {
    return new ReadBack(List.of(), List.of(), List.of(), refusal, failure, false, seconds);
  }

  private static ReadBack of(Preview shown, double seconds) {
    List<Read> figures = new ArrayList<>();
    for (TestReport report : shown.reports()) {
      for (Entry entry : report.entries()) {
        add(figures, report, entry);
      }
    }
    return new ReadBack(
        figures,
        shown.reports().stream().map(TestReport::details).toList(),
        shown.findings(),
        null,
        null,
        !shown.drafts().isEmpty() && figures.isEmpty(),
        seconds);
  }

  private static void add(List<Read> figures, TestReport report, Entry entry) {
    for (Result result : entry.results()) {
      Map<String, String> marks = marks(entry, result.circumstance());
      if (result.value() != null) {
        figures.add(
            new Read(
                name(entry),
                result.discipline(),
                false,
                result.value(),
                result.unit(),
                marks,
                entry.size(),
                report.details()));
      }
      if (result.place() != null) {
        figures.add(
            new Read(
                name(entry),
                result.discipline(),
                true,
                result.place(),
                null,
                marks,
                entry.size(),
                report.details()));
      }
    }
    for (Price price : entry.prices()) {
      figures.add(
          new Read(
              name(entry),
              "price",
              false,
              price.amount(),
              Unit.ofSymbol(price.currency()).orElse(Unit.CURRENCY),
              Map.of("state", "new"),
              entry.size(),
              report.details()));
    }
  }

  /** A variant for electric cars may stand as a model of its own or as a variant. */
  private static String name(Entry entry) {
    boolean told = entry.model().endsWith(" EV");
    return entry.variant().ev() && !told ? entry.model() + " EV" : entry.model();
  }

  private static Map<String, String> marks(Entry entry, Circumstance circumstance) {
    Map<String, String> marks = new HashMap<>();
    marks.put("state", entry.state().wear().key());
    marks.put("kind", circumstance.kind().key());
    if (circumstance.fromKmh() != null && circumstance.toKmh() != null) {
      marks.put(
          "window", Math.round(circumstance.fromKmh()) + "-" + Math.round(circumstance.toKmh()));
    }
    return marks;
  }
}
