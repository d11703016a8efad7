package org.griplore.ingest.messy;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;

/** A drawn test as an interface would give it: an object a tyre, flat or nested. */
final class DrawnJson {
  private static final ObjectMapper JSON = new ObjectMapper();

  private DrawnJson() {}

  static String write(DrawnTest test, DrawnLook look, DrawnHeads heads, DrawnTruth truth) {
    ArrayNode tyres = JSON.createArrayNode();
    for (int i = 0; i < test.tyres().size(); i++) {
      tyres.add(tyre(test, look, heads, truth, i));
    }
    try {
      if (look.heading() == DrawnLook.Heading.NONE) {
        return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(tyres);
      }
      ObjectNode root = JSON.createObjectNode();
      ObjectNode details =
          look.heading() == DrawnLook.Heading.BELOW ? root.putObject("test") : root;
      test.details().forEach(details::put);
      root.set("tyres", tyres);
      return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private static ObjectNode tyre(
      DrawnTest test, DrawnLook look, DrawnHeads heads, DrawnTruth truth, int i) {
    DrawnTest.Tyre tyre = test.tyres().get(i);
    ObjectNode node = JSON.createObjectNode();
    if (look.names() == DrawnLook.Names.ONE) {
      node.put("name", tyre.name());
    } else {
      node.put("brand", tyre.maker());
      node.put("model", tyre.model());
    }
    boolean nested = look.format() == DrawnLook.Format.JSON_NESTED;
    ObjectNode results = nested ? node.putObject("results") : node;
    for (int c = 0; c < test.measures().size(); c++) {
      DrawnTest.Measure measure = test.measures().get(c);
      double value = measure.values().get(i);
      if (nested) {
        ObjectNode result = results.putObject(key(heads.bare(c)));
        result.put("value", value);
        result.put("unit", heads.unit(c));
      } else {
        results.put(key(heads.bare(c) + " " + heads.unit(c)), value);
      }
      truth.value(tyre, measure, i);
    }
    return node;
  }

  private static String key(String words) {
    return words.toLowerCase(Locale.ROOT).strip().replaceAll("[^\\p{L}\\p{Nd}²]+", "_");
  }
}
