package org.griplore.ingest.recognise;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.griplore.store.vocabulary.HeaderKey;
import org.griplore.store.vocabulary.HeaderPhrase;

/** Recognises columns that are no discipline (model, size, place ...) by their header's words. */
public final class ColumnWords {
  /**
   * A role recognised in a header.
   *
   * @param role what the column holds
   * @param words the header's words it was recognised by
   * @param language the language of the phrase: en, de, fr or sv
   * @param letters letters of the phrase; where a discipline matches too, the longer is the surer
   * @param vague whether the words say it only for want of better ones ({@code Wet}, {@code Name})
   */
  public record Match(ColumnRole role, String words, String language, int letters, boolean vague) {}

  private record Phrase(ColumnRole role, String language, HeaderPhrase phrase) {}

  private record Found(Phrase phrase, HeaderPhrase.Hit hit) {}

  private final List<Phrase> phrases;

  private ColumnWords(List<Phrase> phrases) {
    this.phrases = List.copyOf(phrases);
  }

  /** The words that come with the program. */
  public static ColumnWords standard() {
    try (InputStream data = ColumnWords.class.getResourceAsStream("column-words.json")) {
      List<Phrase> all = new ArrayList<>();
      for (JsonNode column : new ObjectMapper().readTree(data).get("columns")) {
        ColumnRole role = role(column.get("role").textValue());
        column
            .get("words")
            .properties()
            .forEach(
                language ->
                    language
                        .getValue()
                        .forEach(
                            notation ->
                                all.add(
                                    new Phrase(
                                        role,
                                        language.getKey(),
                                        HeaderPhrase.of(notation.textValue())))));
      }
      return new ColumnWords(all);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The role that a header names; the longest phrase wins, the role listed first in a tie. */
  public Optional<Match> byHeader(String headerText) {
    List<String> words = words(headerText);
    return phrases.stream()
        .flatMap(phrase -> phrase.phrase().in(words).map(hit -> new Found(phrase, hit)).stream())
        .min(Comparator.comparing(Found::hit, HeaderPhrase.Hit.SUREST))
        .map(
            found ->
                new Match(
                    found.phrase().role(),
                    String.join(" ", found.hit().words()),
                    found.phrase().language(),
                    found.hit().letters(),
                    found.hit().vague()));
  }

  /** A lone {@code #} heads places and running numbers; it has no letters of its own. */
  private static List<String> words(String headerText) {
    return headerText.strip().equals("#") ? List.of("place") : HeaderKey.words(headerText);
  }

  private static ColumnRole role(String key) {
    return Arrays.stream(ColumnRole.values())
        .filter(role -> role.key().equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("column-words.json: no role " + key));
  }
}
