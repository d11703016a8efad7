package org.griplore.ingest.forms;

import java.util.Map;
import org.griplore.ingest.recognise.DetailLines;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.HeaderKey;

/**
 * What a test is known by across sources: the key it is given, else its date and title, else the
 * file's name. So a notes file meets its results when both state the key, or the same date and
 * title.
 */
final class TestKey {
  private static final int LONGEST = 200;

  private TestKey() {}

  static String of(DetailLines lines, Map<String, String> given, Details details, String file) {
    if (lines.byTopic().containsKey("test")) {
      return shortened(lines.byTopic().get("test").text().strip());
    }
    if (given.containsKey("test")) {
      return shortened(given.get("test").strip());
    }
    if (details.title() != null) {
      String title = HeaderKey.of(details.title()).replace(' ', '-');
      return shortened(details.date() == null ? title : details.date().text() + "-" + title);
    }
    return shortened(file.replaceAll("\\.[A-Za-z0-9]{1,5}$", ""));
  }

  private static String shortened(String key) {
    return key.length() <= LONGEST ? key : key.substring(0, LONGEST);
  }
}
