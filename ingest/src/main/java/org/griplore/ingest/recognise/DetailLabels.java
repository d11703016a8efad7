package org.griplore.ingest.recognise;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.griplore.store.tyre.TyreSize;
import org.griplore.store.vocabulary.HeaderKey;

/**
 * Labels of details by a word they hold: a label that is no known phrase ({@code Date of the
 * session}) still tells a topic, where the value is of the topic's kind. The words are data: {@code
 * detail-labels.json}; {@code word*} begins and {@code *word} ends so.
 */
final class DetailLabels {
  private static final Map<String, Pattern> WORDS = read();
  private static final int MOST_WORDS = 4;

  private DetailLabels() {}

  private static Map<String, Pattern> read() {
    try (InputStream in = DetailLabels.class.getResourceAsStream("detail-labels.json")) {
      Map<String, Pattern> words = new LinkedHashMap<>();
      new ObjectMapper()
          .readValue(in, new TypeReference<LinkedHashMap<String, List<String>>>() {})
          .forEach((topic, list) -> words.put(topic, pattern(list)));
      return words;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Pattern pattern(List<String> words) {
    return Pattern.compile(
        words.stream()
            .map(
                word ->
                    (word.startsWith("*") ? "\\S*" : "")
                        + Pattern.quote(HeaderKey.of(word.replace("*", "")))
                        + (word.endsWith("*") ? "\\S*" : ""))
            .collect(Collectors.joining("|", " (?:", ") ")));
  }

  /** The topic of a label whose value is of the topic's kind; nothing where there is none. */
  static Optional<String> topic(String label, String value) {
    String key = " " + HeaderKey.of(label) + " ";
    if (key.isBlank() || key.strip().split(" ").length > MOST_WORDS) {
      return Optional.empty();
    }
    return WORDS.entrySet().stream()
        .filter(word -> word.getValue().matcher(key).find() && fits(word.getKey(), value.strip()))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  private static boolean fits(String topic, String value) {
    return switch (topic) {
      case "date" -> value.matches(".*\\d.*") && DateReader.read(value, null).isPresent();
      case "size" -> TyreSize.find(value).isPresent();
      case "season" -> SeasonWords.in(value) != null;
      default -> isName(value);
    };
  }

  /** Letters that head no column and tell no season, so that a place or a car may be meant. */
  private static boolean isName(String value) {
    return value.matches("(?s).*\\p{L}.*\\p{L}.*")
        && value.length() <= 80
        && ColumnWords.topic(value).isEmpty()
        && SeasonWords.in(value) == null
        && TyreSize.find(value).isEmpty();
  }
}
