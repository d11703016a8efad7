package org.griplore.ui.web.chart;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * The plots of answers. Their shapes are resources ({@code charts/NAME.json}); the rows go in as
 * data.
 */
public final class Charts {
  public static final ObjectMapper JSON = new ObjectMapper();

  private Charts() {}

  /** A shape with its description and data; the height is that of the whole drawing. */
  static ObjectNode specification(String shape, String title, int height, ArrayNode values) {
    ObjectNode specification = (ObjectNode) shape(shape);
    specification.put("description", title);
    specification.put("height", height);
    specification.putObject("data").set("values", values);
    return specification;
  }

  private static JsonNode shape(String name) {
    try (InputStream in = Charts.class.getResourceAsStream("charts/" + name + ".json")) {
      return JSON.readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
