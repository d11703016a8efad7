package org.griplore.query.browse;

import java.util.ArrayList;
import java.util.List;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.store.archive.ResultOrigin;
import org.griplore.store.vocabulary.Step;

/**
 * The whole way of a value: the text found, each rule with the figure before and after, and its
 * difference to the best of its test. The way to the value is as it was kept when the source was
 * read; the difference is of today's evidence and is left out for a reading that was replaced.
 */
final class Provenance {
  private static final String AS_WRITTEN = "number as written";

  private Provenance() {}

  static List<ProvenanceStep> of(ResultOrigin origin, Evidence evidence) {
    if (origin.value() == null) {
      return List.of();
    }
    List<ProvenanceStep> steps = new ArrayList<>(kept(origin));
    if (origin.revision().supersededBy() == null) {
      steps.addAll(difference(origin.result(), evidence));
    }
    return steps;
  }

  private static List<ProvenanceStep> kept(ResultOrigin origin) {
    if (origin.steps().isEmpty()) {
      String rule = origin.rule().isEmpty() ? AS_WRITTEN : origin.rule();
      return List.of(
          ProvenanceStep.read(rule, origin.cells().value(), origin.value(), origin.unit()));
    }
    List<ProvenanceStep> steps = new ArrayList<>();
    for (Step kept : origin.steps()) {
      ProvenanceStep step = ProvenanceStep.of(kept);
      boolean fromCell = steps.isEmpty() && step.cell() == null && origin.cells().value() != null;
      steps.add(fromCell ? step.from(origin.cells().value()) : step);
    }
    return steps;
  }

  private static List<ProvenanceStep> difference(long result, Evidence evidence) {
    int at = position(evidence, result);
    if (at < 0) {
      return List.of();
    }
    int test = evidence.entries().test()[evidence.results().entry()[at]];
    TestTable table =
        new TestTable(evidence, test, null, new Exclusions(), new Citations(evidence));
    return table.steps(at);
  }

  /** The position of a result in the evidence of now; -1 for a reading that was replaced. */
  static int position(Evidence evidence, long result) {
    for (int i = 0; i < evidence.results().count(); i++) {
      if (evidence.results().id()[i] == result) {
        return i;
      }
    }
    return -1;
  }
}
