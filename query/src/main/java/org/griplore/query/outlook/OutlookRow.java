package org.griplore.query.outlook;

/**
 * What one tyre is expected to do in one discipline.
 *
 * @param discipline a catalogue key, or {@code overall} for the total under the user's weights
 * @param unit of expected, low and high: {@code %}, a unit, or {@code components} for the total
 * @param expected result in a new test less the mean of the field, plus is better
 * @param low lower end of the prediction interval
 * @param high upper end
 * @param expectedPlace mean place over what may happen
 * @param topThree chance of the first three; null in a field of three or fewer
 * @param field tyres compared in the discipline
 * @param tests tests of the tyre itself in the discipline; null for the total
 * @param likeTests those among them in a like size and on a like car; null where neither was asked
 * @param basis what the expectation rests on; null for the total
 * @param logExpected natural log, for ratio disciplines
 */
public record OutlookRow(
    String model,
    String discipline,
    String unit,
    double expected,
    double low,
    double high,
    double expectedPlace,
    Double topThree,
    int field,
    Integer tests,
    Integer likeTests,
    String basis,
    Double logExpected) {}
