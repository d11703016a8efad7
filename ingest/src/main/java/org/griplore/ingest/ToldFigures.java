package org.griplore.ingest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.griplore.store.archive.FigureFeed;
import org.griplore.store.archive.StoredFigure;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Circumstance;
import org.griplore.store.vocabulary.Entry;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.TestReport;
import org.griplore.store.vocabulary.TyreState;
import org.griplore.store.vocabulary.Variant;

/** The figures that the archive's sources tell of a test, to compare a report with. */
final class ToldFigures {
  /** Figures are equal when they differ by rounding of the computer only. */
  private static final double ROUNDING = 1e-9;

  /** What a test has one figure of. */
  private record Key(
      String model,
      TyreState state,
      Variant variant,
      String discipline,
      Circumstance circumstance,
      int repeat) {
    static Key of(Entry entry, Result result) {
      return new Key(
          entry.model(),
          entry.state(),
          entry.variant(),
          result.discipline(),
          result.circumstance(),
          result.repeat());
    }
  }

  private record Told(String file, Result result) {}

  /** A figure of a report. */
  record Figure(Entry entry, Result result) {}

  /**
   * How far a report tells what is there.
   *
   * @param told its figures
   * @param shared those of which there is one in the same unit
   * @param equal those of which there is the same
   */
  record Agreement(int told, int shared, int equal) {}

  private final Map<Key, List<Told>> figures = new HashMap<>();
  private final Set<String> models = new HashSet<>();

  private ToldFigures() {}

  static ToldFigures of(FigureFeed feed) {
    ToldFigures told = new ToldFigures();
    try (feed) {
      for (StoredFigure each = feed.next(); each != null; each = feed.next()) {
        Result result = each.result();
        Key key =
            new Key(
                each.model(),
                each.state(),
                each.variant(),
                result.discipline(),
                result.circumstance(),
                result.repeat());
        told.models.add(each.model());
        told.figures
            .computeIfAbsent(key, k -> new ArrayList<>())
            .add(new Told(feed.file(), result));
      }
    }
    return told;
  }

  /** The first figure with a value. */
  static Optional<Figure> first(TestReport report) {
    return report.entries().stream()
        .flatMap(entry -> entry.results().stream().map(result -> new Figure(entry, result)))
        .filter(figure -> figure.result().value() != null)
        .findFirst();
  }

  boolean isEmpty() {
    return figures.isEmpty();
  }

  boolean hasHalfOfModels(TestReport report) {
    long known = report.entries().stream().filter(entry -> models.contains(entry.model())).count();
    return 2 * known >= report.entries().size();
  }

  Agreement agreement(TestReport report) {
    int told = 0;
    int shared = 0;
    int equal = 0;
    for (Entry entry : report.entries()) {
      for (Result result : entry.results()) {
        List<Told> there = comparable(entry, result);
        told++;
        shared += there.isEmpty() ? 0 : 1;
        equal += there.stream().anyMatch(each -> isEqual(each.result(), result)) ? 1 : 0;
      }
    }
    return new Agreement(told, shared, equal);
  }

  /** What a report tells otherwise: with both figures and where they stand. */
  List<Finding> contradictions(TestReport report) {
    List<Finding> found = new ArrayList<>();
    for (Entry entry : report.entries()) {
      for (Result result : entry.results()) {
        List<Told> there = comparable(entry, result);
        if (!there.isEmpty() && there.stream().noneMatch(each -> isEqual(each.result(), result))) {
          found.add(contradiction(entry, result, there.get(0)));
        }
      }
    }
    return found;
  }

  private List<Told> comparable(Entry entry, Result result) {
    return figures.getOrDefault(Key.of(entry, result), List.of()).stream()
        .filter(told -> isComparable(told.result(), result))
        .toList();
  }

  private static boolean isComparable(Result one, Result other) {
    return one.value() != null && other.value() != null
        ? one.unit() == other.unit()
        : one.value() == null
            && other.value() == null
            && one.place() != null
            && other.place() != null;
  }

  private static boolean isEqual(Result one, Result other) {
    return one.value() == null
        ? one.place().equals(other.place())
        : Math.abs(one.value() - other.value())
            <= ROUNDING * Math.max(Math.abs(one.value()), Math.abs(other.value()));
  }

  private static Finding contradiction(Entry entry, Result result, Told there) {
    Cell cell = cell(there.result());
    return new Finding(
        Finding.Kind.CONFLICT,
        cell(result),
        entry.model() + ", " + result.discipline() + ": " + words(result),
        words(there.result())
            + " as "
            + there.file()
            + (cell == null ? "" : " tells in " + cell.place() + " (\"" + cell.found() + "\")")
            + "; the source that was added first counts",
        "correct the source that is wrong, or take it out; or give this one its own key"
            + " (`Test: NAME`) if it is another test");
  }

  private static Cell cell(Result result) {
    return result.value() == null ? result.cells().place() : result.cells().value();
  }

  private static String words(Result result) {
    return result.value() == null
        ? "place " + result.place()
        : (result.value() + " " + result.unit().symbol()).strip();
  }
}
