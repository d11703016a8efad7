package org.griplore.ingest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
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
import org.griplore.store.archive.Original;
import org.griplore.store.archive.ReadingOfName;
import org.griplore.store.archive.Revision;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.Problem;
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
  }

  /** A source that could be opened, or why not. */
  private record Opened(Original original, Path sidecar, SourceReader reading, Refusal refusal) {
    int order() {
      return reading == null ? 1 : reading.order();
    }
  }

  /**
   * Adds files, and all files in folders. What one file is refused for does not keep the others
   * out.
   *
   * @return what became of each, in the order they were taken
   * @throws Refusal when a path is not there
   */
  public List<AddedSource> add(List<Path> paths, ReadOptions options, Progress progress) {
    List<Path> files = sourcesOf(paths);
    List<Opened> opened = new ArrayList<>();
    for (Path file : files) {
      opened.add(open(file));
    }
    opened.sort(Comparator.comparingInt(Opened::order));
    Delivery delivery = archive.delivery(clock);
    List<AddedSource> added = new ArrayList<>();
    for (Opened source : opened) {
      progress.reading(source.original().name(), added.size(), opened.size());
      added.add(add(source, options, delivery));
    }
    return added;
  }

  /** Adds one content that is no file: a pasted table, say. */
  public AddedSource add(Original original, ReadOptions options) {
    try {
      return add(
          new Opened(original, null, SourceReader.of(original), null),
          options,
          archive.delivery(clock));
    } catch (Refusal refusal) {
      return new AddedSource(original.name(), null, refusal);
    }
  }

  /**
   * Reads a source without writing anything.
   *
   * @throws Refusal when there is nothing in it that can be taken
   */
  public Preview preview(Original original, ReadOptions options) {
    SourceReader reading = SourceReader.of(original);
    ReadOptions filled = filled(original, reading, options);
    Collected collected = new Collected();
    reading.tell(context(original, filled, collected));
    RememberedColumns remembered = remembered();
    collected.layouts.forEach(
        layout ->
            remembered
                .same(layout, filled.map())
                .map(RememberedColumns::finding)
                .ifPresent(collected::finding));
    return new Preview(
        reading.form(),
        collected.columns,
        collected.reports,
        collected.lineage,
        collected.findings,
        collected.complete);
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
    List<Path> files = new ArrayList<>();
    for (Path path : paths) {
      files.addAll(filesOf(path));
    }
    return files;
  }

  /**
   * The options with what is remembered of the columns of such a source, where they say nothing of
   * columns.
   *
   * @throws Refusal when the source cannot be read
   */
  public ReadOptions withRemembered(Original original, ReadOptions options) {
    return filled(original, SourceReader.of(original), options);
  }

  private ReadOptions filled(Original original, SourceReader reading, ReadOptions options) {
    return reading.hasOpenColumns()
        ? remembered().fill(options, (tried, told) -> reading.tell(context(original, tried, told)))
        : options;
  }

  private RememberedColumns remembered() {
    return new RememberedColumns(archive.columnMaps(), catalogue);
  }

  /** Reads a kept original as it was read then, to its end; nothing is written. */
  void tell(Original original, Revision read, Receiver receiver) {
    ReadOptions options = StoredOptions.of(read, catalogue);
    SourceReader.of(original).tell(context(original, options, receiver));
  }

  private static List<Path> filesOf(Path path) {
    if (Files.isDirectory(path)) {
      try (Stream<Path> walk = Files.walk(path)) {
        return walk.filter(Files::isRegularFile)
            .filter(file -> isSource(path.relativize(file)))
            .sorted()
            .toList();
      } catch (IOException | java.io.UncheckedIOException e) {
        throw new Refusal(path + " cannot be read: access is denied.", e);
      }
    }
    if (!Files.exists(path)) {
      throw new Refusal(
          "There is no file or folder " + path + ".",
          new Problem("path", path.toString(), "a file or folder that exists"));
    }
    return List.of(path);
  }

  /** Hidden files, sidecars and notes on the folder itself are no sources. */
  private static boolean isSource(Path relative) {
    for (Path part : relative) {
      if (part.toString().startsWith(".")) {
        return false;
      }
    }
    String name = relative.getFileName().toString();
    return !name.endsWith(Sidecar.ENDING) && !name.equalsIgnoreCase("README.md");
  }

  private static Opened open(Path file) {
    Original original = null;
    try {
      original = Original.of(file);
      return new Opened(original, file, SourceReader.of(original), null);
    } catch (Refusal refusal) {
      Original named =
          original != null
              ? original
              : new Original(file.toString(), file.getFileName().toString(), "", 0, () -> null);
      return new Opened(named, file, null, refusal);
    }
  }

  private AddedSource add(Opened source, ReadOptions options, Delivery delivery) {
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

  private AdditionOutcome write(Opened source, ReadOptions said, Delivery delivery) {
    Original original = source.original();
    ReadOptions options = filled(original, source.reading(), said);
    Optional<Revision> current = archive.currentRevisionOf(original.sha256());
    if (current.isPresent() && current.get().options().equals(options.text())) {
      return AdditionOutcome.unchanged(current.get());
    }
    try (Addition addition = delivery.begin(original, source.reading().form(), options.text())) {
      Writing writing = new Writing(addition, new LinkedHashSet<>());
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
  private record Writing(Addition addition, Set<String> layouts) implements Receiver {
    @Override
    public void layout(String layout) {
      layouts.add(layout);
    }

    @Override
    public void report(TestReport report) {
      addition.put(report);
    }

    @Override
    public void name(String written, String model, ReadingOfName how) {
      addition.read(written, model, how);
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
    final Set<String> layouts = new LinkedHashSet<>();
    final MeantModels meant = new MeantModels();
    boolean complete = true;

    @Override
    public void name(String written, String model, ReadingOfName how) {
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
