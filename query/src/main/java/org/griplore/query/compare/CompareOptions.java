package org.griplore.query.compare;

import java.util.List;
import java.util.Locale;
import org.griplore.query.network.VarianceMethod;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;

/** Options and sentences of the questions that compare models across tests. */
public final class CompareOptions {
  /** Says of what the per cent are. */
  public static final String PER_CENT =
      "Differences in per cent are of performance: 10 % more grip is 9.09 % less distance.";

  /** The option that names how heterogeneity is estimated. */
  public static final Option VARIANCE =
      Option.once(
              "variance",
              "METHOD",
              "how the heterogeneity of model and test is estimated: by restricted maximum likelihood,"
                  + " by DerSimonian and Laird's moments, or not at all",
              "reml")
          .oneOf(List.of("reml", "dl", "none"));

  private CompareOptions() {}

  /** How heterogeneity is to be estimated. */
  public static VarianceMethod variance(Choices choices) {
    return VarianceMethod.valueOf(choices.text("variance").toUpperCase(Locale.ROOT));
  }
}
