package org.griplore.ingest.recognise;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.griplore.store.vocabulary.HeaderKey;
import org.griplore.store.vocabulary.SeasonClass;

/** Words for seasons of tyres in many languages; the words are data: {@code season-words.json}. */
final class SeasonWords {
  private static final Map<SeasonClass, Pattern> WORDS = read();

  private SeasonWords() {}

  private static Map<SeasonClass, Pattern> read() {
    try (InputStream in = SeasonWords.class.getResourceAsStream("season-words.json")) {
      Map<String, List<String>> lists =
          new ObjectMapper().readValue(in, new TypeReference<Map<String, List<String>>>() {});
      Map<SeasonClass, Pattern> words = new LinkedHashMap<>();
      words.put(SeasonClass.ALL_SEASON, pattern(lists.get("all-season")));
      words.put(SeasonClass.WINTER, pattern(lists.get("winter")));
      words.put(SeasonClass.SUMMER, pattern(lists.get("summer")));
      return words;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Pattern pattern(List<String> words) {
    StringBuilder all = new StringBuilder();
    for (String word : words) {
      String open = word.endsWith("*") ? "\\S*" : "";
      all.append(all.isEmpty() ? "" : "|").append(Pattern.quote(HeaderKey.of(word))).append(open);
    }
    return Pattern.compile(" (?:" + all + ") ");
  }

  /** The season that a text names; null when it names none. */
  static SeasonClass in(String text) {
    String key = " " + HeaderKey.of(text) + " ";
    for (Map.Entry<SeasonClass, Pattern> season : WORDS.entrySet()) {
      if (season.getValue().matcher(key).find()) {
        return season.getKey();
      }
    }
    return null;
  }
}
