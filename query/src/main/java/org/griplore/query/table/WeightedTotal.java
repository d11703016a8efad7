package org.griplore.query.table;

import java.util.List;

/**
 * A tyre's total under the user's weights: the weighted mean of its differences to the reference,
 * each in spreads of the archive's models in that discipline.
 *
 * @param value plus is better; null when less than half the weight has evidence
 * @param low lower end of its 95 % interval, errors of disciplines taken as independent; null
 *     without standard errors
 * @param high upper end
 * @param place among the tyres that have every weighted discipline; null for any other
 * @param leftOut weighted disciplines that it has no figure in
 */
public record WeightedTotal(
    Double value, Double low, Double high, Integer place, List<String> leftOut) {}
