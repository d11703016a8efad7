package org.griplore.ui.web.chart;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * A plot for a page: a Vega-Lite specification made here, drawn in the browser.
 *
 * @param id the element's id
 * @param heading what sets it apart among small plots that stand side by side; null when it stands
 *     alone
 * @param title what it shows, in a sentence, for everybody who cannot see it
 * @param height its height in CSS pixels, kept free before it is drawn
 * @param specification Vega-Lite 6
 */
public record Chart(String id, String heading, String title, int height, JsonNode specification) {
  /** A plot that stands alone. */
  public Chart(String id, String title, int height, JsonNode specification) {
    this(id, null, title, height, specification);
  }

  /** The same, as one of several small plots side by side. */
  public Chart under(String smallHeading) {
    return new Chart(id, smallHeading, title, height, specification);
  }

  /** Whether it is one of several small plots side by side. */
  public boolean isSmall() {
    return heading != null;
  }

  /** What it shows, for those who listen. */
  public String spoken() {
    return heading == null ? title : heading + ". " + title;
  }
}
