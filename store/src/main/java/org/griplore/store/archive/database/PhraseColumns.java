package org.griplore.store.archive.database;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import org.griplore.store.vocabulary.Phrase;
import org.griplore.store.wording.PhraseBook;

/**
 * Writes a phrase into two columns (code, parameters as a JSON array of texts) and reads it back.
 */
public final class PhraseColumns {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final TypeReference<List<String>> TEXTS = new TypeReference<>() {};
  private static final String NONE = "[]";

  private PhraseColumns() {}

  public static String json(List<String> parameters) {
    try {
      return parameters.isEmpty() ? NONE : JSON.writeValueAsString(parameters);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("texts can be written as JSON", e);
    }
  }

  /** The words in the two columns; null when there are none. */
  public static String words(ResultSet row, String code, String parameters) throws SQLException {
    return words(row.getString(code), row.getString(parameters));
  }

  public static String words(String code, String parameters) {
    return code == null ? null : PhraseBook.words(phrase(code, parameters));
  }

  public static Phrase phrase(String code, String parameters) {
    try {
      return new Phrase(
          code, parameters.equals(NONE) ? List.of() : JSON.readValue(parameters, TEXTS));
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("the parameters of " + code + " cannot be read", e);
    }
  }
}
