package org.griplore.query.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.griplore.query.statistics.Tails;

/**
 * What a field is expected to do in one discipline.
 *
 * @param components how far things differ
 * @param contrasts differences it rests on
 * @param tests tests it rests on
 * @param leftOut tests of a large archive that it does not rest on
 * @param field the models that something is known of, by position in the evidence
 * @param basis what each rests on
 * @param results their results in a new test, each less the mean of the field
 * @param usualStep from one generation to the next
 */
record DisciplineOutlook(
    VarianceComponents components,
    int contrasts,
    int tests,
    int leftOut,
    int[] field,
    ExpectationBasis[] basis,
    Levels results,
    double usualStep) {
  /** With fewer differences inside tests nothing is said. */
  private static final int FEWEST_CONTRASTS = 4;

  private static final double WORK = 1e9;
  private static final double SEARCH_WORK = 2e7;

  /**
   * Reckons it.
   *
   * @param all the discipline's tests in the order of {@link TestBlocks}
   * @return empty when the tests are too few or alike, or fewer than two of the models are known
   */
  static Optional<DisciplineOutlook> of(DescentForest descent, List<TestBlock> all, int[] asked) {
    List<TestBlock> blocks = Affordable.about(descent, all, asked, WORK);
    int contrasts = blocks.stream().mapToInt(TestBlock::contrasts).sum();
    ExpectationBasis[] basis = basis(descent, blocks, asked);
    List<Integer> known = new ArrayList<>();
    for (int i = 0; i < asked.length; i++) {
      if (basis[i] != ExpectationBasis.NONE) {
        known.add(i);
      }
    }
    if (blocks.size() < 2 || contrasts < FEWEST_CONTRASTS || known.size() < 2) {
      return Optional.empty();
    }
    VarianceComponents components =
        VarianceComponentsFit.of(descent, Affordable.newest(descent, blocks, SEARCH_WORK), null);
    if (components == null) {
      return Optional.empty();
    }
    int[] field = known.stream().mapToInt(i -> asked[i]).toArray();
    Needed needed = new Needed(descent, blocks, field);
    LevelPosterior posterior = new LevelPosterior(descent, components);
    for (int r = 0; r < blocks.size(); r++) {
      posterior.take(blocks.get(r));
      for (int model : needed.endingAt(r)) {
        posterior.forget(model);
      }
    }
    double[] variance = new double[field.length];
    java.util.Arrays.fill(variance, components.result(0));
    return Optional.of(
        new DisciplineOutlook(
            components,
            contrasts,
            blocks.size(),
            all.size() - blocks.size(),
            field,
            known.stream().map(i -> basis[i]).toArray(ExpectationBasis[]::new),
            posterior.levels(field).results(variance).lessMean(),
            posterior.usualStep()));
  }

  private static ExpectationBasis[] basis(
      DescentForest descent, List<TestBlock> blocks, int[] asked) {
    boolean[] tested = new boolean[descent.parent().length];
    boolean[] above = new boolean[tested.length];
    for (TestBlock block : blocks) {
      for (int model : block.models()) {
        tested[model] = true;
        for (int at = descent.parent()[model]; at >= 0 && !above[at]; at = descent.parent()[at]) {
          above[at] = true;
        }
      }
    }
    ExpectationBasis[] basis = new ExpectationBasis[asked.length];
    for (int i = 0; i < asked.length; i++) {
      basis[i] =
          tested[asked[i]]
              ? ExpectationBasis.TESTS
              : descent.ancestor(asked[i], tested) >= 0
                  ? ExpectationBasis.PREDECESSOR
                  : above[asked[i]] ? ExpectationBasis.SUCCESSOR : ExpectationBasis.NONE;
    }
    return basis;
  }

  /** Half width of an interval in standard deviations: Student's t of what is known. */
  double factor(double level) {
    return Tails.student(level, PastPredictions.degrees(contrasts));
  }
}
