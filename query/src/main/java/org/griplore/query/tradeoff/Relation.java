package org.griplore.query.tradeoff;

/**
 * How two disciplines go together, as correlations from -1 to 1; plus is better in both, so a
 * negative one is a trade-off. Null where it could not be worked out.
 *
 * @param withinTests correlation inside tests, each discipline centred by test
 * @param low lower end of its 95 % interval
 * @param high upper end
 * @param p probability of so large a correlation by chance
 * @param tests tests with two or more models in both disciplines
 * @param results results in those tests
 * @param betweenModels correlation between models, corrected for error
 * @param betweenModelsUncorrected the same of the estimates as they are
 * @param models models it is between
 * @param betweenSteps correlation between steps from one generation to the next, corrected for
 *     error
 * @param steps steps it is between
 */
public record Relation(
    Double withinTests,
    Double low,
    Double high,
    Double p,
    int tests,
    int results,
    Double betweenModels,
    Double betweenModelsLow,
    Double betweenModelsHigh,
    Double betweenModelsUncorrected,
    int models,
    Double betweenSteps,
    Double betweenStepsLow,
    Double betweenStepsHigh,
    Double betweenStepsUncorrected,
    int steps) {}
