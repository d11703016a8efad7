package org.griplore.ui.web;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * A plot for a page: a Vega-Lite specification made here, drawn in the browser.
 *
 * @param id the element's id
 * @param title what it shows, in a sentence, for everybody who cannot see it
 * @param height its height in CSS pixels, kept free before it is drawn
 * @param specification Vega-Lite 6
 */
public record Chart(String id, String title, int height, JsonNode specification) {}
