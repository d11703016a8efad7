package org.griplore.ingest.messy;

import java.util.List;
import java.util.Locale;

/**
 * What was counted over the files of a family. Nothing of a draft is taken, so nothing of it is
 * wrong.
 */
record FamilyFigures(
    String family,
    int files,
    int whole,
    int cells,
    int right,
    int wrong,
    int falseTyres,
    int silent,
    int details,
    int detailsRight,
    int drafts,
    int draftsRight,
    int refused,
    int failures,
    double seconds) {

  static FamilyFigures of(String family, List<Verdict> verdicts) {
    int[] n = new int[13];
    double seconds = 0;
    for (Verdict v : verdicts) {
      n[0] += v.whole() ? 1 : 0;
      n[1] += v.file().truth().required();
      n[2] += v.right().size();
      n[3] += v.read().draft() ? 0 : v.wrong().size();
      n[4] += v.read().draft() ? 0 : v.falseTyres().size();
      n[5] += v.silent().size();
      n[6] += v.details().size() + v.detailFaults().size();
      n[7] += v.details().size();
      n[8] += v.read().draft() ? 1 : 0;
      n[9] += v.draftRight() ? 1 : 0;
      n[10] += v.read().refusal() != null ? 1 : 0;
      n[11] += v.read().failure() != null ? 1 : 0;
      seconds += v.read().seconds();
    }
    return new FamilyFigures(
        family,
        verdicts.size(),
        n[0],
        n[1],
        n[2],
        n[3],
        n[4],
        n[5],
        n[6],
        n[7],
        n[8],
        n[9],
        n[10],
        n[11],
        seconds);
  }

  static final String HEADER =
      """
      | family | files | whole | cells | right | wrong | false tyres | lost silently | details | right | drafts | right | refused | failed |
      | --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |
      """;

  /** A row of the table; time is left out, as it differs from run to run. */
  String row() {
    return String.format(
        Locale.ROOT,
        "| %s | %d | %d | %d | %d | %d | %d | %d | %d | %d | %d | %d | %d | %d |",
        family,
        files,
        whole,
        cells,
        right,
        wrong,
        falseTyres,
        silent,
        details,
        detailsRight,
        drafts,
        draftsRight,
        refused,
        failures);
  }
}
