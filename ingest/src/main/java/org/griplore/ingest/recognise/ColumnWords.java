package org.griplore.ingest.recognise;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.store.vocabulary.HeaderKey;

/** The words that head columns and details other than disciplines, in many languages. */
public final class ColumnWords {
  private static final Map<String, String> TOPIC_OF = read();

  private ColumnWords() {}

  private static Map<String, String> read() {
    try (InputStream in = ColumnWords.class.getResourceAsStream("column-words.json")) {
      Map<String, List<String>> topics =
          new ObjectMapper().readValue(in, new TypeReference<Map<String, List<String>>>() {});
      Map<String, String> topicOf = new HashMap<>();
      topics.keySet().forEach(topic -> topicOf.put(HeaderKey.of(topic), topic));
      topics.forEach(
          (topic, words) -> {
            for (String word : words) {
              String key = HeaderKey.of(word);
              topicOf.putIfAbsent(key.isEmpty() ? word : key, topic);
            }
          });
      return topicOf;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * What a header speaks of, when the whole header is a known word: {@code tyre}, {@code date} ...
   */
  public static Optional<String> topic(String header) {
    String key = HeaderKey.of(header);
    return Optional.ofNullable(TOPIC_OF.get(key.isEmpty() ? header.strip() : key));
  }
}
