package org.griplore.ingest.messy;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What was counted over the files of a family. Nothing of a draft is taken, so nothing of it is
 * wrong.
 *
 * @param counts one for each of {@link #COLUMNS}
 * @param seconds what reading took
 */
record FamilyFigures(String family, int[] counts, double seconds) {
  static final List<String> COLUMNS =
      List.of(
          "files",
          "whole",
          "cells",
          "right",
          "wrong",
          "false tyres",
          "lost silently",
          "details",
          "details right",
          "drafts",
          "drafts right",
          "refused",
          "failed");

  /** 1 where more is better, -1 where less is; 0 where neither. */
  static final int[] BETTER = {0, 1, 0, 1, -1, -1, -1, 0, 1, 0, 1, -1, -1};

  static FamilyFigures of(String family, List<Verdict> verdicts) {
    int[] n = new int[COLUMNS.size()];
    double seconds = 0;
    n[0] = verdicts.size();
    for (Verdict v : verdicts) {
      boolean taken = !v.read().draft();
      n[1] += v.whole() ? 1 : 0;
      n[2] += v.file().truth().required();
      n[3] += v.right().size();
      n[4] += taken ? v.wrong().size() : 0;
      n[5] += taken ? v.falseTyres().size() : 0;
      n[6] += v.silent().size();
      n[7] += v.details().size() + v.detailFaults().size();
      n[8] += v.details().size();
      n[9] += taken ? 0 : 1;
      n[10] += v.draftRight() ? 1 : 0;
      n[11] += v.read().refusal() != null ? 1 : 0;
      n[12] += v.read().failure() != null ? 1 : 0;
      seconds += v.read().seconds();
    }
    return new FamilyFigures(family, n, seconds);
  }

  /** A line to look at while working. */
  String line() {
    return Arrays.stream(counts)
        .mapToObj(count -> String.format("%6d", count))
        .collect(Collectors.joining(" ", String.format("%-26s", family), ""));
  }
}
