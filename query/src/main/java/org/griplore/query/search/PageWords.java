package org.griplore.query.search;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.griplore.query.question.Question;

/** Words for what a question tells, beside its own word, as {@code page-words.json} lists them. */
final class PageWords {
  private static final JsonNode WORDS = read();

  private PageWords() {}

  /** The question's purpose, and the words that are listed for it; there may be none. */
  static List<String> of(Question<?> question) {
    List<String> words = new ArrayList<>(List.of(question.purpose()));
    WORDS.path(question.kind()).forEach(word -> words.add(word.asText()));
    return words;
  }

  private static JsonNode read() {
    try (InputStream in = PageWords.class.getResourceAsStream("page-words.json")) {
      return new ObjectMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
