package org.griplore.ingest.forms;

import org.griplore.ingest.recognise.DetailLines;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.HeaderKey;

/**
 * What a test is known by across sources: the key it is given, else its date and title, else the
 * file's name. A key that is not given is told as such: what else has it may be another test.
 */
final class TestKey {
  private static final int LONGEST = 200;

  private TestKey() {}

  static String of(DetailLines lines, Details details, SourceContext context) {
    if (lines.byTopic().containsKey("test")) {
      return shortened(lines.byTopic().get("test").text().strip());
    }
    if (context.given().containsKey("test")) {
      return shortened(context.given().get("test").strip());
    }
    String key = made(details, context.file());
    context.receiver().keyNotGiven(key);
    return key;
  }

  private static String made(Details details, String file) {
    if (details.title() != null) {
      String title = HeaderKey.of(details.title()).replace(' ', '-');
      return shortened(details.date() == null ? title : details.date().text() + "-" + title);
    }
    return shortened(file.replaceAll("\\.[A-Za-z0-9]{1,5}$", ""));
  }

  private static String shortened(String key) {
    return key.length() <= LONGEST ? key : key.substring(0, LONGEST);
  }

  /** The key of another test that would have this one: with what tells it apart. */
  static String apart(String key, String sign, SourceContext context) {
    String longer = shortened(key + "-" + HeaderKey.of(sign).replace(' ', '-'));
    context.receiver().keyNotGiven(longer);
    return longer;
  }
}
