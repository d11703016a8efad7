package org.griplore.ingest;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.griplore.ingest.recognise.ColumnMap;
import org.griplore.ingest.recognise.ColumnMapReader;
import org.griplore.store.archive.Revision;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Refusal;

/** How a reading was read, from the words kept with it. */
final class StoredOptions {
  private static final Pattern NEXT = Pattern.compile("; (?=[a-z][a-z0-9_ -]*=)");
  private static final Pattern MAP = Pattern.compile("(?:^|; )map=(?=\\{)");

  private static final String FIRST = "; details first";

  private StoredOptions() {}

  /**
   * The options whose {@link ReadOptions#text} was kept: details, then a map of columns.
   *
   * @throws Refusal when the words do not lead back to options
   */
  static ReadOptions of(Revision revision, DisciplineCatalogue catalogue) {
    String kept = revision.options();
    Matcher mapped = MAP.matcher(kept);
    ColumnMap map = ColumnMap.NONE;
    if (mapped.find()) {
      map = ColumnMapReader.read(kept.substring(mapped.end()), revision.name(), catalogue);
      kept = kept.substring(0, mapped.start());
    }
    boolean first = kept.endsWith(FIRST);
    kept = first ? kept.substring(0, kept.length() - FIRST.length()) : kept;
    ReadOptions options = new ReadOptions(details(kept), first, map);
    if (!options.text().equals(revision.options())) {
      throw new Refusal(
          revision.name()
              + " was read with options that are not understood: "
              + revision.options()
              + ".");
    }
    return options;
  }

  private static Map<String, String> details(String kept) {
    Map<String, String> details = new HashMap<>();
    for (String part : NEXT.split(kept)) {
      int equals = part.indexOf('=');
      if (equals > 0) {
        details.put(part.substring(0, equals), part.substring(equals + 1));
      }
    }
    return details;
  }
}
