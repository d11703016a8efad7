package org.griplore.query.label;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.question.QueryContext;
import org.griplore.store.archive.ReductionRecord;
import org.griplore.store.archive.TestRecord;
import org.griplore.store.vocabulary.ReducedSet;

/** What the tyre label would say of a test's figures, each with its conditions. */
public final class Labels {
  private static final List<String> LABELLED =
      List.of("wet-braking", "rolling-resistance", "exterior-noise");

  private final Evidence evidence;
  private final TestRecord record;
  private final int test;
  private final List<ReductionRecord> reductions;

  private Labels(QueryContext context, int test) {
    this.evidence = context.evidence();
    this.test = test;
    this.record = evidence.tests().get(test);
    this.reductions = context.archive().reductions(record.id());
  }

  /**
   * Of all figures of a test, each model and discipline once.
   *
   * @param test position of the test
   */
  public static List<LabelClaim> ofTest(QueryContext context, int test) {
    return new Labels(context, test).all();
  }

  /**
   * Of one figure; empty where the label knows nothing like it.
   *
   * @param result position of the result
   */
  public static Optional<LabelClaim> ofResult(QueryContext context, int result) {
    Evidence evidence = context.evidence();
    int test = evidence.entries().test()[evidence.results().entry()[result]];
    return new Labels(context, test).claim(result);
  }

  private List<LabelClaim> all() {
    Map<List<String>, LabelClaim> claims = new LinkedHashMap<>();
    for (int e = evidence.entriesOfTest().from(test); e < evidence.entriesOfTest().to(test); e++) {
      int entry = evidence.entriesOfTest().rows()[e];
      for (int r = evidence.resultsOfEntry().from(entry);
          r < evidence.resultsOfEntry().to(entry);
          r++) {
        claim(evidence.resultsOfEntry().rows()[r])
            .ifPresent(
                claim ->
                    claims.merge(
                        List.of(claim.model(), claim.discipline()),
                        claim,
                        (one, other) -> one.hasClass() ? one : other));
      }
    }
    return new ArrayList<>(claims.values());
  }

  private Optional<LabelClaim> claim(int result) {
    String discipline = evidence.disciplines().get(evidence.results().discipline()[result]);
    double value = evidence.results().value()[result];
    if (!LABELLED.contains(discipline) || Double.isNaN(value)) {
      return Optional.empty();
    }
    int entry = evidence.results().entry()[result];
    String model = evidence.models().get(evidence.entries().model()[entry]).name();
    String unit = evidence.units().get(evidence.results().unit()[result]);
    LabelFacts facts =
        LabelFacts.of(
            evidence.sizeOf(entry),
            record.details().season(),
            record.details().date() == null ? null : record.details().date().text());
    if (discipline.equals("rolling-resistance")) {
      return Optional.of(RollingResistanceLabel.of(model, value, unit, facts));
    }
    int report = evidence.reports().get(evidence.entries().report()[entry]).id();
    ReductionRecord reduced =
        reductions.stream()
            .filter(of -> of.report() == report && of.reduction().discipline().equals(discipline))
            .findFirst()
            .orElse(null);
    ReducedSet set = reduced == null ? null : set(reduced, model);
    if (discipline.equals("exterior-noise")) {
      return Optional.of(
          NoiseLabel.of(model, set == null ? null : reduced.reduction(), set, facts));
    }
    return set == null
        ? Optional.empty()
        : Optional.of(WetGripLabel.of(model, reduced.reduction(), set, facts));
  }

  /** The model's first set that stands, else its first that measured anything. */
  private static ReducedSet set(ReductionRecord of, String model) {
    List<ReducedSet> sets =
        of.reduction().sets().stream()
            .filter(set -> set.model().equals(model) && set.mean() != null)
            .toList();
    return sets.stream()
        .filter(ReducedSet::valid)
        .findFirst()
        .orElse(sets.isEmpty() ? null : sets.get(0));
  }
}
