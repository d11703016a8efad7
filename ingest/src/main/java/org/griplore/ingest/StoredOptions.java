package org.griplore.ingest;

import java.util.HashMap;
import java.util.Map;
import org.griplore.ingest.recognise.ColumnMap;
import org.griplore.ingest.recognise.ColumnMapReader;
import org.griplore.store.archive.Revision;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Refusal;

/** How a revision was read, from what is kept with it. */
final class StoredOptions {
  /** Under this name stands what was said of columns. */
  static final String MAP = "map";

  /** Under this name stands that details count before what a source says. */
  static final String DETAILS_FIRST = "details first";

  private StoredOptions() {}

  /**
   * The options whose {@link ReadOptions#kept} was kept.
   *
   * @throws Refusal when what was kept does not lead back to options
   */
  static ReadOptions of(Revision revision, DisciplineCatalogue catalogue) {
    Map<String, String> details = new HashMap<>(revision.options());
    String map = details.remove(MAP);
    boolean first = details.remove(DETAILS_FIRST) != null;
    ReadOptions options =
        new ReadOptions(
            details,
            first,
            map == null ? ColumnMap.NONE : ColumnMapReader.read(map, revision.name(), catalogue));
    if (!options.kept().equals(revision.options())) {
      throw new Refusal(
          revision.name()
              + " was read with options that are not understood: "
              + revision.options()
              + ".");
    }
    return options;
  }
}
