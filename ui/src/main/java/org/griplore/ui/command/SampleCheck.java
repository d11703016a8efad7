package org.griplore.ui.command;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.griplore.ingest.Intake;
import org.griplore.ingest.Rereading;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.Revision;
import org.griplore.store.check.ArchiveCheck;
import org.griplore.store.check.CheckLine;

/** Reads originals anew and says in sentences whether they still give what the archive holds. */
final class SampleCheck {
  private final Archive archive;
  private final Intake intake;
  private final ArchiveCheck.Progress progress;

  SampleCheck(Archive archive, Intake intake, ArchiveCheck.Progress progress) {
    this.archive = archive;
    this.intake = intake;
    this.progress = progress;
  }

  /** Every revision, superseded ones too. */
  List<CheckLine> all() {
    List<Revision> revisions = archive.revisions();
    return compare(revisions, "the originals of all " + Counts.of(revisions.size(), "revision"));
  }

  /** So many of the revisions that count, drawn by a seed. */
  List<CheckLine> sample(int size, long seed) {
    List<Revision> current =
        new ArrayList<>(
            archive.revisions().stream().filter(each -> each.supersededBy() == null).toList());
    int count = current.size();
    Collections.shuffle(current, new Random(seed));
    List<Revision> drawn =
        current.stream().limit(size).sorted(Comparator.comparingInt(Revision::id)).toList();
    return compare(
        drawn,
        "the originals of %d of %d revisions (seed %d)".formatted(drawn.size(), count, seed));
  }

  private List<CheckLine> compare(List<Revision> revisions, String what) {
    List<CheckLine> lines = new ArrayList<>();
    long compared = 0;
    long disagreeing = 0;
    long done = 0;
    for (Revision revision : revisions) {
      progress.verified("reading anew", done++, revisions.size());
      Rereading.Outcome outcome = Rereading.of(archive, intake, revision);
      compared += outcome.compared();
      disagreeing += outcome.disagreements().isEmpty() ? 0 : 1;
      outcome.disagreements().forEach(sentence -> lines.add(new CheckLine(false, sentence)));
      outcome.otherNames().forEach(sentence -> lines.add(new CheckLine(true, sentence)));
    }
    lines.add(
        0,
        new CheckLine(
            true,
            "Read anew: %s; %d figures, notes and runs compared, %s."
                .formatted(
                    what,
                    compared,
                    disagreeing == 0
                        ? "all as the archive holds them"
                        : Counts.of(disagreeing, "revision") + " with disagreements")));
    return lines;
  }
}
