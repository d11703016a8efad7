package org.griplore.ingest.messy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.griplore.store.vocabulary.Unit;

/** Gathers what a drawn file says as it is laid out. */
final class DrawnTruth {
  private final List<Truth.Stated> figures = new ArrayList<>();
  private final DrawnTest test;

  DrawnTruth(DrawnTest test) {
    this.test = test;
  }

  void value(DrawnTest.Tyre tyre, DrawnTest.Measure measure, int index) {
    value(tyre, measure, List.of(measure.values().get(index)));
  }

  /** A value with several ways to say it. */
  void value(DrawnTest.Tyre tyre, DrawnTest.Measure measure, List<Double> ways) {
    List<Truth.Figure> all = new ArrayList<>();
    for (double way : ways) {
      all.add(new Truth.Figure(way, measure.unit()));
      if (measure.unit() == Unit.EURO) {
        all.add(new Truth.Figure(way, Unit.CURRENCY));
      }
    }
    Map<String, String> marks =
        measure.window().isEmpty() ? Map.of() : Map.of("window", measure.window());
    add(tyre, measure.discipline(), false, all, marks);
  }

  void total(DrawnTest.Tyre tyre, double points, boolean hundred) {
    Truth.Figure figure =
        hundred
            ? new Truth.Figure(DrawnTest.rounded(points * 10, 0), Unit.POINTS_100)
            : new Truth.Figure(points, Unit.POINTS_10);
    add(tyre, "overall", false, List.of(figure), Map.of());
  }

  void place(DrawnTest.Tyre tyre, int place) {
    add(tyre, "overall", true, List.of(new Truth.Figure(place, null)), Map.of());
  }

  private void add(
      DrawnTest.Tyre tyre,
      String discipline,
      boolean place,
      List<Truth.Figure> ways,
      Map<String, String> marks) {
    figures.add(
        new Truth.Stated(
            List.of(tyre.name()), discipline, place, ways, marks, Map.of(), Truth.Need.READ));
  }

  Truth truth(String about, DrawnLook look, Map<String, String> details) {
    boolean hard =
        look.format() == DrawnLook.Format.BARE_COMMAS || look.format() == DrawnLook.Format.PASTED;
    return new Truth(
        about + ", " + test.tyres().size() + " tyres",
        hard ? Truth.Decision.EITHER : Truth.Decision.TAKEN,
        List.of(new Truth.Test(details, figures)),
        List.of(),
        Set.of(),
        0);
  }
}
