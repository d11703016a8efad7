package org.griplore.query.reweigh;

import java.util.List;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.Lead;
import org.griplore.store.vocabulary.Direction;

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

  private static Lead alone(ReweighRow row, Inquiry asked) {
    return asked.options().getOrDefault("model", List.of()).size() == 1
        ? null
        : Lead.again(asked).with("model", row.model());
  }

  static List<Column<ReweighRow>> columns(String top) {
    List<Column<Acceptance>> acceptance =
        List.of(
            Column.of("place", "Place", Format.PLACE, Acceptance::place).means("The place."),
            Column.of("share", "Share of weightings", Format.SHARE, Acceptance::share)
                .better(Direction.HIGH)
                .means("Share of all weightings that put the model there, from 0 to 1."),
            Column.number("error", "SE", Format.NUMBER, 4, Acceptance::error)
                .better(Direction.LOW)
                .means("Standard error from the number of weightings drawn."));
    List<Column<Favoured>> favoured =
        List.of(
            Column.of("discipline", "Discipline", Format.DISCIPLINE, Favoured::discipline),
            Column.of("weight", "Mean weight", Format.SHARE, Favoured::weight)
                .means(
                    "Mean share of the weight in the weightings that put the model first, from 0 to 1."));
    List<Column<NewPlace>> places =
        List.of(
            Column.of("test", "Test", Format.TEST, NewPlace::test),
            Column.of("date", "Date", Format.DATE, NewPlace::date),
            Column.of("place", "Place", Format.PLACE, NewPlace::place)
                .means("Place under your weights."),
            Column.of("field", "Of", Format.COUNT, NewPlace::field).means("How many were ranked."),
            Column.of("reported", "In the report", Format.PLACE, NewPlace::reported)
                .means("Place by the report's own total."),
            Column.of("source", "Source", Format.COUNT, NewPlace::source)
                .means("Number of the report among the sources."));
    return List.of(
        Column.of("model", "Model", Format.MODEL, ReweighRow::model),
        Column.of("tests", "Tests", Format.COUNT, ReweighRow::tests)
            .means("Tests that could be ranked under your weights.")
            .leadingTo(ReweighRow::alone),
        Column.of("within", "First " + top, Format.COUNT, ReweighRow::within)
            .better(Direction.HIGH)
            .means("How often it was within the first under your weights.")
            .leadingTo(ReweighRow::alone),
        Column.of("share", "Share", Format.SHARE, ReweighRow::share)
            .better(Direction.HIGH)
            .means("Share of its tests within the first under your weights, from 0 to 1.")
            .leadingTo(ReweighRow::alone),
        Column.of("reported", "In reports", Format.COUNT, ReweighRow::reported)
            .better(Direction.HIGH)
            .means("How often it was within the first by the reports' own totals."),
        Column.of("reportedTests", "of", Format.COUNT, ReweighRow::reportedTests)
            .means("Tests among them whose report has a total of its own."),
        Column.of("acceptable", "All weightings", Format.SHARE, ReweighRow::acceptable)
            .better(Direction.HIGH)
            .means("Share of all weightings that put it within the first, from 0 to 1.")
            .leadingTo(ReweighRow::alone),
        Column.<ReweighRow>number(
                "acceptableError", "SE", Format.NUMBER, 4, ReweighRow::acceptableError)
            .better(Direction.LOW)
            .means("Standard error from the number of weightings drawn.")
            .asDetail(),
        Column.rows("acceptability", "Acceptability", acceptance, ReweighRow::acceptability)
            .means("Share of all weightings for each place."),
        Column.rows("favouredBy", "Weights that put it first", favoured, ReweighRow::favouredBy)
            .means("The mean of the weightings that put it first, the heaviest first."),
        Column.rows("places", "Places", places, ReweighRow::places)
            .means("Its place in each test under your weights."));
  }
}
