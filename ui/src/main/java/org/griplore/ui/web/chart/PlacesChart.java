package org.griplore.ui.web.chart;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.griplore.store.vocabulary.TestDate;
import org.griplore.ui.web.link.Addresses;

/** Draws places over the years; each stroke is as long as the field. */
public final class PlacesChart {
  /** Below this height there is no room for the axis' title. */
  private static final int SMALL = 150;

  private PlacesChart() {}

  /** A place in a dated test. */
  record Dot(String date, int place, int field, String test) {
    int year() {
      return new TestDate(date).year();
    }
  }

  /** What several plots share, so that they can be compared. */
  record Scales(int firstYear, int lastYear, int field) {
    static Optional<Scales> of(List<Dot> dots) {
      return dots.isEmpty()
          ? Optional.empty()
          : Optional.of(
              new Scales(
                  dots.stream().mapToInt(Dot::year).min().getAsInt(),
                  dots.stream().mapToInt(Dot::year).max().getAsInt(),
                  dots.stream().mapToInt(Dot::field).max().getAsInt()));
    }
  }

  /** The plot; empty without a dated place. */
  public static Optional<Chart> of(
      String id, String title, int height, List<Dot> dots, Scales scales) {
    if (dots.isEmpty()) {
      return Optional.empty();
    }
    ArrayNode values = Charts.JSON.createArrayNode();
    for (Dot dot : dots) {
      values
          .addObject()
          .put("date", dot.date())
          .put("first", 1)
          .put("place", dot.place())
          .put("field", dot.field())
          .put("test", dot.test())
          .put("address", Addresses.test(dot.test()));
    }
    ObjectNode specification = Charts.specification("places", title, height, values);
    ObjectNode encoding = (ObjectNode) specification.get("encoding");
    ((ObjectNode) encoding.at("/x/scale"))
        .putArray("domain")
        .add(scales.firstYear() + "-01-01")
        .add(scales.lastYear() + "-12-31");
    ((ObjectNode) encoding.at("/y/scale")).putArray("domain").add(0.5).add(scales.field() + 0.5);
    boolean small = height < SMALL;
    if (small) {
      ((ObjectNode) encoding.get("y")).putNull("title");
    }
    ArrayNode ticks = ((ObjectNode) encoding.at("/y/axis")).putArray("values");
    int step =
        height < 150
            ? scales.field() > 4 ? 4 : 2
            : scales.field() > 8 ? 3 : scales.field() > 4 ? 2 : 1;
    for (int place = 1; place <= scales.field(); place += step) {
      ticks.add(place);
    }
    return Optional.of(new Chart(id, title, height, specification));
  }
}
