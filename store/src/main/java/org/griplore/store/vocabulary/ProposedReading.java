package org.griplore.store.vocabulary;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A reading that is proposed for a table which could not be decided on.
 *
 * @param words how it reads the table, in a few words
 * @param score the sum of what speaks for and against it; about 100 when all is understood
 * @param reasons what speaks for and against it
 */
public record ProposedReading(String words, double score, List<String> reasons) {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** Keeps the list from changing. */
  public ProposedReading {
    Objects.requireNonNull(words);
    reasons = List.copyOf(reasons);
  }

  /** Readings as a JSON array, as {@link DraftTable} keeps them. */
  public static String text(List<ProposedReading> readings) {
    ArrayNode array = JSON.createArrayNode();
    for (ProposedReading each : readings) {
      ObjectNode node = array.addObject();
      node.put("words", each.words()).put("score", each.score());
      ArrayNode reasons = node.putArray("reasons");
      each.reasons().forEach(reasons::add);
    }
    return array.toString();
  }

  /** The readings of a draft, the best first. */
  public static List<ProposedReading> of(DraftTable draft) {
    try {
      List<ProposedReading> readings = new ArrayList<>();
      for (JsonNode node : JSON.readTree(draft.readings())) {
        List<String> reasons = new ArrayList<>();
        node.path("reasons").forEach(reason -> reasons.add(reason.asText()));
        readings.add(
            new ProposedReading(
                node.path("words").asText(), node.path("score").asDouble(), reasons));
      }
      return readings;
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a draft's readings are kept as JSON", e);
    }
  }
}
