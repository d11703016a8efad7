package org.griplore.store.vocabulary;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Words that the headers of several disciplines are made of ({@code wet}, {@code braking} ...), in
 * many languages, as {@code header-parts.json} lists them.
 */
public final class HeaderParts {
  private static final Map<String, List<HeaderWord>> PARTS = read();

  private HeaderParts() {}

  /** The words of a part; null where there is no such part. */
  static List<HeaderWord> of(String part) {
    return PARTS.get(part);
  }

  /** Whether a header holds a word of a part, as a word of its own or at a word's beginning. */
  public static boolean in(String header, String part) {
    List<HeaderWord> words = PARTS.get(part);
    for (String word : HeaderKey.words(header)) {
      for (HeaderWord known : words) {
        if (known.fits(word)) {
          return true;
        }
      }
    }
    return false;
  }

  private static Map<String, List<HeaderWord>> read() {
    try (InputStream in = HeaderParts.class.getResourceAsStream("header-parts.json")) {
      JsonNode parts = new ObjectMapper().readTree(in).get("parts");
      Map<String, List<HeaderWord>> read = new HashMap<>();
      parts
          .fieldNames()
          .forEachRemaining(
              name -> {
                List<HeaderWord> words = new ArrayList<>();
                parts.get(name).forEach(word -> words.add(HeaderWord.of(word.asText())));
                read.put(name, List.copyOf(words));
              });
      return read;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
