package org.griplore.query.evidence;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.griplore.query.retold.TestSeries;
import org.griplore.query.retold.TestsToldTwice;
import org.griplore.store.archive.EntryColumns;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.archive.ReportRecord;
import org.griplore.store.archive.ResultColumns;
import org.griplore.store.archive.Snapshot;
import org.griplore.store.archive.TestRecord;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TyreState;

/**
 * The archive's contents at one stamp. Rows refer to each other by position. Safe for many threads;
 * what is derived (rankings) is computed when first asked for and kept.
 */
public final class Evidence {
  private final Snapshot snapshot;
  private final DisciplineCatalogue catalogue;
  private final Postings resultsOfDiscipline;
  private final Postings resultsOfEntry;
  private final Postings entriesOfModel;
  private final Postings entriesOfTest;
  private final boolean makerReports;
  private final Series series;
  private final boolean wornTyres;
  private TestsToldTwice toldTwice;
  private TestSeries testSeries;
  private final ConcurrentHashMap<Integer, Ranking> rankings = new ConcurrentHashMap<>();

  /** Takes a snapshot and the catalogue that explains its disciplines. */
  public Evidence(Snapshot snapshot, DisciplineCatalogue catalogue) {
    this.snapshot = snapshot;
    this.catalogue = catalogue;
    ResultColumns results = snapshot.results();
    EntryColumns entries = snapshot.entries();
    this.resultsOfDiscipline = Postings.of(results.discipline(), snapshot.disciplines().size());
    this.resultsOfEntry = Postings.of(results.entry(), entries.count());
    this.entriesOfModel = Postings.of(entries.model(), snapshot.models().size());
    this.makerReports =
        snapshot.tests().stream().anyMatch(test -> test.details().kind() == SourceKind.MAKER);
    this.series = new Series(snapshot);
    this.wornTyres =
        Arrays.stream(entries.state()).anyMatch(state -> state.wear() == TyreState.Wear.WORN);
    this.entriesOfTest = Postings.of(entries.test(), snapshot.tests().size());
  }

  /** Whether any tyre was tested worn. */
  boolean hasWornTyres() {
    return wornTyres;
  }

  /** Whether any test is known from a maker's report alone. */
  public boolean hasMakerReports() {
    return makerReports;
  }

  /** Which results may be set against each other. */
  Series series() {
    return series;
  }

  /** Tests that two reports tell, found when first asked for. */
  public synchronized TestsToldTwice toldTwice() {
    if (toldTwice == null) {
      toldTwice = TestsToldTwice.in(snapshot, catalogue);
    }
    return toldTwice;
  }

  /** Tests that repeat each other on the same car and ground, found when first asked for. */
  public synchronized TestSeries testSeries() {
    if (testSeries == null) {
      testSeries = TestSeries.in(snapshot);
    }
    return testSeries;
  }

  /** The stamp of the archive it was loaded at. */
  public long stamp() {
    return snapshot.stamp();
  }

  /** What it was made from. */
  public Snapshot snapshot() {
    return snapshot;
  }

  /** What the disciplines are. */
  public DisciplineCatalogue catalogue() {
    return catalogue;
  }

  /** The models by name. */
  public List<ModelRecord> models() {
    return snapshot.models();
  }

  /**
   * Whether a model is a tyre that was tested or that a lineage tells of: a reference set is known
   * by its name alone.
   */
  public boolean isTyre(int model) {
    ModelRecord record = models().get(model);
    return entriesOfModel.count(model) > 0 || record.maker() != null || record.line() != null;
  }

  /** How many models are tyres. */
  public int tyres() {
    return (int) IntStream.range(0, models().size()).filter(this::isTyre).count();
  }

  /** The tests by date. */
  public List<TestRecord> tests() {
    return snapshot.tests();
  }

  /** The reports in the order they were added. */
  public List<ReportRecord> reports() {
    return snapshot.reports();
  }

  /** Catalogue keys of the disciplines that occur. */
  public List<String> disciplines() {
    return snapshot.disciplines();
  }

  /** Symbols of the units that occur. */
  public List<String> units() {
    return snapshot.units();
  }

  /** Models in tests. */
  public EntryColumns entries() {
    return snapshot.entries();
  }

  /** The figures. */
  public ResultColumns results() {
    return snapshot.results();
  }

  /** Results by discipline position. */
  public Postings resultsOfDiscipline() {
    return resultsOfDiscipline;
  }

  /** Results by entry position. */
  public Postings resultsOfEntry() {
    return resultsOfEntry;
  }

  /** Entries by model position. */
  public Postings entriesOfModel() {
    return entriesOfModel;
  }

  /** Entries by test position. */
  public Postings entriesOfTest() {
    return entriesOfTest;
  }

  /** The position of a discipline that occurs, or -1. */
  public int discipline(String key) {
    return snapshot.disciplines().indexOf(key);
  }

  /** The places of all entries in one discipline, by its position. */
  public Ranking ranking(int discipline) {
    return rankings.computeIfAbsent(discipline, position -> Ranking.of(this, position));
  }

  /** Whether two entries of a test are sets of one tyre: model, size, state and version alike. */
  public boolean isSameTyre(int entry, int other) {
    EntryColumns entries = entries();
    return entries.model()[entry] == entries.model()[other]
        && Objects.equals(entries.size()[entry], entries.size()[other])
        && entries.state()[entry].equals(entries.state()[other])
        && entries.variant()[entry].equals(entries.variant()[other]);
  }

  /** The size an entry was tested in, or null when neither it nor its test says. */
  public String sizeOf(int entry) {
    String own = entries().size()[entry];
    return own != null ? own : tests().get(entries().test()[entry]).details().size();
  }
}
