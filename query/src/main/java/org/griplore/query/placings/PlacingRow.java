package org.griplore.query.placings;

import java.util.List;

/**
 * A model's places over all counted tests.
 *
 * @param model full name
 * @param tests tests counted
 * @param within tests in which the place was within the top asked for: a whole number, or with
 *     shared credit their sum
 * @param share {@code within / tests}
 * @param shareLow lower end of the 95 % Wilson interval of the share
 * @param shareHigh upper end
 * @param expectedByChance tests within the top if the places of each test, its ties included, were
 *     drawn: without ties the sum of top/field
 * @param chanceOfAtLeast chance of at least {@code within} then, exact
 * @param bestPlace best place
 * @param medianPlace median place
 * @param firstYear year of the first dated test; null when none is dated
 * @param lastYear year of the last
 * @param makerTests tests that makers reported and that would count, but for that
 * @param makerWithin those of them in which the place was within the top
 * @param places each place, oldest first
 */
public record PlacingRow(
    String model,
    int tests,
    Number within,
    double share,
    double shareLow,
    double shareHigh,
    double expectedByChance,
    double chanceOfAtLeast,
    int bestPlace,
    double medianPlace,
    Integer firstYear,
    Integer lastYear,
    int makerTests,
    int makerWithin,
    List<Placing> places) {}
