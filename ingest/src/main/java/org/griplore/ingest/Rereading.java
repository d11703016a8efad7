package org.griplore.ingest;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.griplore.ingest.forms.Receiver;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.FigureFeed;
import org.griplore.store.archive.NameTaken;
import org.griplore.store.archive.Original;
import org.griplore.store.archive.Revision;
import org.griplore.store.archive.StoredFigure;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.TestReport;

/**
 * Reads a kept original once more, as it was read then, and compares what it tells with what the
 * archive holds: every figure with its cells, unit, place and rule, every note and every logged
 * run. Writes nothing.
 */
public final class Rereading {
  private final Archive archive;
  private final Revision revision;
  private final RereadingComparison comparison;
  private final Map<String, String> models = new HashMap<>();

  private Rereading(Archive archive, Revision revision) {
    this.archive = archive;
    this.revision = revision;
    this.comparison = new RereadingComparison(revision.name());
    archive.names().forEach(name -> models.put(name.name(), name.model()));
  }

  /**
   * What came of it.
   *
   * @param compared so many figures, notes and runs were there on both sides
   * @param disagreements sentences with file and cell; empty when all is the same
   * @param otherNames sentences on names that would be taken for another model now: more was learnt
   *     of names since, which is no fault
   */
  public record Outcome(
      Revision revision, long compared, List<String> disagreements, List<String> otherNames) {}

  /** Compares one reading. What cannot be read any more is a disagreement. */
  public static Outcome of(Archive archive, Intake intake, Revision revision) {
    Rereading rereading = new Rereading(archive, revision);
    try {
      rereading.compare(intake);
    } catch (Refusal refusal) {
      return new Outcome(
          revision,
          0,
          List.of(revision.name() + " cannot be read anew: " + refusal.sentence()),
          List.of());
    }
    return new Outcome(
        revision,
        rereading.comparison.compared(),
        rereading.comparison.disagreements(),
        rereading.comparison.otherNames());
  }

  private void compare(Intake intake) {
    Path kept = archive.originals().path(revision.sha256());
    Original original =
        Original.of(revision.origin(), revision.name(), () -> Files.newInputStream(kept));
    try (FigureFeed figures = archive.figuresOf(revision.id())) {
      archive.notesOf(revision.id()).forEach(note -> comparison.stored(StoredFact.note(note)));
      archive.runsOf(revision.id()).forEach(run -> comparison.stored(StoredFact.run(run)));
      intake.tell(original, revision, new Reader(figures));
      for (StoredFigure rest = figures.next(); rest != null; rest = figures.next()) {
        comparison.stored(StoredFact.figure(rest));
      }
    }
    leaveOutRepeated();
    comparison.finish();
  }

  private void leaveOutRepeated() {
    Set<String> unpartnered = comparison.unpartnered();
    Set<String> repeated = new HashSet<>();
    if (!unpartnered.isEmpty()) {
      try (FigureFeed figures = archive.figuresOf(revision.id())) {
        for (StoredFigure each = figures.next(); each != null; each = figures.next()) {
          String identity = RereadingComparison.figureOf(StoredFact.figure(each));
          if (unpartnered.contains(identity)) {
            repeated.add(identity);
          }
        }
      }
    }
    comparison.leaveOut(repeated);
  }

  /** Takes a stored figure for each that is read, so that neither side runs ahead. */
  private final class Reader implements Receiver {
    private final FigureFeed figures;
    private final List<String> stored = archive.testsOf(revision.id());
    private final Set<String> notGiven = new HashSet<>();
    private final Map<String, String> keys = new HashMap<>();

    Reader(FigureFeed figures) {
      this.figures = figures;
    }

    @Override
    public void keyNotGiven(String key) {
      notGiven.add(key);
    }

    /** Which test a key means that is not given was decided then: tests follow in their order. */
    private String keyOf(String read) {
      int number = keys.size();
      return keys.computeIfAbsent(
          read, key -> notGiven.contains(key) && number < stored.size() ? stored.get(number) : key);
    }

    @Override
    public void report(TestReport read) {
      TestReport report = read.under(keyOf(read.key()));
      report
          .entries()
          .forEach(
              entry ->
                  entry
                      .results()
                      .forEach(
                          result -> {
                            StoredFigure stored = figures.next();
                            if (stored != null) {
                              comparison.stored(StoredFact.figure(stored));
                            }
                            read(
                                StoredFact.figure(
                                    report.key(),
                                    entry.model(),
                                    entry.size(),
                                    entry.name(),
                                    result));
                          }));
      report.notes().forEach(note -> read(StoredFact.note(report.key(), note)));
      report.runs().forEach(run -> read(StoredFact.run(run)));
    }

    private void read(StoredFact told) {
      comparison.read(told.meaning(models));
    }

    @Override
    public void name(String written, String model, NameTaken how) {
      // what the archive knows of a name counts first
      models.putIfAbsent(written, model);
    }

    @Override
    public void lineage(LineageRow row, List<String> means) {
      // what is said of descent is not a figure
    }

    @Override
    public void finding(Finding finding) {
      // findings depend on what else was known then
    }
  }
}
