package org.griplore.ingest;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.griplore.ingest.grid.Content;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * A source that could be opened, or why not.
 *
 * @param sidecar the file beside which its details stand; null for what is no file
 * @param reading reads it; null when it was refused
 * @param refusal why it cannot be read; else null
 */
record OpenedSource(Original original, Path sidecar, SourceReader reading, Refusal refusal) {
  /** A packed file in a letter in a packed file is enough. */
  private static final int DEEPEST = 3;

  private static final int MOST_DOCUMENTS = 2000;

  /** Lineage is read first and notes last, so that names are settled when they are needed. */
  int order() {
    return reading == null ? 1 : reading.order();
  }

  /** Opens a file and, where it holds several documents, each of them. */
  static List<OpenedSource> of(Path file, DisciplineCatalogue catalogue, List<String> passedOver) {
    List<OpenedSource> opened = new ArrayList<>();
    try {
      open(Original.of(file), file, 0, catalogue, opened, passedOver);
    } catch (Refusal refusal) {
      Original named =
          new Original(file.toString(), file.getFileName().toString(), "", 0, () -> null);
      opened.add(new OpenedSource(named, file, null, refusal));
    }
    return opened;
  }

  /** Opens a content that is no file. */
  static List<OpenedSource> of(Original original, DisciplineCatalogue catalogue) {
    List<OpenedSource> opened = new ArrayList<>();
    open(original, null, 0, catalogue, opened, new ArrayList<>());
    return opened;
  }

  private static void open(
      Original original,
      Path sidecar,
      int depth,
      DisciplineCatalogue catalogue,
      List<OpenedSource> opened,
      List<String> passedOver) {
    try {
      if (depth > DEEPEST || opened.size() >= MOST_DOCUMENTS) {
        throw new Refusal(
            original.name() + " is packed too deep or among too many files: unpack it first.",
            new Problem(original.origin(), "a file packed too deep", "a file by itself"));
      }
      SourceReader reading = SourceReader.of(original, catalogue);
      if (reading.content() instanceof Content.Members members) {
        passedOver.addAll(members.passedOver());
        for (Original member : members.members()) {
          open(member, sidecar, depth + 1, catalogue, opened, passedOver);
        }
      } else {
        opened.add(new OpenedSource(original, sidecar, reading, null));
      }
    } catch (Refusal refusal) {
      opened.add(new OpenedSource(original, sidecar, null, refusal));
    }
  }
}
