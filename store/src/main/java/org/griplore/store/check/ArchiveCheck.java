package org.griplore.store.check;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.griplore.store.archive.Archive;
import org.griplore.store.text.IndexCheck;

/** Verifies an archive and says so in sentences; changes nothing. */
public final class ArchiveCheck {
  private static final int MOST_ORPHANS_TOLD = 10;

  private final Archive archive;
  private final Progress progress;
  private final List<CheckLine> lines = new ArrayList<>();

  private ArchiveCheck(Archive archive, Progress progress) {
    this.archive = archive;
    this.progress = progress;
  }

  /** Told while an archive is verified. */
  public interface Progress {
    /**
     * So much of one part is done.
     *
     * @param part what is being verified, in a word or two
     * @param total 0 where it is not known
     */
    void verified(String part, long done, long total);
  }

  /** Verifies pages, references, cells, originals and text index, in this order. */
  public static List<CheckLine> run(Archive archive, Progress progress) {
    ArchiveCheck check = new ArchiveCheck(archive, progress);
    if (check.database()) {
      check.cells();
      check.originals();
      check.orphans();
      check.index();
    }
    return List.copyOf(check.lines);
  }

  /** Whether the pages can be read: nothing else is worth asking when they cannot. */
  private boolean database() {
    progress.verified("database", 0, 0);
    boolean whole = add("The database is whole.", archive.pageProblems());
    if (whole) {
      add("Every reference leads to a row.", archive.referenceProblems());
    }
    return whole;
  }

  private void cells() {
    long total = archive.figureCount();
    add(
        "All " + total + " figures say where they stand.",
        archive.cellProblems(done -> progress.verified("figures", done, total)));
  }

  private void originals() {
    int total = archive.revisions().size();
    add(
        "The originals of all " + total + " revisions are there, unchanged.",
        OriginalsCheck.contents(archive, done -> progress.verified("originals", done, total)));
  }

  private void orphans() {
    List<Path> orphans = OriginalsCheck.orphans(archive);
    orphans.stream()
        .limit(MOST_ORPHANS_TOLD)
        .forEach(
            file ->
                lines.add(
                    new CheckLine(
                        true,
                        "No revision was made of " + file + ": it does no harm and can go.")));
    if (orphans.size() > MOST_ORPHANS_TOLD) {
      lines.add(
          new CheckLine(
              true, "And " + (orphans.size() - MOST_ORPHANS_TOLD) + " more files like these."));
    }
  }

  private void index() {
    progress.verified("text index", 0, 0);
    IndexCheck.Verdict verdict = IndexCheck.of(archive);
    lines.add(new CheckLine(verdict.good(), verdict.sentence()));
  }

  private boolean add(String good, List<String> problems) {
    if (problems.isEmpty()) {
      lines.add(new CheckLine(true, good));
    }
    problems.forEach(sentence -> lines.add(new CheckLine(false, sentence)));
    return problems.isEmpty();
  }
}
