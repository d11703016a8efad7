package org.griplore.query.reweigh;

import java.util.List;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;

/**
 * One model under the user's weights and under all weights.
 *
 * @param reportedTests tests among them whose report ranks it in a total of its own
 * @param reported how often it was within the top there; null when no report says
 * @param acceptable share of all weightings that put it within the top, mean over its tests
 * @param acceptableError its standard error from the number of weightings drawn
 * @param favouredBy the mean of the weightings that put it first, the heaviest first
 */
public record ReweighRow(
    String model,
    int tests,
    int within,
    double share,
    int reportedTests,
    Integer reported,
    double acceptable,
    double acceptableError,
    List<Acceptance> acceptability,
    List<Favoured> favouredBy,
    List<NewPlace> places) {
  /**
   * How much of the space of weights gives a place.
   *
   * @param share mean over the model's tests
   * @param error its standard error from the number of weightings drawn
   */
  public record Acceptance(int place, double share, double error) {}

  /**
   * How heavily a discipline weighs in the weightings that put a model first.
   *
   * @param weight mean share of the weight, from 0 to 1
   */
  public record Favoured(String discipline, double weight) {}

  /**
   * A place under the user's weights.
   *
   * @param reported the place in the report's own total; null when it has none
   */
  public record NewPlace(
      String test, String date, int place, int field, Integer reported, int source) {}

  static List<Column<ReweighRow>> columns(int top) {
    List<Column<Acceptance>> acceptance =
        List.of(
            Column.of("place", "Place", Format.PLACE, Acceptance::place),
            Column.of("share", "Share of weightings", Format.SHARE, Acceptance::share),
            Column.number("error", "SE", Format.NUMBER, 4, Acceptance::error));
    List<Column<Favoured>> favoured =
        List.of(
            Column.of("discipline", "Discipline", Format.DISCIPLINE, Favoured::discipline),
            Column.of("weight", "Mean weight", Format.SHARE, Favoured::weight));
    List<Column<NewPlace>> places =
        List.of(
            Column.of("test", "Test", Format.TEST, NewPlace::test),
            Column.of("date", "Date", Format.DATE, NewPlace::date),
            Column.of("place", "Place", Format.PLACE, NewPlace::place),
            Column.of("field", "Of", Format.COUNT, NewPlace::field),
            Column.of("reported", "In the report", Format.PLACE, NewPlace::reported),
            Column.of("source", "Source", Format.COUNT, NewPlace::source));
    return List.of(
        Column.of("model", "Model", Format.MODEL, ReweighRow::model),
        Column.of("tests", "Tests", Format.COUNT, ReweighRow::tests),
        Column.of("within", "First " + top, Format.COUNT, ReweighRow::within),
        Column.of("share", "Share", Format.SHARE, ReweighRow::share),
        Column.of("reported", "In reports", Format.COUNT, ReweighRow::reported),
        Column.of("reportedTests", "of", Format.COUNT, ReweighRow::reportedTests),
        Column.of("acceptable", "All weightings", Format.SHARE, ReweighRow::acceptable),
        Column.<ReweighRow>number(
                "acceptableError", "SE", Format.NUMBER, 4, ReweighRow::acceptableError)
            .asDetail(),
        Column.rows("acceptability", "Acceptability", acceptance, ReweighRow::acceptability),
        Column.rows("favouredBy", "Weights that put it first", favoured, ReweighRow::favouredBy),
        Column.rows("places", "Places", places, ReweighRow::places));
  }
}
