package org.griplore.ingest;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.griplore.ingest.forms.Receiver;
import org.griplore.ingest.forms.SourceContext;
import org.griplore.ingest.forms.UnderstoodColumn;
import org.griplore.ingest.names.NameReconciler;
import org.griplore.ingest.recognise.ColumnMap;
import org.griplore.ingest.recognise.ColumnMapReader;
import org.griplore.store.archive.Addition;
import org.griplore.store.archive.AdditionOutcome;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.ColumnMapRecord;
import org.griplore.store.archive.Delivery;
import org.griplore.store.archive.DraftRecord;
import org.griplore.store.archive.NameTaken;
import org.griplore.store.archive.Original;
import org.griplore.store.archive.Revision;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.DraftTable;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.ProposedReading;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.TestReport;

/**
 * Takes sources into an archive, each whole or not at all. Lineage tables go first and notes last,
 * otherwise sources go in the order of their names.
 */
public final class Intake {
  private final Archive archive;
  private final DisciplineCatalogue catalogue;
  private final Clock clock;

  /** An intake for an archive with these disciplines. */
  public Intake(Archive archive, DisciplineCatalogue catalogue, Clock clock) {
    this.archive = archive;
    this.catalogue = catalogue;
    this.clock = clock;
  }

  /** StoredFact as sources are taken. */
  public interface Progress {
    /** Another source is about to be read: number {@code done + 1} of {@code total}. */
    void reading(String name, int done, int total);

    /** So many files hold nothing to read and are passed over: lock files, thumbnails and such. */
    default void passedOver(int files) {}
  }

  /**
   * Adds files, and all files in folders. What one file is refused for does not keep the others
   * out.
   *
   * @return what became of each, in the order they were taken
   * @throws Refusal when a path is not there
   */
  public List<AddedSource> add(List<Path> paths, ReadOptions options, Progress progress) {
    GivenPaths given = GivenPaths.of(paths);
    List<String> passedOver = new ArrayList<>();
    List<OpenedSource> opened = new ArrayList<>();
    for (Path file : given.sources()) {
      opened.addAll(OpenedSource.of(file, catalogue, passedOver));
    }
    progress.passedOver(given.passedOver().size() + passedOver.size());
    opened.sort(Comparator.comparingInt(OpenedSource::order));
    Delivery delivery = archive.delivery(clock);
    List<AddedSource> added = new ArrayList<>();
    for (OpenedSource source : opened) {
      progress.reading(source.original().name(), added.size(), opened.size());
      added.add(add(source, options, delivery));
    }
    return added;
  }

  /**
   * Adds one content that is no file: a pasted table, say.
   *
   * @return what became of it; where it holds several documents, of the first that was refused, or
   *     else of the first
   */
  public AddedSource add(Original original, ReadOptions options) {
    Delivery delivery = archive.delivery(clock);
    List<AddedSource> added =
        OpenedSource.of(original, catalogue).stream()
            .map(each -> add(each, options, delivery))
            .toList();
    return added.stream()
        .filter(each -> each.refusal() != null)
        .findFirst()
        .orElseGet(() -> added.get(0));
  }

  /**
   * Reads a source without writing anything.
   *
   * @throws Refusal when there is nothing in it that can be taken
   */
  public Preview preview(Original original, ReadOptions options) {
    List<OpenedSource> opened = OpenedSource.of(original, catalogue);
    Collected collected = new Collected();
    Refusal first = null;
    String form = null;
    for (OpenedSource source : opened) {
      try {
        preview(source, options, collected);
        form = form == null ? source.reading().form() : form;
      } catch (Refusal refusal) {
        first = first == null ? refusal : first;
        if (opened.size() > 1) {
          collected.finding(refused(source.original().name(), refusal));
        }
      }
    }
    if (form == null) {
      throw first;
    }
    return new Preview(
        form,
        collected.columns,
        collected.reports,
        collected.lineage,
        collected.findings,
        collected.drafts,
        collected.complete);
  }

  private void preview(OpenedSource source, ReadOptions options, Collected collected) {
    if (source.refusal() != null) {
      throw source.refusal();
    }
    ReadOptions filled = filled(source.original(), source.reading(), options);
    Collected own = new Collected();
    source.reading().tell(context(source.original(), filled, own));
    RememberedColumns remembered = remembered();
    own.layouts.forEach(
        layout ->
            remembered
                .same(layout, filled.map())
                .map(RememberedColumns::finding)
                .ifPresent(own::finding));
    collected.add(own);
  }

  /**
   * Decides a draft by one of its readings: the source is read anew so, and that is remembered for
   * tables with the same headers.
   *
   * @param number the reading, 1 for the best
   * @throws Refusal when there is no such draft or reading, or it cannot be read
   */
  public AddedSource decide(int draft, int number) {
    DraftRecord open =
        archive.drafts().stream()
            .filter(record -> record.id() == draft && record.state() == DraftRecord.State.OPEN)
            .findFirst()
            .orElseThrow(
                () ->
                    new Refusal(
                        "There is no open draft " + draft + "; nothing was decided.",
                        new Problem(
                            "take",
                            String.valueOf(draft),
                            "a number that `griplore drafts` lists")));
    if (number > ProposedReading.of(open.table()).size()) {
      throw new Refusal(
          "Draft " + draft + " has one reading only; nothing was decided.",
          new Problem("second", String.valueOf(draft), "a draft with a second reading"));
    }
    Revision revision =
        archive.revisions().stream()
            .filter(each -> each.id() == open.revision())
            .findFirst()
            .orElseThrow();
    Path kept = archive.originals().path(revision.sha256());
    Original original =
        Original.of(revision.origin(), revision.name(), () -> Files.newInputStream(kept));
    ReadOptions read = StoredOptions.of(revision, catalogue);
    AddedSource added = add(original, read.with(read.map().taking(number)));
    if (added.refusal() == null) {
      archive.decideDraft(draft, number, clock);
    }
    return added;
  }

  private static Finding refused(String name, Refusal refusal) {
    return new Finding(
        Finding.Kind.NOT_READ, null, name, "a source that can be read", refusal.sentence());
  }

  /**
   * Reads a file, with the details beside it, without writing anything.
   *
   * @throws Refusal when there is nothing in it that can be taken
   */
  public Preview preview(Path file, ReadOptions options) {
    return preview(Original.of(file), Sidecar.beside(file).fill(options));
  }

  /**
   * The files that adding these paths would read: all in folders, but for hidden ones and details.
   *
   * @throws Refusal when a path is not there
   */
  public static List<Path> sourcesOf(List<Path> paths) {
    return GivenPaths.of(paths).sources();
  }

  /**
   * The options with what is remembered of the columns of such a source, where they say nothing of
   * columns.
   *
   * @throws Refusal when the source cannot be read
   */
  public ReadOptions withRemembered(Original original, ReadOptions options) {
    return filled(original, SourceReader.of(original, catalogue), options);
  }

  private ReadOptions filled(Original original, SourceReader reading, ReadOptions options) {
    return reading.hasOpenColumns()
        ? remembered()
            .fill(
                options,
                reading::words,
                (tried, told) -> reading.tell(context(original, tried, told)))
        : options;
  }

  private RememberedColumns remembered() {
    return new RememberedColumns(archive.columnMaps(), catalogue);
  }

  /** Reads a kept original as it was read then, to its end; nothing is written. */
  void tell(Original original, Revision read, Receiver receiver) {
    ReadOptions options = StoredOptions.of(read, catalogue);
    SourceReader.of(original, catalogue).tell(context(original, options, receiver));
  }

  private AddedSource add(OpenedSource source, ReadOptions options, Delivery delivery) {
    String name = source.original().name();
    if (source.refusal() != null) {
      return new AddedSource(name, null, source.refusal());
    }
    try {
      ReadOptions all =
          source.sidecar() == null ? options : Sidecar.beside(source.sidecar()).fill(options);
      return new AddedSource(name, write(source, all, delivery), null);
    } catch (Refusal refusal) {
      return new AddedSource(name, null, refusal);
    }
  }

  private AdditionOutcome write(OpenedSource source, ReadOptions said, Delivery delivery) {
    Original original = source.original();
    ReadOptions options = filled(original, source.reading(), said);
    Optional<Revision> current = archive.currentRevisionOf(original.sha256());
    if (current.isPresent() && current.get().options().equals(options.kept())) {
      return AdditionOutcome.unchanged(current.get());
    }
    try (Addition addition = delivery.begin(original, source.reading().form(), options.kept())) {
      Writing writing = new Writing(addition, joining(original, addition));
      if (source.reading().mayBeHuge()) {
        Handover.between(
            reader -> source.reading().tell(context(original, options, reader)), writing);
      } else {
        source.reading().tell(context(original, options, writing));
      }
      if (!options.map().isEmpty()) {
        remember(writing.layouts(), options.map(), addition);
      }
      return addition.commit();
    }
  }

  private TestJoining joining(Original original, Addition addition) {
    List<String> before =
        archive.revisions().stream()
            .filter(each -> each.origin().equals(original.origin()) && each.supersededBy() == null)
            .findFirst()
            .map(each -> archive.testsOf(each.id()))
            .orElse(List.of());
    return new TestJoining(archive.toldBesides(original.origin()), before, addition::put);
  }

  /** Remembers what was said of columns, or tells that it was remembered. */
  private void remember(Set<String> layouts, ColumnMap map, Addition addition) {
    RememberedColumns remembered = remembered();
    for (String layout : layouts) {
      Optional<ColumnMapRecord> known = remembered.same(layout, map);
      if (known.isPresent()) {
        addition.put(RememberedColumns.finding(known.get()));
      } else {
        addition.remember(layout, ColumnMapReader.text(map));
      }
    }
  }

  private SourceContext context(Original original, ReadOptions options, Receiver receiver) {
    return new SourceContext(
        original.name(),
        catalogue,
        NameReconciler.of(archive),
        options.details(),
        options.detailsFirst(),
        options.map(),
        receiver);
  }

  /** Writes what is told into an addition. */
  private record Writing(
      Addition addition, TestJoining joining, MeantModels meant, Set<String> layouts)
      implements Receiver {
    Writing(Addition addition, TestJoining joining) {
      this(addition, joining, new MeantModels(), new LinkedHashSet<>());
    }

    @Override
    public void keyNotGiven(String key) {
      joining.keyNotGiven(key);
    }

    @Override
    public void layout(String layout) {
      layouts.add(layout);
    }

    @Override
    public void draft(DraftTable draft) {
      addition.put(draft);
    }

    @Override
    public void report(TestReport report) {
      addition.put(report.under(joining.key(meant.in(report))));
    }

    @Override
    public void name(String written, String model, NameTaken how) {
      addition.taken(written, model, how);
      meant.add(written, model);
    }

    @Override
    public void lineage(LineageRow row, List<String> means) {
      addition.put(row);
      means.forEach(name -> addition.settleAs(name, row.name()));
    }

    @Override
    public void finding(Finding finding) {
      addition.put(finding);
    }
  }

  /** Keeps the beginning of what is told in memory. */
  private static final class Collected implements Receiver {
    final List<UnderstoodColumn> columns = new ArrayList<>();
    final List<TestReport> reports = new ArrayList<>();
    final List<LineageRow> lineage = new ArrayList<>();
    final List<Finding> findings = new ArrayList<>();
    final List<DraftTable> drafts = new ArrayList<>();
    final Set<String> layouts = new LinkedHashSet<>();
    final MeantModels meant = new MeantModels();
    boolean complete = true;

    @Override
    public void name(String written, String model, NameTaken how) {
      meant.add(written, model);
    }

    @Override
    public void report(TestReport report) {
      keep(reports, meant.in(report));
    }

    @Override
    public void lineage(LineageRow row, List<String> means) {
      keep(lineage, row);
    }

    @Override
    public void finding(Finding finding) {
      keep(findings, finding);
    }

    @Override
    public void draft(DraftTable draft) {
      keep(drafts, draft);
    }

    void add(Collected other) {
      columns.addAll(other.columns);
      other.reports.forEach(report -> keep(reports, report));
      other.lineage.forEach(row -> keep(lineage, row));
      other.findings.forEach(finding -> keep(findings, finding));
      other.drafts.forEach(draft -> keep(drafts, draft));
      layouts.addAll(other.layouts);
      complete &= other.complete;
    }

    private <T> void keep(List<T> kept, T told) {
      if (kept.size() < Preview.KEPT) {
        kept.add(told);
      } else {
        complete = false;
      }
    }

    @Override
    public void layout(String layout) {
      layouts.add(layout);
    }

    @Override
    public void column(UnderstoodColumn column) {
      columns.add(column);
    }
  }
}
