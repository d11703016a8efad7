package org.griplore.ui.web.chart;

import java.util.ArrayList;
import java.util.List;
import org.griplore.query.answer.Answer;
import org.griplore.query.profile.ProfileRow;

/** Draws a model's places over the years, discipline by discipline. */
public final class ProfileCharts {
  private static final int ALONE = 200;
  private static final int SMALL = 120;
  private static final int FEWEST = 2;

  private ProfileCharts() {}

  public static List<Chart> places(Answer<ProfileRow> answer) {
    List<ProfileRow> rows = answer.rows();
    List<Chart> charts = new ArrayList<>();
    PlacesChart.Scales.of(rows.stream().flatMap(row -> dots(row).stream()).toList())
        .ifPresent(
            scales -> {
              for (ProfileRow row : rows) {
                List<PlacesChart.Dot> dots = dots(row);
                boolean alone = rows.size() == 1;
                if (alone || dots.size() >= FEWEST) {
                  PlacesChart.of(
                          "chart-places-" + row.discipline(),
                          "Places over the years; each line is as long as its field.",
                          alone ? ALONE : SMALL,
                          dots,
                          scales)
                      .map(chart -> alone ? chart : chart.under(row.discipline()))
                      .ifPresent(charts::add);
                }
              }
            });
    return charts;
  }

  private static List<PlacesChart.Dot> dots(ProfileRow row) {
    return row.results().stream()
        .filter(result -> result.date() != null && result.place() != null)
        .map(
            result ->
                new PlacesChart.Dot(result.date(), result.place(), result.field(), result.test()))
        .toList();
  }
}
